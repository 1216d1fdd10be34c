#include "output/compose.h"

#include <algorithm>
#include <array>
#include <map>
#include <stdexcept>

#include "output/compose_context.h"
#include "output/format.h"
#include "output/section_list.h"
#include "output/section_names.h"

namespace output {
namespace {

struct Section {
  std::string_view name;
  std::string (*make)(const Context&);
};

/// Every section but `terms`, which is made of the text of those before it.
constexpr std::array<Section, section_names.size() - 1> sections{{
    {"changes", changes_section},
    {"requirement", requirement_section},
    {"conditions", conditions_section},
    {"resolution", resolution_section},
    {"arrangement", arrangement_section},
    {"layout", layout_section},
    {"frequency", frequency_section},
    {"dots", dots_section},
    {"placement", placement_section},
    {"jetting", jetting_section},
    {"drive", drive_section},
    {"ink", ink_section},
    {"stages", stages_section},
    {"services", services_section},
    {"safety", safety_section},
    {"parts", parts_section},
    {"heads", heads_section},
    {"flexibility", flexibility_section},
    {"uncertainty", uncertainty_section},
    {"edges", edges_section},
    {"questions", questions_section},
    {"checks", checks_section},
    {"control", control_section},
    {"trace", trace_section},
    {"sources", sources_section},
    {"record", record_section},
}};

constexpr std::string_view terms = "terms";
/// What a reader looks up: the terms in it are not explained.
constexpr std::array<std::string_view, 3> looked_up{"trace", "sources", "record"};

/// "organisation, contact, reference" of what is there.
std::string customer(const calc::Customer& who) {
  std::string text;
  for (const calc::Given<std::string>* part : {&who.organisation, &who.contact, &who.reference}) {
    if (!*part) continue;
    text += (text.empty() ? "" : ", ") + (*part)->value;
  }
  return text;
}

/// "id, description" as far as there is one.
std::string keywords(const calc::Specification& spec, const calc::Request& request) {
  const auto& description = request.product.description;
  return description ? spec.id + ", " + description->value : spec.id;
}

void set_head(const Context& c, Values& values) {
  values.set("TITLE", c.spec.title);
  values.set("CUSTOMER", customer(c.request.customer));
  values.set("ID", c.spec.id);
  values.set("LANGUAGE", c.language());
  values.set("DATE", c.spec.date);
  values.set("REVISION", c.spec.revision);
  values.set("OWNER", c.house("owner"));
  values.set("CREATOR", c.house("creator"));
  values.set("APPROVAL", c.house("approval"));
  values.set("CONFIDENTIAL", c.house("confidential"));
  values.set("KEYWORDS", keywords(c.spec, c.request));
}

/// The names of the style's order.
std::vector<std::string_view> order(const Context& c) {
  std::string_view list = c.templates.setting("document.sections");
  std::vector<std::string_view> names;
  while (!list.empty()) {
    const std::size_t end = std::min(list.find(' '), list.size());
    if (end > 0) names.push_back(list.substr(0, end));
    list.remove_prefix(std::min(end + 1, list.size()));
  }
  return names;
}

std::string body(const Context& c, const std::string& front) {
  std::map<std::string_view, std::string> made;
  std::string explained = front;
  for (const Section& section : sections) {
    std::string& text = made[section.name] = section.make(c);
    const bool is_read =
        std::find(looked_up.begin(), looked_up.end(), section.name) == looked_up.end();
    if (is_read) explained += text;
  }
  made[terms] = terms_section(c, explained);
  std::string all;
  for (const std::string_view name : order(c)) all += made.at(name);
  return all;
}

/// The markup without links and margin keys, which lead to pages that are not there.
std::string without_links(std::string_view markup) {
  std::string text;
  while (!markup.empty()) {
    const std::size_t tag = std::min(markup.find('<'), markup.size());
    text += markup.substr(0, tag);
    markup.remove_prefix(tag);
    const std::size_t end = std::min(markup.find('>') + 1, markup.size());
    std::string_view one = markup.substr(0, end);
    markup.remove_prefix(end);
    if (one.starts_with("<a ") || one == "</a>") continue;
    const std::size_t key = one.find(" key=\"");
    if (key != std::string_view::npos) {
      text += one.substr(0, key);
      one.remove_prefix(std::min(one.find('"', key + 6) + 1, one.size()));
    }
    text += one;
  }
  return text;
}

/// The decimal sign of the language.
std::string_view decimal_sign(const Context& c) {
  return c.templates.setting("numbers.decimal", c.language()) == "comma" ? "," : ".";
}

}  // namespace

std::string compose(const calc::Specification& spec, const calc::Request& request,
                    const Templates& templates, const Matter& matter) {
  const Context context(spec, request, templates, matter);
  const DecimalSign sign(decimal_sign(context));
  Values values;
  set_head(context, values);
  std::string front = front_page(context);
  values.set_markup("SECTIONS", body(context, front));
  values.set_markup("FRONT", std::move(front));
  return context.expand("document", values);
}

std::string compose_summary(const calc::Specification& spec, const calc::Request& request,
                            const Templates& templates, const Matter& matter) {
  const Context context(spec, request, templates, matter);
  const DecimalSign sign(decimal_sign(context));
  Values values;
  set_head(context, values);
  values.set_markup("FRONT", without_links(front_page(context)));
  return context.expand("summary", values);
}

std::string compose_letter(const calc::Specification& spec, const calc::Request& request,
                           const Templates& templates, const Matter& matter) {
  const Context context(spec, request, templates, matter);
  const DecimalSign sign(decimal_sign(context));
  Values values;
  set_head(context, values);
  return letter_text(context, values);
}

}  // namespace output
