#include "intake/number.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "intake/codes.h"
#include "intake/number_fault.h"
#include "intake/text.h"

namespace intake {
namespace {

constexpr double tolerance = 1e-9;  // as at every limit: units must not flip a comparison

bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// Whether the text starts, after a sign, with a word from_chars would take for a number.
bool starts_not_finite(std::string_view text) {
  if (!text.empty() && (text.front() == '-' || text.front() == '+')) text.remove_prefix(1);
  std::string head(text.substr(0, 3));
  for (char& c : head) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return head == "inf" || head == "nan";
}

std::optional<Unit> unit_of(const FieldInfo& field, std::string_view text) {
  if (std::find(field.units.begin(), field.units.end(), text) == field.units.end()) return {};
  return find_unit(field.dimension, text);
}

/// The number in the field's own unit; untouched when it was written in it.
double listed_in(const FieldInfo& field, double number, const Unit& unit) {
  if (unit.text == field.unit) return number;
  const std::optional<Unit> own = find_unit(field.dimension, field.unit);
  return own ? to_unit(from_unit(number, unit), *own) : from_unit(number, unit);
}

Measure measure_of(const FieldInfo& field, double number, const Unit& unit) {
  return {from_unit(number, unit), listed_in(field, number, unit)};
}

/// The text a range's first end lacks, when only the second has a unit.
Parsed<Measure> read_first_end(std::string_view first, std::string_view second,
                               const FieldInfo& field) {
  const Parsed<Number> number = leading_number(first);
  if (const auto* fault = std::get_if<Fault>(&number)) return *fault;
  if (!std::get<Number>(number).rest.empty()) return read_measure(first, field);
  const Parsed<Number> other = leading_number(second);
  if (const auto* fault = std::get_if<Fault>(&other)) return *fault;
  const std::string with_unit =
      std::string(first) + " " + std::string(std::get<Number>(other).rest);
  return read_measure(with_unit, field);
}

bool takes(const FieldInfo& field, std::string_view kind) {
  if (field.spread == "both") return kind != "window";
  return field.spread == kind || (kind == "demand" && field.spread == "window");
}

Parsed<Span> read_range(std::string_view text, std::size_t dots, const FieldInfo& field) {
  if (!takes(field, "demand")) {
    return Fault{code::spread_not_taken, "a range where one value is needed", "give one value"};
  }
  const std::string_view first = trim(text.substr(0, dots));
  const std::string_view second = trim(text.substr(dots + 2));
  if (first.empty() || second.empty()) {
    return Fault{code::not_a_number, "an end of the range is missing",
                 "write both ends, as in " + example(30, field).insert(2, "..60")};
  }
  const Parsed<Measure> low = read_first_end(first, second, field);
  const Parsed<Measure> high = read_measure(second, field);
  for (const auto* end : {&low, &high}) {
    const auto* const fault = std::get_if<Fault>(end);
    if (fault != nullptr) return fault_of_both(*fault, first, "..", second, field);
  }
  Span span{{}, std::get<Measure>(low), std::get<Measure>(high), calc::Spread::demand};
  if (span.low.si > span.high.si) {
    return Fault{code::range_reversed, "the range starts above its end",
                 "write the lower end first: " + number_text(span.high.listed) + ".." +
                     example(span.low.listed, field)};
  }
  span.value = field.governing == "high" ? span.high : span.low;
  return span;
}

/// Half the width of `value +- text`: a difference, so a unit's offset does not count.
Parsed<Measure> read_half_width(std::string_view text, std::string_view nominal,
                                const FieldInfo& field) {
  const Parsed<Measure> end = read_first_end(text, nominal, field);
  if (const auto* fault = std::get_if<Fault>(&end)) return *fault;
  Measure half = std::get<Measure>(end);
  const Parsed<Number> number = leading_number(text);
  const std::string_view rest = std::get<Number>(number).rest.empty()
                                    ? std::get<Number>(leading_number(nominal)).rest
                                    : std::get<Number>(number).rest;
  const std::optional<Unit> unit = unit_of(field, rest);
  const std::optional<Unit> own = find_unit(field.dimension, field.unit);
  half.si -= unit ? unit->offset : 0;
  half.listed = unit && own && unit->text != own->text ? half.si / own->factor
                                                       : std::get<Number>(number).value;
  return half;
}

Parsed<Span> read_uncertain(std::string_view text, std::size_t sign, const FieldInfo& field) {
  if (!takes(field, "uncertain")) {
    return Fault{code::spread_not_taken, "an uncertainty where one value is needed",
                 "give one value: " + std::string(trim(text.substr(0, sign)))};
  }
  const std::string_view nominal = trim(text.substr(0, sign));
  const std::string_view half_text = trim(text.substr(sign + 2));
  const Parsed<Measure> half_read = read_half_width(half_text, nominal, field);
  const Parsed<Measure> value_read = read_first_end(nominal, half_text, field);
  for (const auto* read : {&half_read, &value_read}) {
    const auto* const fault = std::get_if<Fault>(read);
    if (fault != nullptr) return fault_of_both(*fault, nominal, " +- ", half_text, field);
  }
  const Measure half = std::get<Measure>(half_read);
  const Measure value = std::get<Measure>(value_read);
  if (half.si < 0) {
    return Fault{
        code::range_reversed, "the uncertainty is negative",
        "write it without a sign: " + std::string(nominal) + " +- " + example(-half.listed, field)};
  }
  return Span{value,
              {value.si - half.si, value.listed - half.listed},
              {value.si + half.si, value.listed + half.listed},
              calc::Spread::uncertain};
}

Parsed<Span> read_either(std::string_view text, const FieldInfo& field) {
  if (const auto dots = text.find(".."); dots != std::string_view::npos) {
    return read_range(text, dots, field);
  }
  if (field.spread == "window") {
    return Fault{
        code::range_needed, "one value where a range is needed",
        "write both ends, as in 8..14" + (field.unit.empty() ? "" : " " + std::string(field.unit))};
  }
  if (const auto sign = text.find("+-"); sign != std::string_view::npos && sign > 0) {
    return read_uncertain(text, sign, field);
  }
  const Parsed<Measure> one = read_measure(text, field);
  if (const auto* fault = std::get_if<Fault>(&one)) return *fault;
  const Measure m = std::get<Measure>(one);
  return Span{m, m, m, calc::Spread::none};
}

}  // namespace

std::string number_text(double value) {
  constexpr double least_plain = 1e-6, most_plain = 1e15;
  const double size = std::abs(value);
  const bool plain = value == 0 || (size >= least_plain && size < most_plain);
  std::array<char, 40> buffer{};
  char* const begin = buffer.data();
  char* const behind = begin + buffer.size();
  const char* end = plain ? std::to_chars(begin, behind, value, std::chars_format::fixed).ptr
                          : std::to_chars(begin, behind, value).ptr;
  return {static_cast<const char*>(buffer.data()), end};
}

Parsed<Number> leading_number(std::string_view text) {
  if (starts_not_finite(text)) {
    return Fault{code::not_finite, "not a finite number", "give a number, as in 45"};
  }
  if (!text.empty() && text.front() == '+') {
    return Fault{code::leading_plus, "a plus sign before the number",
                 "leave it out: " + std::string(text.substr(1, 60))};
  }
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  const auto used = static_cast<std::size_t>(end - text.data());
  if (error == std::errc::result_out_of_range) {
    return Fault{code::not_finite, "the number is beyond what can be computed with",
                 "give a number between 1e-300 and 1e300"};
  }
  if (error != std::errc{}) {
    return Fault{code::not_a_number, "\"" + std::string(text.substr(0, 60)) + "\" is not a number",
                 "give a number with a decimal point, as in 45 or 0.33"};
  }
  if (used + 1 < text.size() && text[used] == ',' && is_digit(text[used + 1])) {
    return comma_fault(text.substr(0, 60), std::min<std::size_t>(used, 59));
  }
  return Number{value, trim(text.substr(used))};
}

std::string plain_letters(std::string_view text) {
  struct Pair {
    std::string_view from, to;
  };
  static constexpr std::array<Pair, 13> pairs = {{{"+/-", "+-"},
                                                  {"\u00B5", "u"},
                                                  {"\u03BC", "u"},
                                                  {"\u00B2", "2"},
                                                  {"\u00B3", "3"},
                                                  {"\u00B0", "deg"},
                                                  {"\u00B1", "+-"},
                                                  {"\u00D7", "x"},
                                                  {"\u00B7", "."},
                                                  {"\u2212", "-"},
                                                  {"\u2026", ".."},
                                                  {"\u00A0", " "},
                                                  {"\u202F", " "}}};
  std::string out;
  for (std::size_t i = 0; i < text.size();) {
    const auto* const found = std::find_if(pairs.begin(), pairs.end(), [&](const Pair& p) {
      return text.substr(i, p.from.size()) == p.from;
    });
    if (found == pairs.end()) {
      out += text[i++];
    } else {
      out += found->to;
      i += found->from.size();
    }
  }
  return out;
}

Parsed<Measure> read_measure(std::string_view text, const FieldInfo& field) {
  const Parsed<Number> read = leading_number(text);
  if (const auto* fault = std::get_if<Fault>(&read)) return *fault;
  const Number number = std::get<Number>(read);
  if (field.dimension.empty()) {
    if (number.rest.empty()) return Measure{number.value, number.value};
    return Fault{code::unit_not_taken,
                 "\"" + std::string(number.rest.substr(0, 60)) + "\" after a plain number",
                 "give the number alone: " + number_text(number.value)};
  }
  const std::optional<Unit> unit = unit_of(field, number.rest);
  if (!unit) return unit_fault(number.value, number.rest, field);
  return measure_of(field, number.value, *unit);
}

std::optional<Fault> check_bounds(double listed, const FieldInfo& field) {
  if (field.least == field.most) return std::nullopt;
  const auto slack = [](double bound) { return tolerance * std::max(1.0, std::abs(bound)); };
  const double slack_least = std::min(slack(field.least), tolerance * std::abs(field.least));
  if (listed >= field.least - slack_least && listed <= field.most + slack(field.most)) return {};
  return Fault{
      code::out_of_range,
      example(listed, field) + " is outside " + number_text(field.least) + " to " +
          example(field.most, field),
      "give a value from " + number_text(field.least) + " to " + example(field.most, field)};
}

Parsed<Span> read_span(std::string_view text, const FieldInfo& field) {
  Parsed<Span> read = read_either(text, field);
  const auto* span = std::get_if<Span>(&read);
  if (span == nullptr) return read;
  for (const double end : {span->value.listed, span->low.listed, span->high.listed}) {
    auto fault = check_bounds(end, field);
    if (!fault) continue;
    const bool bare_share = field.unit == "%" && text.find('%') == std::string_view::npos;
    if (bare_share && end / 100 <= field.most) {
      fault->hint += "; did you mean " + number_text(end / 100) + " %";
    }
    return *fault;
  }
  return read;
}

std::vector<std::string_view> split_list(std::string_view text) {
  std::vector<std::string_view> items;
  for (;;) {
    const auto semicolon = text.find(';');
    items.push_back(trim(text.substr(0, semicolon)));
    if (semicolon == std::string_view::npos) return items;
    text.remove_prefix(semicolon + 1);
  }
}

}  // namespace intake
