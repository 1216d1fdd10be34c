/// Rows looked up by name.
#pragma once

#include <algorithm>
#include <string_view>
#include <vector>

namespace calc {

/// The first row of that name, such as a head, a mode or a channel; null for none.
template <class Row>
const Row* named(const std::vector<Row>& rows, std::string_view name) {
  const auto found =
      std::find_if(rows.begin(), rows.end(), [&](const Row& row) { return row.name == name; });
  return found == rows.end() ? nullptr : &*found;
}

}  // namespace calc
