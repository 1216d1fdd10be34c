// Where the figures of notices and checks lead to, over requests that bring out every code.
#include <doctest/doctest.h>

#include <algorithm>
#include <functional>
#include <set>
#include <string>
#include <string_view>
#include <variant>

#include "output/figure_places.h"
#include "output/markup.h"
#include "tests/whole/support/case.h"
#include "tests/whole/support/code_cases.h"

namespace {

using Names = std::set<std::string, std::less<>>;

/// Figures that lead nowhere: "kind code argument".
const Names& leading_nowhere() {
  static const Names names{
      // of a rule or a law that is told with them
      "condition several_stations limit", "safety noise action", "safety noise lower",
      "safety noise permissible", "safety noise upper", "safety ozone limit",
      "safety photobiological group", "safety stray_light distance", "safety stray_light near",
      "safety ink_storage_flammable limit", "safety lel_monitoring monitored",
      "warning impact_speed limit", "warning jetting_windows held", "warning jetting_windows count",
      "warning splash limit", "check adhesion ", "check barcode_grade ", "check rub ",
      "check vapours_at_workplace ",
      // of the same rule, where stations come up with another value
      "condition assumption_condition condition_limit",
      // of which the bund beside it is worked out
      "safety ink_storage container", "safety ink_storage_flammable container",
      // not told in words
      "condition unpriced_budget value", "condition unpriced_budget limit",
      "warning angle_capped least", "warning closed_gap dots", "warning finer_than_dot dot",
      "warning finer_than_dot pitch", "warning line_deviation dots",
      "warning line_deviation deviation", "warning line_deviation line",
      "warning line_deviation gap", "warning particle_size size", "warning particle_size limit",
      "warning slope slope", "warning slope limit", "warning price_currency prices",
      "warning price_stale age", "check solids_close ", "check drying_at_speed "};
  return names;
}

/// Figures by kind, code and argument, and those of them that led somewhere in some document.
struct Seen {
  Names all, led;
};

/// The value of an assumption leads to the assumption's row, by its name.
bool leads_by_field(const calc::Notice& notice, const calc::Arg& arg) {
  return arg.name == "value" &&
         (notice.code == "assumption_edge" || notice.code == "assumption_condition");
}

std::vector<std::string> names_of(const calc::Notice& notice) {
  std::vector<std::string> names;
  for (const calc::Arg& arg : notice.args) {
    const auto* const text = std::get_if<std::string>(&arg.value);
    if (text != nullptr) names.push_back(text->substr(0, text->find(", ")));
  }
  return names;
}

bool leads(const output::Context& c, std::string_view kind, const calc::Notice& notice,
           const calc::Arg& arg) {
  const std::string at = output::notice_places(kind, notice, arg.name);
  const output::Figure figure{std::get<double>(arg.value), arg.unit, names_of(notice)};
  return !output::figure_step(c, at, figure).empty() ||
         !output::figure_input(c, at, figure).empty();
}

void see(const output::Context& c, const std::string& kind, const std::vector<calc::Notice>& list,
         Seen& seen) {
  for (const calc::Notice& notice : list) {
    for (const calc::Arg& arg : notice.args) {
      if (leads_by_field(notice, arg) || !std::holds_alternative<double>(arg.value)) continue;
      const std::string name = kind + " " + notice.code + " " + arg.name;
      seen.all.insert(name);
      if (leads(c, kind, notice, arg)) seen.led.insert(name);
    }
  }
}

void see(const output::Context& c, const calc::Check& check, Seen& seen) {
  if (!check.acceptance) return;
  const std::string name = "check " + check.code + " ";
  seen.all.insert(name);
  const bool link = output::linked_acceptance(c, check).find("<a ") != std::string::npos;
  if (link || !output::check_keys(c, check).empty()) seen.led.insert(name);
}

Seen figures_of_all_codes() {
  Seen seen;
  for (const std::string& changes : whole::code_cases()) {
    const whole::Case made = whole::case_of(changes);
    const output::Context c(made.specification, made.request.request, whole::templates());
    see(c, "condition", made.specification.conditions, seen);
    see(c, "warning", made.specification.warnings, seen);
    if (made.specification.station) see(c, "warning", made.specification.station->warnings, seen);
    see(c, "safety", made.specification.safety, seen);
    for (const calc::Check& check : made.specification.tests) see(c, check, seen);
  }
  return seen;
}

void add_words(std::string_view text, Names& names) {
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(' '), text.size());
    if (end > 0) names.emplace(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
}

/// The anchors of a document, and where its links in sentences lead.
void gather(const output::Node& node, Names& anchors, Names& links) {
  add_words(node.get("id"), anchors);
  add_words(node.get("also"), anchors);
  if (node.name == "a") links.emplace(node.get("to"));
  for (const output::Node& child : node.children) gather(child, anchors, links);
}

}  // namespace

TEST_CASE("every figure of a notice or a check leads somewhere, or is known to be of none") {
  const Seen seen = figures_of_all_codes();
  for (const std::string& name : seen.all) {
    CAPTURE(name);
    CHECK(seen.led.contains(name) != leading_nowhere().contains(name));
  }
  for (const std::string& name : leading_nowhere()) {
    CAPTURE(name);
    CHECK(seen.all.contains(name));
  }
}

TEST_CASE("links of documents of every code lead to their anchors") {
  std::size_t count = 0;
  for (const std::string& changes : whole::code_cases()) {
    CAPTURE(changes);
    Names anchors, links;
    gather(output::parse_markup(whole::case_of(changes).markup()), anchors, links);
    for (const std::string& to : links) {
      CAPTURE(to);
      CHECK(anchors.contains(to));
    }
    count += links.size();
  }
  CHECK(count > 1000);
}

TEST_CASE("a figure leads to the step of what it is about, and to none that has another value") {
  const whole::Case made = whole::case_of("");
  const output::Context c(made.specification, made.request.request, whole::templates());
  const calc::Step* drop = nullptr;
  for (const calc::Step& step : made.specification.trace) {
    if (step.id.ends_with(".drop")) drop = &step;
  }
  REQUIRE(drop != nullptr);
  CHECK(output::figure_step(c, ".drop", {drop->value, "pL"}).ends_with(".drop"));
  CHECK(output::figure_step(c, ".drop", {drop->value * 1.02, "pL"}).empty());
  CHECK(output::figure_step(c, ".drop", {drop->value, "mm"}).empty());
  CHECK(output::figure_step(c, "@line.speed", {drop->value, "pL"}).empty());
  CHECK(output::figure_input(c, "@line.nothing @line.speed", {}) == "s-given-line.speed");
  CHECK(output::figure_input(c, "@ink.NAME.viscosity", {0, {}, {"cyan"}}) ==
        "s-given-ink.cyan.viscosity");
  CHECK(output::as_link("there", "<a to=\"here\">x</a>") == "<a to=\"here\">x</a>");
}
TEST_CASE("numbers of similarity are told as numbers and not in percent") {
  std::size_t told = 0;
  for (const std::string& changes : whole::code_cases()) {
    const whole::Case made = whole::case_of(changes);
    const output::Context c(made.specification, made.request.request, whole::templates());
    for (const calc::Notice& notice : made.specification.warnings) {
      if (notice.code != "splash" && notice.code != "jetting_windows") continue;
      const std::string text = c.notice("warning", notice);
      CAPTURE(text);
      CHECK(text.find('%') == std::string::npos);
      ++told;
    }
  }
  CHECK(told > 1);
}
