#include "output/report.h"

#include "output/json_lines.h"
#include "output/report_text.h"

namespace output {

std::string findings_text(const intake::Diagnostics& findings, DiagnosticsMode mode) {
  std::string text;
  for (const intake::Diagnostic& finding : findings) {
    switch (mode) {
      case DiagnosticsMode::human:
        text += intake::to_human(finding);
        break;
      case DiagnosticsMode::brief:
        text += intake::to_short(finding);
        break;
      case DiagnosticsMode::json:
        text += finding_json(finding) + "\n";
        break;
    }
    if (text.empty() || text.back() != '\n') text += '\n';
  }
  return text;
}

std::string program_message(std::string_view message) {
  return "swathspec: " + terminal_safe(message) + "\n";
}

}  // namespace output
