#include <doctest/doctest.h>

#include <string>

#include "calc/codes.h"
#include "output/json.h"
#include "output/overview_csv.h"
#include "output/overview_page.h"
#include "output/overview_row.h"
#include "tests/output/support/desk.h"
#include "tests/output/support/hand_made.h"

namespace {

using output::OverviewPage;
using output::OverviewRow;

OverviewRow row(const std::string& id, const std::string& revision, const std::string& date) {
  OverviewRow made;
  made.stem = id + "_r" + revision + "_" + date;
  made.id = id;
  made.revision = revision;
  made.date = date;
  made.title = "Lids";
  made.verdict = "feasible";
  made.heads = {"H-1"};
  made.heads_total = 4;
  made.capital = 12345.5;
  made.ownership = 99999;
  made.currency = "EUR";
  made.unpriced = 1;
  made.lead_time_days = 70;
  made.questions = {{"q_viewing", "image.viewing_distance"}, {"q_none_such", ""}};
  return made;
}

bool has(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

const output::Templates& templates() {
  static const output::Templates made;
  return made;
}

TEST_CASE("a row of the table of figures") {
  CHECK(output::overview_csv_record(row("A", "B", "2026-01-02")) ==
        "A,B,2026-01-02,Lids,,feasible,H-1,4,12345.50,99999.00,EUR,1,70,2,A_rB_2026-01-02.pdf\r\n");
  OverviewRow empty;
  empty.stem = "x";
  empty.id = "=1+1";
  CHECK(output::overview_csv_record(empty) == "'=1+1,,,,,,,,,,,,,0,x.pdf\r\n");
}

TEST_CASE(
    "the latest issue of a request is the one of the highest revision, then of the last day") {
  const OverviewRow older = row("A", "A", "2026-03-01"), newer = row("A", "B", "2026-01-01"),
                    newest = row("A", "B", "2026-02-01"), other = row("B", "A", "2025-01-01");
  for (const bool backward : {false, true}) {
    std::vector<OverviewRow> rows{older, newer, newest, other};
    if (backward) rows = {other, newest, newer, older};
    OverviewPage page(templates());
    for (const OverviewRow& one : rows) page.count(one);
    CHECK(has(page.row(newest), "data-state=\"latest\""));
    CHECK(has(page.row(other), "data-state=\"latest\""));
    CHECK(has(page.row(newer), "earlier issue"));
    CHECK(has(page.row(older), "data-state=\"earlier\""));
    CHECK(has(page.head(), "2 requests, 4 issues"));
    CHECK(has(page.foot(),
              "24\xE2\x80\xAF"
              "691"));  // 2 x 12345.5, each request once
  }
}

TEST_CASE("what is hostile in a name is text") {
  OverviewRow hostile = row("<b>\"'&", "A", "2026-01-02");
  hostile.title = "</script><script>alert(1)</script>\x01\xFF";
  hostile.customer = "{{ROWS}}";
  hostile.heads = {"<img src=x>"};
  hostile.verdict = "\" onclick=\"x";
  OverviewPage page(templates());
  page.count(hostile);
  const std::string text = page.head() + page.row(hostile) + page.foot();
  CHECK_FALSE(has(text, "<script>alert"));
  CHECK_FALSE(has(text, "<img"));
  CHECK_FALSE(has(text, "\" onclick"));
  CHECK(has(text, "&lt;b&gt;&quot;&#39;&amp;"));
  CHECK(has(text, "{{ROWS}}"));
}

TEST_CASE("a question whose words are not known shows its code") {
  OverviewPage page(templates());
  const OverviewRow one = row("A", "A", "2026-01-02");
  page.count(one);
  CHECK(has(page.row(one), "q_none_such"));
  CHECK(has(page.row(one), "From which distance"));
  CHECK(has(page.foot(), "q_none_such"));
}

TEST_CASE("a question of one kind is counted and shown once, with all the names it is asked of") {
  OverviewPage page(templates());
  OverviewRow one = row("A", "A", "2026-01-02");
  one.questions = {{"q_viscosity", "ink.a.viscosity"},
                   {"q_viewing", "image.viewing_distance"},
                   {"q_viscosity", "ink.b.viscosity"}};
  page.count(one);
  CHECK(has(output::overview_csv_record(one), ",70,2,"));
  CHECK(has(page.row(one), "data-open=\"2\""));
  CHECK(has(page.row(one), "2 open"));
  CHECK(has(page.row(one), "a, b"));
}

TEST_CASE("every question has words in the overview") {
  OverviewPage page(templates());
  OverviewRow one = row("A", "A", "2026-01-02");
  one.questions.clear();
  for (const std::string_view code : calc::question_codes()) {
    one.questions.push_back({std::string(code), "ink.a.viscosity"});
  }
  page.count(one);
  for (const std::string& text : {page.row(one), page.foot()}) {
    for (const std::string_view code : calc::question_codes()) {
      CAPTURE(code);
      CHECK_FALSE(has(text, ">" + std::string(code) + "<"));
    }
  }
}

TEST_CASE("only an answer with a station has a parts list to open") {
  OverviewPage page(templates());
  OverviewRow one = row("A", "A", "2026-01-02");
  CHECK(has(page.row(one), "A_rA_2026-01-02.bom.csv"));
  one.heads_total.reset();
  CHECK_FALSE(has(page.row(one), ".bom.csv"));
}

TEST_CASE("a specification and the file made of it give the same row and content") {
  output::JsonFacts facts{"1", "ff", output::FileDigest{"a", "b"}, output::FileDigest{"c", "d"}};
  for (const calc::Specification& made : {hand_made::feasible().spec, calc::Specification()}) {
    const auto read = output::read_issued(output::write_json(made, facts));
    const output::WrittenJson written = output::write_issue(made, facts);
    REQUIRE(read.has_value());
    CHECK(read->row == written.said.row);
    CHECK(read->content == written.said.content);
    CHECK(read->content == output::issued_json(made, {}).content);
    CHECK(output::overview_row(read->row).id == made.id);
  }
  CHECK_THROWS(output::overview_row("[1]"));
}

TEST_CASE("the overview says of an empty total nothing") {
  OverviewPage page(templates());
  OverviewRow one = row("A", "A", "2026-01-02");
  one.capital.reset();
  one.questions.clear();
  page.count(one);
  CHECK_FALSE(has(page.foot(), "Questions still open"));
  CHECK_FALSE(has(page.foot(), "<th scope=\"row\">EUR"));
}

}  // namespace
