/// Reads the block markup with pugixml and holds it against the vocabulary of markup.h.
#include "output/markup.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <pugixml.hpp>
#include <utility>

namespace output {
namespace {

/// What may stand between an element's tags.
enum class Content : std::uint8_t { blocks, mixed };

struct Rule {
  std::string_view name;
  Content content = Content::blocks;
  std::string_view attributes;  ///< blank separated, a blank at both ends
  std::string_view children;    ///< likewise
};

constexpr std::array<Rule, 27> rules{{
    {"document", Content::blocks,
     " title customer id language date author creator subject keywords ",
     " titleblock front contents section p list note table figure newpage "},
    {"titleblock", Content::blocks, " note ", " cell "},
    {"front", Content::blocks, " ", " p list note table figure newpage "},
    {"contents", Content::blocks, " title depth ", " "},
    {"section", Content::blocks, " title id wide landscape ",
     " section p list note table figure newpage "},
    {"p", Content::mixed, " key id after ", " b i sub sup code a "},
    {"list", Content::blocks, " ordered ", " item "},
    {"item", Content::mixed, " key id ", " b i sub sup code a p list "},
    {"note", Content::mixed, " kind title key id ", " b i sub sup code a p list "},
    {"table", Content::blocks, " columns id caption wide dense lines ", " head row "},
    {"head", Content::blocks, " ", " cell "},
    {"row", Content::blocks, " keep key id also total height ", " cell "},
    {"cell", Content::mixed, " name label span ", " b i sub sup code a "},
    {"figure", Content::blocks, " id caption wide key ", " drawing "},
    {"drawing", Content::blocks, " width height ", " line rect circle poly label "},
    {"line", Content::blocks, " x1 y1 x2 y2 stroke weight dash ", " "},
    {"rect", Content::blocks, " x y width height stroke weight fill dash ", " "},
    {"circle", Content::blocks, " x y radius stroke weight fill dash ", " "},
    {"poly", Content::blocks, " points closed stroke weight fill dash ", " "},
    {"label", Content::mixed, " x y anchor size weight rotate colour ", " b i sub sup "},
    {"newpage", Content::blocks, " ", " "},
    {"b", Content::mixed, " ", " b i sub sup code a "},
    {"i", Content::mixed, " ", " b i sub sup code a "},
    {"sub", Content::mixed, " ", " b i code "},
    {"sup", Content::mixed, " ", " b i code "},
    {"code", Content::mixed, " ", " b i sub sup "},
    {"a", Content::mixed, " to quiet ", " b i sub sup code "},
}};

constexpr int deepest = 64;
constexpr int deepest_section = 3;

bool is_blank(char byte) { return byte == ' ' || byte == '\t' || byte == '\n' || byte == '\r'; }

/// Whether the blank separated list has the word.
bool lists(std::string_view words, std::string_view word) {
  for (std::size_t at = words.find(word); at != std::string_view::npos;
       at = words.find(word, at + 1)) {
    if (at > 0 && words[at - 1] == ' ' && words[at + word.size()] == ' ') return true;
  }
  return false;
}

[[noreturn]] void fail(std::string_view xml, std::ptrdiff_t offset, const std::string& message) {
  const auto place =
      std::min(static_cast<std::size_t>(std::max<std::ptrdiff_t>(offset, 0)), xml.size());
  const std::string_view before = xml.substr(0, place);
  const auto line = 1 + std::count(before.begin(), before.end(), '\n');
  const std::size_t start = before.rfind('\n') + 1;
  const auto column =
      1 +
      std::count_if(before.begin() + static_cast<std::ptrdiff_t>(start), before.end(),
                    [](char byte) { return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U; });
  throw MarkupError("markup:" + std::to_string(line) + ":" + std::to_string(column) + ": " +
                    message);
}

/// The text with each run of white space made one blank.
std::string fold(std::string_view text) {
  std::string folded;
  folded.reserve(text.size());
  for (const char byte : text) {
    if (!is_blank(byte)) {
      folded.push_back(byte);
    } else if (folded.empty() || folded.back() != ' ') {
      folded.push_back(' ');
    }
  }
  return folded;
}

bool all_blank(std::string_view text) { return std::all_of(text.begin(), text.end(), is_blank); }

/// Whether a reference that XML knows follows the ampersand.
bool is_reference(std::string_view rest) {
  constexpr std::array<std::string_view, 6> known{"&amp;",  "&lt;",   "&gt;",
                                                  "&quot;", "&apos;", "&#"};
  return std::any_of(known.begin(), known.end(),
                     [rest](std::string_view name) { return rest.starts_with(name); });
}

/// pugixml lets a bare ampersand and an unknown entity pass; well-formed XML has neither.
void check_references(std::string_view xml) {
  for (std::size_t at = 0; at < xml.size(); ++at) {
    if (xml[at] != '&' && xml[at] != '<') continue;
    const std::string_view rest = xml.substr(at);
    if (rest.starts_with("<!--")) {
      at = std::min(xml.find("-->", at), xml.size() - 1);
    } else if (rest.starts_with("<![CDATA[")) {
      at = std::min(xml.find("]]>", at), xml.size() - 1);
    } else if (rest.front() == '&' && !is_reference(rest)) {
      fail(xml, static_cast<std::ptrdiff_t>(at), "unknown entity or bare ampersand");
    }
  }
}

/// Turns pugixml's tree into ours, element by element, against the rules.
class Reader {
 public:
  explicit Reader(std::string_view xml) : xml_(xml) {}

