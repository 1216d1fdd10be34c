/// The text of a file with its places: lines, columns, and what no text may hold.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace intake {

/// A run of bytes of a SourceText.
struct Place {
  std::size_t offset = 0;
  std::size_t length = 0;
};

/// The text without blanks and line ends at both ends.
std::string_view trim(std::string_view text);

/// Number of code points. Pre: valid UTF-8.
int code_points(std::string_view text);

/// The code point that starts at `offset` and its length in bytes; length 0 when the bytes there
/// are not valid UTF-8 (overlong forms, surrogates and values above U+10FFFF are not).
struct CodePoint {
  char32_t value = 0;
  std::size_t length = 0;
};
CodePoint decode(std::string_view text, std::size_t offset);

/// Whether a terminal or a document could be steered by it: C0 but tab and line ends, DEL, C1.
bool is_control(char32_t c);

/// Whether these are the bytes of something other than text: a picture, an archive, a document.
bool is_binary(std::string_view bytes);

/// A text with control and direction characters written out as \xNN or \u{NNNN}.
std::string shown(std::string_view text);

/// A file's text with an index of lines, so that any place costs a bounded search even on a line of
/// many megabytes. Line ends are LF, CR LF and a lone CR. Bytes that are not UTF-8 stand as `?`.
class SourceText {
 public:
  /// Post: places are offsets into text(), which is `text` without a byte order mark.
  SourceText(std::string_view name, std::string_view text);

  const std::string& name() const { return name_; }
  /// Valid UTF-8 of the same length as the file's.
  std::string_view text() const { return text_; }
  /// text() with control characters replaced by `?`, for the parsers.
  std::string_view parsable() const { return parsable_.empty() ? text_ : parsable_; }
  /// The first 20 runs of bytes that are not UTF-8, the first 20 control characters.
  const std::vector<Place>& bad_bytes() const { return bad_bytes_; }
  const std::vector<Place>& controls() const { return controls_; }
  /// The byte as it was in the file, as \xNN.
  const std::vector<std::string>& bad_byte_texts() const { return bad_byte_texts_; }

  /// From 1.
  int line_of(std::size_t offset) const;
  /// From 1, in code points, a tab counts one.
  int column_of(std::size_t offset) const;
  /// The inverse of line_of and column_of; the end of the text when there is no such place.
  std::size_t offset_of(int line, int column) const;
  /// The line without its end; empty beyond the last.
  std::string_view line(int number) const;

 private:
  void check_bytes(std::string_view original);
  void index();
  std::size_t code_points_before(std::size_t offset) const;

  std::string name_;
  std::string text_;
  std::string parsable_;
  std::vector<Place> bad_bytes_;
  std::vector<std::string> bad_byte_texts_;
  std::vector<Place> controls_;
  std::vector<std::size_t> line_starts_;
  std::vector<std::size_t> counted_;  ///< code points before each block of bytes
};

}  // namespace intake
