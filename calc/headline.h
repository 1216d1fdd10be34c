/// The figures a station is judged by at a glance, for "how far may this figure move".
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "calc/job.h"

namespace calc {

struct Sizing;

/// Of the whole station; where groups differ, the one that binds.
enum class Headline : std::size_t {
  heads,
  frequency,  ///< greatest at which a nozzle jets
  speed,      ///< least limit of the groups; of a carriage, of the feed
  cover,      ///< least of a channel's solids
  dot,        ///< greatest U of the budgets of that name, of placement
  joint,
  colour,
  image,
  ink,        ///< used by all channels, purge and flush included
  footprint,  ///< along the line
  exhaust,    ///< air of all exhausts, as hot as it leaves
  capital,    ///< as far as it is priced
  running,
  ownership,
  count
};

inline constexpr std::size_t headlines_count = static_cast<std::size_t>(Headline::count);

/// Key of the public interface, "heads_total".
std::string_view headline_key(Headline figure);
/// Its unit, "1" of a share, empty of a count, that of the job's currency for money.
std::string headline_unit(Headline figure, const std::string& currency);

/// In the units of headline_unit. Absent where the figure does not apply: no flight known, no
/// budget of that name, nothing priced.
using Headlines = std::array<std::optional<double>, headlines_count>;

/// `sizing` is of these groups. No group: no figure.
Headlines headlines(const Job& job, const std::vector<Group>& groups, const Sizing& sizing);

}  // namespace calc
