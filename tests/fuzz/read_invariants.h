/// What holds of whatever text the readers get.
#pragma once

#include <string>
#include <string_view>

#include "intake/read.h"
#include "intake/text.h"

namespace tests {

inline bool is_utf8(std::string_view text) {
  for (std::size_t i = 0; i < text.size();) {
    const auto length = intake::decode(text, i).length;
    if (length == 0) return false;
    i += length;
  }
  return true;
}

/// What is wrong with the findings of one text, empty when nothing is.
inline std::string broken_finding(const intake::Diagnostics& findings, bool usable) {
  if (usable == intake::has_errors(findings)) return "usable contradicts the findings";
  if (findings.size() > 400) return "a flood of findings";
  for (const intake::Diagnostic& d : findings) {
    if (d.line < 1 || d.column < 1 || d.length < 1) return "a finding without a place";
    if (d.hint.empty() || d.message.empty() || d.code.size() != 5) return "an empty finding";
    const std::string human = to_human(d);
    if (!is_utf8(human)) return "a finding that is not UTF-8";
    for (const char c : human) {
      const auto byte = static_cast<unsigned char>(c);
      if (byte < 0x20 && c != '\n' && c != '\t') return "a control character in a finding";
    }
  }
  return {};
}

/// Reads the text as INI, as XML and as a catalogue; what went against the rules, else empty.
inline std::string broken_invariant(std::string_view text) {
  for (const char* name : {"t.ini", "t.xml", "<stdin>"}) {
    const intake::ReadFile file = intake::read_requests(name, text);
    if (file.requests.empty() && !file.is_catalogue) return "neither request nor catalogue";
    for (const intake::ReadRequest& read : file.requests) {
      if (auto broken = broken_finding(read.findings, read.usable); !broken.empty()) return broken;
      if (!read.usable) continue;
      if (!read.request.request.id || !read.request.request.title) return "usable without id";
      if (read.source.empty()) return "usable without its text";
    }
  }
  const intake::ReadCatalogue catalogue = intake::read_catalogue("c.xml", text);
  return broken_finding(catalogue.findings, catalogue.usable);
}

}  // namespace tests
