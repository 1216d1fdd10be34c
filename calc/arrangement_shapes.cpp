/// The shapes of a mode worth trying: resolutions along the motion, heads interleaved and in line.
#include <algorithm>

#include "calc/arrangement.h"
#include "calc/compare.h"
#include "calc/frequency.h"
#include "calc/lattice.h"
#include "calc/laydown.h"

namespace calc {
namespace {

/// What is asked of the motion: the resolution required and the finest worth trying.
struct Motion {
  Resolution required, most;
};

/// The least resolutions along the motion at which each drop size closes solids, at its likely dot
/// and at the upper end of a guess.
void add_closing(const ModeFacts& facts, Length pn, const Motion& motion,
                 std::vector<Resolution>& to) {
  const Length enough = closing_dot(pn, pitch(motion.required));
  for (std::size_t i = 0; i < facts.levels; ++i) {
    for (const Length d : {facts.dots.at(i).diameter, facts.dots.at(i).high}) {
      if (at_least(d, enough)) continue;
      const auto closing = closing_resolution(d, pn, motion.required, motion.most);
      if (closing) to.push_back(*closing);
    }
  }
}

/// Those at which one drop size lays a film with one to most_film_heads heads in line.
void add_filming(Length film, Volume drop, Resolution across, const Motion& motion,
                 std::vector<Resolution>& to) {
  for (int heads = 1; heads <= most_film_heads; ++heads) {
    const Resolution r = film / (drop * across * static_cast<double>(heads));
    if (at_most(r, motion.required)) return;  // and so with more heads
    if (at_most(r, motion.most)) to.push_back(r);
  }
}

/// Leaves of the resolutions along the motion those that a tilted head prints.
void keep_printable(const ModeFacts& facts, Resolution most, std::vector<Resolution>& all) {
  if (!facts.is_tilted()) return;
  for (Resolution& r : all) r = lines_on(facts, r);
  const auto beyond = [&](Resolution r) { return !at_most(r, most); };
  all.erase(std::remove_if(all.begin(), all.end(), beyond), all.end());
}

/// Resolutions along the motion worth trying, ascending, the required one first.
void find_motion_axes(const Search& search, const GroupNeed& need, const ModeFacts& facts,
                      bool scanning, Resolution delivered, std::vector<Resolution>& all) {
  const Resolution required = motion_demand(*search.job, scanning).required;
  const Motion motion{required, finest_along(required, delivered)};
  all.assign(1, required);
  if (search.job->solids) add_closing(facts, pitch(delivered) + facts.wider, motion, all);
  if (need.film > Length{}) {
    for (const Volume drop : facts.mode->drops->value) {
      add_filming(need.film, drop, delivered, motion, all);
    }
  }
  keep_printable(facts, motion.most, all);
  std::sort(all.begin(), all.end());
  const auto same = [](Resolution a, Resolution b) { return at_most(b, a); };
  all.erase(std::unique(all.begin(), all.end(), same), all.end());
}

/// Adds the shapes with several heads in line for a film with which a smaller drop lays it, and may
/// jet faster; with the same drop, one head more only costs. One head is the shape without a number
/// of them. Drops ascend.
void add_in_line(const GroupNeed& need, const ModeFacts& facts, Resolution delivered, Shape shape,
                 std::vector<Shape>& shapes) {
  const auto lays = [&](std::size_t level, int heads) {
    const Volume drop = facts.mode->drops->value[level];
    return at_least(laydown(drop, delivered, shape.motion_axis, heads), need.film);
  };
  std::size_t level = facts.levels - 1;
  const auto go_down = [&](int heads) {
    const std::size_t before = level;
    while (level > 0 && lays(level - 1, heads)) --level;
    return level < before;
  };
  go_down(1);
  for (int heads = 2; heads <= most_film_heads && level > 0; ++heads) {
    if (!go_down(heads)) continue;
    shape.film_heads = heads;
    shapes.push_back(shape);
  }
}

/// The interleaves worth trying, from one to another.
struct Interleaves {
  int least, most;
};
Interleaves interleaves_of(const Search& search, const ModeFacts& facts, const Shape& first) {
  if (facts.is_tilted()) return {first.interleave, first.interleave};
  if (first.scanning) return {1, 1};
  const Resolution asked = nozzle_demand(*search.job, false).least;
  return {least_interleave(facts.native, asked).value_or(most_interleave), most_interleave};
}

}  // namespace

void find_shapes(const Search& search, const GroupNeed& need, const ModeFacts& facts,
                 const Shape& first, Shapes& found) {
  found.list.clear();
  const Interleaves tried = interleaves_of(search, facts, first);
  for (int k = tried.least; k <= tried.most; ++k) {
    Shape shape = first;
    shape.interleave = k;
    shape.tilt = facts.tilt;
    const Resolution delivered = nozzle_axis(search, facts, first.scanning, k);
    find_motion_axes(search, need, facts, first.scanning, delivered, found.motion_axes);
    for (const Resolution r : found.motion_axes) {
      shape.motion_axis = r;
      found.list.push_back(shape);
      if (need.film > Length{}) add_in_line(need, facts, delivered, shape, found.list);
    }
  }
}

}  // namespace calc
