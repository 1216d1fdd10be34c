/// Plain text for terminals: columns, wrapped lines, nothing that could steer the terminal.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace output {

inline constexpr std::size_t terminal_width = 100;

/// Code points of a UTF-8 text, which is taken as its width.
std::size_t width_of(std::string_view text);

/// The text with control characters shown as \xNN (a C1 control as its code point).
std::string terminal_safe(std::string_view text);

/// Markup as plain text: tags taken out, character references resolved.
std::string without_markup(std::string_view markup);

/// The text broken at blanks so that lines, indented by `indent`, stay within `width`; a longer
/// word is broken after one of , ; + / ) or where the line ends. Ends in a line feed.
std::string wrapped(std::string_view text, std::size_t indent, std::size_t width = terminal_width);

/// Rows in columns two blanks apart, the last column wrapped to the width; the first row is the
/// head. `right` names the columns set to the right.
std::string columns(const std::vector<std::vector<std::string>>& rows,
                    const std::vector<std::size_t>& right = {});

}  // namespace output