  Node root(const pugi::xml_node& from) const { return element(from, rule_of(from), 1, 0); }

 private:
  Node element(const pugi::xml_node& from, const Rule& rule, int depth, int sections) const {
    if (depth > deepest) fail(xml_, from.offset_debug(), "elements nest too deep");
    if (sections > deepest_section) {
      fail(xml_, from.offset_debug(), "sections nest at most three deep");
    }
    Node node;
    node.name = rule.name;
    take_attributes(from, rule, node);
    for (const pugi::xml_node& child : from.children()) {
      take_child(child, rule, node, depth, sections);
    }
    return node;
  }

  const Rule& rule_of(const pugi::xml_node& from) const {
    const std::string_view name = from.name();
    const auto* const found =
        std::find_if(rules.begin(), rules.end(), [name](const Rule& r) { return r.name == name; });
    if (found == rules.end() || name.empty()) {
      fail(xml_, from.offset_debug(), "unknown element <" + std::string(name) + ">");
    }
    return *found;
  }

  void take_attributes(const pugi::xml_node& from, const Rule& rule, Node& node) const {
    for (const pugi::xml_attribute& attribute : from.attributes()) {
      const std::string name = attribute.name();
      if (!lists(rule.attributes, name)) {
        fail(xml_, from.offset_debug(), "unknown attribute " + name + " of <" + node.name + ">");
      }
      if (!node.attributes.emplace(name, attribute.value()).second) {
        fail(xml_, from.offset_debug(), "attribute " + name + " of <" + node.name + "> twice");
      }
    }
  }

  void take_child(const pugi::xml_node& child, const Rule& rule, Node& node, int depth,
                  int sections) const {
    if (child.type() != pugi::node_element) {
      take_text(child, rule, node);
      return;
    }
    const Rule& own = rule_of(child);
    if (!lists(rule.children, own.name)) {
      fail(xml_, child.offset_debug(),
           "element <" + std::string(own.name) + "> may not stand in <" + node.name + ">");
    }
    node.children.push_back(
        element(child, own, depth + 1, sections + (own.name == "section" ? 1 : 0)));
  }

  void take_text(const pugi::xml_node& child, const Rule& rule, Node& node) const {
    if (rule.content == Content::blocks) {
      if (all_blank(child.value())) return;
      fail(xml_, child.offset_debug(), "text may not stand in <" + node.name + ">");
    }
    Node text;
    text.text = fold(child.value());
    node.children.push_back(std::move(text));
  }

  std::string_view xml_;
};

}  // namespace

std::string_view Node::get(const std::string& key, std::string_view fallback) const {
  const auto found = attributes.find(key);
  return found == attributes.end() ? fallback : std::string_view(found->second);
}

Node parse_markup(std::string_view xml) {
  pugi::xml_document document;
  const pugi::xml_parse_result result =
      document.load_buffer(xml.data(), xml.size(),
                           pugi::parse_escapes | pugi::parse_wconv_attribute |
                               pugi::parse_ws_pcdata | pugi::parse_eol | pugi::parse_cdata,
                           pugi::encoding_utf8);
  if (!result) fail(xml, result.offset, result.description());
  check_references(xml);
  const pugi::xml_node root = document.document_element();
  if (std::string_view(root.name()) != "document") {
    fail(xml, root.offset_debug(), "the root is not <document>");
  }
  for (pugi::xml_node other = root.next_sibling(); other; other = other.next_sibling()) {
    fail(xml, other.offset_debug(), "more than one root");
  }
  return Reader(xml).root(root);
}

}  // namespace output
