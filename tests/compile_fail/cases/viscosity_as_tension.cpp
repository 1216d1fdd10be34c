// Viscosity does not stand in for surface tension.
// fails: millipascal_seconds
// compiles: millinewtons_per_metre
#include "calc/fluid.h"

using namespace calc;

[[maybe_unused]] const Fluid fluid{Density::from_si(1000), millipascal_seconds(10), TOKEN(30)};
