/// Which fields a name means that somebody typed.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace output {

/// Whether the name is part of the key, or a key of a section by its own name: `ink.black.family`
/// and `ink.black` mean fields of `ink.NAME`.
bool means_field(std::string_view key, std::string_view name);

/// The nearest of the keys to a name that means none, the names of its sections kept; empty when
/// none is near.
std::string nearest_field(const std::vector<std::string_view>& keys, std::string_view name);

}  // namespace output
