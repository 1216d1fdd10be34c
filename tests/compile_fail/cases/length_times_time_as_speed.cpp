// A length times a time is no speed.
// fails: *
// compiles: /
#include "calc/quantity.h"

using namespace calc;

[[maybe_unused]] const Speed speed = metres(1) TOKEN seconds(1);
