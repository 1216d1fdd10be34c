/// Faults and warnings about what the user wrote, as data.
#pragma once

#include <string>
#include <vector>

namespace intake {

enum class Severity { error, warning };

/// One finding. `code` is E0000 or W0000, append-only (table in intake/codes.cpp). `hint` ends in
/// the fix. `field` is the key concerned, empty when it is about the file as a whole.
struct Diagnostic {
  std::string file;  ///< as the user named it; "<stdin>" for standard input
  int line = 1;      ///< from 1
  int column = 1;    ///< from 1, in code points, a tab counts one
  Severity severity = Severity::error;
  std::string code;
  std::string message;
  std::vector<std::string> notes;
  std::string hint;
  std::string field;
  std::string source_line;  ///< the line of the file, for the caret; may be empty
  int length = 1;           ///< code points the carets underline
  int line_cut = 0;         ///< code points left out at the start of a very long source_line
};

using Diagnostics = std::vector<Diagnostic>;

bool has_errors(const Diagnostics& findings);

/// As interface.md has it: `file:line:column: error[E0107]: message`, source line, carets, notes,
/// hint. Control characters shown as \xNN. Ends in a line feed.
std::string to_human(const Diagnostic& finding);
/// The first line of the human form only.
std::string to_short(const Diagnostic& finding);

}  // namespace intake
