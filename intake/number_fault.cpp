#include "intake/number_fault.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "intake/codes.h"
#include "intake/suggest.h"
#include "intake/text.h"

namespace intake {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }

std::string units_that_fit(const FieldInfo& field) {
  return "units that fit: " + joined(field.units);
}

std::string fitting(double number, const FieldInfo& field) {
  return units_that_fit(field) + "; write for example " + example(number, field);
}

/// The dimension some other unit of that text has, empty when there is none.
std::string_view dimension_of(std::string_view unit) {
  const auto all = units();
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const Unit& u) { return u.text == unit; });
  return found == all.end() || unit.empty() ? std::string_view{} : found->dimension;
}

/// The unit of the field with that text.
std::optional<Unit> unit_of(std::string_view text, const FieldInfo& field) {
  if (std::find(field.units.begin(), field.units.end(), text) == field.units.end()) return {};
  return find_unit(field.dimension, text);
}

/// Where in the text behind a number the next number starts: at its begin or after a blank.
std::size_t next_number(std::string_view rest) {
  for (std::size_t i = 0; i < rest.size(); ++i) {
    if (is_digit(rest[i]) && (i == 0 || rest[i - 1] == ' ')) return i;
  }
  return std::string_view::npos;
}

std::string short_number(double value) { return number_text(std::round(value * 1e9) / 1e9); }

/// "1 180 mm": thousands parted by blanks.
std::optional<std::string> without_blanks(double number, std::string_view rest) {
  if (number != std::floor(number) || number >= 1000 || number < 1) return std::nullopt;
  std::string digits = number_text(number);
  std::size_t groups = 0;
  while (rest.size() >= 3 && std::all_of(rest.begin(), rest.begin() + 3, is_digit)) {
    if (rest.size() > 3 && is_digit(rest[3])) return std::nullopt;
    digits.append(rest.substr(0, 3));
    rest.remove_prefix(3);
    ++groups;
    if (rest.size() > 1 && rest[0] == ' ' && is_digit(rest[1])) rest.remove_prefix(1);
  }
  if (groups == 0 || next_number(rest) == 0) return std::nullopt;
  return digits + std::string(rest);
}

/// "46 1/2 in": a fraction behind a whole number, or "1/2 in" read as 1 and "/2 in".
std::optional<std::string> with_fraction(double number, std::string_view rest) {
  const Parsed<Number> top = leading_number(rest);
  const auto* const upper = std::get_if<Number>(&top);
  if (upper == nullptr || !upper->rest.starts_with('/')) return std::nullopt;
  const Parsed<Number> bottom = leading_number(upper->rest.substr(1));
  const auto* const lower = std::get_if<Number>(&bottom);
  if (lower == nullptr || lower->value <= 0) return std::nullopt;
  const std::string whole = short_number(number + upper->value / lower->value);
  return whole + (lower->rest.empty() ? "" : " ") + std::string(lower->rest);
}

/// "3 ft 10 in": two measures that make one.
std::optional<std::string> together(double number, std::string_view rest, std::size_t next,
                                    const FieldInfo& field) {
  const std::optional<Unit> first = unit_of(trim(rest.substr(0, next)), field);
  const Parsed<Number> second = leading_number(rest.substr(next));
  const auto* const other = std::get_if<Number>(&second);
  if (!first || other == nullptr) return std::nullopt;
  const std::optional<Unit> last = unit_of(other->rest, field);
  const bool adds = last && first->offset == 0 && last->offset == 0;
  if (!adds || first->text == last->text) return std::nullopt;
  const double sum = to_unit(from_unit(number, *first) + from_unit(other->value, *last), *last);
  return short_number(sum) + " " + std::string(last->text);
}

/// Several numbers where one is needed.
Fault several_numbers(double number, std::string_view rest, std::size_t next,
                      const FieldInfo& field) {
  std::optional<std::string> one;
  if (next == 0) one = without_blanks(number, rest);
  if (next == 0 && !one) one = with_fraction(number, rest);
  if (next > 0) one = together(number, rest, next, field);
  return {code::unknown_unit, "more than one number before the unit",
          one ? "write one number and one unit: " + *one
              : "write one number and one unit; " + units_that_fit(field)};
}

bool is_about_the_unit(const Fault& fault) {
  return fault.code == code::unit_missing || fault.code == code::unknown_unit ||
         fault.code == code::wrong_dimension;
}

}  // namespace

Fault comma_fault(std::string_view text, std::size_t comma) {
  std::string with_point(text);
  with_point[comma] = '.';
  std::string without(text);
  without.erase(comma, 1);
  std::size_t end = comma + 1;
  while (end < text.size() && is_digit(text[end])) ++end;
  const bool thousands = end - comma == 4;
  std::string hint = "write a decimal point: " + with_point;
  if (thousands) hint = "write " + without + ", or with a decimal point " + with_point;
  return {code::decimal_comma, "a comma stands in the number", hint};
}

std::string example(double number, const FieldInfo& field) {
  return number_text(number) + (field.unit.empty() ? "" : " " + std::string(field.unit));
}

Fault unit_fault(double number, std::string_view rest, const FieldInfo& field) {
  if (rest.empty()) {
    return {code::unit_missing, "a bare number where a unit is needed", fitting(number, field)};
  }
  const std::string_view other = dimension_of(rest);
  if (!other.empty()) {
    return {code::wrong_dimension,
            "\"" + std::string(rest) + "\" is a unit of " + std::string(other) + ", not of " +
                std::string(field.dimension),
            fitting(number, field)};
  }
  const std::string unknown = "unknown unit \"" + std::string(rest.substr(0, 60)) + "\"";
  if (rest.find(';') != std::string_view::npos || rest.find(" #") != std::string_view::npos) {
    return {code::unknown_unit, unknown,
            "one value stands here; comments stand on a line of their own"};
  }
  if (rest.front() == '-' && rest.size() > 1 && is_digit(rest[1])) {
    return {code::unknown_unit, unknown,
            "a range is written with two points: " + number_text(number) + ".." +
                std::string(rest.substr(1))};
  }
  const std::size_t next = next_number(rest);
  if (next != std::string_view::npos) return several_numbers(number, rest, next, field);
  const std::string_view near = nearest(rest, field.units);
  if (!near.empty()) {
    return {code::unknown_unit, unknown,
            "did you mean " + number_text(number) + " " + std::string(near)};
  }
  return {code::unknown_unit, unknown, fitting(number, field)};
}

Fault fault_of_both(Fault fault, std::string_view first, std::string_view sign,
                    std::string_view second, const FieldInfo& field) {
  const Parsed<Number> one = leading_number(first);
  const Parsed<Number> two = leading_number(second);
  const auto* const a = std::get_if<Number>(&one);
  const auto* const b = std::get_if<Number>(&two);
  if (!is_about_the_unit(fault) || a == nullptr || b == nullptr) return fault;
  const std::string_view unit = b->rest.empty() ? a->rest : b->rest;
  const bool shared = a->rest.empty() || b->rest.empty() || a->rest == b->rest;
  if (!shared || next_number(unit) != std::string_view::npos) return fault;
  const std::string numbers =
      number_text(a->value) + std::string(sign) + number_text(b->value) + " ";
  const std::string_view near = nearest(unit, field.units);
  fault.hint =
      fault.code == code::unknown_unit && !near.empty()
          ? "did you mean " + numbers + std::string(near)
          : units_that_fit(field) + "; write for example " + numbers + std::string(field.unit);
  return fault;
}

}  // namespace intake
