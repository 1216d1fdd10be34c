/// What the design answers to each requirement: a figure, a shortfall, or how it shall be shown.
#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <string_view>
#include <utility>

#include "calc/nearest_head.h"
#include "output/compose_text.h"
#include "output/figure_places.h"
#include "output/format.h"
#include "output/rate_text.h"
#include "output/section_list.h"

namespace output {
namespace {

/// The gate that judges a requirement; a row more for each further gate.
constexpr std::array<std::pair<std::string_view, std::string_view>, 24> gates{{
    {"product.diameter", "slope"},
    {"product.thickness_variation", "throw"},
    {"image.resolution", "resolution"},
    {"image.smallest_feature", "feature"},
    {"image.smallest_feature", "resolution"},
    {"image.smallest_text", "resolution"},
    {"image.barcode_symbol", "bar_code"},
    {"image.barcode_module", "bar_code"},
    {"image.barcode_module", "resolution"},
    {"image.viewing_distance", "resolution"},
    {"image.levels", "levels"},
    {"colour.NAME.film", "film"},
    {"line.speed", "frequency"},
    {"line.throughput", "frequency"},
    {"line.throw_distance", "throw"},
    {"limits.heads", "heads"},
    {"limits.budget", "budget"},
    {"limits.lead_time", "lead_time"},
    {"limits.space", "space"},
    {"service.serviceable", "serviceable"},
    {"service.waveform", "waveform"},
    {"service.driver_sources", "driver_sources"},
    {"image.solids", "cover"},
    {"line.throw_variation", "throw"},
}};

/// Requirements that the figure of another answers.
constexpr std::array<std::pair<std::string_view, std::string_view>, 4> same_answer{{
    {"image.text_quality", "image.smallest_text"},
    {"image.barcode_direction", "image.barcode_module"},
    {"image.margin", "image.width"},
    {"line.throw_variation", "product.thickness_variation"},
}};

/// Beyond those of the gates: what a head may fail by that the request states; NAME is an ink's.
constexpr std::array<std::pair<std::string_view, std::string_view>, 7> judged{{
    {"ink.NAME.viscosity", "viscosity"},
    {"ink.NAME.surface_tension", "tension"},
    {"ink.NAME.jetting_temperature", "temperature"},
    {"ink.NAME.cure_dose", "cure"},
    {"substrate.temperature_limit", "cure"},
    {"substrate.temperature_limit", "drying"},
    {"image.registration", "placement"},
}};

/// Told once, in front of the requirements.
constexpr std::string_view not_shown = "\xE2\x80\x93";

std::string figure(const Context& c, double value, const std::string& unit) {
  if (unit == "1") return with_unit(value * 100, "%", 4);
  return unit.empty() ? number(value, 9) : c.measure(value, unit, 4);
}

/// An answer as a link to where its figure was worked out, or to the catalogue's row.
std::string led(const Context& c, const std::string& answer, std::string_view at,
                const Figure& figure) {
  const std::string step = figure_step(c, at, figure);
  const std::string to = step.empty() ? figure_input(c, at, figure) : anchor(step);
  const std::string quiet = as_quiet_link(to, answer);
  return quiet == answer ? as_link(to, answer) : quiet;
}

std::string speed_led(const Context& c, const std::string& answer, calc::Speed speed) {
  return led(c, answer, "station.speed .speed_limit", {speed.si(), "m/s"});
}

/// Where nothing passes: what the nearest head misses.
std::string shortfall(const Context& c, const std::string& pattern) {
  const calc::RejectedHead* const nearest = nearest_head(c.spec);
  if (nearest == nullptr) return std::string(not_shown);
  for (const calc::Reason& reason : nearest->reasons) {
    const bool concerns = std::any_of(gates.begin(), gates.end(), [&](const auto& gate) {
      return gate.first == pattern && gate.second == reason.code;
    });
    if (!concerns) continue;
    if (reason.unit.empty() && reason.limit <= 1) {  // a gate of yes or no
      return as_link("s-heads", c.words("answer.not_met_plain"));
    }
    return as_link("s-heads",
                   c.words("answer.not_met", {{"VALUE", figure(c, reason.value, reason.unit)},
                                              {"LIMIT", figure(c, reason.limit, reason.unit)}}));
  }
  return std::string(not_shown);
}

/// A number the calculation states in its checks or its notes on safety.
std::optional<double> check_figure(const Context& c, std::string_view code,
                                   const std::string& subject = {}) {
  for (const calc::Check& check : c.spec.tests) {
    const bool of_it = subject.empty() || check.subject == subject;
    if (check.code == code && of_it && check.acceptance) return check.acceptance;
  }
  return std::nullopt;
}

std::optional<double> note_figure(const Context& c, std::string_view code, std::string_view name) {
  for (const calc::Notice& note : c.spec.safety) {
    if (note.code != code) continue;
    for (const calc::Arg& arg : note.args) {
      const auto* const value = std::get_if<double>(&arg.value);
      if (arg.name == name && value != nullptr) return *value;
    }
  }
  return std::nullopt;
}

std::string gap_answer(const Context& c) {
  const auto most = check_figure(c, "throw_trial");
  if (!most) return {};
  const auto least = note_figure(c, "head_strike", "gap");
  const std::string answer =
      least ? c.words("answer.gap",
                      {{"LEAST", c.measure(*least, "mm", 3)}, {"MOST", c.measure(*most, "mm", 3)}})
            : c.words("answer.gap_most", {{"MOST", c.measure(*most, "mm", 3)}});
  return led(c, answer, ".gap_most .throw_most", {*most, "mm"});
}

std::string width_answer(const Context& c) {
  const calc::Group& group = c.spec.chosen.front();
  if (group.scan) {
    const calc::Length machine = group.scan->machine_width;
    return led(c,
               c.words("answer.machine_width",
                       {{"VALUE", escaped(c.bound(in_mm(machine), "mm", Rounding::up, 4))}}),
               ".machine_width", {in_mm(machine), "mm"});
  }
  const calc::Length width = group.head_pitch * (group.heads_across - 1) + group.swath;
  return led(c, c.words("answer.width", {{"VALUE", length_text(c, width, 4)}}), ".nozzles_over",
             {in_mm(width), "mm"});
}

std::string length_answer(const Context& c) {
  const calc::Group& group = c.spec.chosen.front();
  if (!group.scan) return {};
  const double strokes = group.scan->strokes;
  return led(c, c.words("answer.strokes", {{"COUNT", count_text(strokes)}}), ".strokes",
             {strokes, ""});
}

/// The resolution of the coarsest group.
std::string lattice_answer(const Context& c) {
  const auto coarsest = std::min_element(
      c.spec.chosen.begin(), c.spec.chosen.end(), [](const calc::Group& a, const calc::Group& b) {
        return a.resolution_across.si() * a.resolution_along.si() <
               b.resolution_across.si() * b.resolution_along.si();
      });
  const calc::Resolution across = coarsest->resolution_across;
  return led(c, escaped(lattice_text(across, coarsest->resolution_along)), ".across .motion",
             {in_dpi(across), "dpi", {coarsest->name}});
}

/// The levels used, from the fewest to the most of the channels.
std::string levels_answer(const Context& c) {
  int least = 0, most = 0;
  for (const calc::Group& group : c.spec.chosen) {
    for (const calc::ChannelDots& dots : group.dots) {
      least = least == 0 ? dots.levels_used : std::min(least, dots.levels_used);
      most = std::max(most, dots.levels_used);
    }
  }
  if (least == 0) return {};
  const std::string low = std::to_string(least), high = std::to_string(most);
  const std::string count =
      least == most ? low : c.words("front.span", {{"LOW", low}, {"HIGH", high}});
  return led(c, c.words("answer.levels", {{"COUNT", count}}),
             "@head." + c.spec.chosen.front().head + ".drops", {});
}

/// The greatest error of a kind of placement with the tolerances given and assumed.
std::string placed_answer(const Context& c, std::string_view budget) {
  calc::Length most;
  for (const calc::Budget& b : c.spec.placement) {
    if (b.name == budget) most = std::max(most, b.expanded);
  }
  if (most == calc::Length()) return {};
  const std::string at = "placement." + std::string(budget);
  return led(c, c.words("answer.registered", {{"VALUE", c.measure(in_um(most), "um", 3)}}),
             at + ".motion " + at + ".nozzle", {in_um(most), "um"});
}

std::string placement_answer(const Context& c) { return placed_answer(c, "image"); }

std::string registration_answer(const Context& c) {
  std::string placed = placed_answer(c, "colour");
  if (!placed.empty()) return placed;
  const calc::Group& group = c.spec.chosen.front();
  const double across = 1e6 / group.resolution_across.si();
  const std::string answer = c.words(
      "answer.registration", {{"ACROSS", c.measure(across, "um", 3)},
                              {"ALONG", c.measure(1e6 / group.resolution_along.si(), "um", 3)}});
  return led(c, answer, ".pitch_n .pitch_m", {across, "um", {group.name}});
}

std::string film_answer(const Context& c, const std::string& channel) {
  for (const calc::Group& group : c.spec.chosen) {
    for (const calc::ChannelDots& dots : group.dots) {
      if (dots.channel != channel) continue;
      const double film = dots.laydown * 1e6;
      return led(c, c.words("answer.film", {{"VALUE", c.measure(film, "um", 3)}}), ".laydown",
                 {film, "um", {channel}});
    }
  }
  return {};
}

/// Of the final cure, or of the pinning before it.
std::string dose_answer(const Context& c, bool pinning) {
  if (!c.spec.station) return {};
  for (const calc::Stage& stage : c.spec.station->stages) {
    if ((stage.kind == "pinning") != pinning) continue;
    if (stage.dose_given_mj_per_cm2) {
      const double given = *stage.dose_given_mj_per_cm2;
      const std::string answer = c.words(
          "answer.dose_given", {{"VALUE", escaped(c.bound(given, "mJ/cm2", Rounding::down))}});
      return led(c, answer, pinning ? "station.pinning.dose_given" : "station.lamp_dose",
                 {given, "mJ/cm2"});
    }
    if (!stage.dose_mj_per_cm2) continue;
    return led(
        c, c.words("answer.dose", {{"VALUE", with_unit(*stage.dose_mj_per_cm2, "mJ/cm2", 3)}}),
        pinning ? "station.pinning.dose" : "station.uv.dose", {*stage.dose_mj_per_cm2, "mJ/cm2"});
  }
  return {};
}

std::string rate_answer(const Context& c) {
  const auto slowest = std::min_element(
      c.spec.chosen.begin(), c.spec.chosen.end(),
      [](const calc::Group& a, const calc::Group& b) { return a.speed_limit < b.speed_limit; });
  if (slowest->scan) {
    const std::optional<PartsRate> parts = parts_rate(c);
    const double area = slowest->scan->throughput.si() * 3600;
    return led(c,
               c.words("answer.throughput",
                       {{"VALUE", parts ? parts->reached : c.measure(area, "m2/h", 3)}}),
               ".throughput", {area, "m2/h", {slowest->name}});
  }
  const calc::StationSpeed limit = highest_speed(c);
  std::string reached = speed_limit_text(c, limit.speed);
  // Who asks for parts is answered in parts.
  if (const std::optional<PartsRate> parts = parts_rate(c)) {
    reached = c.words("answer.rate", {{"RATE", parts->reached}, {"SPEED", reached}});
  }
  const std::string answer =
      speed_led(c,
                c.words(limit.at_most ? "answer.speed_at_most" : "answer.speed",
                        {{"LIMIT", reached}, {"BY", c.words("sets_speed." + limit.by)}}),
                limit.speed);
  const std::string held = speed_held_text(c);
  return held.empty() ? answer : answer + "; " + held;
}

/// The row of the catalogue of what comes last.
std::string latest_row(const Context& c, double days) {
  const std::vector<calc::BomLine>& bom = c.spec.station->bom;
  const auto line = std::find_if(bom.begin(), bom.end(), [&](const calc::BomLine& l) {
    return l.lead_time_days && !(*l.lead_time_days < days);
  });
  return line == bom.end() ? std::string() : listed_at(c, line->source + ".lead_time");
}

/// Figures of the station rather than of the heads.
std::string station_answer(const Context& c, const std::string& key) {
  if (!c.spec.station) return {};
  const calc::Station& station = *c.spec.station;
  if (key == "limits.budget") {
    const double capital = station.cost.capital.major();
    const std::string amount = rough_amount(station.currency, capital);
    return led(c,
               station.bom_unpriced > 0 ? c.words("answer.budget_unpriced", {{"VALUE", amount}})
                                        : escaped(amount),
               "station.capital", {capital, station.currency});
  }
  if (key == "limits.lead_time" && station.lead_time) {
    const double days = station.lead_time->days;
    const std::string slowest = as_link(latest_row(c, days), escaped(with_unit(days, "d", 3)));
    return c.worded("answer.lead_time", {{"VALUE", slowest}});
  }
  if (key == "limits.space") {
    return led(c, escaped(length_text(c, station.footprint)), "station.footprint",
               {in_mm(station.footprint), "mm"});
  }
  return {};
}

std::string figure_answer(const Context& c, const std::string& asked) {
  const auto* const same = std::find_if(same_answer.begin(), same_answer.end(),
                                        [&](const auto& pair) { return pair.first == asked; });
  const std::string key(same == same_answer.end() ? asked : std::string(same->second));
  const std::string pattern = Context::pattern(key);
  if (pattern == "colour.NAME.film") return film_answer(c, Context::name(key));
  if (pattern == "ink.NAME.cure_dose") return dose_answer(c, false);
  if (pattern == "ink.NAME.pinning_dose") return dose_answer(c, true);
  using Answer = std::string (*)(const Context&);
  constexpr std::array<std::pair<std::string_view, Answer>, 15> answers{{
      {"image.width", width_answer},
      {"image.length", length_answer},
      {"image.resolution", lattice_answer},
      {"image.smallest_feature", lattice_answer},
      {"image.smallest_text", lattice_answer},
      {"image.viewing_distance", lattice_answer},
      {"image.barcode_symbol", symbol_answer},
      {"image.barcode_module", module_answer},
      {"image.levels", levels_answer},
      {"image.registration", registration_answer},
      {"image.placement", placement_answer},
      {"line.speed", rate_answer},
      {"line.throughput", rate_answer},
      {"line.throw_distance", gap_answer},
      {"product.thickness_variation", gap_answer},
  }};
  for (const auto& [name, answer] : answers) {
    if (name == key) return answer(c);
  }
  if (key == "limits.heads") {
    return led(c,
               c.counted("answer.heads", static_cast<std::size_t>(c.spec.heads_total),
                         {{"COUNT", count_text(c.spec.heads_total)}}),
               "station.heads .heads_total", {static_cast<double>(c.spec.heads_total), ""});
  }
  const std::string answer = station_answer(c, key);
  return answer.empty() ? demand_answer(c, key) : answer;
}

}  // namespace

const calc::RejectedHead* nearest_head(const calc::Specification& spec) {
  return calc::nearest_head(spec.rejected);
}

std::string reason_key(const Context& c, const calc::Reason& reason) {
  std::vector<calc::Origin> places;
  const auto add = [&](std::string_view pattern, std::string_view code) {
    if (code != reason.code) return;
    for (const calc::Input& input : c.spec.inputs) {
      const std::string name = Context::name(input.key);
      if (Context::pattern(input.key) != pattern) continue;
      if (name.empty() || name == reason.subject) places.push_back(input.origin);
    }
  };
  for (const auto& [pattern, code] : gates) add(pattern, code);
  for (const auto& [pattern, code] : judged) add(pattern, code);
  return place_keys(places);
}

std::string requirement_answer(const Context& c, const std::string& key) {
  const std::string pattern = Context::pattern(key);
  if (c.spec.verdict == calc::Verdict::incomplete) return c.words("answer.none");
  if (c.spec.chosen.empty()) return shortfall(c, pattern);
  std::string answer = figure_answer(c, key);
  return answer.empty() ? c.words("answer.to_be_shown", {{"BY", c.words("verify." + pattern)}})
                        : answer;
}

}  // namespace output
