/// What the calculation says beside its numbers: codes with typed arguments, never prose. The words
/// stand in templates/LANGUAGE/, keyed by code.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "calc/value.h"

namespace calc {

/// A named argument of a notice: a number in `unit`, or a text (`unit` empty).
struct Arg {
  std::string name;
  std::variant<double, std::string> value;
  std::string unit;
};

/// One warning, condition, question, check before commitment, or safety note.
struct Notice {
  std::string code;
  std::vector<Arg> args;
  std::string field;          ///< the request or catalogue key concerned; may be empty
  std::vector<Origin> where;  ///< places concerned; a contradiction has both
};

/// A gate that failed: `value` against `limit`, both in `unit`; the shortfall follows. `at_least`
/// says the way of the limit: the gate asks value >= limit when true, value <= limit when false.
/// A yes/no gate has value 0, limit 1, unit empty and at_least true.
struct Reason {
  std::string code;   ///< of the list in interface.md, "ink_family" ... "lost"
  std::string group;  ///< name of the group of channels it was tried for
  std::string
      subject;  ///< what it is about in words of the input: an ink's or substrate's name, a mode
  double value = 0;
  double limit = 0;
  std::string unit;
  bool at_least = true;
  /// The gate failed at this temperature, beyond which the ink's viscosity is not known though the
  /// head could be hotter.
  std::optional<double> known_to_degc = {};
  /// The key of what to improve first, of a budget its largest term; empty where none is named.
  std::string field = {};
  /// The temperature at which a viscosity is outside the window.
  std::optional<double> at_degc = {};
};

}  // namespace calc
