/// What every code of the program means, in the words of the templates.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "output/templates.h"

namespace output {

struct CodeWords {
  std::string_view
      kind;  ///< "finding", "reason", "condition", "question", "check", "safety", "part"
  std::string code;
  std::string meaning;  ///< plain text, what depends on the request in capitals
};

/// Every code of every kind; those of findings first, in their order. Throws std::out_of_range for
/// one without words.
std::vector<CodeWords> code_words(const Templates& templates);

}  // namespace output
