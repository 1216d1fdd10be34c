#include "output/json_parts.h"

namespace output {

Json uncertainty_json(const calc::Uncertainty& entry) {
  Json object{{"figure", entry.figure},
              {"unit", entry.unit},
              {"value", json_number(entry.value)},
              {"low", json_number(entry.low)},
              {"high", json_number(entry.high)}};
  if (entry.mover.empty()) return object;
  object["mover"] = entry.mover;
  object["mover_unit"] = entry.mover_unit;
  object["mover_low"] = json_number(entry.mover_low);
  object["mover_high"] = json_number(entry.mover_high);
  return object;
}

}  // namespace output
