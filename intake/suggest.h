/// "Did you mean".
#pragma once

#include <span>
#include <string>
#include <string_view>

namespace intake {

/// Least number of insertions, deletions, replacements and swaps of neighbours that make `a` of
/// `b`.
int edit_distance(std::string_view a, std::string_view b);

/// The candidate nearest to `word`, empty when none is near (at most a third of the longer one's
/// letters wrong, case counting nothing). Words beyond 40 bytes have no neighbours.
std::string_view nearest(std::string_view word, std::span<const std::string_view> candidates);

/// `a, b, c`, the empty ones left out.
std::string joined(std::span<const std::string_view> texts);

}  // namespace intake
