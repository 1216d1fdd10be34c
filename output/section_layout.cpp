/// How the station stands: section through a head and the product, and the line-up to scale.
#include "output/section_list.h"
#include "output/sketch_list.h"

namespace output {

std::string layout_section(const Context& c) {
  std::string line = sketch_line(c);
  std::string section = sketch_section(c);
  if (line.empty() && section.empty()) return {};
  Values values;
  if (!section.empty()) {
    Values& part = values.add("SECTION");
    part.set_markup("DRAWING", std::move(section));
    const calc::Input* const gap = c.input("line.throw_distance");
    if (gap != nullptr && gap->spread != calc::Spread::none) part.add("RANGE");
  }
  if (!line.empty()) values.add("LINE").set_markup("DRAWING", std::move(line));
  return c.expand("layout", values);
}

}  // namespace output
