/// How far each headline figure moves while one input at a time runs over its range.
#pragma once

#include <string>
#include <vector>

#include "calc/headline.h"
#include "calc/specification.h"

namespace calc {

/// An input with its range, in `unit`.
struct InputRange {
  std::string field, unit;
  double low = 0, high = 0;
};

/// Gathers the figures at the ends of every input.
class Spreads {
 public:
  Spreads(const Headlines& nominal, std::string currency);
  /// The figures at values of one input, all others at their nominal value. A figure absent at an
  /// end is passed over there.
  struct End {
    double at = 0;  ///< in the input's unit
    Headlines figures;
  };
  void add(const InputRange& input, const std::vector<End>& ends);
  /// One entry a figure that applies. Of inputs that move it equally far, the first added counts.
  std::vector<Uncertainty> take();

 private:
  Headlines nominal_;
  std::string currency_;
  std::vector<Uncertainty> list_;                   ///< one a headline, whether it applies or not
  std::array<double, headlines_count> furthest_{};  ///< way of the mover so far
};

}  // namespace calc
