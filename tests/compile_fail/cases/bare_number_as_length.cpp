// A bare number is not a length.
// fails: double
// compiles: metres
#include "calc/quantity.h"

using namespace calc;

[[maybe_unused]] const Length length = TOKEN(1);
