// No English stands in a German document but what the customer, the catalogue and titles say.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "output/compose.h"
#include "output/compose_context.h"
#include "output/compose_text.h"
#include "output/issue.h"
#include "tests/whole/support/case.h"
#include "tests/whole/support/samples.h"

namespace {

/// Words that no German sentence holds.
constexpr std::array<std::string_view, 28> telltale{
    "of",     "the",   "and",      "with", "from",    "by",    "at",
    "least",  "than",  "per",      "each", "stacked", "given", "source",
    "common", "speed", "practice", "dots", "both",    "terms", "computed",
    "passes", "whole", "row",      "to",   "nozzles", "one",   "head"};

/// Titles and names that hold such words, as they are printed.
constexpr std::array<std::string_view, 10> titles{
    "Control of hazardous energy",
    "Recommended Practice on Static Electricity",
    "Machinery and Machine Guarding",
    "Electrical Standard for Industrial Machinery",
    "Resource Conservation and Recovery Act",
    "Reis and Derby",
    "Jang, Kim and Moon",
    "Standard for Ovens and Furnaces",
    "Flammable and Combustible Liquids Code",
    "Standard System for the Identification of the Hazards of Materials for Emergency Response"};

void blank_out(std::string& text, std::string_view part) {
  if (part.empty()) return;
  for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at)) {
    text.replace(at, part.size(), " ");
  }
}

/// Names and texts of others, longest first so that none hides within another.
std::vector<std::string> foreign(const calc::Specification& spec) {
  std::set<std::string> all(titles.begin(), titles.end());
  for (const calc::Input& input : spec.inputs) {
    for (const std::string& text :
         {output::pretty_text(input.text), output::pretty_text(input.origin.raw), input.text,
          input.origin.raw}) {
      if (text.find(' ') != std::string::npos) all.insert(text);
    }
  }
  if (spec.station) {
    for (const calc::BomLine& line : spec.station->bom) all.insert(line.designation);
  }
  std::vector<std::string> list(all.begin(), all.end());
  std::stable_sort(list.begin(), list.end(),
                   [](const auto& a, const auto& b) { return a.size() > b.size(); });
  return list;
}

/// Takes a part of the markup out, from `from` to before the first `to` behind it.
void cut(std::string& markup, std::string_view from, std::string_view to) {
  const std::size_t begin = markup.find(from);
  if (begin == std::string::npos) return;
  const std::size_t end = markup.find(to, begin);
  markup.erase(begin, end == std::string::npos ? end : end - begin);
}

/// The markup without its tags but with the texts in them that are printed, one blank for each.
std::string printed(const std::string& markup) {
  std::string text;
  for (std::size_t at = 0; at < markup.size();) {
    if (markup[at] != '<') {
      text += markup[at++];
      continue;
    }
    const std::size_t end = markup.find('>', at);
    if (markup.compare(at, 6, "<code>") == 0) {
      at = markup.find("</code>", at);
      continue;
    }
    const std::string tag = markup.substr(at, end - at);
    const std::size_t caption = tag.find("caption=\"");
    text += ' ';
    if (caption != std::string::npos)
      text += tag.substr(caption + 9, tag.find('"', caption + 9) - caption - 9);
    at = end + 1;
  }
  return text;
}

std::vector<std::string> english(const std::string& text) {
  std::vector<std::string> found;
  std::size_t begin = 0;
  const std::string_view ends = " \n;:,()";
  while (begin < text.size()) {
    const std::size_t end = std::min(text.find_first_of(ends, begin), text.size());
    const std::string word = text.substr(begin, end - begin);
    if (std::find(telltale.begin(), telltale.end(), word) != telltale.end()) {
      const std::size_t from = begin > 40 ? begin - 40 : 0;
      found.push_back(text.substr(from, 80));
    }
    begin = end + 1;
  }
  return found;
}

std::vector<std::string> english_of(intake::ReadRequest request) {
  request.request.request.language = calc::exactly(std::string("de"));
  const output::Environment environment{whole::sample_catalogue(), whole::templates(),
                                        whole::fonts()};
  const calc::Specification made = output::specify(request, environment, "2026-11-25");
  std::string markup =
      output::compose(made, request.request, whole::templates(), output::matter_of(made, request));
  cut(markup, "id=\"s-catalogue\"", "</section>");
  cut(markup, "id=\"s-record\"", "</section>");
  std::string text = printed(markup);
  for (const std::string& part : foreign(made)) blank_out(text, part);
  return english(text);
}

}  // namespace

TEST_CASE("a German document of each sample is German") {
  for (const intake::ReadRequest& sample : whole::sample_requests()) {
    CAPTURE(sample.request.request.id->value);
    for (const std::string& place : english_of(sample)) FAIL_CHECK(place);
  }
}

TEST_CASE("an English sentence in a document is found") {
  CHECK(english(printed("<p>Quelle: <b>sum of squares</b></p>")).size() == 1);
  CHECK(english(printed("<p>Quelle: <code>sum of squares</code></p>")).empty());
  CHECK(english(printed("<table caption=\"6 stacked\">")).size() == 1);
}

TEST_CASE("every range of validity has its words in every language") {
  const output::Environment environment{whole::sample_catalogue(), whole::templates(),
                                        whole::fonts()};
  std::set<std::string> missing;
  for (intake::ReadRequest sample : whole::sample_requests()) {
    const calc::Specification made = output::specify(sample, environment, "2026-11-25");
    for (const char* const language : {"en", "de"}) {
      sample.request.request.language = calc::exactly(std::string(language));
      const output::Context context(made, sample.request, whole::templates());
      for (const calc::Step& step : made.trace) {
        for (const std::string& key : output::Context::said_keys(step.validity)) {
          if (!context.has_words(key)) missing.insert(std::string(language) + " " + key);
        }
      }
    }
  }
  for (const std::string& key : missing) FAIL_CHECK(key);
}
