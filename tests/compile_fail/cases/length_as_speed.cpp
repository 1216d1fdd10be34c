// A drop has a speed, not a length.
// fails: millimetres
// compiles: metres_per_second
#include "calc/fluid.h"

using namespace calc;

[[maybe_unused]] const Frequency rate = nozzle_shear(TOKEN(6), micrometres(20));
