/// What the program says on the terminal, beside its documents.
#pragma once

#include <string>
#include <string_view>

#include "intake/diagnostic.h"
#include "output/os.h"

namespace output {

enum class DiagnosticsMode { human, brief, json };

/// Findings in the form asked for, one after the other.
std::string findings_text(const intake::Diagnostics& findings, DiagnosticsMode mode);

/// "swathspec: message", the form of what concerns no file.
std::string program_message(std::string_view message);

}  // namespace output
