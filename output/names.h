/// Names of issued files: safe on every file system, and never two requests under one name.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace output {

/// A part of a file name: A-Z a-z 0-9 . - kept, every other code point a "-", cut to 60, leading
/// "." and "-" stripped; when that changed anything, or the name is a Windows device, "~" and 8 hex
/// digits of the SHA-256 of the original follow. `text` is UTF-8.
std::string name_part(std::string_view text);

/// `<id>_r<revision>_<date>`, the name of a request's files less their extension. An empty revision
/// is A.
std::string stem_of(std::string_view id, std::string_view revision, std::string_view date);
/// The same up to and with the last underscore: what all dates of one revision share.
std::string stem_without_date(std::string_view id, std::string_view revision);

/// ASCII letters in lower case, the rest as it is: stems that agree so are one name.
std::string lower_ascii(std::string_view text);

/// Whether revision a comes before b: the shorter first, then by bytes.
bool revision_before(std::string_view a, std::string_view b);
/// The least usual revision after this one (A -> B, Z -> AA, 9 -> 10, 1.9 -> 1.10); nullopt when it
/// would be longer than eight characters.
std::optional<std::string> next_revision(std::string_view revision);

/// The parts of a stem of ours, nullopt for any other name.
struct StemParts {
  std::string_view id, revision, date;
};
std::optional<StemParts> split_stem(std::string_view stem);

}  // namespace output
