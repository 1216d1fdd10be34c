#include <utility>

#include "calc/codes.h"
#include "intake/field.h"
#include "output/command.h"
#include "output/json_lines.h"
#include "output/plain_number.h"
#include "output/report_text.h"

namespace output {
namespace {

std::string joined(const std::vector<std::string_view>& words) {
  std::string text;
  for (const std::string_view word : words) text.append(text.empty() ? "" : ", ").append(word);
  return text;
}

std::string spread_text(const intake::FieldInfo& field) {
  if (field.spread == "uncertain") return "may be uncertain (2 +- 0.3)";
  std::string range =
      "may be a range (30..60), of which the " + std::string(field.governing) + " end governs";
  if (field.spread == "demand") return range;
  return field.spread == "both" ? range + ", or uncertain (2 +- 0.3)" : "";
}

std::string bounds_text(const intake::FieldInfo& field) {
  if (!(field.least < field.most)) return {};
  const std::string unit = field.unit.empty() ? "" : " " + std::string(field.unit);
  return plain(field.least, 6) + " to " + plain(field.most, 6) + unit;
}

/// "Words: ..." and so on, each where there is something to say.
std::string details(const intake::FieldInfo& field) {
  std::string text;
  const auto add = [&](const char* label, const std::string& value) {
    if (!value.empty()) text += wrapped(label + value, 4);
  };
  add("words: ", joined(field.words));
  add("units: ", joined(field.units));
  add("accepted: ", bounds_text(field));
  add("", spread_text(field));
  add("without it: ", std::string(field.fallback));
  if (field.printed_only) add("", "printed only: moves no figure");
  return text;
}

std::string field_text(const intake::FieldInfo& field) {
  std::string head = std::string(field.key) + "  (" + std::string(field.type);
  if (!field.dimension.empty()) head.append(", ").append(field.dimension);
  return head + (field.repeats ? ", section repeats" : "") + "; since " + std::string(field.since) +
         ")\n" + wrapped(field.meaning, 4) + details(field);
}

bool wanted(const intake::FieldInfo& field, const std::string& name) {
  return field.key.find(name) != std::string_view::npos;
}

/// The fields of one table whose key contains the name, under a heading.
std::string table_text(std::string_view table, std::span<const intake::FieldInfo> fields,
                       const Options& options) {
  std::string text;
  for (const intake::FieldInfo& field : fields) {
    if (!wanted(field, options.name)) continue;
    text += options.json ? field_json(field, table) + "\n" : field_text(field);
  }
  if (text.empty() || options.json) return text;
  return "fields of a " + std::string(table) + "\n\n" + text + "\n";
}

using CodeList = std::pair<std::string_view, std::vector<intake::CodeInfo>>;

CodeList code_list(std::string_view kind, std::span<const std::string_view> codes) {
  CodeList list{kind, {}};
  for (const std::string_view code : codes) list.second.push_back({code, ""});
  return list;
}

std::vector<CodeList> all_codes() {
  const auto of = [](std::span<const intake::CodeInfo> codes) {
    return std::vector<intake::CodeInfo>(codes.begin(), codes.end());
  };
  return {{"finding", of(intake::diagnostic_codes())},
          {"finding", of(finding_codes())},
          code_list("reason", calc::reason_codes()),
          code_list("condition", calc::condition_codes()),
          code_list("question", calc::question_codes()),
          code_list("check", calc::check_codes()),
          code_list("safety", calc::safety_codes()),
          code_list("part", calc::part_codes())};
}

std::string codes_text(const Options& options) {
  std::string json;
  std::vector<std::vector<std::string>> rows;
  for (const auto& [kind, codes] : all_codes()) {
    for (const intake::CodeInfo& code : codes) {
      if (code.code.find(options.name) == std::string_view::npos) continue;
      rows.push_back({std::string(kind), std::string(code.code), std::string(code.meaning)});
      json += code_json(kind, code) + "\n";
    }
  }
  return options.json ? json : columns(rows);
}

}  // namespace

Exit run_fields(Os& os, const Options& options) {
  const std::string text = options.codes
                               ? codes_text(options)
                               : table_text("request", intake::request_fields(), options) +
                                     table_text("catalogue", intake::catalogue_fields(), options);
  if (text.empty()) {
    os.write_error(program_message("nothing is named " + options.name));
    return Exit::usage;
  }
  os.write_output(text);
  return Exit::success;
}

}  // namespace output
