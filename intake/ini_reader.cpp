#include "intake/ini_reader.h"

#include <algorithm>
#include <boost/property_tree/ini_parser.hpp>
#include <boost/property_tree/ptree.hpp>
#include <map>
#include <set>
#include <sstream>
#include <string>

#include "intake/codes.h"

namespace intake {
namespace {

constexpr std::size_t most_entries = 20000;
constexpr std::size_t most_faults = 200;

/// An entry whose value PropertyTree has: where its node stands and where its value.
struct Pending {
  std::size_t section;  // index in root.children, npos for the root itself
  std::size_t entry;    // index among its children
  std::string header;   // of the section in the clean text
};

/// The lines of the text sorted into sections and entries with places, and a clean text for
/// PropertyTree: no fault, no duplicate, line ends LF.
class LineScan {
 public:
  LineScan(const SourceText& source, std::vector<LexicalFault>& faults)
      : source_(source), text_(source.parsable()), faults_(faults) {
    root_.form = Node::Form::section;
    root_.key = "request";
  }

  void run() {
    for (std::size_t start = 0; start < text_.size();) {
      const std::size_t end = std::min(text_.find_first_of("\r\n", start), text_.size());
      line(start, end);
      clean_ += '\n';
      const bool pair = text_.substr(end, 2) == "\r\n";
      start = end + (pair ? 2 : 1);
    }
  }

  Node root_;
  std::string clean_;
  std::vector<Pending> pending_;

 private:
  static constexpr std::size_t at_root = std::string_view::npos;

  void report(std::string_view code, Place place, std::string message, std::string hint) {
    if (faults_.size() < most_faults) {
      faults_.push_back({code, place, std::move(message), "", std::move(hint)});
    }
  }

  void line(std::size_t start, std::size_t end) {
    const std::string_view raw = text_.substr(start, end - start);
    const std::string_view body = trim(raw);
    if (body.empty() || body.front() == ';' || body.front() == '#') return;
    const std::size_t offset = start + static_cast<std::size_t>(body.data() - raw.data());
    if (body.front() == '[') {
      header(body, offset);
    } else {
      entry(body, offset);
    }
  }

  void header(std::string_view body, std::size_t offset) {
    const auto close = body.find(']');
    const std::string_view inner =
        trim(body.substr(1, close == std::string_view::npos ? body.size() : close - 1));
    const bool ends = close != std::string_view::npos && close + 1 == body.size();
    if (!ends) {
      report(code::bad_header, {offset, body.size()},
             close == std::string_view::npos ? "the section's name is not closed with ]"
                                             : "text behind the section's name",
             "write [" + std::string(inner.substr(0, 60)) + "] alone on its line");
    } else if (inner.empty()) {
      report(code::bad_header, {offset, body.size()}, "a section without a name",
             "write for example [image]");
    }
    open_section(inner, {offset, body.size()});
  }

  void open_section(std::string_view inner, Place place) {
    opened_ = true;
    header_ = inner;
    if (const auto count = headers_[header_]++; count > 0) header_ += "#" + std::to_string(count);
    if (!inner.empty()) clean_ += "[" + header_ + "]";
    if (inner == "request" && root_.place.length == 0) {
      root_.place = place;
      current_ = at_root;
      skipping_ = false;
      return;
    }
    skipping_ = inner.empty() || inner == "request";
    if (inner == "request") report_second(place);
    if (skipping_) return;
    Node node;
    node.form = Node::Form::section;
    node.place = place;
    const auto point = inner.find('.');
    node.key = inner.substr(0, point);
    if (point != std::string_view::npos) {
      node.labelled = true;
      node.label = inner.substr(point + 1);
      node.label_place = {place.offset, place.length};
    }
    root_.children.push_back(std::move(node));
    current_ = root_.children.size() - 1;
  }

  /// A second [request], whose entries are passed over.
  void report_second(Place place) {
    if (faults_.size() >= most_faults) return;
    const std::size_t first = root_.place.offset;
    faults_.push_back({code::duplicate_section, place, "section \"request\" stands twice",
                       "the first stands at " + source_.name() + ":" +
                           std::to_string(source_.line_of(first)) + ":" +
                           std::to_string(source_.column_of(first)),
                       "an INI file holds one request; several stand in XML, in <requests>"});
  }

  void entry(std::string_view body, std::size_t offset) {
    const auto equals = body.find('=');
    if (equals == std::string_view::npos) {
      report(code::not_a_line, {offset, body.size()},
             "neither a section, nor an entry, nor a comment",
             body.find(':') != std::string_view::npos
                 ? "write key = value, with = in place of :"
                 : "write key = value; a comment starts with ; or #");
      return;
    }
    const std::string_view key = trim(body.substr(0, equals));
    if (key.empty()) {
      report(code::key_missing, {offset, body.size()}, "an entry without a key",
             "write the field's name before =");
      return;
    }
    if (!opened_) {
      report(code::outside_section, {offset, key.size()},
             "\"" + std::string(key.substr(0, 60)) + "\" stands before the first section",
             "put a section above it, as in [request]");
    }
    if (!skipping_) add_entry(body, key, equals, offset);
  }

  void add_entry(std::string_view body, std::string_view key, std::size_t equals,
                 std::size_t offset) {
    if (++entries_ > most_entries) {
      if (entries_ == most_entries + 1) {
        report(code::too_much, {offset, key.size()}, "more than 20000 entries",
               "no request needs more than a few hundred");
      }
      return;
    }
    Node& section = current_ == at_root ? root_ : root_.children[current_];
    const std::string_view rest = body.substr(equals + 1);
    const std::string_view value = trim(rest);
    Node node;
    node.form = Node::Form::field;
    node.key = key;
    node.place = {offset, key.size()};
    node.value_place = {offset + static_cast<std::size_t>(value.data() - body.data()),
                        value.size()};
    if (value.empty()) node.value_place = {};
    node.value = value;
    if (opened_ && seen_.insert(header_ + "\n" + node.key).second) {
      clean_ += std::string(key) + "=" + std::string(value);
      pending_.push_back({current_, section.children.size(), header_});
    }
    section.children.push_back(std::move(node));
  }

  const SourceText& source_;
  std::string_view text_;
  std::vector<LexicalFault>& faults_;
  std::map<std::string, int> headers_;
  std::set<std::string> seen_;
  std::string header_;
  std::size_t current_ = at_root;
  std::size_t entries_ = 0;
  bool opened_ = false;
  bool skipping_ = false;
};

}  // namespace

Node read_ini_tree(const SourceText& text, std::vector<LexicalFault>& faults) {
  namespace pt = boost::property_tree;
  LineScan scan(text, faults);
  scan.run();
  pt::ptree tree;
  std::istringstream stream(scan.clean_);
  try {
    pt::read_ini(stream, tree);
  } catch (const pt::ini_parser_error& error) {
    const std::size_t offset = text.offset_of(static_cast<int>(error.line()), 1);
    faults.push_back(
        {code::not_a_line, {offset, 1}, "not INI: " + error.message(), "", "write key = value"});
    return std::move(scan.root_);
  }
  for (const Pending& at : scan.pending_) {
    const bool in_root = at.section == std::string_view::npos;
    Node& section = in_root ? scan.root_ : scan.root_.children[at.section];
    Node& field = section.children[at.entry];
    const auto found = tree.find(at.header);
    if (found == tree.not_found()) continue;
    const auto value = found->second.find(field.key);
    if (value != found->second.not_found()) field.value = value->second.data();
  }
  return std::move(scan.root_);
}

}  // namespace intake
