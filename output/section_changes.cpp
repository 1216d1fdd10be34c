/// What an issue changes against the one it replaces.
#include <cstddef>

#include "output/changes.h"
#include "output/compose_text.h"
#include "output/section_list.h"

namespace output {

std::string changes_section(const Context& c) {
  if (!c.matter.replaced) return {};
  const Replaced& replaced = *c.matter.replaced;
  const auto groups = changes_since(c, replaced.before, replaced.now);
  std::size_t count = 0;
  for (const ChangeGroup& group : groups) count += group.changes.size();
  Values values;
  values.set_markup("TITLE", c.words("change.title", {{"REVISION", replaced.issue.revision}}));
  values.set_markup("SUMMARY", c.counted(count == 0 ? "change.nothing" : "change.summary", count,
                                         {{"COUNT", std::to_string(count)},
                                          {"REVISION", replaced.issue.revision},
                                          {"DATE", replaced.issue.date}}));
  values.set("DIGEST", replaced.issue.sha256);
  Values* table = nullptr;
  for (const ChangeGroup& group : groups) {
    if (table == nullptr) table = &values.add("TABLE");
    Values& part = table->add("GROUP");
    part.set_markup("TOPIC", c.words("change.topic." + group.topic));
    for (const Change& change : group.changes) {
      Values& row = part.add("ROW");
      row.set_markup("NAME", change.name);
      row.set_markup("BEFORE", change.before.empty() ? c.words("change.absent") : change.before);
      row.set_markup("AFTER", change.after.empty() ? c.words("change.absent") : change.after);
    }
  }
  return c.expand("changes", values);
}

}  // namespace output
