/// The station in one sentence, and the steps its figures come from.
#include <string>
#include <vector>

#include "output/compose_text.h"
#include "output/section_list.h"

namespace output {

std::string station_keys(const Context& c) {
  if (c.spec.chosen.size() == 1) {
    return c.step_keys({"g1.heads_total", "g1.across", "g1.along", "g1.motion"});
  }
  std::string keys = c.step_keys({"station.heads"});
  for (std::size_t i = 0; i < c.spec.chosen.size(); ++i) {
    keys += " " + c.step_keys({group_prefix(i) + ".heads_total"});
  }
  return keys;
}

std::string station_sentence(const Context& c) {
  std::vector<std::string> groups;
  for (std::size_t i = 0; i < c.spec.chosen.size(); ++i) {
    const calc::Group& group = c.spec.chosen[i];
    const std::string g = group_prefix(i);
    const std::string lattice = lattice_text(group.resolution_across, group.resolution_along);
    groups.push_back(
        c.worded(group.heads_total == 1 ? "sentence.group_one" : "sentence.group",
                 {{"COUNT", c.figure({g + ".heads_total"}, std::to_string(group.heads_total))},
                  {"HEAD", escaped(group.head)},
                  {"MODE", escaped(group.mode)},
                  {"GROUP", escaped(c.group_name(group.name))},
                  {"LATTICE", c.figure({g + (group.scan ? ".motion" : ".across")}, lattice)}}));
  }
  const bool scanning = c.spec.chosen.front().family == calc::Family::scanning;
  Values values;
  values.set("TOTAL", std::to_string(c.spec.heads_total));
  values.set_markup("GROUPS", joined(c, groups));
  const std::string key = scanning ? "sentence.scanning" : "sentence.single";
  const std::string one = key + ".one";
  return c.templates.words(c.language(), c.spec.heads_total == 1 ? one : key, values);
}

}  // namespace output
