#include <doctest/doctest.h>

#include "layout_support.h"
#include "output/table_columns.h"

using layout_test::run_of;
using layout_test::set;
using output::Box;
using output::MarkupError;

namespace {

constexpr double mm = 72 / 25.4;

std::string rows(int count, int words_in_cell) {
  std::string xml;
  for (int i = 0; i < count; ++i) {
    xml += "<row><cell>row " + std::to_string(i) + ".</cell><cell>" +
           layout_test::words(words_in_cell) + "</cell></row>";
  }
  return xml;
}

bool is_fault(std::string_view columns, double width) {
  try {
    output::parse_columns(columns, 0, width);
  } catch (const MarkupError&) {
    return true;
  }
  return false;
}

std::string table(const std::string& inner) {
  return "<table columns='l:30 l:*'><head><cell>Name</cell><cell>Meaning</cell></head>" + inner +
         "</table>";
}

}  // namespace

TEST_CASE("table: widths in mm and shares of the rest") {
  const auto columns = output::parse_columns("l:30 d:20 r:* c:2*", 10, 400);
  REQUIRE(columns.size() == 4);
  CHECK(columns[0].left == 10);
  CHECK(columns[3].right == doctest::Approx(410));
  const double share = (400 - 50 * mm) / 3;
  CHECK(columns[2].right - columns[1].right == doctest::Approx(share));
  CHECK(columns[3].left - columns[2].left == doctest::Approx(share));
  CHECK(columns[1].kind == output::ColumnKind::decimal);
}

TEST_CASE("table: columns wider than the page are narrowed together") {
  const auto columns = output::parse_columns("l:300 l:100", 0, 400);
  CHECK(columns[1].right == doctest::Approx(400));
  CHECK(columns[1].left - columns[0].right == doctest::Approx(11));
  CHECK(columns[0].right == doctest::Approx(300 - 5.5));
}

TEST_CASE("table: malformed columns are faults") {
  for (const char* text : {"", "x:3", "l", "l:", "l:-3", "l:3mm", "l:0*"}) {
    CAPTURE(text);
    CHECK(is_fault(text, 400));
  }
  CHECK(is_fault("l:1 l:1 l:1", 40));
  CHECK_FALSE(is_fault("l:10 d:10 l:*", 400));
}

TEST_CASE("table: decimal points stand under one another, units after the numbers too") {
  const auto list =
      set("<table columns='l:20 d:60'><head><cell/><cell>Value</cell></head>"
          "<row><cell>a</cell><cell>7</cell></row>"
          "<row><cell>b</cell><cell>1234.5\u00A0mm</cell></row>"
          "<row><cell>c</cell><cell>\u22120.25\u00A0m/min</cell></row>"
          "<row><cell>d</cell><cell>30..60\u00A0mm</cell></row></table>");
  const output::Page& page = list.pages.at(0);
  const auto width = [](std::u32string_view text) {
    double sum = 0;
    for (const char32_t c : text) sum += layout_test::fonts().advance(output::Face::text, c);
    return sum * 9.6 * 0.9 / 1000;
  };
  const double point = run_of(page, "1234.5").x + width(U"1234");
  CHECK(run_of(page, "7").x + width(U"7") == doctest::Approx(point));
  CHECK(run_of(page, "\u22120.25").x + width(U"\u22120") == doctest::Approx(point));
  CHECK(run_of(page, "30..60").x + width(U"30") == doctest::Approx(point));
}

TEST_CASE("table: groups of digits count as one number before the point") {
  std::vector<char32_t> unprintable;
  output::Measurer measurer(layout_test::fonts(), unprintable);
  output::TextFlow flow(measurer);
  const auto split = [&flow](std::string_view text) {
    flow.open();
    flow.append(text, {output::Face::text, 10, 0, {}, nullptr});
    return output::split_at_point(flow, flow.close());
  };
  const double digit = 5.56;  // all digits of the text face are 556/1000 em wide
  CHECK(split("12\u202F345.50").before == doctest::Approx(5 * digit + 1.7));
  CHECK(split("12\u202F345.50").after == doctest::Approx(2 * digit + 2.78));
  CHECK_FALSE(split("on request").is_number);
}

TEST_CASE("table: the head stands again after each page break") {
  const auto list = set(table(rows(120, 6)));
  REQUIRE(list.pages.size() > 2);
  for (const output::Page& page : list.pages) {
    const auto head = run_of(page, "Meaning");
    CHECK(head.y == run_of(list.pages[1], "Meaning").y);
    CHECK(run_of(page, "row ").y > head.y);
  }
}

TEST_CASE("table: no row is split") {
  const auto list = set(table(rows(40, 60)));
  int found = 0;
  for (const output::Page& page : list.pages) {
    for (const Box& box : layout_test::body_boxes(page)) {
      if (box.kind == Box::Kind::row && box.height > 20) ++found;
    }
  }
  CHECK(found == 40);
  CHECK(layout_test::faults(list).empty());
}

TEST_CASE("table: a row higher than a page goes on over pages, under its head") {
  const auto list = set(table(rows(1, 3000)));
  REQUIRE(list.pages.size() >= 3);
  CHECK(layout_test::faults(list).empty());
  for (const output::Page& page : list.pages) run_of(page, "Meaning");
}

