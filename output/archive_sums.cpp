#include "output/archive_sums.h"

namespace output {

std::optional<SumLine> read_sum_line(std::string_view line) {
  constexpr std::size_t digits = 64;
  if (line.size() < digits + 3 || line.substr(digits, 2) != "  ") return std::nullopt;
  const std::optional<Digest> digest = digest_from(line.substr(0, digits));
  if (!digest) return std::nullopt;
  return SumLine{line.substr(digits + 2), *digest};
}

std::string sum_line(std::string_view name, const Digest& digest) {
  return hex(digest).append("  ").append(name).append("\n");
}

void each_sum_line(std::string_view text, const std::function<void(const SumLine&)>& take) {
  while (!text.empty()) {
    const std::size_t end = text.find('\n');
    if (const auto line = read_sum_line(text.substr(0, end))) take(*line);
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
  }
}

Sums read_sums(std::string_view text) {
  Sums sums;
  each_sum_line(text, [&](const SumLine& line) { sums[std::string(line.name)] = line.digest; });
  return sums;
}

}  // namespace output
