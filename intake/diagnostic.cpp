#include "intake/diagnostic.h"

#include <algorithm>
#include <string_view>

#include "intake/text.h"

namespace intake {
namespace {

/// Spaces (tabs kept) as wide as the shown text, so that what follows stands under its end.
std::string padding(std::string_view shown_text) {
  std::string out;
  for (std::size_t i = 0; i < shown_text.size();) {
    const CodePoint c = decode(shown_text, i);
    out += c.value == '\t' ? '\t' : ' ';
    i += std::max<std::size_t>(c.length, 1);
  }
  return out;
}

/// The first `count` code points. Pre: valid UTF-8.
std::string_view first(std::string_view text, int count) {
  std::size_t i = 0;
  for (; count > 0 && i < text.size(); --count) {
    i += std::max<std::size_t>(decode(text, i).length, 1);
  }
  return text.substr(0, i);
}

/// The source line and the carets below it.
std::string excerpt(const Diagnostic& finding) {
  const std::string_view line = finding.source_line;
  const std::string cut = finding.line_cut > 0 ? "..." : "";
  const std::string_view before = first(line, finding.column - 1 - finding.line_cut);
  const std::string_view marked = first(line.substr(before.size()), finding.length);
  const int carets = std::max(1, code_points(shown(marked)));
  return "  " + cut + shown(line) + "\n  " + padding(cut + shown(before)) +
         std::string(static_cast<std::size_t>(carets), '^') + "\n";
}

}  // namespace

bool has_errors(const Diagnostics& findings) {
  return std::any_of(findings.begin(), findings.end(),
                     [](const Diagnostic& d) { return d.severity == Severity::error; });
}

std::string to_short(const Diagnostic& finding) {
  return shown(finding.file) + ":" + std::to_string(finding.line) + ":" +
         std::to_string(finding.column) + ": " +
         (finding.severity == Severity::error ? "error[" : "warning[") + finding.code +
         "]: " + shown(finding.message) + "\n";
}

std::string to_human(const Diagnostic& finding) {
  std::string out = to_short(finding);
  if (!finding.source_line.empty()) out += excerpt(finding);
  for (const std::string& note : finding.notes) out += "  note: " + shown(note) + "\n";
  if (!finding.hint.empty()) out += "  hint: " + shown(finding.hint) + "\n";
  return out;
}

}  // namespace intake
