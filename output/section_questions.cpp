/// Questions to the customer, and checks before anyone commits.
#include <algorithm>
#include <array>
#include <cstddef>
#include <utility>
#include <vector>

#include "calc/barcode.h"
#include "output/compose_text.h"
#include "output/figure_places.h"
#include "output/format.h"
#include "output/section_list.h"
#include "output/sketch_list.h"

namespace output {
namespace {

/// What is taken for a field that is no number.
std::string assumed_in_words(const Context& c, const std::string& field) {
  const auto& all = c.spec.assumptions;
  const auto taken = std::find_if(all.begin(), all.end(), [&](const calc::Assumption& a) {
    return a.field == field && !a.text.empty();
  });
  return taken == all.end() ? c.words("nothing_assumed") : escaped(assumed_word(c, *taken));
}

std::string assumed_once(const Context& c, const calc::Question& question) {
  if (!question.assumed) return assumed_in_words(c, question.field);
  const double high = question.high.value_or(*question.assumed);
  std::string text = plain_value(c, *question.assumed, high, question.unit);
  const std::string range = plain_range(c, question.low, question.high, question.unit);
  if (!range.empty()) text += " (" + range + ")";
  return escaped(text);
}

std::string names_of(const Context& c, const AlikeQuestions& alike) {
  std::vector<std::string> names;
  for (const calc::Question* question : alike) {
    std::string name = Context::name(question->field);
    const bool known = std::find(names.begin(), names.end(), name) != names.end();
    if (!name.empty() && !known) names.push_back(std::move(name));
  }
  return names_text(c, names);
}

/// Adds to the first group whose front is alike, else as a new group.
template <class Item, class Alike>
void add_to_group(std::vector<std::vector<const Item*>>& groups, const Item& item, Alike alike) {
  const auto found = std::find_if(groups.begin(), groups.end(),
                                  [&](const auto& group) { return alike(*group.front(), item); });
  if (found != groups.end()) {
    found->push_back(&item);
  } else {
    groups.push_back({&item});
  }
}

/// How many nozzles the head of that name has in the mode it is used in; empty for no such head.
std::string nozzles_of(const Context& c, const std::string& head) {
  const auto group = std::find_if(c.spec.chosen.begin(), c.spec.chosen.end(),
                                  [&](const calc::Group& g) { return g.head == head; });
  return group == c.spec.chosen.end() ? std::string() : std::to_string(group->nozzles);
}

/// Groups that share a figure stand together, with commas; each as the customer knows it.
std::string group_names(const Context& c, std::string_view names) {
  constexpr std::string_view between = ", ";
  std::string text;
  for (std::size_t from = 0; from < names.size();) {
    const std::size_t to = std::min(names.find(between, from), names.size());
    if (from > 0) text += between;
    text += c.group_name(std::string(names.substr(from, to - from)));
    from = to + between.size();
  }
  return text;
}

std::string subject_text(const Context& c, const calc::Check& check) {
  if (check.code.starts_with("barcode_")) return symbol_text(c, check.subject);
  const bool of_group = check.code == "stitch" || check.code == "strokes";
  return escaped(of_group ? group_names(c, check.subject) : check.subject);
}

/// Of a bar code's grade, which standard grades it: ".linear", ".matrix", or empty.
std::string kind_of(const calc::Check& check) {
  if (check.code != "barcode_grade") return {};
  const calc::BarcodeSymbol* const symbol = calc::find_barcode_symbol(check.subject);
  if (symbol == nullptr) return {};
  return symbol->two_dimensional ? ".matrix" : ".linear";
}

/// What to do, with the axis where it is of one.
std::string check_text(const Context& c, const calc::Check& check) {
  Values values;
  const std::string axis = "axis." + check.axis;
  const bool of_strokes = check.code == "strokes";
  values.set_markup(
      "AXIS", check.axis.empty() ? std::string() : c.words(of_strokes ? c.of_motion(axis) : axis));
  return c.templates.words(c.language(), c.of_motion("check." + check.code + kind_of(check)),
                           values);
}

/// Values that differ stand with the names they are taken for.
std::string question_assumed(const Context& c, const AlikeQuestions& alike) {
  std::vector<std::pair<std::string, AlikeQuestions>> values;
  for (const calc::Question* question : alike) {
    std::string text = assumed_once(c, *question);
    const auto found = std::find_if(values.begin(), values.end(),
                                    [&](const auto& entry) { return entry.first == text; });
    if (found != values.end()) {
      found->second.push_back(question);
    } else {
      values.emplace_back(std::move(text), AlikeQuestions{question});
    }
  }
  if (values.size() == 1) return values.front().first;
  std::string all;
  for (const auto& [text, questions] : values) {
    all += (all.empty() ? "" : "; ") + names_of(c, questions) + ": " + text;
  }
  return all;
}

/// Where what is taken meanwhile comes from: the row of the assumption, or a margin's step.
struct Taken {
  std::string to, key;
};

Taken taken_of(const Context& c, const AlikeQuestions& alike) {
  for (const calc::Question* one : alike) {
    for (const std::string& key : {one->parameter, one->field}) {
      const std::string to = assumed_at(c, key);
      if (!to.empty()) return {to, {}};
    }
    if (!one->assumed) continue;
    const std::string id =
        figure_step(c, "placement.colour.limit required.across", {*one->assumed, one->unit, {}});
    if (!id.empty()) return {{}, anchor(id)};
  }
  return {};
}

/// By what the questions are ranked: where nothing passes first by whether they could change that.
std::string order_of(const Context& c) {
  if (c.spec.verdict != calc::Verdict::infeasible) return "moves";
  const bool chance = std::any_of(c.spec.questions.begin(), c.spec.questions.end(),
                                  [](const calc::Question& q) { return !q.lets_pass.empty(); });
  return chance ? "lets_pass" : "nothing_passes";
}

/// "x or more" is rounded up, "at most x" down: who keeps what is printed keeps the figure.
Rounding way_of(std::string_view code) {
  using namespace std::string_view_literals;
  constexpr std::array up{"wetting"sv,     "frequency"sv, "cure_at_speed"sv, "drying_at_speed"sv,
                          "throw_trial"sv, "capture"sv,   "dot_diameter"sv,  "film"sv};
  constexpr std::array down{"row_delays"sv,      "uv_leakage"sv, "vapour_at_workplace"sv,
                            "web_temperature"sv, "stitch"sv,     "strokes"sv,
                            "registration"sv,    "tilt"sv};
  if (std::find(up.begin(), up.end(), code) != up.end()) return Rounding::up;
  const bool most = std::find(down.begin(), down.end(), code) != down.end();
  return most ? Rounding::down : Rounding::nearest;
}

/// A digit more where the figure stands elsewhere to the nearest: among the dots, the budgets and
/// the conditions.
int digits_of(std::string_view code) {
  using namespace std::string_view_literals;
  constexpr std::array four{"dot_diameter"sv, "stitch"sv, "strokes"sv, "registration"sv};
  return std::find(four.begin(), four.end(), code) == four.end() ? 3 : 4;
}

/// The fit of the symbol and axis that a check of a module is of, or null.
const calc::BarcodeFit* fit_of(const Context& c, const calc::Check& check) {
  if (check.code != "barcode_module") return nullptr;
  for (const calc::Group& group : c.spec.chosen) {
    for (const calc::BarcodeFit& fit : group.barcodes) {
      const bool axis = check.axis == "both" || fit.across == (check.axis == "across");
      if (axis && fit.symbol == check.subject && fit.module_most > calc::Length()) return &fit;
    }
  }
  return nullptr;
}

/// The window of viscosity of the head that the ink checked is in, "8 to 12 mPa.s", as a link to
/// its row; empty where the catalogue states none.
std::string window_of(const Context& c, const calc::Check& check) {
  const std::string channel = check.subject.substr(0, check.subject.find(", "));
  for (const calc::InkInHead& ink : c.spec.inks) {
    const std::string key = "head." + ink.head + ".viscosity_window";
    const calc::Input* const window = c.input(key);
    if (ink.channel == channel && window != nullptr) {
      return c.figure_given(key, plain_range(c, window->low, window->high, window->unit));
    }
  }
  return {};
}

}  // namespace

std::string check_acceptance(const Context& c, const calc::Check& check) {
  if (!check.acceptance) return c.words("by_agreement");
  const std::string limit = check.unit == "1" ? with_unit(*check.acceptance * 100, "%", 3)
                                              : c.bound(*check.acceptance, check.unit,
                                                        way_of(check.code), digits_of(check.code));
  if (const calc::BarcodeFit* const fit = fit_of(c, check)) {
    return c.words("check.barcode_module.acceptance.range",
                   {{"VALUE", limit},
                    {"LEAST", c.bound(in_um(fit->module_least), check.unit, Rounding::up, 4)},
                    {"MOST", c.bound(in_um(fit->module_most), check.unit, Rounding::down, 4)}});
  }
  const std::string window = check.code == "viscosity" ? window_of(c, check) : std::string();
  if (!window.empty()) {
    return c.worded("check.viscosity.acceptance.window",
                    {{"VALUE", escaped(limit)}, {"WINDOW", window}});
  }
  const std::string key = "check." + check.code + ".acceptance";
  return c.has_words(key) ? c.words(key, {{"VALUE", limit},
                                          {"NUMBER", number(*check.acceptance, 3)},
                                          {"COUNT", nozzles_of(c, check.subject)}})
                          : escaped(limit);
}

std::string question_text(const Context& c, const AlikeQuestions& alike) {
  Values values;
  values.set_markup("NAME", names_of(c, alike));
  double up_to = 0;
  for (const calc::Question* one : alike) up_to = std::max(up_to, one->up_to_degc.value_or(0));
  values.set("TEMPERATURE", c.measure(up_to, "degC"));
  return c.templates.words(c.language(), "question." + alike.front()->code, values);
}

std::vector<AlikeQuestions> grouped_questions(const Context& c) {
  std::vector<AlikeQuestions> groups;
  for (const calc::Question& question : c.spec.questions) {
    add_to_group(groups, question,
                 [](const calc::Question& a, const calc::Question& b) { return a.code == b.code; });
  }
  return groups;
}

std::string question_effect(const Context& c, const AlikeQuestions& alike) {
  const bool lets_pass = std::any_of(alike.begin(), alike.end(),
                                     [](const calc::Question* q) { return !q->lets_pass.empty(); });
  if (lets_pass) return c.effect("lets_pass");
  const std::string& effect = alike.front()->effect;
  return effect.empty() ? std::string() : c.effect(effect);
}

void set_question(const Context& c, Values& row, std::size_t number, const AlikeQuestions& alike) {
  row.set("NUMBER", std::to_string(number));
  row.set_markup("TEXT", question_text(c, alike));
  row.set_markup("ASSUMED", question_assumed(c, alike));
}

std::string questions_section(const Context& c) {
  const std::vector<AlikeQuestions> groups = grouped_questions(c);
  if (groups.empty()) return {};
  Values values;
  values.set_markup("ORDER", c.words("questions_order." + order_of(c)));
  for (std::size_t i = 0; i < groups.size(); ++i) {
    Values& row = values.add("ROW");
    set_question(c, row, i + 1, groups[i]);
    const Taken taken = taken_of(c, groups[i]);
    row.set("KEY", taken.key);
    row.set_markup("ASSUMED", as_link(taken.to, question_assumed(c, groups[i])));
    row.set_markup("EFFECT", question_effect(c, groups[i]));
  }
  return c.expand("questions", values);
}

std::string checks_section(const Context& c) {
  if (c.spec.tests.empty()) return {};
  std::vector<std::vector<const calc::Check*>> groups;
  for (const calc::Check& check : c.spec.tests) {
    add_to_group(groups, check, [](const calc::Check& a, const calc::Check& b) {
      return a.code == b.code && a.acceptance == b.acceptance && a.unit == b.unit &&
             a.axis == b.axis;
    });
  }
  Values values;
  for (std::size_t i = 0; i < groups.size(); ++i) {
    const calc::Check& check = *groups[i].front();
    std::vector<std::string> subjects;
    for (const calc::Check* one : groups[i]) {
      std::string subject = subject_text(c, *one);
      const bool known = std::find(subjects.begin(), subjects.end(), subject) != subjects.end();
      if (!subject.empty() && !known) subjects.push_back(std::move(subject));
    }
    Values& row = values.add("ROW");
    row.set("NUMBER", std::to_string(i + 1));
    row.set_markup("TEXT", check_text(c, check));
    row.set_markup("SUBJECT", joined(c, subjects));
    row.set("KEY", check_keys(c, check));
    row.set_markup("ACCEPTANCE", linked_acceptance(c, check));
  }
  values.set_markup("PATTERN", sketch_pattern(c));
  return c.expand("checks", values);
}

}  // namespace output
