/// A job with one number of its request moved, and the search over some heads of its catalogue.
#pragma once

#include <optional>
#include <vector>

#include "calc/moves.h"
#include "calc/selection.h"

namespace calc {

/// Works on a copy of the request that it makes once.
class Vary {
 public:
  Vary(const Job& job, const Catalogue& catalogue);

  /// The job with the number so many times as great. Holds until the next call.
  const Job& at(const Movable& what, double factor);

  /// What these heads, marked as Choice marks its candidates, come to at a factor.
  Choice choose(const Movable& what, double factor, const std::vector<char>& heads,
                Chooser::Told told = Chooser::Told::winner) {
    return chooser_.choose(at(what, factor), &heads, told);
  }

 private:
  const Job* job_;
  const Catalogue* catalogue_;
  Request moved_;
  std::optional<Movable> last_;  ///< the number that is not as it was
  Chooser chooser_;
  Job resolved_;
};

/// The groups as they are named elsewhere than in the chosen arrangement.
std::vector<HeadsOf> in_short(const std::vector<Group>& groups);

/// value > 0 to so many significant digits, downwards or upwards.
double rounded_down(double value, int digits);
double rounded_up(double value, int digits);

}  // namespace calc
