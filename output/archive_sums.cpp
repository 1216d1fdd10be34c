#include "output/archive_sums.h"

namespace output {
namespace {

constexpr std::size_t digest_length = 64;

bool is_digest(std::string_view text) {
  return text.size() == digest_length &&
         text.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

void read_line(Sums& sums, std::string_view line) {
  if (line.size() < digest_length + 3 || line.substr(digest_length, 2) != "  ") return;
  const std::string_view digest = line.substr(0, digest_length);
  if (is_digest(digest)) sums[std::string(line.substr(digest_length + 2))] = digest;
}

}  // namespace

Sums read_sums(std::string_view text) {
  Sums sums;
  while (!text.empty()) {
    const std::size_t end = text.find('\n');
    read_line(sums, text.substr(0, end));
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
  }
  return sums;
}

std::string write_sums(const Sums& sums) {
  std::string text;
  for (const auto& [name, digest] : sums) text.append(digest).append("  ").append(name).append("\n");
  return text;
}

}  // namespace output
