/// SHA256SUMS: which issued file had which digest.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "output/digest.h"

namespace output {

/// File name to digest, in the order of the names' bytes.
using Sums = std::map<std::string, Digest, std::less<>>;

inline constexpr std::string_view sums_name = "SHA256SUMS";

struct SumLine {
  std::string_view name;
  Digest digest;
};
/// A line `digest  name` without its end; nullopt for any other form.
std::optional<SumLine> read_sum_line(std::string_view line);
/// The same back, ended by a line feed.
std::string sum_line(std::string_view name, const Digest& digest);

/// Hands on every line; one of any other form is dropped.
void each_sum_line(std::string_view text, const std::function<void(const SumLine&)>& take);
Sums read_sums(std::string_view text);

}  // namespace output
