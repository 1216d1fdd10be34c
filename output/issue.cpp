#include "output/issue.h"

#include <algorithm>
#include <utility>
#include <vector>

#include "calc/calculate.h"
#include "output/compose.h"
#include "output/compose_context.h"
#include "output/csv.h"
#include "output/digest.h"
#include "output/finding.h"
#include "output/frames.h"
#include "output/json.h"
#include "output/layout.h"
#include "output/markup.h"
#include "output/names.h"
#include "output/os.h"
#include "output/paint.h"
#include "output/report_text.h"
#include "output/version.h"

namespace output {
namespace {

/// Parts that no catalogue names get their designation from the templates; a spare says that it is
/// one.
void name_parts(calc::Specification& specification, const calc::Request& request,
                const Templates& templates) {
  if (!specification.station) return;
  const Context context(specification, request, templates);
  for (calc::BomLine& line : specification.station->bom) {
    if (line.code.empty()) continue;
    const bool spare = !line.designation.empty() && line.code == "spare_head";
    if (spare) {
      line.designation = without_markup(context.words("spare_of", {{"NAME", line.designation}}));
    } else if (line.designation.empty()) {
      line.designation = without_markup(context.words("part." + line.code));
    }
  }
}

/// The figures are the same whatever folder the program was started from: the request's file has
/// its name from the folder named, the catalogue its own.
void name_files(calc::Specification& specification, const std::string& source) {
  for (calc::Input& input : specification.inputs) {
    std::string& file = input.origin.file;
    if (file.empty()) continue;
    const bool named = input.origin.kind == calc::OriginKind::given && !source.empty();
    file = named ? source : std::string(name_of(file));
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
    // Two groups may bring the same out, in the same words and at the same place.
    const bool told = std::any_of(findings.begin(), findings.end(), [&](const auto& other) {
      return intake::to_human(other) == intake::to_human(finding);
    });
    if (!told) findings.push_back(std::move(finding));
  }
}

/// A language without texts is told; the document is in the language of the templates there are.
void add_language(intake::Diagnostics& findings, const calc::Request& request,
                  const Templates& templates) {
  const auto& asked = request.request.language;
  if (!asked || templates.has_language(asked->value)) return;
  std::string there;
  for (const std::string& language : templates.languages()) {
    there += (there.empty() ? "" : ", ") + language;
  }
  findings.push_back(finding_at(unknown_language, asked->origin,
                                "there are no texts in language " + asked->value +
                                    "; the document is in " + std::string(base_language),
                                "set request.language to one of: " + there));
  findings.back().field = "request.language";
}

DisplayList laid_out(const calc::Specification& specification, const calc::Request& request,
                     const Environment& environment, const Matter& matter,
                     std::vector<char32_t>& unprintable) {
  const std::string markup = compose(specification, request, environment.templates, matter);
  return lay_out(parse_markup(markup), environment.fonts, environment.templates.style(),
                 unprintable);
}

JsonFacts facts_of(const intake::ReadRequest& request) {
  JsonFacts facts;
  facts.version = version;
  facts.source_sha256 = request.request.source_sha256;
  return facts;
}

}  // namespace

calc::Specification specify(const intake::ReadRequest& request, const Environment& environment,
                            const std::string& date) {
  calc::Specification specification = calc::calculate(request.request, environment.catalogue, date);
  name_parts(specification, request.request, environment.templates);
  name_files(specification, environment.source);
  return specification;
}

std::string figures_of(const calc::Specification& specification,
                       const intake::ReadRequest& request) {
  return write_json(specification, facts_of(request));
}

Digest content_of(const calc::Specification& specification, const std::string& templates_sha256) {
  JsonFacts facts;
  facts.templates_sha256 = templates_sha256;
  return issued_json(specification, facts).content;
}

intake::Diagnostics warnings_of(const calc::Specification& specification,
                                const intake::ReadRequest& request, const Templates& templates) {
  intake::Diagnostics findings;
  add_language(findings, request.request, templates);
  add_warnings(findings, specification, request.request, templates);
  return findings;
}

intake::Diagnostics findings_of(const calc::Specification& specification,
                                const intake::ReadRequest& request,
                                const Environment& environment) {
  std::vector<char32_t> unprintable;
  laid_out(specification, request.request, environment, matter_of(specification, request),
           unprintable);
  intake::Diagnostics findings = warnings_of(specification, request, environment.templates);
  add_unprintable(findings, unprintable, request.request);
  return findings;
}

Matter matter_of(const calc::Specification& specification, const intake::ReadRequest& request,
                 const std::optional<IssuedText>& earlier) {
  Matter matter{request.source, request.source_line, request.request.source_sha256, {}};
  if (!earlier) return matter;
  std::optional<IssueRecord> before = read_record(earlier->json);
  if (!before) return matter;
  EarlierIssue issue{before->revision, before->date, before->verdict, earlier->sha256};
  matter.replaced =
      Replaced{std::move(*before),
               read_record(write_json(specification, facts_of(request))).value(), std::move(issue)};
  return matter;
}

std::string render_summary(const calc::Specification& specification,
                           const intake::ReadRequest& request, const Environment& environment,
                           const Matter& matter) {
  const std::string markup =
      compose_summary(specification, request.request, environment.templates, matter);
  std::vector<char32_t> unprintable;  // those of the document, which tells of them
  return paint(
      lay_out(parse_markup(markup), environment.fonts, environment.templates.style(), unprintable),
      environment.fonts);
}

std::string letter_of(const calc::Specification& specification, const intake::ReadRequest& request,
                      const Environment& environment, const Matter& matter) {
  return compose_letter(specification, request.request, environment.templates, matter);
}

Issued render(calc::Specification specification, const intake::ReadRequest& request,
              const Environment& environment, const std::optional<IssuedText>& earlier) {
  Issued issued;
  issued.stem = stem_of(specification.id, specification.revision, specification.date);
  const Matter matter = matter_of(specification, request, earlier);
  std::vector<char32_t> unprintable;
  const DisplayList pages =
      laid_out(specification, request.request, environment, matter, unprintable);
  issued.pdf = paint(pages, environment.fonts);
  if (environment.with_frames) issued.frames = frames_json(pages, issued.stem);
  if (environment.with_summary) {
    issued.summary_pdf = render_summary(specification, request, environment, matter);
  }
  if (environment.with_letter) {
    issued.letter = letter_of(specification, request, environment, matter);
  }
  issued.bom_csv = write_bom_csv(specification);
  JsonFacts facts = facts_of(request);
  facts.revisions = matter.revisions();
  facts.templates_sha256 = environment.templates.own_digest();
  facts.pdf = FileDigest{issued.stem + ".pdf", sha256(issued.pdf)};
  facts.bom_csv = FileDigest{issued.stem + ".bom.csv", sha256(issued.bom_csv)};
  WrittenJson written = write_issue(specification, facts);
  issued.json = std::move(written.text);
  issued.facts = std::move(written.said);
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
