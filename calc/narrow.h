/// Where along one number an answer turns from yes to no.
#pragma once

#include <functional>

namespace calc {

/// What one factor gave. `over`: by which ratio the worst gate is missed, above 1; 1 for not known.
struct Trial {
  bool pass = false;
  double over = 1;
};

/// Two factors, apart by less than bracket_width of either.
struct Bracket {
  double pass = 1, fail = 1;
};
inline constexpr double bracket_width = 4e-7;

/// The turn between a factor that passes and one that fails, both tried before; `at_fail` is what
/// the latter gave. Guesses are made from `over`, as if it were a power of the factor, and checked;
/// what gives none is halved. Where there are several turns it is one of them.
Bracket narrow(double pass, double fail, const Trial& at_fail,
               const std::function<Trial(double)>& attempt);

}  // namespace calc
