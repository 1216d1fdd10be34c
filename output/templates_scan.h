/// The scan of a template's text: which markers stand where, so that a fault is named by its line.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "output/templates.h"

namespace output {

/// {{NAME}}, or {{NAME:none}} for ready markup.
struct Marker {
  std::string name;
  int line = 0;  ///< from 1
  bool markup = false;
};

/// The root of a template, or {{#NAME}}...{{/NAME}} in it.
struct TemplatePart {
  std::string name;  ///< empty for the root
  int line = 1;
  std::vector<Marker> markers;
  std::vector<TemplatePart> parts;
};

/// The first line every template has; without it values would print unescaped.
inline constexpr std::string_view autoescape_line = "{{%AUTOESCAPE context=\"XML\"}}";

/// The first line of those that are pages for a browser, and how their names end.
inline constexpr std::string_view page_line = "{{%AUTOESCAPE context=\"HTML\"}}";
inline constexpr std::string_view page_suffix = ".html.tpl";

/// The parts of a template. Throws std::runtime_error "file:line: ..." when the first line is not
/// its own, a section is not closed in its order, or a marker is none of {{NAME}},
/// {{NAME:none}}, {{#NAME}}, {{/NAME}} and {{! remark }}.
TemplatePart scan_template(std::string_view file, std::string_view text);

/// Throws std::runtime_error "file:line: ..." when a marker that will print is not set, or is set
/// as markup and written as text or the reverse. A section that no value shows is not looked at.
void check_values(std::string_view file, const TemplatePart& root, const Values& values);

}  // namespace output
