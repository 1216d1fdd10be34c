/// The words of the public JSON for the calculation's enumerations.
#pragma once

#include <string_view>

#include "calc/specification.h"
#include "intake/diagnostic.h"

namespace output {

std::string_view json_word(calc::Verdict verdict);
std::string_view json_word(calc::Family family);
std::string_view json_word(calc::EdgeKind kind);
std::string_view json_word(calc::OriginKind kind);
std::string_view json_word(calc::StepKind kind);
/// P printed, L library, T transcribed table, C computed, M memory, cp common practice.
std::string_view json_word(calc::SourceTag tag);
std::string_view json_word(intake::Severity severity);

}  // namespace output
