/// Holds templates and words of one origin against those the program was made with.
#pragma once

#include <string>

#include "output/templates_scan.h"
#include "output/templates_words.h"

namespace output {

/// Throws std::runtime_error "file:line: ..." for a marker or a section that the shipped template
/// of the same name does not have at that place or around it: nothing would set it.
void check_against(const std::string& file, const TemplatePart& own, const TemplatePart& shipped);

/// The same for words: a key the shipped words lack, an argument their text has not, and a key of
/// theirs that is missing.
void check_against(const Words& own, const Words& shipped, const std::string& folder);

}  // namespace output
