#include "calc/edges.h"

#include <algorithm>
#include <cmath>
#include <tuple>
#include <utility>

#include "calc/compare.h"
#include "calc/judge.h"
#include "calc/narrow.h"
#include "calc/vary.h"
#include "calc/worst_ratio.h"

namespace calc {
namespace {

constexpr int least_digits = 3, most_digits = 9;
constexpr int most_rounds = 6;  ///< of rivals that come up only on the way

/// The heads of a station and how they stand, but for the lines along the motion, which they jet as
/// asked.
auto hardware(const Group& g) {
  return std::tuple(g.head, g.mode, g.interleave, g.stack, g.film_heads, g.heads_total, g.tilt);
}

bool same_hardware(const std::vector<Group>& a, const std::vector<Group>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](const Group& x, const Group& y) { return hardware(x) == hardware(y); });
}

/// What the customer may turn to later. Of the rest the answer says by itself how much it leaves.
bool has_edge(Lever lever) {
  return lever == Lever::speed || lever == Lever::throughput_parts ||
         lever == Lever::throughput_area || lever == Lever::width || lever == Lever::resolution ||
         lever == Lever::throw_distance;
}

Trial trial_of(const std::vector<Reason>& failing) {
  return {failing.empty(), worst_ratio(failing).value_or(1)};
}

/// The gate that is missed most, the first of equals.
const Reason& worst(const std::vector<Reason>& failing) {
  return *std::max_element(failing.begin(), failing.end(), [](const Reason& a, const Reason& b) {
    return trial_of({a}).over < trial_of({b}).over;
  });
}

std::string gate_of(const Reason& reason) {
  return reason.subject == "width" && reason.unit == "mm" ? "width" : reason.code;
}

class Finder {
 public:
  Finder(const Job& job, const Catalogue& catalogue, const Selection& selection)
      : job_(&job),
        catalogue_(&catalogue),
        chosen_(&selection.chosen),
        vary_(job, catalogue),
        judge_(catalogue, job.currency, selection.chosen, Judge::Heads::built),
        rivals_(selection.candidates) {
    // A head kept from a bad band of frequencies may come back when the line runs faster.
    for (std::size_t i = 0; i < rivals_.size(); ++i) {
      if (catalogue.heads[i].avoid) rivals_[i] = 1;
    }
    wider_ = rivals_;
    add(selection.hopefuls, wider_);
  }

  std::vector<Edge> run() {
    for (const Movable& m : movables(*job_->request)) {
      if (!has_edge(m.lever)) continue;
      if (m.ease != Ease::more) look(m, true);
      if (m.ease != Ease::less) look(m, false);
    }
    return std::move(edges_);
  }

 private:
  void look(const Movable& m, bool up) {
    const double far = far_of(m, up);
    const auto built = [&](double factor) { return judge_.of(vary_.at(m, factor)).failing; };
    Edge edge{m.field, m.unit, EdgeKind::passes, up, m.now, {}, {}, {}, {}};
    const std::vector<Reason> at_far = built(far);
    double passes = far;
    if (!at_far.empty()) {
      const Bracket turn =
          narrow(1, far, trial_of(at_far), [&](double factor) { return trial_of(built(factor)); });
      passes = turn.pass;
      edge.beyond = gate_of(worst(built(turn.fail)));
      put(m, passes, edge);
    } else if (up && far < farthest_edge) {
      edge.beyond = "product";
      put(m, passes, edge);
    }
    edges_.push_back(edge);
    edge.kind = EdgeKind::recommended;
    edge.beyond.clear();
    recommended(m, passes, edge);
    edges_.push_back(edge);
  }

  /// As far as the number is moved; an image cannot become wider than its product.
  double far_of(const Movable& m, bool up) const {
    if (!up) return 1 / farthest_edge;
    const Request& r = *job_->request;
    if (m.lever != Lever::width || !r.image.width || !r.product.width) return farthest_edge;
    return std::clamp(in_mm(r.product.width->low) / m.now, 1.0, farthest_edge);
  }

  /// Sets value and printed of an edge that was found at a factor.
  static void put(const Movable& m, double factor, Edge& edge) {
    edge.value = m.now * factor;
    if (m.whole) edge.value = edge.up ? floor_tolerant(*edge.value) : ceil_tolerant(*edge.value);
    edge.printed = m.now;
    if (m.whole) edge.printed = edge.value;
    for (int digits = least_digits; digits <= most_digits && !m.whole; ++digits) {
      const double r =
          edge.up ? rounded_down(*edge.value, digits) : rounded_up(*edge.value, digits);
      if (edge.up ? r < m.now : r > m.now) continue;
      edge.printed = r;
      return;
    }
  }

  /// Moves the edge in to where the chosen heads cease to be those chosen; `passes`: as far as they
  /// pass.
  void recommended(const Movable& m, double passes, Edge& edge) {
    const std::vector<char>& all = rivals_of(m);
    Choice winner = vary_.choose(m, passes, all);
    if (same_hardware(winner.groups, *chosen_)) return;
    Bracket turn{1, passes};
    std::vector<char> duel = marks(*chosen_);
    for (int round = 0; round < most_rounds; ++round) {
      add(marks(winner.groups), duel);
      turn = narrow(1, turn.fail, {}, [&](double factor) {
        return Trial{same_hardware(vary_.choose(m, factor, duel).groups, *chosen_)};
      });
      winner = vary_.choose(m, turn.pass, all);
      if (same_hardware(winner.groups, *chosen_)) break;
      turn.fail = turn.pass;
    }
    edge.arrangement = in_short(vary_.choose(m, turn.fail, all).groups);
    put(m, turn.pass, edge);
  }

  /// What is easier for some is harder for others where both ways may help.
  const std::vector<char>& rivals_of(const Movable& m) const {
    return m.ease == Ease::either ? wider_ : rivals_;
  }

  std::vector<char> marks(const std::vector<Group>& groups) const {
    std::vector<char> marks(rivals_.size(), 0);
    for (const Group& g : groups) {
      for (std::size_t i = 0; i < marks.size(); ++i) {
        if (catalogue_->heads[i].name == g.head) marks[i] = 1;
      }
    }
    return marks;
  }
  static void add(const std::vector<char>& from, std::vector<char>& to) {
    for (std::size_t i = 0; i < to.size(); ++i) to[i] = static_cast<char>(to[i] | from[i]);
  }

  const Job* job_;
  const Catalogue* catalogue_;
  const std::vector<Group>* chosen_;
  Vary vary_;
  Judge judge_;
  std::vector<char> rivals_;  ///< heads that serve some group as asked
  std::vector<char> wider_;   ///< and those that only throw or viscosity keep out
  std::vector<Edge> edges_;
};

}  // namespace

std::vector<Edge> edges(const Job& job, const Catalogue& catalogue, const Selection& selection) {
  return Finder(job, catalogue, selection).run();
}

}  // namespace calc
