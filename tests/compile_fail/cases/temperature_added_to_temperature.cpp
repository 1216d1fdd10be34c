// A temperature rises by a difference, not by a temperature.
// fails: Temperature
// compiles: TemperatureDifference
#include "calc/quantity.h"

using namespace calc;

[[maybe_unused]] const Temperature warmer = Temperature::celsius(20) + TOKEN::from_si(5);
