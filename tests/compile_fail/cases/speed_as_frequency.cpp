// Nozzles fire at a frequency, not at a speed.
// fails: metres_per_second
// compiles: kilohertz
#include "calc/supply.h"

using namespace calc;

[[maybe_unused]] const Frequency rate = data_rate(100, TOKEN(20), 2);