TEST_CASE("table: a total is bold and stands with the row before it") {
  for (int count = 38; count < 52; ++count) {
    CAPTURE(count);
    const auto list =
        set(table(rows(count, 2) + "<row total='yes'><cell>Sum</cell><cell>9</cell></row>"));
    const output::Page& last = list.pages.back();
    CHECK(run_of(last, "Sum").face == output::Face::text_bold);
    run_of(last, "row " + std::to_string(count - 1) + ".");
  }
}

TEST_CASE("table: a row that asks for it stands with the next") {
  for (int count = 38; count < 52; ++count) {
    CAPTURE(count);
    const std::string pair =
        "<row keep='yes'><cell>Item</cell><cell/></row><row><cell>Serves</cell><cell/></row>";
    const auto list = set(table(rows(count, 2) + pair + rows(5, 2)));
    int together = 0;
    for (const output::Page& page : list.pages) {
      together += layout_test::has_run(page, "Item") && layout_test::has_run(page, "Serves");
    }
    CHECK(together == 1);
  }
}

TEST_CASE("table: no low row of several stands alone on a page") {
  for (int count = 38; count < 52; ++count) {
    CAPTURE(count);
    const output::Page last = set(table(rows(count, 2))).pages.back();
    if (layout_test::has_run(last, "row " + std::to_string(count - 1) + ".")) {
      CHECK(layout_test::has_run(last, "row " + std::to_string(count - 2) + "."));
    }
  }
}

TEST_CASE("table: a text before a table stands with the head of it") {
  for (int lines = 25; lines < 50; ++lines) {
    CAPTURE(lines);
    std::string before;
    for (int i = 0; i < lines; ++i) before += "<p>line</p>";
    const auto list = set(before + "<p>Announced</p>" + table(rows(1, 2)));
    for (const output::Page& page : list.pages) {
      CHECK(layout_test::has_run(page, "Announced") == layout_test::has_run(page, "row 0."));
    }
  }
}

TEST_CASE("table: rows that do not fit the columns are faults that name the row") {
  CHECK_THROWS_WITH_AS(set("<table id='t' columns='l:* l:*'><row><cell/></row></table>"),
                       "markup: <table id=\"t\"> row 1: fewer cells than columns", MarkupError);
  CHECK_THROWS_WITH_AS(set("<table columns='l:*'><row><cell/></row><row><cell/><cell/></row>"
                           "</table>"),
                       "markup: <table id=\"\"> row 2: more cells than columns", MarkupError);
  CHECK_THROWS_AS(set("<table columns='l:*'><row><cell span='1.5'/></row></table>"), MarkupError);
}

TEST_CASE("table: a cell may span columns, a wide table takes the margin column") {
  const auto list = set(
      "<table wide='yes' columns='l:* r:*'><row key='K1'><cell>left</cell><cell>right</cell></row>"
      "<row><cell span='2'>" +
      layout_test::words(14) + "</cell></row></table>");
  const output::Page& page = list.pages.at(0);
  const output::PageStyle style;
  const auto boxes = layout_test::body_boxes(page);
  CHECK(boxes.at(0).width ==
        doctest::Approx(style.page_width - style.margin_left - style.margin_right));
  CHECK(run_of(page, " K1").y == run_of(page, "left").y);
  CHECK(boxes.at(0).height == boxes.at(1).height);
}

TEST_CASE("table: a column too narrow for its widest word takes room from others") {
  auto columns = output::parse_columns("l:20 r:20 l:*", 0, 200);
  const double gap = columns[1].left - columns[0].right;
  const double wide = columns[0].right - columns[0].left + 11;
  output::make_room(columns, {wide, 10, 30});
  CHECK(columns[0].right - columns[0].left == doctest::Approx(wide));
  CHECK(columns[1].left - columns[0].right == doctest::Approx(gap));
  CHECK(columns[2].right == doctest::Approx(200));
}

TEST_CASE("table: room is given only as far as there is any") {
  auto columns = output::parse_columns("l:20 l:*", 0, 120);
  const double other = columns[1].right - columns[1].left;
  output::make_room(columns, {500, other - 5});
  CHECK(columns[1].right - columns[1].left == doctest::Approx(other - 5));
  CHECK(columns[1].right == doctest::Approx(120));
}

TEST_CASE("table: no word is broken where the columns have room for it") {
  const auto list =
      set("<table columns='l:12 l:*'><head><cell>Schlimmstenfalls</cell><cell>b</cell></head>"
          "<row><cell>c</cell><cell>d</cell></row></table>");
  CHECK(run_of(list.pages[0], "Schlimmstenfalls").text == "Schlimmstenfalls");
}

TEST_CASE("table: a row with several anchors is one place") {
  const auto list = set("<p><a to='c'>c</a></p>" +
                        table("<row id='a' also='b c'><cell>1</cell><cell>x</cell></row>"
                              "<row id='d'><cell>2</cell><cell>y</cell></row>"));
  REQUIRE(list.anchors.size() == 4);
  for (std::size_t i = 0; i < 3; ++i) {
    CHECK(list.anchors[i].name == std::string(1, static_cast<char>('a' + i)));
    CHECK(list.anchors[i].y == list.anchors[0].y);
  }
  CHECK(list.anchors[3].y > list.anchors[0].y);
  CHECK_THROWS_AS(set(table("<row id='a' also='a'><cell>1</cell><cell>x</cell></row>")),
                  MarkupError);
}
