/// The fill of an ink in the drawings.
#pragma once

#include <cstddef>
#include <string>

#include "output/compose_context.h"

namespace output {

/// Of a channel that bears the name of a colour the style file knows, that colour's; else, by its
/// order, one of the list of fills.
std::string fill_of(const Context& context, const std::string& channel, std::size_t order);

}  // namespace output
