#include "calc/least.h"

#include <algorithm>
#include <cmath>

#include "calc/across.h"
#include "calc/compare.h"
#include "calc/frequency.h"
#include "calc/lattice.h"
#include "calc/laydown.h"

namespace calc {
namespace {

/// Below any figure that passes a gate with the common tolerance.
constexpr double just_below = 1 - 1e-8;

bool may_tilt(const Head& head) { return head.tilts && head.tilts->value; }

/// The highest rating of any drop size [1/s].
Frequency best_rating(const Search& search, const ModeFacts& facts) {
  Frequency best;
  for (std::size_t level = 0; level < facts.levels; ++level) {
    Arrangement a;
    a.level = level;
    best = std::max(best, usable_rating(search, facts, a));
  }
  return best;
}

/// The least depth of a row of heads, tilted or not: a tilt swaps depth for width.
Length least_depth(const Head& head) {
  if (!head.body_depth) return {};
  if (!may_tilt(head) || !head.body_width) return head.body_depth->value;
  return std::min(head.body_depth->value, head.body_width->value);
}

/// The thinnest solid that closes, and the coarsest motion axis that any closes at.
struct Solid {
  Length laydown;
  Resolution motion_axis;
};

/// The coarsest resolution along the motion at which a dot closes solids; none where it never does.
std::optional<Resolution> closing_from(Length dot, Length across) {
  const double left = (dot * dot - across * across).si();
  if (!(left > 0)) return std::nullopt;
  return Resolution::from_si(just_below / std::sqrt(left));
}

/// Of the levels that a solid may take, at a resolution of the nozzle axis. None: no level closes.
std::optional<Solid> thinnest(const Search& search, const ModeFacts& facts, Resolution nozzle,
                              Resolution motion) {
  std::optional<Solid> least;
  const auto asked = static_cast<std::size_t>(std::max(search.job->levels - 2, 0));
  for (std::size_t i = std::min(asked, facts.levels - 1); i < facts.levels; ++i) {
    Resolution along = motion;
    if (search.job->solids) {
      const auto closing = closing_from(facts.dots.at(i).high / just_below, pitch(nozzle));
      if (!closing) continue;
      along = std::max(along, *closing);
    }
    const Length laid = laydown(facts.mode->drops->value[i], nozzle, along, 1);
    if (!least) least = Solid{laid, along};
    least = Solid{std::min(least->laydown, laid), std::min(least->motion_axis, along)};
  }
  return least;
}

/// The same of a head that may be tilted, whose nozzle axis may be any from the least on: of all
/// lattices whose dots close, p_n^2 + p_m^2 <= D^2, the square one has the largest cell, D^2/2.
Solid thinnest_tilted(const Search& search, const ModeFacts& facts, Resolution nozzle,
                      Resolution motion) {
  std::optional<Length> least;
  for (std::size_t i = 0; i < facts.levels; ++i) {
    const Volume drop = facts.mode->drops->value[i];
    Length laid = laydown(drop, nozzle, motion, 1);
    if (search.job->solids) {
      const Length dot = facts.dots.at(i).high / just_below;
      laid = std::max(laid, 2 * drop / (dot * dot));
    }
    least = least ? std::min(*least, laid) : laid;
  }
  return {least.value_or(Length()), motion};
}

/// What the least of a mode is made of.
class ModeLeast {
 public:
  ModeLeast(const Search& search, const GroupNeed& need, const ModeFacts& facts, bool scanning)
      : search_(search), need_(need), facts_(facts), scanning_(scanning) {
    nozzle_ = just_below * nozzle_demand(*search.job, scanning).least;
    motion_ = just_below * motion_demand(*search.job, scanning).least;
  }

  /// Gives `take` arrangements that have together the least of everything a floor or a rank looks
  /// at.
  template <class Take>
  void sparest(Take take) const {
    if (may_tilt(*facts_.head)) {
      take(of(1, thinnest_tilted(search_, facts_, nozzle_, motion_)));
      return;
    }
    for (int k = 1; k <= (scanning_ ? 1 : most_interleave); ++k) {
      const Resolution nozzle = nozzle_axis(search_, facts_, scanning_, k);
      if (nozzle < nozzle_) continue;
      const auto solid = thinnest(search_, facts_, nozzle, motion_);
      if (solid) take(of(k, *solid));
    }
  }

 private:
  Arrangement of(int interleave, const Solid& solid) const {
    Arrangement a;
    a.shape.scanning = scanning_;
    a.positions = (need_.channels + facts_.colours - 1) / facts_.colours;
    a.laydown = just_below * std::max(solid.laydown, need_.film);
    int banks = interleave;
    if (!scanning_) {
      // A tilted head's swath and pitch are narrower, never wider.
      a.across = heads_across(search_.width, facts_.swath, facts_.head_pitch);
      const Frequency column = column_frequency(search_.fastest, solid.motion_axis);
      banks *= std::min(least_stack(column, best_rating(search_, facts_)), most_stack);
    }
    a.heads = heads_in_group(a.positions, a.across, banks, 1);
    if (!search_.job->radius) {
      a.footprint = just_below * rows_depth(a.positions * banks, least_depth(*facts_.head),
                                            millimetres(search_.job->parameters[P::row_gap_mm]));
    }
    return a;
  }

  const Search& search_;
  const GroupNeed& need_;
  const ModeFacts& facts_;
  bool scanning_;
  Resolution nozzle_, motion_;  ///< the least of each that passes
};

}  // namespace

void lower(const Least& to, std::optional<Least>& least) {
  if (!least) {
    least = to;
    return;
  }
  least->heads = std::min(least->heads, to.heads);
  least->footprint = std::min(least->footprint, to.footprint);
  least->floor.capital = std::min(least->floor.capital, to.floor.capital);
  least->floor.yearly = std::min(least->floor.yearly, to.floor.yearly);
  least->floor.stages = std::min(least->floor.stages, to.floor.stages);
}

std::optional<Least> least_of(const Search& search, const GroupNeed& need, std::size_t head,
                              bool scanning) {
  const Head& h = search.catalogue->heads[head];
  const HeadFloor floor(search, need, head, jetting_of(search, need, h));
  std::optional<Least> least;
  Findings unused;  // a mode that lacks something is no arrangement's
  for (const HeadMode& mode : h.modes) {
    const auto facts = mode_facts(search, h, mode, unused);
    if (!facts) continue;
    ModeLeast(search, need, *facts, scanning).sparest([&](const Arrangement& a) {
      lower({a.heads, h.body_depth ? a.footprint : Length{}, floor.of(a)}, least);
    });
  }
  return least;
}

}  // namespace calc
