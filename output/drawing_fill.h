/// The fill of an ink in the drawings.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "output/compose_context.h"

namespace output {

/// Of a channel that bears a colour's name, that colour: one the style file knows or another common
/// one, the last word of a compound ("dark-blue") where the whole is none. Of any other name a
/// grey, by its order.
std::string fill_of(const Context& context, const std::string& channel, std::size_t order);

/// Of each ink a head carries, whose names are joined by "+"; `order` counts the heads' colours.
std::vector<std::string> fills_of(const Context& context, std::string_view channels,
                                  std::size_t order);

}  // namespace output
