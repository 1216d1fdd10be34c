#include "output/json.h"

#include <doctest/doctest.h>

#include <limits>
#include <nlohmann/json.hpp>
#include <stdexcept>
#include <string>
#include <vector>

#include "output/batch_outcome.h"
#include "output/digest.h"
#include "output/finding.h"
#include "output/json_lines.h"

namespace {

using Json = nlohmann::ordered_json;

calc::Input input(const std::string& key, calc::OriginKind kind, const std::string& raw) {
  calc::Input made;
  made.key = key;
  made.origin = {kind, "desk/q.ini", 3, 9, raw};
  return made;
}

calc::Group group(const std::string& channel, int heads) {
  calc::Group made;
  made.name = channel;
  made.channels = {channel};
  made.head = "H-" + channel;
  made.heads_total = heads;
  made.resolution_across = calc::dpi(600);
  made.resolution_along = calc::dpi(900);
  calc::ChannelDots dots;
  dots.channel = channel;
  dots.drop = calc::picolitres(7);
  dots.laydown = 3.9e-6;
  made.dots.push_back(dots);
  return made;
}

/// A feasible specification with one of everything.
calc::Specification full() {
  calc::Specification made;
  made.id = "Q-1";
  made.revision = "A";
  made.date = "2026-01-02";
  made.title = "Lids \xE2\x80\x93 white";
  made.catalogue_date = "2025-12-01";
  made.verdict = calc::Verdict::feasible;
  made.inputs = {input("image.width", calc::OriginKind::given, "210 mm"),
                 input("head.H-1.price", calc::OriginKind::catalogue, "950 EUR")};
  made.inputs[0].value = 210;
  made.inputs[0].unit = "mm";
  made.required = calc::Required{calc::dpi(600), calc::dpi(600), "explicit", {}, std::nullopt};
  made.required->demands.push_back({"explicit", true, calc::dpi(600), std::nullopt});
  made.chosen = {group("white", 2), group("black", 4)};
  made.inputs.push_back(input("colour.white.kind", calc::OriginKind::given, "white"));
  made.inputs.back().text = "white";
  made.heads_total = 6;
  made.station.emplace();
  made.station->currency = "EUR";
  calc::BomLine line;
  line.item = 1;
  line.quantity = 6;
  made.station->bom = {line};
  made.conditions = {
      {"high_use", {{"share", 0.95, "1"}, {"head", std::string("H-1"), ""}}, "", {}}};
  made.rejected = {{"H-9", {{"frequency", "black", "", 30, 39.37, "kHz", true}}}};
  made.trace.emplace_back(
      "f1", calc::StepKind::formula, "f", "v / p",
      std::vector<calc::StepInput>{{"v", 1.0 / 3, "m/s", "given", "line.speed"}}, 1e5 / 3, "Hz",
      "definition", calc::SourceTag::computed, "", std::vector<std::string>{});
  return made;
}

Json parsed(const calc::Specification& specification) {
  output::JsonFacts facts{"0.1.0", std::string(64, 'a'), output::FileDigest{"s.pdf", "1"},
                          output::FileDigest{"s.bom.csv", "2"}};
  return Json::parse(output::write_json(specification, facts));
}

std::vector<std::string> keys(const Json& object) {
  std::vector<std::string> names;
  for (const auto& [key, value] : object.items()) names.push_back(key);
  return names;
}

TEST_CASE("the keys of the public interface, in its order") {
  const std::vector<std::string> names = keys(parsed(full()));
  const std::vector<std::string> expected{
      "schema",      "program",   "request",  "catalogue",    "files",        "verdict",
      "conditions",  "inputs",    "required", "chosen",       "ink",          "data_rate_bit_per_s",
      "consumption", "stages",    "bom",      "bom_total",    "bom_unpriced", "currency",
      "lead_time",   "cost",      "spares",   "alternatives", "rejected",     "assumptions",
      "uncertainty", "questions", "tests",    "safety",       "trace"};
  std::size_t place = 0;
  for (const std::string& name : names) {
    if (place < expected.size() && name == expected[place]) ++place;
  }
  CAPTURE(place);
  CHECK(place == expected.size());
}

TEST_CASE("figures come in the unit of their key, without the last bits of a conversion") {
  const Json json = parsed(full());
  CHECK(json["required"]["resolution_across_dpi"].dump() == "600");
  const Json& chosen = json["chosen"];
  CHECK(chosen["groups"][0]["resolution_along_dpi"].dump() == "900");
  CHECK(chosen["groups"][0]["drop_volume_pl"].dump() == "7");
  CHECK(chosen["groups"][0]["laydown_ml_per_m2"].dump() == "3.9");
  CHECK(chosen["groups"][0]["wet_film_um"].dump() == "3.9");
}

TEST_CASE("chosen repeats the first process group, its heads_total counts all groups") {
  const Json chosen = parsed(full())["chosen"];
  CHECK(chosen["head"] == "H-black");
  CHECK(chosen["channels"][0] == "black");
  CHECK(chosen["heads_total"] == 6);
  CHECK(chosen["groups"].size() == 2);
  for (const std::string& key : keys(chosen["groups"][1])) {
    CAPTURE(key);
    CHECK((key == "heads_total" || chosen[key] == chosen["groups"][1][key]));
  }
}

TEST_CASE("without a choice there is no chosen, no bill and no cost") {
  calc::Specification none = full();
  none.chosen.clear();
  none.station.reset();
  const Json json = parsed(none);
  for (const char* key : {"chosen", "ink", "bom", "cost", "currency", "lead_time"}) {
    CAPTURE(key);
    CHECK_FALSE(json.contains(key));
  }
  CHECK(json["rejected"].size() == 1);
}

TEST_CASE("absent is not applicable, null is unknown") {
  const Json json = parsed(full());
  CHECK(json["bom"][0]["unit_price"].is_null());
  CHECK(json["lead_time"].is_null());
  CHECK_FALSE(json["chosen"].contains("scan"));
  CHECK_FALSE(json["required"]["demands"][0].contains("along_dpi"));
  CHECK(json["required"]["demands"][0]["across_dpi"] == 600);
}

TEST_CASE("inputs carry their origin, a spread its ends") {
  calc::Specification specification = full();
  specification.inputs[0].spread = calc::Spread::demand;
  specification.inputs[0].low = 200;
  specification.inputs[0].high = 210;
  const Json inputs = parsed(specification)["inputs"];
  CHECK(inputs[0].dump() ==
        R"({"key":"image.width","value":210,"unit":"mm","low":200,"high":210,"origin":"given",)"
        R"("file":"desk/q.ini","line":3,"column":9})");
  CHECK_FALSE(inputs[1].contains("low"));
  CHECK(inputs[2]["value"] == "white");
}

TEST_CASE("conditions and reasons are codes with typed arguments") {
  const Json json = parsed(full());
  CHECK(json["conditions"][0]["args"].dump() == R"({"share":0.95,"head":"H-1"})");
  const Json& reason = json["rejected"][0]["reasons"][0];
  CHECK(reason["code"] == "frequency");
  CHECK(reason["value"] == 30);
  CHECK(reason["limit"] == 39.37);
  CHECK(reason["unit"] == "kHz");
}

TEST_CASE("the trace keeps every bit") {
  const Json step = parsed(full())["trace"][0];
  CHECK(step["value"].get<double>() == 1e5 / 3);
  CHECK(step["inputs"][0]["value"].get<double>() == 1.0 / 3);
  CHECK(step["kind"] == "formula");
  CHECK(step["tag"] == "C");
}

TEST_CASE("no figure that is not finite is ever written") {
  calc::Specification broken = full();
  broken.station->data_rate_bit_per_s = std::numeric_limits<double>::quiet_NaN();
  CHECK_THROWS_AS(parsed(broken), std::logic_error);
  broken = full();
  broken.trace[0].value = std::numeric_limits<double>::infinity();
  CHECK_THROWS_AS(parsed(broken), std::logic_error);
}

TEST_CASE("the catalogue's digest covers the values used, in any order, and nothing else") {
  calc::Specification specification = full();
  const std::string digest = output::used_catalogue_digest(specification);
  CHECK(digest == output::sha256("head.H-1.price=950 EUR\n"));
  specification.inputs.push_back(input("board.B.price", calc::OriginKind::catalogue, "1 EUR"));
  const std::string two = output::used_catalogue_digest(specification);
  CHECK(two == output::sha256("board.B.price=1 EUR\nhead.H-1.price=950 EUR\n"));
  specification.inputs.front().origin.raw = "211 mm";
  CHECK(output::used_catalogue_digest(specification) == two);
}

TEST_CASE("equal specifications give equal bytes, one line an input") {
  const output::JsonFacts facts;
  const std::string text = output::write_json(full(), facts);
  CHECK(text == output::write_json(full(), facts));
  CHECK(text.find("\n  {\"key\":\"image.width\"") != std::string::npos);
  CHECK(text.back() == '\n');
  CHECK(text.find("Lids \xE2\x80\x93 white") != std::string::npos);
}

output::Digest content(const calc::Specification& specification,
                       const output::JsonFacts& facts = {}) {
  return output::read_issued(output::write_json(specification, facts)).value().content;
}

TEST_CASE("content leaves out date, version, digests and places, and nothing else") {
  const output::Digest base = content(full());
  calc::Specification same = full();
  same.date = "2027-01-01";
  same.inputs[0].origin.line = 99;
  same.inputs[0].origin.file = "elsewhere.ini";
  CHECK(content(same, {"9.9", "ff", std::nullopt, std::nullopt}) == base);
  calc::Specification other = full();
  other.inputs[0].value = 211;
  CHECK(content(other) != base);
  other = full();
  other.title = "Lids";
  CHECK(content(other) != base);
  other = full();
  other.inputs[1].origin.raw = "951 EUR";
  CHECK(content(other) != base);
}

TEST_CASE("an issued file gives its files back") {
  const output::JsonFacts facts{"1", "2", output::FileDigest{"s.pdf", "aa"},
                                output::FileDigest{"s.bom.csv", "bb"}};
  const auto issued = output::read_issued(output::write_json(full(), facts));
  REQUIRE(issued.has_value());
  CHECK(issued->verdict == "feasible");
  CHECK(issued->pdf->sha256 == "aa");
  CHECK(issued->bom_csv->name == "s.bom.csv");
  CHECK_FALSE(output::read_issued("{}").has_value());
  CHECK_FALSE(output::read_issued("").has_value());
}

TEST_CASE("a finding as a line of JSON") {
  intake::Diagnostic finding = output::file_finding("E0301", "a\"b", "none", "fix");
  finding.notes = {"n"};
  finding.field = "image.width";
  CHECK(output::finding_json(finding) ==
        R"({"file":"a\"b","line":1,"column":1,"severity":"error","code":"E0301",)"
        R"("message":"none","notes":["n"],"hint":"fix","field":"image.width"})");
  finding.message = "\xFF";
  CHECK(Json::parse(output::finding_json(finding))["message"] == "\xEF\xBF\xBD");
}

TEST_CASE("an outcome as a line of JSON, and as words") {
  output::Outcome outcome;
  outcome.file = "q.ini";
  outcome.id = "Q-1";
  outcome.revision = "A";
  outcome.date = "2026-01-02";
  outcome.stem = "Q-1_rA_2026-01-02";
  outcome.status = output::Status::issued;
  outcome.verdict = calc::Verdict::conditional;
  CHECK(output::outcome_line(outcome) == "issued conditional Q-1_rA_2026-01-02\n");
  const Json json = Json::parse(output::outcome_json(outcome));
  CHECK(json["files"]["json"] == "Q-1_rA_2026-01-02.json");
  CHECK(json["index"] == 1);
  output::Outcome failed;
  failed.file = "q\x1B.ini";
  failed.status = output::Status::failed;
  CHECK(output::outcome_line(failed) == "failed - q\\x1B.ini\n");
  CHECK(Json::parse(output::outcome_json(failed))["files"].is_null());
  CHECK(Json::parse(output::outcome_json(failed))["id"].is_null());
}

}  // namespace
