// A wet film is a length, not a drop.
// fails: picolitres
// compiles: micrometres
#include "calc/laydown.h"

using namespace calc;

[[maybe_unused]] const VolumeFlow flow =
    printed_flow(metres(1), metres_per_second(1), TOKEN(10), 1);
