// A shift lasts a time.
// fails: metres
// compiles: seconds
#include "calc/supply.h"

using namespace calc;

[[maybe_unused]] const int count = containers(VolumeFlow::from_si(1e-7), TOKEN(28800), litres(5));
