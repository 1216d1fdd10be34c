// A flow is a volume over a time.
// fails: Area
// compiles: Volume
#include "calc/quantity.h"

using namespace calc;

[[maybe_unused]] const VolumeFlow flow = TOKEN::from_si(1) / seconds(1);
