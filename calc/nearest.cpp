#include "calc/nearest.h"

#include <array>
#include <cmath>
#include <utility>

#include "calc/compare.h"
#include "calc/narrow.h"
#include "calc/vary.h"

namespace calc {
namespace {

constexpr int digits = 3;
/// Tries of the rounded value, each a last digit further, for turns that are not the only one.
constexpr int most_tries = 3;

class Easing {
 public:
  Easing(const Job& job, const Catalogue& catalogue, const Selection& selection)
      : job_(&job), vary_(job, catalogue), all_(selection.hopeless) {
    for (char& mark : all_) mark = static_cast<char>(mark == 0);
  }

  std::optional<NearestMiss> run() {
    for (const Movable& m : movables(*job_->request)) {
      if (m.ease != Ease::more) ease(m, -1);
      if (m.ease != Ease::less) ease(m, 1);
    }
    return std::move(best_);
  }

 private:
  /// One number one way, unless it has to go further than another that helps.
  void ease(const Movable& m, double way) {
    const double far = std::exp(way * distance_ * (best_ ? 1 - tolerance : 1));
    const Choice found = vary_.choose(m, far, all_, Chooser::Told::candidates);
    if (found.groups.empty()) return;
    const auto something = [&](double factor) {
      const Choice c = vary_.choose(m, factor, found.candidates, Chooser::Told::over);
      return Trial{!c.groups.empty(), c.over};
    };
    const Bracket turn = narrow(far, 1, something(1), something);
    confirm(m, turn.pass, way);
  }

  /// The rounded value, run again with all heads.
  void confirm(const Movable& m, double factor, double way) {
    double to = m.now * factor * (1 - way * bracket_width);  // the turn may be a round value itself
    for (int i = 0; i < most_tries; ++i) {
      to = rounded(m, to, way);
      const Choice found = vary_.choose(m, to / m.now, all_);
      if (!found.groups.empty()) {
        distance_ = std::abs(std::log(factor));
        best_ = {m.field, m.unit, m.now, to, to / m.now - 1, in_short(found.groups)};
        return;
      }
      to *= 1 + way * 1e-3;
    }
  }

  static double rounded(const Movable& m, double to, double way) {
    if (m.whole) return std::round(to);
    return way < 0 ? rounded_down(to, digits) : rounded_up(to, digits);
  }

  const Job* job_;
  Vary vary_;
  std::vector<char> all_;  ///< heads that some number may let in
  double distance_ = std::log(farthest_ease);
  std::optional<NearestMiss> best_;
};

}  // namespace

std::optional<NearestMiss> nearest_miss(const Job& job, const Catalogue& catalogue,
                                        const Selection& selection) {
  return Easing(job, catalogue, selection).run();
}

std::vector<std::string> musts_in_the_way(const Job& job, const Catalogue& catalogue) {
  using Field = Given<Wish> Service::*;
  constexpr std::array<std::pair<Field, const char*>, 3> fields{
      {{&Service::serviceable, "service.serviceable"},
       {&Service::waveform, "service.waveform"},
       {&Service::driver_sources, "service.driver_sources"}}};
  std::vector<std::string> found;
  for (const auto& [field, key] : fields) {
    const Given<Wish>& wish = job.request->service.*field;
    if (!wish || wish->value != Wish::must) continue;
    Request without = *job.request;
    (without.service.*field).reset();
    const Job other = resolve(without, catalogue, job.date, job.parameters);
    if (!choose(other, catalogue).groups.empty()) found.emplace_back(key);
  }
  return found;
}

}  // namespace calc
