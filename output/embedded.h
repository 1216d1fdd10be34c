/// Files compiled into the program: text faces, the sRGB profile, the templates.
#pragma once

#include <span>
#include <string_view>

namespace output {

struct EmbeddedFile {
  std::string_view name;  ///< "fonts/text.ttf", "srgb.icc", "templates/en/document.tpl", ...
  std::string_view bytes;
};

/// Every embedded file, in the order of its name's bytes.
std::span<const EmbeddedFile> embedded_files();

/// The bytes of one of them. Throws std::out_of_range when there is none of that name.
std::string_view embedded(std::string_view name);

}  // namespace output
