/// Which files the paths on the command line mean.
#pragma once

#include <string>
#include <vector>

#include "output/finding.h"
#include "output/os.h"

namespace output {

struct Source {
  std::string path;      ///< "-" for standard input
  std::string name;      ///< in the figures: from the folder named, of a file named the last part
  std::size_t root = 0;  ///< index of the path on the command line that led to it
};

struct Walk {
  std::vector<std::string> roots;  ///< the paths of the command line
  std::vector<Source> sources;     ///< in input order
  std::vector<Fault> faults;       ///< missing and unreadable paths
};

/// Every *.xml and *.ini of each path in turn, those of a folder in order of their path's bytes.
/// Hidden entries, linked folders and `skipped` (the folder of issues; may be empty) are passed
/// over, and so is a file that an earlier path led to already.
Walk walk(Os& os, const std::vector<std::string>& paths, const std::string& skipped);

}  // namespace output
