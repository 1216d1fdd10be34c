// Irradiance gives a dose by time, not by way.
// fails: metres
// compiles: seconds
#include "calc/quantity.h"

using namespace calc;

[[maybe_unused]] const Dose dose = Irradiance::from_si(1e4) * TOKEN(1);
