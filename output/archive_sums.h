/// SHA256SUMS: which issued file had which digest.
#pragma once

#include <map>
#include <string>
#include <string_view>

namespace output {

/// File name to digest, in the order of the names' bytes.
using Sums = std::map<std::string, std::string, std::less<>>;

/// Lines `digest  name`; a line of any other form is dropped.
Sums read_sums(std::string_view text);
/// The same back, one line a file, each ended by a line feed.
std::string write_sums(const Sums& sums);

}  // namespace output
