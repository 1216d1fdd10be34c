/// Safety notes, by code.
#include "output/figure_places.h"
#include "output/section_list.h"

namespace output {
namespace {

/// The heading, of its own where the subject of a note asks for one.
std::string title_of(const Context& c, const calc::Notice& notice) {
  const std::string key = "safety." + notice.code;
  for (const calc::Arg& arg : notice.args) {
    const auto* const text = std::get_if<std::string>(&arg.value);
    if (arg.name != "subject" || text == nullptr || text->empty()) continue;
    const std::string own = key + "." + *text + ".title";
    if (c.has_words(own)) return c.words(own);
  }
  return c.words(key + ".title");
}

}  // namespace

std::string safety_section(const Context& c) {
  if (c.spec.safety.empty()) return {};
  Values values;
  for (const calc::Notice& notice : c.spec.safety) {
    Values& note = values.add("NOTE");
    note.set_markup("TITLE", title_of(c, notice));
    note.set("KEY", notice_keys(c, "safety", notice, place_keys(notice.where)));
    note.set_markup("TEXT", linked_notice(c, "safety", notice));
  }
  return c.expand("safety", values);
}

}  // namespace output
