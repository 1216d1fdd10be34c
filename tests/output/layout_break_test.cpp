// Where the pages of a document break.
#include <doctest/doctest.h>

#include <algorithm>

#include "layout_support.h"
#include "output/layout.h"

using layout_test::body_boxes;
using layout_test::filling;
using layout_test::page_of;
using layout_test::paragraph;
using layout_test::set;
using output::Box;
using output::Page;

TEST_CASE("layout: a heading never stands alone at the foot, two lines follow it") {
  bool turned = false;
  for (int lines = 25; lines < 50; ++lines) {
    CAPTURE(lines);
    const auto list =
        set(filling(lines) + "<section title='Heading'>" + paragraph(60) + "</section>");
    const Page& page = list.pages.at(static_cast<std::size_t>(page_of(list, "Heading")));
    const auto boxes = body_boxes(page);
    const auto heading = std::find_if(
        boxes.begin(), boxes.end(), [](const Box& box) { return box.kind == Box::Kind::heading; });
    CHECK(boxes.end() - heading >= 3);
    turned = turned || page_of(list, "Heading") == 1;
  }
  CHECK(turned);
}

TEST_CASE("layout: a heading before a table stands with its head and one row") {
  for (int lines = 25; lines < 50; ++lines) {
    CAPTURE(lines);
    const auto list = set(filling(lines) +
                          "<section title='Heading'><table columns='l:*'><head><cell>Head</cell>"
                          "</head><row><cell>First</cell></row><row><cell>Second</cell></row>"
                          "</table></section>");
    CHECK(page_of(list, "Heading") == page_of(list, "Head"));
    CHECK(page_of(list, "Heading") == page_of(list, "First"));
  }
}

TEST_CASE("layout: at least two lines of a paragraph stand at the foot and at the top") {
  bool broken = false;
  for (int lines = 20; lines < 50; ++lines) {
    for (const int count : {35, 50, 65}) {
      CAPTURE(lines);
      const auto list = set(filling(lines) + paragraph(count) + "<section title='Heading'>" +
                            paragraph(120) + "</section>");
      if (page_of(list, "Heading") != 1) continue;
      const auto over_page = body_boxes(list.pages[1]);
      const auto heading = std::find_if(over_page.begin(), over_page.end(), [](const Box& box) {
        return box.kind == Box::Kind::heading;
      });
      const auto over = heading - over_page.begin();
      const auto there = static_cast<int>(body_boxes(list.pages[0]).size()) - lines;
      if (over == 0 || there <= 0) continue;
      CHECK(there >= 2);
      CHECK(over >= 2);
      broken = true;
    }
  }
  CHECK(broken);
}

TEST_CASE("layout: the last page before a break and the last of all are a quarter full") {
  bool spilt = false;
  for (int lines = 25; lines < 60; ++lines) {
    CAPTURE(lines);
    for (const std::string& end : {"<newpage/>" + paragraph(120), std::string()}) {
      const auto list = set(filling(lines) + end);
      const std::size_t pages = list.pages.size() - (end.empty() ? 0 : 1);
      if (pages < 2) continue;
      const auto boxes = body_boxes(list.pages.at(pages - 1));
      const output::PageStyle style;
      const double body = style.page_height - style.margin_top - style.margin_bottom;
      CHECK(boxes.back().y + boxes.back().height - boxes.front().y >= body / 4 - 12);
      spilt = true;
    }
  }
  CHECK(spilt);
}

TEST_CASE("layout: a short text between a heading and a table is not broken") {
  bool turned = false;
  for (int lines = 25; lines < 50; ++lines) {
    CAPTURE(lines);
    const auto list = set(filling(lines) + "<section title='Heading'>" + paragraph(60) +
                          "<table columns='l:*'><head><cell>Head</cell></head>"
                          "<row><cell>First</cell></row></table></section>");
    const Page& page = list.pages.at(static_cast<std::size_t>(page_of(list, "Heading")));
    const auto boxes = body_boxes(page);
    const auto heading = std::find_if(
        boxes.begin(), boxes.end(), [](const Box& box) { return box.kind == Box::Kind::heading; });
    const auto words = std::count_if(heading, boxes.end(),
                                     [](const Box& box) { return box.kind == Box::Kind::text; });
    CHECK(words > 2);
    CHECK(words <= 6);
    CHECK(page_of(list, "Heading") == page_of(list, "First"));
    turned = turned || page_of(list, "Heading") == 1;
  }
  CHECK(turned);
}

TEST_CASE("layout: a page left half empty is closed up where that lets a figure stand on it") {
  const auto figure = [](int height) {
    return "<figure><drawing width='50' height='" + std::to_string(height) +
           "'><label x='20' y='30'>mid</label></drawing></figure>";
  };
  const auto step = [](const output::DisplayList& list) {
    const auto boxes = body_boxes(list.pages.at(0));
    return boxes.at(1).y - boxes.at(0).y;
  };
  const auto plain = set(filling(20));
  const double usual = step(plain);
  const double room = usual - body_boxes(plain.pages.at(0)).at(0).height;
  bool closed = false, turned = false;
  for (int height = 80; height < 170; ++height) {  // more than the quarter a last page shall have
    CAPTURE(height);
    const auto list = set(filling(20) + figure(height));
    if (page_of(list, "mid") > 0) {
      CHECK(step(list) == doctest::Approx(usual));
      turned = true;
      continue;
    }
    CHECK_FALSE(turned);
    CHECK(step(list) >= usual - 0.4 * room - 1e-6);
    closed = closed || step(list) < usual - 0.01;
  }
  CHECK(closed);
  CHECK(turned);
  const auto full = set(filling(32) + figure(100));  // four fifths of a page need no more
  CHECK(page_of(full, "mid") == 1);
  CHECK(step(full) == doctest::Approx(usual));
}

TEST_CASE("layout: a note to a table stands on the page of its last row") {
  bool turned = false;
  for (int lines = 25; lines < 50; ++lines) {
    CAPTURE(lines);
    std::string rows = "<row><cell>First</cell></row>";
    for (int i = 0; i < 6; ++i) rows += "<row><cell>Next</cell></row>";
    const auto list =
        set(filling(lines) + "<table columns='l:*'>" + rows +
            "<row><cell>Last</cell></row></table><p after='yes'>Note</p>" + paragraph(200));
    CHECK(page_of(list, "Note") == page_of(list, "Last"));
    turned = turned || page_of(list, "First") != page_of(list, "Last");
  }
  CHECK(turned);
}
