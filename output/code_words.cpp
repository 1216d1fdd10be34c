#include "output/code_words.h"

#include <span>

#include "calc/codes.h"
#include "output/compose_context.h"
#include "output/finding.h"
#include "output/report_text.h"

namespace output {
namespace {

/// A text of the templates in plain characters, its arguments without their braces.
std::string plain_words(const Templates& templates, const std::string& key) {
  std::string text = without_markup(templates.wording(base_language, key));
  for (const char* brace : {"{{", "}}"}) {
    for (auto at = text.find(brace); at != std::string::npos; at = text.find(brace, at)) {
      text.erase(at, 2);
    }
  }
  return text;
}

/// The findings of the calculation have their words in the templates, the others in their lists.
void add_findings(const Templates& templates, std::span<const intake::CodeInfo> codes,
                  std::vector<CodeWords>& to) {
  for (const intake::CodeInfo& info : codes) {
    const std::string key = "warning." + std::string(info.meaning);
    const bool has_words = templates.has_words(base_language, key);
    to.push_back({"finding", std::string(info.code),
                  has_words ? plain_words(templates, key) : std::string(info.meaning)});
  }
}

void add_codes(const Templates& templates, std::string_view kind,
               std::span<const std::string_view> codes, std::vector<CodeWords>& to) {
  for (const std::string_view code : codes) {
    const std::string key = std::string(kind) + "." + std::string(code);
    std::string text = plain_words(templates, key);
    const std::string title = key + ".title";
    if (templates.has_words(base_language, title)) {
      text.insert(0, plain_words(templates, title) + ". ");
    }
    to.push_back({kind, std::string(code), std::move(text)});
  }
}

}  // namespace

std::vector<CodeWords> code_words(const Templates& templates) {
  std::vector<CodeWords> all;
  add_findings(templates, intake::diagnostic_codes(), all);
  add_findings(templates, finding_codes(), all);
  add_codes(templates, "reason", calc::reason_codes(), all);
  add_codes(templates, "condition", calc::condition_codes(), all);
  add_codes(templates, "question", calc::question_codes(), all);
  add_codes(templates, "check", calc::check_codes(), all);
  add_codes(templates, "safety", calc::safety_codes(), all);
  add_codes(templates, "part", calc::part_codes(), all);
  return all;
}

}  // namespace output
