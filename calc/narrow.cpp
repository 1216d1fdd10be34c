#include "calc/narrow.h"

#include <cmath>
#include <optional>

namespace calc {
namespace {

constexpr int most_guesses = 3;  ///< in a row, before an interval is halved

/// All in logarithms of the factor.
class Narrowing {
 public:
  Narrowing(double pass, double fail, const Trial& at_fail,
            const std::function<Trial(double)>& attempt)
      : attempt_(attempt), pass_(std::log(pass)), fail_(std::log(fail)) {
    failed_at(fail_, at_fail);
  }

  Bracket run() {
    int guesses = 0;
    while (std::abs(fail_ - pass_) > bracket_width / 2) {
      const std::optional<double> g = guesses < most_guesses ? guess() : std::nullopt;
      if (!g) {
        take((pass_ + fail_) / 2);
        guesses = 0;
        continue;
      }
      ++guesses;
      if (take(*g)) probe();
    }
    return {std::exp(pass_), std::exp(fail_)};
  }

 private:
  bool within(double x) const { return (x - pass_) * (x - fail_) < 0; }

  bool take(double x) {
    const Trial t = attempt_(std::exp(x));
    if (t.pass) {
      pass_ = x;
    } else {
      fail_ = x;
      failed_at(x, t);
    }
    return t.pass;
  }

  /// A guess that passes is as a rule the turn itself: just beyond it fails.
  void probe() {
    const double way = fail_ > pass_ ? bracket_width / 3 : -bracket_width / 3;
    if (within(pass_ + way)) take(pass_ + way);
  }

  void failed_at(double x, const Trial& t) {
    before_ = last_;
    last_.reset();
    if (t.over > 1) last_ = Miss{x, std::log(t.over)};
  }

  /// Where the miss would be nothing, of the last two misses a line, else one for one.
  std::optional<double> guess() const {
    if (!last_) return std::nullopt;
    const double direct = last_->at + (pass_ < fail_ ? -last_->by : last_->by);
    double x = direct;
    if (before_ && before_->by > last_->by) {
      x = last_->at - last_->by * (last_->at - before_->at) / (last_->by - before_->by);
    }
    if (!within(x)) x = direct;
    return within(x) ? std::optional<double>(x) : std::nullopt;
  }

  struct Miss {
    double at, by;
  };
  const std::function<Trial(double)>& attempt_;
  double pass_, fail_;
  std::optional<Miss> last_, before_;
};

}  // namespace

Bracket narrow(double pass, double fail, const Trial& at_fail,
               const std::function<Trial(double)>& attempt) {
  return Narrowing(pass, fail, at_fail, attempt).run();
}

}  // namespace calc
