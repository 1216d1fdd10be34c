// Only what has lost every dimension is a number.
// fails: *
// compiles: /
#include "calc/quantity.h"

using namespace calc;

[[maybe_unused]] const double number = metres(1) TOKEN metres(2);
