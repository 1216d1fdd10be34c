/// Files of the tests.
#pragma once

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

#include "tests/source.h"

namespace tests {

inline std::string read_file(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

/// The plain files of a folder under tests/, in order of name.
inline std::vector<std::filesystem::path> files_in(std::string_view folder) {
  std::vector<std::filesystem::path> paths;
  const std::string root = source("tests/") + std::string(folder);
  for (const auto& entry : std::filesystem::directory_iterator(root)) {
    if (entry.is_regular_file()) paths.push_back(entry.path());
  }
  std::sort(paths.begin(), paths.end());
  return paths;
}

}  // namespace tests
