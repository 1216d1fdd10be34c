#include "intake/xml_reader.h"

#include <algorithm>
#include <pugixml.hpp>

#include "intake/codes.h"

namespace intake {
namespace {

std::size_t offset_of(const pugi::xml_node& node) {
  return static_cast<std::size_t>(std::max<std::ptrdiff_t>(node.offset_debug(), 0));
}

Place name_place(const pugi::xml_node& node) {
  return {offset_of(node), std::string_view(node.name()).size()};
}

bool is_text(const pugi::xml_node& node) {
  return node.type() == pugi::node_pcdata || node.type() == pugi::node_cdata;
}

/// The place of the text as it stands in the file, without blanks at its ends.
Place text_place(const pugi::xml_node& node, std::string_view all) {
  const std::size_t start = offset_of(node);
  const std::string_view end = node.type() == pugi::node_cdata ? "]]>" : "<";
  const std::string_view raw = all.substr(start, all.find(end, start) - start);
  const std::string_view inner = trim(raw);
  if (inner.empty()) return {start, 0};
  return {start + static_cast<std::size_t>(inner.data() - raw.data()), inner.size()};
}

class Converter {
 public:
  Converter(std::string_view text, const XmlScan& scan, std::vector<LexicalFault>& faults)
      : text_(text), scan_(scan), faults_(faults) {}

  Node convert(const pugi::xml_node& element, bool is_root) const {
    Node node;
    node.key = element.name();
    node.place = name_place(element);
    take_attributes(element, is_root, node);
    for (const pugi::xml_node& child : element.children()) {
      if (is_text(child)) {
        take_text(child, node);
      } else if (child.type() == pugi::node_element) {
        node.children.push_back(convert(child, false));
      }
    }
    node.value = trim(node.value);
    return node;
  }

 private:
  void take_text(const pugi::xml_node& child, Node& node) const {
    node.value += child.value();
    const Place place = text_place(child, text_);
    if (node.value_place.length == 0) node.value_place = place;
  }

  void take_attributes(const pugi::xml_node& element, bool is_root, Node& node) const {
    const ScannedElement* scanned = scan_.find(node.place.offset - 1);
    if (scanned == nullptr) return;
    for (const ScannedAttribute& attribute : scanned->attributes) {
      const std::string name(attribute.name);
      const std::string value = element.attribute(name.c_str()).value();
      if (name == "name") {
        node.label = value;
        node.labelled = true;
        node.label_place = attribute.value_place;
      } else if (is_root && name == "date" && node.key == "catalogue") {
        node.children.push_back({Node::Form::field,
                                 name,
                                 "",
                                 false,
                                 std::string(trim(value)),
                                 attribute.name_place,
                                 {},
                                 attribute.value_place,
                                 {}});
      } else if (faults_.size() < 1000) {
        faults_.push_back({code::unknown_attribute, attribute.name_place,
                           "unknown attribute \"" + name.substr(0, 60) + "\"", "",
                           "only name is an attribute; write fields as elements: <" +
                               name.substr(0, 60) + ">...</" + name.substr(0, 60) + ">"});
      }
    }
  }

  std::string_view text_;
  const XmlScan& scan_;
  std::vector<LexicalFault>& faults_;
};

}  // namespace

struct XmlDocument::Parsed {
  pugi::xml_document document;
  std::vector<pugi::xml_node> blocks;
};

XmlDocument::XmlDocument(const SourceText& text, std::vector<LexicalFault>& faults)
    : text_(&text), parsed_(std::make_unique<Parsed>()) {
  const std::string_view clean = text.parsable();
  scan_ = scan_xml(clean, faults);
  if (!scan_.parsable) return;
  const auto result = parsed_->document.load_buffer(clean.data(), clean.size(), pugi::parse_default,
                                                    pugi::encoding_utf8);
  if (!result) {
    const auto offset = static_cast<std::size_t>(std::max<std::ptrdiff_t>(result.offset, 0));
    faults.push_back({code::not_well_formed,
                      {std::min(offset, clean.size()), 1},
                      std::string("not well-formed XML: ") + result.description(),
                      "",
                      "mend the text before this place"});
    return;
  }
  const pugi::xml_node root = parsed_->document.document_element();
  root_name_ = root.name();
  root_place_ = name_place(root);
  if (root_name_ != "requests") {
    parsed_->blocks.push_back(root);
    return;
  }
  for (const pugi::xml_node& child : root.children()) {
    if (child.type() == pugi::node_element) parsed_->blocks.push_back(child);
    if (is_text(child)) {
      faults.push_back({code::stray_content, text_place(child, clean), "text between the requests",
                        "", "take it out"});
    }
  }
  if (const ScannedElement* scanned = scan_.find(root_place_.offset - 1)) {
    for (const ScannedAttribute& attribute : scanned->attributes) {
      faults.push_back({code::unknown_attribute, attribute.name_place,
                        "unknown attribute \"" + std::string(attribute.name.substr(0, 60)) + "\"",
                        "", "leave it out"});
    }
  }
}

XmlDocument::~XmlDocument() = default;

std::size_t XmlDocument::block_count() const { return parsed_->blocks.size(); }

Place XmlDocument::block_place(std::size_t i) const {
  const std::size_t start = offset_of(parsed_->blocks[i]) - 1;
  const ScannedElement* scanned = scan_.find(start);
  const std::size_t end = scanned != nullptr ? std::max(scanned->end, start) : start;
  return {start, end - start};
}

std::string XmlDocument::block_name(std::size_t i) const { return parsed_->blocks[i].name(); }

Node XmlDocument::block(std::size_t i, std::vector<LexicalFault>& faults) const {
  return Converter(text_->parsable(), scan_, faults).convert(parsed_->blocks[i], true);
}

}  // namespace intake
