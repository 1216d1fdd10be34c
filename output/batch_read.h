/// One source read: its requests, its text for the carets, its digest.
#pragma once

#include <memory>
#include <string>
#include <string_view>

#include "intake/read.h"
#include "output/batch_walk.h"
#include "output/digest.h"

namespace output {

/// The bytes of a source.
struct SourceText {
  std::string path;   ///< as in Source
  std::string shown;  ///< the path, or "<stdin>"
  std::string name;   ///< as in Source
  std::string text;
  Digest digest{};  ///< of the text
};

struct ReadSource : SourceText {
  intake::ReadFile file;
};

/// The bytes of a source. Throws OsError.
SourceText load_source(Os& os, const Source& source);
/// Its requests.
std::shared_ptr<const ReadSource> read_source(SourceText source);
/// The same less its requests, where they are known from elsewhere.
std::shared_ptr<const ReadSource> unread_source(SourceText source);

/// Fills in the line of the text that findings about this file lack.
void add_source_lines(intake::Diagnostics& findings, std::string_view file, std::string_view text);

/// The finding and exit status for a source that could not be read.
Fault unread(const Source& source, const OsError& error);
/// The finding for a path of the command line that led to no request; it may be a catalogue's.
Fault requestless(const std::string& root, bool is_catalogue = false);

}  // namespace output
