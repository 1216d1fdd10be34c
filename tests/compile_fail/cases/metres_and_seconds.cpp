// Metres do not add to seconds.
// fails: seconds
// compiles: metres
#include "calc/quantity.h"

using namespace calc;

[[maybe_unused]] const auto sum = metres(1) + TOKEN(1);
