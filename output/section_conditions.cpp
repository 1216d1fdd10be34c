/// Conditions the design stands on, and warnings beside the figures.
#include <cstddef>

#include "output/section_list.h"

namespace output {
namespace {

void add_notices(const Context& c, Values& values, std::string_view section, std::string_view kind,
                 const std::vector<calc::Notice>& notices) {
  if (notices.empty()) return;
  Values& list = values.add(section);
  std::vector<std::size_t> first;
  const std::vector<std::string> texts = c.notices(kind, notices, &first);
  for (std::size_t i = 0; i < texts.size(); ++i) {
    Values& row = list.add("ROW");
    row.set("KEY", place_keys(notices[first[i]].where));
    row.set_markup("TEXT", texts[i]);
  }
}

}  // namespace

std::string conditions_section(const Context& c) {
  if (c.spec.conditions.empty() && c.spec.warnings.empty()) return {};
  Values values;
  add_notices(c, values, "CONDITIONS", "condition", c.spec.conditions);
  add_notices(c, values, "WARNINGS", "warning", c.spec.warnings);
  return c.expand("conditions", values);
}

}  // namespace output
