/// Characters, their faces and widths, remembered.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "output/fonts.h"

namespace output {

/// The face a character is drawn in, and its width there.
struct Metrics {
  std::int32_t advance = 0;  ///< [1/1000 em]
  Face face = Face::text;
  bool drawable = false;
};

/// Looks each character up once; for one thread.
class Measurer {
 public:
  /// `unprintable` receives each character without a face, once, in order of appearance.
  Measurer(const Fonts& fonts, std::vector<char32_t>& unprintable);

  Metrics of(Face wanted, char32_t character);
  /// Notes a character as not printable.
  void report(char32_t character);
  const Fonts& fonts() const { return fonts_; }

 private:
  Metrics look_up(Face wanted, char32_t character) const;

  const Fonts& fonts_;
  std::vector<char32_t>& unprintable_;
  std::unordered_set<char32_t> reported_;
  std::vector<Metrics> near_;  ///< the first characters of Unicode, by face
  std::vector<bool> near_known_;
  std::unordered_map<std::uint32_t, Metrics> far_;
};

/// Takes the first character off the text; a malformed byte comes as U+FFFD.
char32_t take_character(std::string_view& utf8);

/// Appends a character in UTF-8.
void append_utf8(std::string& text, char32_t character);

/// "[U+00B5]", with at least four hexadecimal digits.
std::string code_point_mark(char32_t character);

}  // namespace output
