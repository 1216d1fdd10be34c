#include <algorithm>
#include <span>
#include <vector>

#include "intake/field.h"
#include "intake/suggest.h"
#include "output/code_words.h"
#include "output/command.h"
#include "output/field_names.h"
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

/// The fields of one table that the name means, under a heading.
std::string table_text(std::string_view table, std::span<const intake::FieldInfo> fields,
                       const Options& options) {
  std::string text;
  for (const intake::FieldInfo& field : fields) {
    if (!means_field(field.key, options.name)) continue;
    text += options.json ? field_json(field, table) + "\n" : field_text(field);
  }
  if (text.empty() || options.json) return text;
  return "fields of a " + std::string(table) + "\n\n" + text + "\n";
}

std::string codes_text(const std::vector<CodeWords>& codes, const Options& options) {
  std::string json;
  std::vector<std::vector<std::string>> rows;
  for (const CodeWords& code : codes) {
    if (code.code.find(options.name) == std::string::npos) continue;
    rows.push_back({std::string(code.kind), code.code, code.meaning});
    json += code_json(code.kind, {code.code, code.meaning}) + "\n";
  }
  return options.json ? json : columns(rows);
}

std::string nearest_code(const std::vector<CodeWords>& codes, const std::string& name) {
  std::vector<std::string_view> names;
  names.reserve(codes.size());
  for (const CodeWords& code : codes) names.push_back(code.code);
  return std::string(intake::nearest(name, names));
}

std::string nearest_key(const std::string& name) {
  std::vector<std::string_view> keys;
  for (const auto fields : {intake::request_fields(), intake::catalogue_fields()}) {
    for (const intake::FieldInfo& field : fields) keys.push_back(field.key);
  }
  return nearest_field(keys, name);
}

Exit print(Os& os, const Options& options, const std::string& text, const std::string& near) {
  if (!text.empty()) {
    os.write_output(text);
    return Exit::success;
  }
  os.write_error(program_message("nothing is named " + options.name +
                                 (near.empty() ? "" : "; did you mean " + near)));
  return Exit::usage;
}

}  // namespace

Exit run_fields(Os& os, const Options& options) {
  if (options.codes) {
    const std::vector<CodeWords> codes = code_words(Templates());
    return print(os, options, codes_text(codes, options), nearest_code(codes, options.name));
  }
  const std::vector<CodeWords> codes = code_words(Templates());
  const bool is_code = std::any_of(codes.begin(), codes.end(), [&](const CodeWords& code) {
    return !options.name.empty() && code.code == options.name;
  });
  const std::string text = table_text("request", intake::request_fields(), options) +
                           table_text("catalogue", intake::catalogue_fields(), options);
  if (text.empty() && is_code) {
    os.write_error(program_message(options.name +
                                   " is a code, no field; see swathspec fields "
                                   "--codes " +
                                   options.name));
    return Exit::usage;
  }
  return print(os, options, text, nearest_key(options.name));
}

}  // namespace output
