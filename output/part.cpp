#include "output/part.h"

#include <charconv>
#include <cstdint>

#include "output/digest.h"
#include "output/names.h"

namespace output {
namespace {

std::optional<unsigned> whole_number(std::string_view text) {
  unsigned value = 0;
  const char* end = text.data() + text.size();
  const auto [stop, error] = std::from_chars(text.data(), end, value);
  if (error != std::errc() || stop != end) return std::nullopt;
  return value;
}

}  // namespace

std::optional<Part> part_from(std::string_view text) {
  constexpr unsigned most = 9999;
  const std::size_t slash = text.find('/');
  if (slash == std::string_view::npos) return std::nullopt;
  const auto number = whole_number(text.substr(0, slash));
  const auto count = whole_number(text.substr(slash + 1));
  if (!number || !count || *number < 1 || *number > *count || *count > most) return std::nullopt;
  return Part{*number, *count};
}

std::string part_name(Part part) {
  return std::to_string(part.number) + "-of-" + std::to_string(part.count);
}

bool is_in(Part part, std::string_view id) { return is_name_in(part, name_part(id)); }

bool is_name_in(Part part, std::string_view name) {
  std::uint64_t remainder = 0;
  for (const unsigned char byte : digest_of(lower_ascii(name))) {
    remainder = (remainder * 256 + byte) % part.count;
  }
  return remainder + 1 == part.number;
}

}  // namespace output
