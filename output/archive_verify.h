/// Whether a folder holds the files that went out.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "output/os.h"

namespace output {

/// `altered`: not the bytes of its line in SHA256SUMS or of its issue's JSON; `missing`: listed and
/// not there; `unlisted`: there without a line.
enum class FileState { altered, missing, unlisted };
std::string_view state_word(FileState state);

struct FileDifference {
  std::string name;
  FileState state = FileState::altered;
};

struct Verification {
  std::size_t files = 0;  ///< listed or there
  std::vector<FileDifference> differences;
};

/// Reads every file of every issue in the folder, with so many threads; takes no lock, writes
/// nothing. nullopt when the folder holds neither issues nor sums. Throws OsError.
std::optional<Verification> verify_archive(Os& os, const std::string& folder, unsigned threads);

}  // namespace output
