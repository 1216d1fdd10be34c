/// XML to the neutral tree.
#pragma once

#include <cstddef>
#include <memory>
#include <string>
#include <vector>

#include "intake/node.h"
#include "intake/text.h"
#include "intake/xml_scan.h"

namespace intake {

/// A parsed XML text, whose blocks (the requests, or the root itself) become trees one at a time,
/// so that a file of many requests needs no more room than its text and its document.
class XmlDocument {
 public:
  /// Parses; adds what is wrong with the text to `faults`. `text` must outlive the document.
  XmlDocument(const SourceText& text, std::vector<LexicalFault>& faults);
  ~XmlDocument();
  XmlDocument(const XmlDocument&) = delete;
  XmlDocument& operator=(const XmlDocument&) = delete;
  XmlDocument(XmlDocument&&) = delete;
  XmlDocument& operator=(XmlDocument&&) = delete;

  /// Empty when the text could not be parsed.
  const std::string& root_name() const { return root_name_; }
  Place root_place() const { return root_place_; }

  /// The children of a root <requests>, else the root alone.
  std::size_t block_count() const;
  /// The element with its tags.
  Place block_place(std::size_t i) const;
  std::string block_name(std::size_t i) const;
  /// Its tree. Unknown attributes are added to `faults`.
  Node block(std::size_t i, std::vector<LexicalFault>& faults) const;

 private:
  struct Parsed;
  const SourceText* text_;
  XmlScan scan_;
  std::unique_ptr<Parsed> parsed_;
  std::string root_name_;
  Place root_place_;
};

}  // namespace intake
