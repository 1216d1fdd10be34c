/// The operators of a content stream as text (ISO 32000-1, annex A).
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace output {

/// Operands come before their operator. Written here rather than by libharu, which measures every
/// text it shows and keeps a state that the painter keeps too.
class Content {
 public:
  /// A number to thousandths: finer than any device [pt], and short.
  Content& number(double value);
  /// A number to millionths, for the sine and cosine of an angle.
  Content& fine_number(double value);
  Content& name(std::string_view name);
  /// A string of two-byte codes. Throws std::invalid_argument on text that is not UTF-8.
  /// Precondition: no character beyond U+FFFF.
  Content& text(std::string_view utf8);
  /// Dash lengths, whole numbers.
  Content& lengths(const std::vector<double>& values);
  void operate(std::string_view operation);

  const std::string& bytes() const { return bytes_; }

 private:
  void put(std::int64_t units, std::int64_t scale);
  void put_code_byte(std::uint8_t byte);

  std::string bytes_;
};

}  // namespace output
