/// Changes to the plain request and catalogue that bring out every code of the calculation.
#pragma once

#include <string>
#include <vector>

namespace whole {

/// One text of changes a case, as case_of takes it.
std::vector<std::string> code_cases();

}  // namespace whole
