/// The requirement as understood: restated, and every value with its origin.
#include <algorithm>
#include <cmath>
#include <cstddef>
#include <set>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_list.h"

namespace output {
namespace {

/// What the design answers to a requirement; empty when it answers by being built so.
std::string answer(const Context& c, const std::string& key) {
  const calc::Specification& spec = c.spec;
  if (spec.chosen.empty()) return {};
  const calc::Group& group = spec.chosen.front();
  if (key == "image.width" && !group.scan) {
    const calc::Length width = group.head_pitch * (group.heads_across - 1) + group.swath;
    return c.words("answer.width", {{"VALUE", length_text(c, width, 5)}});
  }
  if (key == "image.resolution" || key == "image.smallest_feature" ||
      key == "image.smallest_text") {
    return escaped(lattice_text(group.resolution_across, group.resolution_along));
  }
  if (key == "line.speed") {
    calc::Speed least = group.speed_limit;
    for (const calc::Group& other : spec.chosen) least = std::min(least, other.speed_limit);
    return c.words("answer.speed", {{"LIMIT", speed_limit_text(c, least)}});
  }
  if (key == "limits.heads") {
    return c.words("answer.heads", {{"COUNT", count_text(spec.heads_total)}});
  }
  if (!spec.station) return {};
  const calc::Station& station = *spec.station;
  if (key == "limits.budget") return escaped(amount(station.currency, station.cost.capital));
  if (key == "limits.lead_time" && station.lead_time) {
    return escaped(with_unit(station.lead_time->days, "d", 3));
  }
  if (key == "limits.space") return escaped(length_text(c, station.footprint));
  return {};
}

void add_shall(const Context& c, const calc::Input& input, Values& table, int number) {
  const std::string pattern = c.pattern(input.key);
  Values& row = table.add("ROW");
  row.set("NUMBER", "R" + std::to_string(number));
  row.set("ANCHOR", "s-shall-" + anchor(input.key));
  row.set("KEY", place_key(input.origin));
  row.set_markup("TEXT", c.words("shall." + pattern,
                                 {{"VALUE", input_text(c, input)}, {"NAME", c.name(input.key)}}));
  const std::string given_answer = answer(c, input.key);
  row.set_markup("ANSWER", given_answer.empty() ? c.words("answer.by_design") : given_answer);
  row.set_markup("VERIFY", c.words("verify." + pattern));
}

void add_requirements(const Context& c, Values& values) {
  Values* table = nullptr;
  int number = 0;
  for (const calc::Input& input : c.spec.inputs) {
    if (input.origin.kind != calc::OriginKind::given) continue;
    if (!c.has_words("shall." + c.pattern(input.key))) continue;
    if (table == nullptr) table = &values.add("SHALL");
    add_shall(c, input, *table, ++number);
  }
}

bool given(const Context& c, const std::string& key) {
  return std::any_of(c.spec.inputs.begin(), c.spec.inputs.end(), [&](const calc::Input& input) {
    return input.key == key && input.origin.kind == calc::OriginKind::given;
  });
}

void add_inputs(const Context& c, Values& values, calc::OriginKind kind, std::string_view section) {
  Values* table = nullptr;
  std::set<std::string, std::less<>> seen;  // an anchor stands once
  for (const calc::Input& input : c.spec.inputs) {
    if (input.origin.kind != kind || !is_listed(input) || !seen.insert(input.key).second) continue;
    if (table == nullptr) table = &values.add(section);
    Values& row = table->add("ROW");
    // A field may be given in one form and derived in another; what was given is what links mean.
    const bool named = kind == calc::OriginKind::derived && given(c, input.key);
    row.set("ANCHOR", named ? "s-derived-" + anchor(input.key) : input_anchor(input.key));
    row.set("KEY", place_key(input.origin));
    row.set_markup("NAME", c.field(input.key));
    row.set("RAW", input.origin.raw);
    row.set("VALUE", input_text(c, input));
  }
}

/// The unit as printed: a rate of money per hour or per kilowatt hour has the currency for its 1.
std::string assumed_unit(const Context& c, const calc::Assumption& assumption) {
  const bool is_money = assumption.field == "costs.labour" || assumption.field == "costs.energy";
  const bool per = assumption.unit.starts_with("1/");
  if (!is_money || !per || !c.spec.station) return assumption.unit;
  return c.spec.station->currency + assumption.unit.substr(1);
}

std::string assumed_value(const Context& c, const calc::Assumption& assumption) {
  return assumption.text.empty() ? with_unit(assumption.value, assumed_unit(c, assumption), 4)
                                 : assumption.text;
}

std::string range(const Context& c, const calc::Assumption& assumption) {
  if (!assumption.low || !assumption.high || *assumption.low == *assumption.high) return {};
  return number(*assumption.low, 4) + " " + c.words("to") + " " +
         with_unit(*assumption.high, assumed_unit(c, assumption), 4);
}

void add_assumptions(const Context& c, Values& values) {
  if (c.spec.assumptions.empty()) return;
  Values& table = values.add("ASSUMED");
  std::set<std::string, std::less<>> seen;
  for (const calc::Assumption& assumption : c.spec.assumptions) {
    if (!seen.insert(assumption.field).second) continue;
    Values& row = table.add("ROW");
    row.set("ANCHOR", input_anchor("assumed " + assumption.field));
    row.set_markup("NAME", c.field(assumption.field));
    row.set("VALUE", assumed_value(c, assumption));
    row.set("RANGE", range(c, assumption));
    row.set_markup("EFFECT", c.effect(assumption.effect));
    row.set("SOURCE", assumption.source);
  }
}

}  // namespace

bool is_listed(const calc::Input& input) {
  return input.origin.kind != calc::OriginKind::derived || !input.text.empty() ||
         std::abs(input.value) > 0;
}

std::string input_anchor(const std::string& key) { return "s-given-" + anchor(key); }

std::string requirement_section(const Context& c) {
  Values values;
  add_requirements(c, values);
  add_inputs(c, values, calc::OriginKind::given, "GIVEN");
  add_inputs(c, values, calc::OriginKind::derived, "DERIVED");
  add_assumptions(c, values);
  if (const auto& notes = c.request.request.notes) {
    Values& remarks = values.add("NOTES");
    remarks.set("KEY", place_key(notes->origin));
    remarks.set("TEXT", notes->value);
  }
  return values.sections().empty() ? std::string() : c.expand("requirement", values);
}

}  // namespace output
