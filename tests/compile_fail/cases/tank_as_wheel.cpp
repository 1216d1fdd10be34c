// A wheel has a diameter.
// fails: litres
// compiles: millimetres
#include "calc/encoder.h"

using namespace calc;

[[maybe_unused]] const Length count = count_length(TOKEN(200), 10000);
