/// Values as people write them, read by themselves: no places, no fields, only text.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "calc/value.h"
#include "intake/field.h"
#include "intake/unit.h"

namespace intake {

/// What is wrong with a value text. The message completes "KEY: ..."; the hint ends in the fix.
struct Fault {
  std::string_view code;
  std::string message;
  std::string hint;
};

template <class T>
using Parsed = std::variant<T, Fault>;

/// A number and what follows it in the text, without blanks between.
struct Number {
  double value = 0;
  std::string_view rest;
};

/// The number `text` starts with. Fault on anything but decimal digits with a point and an
/// exponent: a decimal comma, inf, nan, a leading plus, out of a double's range.
Parsed<Number> leading_number(std::string_view text);

/// A number with its unit: in SI and in the unit the field is listed in.
struct Measure {
  double si = 0;
  double listed = 0;
};

/// A measure with its two ends.
struct Span {
  Measure value, low, high;
  calc::Spread spread = calc::Spread::none;
};

/// `µ`, `μ`, `²`, `³`, `°C`, `±`, `×` and the like in the letters the unit table uses.
std::string plain_letters(std::string_view text);

/// `45 m/min`, in a unit of the field's dimension. Pre: plain letters.
Parsed<Measure> read_measure(std::string_view text, const FieldInfo& field);

/// The same, or a range `30..60 m/min`, or `2 mm +- 0.3 mm`, as far as the field takes it; a
/// range's value is its governing end. Checks the field's bounds.
Parsed<Span> read_span(std::string_view text, const FieldInfo& field);

/// A fault when the number is out of the field's bounds.
std::optional<Fault> check_bounds(double listed, const FieldInfo& field);

/// The items of a list, between `;`, without blanks at their ends.
std::vector<std::string_view> split_list(std::string_view text);

/// The shortest decimal text that reads back as the same number; without an exponent from 1e-6 to
/// below 1e15.
std::string number_text(double value);

}  // namespace intake
