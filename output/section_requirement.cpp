/// The requirement as understood: restated, and every value with its origin.
#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <set>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/rate_text.h"
#include "output/section_list.h"

namespace output {
namespace {

void add_shall(const Context& c, const calc::Input& input, const std::string& shall, Values& table,
               int number) {
  const std::string pattern = Context::pattern(input.key);
  Values& row = table.add("ROW");
  row.set("NUMBER", "R" + std::to_string(number));
  row.set("ANCHOR", "s-shall-" + anchor(input.key));
  row.set("KEY", place_key(input.origin));
  const std::optional<PartsRate> parts =
      input.key == "line.throughput" ? parts_rate(c) : std::nullopt;  // in the answer's unit
  const std::string value = parts ? parts->asked : input_text(c, input);
  row.set_markup(
      "TEXT", c.words(c.of_motion(shall), {{"VALUE", value}, {"NAME", Context::name(input.key)}}));
  row.set_markup("ANSWER", requirement_answer(c, input.key));
  row.set("MARGIN", requirement_margin(c, input.key));
  row.set_markup("VERIFY", c.words("verify." + pattern));
}

/// Whose figures stand as answers where nothing passes.
void add_nearest(const Context& c, Values& table) {
  const calc::RejectedHead* const nearest = nearest_head(c.spec);
  if (c.spec.verdict != calc::Verdict::infeasible || nearest == nullptr) return;
  table.add("NEAREST").set_markup("TEXT", c.words("answer.nearest", {{"HEAD", nearest->head}}));
}

void add_requirements(const Context& c, Values& values) {
  Values* table = nullptr;
  int number = 0;
  for (const calc::Input& input : c.spec.inputs) {
    if (input.origin.kind != calc::OriginKind::given) continue;
    const std::string shall = shall_words(c, input);
    if (shall.empty()) continue;
    if (table == nullptr) {
      table = &values.add("SHALL");
      add_nearest(c, *table);
    }
    add_shall(c, input, shall, *table, ++number);
  }
}

bool given(const Context& c, const std::string& key) {
  return std::any_of(c.spec.inputs.begin(), c.spec.inputs.end(), [&](const calc::Input& input) {
    return input.key == key && input.origin.kind == calc::OriginKind::given;
  });
}

/// Whether the date of issue was set otherwise than the request has it.
bool is_reissued(const Context& c, const calc::Input& input) {
  return input.key == "request.date" && input.text != c.spec.date;
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
    row.set("KEY", kind == calc::OriginKind::derived ? c.step_keys({"derived." + input.key})
                                                     : place_key(input.origin));
    row.set_markup("NAME", c.field(input.key));
    row.set("RAW", input.origin.raw);
    row.set("VALUE", is_reissued(c, input) ? c.words("overridden", {{"DATE", c.spec.date}})
                                           : input_text(c, input));
  }
}

constexpr std::string_view no_source = "common practice, no source";

bool is_share(double high, const std::string& unit) {
  return high <= 1 && (unit.empty() || unit == "1" || unit == "1/a");
}

void add_assumptions(const Context& c, Values& values) {
  if (c.spec.assumptions.empty()) return;
  Values& table = values.add("ASSUMED");
  std::set<std::string, std::less<>> seen;
  bool marked = false;
  for (const calc::Assumption& assumption : c.spec.assumptions) {
    if (!seen.insert(assumption.field).second) continue;
    const bool unsourced = assumption.source == no_source;
    marked = marked || unsourced;
    Values& row = table.add("ROW");
    row.set("ANCHOR", input_anchor("assumed " + assumption.field));
    row.set_markup("NAME", c.field(assumption.field));
    row.set("VALUE", assumption.text.empty()
                         ? plain_value(c, assumption.value,
                                       assumption.high.value_or(assumption.value), assumption.unit)
                         : assumed_word(c, assumption));
    row.set("RANGE", plain_range(c, assumption.low, assumption.high, assumption.unit));
    row.set_markup("EFFECT", c.effect(assumption.effect));
    if (unsourced) {
      row.add("UNSOURCED");
    } else if (!assumption.source.empty()) {
      row.add("SOURCED").set_markup("SOURCE", c.said(assumption.source));
    }
  }
  if (marked) table.add("FOOTNOTE");
}

}  // namespace

bool is_listed(const calc::Input& input) {
  return input.origin.kind != calc::OriginKind::derived || !input.text.empty() ||
         std::abs(input.value) > 0;
}

std::string shall_words(const Context& c, const calc::Input& input) {
  const std::string key = "shall." + Context::pattern(input.key);
  std::string own = key + "." + input.text;
  if (!input.text.empty() && c.has_words(own)) return own;
  return c.has_words(key) ? key : std::string();
}

std::string input_anchor(const std::string& key) { return "s-given-" + anchor(key); }

std::string plain_value(const Context& c, double value, double high, const std::string& unit) {
  if (is_share(std::max(value, high), unit)) {
    return with_unit(value * 100, unit == "1/a" ? "%/a" : "%", 3);
  }
  return c.measure(value, unit, 4);
}

std::string plain_range(const Context& c, const std::optional<double>& low,
                        const std::optional<double>& high, const std::string& unit) {
  if (!low || !high || !(*low < *high)) return {};
  const std::string to = "\u00A0" + c.words("to") + "\u00A0";
  if (is_share(*high, unit)) return number(*low * 100, 3) + to + plain_value(c, *high, *high, unit);
  return range_with_units(*low, *high, c.unit(unit), 4, c.in_us_units(), to);
}

std::string requirement_section(const Context& c) {
  Values values;
  add_requirements(c, values);
  add_inputs(c, values, calc::OriginKind::given, "GIVEN");
  add_inputs(c, values, calc::OriginKind::derived, "DERIVED");
  add_assumptions(c, values);
  return values.sections().empty() ? std::string() : c.expand("requirement", values);
}

}  // namespace output
