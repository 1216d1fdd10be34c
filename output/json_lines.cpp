#include "output/json_lines.h"

#include <cmath>

#include "output/json_parts.h"
#include "output/json_words.h"

namespace output {
namespace {

Json finding_value(const intake::Diagnostic& finding) {
  return {{"file", finding.file},     {"line", finding.line},
          {"column", finding.column}, {"severity", json_word(finding.severity)},
          {"code", finding.code},     {"message", finding.message},
          {"notes", finding.notes},   {"hint", finding.hint},
          {"field", finding.field}};
}

/// Texts of files that are no valid UTF-8 are shown with replacement characters.
std::string dumped(const Json& value) {
  return value.dump(-1, ' ', false, Json::error_handler_t::replace);
}

Json text_or_null(std::string_view text) { return text.empty() ? Json() : Json(text); }

Json files_value(const Outcome& outcome) {
  if (outcome.status != Status::issued && outcome.status != Status::unchanged) return {};
  return {{"pdf", outcome.stem + ".pdf"},
          {"bom_csv", outcome.stem + ".bom.csv"},
          {"json", outcome.stem + ".json"}};
}

Json outcome_value(const Outcome& outcome) {
  Json object{{"file", outcome.file}, {"index", outcome.index}};
  object["id"] = text_or_null(outcome.id);
  object["revision"] = text_or_null(outcome.revision);
  object["date"] = text_or_null(outcome.date);
  object["status"] = status_word(outcome.status);
  object["verdict"] = outcome.verdict ? Json(json_word(*outcome.verdict)) : Json();
  object["stem"] = text_or_null(outcome.stem);
  object["files"] = files_value(outcome);
  object["diagnostics"] = json_list(outcome.findings, finding_value);
  return object;
}

}  // namespace

std::string finding_json(const intake::Diagnostic& finding) {
  return dumped(finding_value(finding));
}

std::string outcome_json(const Outcome& outcome) { return dumped(outcome_value(outcome)); }

std::string log_json(const Outcome& outcome) {
  constexpr double microseconds = 1e6;
  Json object = outcome_value(outcome);
  object["seconds"] = std::round(outcome.seconds * microseconds) / microseconds;
  object["catalogue"] = Json();
  if (!outcome.catalogue.empty()) {
    object["catalogue"] = {{"file", outcome.catalogue}, {"sha256", outcome.catalogue_sha256}};
  }
  return dumped(object);
}

std::string field_json(const intake::FieldInfo& field, std::string_view table) {
  Json object{{"table", table},
              {"key", field.key},
              {"type", field.type},
              {"dimension", field.dimension},
              {"unit", field.unit},
              {"units", field.units},
              {"words", field.words},
              {"default", field.fallback},
              {"repeats", field.repeats},
              {"spread", field.spread},
              {"governing", field.governing}};
  if (field.least < field.most) {
    object["least"] = json_number(field.least);
    object["most"] = json_number(field.most);
  }
  object["printed_only"] = field.printed_only;
  object["since"] = field.since;
  object["meaning"] = field.meaning;
  return dumped(object);
}

std::string code_json(std::string_view kind, const intake::CodeInfo& code) {
  return dumped({{"kind", kind}, {"code", code.code}, {"meaning", code.meaning}});
}

std::string object_json(const std::vector<std::pair<std::string, std::string>>& members) {
  std::string text;
  for (const auto& [key, value] : members) {
    text += (text.empty() ? "{" : ",") + text_json(key) + ":" + value;
  }
  return text.empty() ? "{}" : text + "}";
}

std::string text_json(std::string_view text) { return dumped(text); }
std::string number_json(double value) { return dumped(json_number(value)); }

std::string array_json(const std::vector<std::string>& values) {
  std::string text;
  for (const std::string& value : values) text += (text.empty() ? "[" : ",") + value;
  return text.empty() ? "[]" : text + "]";
}

}  // namespace output
