/// Page one: the answer.
#include <algorithm>
#include <array>
#include <cstddef>
#include <iterator>

#include "output/compose_text.h"
#include "output/figure_places.h"
#include "output/format.h"
#include "output/rate_text.h"
#include "output/report_text.h"
#include "output/section_list.h"
#include "output/sketch_list.h"

namespace output {
namespace {

// What page one holds below the price, in lines of text of about so many characters.
constexpr std::size_t lines_of_lists = 15, lines_of_conditions = 11, line_length = 82;
constexpr std::size_t lines_of_prose = 5;  ///< sentence and price, as the lists' lines allow for
constexpr std::size_t title_length = 50;   ///< of one line
constexpr std::size_t most_questions = 5, least_shown = 1;
// Class of estimate of a preliminary design: common practice, no source.
constexpr double estimate_below = 20, estimate_above = 40;  ///< [%]

std::string verdict_key(calc::Verdict verdict) {
  switch (verdict) {
    case calc::Verdict::feasible:
      return "feasible";
    case calc::Verdict::conditional:
      return "conditional";
    case calc::Verdict::infeasible:
      return "infeasible";
    case calc::Verdict::incomplete:
      return "incomplete";
  }
  return {};
}

std::string note_kind(calc::Verdict verdict) {
  if (verdict == calc::Verdict::feasible) return "info";
  return verdict == calc::Verdict::conditional ? "caution" : "warning";
}

/// The section that has what the verdict counts.
std::string_view counted_in(calc::Verdict verdict) {
  return verdict == calc::Verdict::infeasible ? "s-heads" : "s-conditions";
}

void add_verdict(const Context& c, Values& values) {
  const std::string verdict = verdict_key(c.spec.verdict);
  const std::size_t count = c.spec.verdict == calc::Verdict::infeasible
                                ? c.spec.rejected.size()
                                : c.notices("condition", c.spec.conditions).size();
  values.set("KIND", note_kind(c.spec.verdict));
  values.set_markup("VERDICT", c.words("verdict." + verdict));
  const std::string told = count == 1 ? "front." + verdict + ".one" : "front." + verdict;
  Values summary;
  const std::string figure = std::to_string(count);
  summary.set_markup("COUNT", count == 0 ? figure : link_to(counted_in(c.spec.verdict), figure));
  values.set_markup(
      "SUMMARY",
      c.templates.words(c.language(), c.has_words(told) ? told : "front." + verdict, summary));
}

/// Which issue this one replaces.
void add_replaced(const Context& c, Values& values) {
  if (!c.matter.replaced) return;
  const EarlierIssue& issue = c.matter.replaced->issue;
  Values& line = values.add("REPLACES");
  line.set_markup("TEXT",
                  c.words("change.front", {{"REVISION", issue.revision}, {"DATE", issue.date}}));
  line.set_markup("LINK", c.words("change.front_link"));
}

/// `value` and `against` are markup.
void add_figure(Values& station, const std::string& name, const std::string& value,
                const std::string& against, const std::string& key) {
  Values& row = station.add("FIGURE");
  row.set("KEY", key);
  row.set_markup("NAME", name);
  row.set_markup("VALUE", value);
  row.set_markup("AGAINST", against);
}

/// "600" where all groups have it, else "600 to 747".
std::string per_inch(const Context& c, calc::Resolution calc::Group::*axis) {
  const auto [low, high] = std::minmax_element(
      c.spec.chosen.begin(), c.spec.chosen.end(),
      [&](const calc::Group& a, const calc::Group& b) { return a.*axis < b.*axis; });
  const std::string from = number(in_dpi((*low).*axis), 4), to = number(in_dpi((*high).*axis), 4);
  return from == to ? from : c.words("front.span", {{"LOW", from}, {"HIGH", to}});
}

/// The lattices of all groups.
std::string lattices_text(const Context& c) {
  return c.words("front.lattices", {{"ACROSS", per_inch(c, &calc::Group::resolution_across)},
                                    {"ALONG", per_inch(c, &calc::Group::resolution_along)}});
}

/// The steps of the lattices: of the first group, and of the axes on which others differ from it.
std::vector<std::string> lattice_steps(const Context& c) {
  std::vector<std::string> ids{"g1.across", "g1.along", "g1.motion"};
  const calc::Group& first = c.spec.chosen.front();
  for (std::size_t i = 1; i < c.spec.chosen.size(); ++i) {
    const calc::Group& group = c.spec.chosen[i];
    const std::string g = group_prefix(i);
    const auto differ = [&](calc::Resolution calc::Group::*axis) {
      return number(in_dpi(group.*axis), 4) != number(in_dpi(first.*axis), 4);
    };
    if (differ(&calc::Group::resolution_across)) {
      ids.push_back(g + (group.scan ? ".motion" : ".across"));
    }
    if (differ(&calc::Group::resolution_along)) {
      ids.push_back(g + (group.scan ? ".along" : ".motion"));
    }
  }
  ids.emplace_back("required.across");
  return ids;
}

void add_resolution(const Context& c, Values& station) {
  const std::string asked =
      c.spec.required
          ? c.worded(
                "front.asked",
                {{"VALUE", c.figure({"required.across"}, lattice_text(c.spec.required->across,
                                                                      c.spec.required->along))}})
          : std::string();
  add_figure(station, c.words("front.resolution"), lattices_text(c), asked,
             c.row_keys(lattice_steps(c)));
}

std::string asked_input(const Context& c, const std::string& key) {
  const calc::Input* const input = c.input(key);
  return input == nullptr
             ? std::string()
             : c.worded("front.asked", {{"VALUE", c.figure_given(key, input_text(c, *input))}});
}

/// What is asked, and up to which speed the station passes where that is less than it could run.
std::string with_held(const Context& c, const std::string& asked) {
  const std::string held = speed_held_text(c);
  return asked.empty() || held.empty() ? asked + held : asked + "; " + held;
}

void add_speed(const Context& c, Values& station) {
  const auto slowest = std::min_element(
      c.spec.chosen.begin(), c.spec.chosen.end(),
      [](const calc::Group& a, const calc::Group& b) { return a.speed_limit < b.speed_limit; });
  const std::string g = group_prefix(static_cast<std::size_t>(slowest - c.spec.chosen.begin()));
  const std::optional<PartsRate> parts = parts_rate(c);
  if (slowest->scan && parts) {
    add_figure(station, c.words("front.carriage"), parts->reached,
               c.words("front.asked", {{"VALUE", parts->asked}}), c.step_keys({g + ".throughput"}));
  } else if (slowest->scan) {
    add_figure(station, c.words("front.carriage"),
               escaped(c.measure(slowest->scan->throughput.si() * 3600, "m2/h", 3)),
               asked_input(c, "line.throughput"), c.step_keys({g + ".throughput"}));
  } else {
    const calc::StationSpeed limit = highest_speed(c);
    add_figure(station, c.words("front.speed", {{"BY", c.words("sets_speed." + limit.by)}}),
               limit.at_most
                   ? c.words("front.at_most", {{"VALUE", speed_limit_text(c, limit.speed)}})
                   : escaped(speed_limit_text(c, limit.speed)),
               with_held(c, asked_input(c, "line.speed")),
               c.step_keys({"station.speed", g + ".speed_limit"}));
  }
}

void add_cover(const Context& c, Values& station) {
  const calc::ChannelDots* least = nullptr;
  std::string id;
  for (std::size_t i = 0; i < c.spec.chosen.size(); ++i) {
    for (const calc::ChannelDots& dots : c.spec.chosen[i].dots) {
      if (least != nullptr && least->cover_fraction <= dots.cover_fraction) continue;
      least = &dots;
      id = group_prefix(i) + "." + dots.channel + ".cover";
    }
  }
  if (least == nullptr) return;
  const auto& solids = c.request.image.solids;
  const bool closed = !solids || solids->value;
  add_figure(station, c.words("front.cover", {{"CHANNEL", least->channel}}),
             percent_down(least->cover_fraction) + "\xC2\xA0%",
             closed ? c.words("front.closed") : std::string(), c.step_keys({id}));
}

void add_ink(const Context& c, Values& station) {
  if (!c.spec.station || c.spec.station->consumption.empty()) return;
  double month = 0;
  double total = 0;
  double waste = 0;
  for (const calc::Consumption& use : c.spec.station->consumption) {
    month += use.l_per_month;
    total += use.ml_per_hour;
    waste += use.waste_ml_per_hour;
  }
  const double share = total > 0 ? waste / total * 100 : 0;
  add_figure(station, c.words("front.ink"), escaped(c.measure(month, "L", 3)),
             c.words("front.waste", {{"VALUE", with_unit(share, "%", 2)}}),
             c.step_keys({"station.month", "station.waste_share"}));
}

void add_heads(const Context& c, Values& station) {
  const auto& limit = c.request.limits.heads;
  add_figure(
      station, c.words("front.heads"), std::to_string(c.spec.heads_total),
      limit ? c.words("front.at_most", {{"VALUE", std::to_string(limit->value)}}) : std::string(),
      c.step_keys({c.spec.chosen.size() > 1 ? "station.heads" : "g1.heads_total"}));
}

const calc::Uncertainty* moved(const Context& c, std::string_view figure) {
  const auto found = std::find_if(c.spec.uncertainty.begin(), c.spec.uncertainty.end(),
                                  [&](const calc::Uncertainty& entry) {
                                    return entry.figure == figure && !entry.mover.empty();
                                  });
  return found == c.spec.uncertainty.end() ? nullptr : &*found;
}

/// " (EUR 142 000 to EUR 759 000 by mean coverage)": how far one input moves a sum, "likewise"
/// where it is the one that moved `before` too; empty where none does.
std::string range_of(const Context& c, std::string_view figure, std::string_view before = {}) {
  const calc::Uncertainty* const first = moved(c, before);
  if (const calc::Uncertainty* const one = moved(c, figure)) {
    const calc::Uncertainty& entry = *one;
    const bool named = first == nullptr || first->mover != entry.mover;
    Values values;
    const std::string of = "." + entry.figure;
    values.set_markup("LOW", c.figure({"range.low" + of}, rough_amount({}, entry.low)));
    values.set_markup("HIGH", c.figure({"range.high" + of}, rough_amount({}, entry.high)));
    values.set_markup("FIELD", c.field(entry.mover));
    return " " + c.templates.words(c.language(), named ? "front.range_by" : "front.range", values);
  }
  return {};
}

std::string price(const Context& c) {
  const calc::Station& station = *c.spec.station;
  const double capital = station.cost.capital.major();
  const auto rough = [&](double major) { return rough_amount(station.currency, major); };
  const std::string key = station.cost.capital.minor == 0 ? "front.unpriced"
                          : heads_unpriced(station)       ? "front.price_heads"
                          : station.bom_unpriced > 0      ? "front.price_without"
                                                          : "front.price";
  Values values;
  values.set_markup("ITEMS", joined(c, unpriced_items(c, station)));
  values.set_markup("NOT_CONTAINED", not_contained(c));
  values.set_markup("RUNNING_RANGE", range_of(c, "running_per_year"));
  values.set_markup("OWNERSHIP_RANGE", range_of(c, "ownership", "running_per_year"));
  values.set("CAPITAL", rough(capital));
  values.set("BELOW", number(estimate_below));
  values.set("ABOVE", number(estimate_above));
  values.set("LOW", rough(capital * (1 - estimate_below / 100)));
  values.set("HIGH", rough(capital * (1 + estimate_above / 100)));
  values.set_markup("RUNNING",
                    c.figure({"station.running"}, rough(station.cost.running_per_year.major())));
  values.set_markup("YEARS", c.figure({"station.annuity"}, std::to_string(station.cost.years)));
  values.set("OWNERSHIP", rough(station.cost.ownership.major()));
  return c.templates.words(c.language(), key, values);
}

std::size_t lines_of(const std::string& markup) {
  return 1 + without_markup(markup).size() / line_length;
}

/// Lines by which the station takes more of page one than the lists' lines allow for.
std::size_t lines_beyond(const Context& c) {
  if (c.spec.chosen.empty() || !c.spec.station) return 0;
  // Values in two units take a second line in the table of figures.
  const std::size_t figures =
      c.request.request.units && c.request.request.units->value == calc::UnitSystem::us ? 2 : 0;
  // A title of two lines is as high as two of text.
  const std::size_t title = c.spec.title.size() > title_length ? 2 : 0;
  // The speed that is held stands on a line of its own behind what is asked.
  const std::size_t held = speed_held(c) ? 1 : 0;
  const std::size_t lines =
      title + lines_of(station_sentence(c)) + lines_of(price(c)) + figures + held;
  return lines - std::min(lines, lines_of_prose);
}

void add_station(const Context& c, Values& values) {
  if (c.spec.chosen.empty()) return;
  Values& station = values.add("STATION");
  station.set("KEY", station_keys(c));
  station.set_markup("SENTENCE", station_sentence(c));
  station.set_markup("DRAWING", sketch_station(c));
  add_heads(c, station);
  add_resolution(c, station);
  add_speed(c, station);
  add_cover(c, station);
  add_ink(c, station);
  if (!c.spec.station) return;
  Values& cost = station.add("PRICED");
  cost.set("KEY", c.step_keys({"station.capital", "station.ownership"}));
  cost.set_markup("TEXT", price(c));
}

void add_nearest(const Context& c, Values& values) {
  if (c.spec.verdict != calc::Verdict::infeasible) return;
  const calc::RejectedHead* const nearest = nearest_head(c.spec);
  if (nearest == nullptr) {
    values.add("NO_HEADS");
    return;
  }
  Values& fails = values.add("FAILS");
  fails.set("HEAD", nearest->head);
  fails.set("KEY", c.spec.nearest_miss ? c.place_of(c.spec.nearest_miss->field) : std::string());
  fails.set_markup("MISS", nearest_miss_text(c));
  std::string musts = musts_text(c);
  if (!musts.empty()) fails.add("MUSTS").set_markup("TEXT", std::move(musts));
  std::vector<std::size_t> first;
  const std::vector<std::string> reasons = linked_reasons(c, *nearest, &first);
  for (std::size_t i = 0; i < reasons.size(); ++i) {
    Values& reason = fails.add("REASON");
    reason.set("KEY", reason_key(c, nearest->reasons[first[i]]));
    reason.set_markup("TEXT", reasons[i]);
  }
}

void add_more(Values& list, std::size_t all, std::size_t shown) {
  if (all > shown) list.add("MORE").set("COUNT", std::to_string(all - shown));
}

/// How many of the texts fit so many lines, at least one; `lines` becomes what they leave.
std::size_t fitting(const std::vector<std::string>& texts, std::size_t& lines) {
  std::size_t shown = 0, left = lines;
  for (; shown < texts.size(); ++shown) {
    const std::size_t need = 1 + texts[shown].size() / line_length;
    if (need > left && shown >= least_shown) break;
    left -= std::min(need, left);
  }
  lines = left;
  return shown;
}

/// Yields the lines of page one that the conditions take.
std::size_t add_conditions(const Context& c, std::size_t lines, Values& values) {
  const std::vector<calc::Notice>& conditions = c.spec.conditions;
  if (conditions.empty()) return 0;
  Values& list = values.add("CONDITIONS");
  std::vector<std::size_t> first;
  std::vector<std::string> texts;
  c.notices("condition", conditions, &first);
  // What is beyond a limit with the values assumed comes before what other values would bring.
  std::stable_partition(first.begin(), first.end(),
                        [&](std::size_t i) { return conditions[i].code == "placement"; });
  texts.reserve(first.size());
  for (const std::size_t i : first) texts.push_back(c.notice("condition", conditions[i]));
  std::size_t left = lines;
  const std::size_t shown = fitting(texts, left);
  for (std::size_t i = 0; i < shown; ++i) {
    Values& item = list.add("CONDITION");
    const calc::Notice& condition = conditions[first[i]];
    item.set("KEY", notice_keys(c, "condition", condition, place_keys(condition.where)));
    item.set_markup("TEXT", linked_notice(c, "condition", condition));
  }
  add_more(list, texts.size(), shown);
  return lines - left + (texts.size() > shown ? 1 : 0);
}

void add_questions(const Context& c, std::size_t lines, Values& values) {
  // Of an incomplete request only those to which nothing can be assumed either, all of them.
  const bool incomplete = c.spec.verdict == calc::Verdict::incomplete;
  const std::vector<AlikeQuestions> all = grouped_questions(c);
  std::vector<AlikeQuestions> groups;
  std::copy_if(all.begin(), all.end(), std::back_inserter(groups),
               [&](const AlikeQuestions& g) { return !incomplete || !g.front()->assumed; });
  if (groups.empty()) return;
  Values& list = values.add("QUESTIONS");
  list.set_markup("HEADING", c.words(incomplete ? "front.least" : "front.ask"));
  std::vector<std::string> texts;
  texts.reserve(groups.size());
  for (const AlikeQuestions& group : groups) texts.push_back(question_text(c, group));
  const std::size_t most = incomplete ? texts.size() : most_questions;
  const std::size_t shown = std::min(fitting(texts, lines), most);
  for (std::size_t i = 0; i < shown; ++i) {
    list.add("QUESTION").set_markup("TEXT", texts[i]);
  }
  add_more(list, all.size(), shown);
}

}  // namespace

std::string front_page(const Context& c) {
  Values values;
  add_verdict(c, values);
  add_replaced(c, values);
  add_station(c, values);
  add_nearest(c, values);
  const std::size_t beyond = lines_beyond(c);
  const std::size_t taken =
      add_conditions(c, lines_of_conditions - std::min(beyond, lines_of_conditions), values) +
      beyond;
  add_questions(c, lines_of_lists - std::min(taken, lines_of_lists), values);
  return c.expand("front", values);
}

}  // namespace output
