// A nozzle is measured by its diameter.
// fails: picolitres
// compiles: micrometres
#include "calc/fluid.h"

using namespace calc;

[[maybe_unused]] const Length most = largest_particle(TOKEN(20));
