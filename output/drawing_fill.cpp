#include "output/drawing_fill.h"

#include <algorithm>
#include <array>
#include <string_view>

#include "output/templates.h"

namespace output {

std::string fill_of(const Context& context, const std::string& channel, std::size_t order) {
  constexpr std::array<std::string_view, 12> known{"black",  "cyan", "magenta",    "yellow",
                                                   "white",  "red",  "green",      "blue",
                                                   "orange", "grey", "light-cyan", "light-magenta"};
  if (std::find(known.begin(), known.end(), channel) != known.end()) {
    return context.templates.setting("drawing." + channel);
  }
  constexpr std::size_t step = 7;  // six digits and a blank
  const std::string& list = context.templates.setting("drawing.fills");
  return list.substr(order % ((list.size() + 1) / step) * step, step - 1);
}

}  // namespace output
