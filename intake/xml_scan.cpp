#include "intake/xml_scan.h"

#include <algorithm>

#include "intake/codes.h"

namespace intake {
namespace {

constexpr std::size_t deepest = 12;
constexpr std::size_t most_attributes = 16;
constexpr std::size_t most_faults = 200;

bool is_blank(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

bool ends_name(char c) {
  return is_blank(c) || c == '>' || c == '/' || c == '=' || c == '<' || c == '"' || c == '\'';
}

std::string quoted(std::string_view text) { return "\"" + std::string(text.substr(0, 60)) + "\""; }

/// Whether `name`, between & and ;, is a reference XML itself defines, to a character it allows.
bool good_reference(std::string_view name) {
  if (name == "amp" || name == "lt" || name == "gt" || name == "quot" || name == "apos") {
    return true;
  }
  if (name.size() < 2 || name.size() > 9 || name.front() != '#') return false;
  const bool hex = name[1] == 'x';
  const std::string_view digits = name.substr(hex ? 2 : 1);
  if (digits.empty()) return false;
  char32_t value = 0;
  for (const char c : digits) {
    const bool decimal = c >= '0' && c <= '9';
    const bool letter = hex && ((c >= 'a' && c <= 'f') || (c >= 'A' && c <= 'F'));
    if (!decimal && !letter) return false;
    const int digit = decimal ? c - '0' : (c | 0x20) - 'a' + 10;
    value = value * (hex ? 16U : 10U) + static_cast<char32_t>(digit);
  }
  const bool surrogate = value >= 0xD800 && value <= 0xDFFF;
  return value <= 0x10FFFF && !surrogate && !is_control(value);
}

struct OpenElement {
  std::string_view name;
  std::size_t start;
  std::size_t index;  // in elements, npos when it is not kept
};

class Scanner {
 public:
  Scanner(std::string_view text, std::vector<LexicalFault>& faults)
      : text_(text), faults_(faults) {}

  XmlScan run() {
    while (at_ < text_.size() && scan_.parsable) step();
    if (scan_.parsable && !open_.empty()) {
      fail({open_.back().start + 1, open_.back().name.size()},
           "element " + quoted(open_.back().name) + " is not closed",
           "add </" + std::string(open_.back().name) + ">");
    }
    return std::move(scan_);
  }

 private:
  void report(LexicalFault fault) {
    if (faults_.size() < most_faults) faults_.push_back(std::move(fault));
  }

  /// A fault the parser cannot get over.
  void fail(Place place, std::string message, std::string hint) {
    report({code::not_well_formed, place, std::move(message), "", std::move(hint)});
    scan_.parsable = false;
  }

  bool starts(std::string_view token) const { return text_.substr(at_, token.size()) == token; }

  void step() {
    if (text_[at_] != '<') return text_run();
    if (starts("<!--")) return skip_to("-->", "comment");
    if (starts("<![CDATA[")) return cdata();
    if (starts("<!")) return document_type();
    if (starts("<?")) return instruction();
    if (starts("</")) return end_tag();
    start_tag();
  }

  void text_run() {
    const std::size_t end = std::min(text_.find('<', at_), text_.size());
    const std::string_view run = text_.substr(at_, end - at_);
    if (open_.empty()) outside(run);
    references(at_, end);
    at_ = end;
  }

  /// Text before or behind the root.
  void outside(std::string_view run) {
    const auto first = run.find_first_not_of(" \t\r\n");
    if (first == std::string_view::npos) return;
    report({code::outside_root,
            {at_ + first, trim(run).size()},
            "text outside the root element",
            "",
            "take it out or put it into a comment"});
  }

  void references(std::size_t from, std::size_t to) {
    const std::string_view run = text_.substr(0, to);  // so that a search ends there
    for (std::size_t i = run.find('&', from); i < to; i = run.find('&', i + 1)) {
      const std::string_view after = text_.substr(i + 1, std::min<std::size_t>(to - i - 1, 12));
      const auto semicolon = after.find(';');
      const bool complete = semicolon != std::string_view::npos;
      if (complete && good_reference(after.substr(0, semicolon))) continue;
      report({code::bad_reference,
              {i, complete ? semicolon + 2 : 1},
              complete ? "unknown reference " + quoted(text_.substr(i, semicolon + 2))
                       : "an & that starts no reference",
              "",
              "write &amp; for the character &"});
    }
  }

  void skip_to(std::string_view end, std::string_view what) {
    const auto found = text_.find(end, at_ + 2);
    if (found == std::string_view::npos) {
      fail({at_, 4}, "the " + std::string(what) + " does not end",
           "end it with " + std::string(end));
      return;
    }
    at_ = found + end.size();
  }

  void cdata() {
    if (open_.empty()) {
      report({code::outside_root, {at_, 9}, "text outside the root element", "", "take it out"});
    }
    skip_to("]]>", "character data section");
  }

  void document_type() {
    report({code::document_type,
            {at_, std::min<std::size_t>(9, text_.size() - at_)},
            "a document type declaration is not taken",
            "",
            "leave it out"});
    std::size_t depth = 0;
    for (; at_ < text_.size(); ++at_) {
      if (text_[at_] == '[') ++depth;
      if (text_[at_] == ']' && depth > 0) --depth;
      if (text_[at_] == '>' && depth == 0) break;
    }
    if (at_ == text_.size()) scan_.parsable = false;
    if (at_ < text_.size()) ++at_;
  }

  void instruction() {
    const std::size_t start = at_;
    skip_to("?>", "processing instruction");
    if (!scan_.parsable || text_.substr(start, 5) != "<?xml" || !is_blank(text_[start + 5])) return;
    if (start != 0) {
      report({code::not_well_formed,
              {start, 5},
              "the XML declaration is not at the very start",
              "",
              "move it to the first line or leave it out"});
    }
    declared_encoding(start, at_);
  }

  void declared_encoding(std::size_t from, std::size_t to) {
    const std::string_view upto = text_.substr(0, to);
    const auto found = upto.find("encoding", from);
    if (found == std::string_view::npos) return;
    const auto open = upto.find_first_of("\"'", found);
    if (open == std::string_view::npos) return;
    const auto close = upto.find(text_[open], open + 1);
    if (close == std::string_view::npos) return;
    std::string name(text_.substr(open + 1, close - open - 1));
    for (char& c : name) c = c >= 'A' && c <= 'Z' ? static_cast<char>(c | 0x20) : c;
    if (name == "utf-8" || name == "us-ascii") return;
    report({code::encoding,
            {open + 1, close - open - 1},
            "encoding " + quoted(text_.substr(open + 1, close - open - 1)) + " is not taken",
            "",
            "save the file as UTF-8 and declare encoding=\"UTF-8\""});
  }

  std::string_view name_at(std::size_t from) const {
    std::size_t end = from;
    while (end < text_.size() && !ends_name(text_[end])) ++end;
    return text_.substr(from, end - from);
  }

  void end_tag() {
    const std::string_view name = name_at(at_ + 2);
    const std::size_t place = at_ + 2;
    skip_to(">", "end tag");
    if (!scan_.parsable) return;
    if (open_.empty() || open_.back().name != name) {
      mismatch(name, place);
      return;
    }
    close_element();
  }

  void mismatch(std::string_view name, std::size_t place) {
    fail({place, name.size()}, "end tag " + quoted(name) + " closes nothing",
         open_.empty() ? "take it out" : "write </" + std::string(open_.back().name) + ">");
    if (!open_.empty()) open_note();
  }

  void open_note() {
    if (faults_.empty() || faults_.size() >= most_faults) return;
    const std::size_t upto = open_.back().start;
    const auto line = 1 + std::count(text_.begin(), text_.begin() + static_cast<long>(upto), '\n');
    faults_.back().note = "the element open here is " + quoted(open_.back().name) + " of line " +
                          std::to_string(line);
  }

  void close_element() {
    if (open_.size() <= 2) scan_.elements[open_.back().index].end = at_;
    open_.pop_back();
    if (open_.empty()) root_closed_ = true;
  }

  void start_tag() {
    const std::size_t start = at_;
    const std::string_view name = name_at(at_ + 1);
    if (name.empty()) {
      fail({at_, 1}, "a < that starts no tag", "write &lt; for the character <");
      return;
    }
    if (open_.empty() && root_closed_) {
      report({code::outside_root,
              {at_ + 1, name.size()},
              "a second root element",
              "",
              "put the requests of one file into one <requests>"});
    }
    at_ += 1 + name.size();
    ScannedElement element{start, 0, {}};
    const bool empty_tag = attributes(element);
    if (!scan_.parsable) return;
    const bool keep = open_.size() < 2 || !element.attributes.empty();
    open_.push_back({name, start, keep ? scan_.elements.size() : std::string_view::npos});
    if (keep) scan_.elements.push_back(std::move(element));
    if (open_.size() > deepest) {
      report({code::too_much,
              {start + 1, name.size()},
              "elements nested more than 12 deep",
              "",
              "no field lies deeper than 5"});
      scan_.parsable = false;
      return;
    }
    if (empty_tag) close_element();
  }

  /// Reads up to and with the tag's >; whether it was />.
  bool attributes(ScannedElement& element) {
    for (;;) {
      while (at_ < text_.size() && is_blank(text_[at_])) ++at_;
      if (starts("/>")) {
        at_ += 2;
        return true;
      }
      if (starts(">")) {
        ++at_;
        return false;
      }
      if (!attribute(element)) return false;
    }
  }

  bool attribute(ScannedElement& element) {
    const std::string_view name = name_at(at_);
    std::size_t i = at_ + name.size();
    while (i < text_.size() && is_blank(text_[i])) ++i;
    std::size_t quote = i + 1;
    while (quote < text_.size() && is_blank(text_[quote])) ++quote;
    const bool well_formed = !name.empty() && i < text_.size() && text_[i] == '=' &&
                             quote < text_.size() && (text_[quote] == '"' || text_[quote] == '\'');
    const auto end = well_formed ? text_.find(text_[quote], quote + 1) : std::string_view::npos;
    if (end == std::string_view::npos) {
      fail({std::min(at_, text_.size()), std::max<std::size_t>(name.size(), 1)},
           "the tag is not well formed here",
           "write attributes as name=\"value\" and end the tag with >");
      return false;
    }
    keep_attribute(element, {name, {at_, name.size()}, {quote + 1, end - quote - 1}});
    at_ = end + 1;
    return scan_.parsable;
  }

  void keep_attribute(ScannedElement& element, ScannedAttribute attribute) {
    const auto value = text_.substr(attribute.value_place.offset, attribute.value_place.length);
    references(attribute.value_place.offset,
               attribute.value_place.offset + attribute.value_place.length);
    if (value.find('<') != std::string_view::npos) {
      report({code::not_well_formed, attribute.value_place, "a < in an attribute", "",
              "write &lt; for the character <"});
    }
    for (const ScannedAttribute& other : element.attributes) {
      if (other.name != attribute.name) continue;
      report({code::duplicate_attribute, attribute.name_place,
              "attribute " + quoted(attribute.name) + " is given twice", "",
              "leave one of the two out"});
      return;
    }
    element.attributes.push_back(attribute);
    if (element.attributes.size() > most_attributes) {
      report({code::too_much, attribute.name_place, "more than 16 attributes on one element", "",
              "leave all but name out"});
      scan_.parsable = false;
    }
  }

  std::string_view text_;
  std::vector<LexicalFault>& faults_;
  XmlScan scan_;
  std::vector<OpenElement> open_;
  std::size_t at_ = 0;
  bool root_closed_ = false;
};

}  // namespace

const ScannedElement* XmlScan::find(std::size_t start) const {
  const auto found = std::lower_bound(
      elements.begin(), elements.end(), start,
      [](const ScannedElement& e, std::size_t offset) { return e.start < offset; });
  return found != elements.end() && found->start == start ? &*found : nullptr;
}

XmlScan scan_xml(std::string_view text, std::vector<LexicalFault>& faults) {
  return Scanner(text, faults).run();
}

}  // namespace intake
