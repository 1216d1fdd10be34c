/// Text as the painter needs it: decoded, and as a PDF string.
#pragma once

#include <string>
#include <string_view>

namespace output {

/// Takes the first character off UTF-8 text. Throws std::invalid_argument on a malformed, overlong
/// or surrogate sequence. Precondition: the text is not empty.
char32_t take_valid_character(std::string_view& text);

/// The characters of UTF-8 text. Throws std::invalid_argument as take_valid_character.
std::u32string decode_utf8(std::string_view text);

/// The bytes of a PDF text string: the text itself when it is all printable ASCII, else UTF-16BE
/// behind its byte order mark. Throws std::invalid_argument as decode_utf8, and on a control
/// character or a noncharacter, which neither XMP nor a viewer's title bar can hold.
std::string text_string(std::string_view text);

/// Four upper-case hexadecimal digits. Precondition: value <= 0xFFFF.
std::string hex4(char32_t value);

}  // namespace output
