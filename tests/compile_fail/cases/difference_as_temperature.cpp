// A difference is no temperature.
// fails: Temperature
// compiles: TemperatureDifference
#include "calc/quantity.h"

using namespace calc;

[[maybe_unused]] const TOKEN rise = TemperatureDifference::from_si(5);
