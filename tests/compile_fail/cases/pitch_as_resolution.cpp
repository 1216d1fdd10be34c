// The inverse of a resolution is a length, its multiple is none.
// fails: *
// compiles: /
#include "calc/quantity.h"

using namespace calc;

[[maybe_unused]] const Length pitch = 1.0 TOKEN dpi(600);
