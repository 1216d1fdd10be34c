#include "output/compose.h"

#include <array>

#include "output/compose_context.h"
#include "output/section_list.h"

namespace output {
namespace {

using Section = std::string (*)(const Context&);

constexpr std::array<Section, 19> sections{
    requirement_section, conditions_section, resolution_section,  arrangement_section,
    frequency_section,   dots_section,       placement_section,   jetting_section,
    drive_section,       ink_section,        stages_section,      safety_section,
    parts_section,       heads_section,      flexibility_section, questions_section,
    checks_section,      trace_section,      sources_section};

/// "id, description" as far as there is one.
std::string keywords(const calc::Specification& spec, const calc::Request& request) {
  const auto& description = request.product.description;
  return description ? spec.id + ", " + description->value : spec.id;
}

/// "organisation, contact, reference" of what is there.
std::string customer(const calc::Customer& who) {
  std::string text;
  for (const calc::Given<std::string>* part : {&who.organisation, &who.contact, &who.reference}) {
    if (!*part) continue;
    text += (text.empty() ? "" : ", ") + (*part)->value;
  }
  return text;
}

}  // namespace

std::string compose(const calc::Specification& spec, const calc::Request& request,
                    const Templates& templates) {
  const Context context(spec, request, templates);
  Values values;
  values.set("TITLE", spec.title);
  values.set("CUSTOMER", customer(request.customer));
  values.set("ID", spec.id);
  values.set("LANGUAGE", context.language());
  values.set("DATE", spec.date);
  values.set("REVISION", spec.revision);
  values.set("OWNER", templates.setting("house.owner"));
  values.set("CREATOR", templates.setting("house.creator"));
  values.set("APPROVAL", templates.setting("house.approval"));
  values.set("KEYWORDS", keywords(spec, request));
  values.set_markup("FRONT", front_page(context));
  std::string body;
  for (const Section section : sections) body += section(context);
  values.set_markup("SECTIONS", std::move(body));
  return context.expand("document", values);
}

}  // namespace output
