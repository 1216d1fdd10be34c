/// How the station stands: section through a head and the product, and the line-up to scale.
#include <algorithm>

#include "output/section_list.h"
#include "output/sketch_list.h"

namespace output {
namespace {

/// Whether more than one station turns the body.
bool turns_at_several(const Context& c) {
  int stations = 0;
  for (const calc::Group& group : c.spec.chosen)
    stations += group.round ? group.round->stations : 0;
  return stations > 1;
}

/// Whether the body bends away under the heads.
bool is_curved(const Context& c) {
  return std::any_of(c.spec.chosen.begin(), c.spec.chosen.end(), [](const calc::Group& group) {
    return group.flight && group.flight->slope > 0;
  });
}

}  // namespace

std::string layout_section(const Context& c) {
  std::string line = sketch_line(c);
  std::string section = sketch_section(c);
  std::string round = sketch_round(c);
  if (line.empty() && section.empty() && round.empty()) return {};
  Values values;
  if (!section.empty()) {
    Values& part = values.add("SECTION");
    part.set_markup("DRAWING", std::move(section));
    const calc::Input* const gap = c.input("line.throw_distance");
    if (gap != nullptr && gap->spread != calc::Spread::none) {
      Values& range = part.add("RANGE");
      if (is_curved(c)) range.add("BEND");
    }
  }
  if (!round.empty()) values.add("ROUND").set_markup("DRAWING", std::move(round));
  if (!line.empty()) {
    Values& part = values.add("LINE");
    part.set_markup("DRAWING", std::move(line));
    if (turns_at_several(c)) part.add("STATIONS");
  }
  return c.expand("layout", values);
}

}  // namespace output
