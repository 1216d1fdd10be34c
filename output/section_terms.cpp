/// The terms of the trade that this document uses, each with its meaning.
#include <algorithm>
#include <array>
#include <map>
#include <utility>

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

/// Order of a word list: in any case, ä as a, ö as o, ü as u and ß as ss.
std::string order_of(const std::string& term) {
  constexpr std::array<std::pair<std::string_view, std::string_view>, 4> letters{
      {{"\u00E4", "a"}, {"\u00F6", "o"}, {"\u00FC", "u"}, {"\u00DF", "ss"}}};
  std::string order = lowered(without_markup(term));
  for (const auto& [marked, plain] : letters) {
    for (auto at = order.find(marked); at != std::string::npos; at = order.find(marked, at)) {
      order.replace(at, marked.size(), plain);
    }
  }
  return order;
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
  std::map<std::pair<std::string, std::string>, std::string> terms;  // by order and term: its key
  for (const std::string& key : c.templates.keys(c.language(), prefix)) {
    if (key.find('.', prefix.size()) != std::string::npos) continue;
    if (uses(text, lowered(c.words(key + ".words")))) {
      std::string term = c.words(key);
      std::string order = order_of(term);
      terms.emplace(std::pair(std::move(order), std::move(term)), key);
    }
  }
  if (terms.empty()) return {};
  Values values;
  for (const auto& [term, key] : terms) {
    Values& row = values.add("TERM");
    row.set_markup("NAME", term.second);
    row.set_markup("MEANING", c.words(key + ".meaning"));
  }
  return c.expand("terms", values);
}

}  // namespace output
