// Temperatures differ by a difference and do not add.
// fails: +
// compiles: -
#include "calc/quantity.h"

using namespace calc;

[[maybe_unused]] const TemperatureDifference rise =
    Temperature::celsius(45) TOKEN Temperature::celsius(20);
