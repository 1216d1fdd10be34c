/// Conditions the design stands on, and warnings beside the figures.
#include <algorithm>
#include <cstddef>
#include <string>
#include <variant>

#include "output/figure_places.h"
#include "output/section_list.h"

namespace output {
namespace {

void add_notices(const Context& c, Values& values, std::string_view section, std::string_view kind,
                 const std::vector<calc::Notice>& notices) {
  if (notices.empty()) return;
  Values& list = values.add(section);
  std::vector<std::size_t> first;
  c.notices(kind, notices, &first);
  for (const std::size_t i : first) {
    const calc::Notice& notice = notices[i];
    Values& row = list.add("ROW");
    row.set("KEY", notice_keys(c, kind, notice, place_keys(notice.where)));
    row.set_markup("TEXT", linked_notice(c, kind, notice));
    if (kind == "condition") row.set_markup("OWNER", condition_owner(c, notice));
  }
}

/// The condition that another value brings, else the condition itself: its code.
std::string code_of(const calc::Notice& condition) {
  for (const calc::Arg& arg : condition.args) {
    const auto* const text = std::get_if<std::string>(&arg.value);
    if (condition.code == "assumption_condition" && arg.name == "condition" && text != nullptr) {
      return *text;
    }
  }
  return condition.code;
}

/// Whether the line or the product brings a figure, not the station.
bool of_line(const Context& c, const std::string& field) {
  const auto& questions = c.spec.questions;
  const bool asked = std::any_of(questions.begin(), questions.end(), [&](const auto& question) {
    return question.field == field || question.parameter == field;
  });
  if (asked) return true;
  if (field == "line.wheel_error") return c.request.line.encoder.has_value();
  if (field == "line.mount_tolerance") return false;
  if (field == "assume.thermal_drift") return true;  // of the frame, which is the operator's
  return field.starts_with("line.") || field.starts_with("product.") ||
         field.starts_with("substrate.");
}

}  // namespace

std::string condition_owner(const Context& c, const calc::Notice& condition) {
  const std::string key = "owner." + code_of(condition);
  if (c.has_words(key)) return c.words(key);
  return c.words(of_line(c, condition.field) ? "services.who.site" : "services.who.supplier");
}

std::string conditions_section(const Context& c) {
  if (c.spec.conditions.empty() && c.spec.warnings.empty()) return {};
  Values values;
  add_notices(c, values, "CONDITIONS", "condition", c.spec.conditions);
  add_notices(c, values, "WARNINGS", "warning", c.spec.warnings);
  return c.expand("conditions", values);
}

}  // namespace output
