// Every code the program can say has words, and some request brings it out.
#include "calc/codes.h"

#include <doctest/doctest.h>

#include <map>
#include <set>
#include <span>
#include <string>
#include <string_view>

#include "calc/calculate.h"
#include "intake/field.h"
#include "output/compose.h"
#include "tests/calc/support/catalogue_maker.h"
#include "tests/whole/support/case.h"
#include "tests/whole/support/code_cases.h"
#include "tests/whole/support/samples.h"

namespace {

constexpr const char* date = "2026-11-20";
constexpr std::uint64_t runs = 40;

/// Codes by kind, as far as specifications held them.
using Codes = std::map<std::string, std::set<std::string>>;

struct Kind {
  std::string name;
  std::span<const std::string_view> codes;
  std::string words_before, words_after;  ///< around a code in the key of its words
};

std::vector<Kind> kinds() {
  return {{"reason", calc::reason_codes(), "reason.", ""},
          {"condition", calc::condition_codes(), "condition.", ""},
          {"warning", calc::warning_codes(), "warning.", ""},
          {"station warning", calc::station_warning_codes(), "warning.", ""},
          {"question", calc::question_codes(), "question.", ""},
          {"check", calc::check_codes(), "check.", ""},
          {"safety", calc::safety_codes(), "safety.", ""},
          {"safety", calc::safety_codes(), "safety.", ".title"},
          {"part", calc::part_codes(), "part.", ""}};
}

void gather_station(const calc::Station& station, Codes& codes) {
  for (const calc::Notice& notice : station.warnings) codes["station warning"].insert(notice.code);
  for (const calc::BomLine& line : station.bom) codes["part"].insert(line.code);
}

void gather(const calc::Specification& spec, Codes& codes) {
  for (const auto& rejected : spec.rejected) {
    for (const calc::Reason& reason : rejected.reasons) codes["reason"].insert(reason.code);
  }
  for (const calc::Notice& notice : spec.conditions) codes["condition"].insert(notice.code);
  for (const calc::Notice& notice : spec.warnings) codes["warning"].insert(notice.code);
  for (const calc::Question& question : spec.questions) codes["question"].insert(question.code);
  for (const calc::Check& check : spec.tests) codes["check"].insert(check.code);
  for (const calc::Notice& notice : spec.safety) codes["safety"].insert(notice.code);
  if (spec.station) gather_station(*spec.station, codes);
}

/// The document says every code of the specification; it throws for one without words.
void gather_and_print(const calc::Specification& spec, const calc::Request& request, Codes& codes) {
  gather(spec, codes);
  CHECK_NOTHROW(output::compose(spec, request, whole::templates()));
}

/// Requests that no text can hold: intake takes the first as a fault of the catalogue, the second
/// as currencies that differ.
std::vector<std::pair<calc::Request, calc::Catalogue>> beyond_text() {
  const auto catalogue = made::catalogue_of({made::plain_head("A")});
  std::vector<std::pair<calc::Request, calc::Catalogue>> cases(2,
                                                               {made::plain_request(), catalogue});
  cases[0].second.heads[0].modes[0].nozzles.reset();
  cases[1].first.limits.budget = made::given(calc::Price{calc::to_money(1000), "USD"});
  return cases;
}

Codes produced() {
  Codes codes;
  for (const auto& sample : whole::sample_requests()) {
    const auto spec = calc::calculate(sample.request, whole::sample_catalogue(), date);
    gather_and_print(spec, sample.request, codes);
  }
  for (const std::string& changes : whole::code_cases()) {
    CAPTURE(changes);
    const whole::Case made = whole::case_of(changes);
    gather_and_print(made.specification, made.request.request, codes);
  }
  for (const auto& [request, catalogue] : beyond_text()) {
    gather_and_print(calc::calculate(request, catalogue, date), request, codes);
  }
  for (std::uint64_t i = 0; i < runs; ++i) {
    const calc::Request request = made::request(i);
    gather_and_print(calc::calculate(request, made::catalogue(i, 12), date), request, codes);
  }
  return codes;
}

}  // namespace

TEST_CASE("every code of the calculation has words") {
  for (const Kind& kind : kinds()) {
    for (const std::string_view code : kind.codes) {
      const std::string key = kind.words_before + std::string(code) + kind.words_after;
      CHECK_MESSAGE(whole::templates().has_words("en", key), key << " has no words");
    }
  }
}

TEST_CASE("every code of the calculation is brought out by a request, and no other") {
  const Codes codes = produced();
  std::map<std::string, std::set<std::string>> listed;
  for (const Kind& kind : kinds()) {
    for (const std::string_view code : kind.codes) {
      listed[kind.name].insert(std::string(code));
      const bool is_produced =
          codes.count(kind.name) == 1 && codes.at(kind.name).count(std::string(code)) == 1;
      CHECK_MESSAGE(is_produced, kind.name << " " << code << " is brought out by no request");
    }
  }
  listed["warning"].merge(std::set<std::string>(listed["station warning"]));
  listed["part"].insert("");  // a line that has its designation from the catalogue
  for (const auto& kind : codes) {
    const std::set<std::string>& known = listed[kind.first];
    for (const std::string& code : kind.second) {
      CHECK_MESSAGE(known.count(code) == 1, kind.first << " " << code << " is in no list");
    }
  }
}

TEST_CASE("every code of the intake says what it means") {
  for (const intake::CodeInfo& info : intake::diagnostic_codes()) {
    CAPTURE(info.code);
    CHECK(info.code.size() == 5);
    CHECK(info.meaning.size() > 10);
  }
}
