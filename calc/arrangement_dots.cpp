/// Which drop a solid takes, its dot on the lattice and the film it lays.
#include <algorithm>

#include "calc/arrangement.h"
#include "calc/compare.h"
#include "calc/frequency.h"
#include "calc/lattice.h"
#include "calc/laydown.h"

namespace calc {
namespace {

/// The smallest level whose dot closes solids, of a guessed spread at its upper end: a bigger drop
/// is never picked on a guess alone. None if no level does.
std::optional<std::size_t> closing_level(const ModeFacts& f, Length needed) {
  for (std::size_t i = 0; i < f.levels; ++i) {
    if (at_least(f.dots.at(i).high, needed)) return i;
  }
  return std::nullopt;
}

void cover_gate(const Search& s, const DotEstimate& dot, Length needed, Findings& out) {
  if (!at_least(dot.high, needed)) {
    out.failures.push_back({"cover", {}, in_um(dot.high), in_um(needed), "um", true, {}, {}, {}});
  } else if (!at_least(dot.diameter, needed)) {
    const bool known = s.job->request->substrate.absorbency.has_value();
    out.conditions.push_back({"measure_dot",
                              "cover",
                              in_um(dot.diameter),
                              in_um(needed),
                              "um",
                              true,
                              "substrate",
                              known ? "dot_diameter" : "absorbency",
                              {}});
  }
}

void feature_gate(const Search& s, const ModeFacts& f, Findings& out) {
  const Given<Length>& feature = s.job->request->image.smallest_feature;
  if (!feature) return;
  const DotEstimate& dot = f.dots.front();
  const double limit = in_um(feature->low);
  if (!at_most(dot.low, feature->low)) {
    out.failures.push_back({"feature", {}, in_um(dot.low), limit, "um", false, {}, {}, {}});
  } else if (!at_most(dot.diameter, feature->low)) {
    out.conditions.push_back({"measure_dot", "feature", in_um(dot.diameter), limit, "um", false,
                              "substrate", "dot_diameter", &feature->origin});
  }
}

Length film_of(const ModeFacts& f, const Arrangement& a, std::size_t level, int heads) {
  return laydown(f.mode->drops->value[level], a.nozzle_axis, a.shape.motion_axis, heads);
}

/// A film is reached by a bigger drop first, then by more heads in line.
void reach_film(const GroupNeed& need, const ModeFacts& f, Arrangement& a) {
  if (need.film <= Length{}) return;
  while (a.level + 1 < f.levels &&
         !at_least(film_of(f, a, a.level, std::max(1, a.shape.film_heads)), need.film)) {
    ++a.level;
  }
  if (a.shape.film_heads > 0) return;
  const int heads = heads_for_film(need.film, film_of(f, a, a.level, 1));
  a.shape.film_heads = std::min(heads, most_film_heads);
}

void film_gate(const GroupNeed& need, const Arrangement& a, Findings& out) {
  if (need.film <= Length{} || at_least(a.laydown, need.film)) return;
  out.failures.push_back(
      {"film", need.group->name, in_um(a.laydown), in_um(need.film), "um", true, {}, {}, {}});
}

/// What one process colour lays at its peak is within the limit of all together. One solid is one
/// drop a place: each head in line for laydown adds one.
void limit_gate(const Search& s, const GroupNeed& need, const Arrangement& a, Findings& out) {
  const double solids = a.shape.film_heads * need.peak;
  if (at_most(solids, s.process_limit)) return;
  out.failures.push_back({"film", "limit", solids, s.process_limit, "1", false, {}, {}, {}});
}

void levels_gate(const Search& s, const ModeFacts& f, Findings& out) {
  const int has = static_cast<int>(f.levels) + 1;
  if (has >= s.job->levels) return;
  out.failures.push_back({"levels",
                          f.mode->name,
                          static_cast<double>(has),
                          static_cast<double>(s.job->levels),
                          "",
                          true,
                          {},
                          {},
                          {}});
}

}  // namespace

void choose_drop(const Search& search, const GroupNeed& need, const ModeFacts& facts,
                 Arrangement& a, Findings& findings) {
  levels_gate(search, facts, findings);
  const Length across = pitch(a.nozzle_axis) + facts.wider;
  const Length needed = closing_dot(across, pitch(a.shape.motion_axis));
  const auto asked = static_cast<std::size_t>(std::max(search.job->levels - 2, 0));
  a.level = std::min(asked, facts.levels - 1);
  if (search.job->solids) {
    const std::size_t solid = closing_level(facts, needed).value_or(facts.levels - 1);
    a.level = std::max(a.level, solid);
  }
  reach_film(need, facts, a);
  if (a.shape.film_heads == 0) a.shape.film_heads = 1;
  a.dot = facts.dots.at(a.level);
  a.laydown = film_of(facts, a, a.level, a.shape.film_heads);
  a.open = search.job->solids && !at_least(a.dot.diameter, needed);
  if (search.job->solids) cover_gate(search, a.dot, needed, findings);
  feature_gate(search, facts, findings);
  film_gate(need, a, findings);
  limit_gate(search, need, a, findings);
}

Frequency usable_rating(const Search& search, const ModeFacts& facts, Arrangement& a) {
  const HeadMode& mode = *facts.mode;
  const int drops = static_cast<int>(facts.levels);
  const GreyMethod method = mode.grey_method ? mode.grey_method->value
                            : drops == 2     ? GreyMethod::amplitude
                                             : GreyMethod::subdrops;
  AllowedFrequency allowed =
      allowed_frequency(mode.frequency->value, drops, method, levels_used(a.level));
  a.from_binary = allowed.from_binary;
  if (allowed.from_binary && method == GreyMethod::amplitude) {
    allowed.value = mode.frequency->value.front() * search.job->parameters[P::amplitude_factor];
  }
  return usable_frequency(allowed.value, search.reserve);
}

}  // namespace calc
