// A length is not compared with a time.
// fails: seconds
// compiles: metres
#include "calc/quantity.h"

using namespace calc;

[[maybe_unused]] const bool less = metres(1) < TOKEN(1);
