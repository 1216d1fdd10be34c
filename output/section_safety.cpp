/// Safety notes, by code.
#include "output/section_list.h"

namespace output {

std::string safety_section(const Context& c) {
  if (c.spec.safety.empty()) return {};
  Values values;
  for (const calc::Notice& notice : c.spec.safety) {
    Values& note = values.add("NOTE");
    note.set_markup("TITLE", c.words("safety." + notice.code + ".title"));
    note.set("KEY", place_keys(notice.where));
    note.set_markup("TEXT", c.notice("safety", notice));
  }
  return c.expand("safety", values);
}

}  // namespace output
