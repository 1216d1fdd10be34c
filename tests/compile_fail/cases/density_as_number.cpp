// A density over a density is a number, their product is none.
// fails: *
// compiles: /
#include "calc/quantity.h"

using namespace calc;

[[maybe_unused]] const double ratio = Density::from_si(4200) TOKEN Density::from_si(1000);
