/// What the arguments of a notice say of its wording.
#pragma once

#include <string>

#include "calc/notice.h"

namespace output {

/// The condition that an assumption brings at a value, and the value.
struct Arising {
  calc::Notice condition;
  double value = 0;
  std::string unit;
};

/// Parts a condition that another value of an assumption brings.
Arising parted(const calc::Notice& notice);
/// The text of an argument; empty where there is none of that name.
std::string text_of(const calc::Notice& notice, const std::string& name);
/// Which of a notice's wordings is meant: that of its subject, or of how far it holds.
std::string wording_of(const calc::Notice& notice);

}  // namespace output
