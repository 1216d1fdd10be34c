/// The style file: sizes, colours and the house's own names, as an integrator edits them.
#pragma once

#include <functional>
#include <map>
#include <string>
#include <string_view>

#include "output/layout.h"

namespace output {

struct Style {
  PageStyle page;
  std::map<std::string, std::string, std::less<>> settings;  ///< "house.owner", "plan.fills"
};

/// Sections [page] (lengths in pt; size A4 or Letter), [colours] (RRGGBB), [house] (texts),
/// [document] (order of sections), [numbers] (decimal sign) and [drawing] (colours); a text may
/// have a key for one language behind it ("owner.de"); lines `key = value`; `#` starts a remark.
/// Throws std::runtime_error "file:line: ..." on an unknown section or key, a value that does not
/// fit, a key twice, and a text or [drawing] key that is missing.
Style parse_style(const std::string& file, std::string_view text);

}  // namespace output
