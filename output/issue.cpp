#include "output/issue.h"

#include <utility>
#include <vector>

#include "calc/calculate.h"
#include "output/compose.h"
#include "output/compose_context.h"
#include "output/csv.h"
#include "output/digest.h"
#include "output/finding.h"
#include "output/json.h"
#include "output/layout.h"
#include "output/markup.h"
#include "output/names.h"
#include "output/paint.h"
#include "output/report_text.h"
#include "output/version.h"

namespace output {
namespace {

/// Parts that no catalogue names get their designation from the templates.
void name_parts(calc::Specification& specification, const calc::Request& request,
                const Templates& templates) {
  if (!specification.station) return;
  const Context context(specification, request, templates);
  for (calc::BomLine& line : specification.station->bom) {
    if (!line.designation.empty() || line.code.empty()) continue;
    line.designation = without_markup(context.words("part." + line.code));
  }
}

std::string utf8(char32_t character) {
  const auto code = static_cast<unsigned>(character);
  const auto tail = [&](unsigned shift) {
    return static_cast<char>(0x80U | ((code >> shift) & 0x3FU));
  };
  if (code < 0x80) return {static_cast<char>(code)};
  if (code < 0x800) return {static_cast<char>(0xC0U | (code >> 6U)), tail(0)};
  if (code < 0x10000) return {static_cast<char>(0xE0U | (code >> 12U)), tail(6), tail(0)};
  return {static_cast<char>(0xF0U | (code >> 18U)), tail(12), tail(6), tail(0)};
}

std::string code_point(char32_t character) {
  constexpr std::string_view digits = "0123456789ABCDEF";
  std::string text;
  for (auto value = static_cast<unsigned>(character); value != 0 || text.size() < 4; value >>= 4U) {
    text.insert(text.begin(), digits[value & 15U]);
  }
  return "U+" + text;
}

/// The first given field that holds the character, else the request.
const calc::Origin& place_of(char32_t character, const calc::Request& request) {
  for (const calc::Input& input : request.inputs) {
    if (input.origin.raw.find(utf8(character)) != std::string::npos) return input.origin;
  }
  return request.where;
}

void add_unprintable(intake::Diagnostics& findings, const std::vector<char32_t>& characters,
                     const calc::Request& request) {
  for (const char32_t character : characters) {
    findings.push_back(
        finding_at(unprintable_character, place_of(character, request),
                   "no text face can print " + code_point(character) + "; it stands as [" +
                       code_point(character) + "] in the document",
                   "write it in a script without joined letters, or install a face that has it"));
  }
}

void add_warnings(intake::Diagnostics& findings, const calc::Specification& specification,
                  const calc::Request& request, const Templates& templates) {
  const Context context(specification, request, templates);
  for (const calc::Notice& notice : specification.warnings) {
    const calc::Origin& where = notice.where.empty() ? request.where : notice.where.front();
    intake::Diagnostic finding = finding_at(calculation_warning(notice.code), where,
                                            without_markup(context.notice("warning", notice)));
    for (std::size_t i = 1; i < notice.where.size(); ++i) {
      finding.notes.push_back("see also " + place_key(notice.where[i]));
    }
    finding.field = notice.field;
    findings.push_back(std::move(finding));
  }
}

JsonFacts facts_of(const intake::ReadRequest& request) {
  return {std::string(version), request.request.source_sha256, std::nullopt, std::nullopt};
}

}  // namespace

calc::Specification specify(const intake::ReadRequest& request, const Environment& environment,
                            const std::string& date) {
  calc::Specification specification = calc::calculate(request.request, environment.catalogue, date);
  name_parts(specification, request.request, environment.templates);
  return specification;
}

std::string figures_of(const calc::Specification& specification,
                       const intake::ReadRequest& request) {
  return write_json(specification, facts_of(request));
}

std::string content_of(const calc::Specification& specification) {
  return read_issued(write_json(specification, {})).value().content;
}

intake::Diagnostics warnings_of(const calc::Specification& specification,
                                const intake::ReadRequest& request, const Templates& templates) {
  intake::Diagnostics findings;
  add_warnings(findings, specification, request.request, templates);
  return findings;
}

Issued render(calc::Specification specification, const intake::ReadRequest& request,
              const Environment& environment) {
  Issued issued;
  issued.stem = stem_of(specification.id, specification.revision, specification.date);
  const std::string markup = compose(specification, request.request, environment.templates);
  std::vector<char32_t> unprintable;
  const DisplayList pages =
      lay_out(parse_markup(markup), environment.fonts, environment.templates.style(), unprintable);
  issued.pdf = paint(pages, environment.fonts);
  issued.bom_csv = write_bom_csv(specification);
  JsonFacts facts = facts_of(request);
  facts.pdf = FileDigest{issued.stem + ".pdf", sha256(issued.pdf)};
  facts.bom_csv = FileDigest{issued.stem + ".bom.csv", sha256(issued.bom_csv)};
  issued.json = write_json(specification, facts);
  issued.findings = warnings_of(specification, request, environment.templates);
  add_unprintable(issued.findings, unprintable, request.request);
  issued.specification = std::move(specification);
  return issued;
}

Issued issue(const intake::ReadRequest& request, const Environment& environment,
             const std::string& date) {
  return render(specify(request, environment, date), request, environment);
}

}  // namespace output
