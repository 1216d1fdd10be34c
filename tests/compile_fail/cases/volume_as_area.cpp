// A volume is not an area.
// fails: Area
// compiles: Volume
#include "calc/quantity.h"

using namespace calc;

[[maybe_unused]] const TOKEN product = metres(2) * metres(3) * metres(4);
