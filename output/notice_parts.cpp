#include "output/notice_parts.h"

#include <string_view>
#include <variant>

namespace output {

Arising parted(const calc::Notice& notice) {
  constexpr std::string_view of_condition = "condition_";
  Arising parts;
  for (const calc::Arg& arg : notice.args) {
    if (arg.name == "value") {
      parts.value = std::get<double>(arg.value);
      parts.unit = arg.unit;
    } else if (arg.name == "condition") {
      parts.condition.code = std::get<std::string>(arg.value);
    } else if (arg.name == "condition_field") {
      parts.condition.field = std::get<std::string>(arg.value);
    } else {
      parts.condition.args.push_back({arg.name.substr(of_condition.size()), arg.value, arg.unit});
    }
  }
  return parts;
}

std::string text_of(const calc::Notice& notice, const std::string& name) {
  for (const calc::Arg& arg : notice.args) {
    const auto* const text = std::get_if<std::string>(&arg.value);
    if (text != nullptr && arg.name == name) return *text;
  }
  return {};
}

std::string wording_of(const calc::Notice& notice) {
  std::string wording = text_of(notice, "subject");
  const std::string gate = text_of(notice, "gate");
  double value = 0;
  for (const calc::Arg& arg : notice.args) {
    if (arg.name == "value") value = std::get<double>(arg.value);
    if (arg.name != "holds") continue;
    // Solids are judged with the drop chosen anew, not with that of the table of dots.
    const bool down_to = gate == "cover" && std::get<double>(arg.value) > value;
    wording = gate == "placement" ? "holds_kind" : down_to ? "holds_cover" : arg.name;
  }
  return wording;
}

}  // namespace output
