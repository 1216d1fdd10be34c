/// The fill of an ink in the drawings.
#pragma once

#include <cstddef>
#include <string>

#include "output/compose_context.h"

namespace output {

/// Of a channel that bears a colour's name, that colour: one the style file knows or another common
/// one, the last word of a compound ("dark-blue") where the whole is none. Of any other name a
/// grey, by its order. Without a name, one of the style's list of fills by its order.
std::string fill_of(const Context& context, const std::string& channel, std::size_t order);

}  // namespace output
