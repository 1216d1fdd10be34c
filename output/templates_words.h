/// Keyed texts: the words of every code, in one language.
#pragma once

#include <map>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "output/templates.h"

namespace output {

/// Lines `key = text` with inline markup and {{ARGUMENT}}s; a line that starts with blanks goes on
/// with the text before it; `#` starts a remark.
class Words {
 public:
  /// Adds a file's texts. Throws std::runtime_error "file:line: ..." on a line that is none of the
  /// above, an empty text and a key that stands twice.
  void read(const std::string& file, std::string_view text);
  bool has(std::string_view key) const { return entries_.contains(key); }
  /// The text of a key as it is written. Throws std::out_of_range for an unknown key.
  const std::string& text(std::string_view key) const;
  /// The keys that begin so, in the order of their bytes.
  std::vector<std::string> keys(std::string_view prefix) const;
  /// Where the text of a key stands: file and line. Throws std::out_of_range for an unknown key.
  std::pair<std::string, int> place(std::string_view key) const;
  /// The names of the arguments in its text.
  std::set<std::string> arguments(std::string_view key) const;
  /// The text of a key with its arguments, escaped. Throws std::out_of_range for an unknown key and
  /// std::runtime_error "file:line: ..." for an argument nobody set.
  std::string fill(std::string_view key, const Values& values) const;

 private:
  struct Entry {
    std::string text, file;
    int line = 0;
  };
  const Entry& entry(std::string_view key) const;
  void take_line(const std::string& file, int line, std::string_view content);

  std::map<std::string, Entry, std::less<>> entries_;
  Entry* last_ = nullptr;
};

}  // namespace output
