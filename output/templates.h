/// The templates: wording and house style, compiled in, parsed once, shared by all threads.
/// How a template and a file of words are written stands in templates/README.md.
#pragma once

#include <map>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "output/digest.h"
#include "output/layout.h"

namespace output {

/// Text from anywhere, safe to stand in markup once escaped: control characters are shown as \xNN
/// and bytes that are not UTF-8 as U+FFFD.
std::string printable(std::string_view text);
/// The same, escaped for markup (text and attributes).
std::string escaped(std::string_view text);

/// A tree of values for a template: markers by name and repeated or conditional sections. Unset
/// markers are faults, not blanks.
class Values {
 public:
  /// Sets {{NAME}}; text is escaped when printed.
  void set(std::string_view name, std::string_view text);
  /// Sets {{NAME:none}} to ready markup, which is not escaped again; it must be well-formed.
  void set_markup(std::string_view name, std::string markup);
  /// Adds one more repetition of {{#NAME}}...{{/NAME}} and returns its own values.
  Values& add(std::string_view name);

  const std::map<std::string, std::string, std::less<>>& texts() const { return texts_; }
  const std::map<std::string, std::string, std::less<>>& markups() const { return markups_; }
  const std::map<std::string, std::vector<std::unique_ptr<Values>>, std::less<>>& sections() const {
    return sections_;
  }

 private:
  std::map<std::string, std::string, std::less<>> texts_, markups_;
  std::map<std::string, std::vector<std::unique_ptr<Values>>, std::less<>> sections_;
};

/// Templates of the user's own: each replaces the shipped one of the same name.
struct OwnTemplates {
  std::string folder;                        ///< as messages name it
  std::map<std::string, std::string> files;  ///< by name below that folder: "style.ini"
};

/// Immutable after construction; safe to share between threads.
class Templates {
 public:
  /// The compiled-in templates, or the user's in place of those of the same name. A folder beside
  /// `en` is another language and has every file of it; a *.png is a logo the style may name.
  /// Throws std::runtime_error naming file and line when one is broken, has a marker, key or
  /// argument that the shipped one has not, or lacks a text.
  explicit Templates(const OwnTemplates& own = {});
  ~Templates();
  Templates(const Templates&) = delete;
  Templates& operator=(const Templates&) = delete;
  Templates(Templates&&) = delete;
  Templates& operator=(Templates&&) = delete;

  /// Expands `name` ("en/document.tpl"). Throws std::runtime_error, with file and line, on a marker
  /// nobody set, on markup in a marker that escapes and on text in one that does not.
  std::string expand(const std::string& name, const Values& values) const;
  /// The words of a code ("question.ink_family") in a language with its arguments {{ARG}} filled
  /// in, escaped for markup. Throws std::out_of_range for a code without words.
  std::string words(std::string_view language, std::string_view key, const Values& values) const;
  /// Whether a key has words.
  bool has_words(std::string_view language, std::string_view key) const;
  /// The keys that begin so, in the order of their bytes.
  std::vector<std::string> keys(std::string_view language, std::string_view prefix) const;
  /// The languages there are templates in, in the order of their bytes.
  std::vector<std::string> languages() const;
  /// SHA-256 of the user's own files; empty when there are none.
  const std::string& own_digest() const;
  /// Throws std::runtime_error "file:line: ..." where a language differs from the shipped English
  /// in its templates, markers, keys or arguments.
  void check_language(std::string_view language) const;
  /// Whether there are templates in that language.
  bool has_language(std::string_view language) const;
  /// The words of a key as they are written, arguments as {{ARG}}. Throws std::out_of_range.
  const std::string& wording(std::string_view language, std::string_view key) const;
  /// Of the texts of all of them: equal digests expand alike.
  const Digest& digest() const;
  const PageStyle& style() const;
  /// A text of the style file ("house.owner"). Throws std::out_of_range when it has none.
  const std::string& setting(std::string_view key) const;
  /// The same, or `key.language` where the style has that.
  const std::string& setting(std::string_view key, std::string_view language) const;

 private:
  struct Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace output
