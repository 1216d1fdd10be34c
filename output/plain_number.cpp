#include "output/plain_number.h"

#include <array>
#include <charconv>
#include <cmath>
#include <stdexcept>

namespace output {
namespace {

double rounded(double value, int digits) {
  if (!std::isfinite(value)) throw std::logic_error("a figure is not finite");
  std::array<char, 40> text{};
  const auto [end, fault] = std::to_chars(text.data(), text.data() + text.size(), value,
                                          std::chars_format::scientific, digits - 1);
  if (fault != std::errc{}) throw std::logic_error("a figure does not fit its text");
  double result = 0;
  std::from_chars(text.data(), end, result);
  return result == 0 ? 0 : result;  // no negative zero
}

}  // namespace

double round_12(double value) { return rounded(value, 12); }

std::string plain(double value, int digits) {
  std::array<char, 400> text{};  // the longest double has 309 places before the point
  const auto [end, fault] = std::to_chars(text.data(), text.data() + text.size(),
                                          rounded(value, digits), std::chars_format::fixed);
  if (fault != std::errc{}) throw std::logic_error("a figure does not fit its text");
  return {text.data(), end};
}

}  // namespace output
