/// Where the tests find the files of the tree.
#pragma once

#include <string>
#include <string_view>

namespace tests {

/// The whole path of a file or folder that is named from the root of the tree.
std::string source(std::string_view path);

}  // namespace tests
