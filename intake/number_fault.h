/// What is wrong with a number and the unit behind it, each with a hint that keeps the number
/// meant.
#pragma once

#include <string>
#include <string_view>

#include "intake/field.h"
#include "intake/number.h"

namespace intake {

/// A comma at that place of a number: a decimal comma or a separator of thousands.
Fault comma_fault(std::string_view text, std::size_t comma);

/// The number with the field's own unit, "45 m/min".
std::string example(double number, const FieldInfo& field);

/// Why `rest` is no unit of the field, with the number before it.
Fault unit_fault(double number, std::string_view rest, const FieldInfo& field);

/// The fault of an end of `first` `sign` `second` ("..", " +- "): where it is one of the unit that
/// both share, the hint shows both numbers.
Fault fault_of_both(Fault fault, std::string_view first, std::string_view sign,
                    std::string_view second, const FieldInfo& field);

}  // namespace intake
