// A lattice has two resolutions.
// fails: kilohertz
// compiles: dpi
#include "calc/laydown.h"

using namespace calc;

[[maybe_unused]] const Length film = laydown(picolitres(7), dpi(600), TOKEN(600));
