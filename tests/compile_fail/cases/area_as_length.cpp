// An area is not a length.
// fails: Length
// compiles: Area
#include "calc/quantity.h"

using namespace calc;

[[maybe_unused]] const TOKEN product = metres(2) * metres(3);
