/// The terms of the trade that this document uses, each with its meaning.
#include <algorithm>
#include <map>

#include "output/compose_text.h"
#include "output/report_text.h"
#include "output/section_list.h"

namespace output {
namespace {

/// Lower case of ASCII letters and of the Latin letters with marks that German has.
std::string lowered(std::string_view text) {
  std::string lower;
  bool after_c3 = false;  // U+00C0..U+00DE begin with this byte
  for (const char byte : text) {
    const auto value = static_cast<unsigned char>(byte);
    const bool upper = (value >= 'A' && value <= 'Z') || (after_c3 && value <= 0x9E);
    lower += static_cast<char>(upper ? value + 0x20 : value);
    after_c3 = value == 0xC3;
  }
  return lower;
}

bool is_letter(char byte) {
  return (byte >= 'a' && byte <= 'z') || static_cast<unsigned char>(byte) >= 0x80;
}

/// Whether a word of the text begins with this.
bool has_word(std::string_view text, std::string_view word) {
  for (std::size_t at = text.find(word); at != std::string_view::npos;
       at = text.find(word, at + 1)) {
    if (at == 0 || !is_letter(text[at - 1])) return true;
  }
  return false;
}

/// Whether the text uses a term, by one of the beginnings of words it is known by ("; " between).
bool uses(std::string_view text, std::string_view beginnings) {
  while (!beginnings.empty()) {
    const std::size_t end = std::min(beginnings.find("; "), beginnings.size());
    if (has_word(text, beginnings.substr(0, end))) return true;
    beginnings.remove_prefix(std::min(end + 2, beginnings.size()));
  }
  return false;
}

/// The markup with a blank before each tag, so that words of two cells stay two.
std::string parted(std::string_view markup) {
  std::string text;
  for (const char byte : markup) {
    if (byte == '<') text += ' ';
    text += byte;
  }
  return text;
}

}  // namespace

std::string terms_section(const Context& c, std::string_view body) {
  constexpr std::string_view prefix = "glossary.";
  const std::string text = lowered(without_markup(parted(body)));
  std::map<std::string, std::string> terms;  // in the order of the words, by their key
  for (const std::string& key : c.templates.keys(c.language(), prefix)) {
    if (key.find('.', prefix.size()) != std::string::npos) continue;
    if (uses(text, lowered(c.words(key + ".words")))) terms.emplace(c.words(key), key);
  }
  if (terms.empty()) return {};
  Values values;
  for (const auto& [term, key] : terms) {
    Values& row = values.add("TERM");
    row.set_markup("NAME", term);
    row.set_markup("MEANING", c.words(key + ".meaning"));
  }
  return c.expand("terms", values);
}

}  // namespace output
