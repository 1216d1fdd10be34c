/// The table of places that the figures of notices and checks come from.
#pragma once

#include <string_view>

namespace output {

/// Places as figure_step() and figure_input() take them, of an argument of a notice of that kind
/// ("condition", "warning", "safety"), of the "value" or "limit" of a reason ("reason", its code
/// with or without its subject), or of the acceptance of a check ("check", argument empty); empty
/// for a figure of a rule. FIELD is the notice's field, SUBJECT and AXIS its arguments of those
/// names, NAME what it is about.
std::string_view places_of(std::string_view kind, std::string_view code, std::string_view argument);

}  // namespace output
