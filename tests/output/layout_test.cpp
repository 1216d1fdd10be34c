#include "output/layout.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>

#include "layout_support.h"

using layout_test::body_boxes;
using layout_test::faults;
using layout_test::filling;
using layout_test::page_of;
using layout_test::paragraph;
using layout_test::run_of;
using layout_test::runs;
using layout_test::set;
using layout_test::text;
using layout_test::words;
using output::Box;
using output::MarkupError;
using output::Page;

namespace {

std::vector<output::Link> links(const Page& page) {
  std::vector<output::Link> found;
  for (const output::Item& item : page.items) {
    if (const auto* const link = std::get_if<output::Link>(&item)) found.push_back(*link);
  }
  return found;
}

bool is_fault(const std::string& blocks) {
  try {
    set(blocks);
  } catch (const MarkupError&) {
    return true;
  }
  return false;
}

std::size_t box_count(const Page& page, Box::Kind kind) {
  const auto boxes = body_boxes(page);
  return static_cast<std::size_t>(std::count_if(
      boxes.begin(), boxes.end(), [kind](const Box& box) { return box.kind == kind; }));
}

}  // namespace

TEST_CASE("layout: a figure stands in one piece with its caption, scaled to its column") {
  const auto list =
      set("<figure caption='Below' id='f'><drawing width='300' height='100'><rect x='0' y='0' "
          "width='300' height='100'/><label x='150' y='50' anchor='middle'>mid</label></drawing>"
          "</figure>");
  const Page& page = list.pages.at(0);
  const Box box = body_boxes(page).at(0);
  CHECK(box.kind == Box::Kind::figure);
  const auto caption = run_of(page, "Below");
  CHECK(caption.y > box.y + box.width / 3);
  CHECK(caption.y < box.y + box.height);
  const auto mid = run_of(page, "mid");
  CHECK(mid.x + mid.width / 2 == doctest::Approx(box.x + box.width / 2));
  CHECK(mid.y == doctest::Approx(box.y + box.width / 6));
}

TEST_CASE("layout: a rotated label turns about its anchor") {
  const auto list =
      set("<figure><drawing width='50' height='50'><label x='20' y='30' rotate='90' "
          "anchor='end'>up<sub>2</sub></label></drawing></figure>");
  const auto up = run_of(list.pages.at(0), "up");
  const auto two = run_of(list.pages.at(0), "2");
  const double mm = 72 / 25.4;
  CHECK(up.rotation == 90);
  CHECK(up.x == doctest::Approx(54 + 20 * mm));
  CHECK(up.y == doctest::Approx(48 + 30 * mm + up.width + two.width));
  CHECK(two.y == doctest::Approx(up.y - up.width));
  CHECK(two.x > up.x);  // below the line of writing, which now runs upwards
}

TEST_CASE("layout: malformed drawings are faults") {
  for (const char* inner :
       {"<line x1='a' y1='0' x2='1' y2='1'/>", "<rect x='0' y='0' width='1' height='inf'/>",
        "<circle x='0' y='0' radius='1' fill='red'/>", "<poly points='1,2'/>",
        "<poly points='1,2 3'/>", "<line x1='0' y1='0' x2='1' y2='1' dash='1'/>",
        "<line x1='0' y1='0' x2='1' y2='1' dash='1 0.5'/>", "<label x='0' y='0' anchor='top'/>"}) {
    CAPTURE(inner);
    CHECK(is_fault("<figure><drawing width='9' height='9'>" + std::string(inner) +
                   "</drawing></figure>"));
  }
  CHECK(is_fault("<figure/>"));
  CHECK(is_fault("<figure><drawing width='0' height='9'/></figure>"));
  CHECK_FALSE(is_fault("<figure><drawing width='9' height='9'/></figure>"));
}

TEST_CASE("layout: characters without a face are printed by number and reported once each") {
  std::vector<char32_t> unprintable;
  const auto node =
      output::parse_markup("<document title='\u05D0'><p>\u05D0 \u05D1</p><p>\u05D0</p></document>");
  const auto list = output::lay_out(node, layout_test::fonts(), {}, unprintable);
  CHECK(unprintable == std::vector<char32_t>{0x5D0, 0x5D1});
  CHECK(text(list.pages.at(0)).find("[U+05D0] [U+05D1]") != std::string::npos);
}

TEST_CASE("layout: contents name the page each section stands on and lead there") {
  std::string sections;
  for (int i = 1; i <= 9; ++i) {
    sections += "<section id='s" + std::to_string(i) + "' title='Part " +
                std::string(1, char(64 + i)) + "'>" + paragraph(300) + "</section>";
  }
  const auto list = set("<contents title='Contents'/>" + sections);
  REQUIRE(list.pages.size() > 3);
  std::map<std::string, int> pages;
  for (const auto& anchor : list.anchors) pages[anchor.name] = anchor.page + 1;
  const auto first = runs(list.pages[0]);
  for (int i = 1; i <= 9; ++i) {
    const auto entry = run_of(list.pages[0], "Part " + std::string(1, char(64 + i)));
    const int page = pages.at("s" + std::to_string(i));
    CHECK(std::any_of(first.begin(), first.end(), [&](const output::TextRun& run) {
      return run.y == entry.y && run.x > 400 && run.text == std::to_string(page);
    }));
    const auto found = links(list.pages[0]);
    CHECK(std::any_of(found.begin(), found.end(), [&](const output::Link& link) {
      return link.anchor == "s" + std::to_string(i) && link.y < entry.y &&
             link.y + link.height > entry.y;
    }));
  }
  CHECK(page_of(list, "Part I") == 0);
  CHECK(list.bookmarks.size() == 10);
}

TEST_CASE("layout: sections are numbered by level, bookmarks follow") {
  const auto list =
      set("<section title='A'><section title='B'/><section title='C'><section title='D'/></section>"
          "</section><section title='E' id='e'><section title='F'>" +
          paragraph(3) + "</section></section>");
  std::vector<std::string> titles;
  std::vector<int> levels;
  for (const auto& bookmark : list.bookmarks) {
    titles.push_back(bookmark.title);
    levels.push_back(bookmark.level);
  }
  CHECK(titles == std::vector<std::string>{"1 A", "1.1 B", "1.2 C", "1.2.1 D", "2 E", "2.1 F"});
  CHECK(levels == std::vector<int>{1, 2, 2, 3, 1, 2});
  CHECK(list.bookmarks[4].anchor == "e");
}

TEST_CASE("layout: links resolve, lead in the accent colour, and must have an anchor") {
  const auto list = set("<p>see <a to='x'>there</a></p><newpage/><p id='x'>here</p>");
  CHECK(faults(list).empty());
  const auto there = run_of(list.pages.at(0), "there");
  CHECK(there.colour == output::PageStyle().accent);
  const auto found = links(list.pages[0]);
  REQUIRE(found.size() == 1);
  CHECK(found[0].x == there.x);
  CHECK(found[0].width == there.width);
  REQUIRE(list.anchors.size() == 1);
  CHECK(list.anchors[0].page == 1);
  CHECK_THROWS_WITH_AS(set("<p><a to='y'>z</a></p>"), "markup: link without its anchor: \"y\"",
                       MarkupError);
  CHECK_THROWS_WITH_AS(set("<p id='q'/><p id='q'/>"), "markup: id twice: q", MarkupError);
}

TEST_CASE("layout: keys stand in the margin beside the first line, known ones are links") {
  const auto list = set("<p key='T1 S9'>" + words(40) + "</p><p id='S9'>x</p>");
  const Page& page = list.pages.at(0);
  const output::PageStyle style;
  const double margin = style.page_width - style.margin_right - style.key_column;
  const auto plain = run_of(page, "T1");
  CHECK(plain.x == doctest::Approx(margin));
  CHECK(plain.y == doctest::Approx(runs(page).at(0).y));
  CHECK(run_of(page, "S9").colour == style.accent);
  REQUIRE(links(page).size() == 1);
  CHECK(links(page)[0].anchor == "S9");
}

TEST_CASE("layout: a margin key is not broken at a hyphen within") {
  const auto list = set("<p key='pencil-barrels.ini:42 barrel-heads.xml:32'>x</p>");
  std::set<std::string> keys;
  for (const output::TextRun& run : runs(list.pages[0])) keys.insert(run.text);
  for (const char* whole : {"pencil-barrels.ini:42", "barrel-heads.xml:32"}) {
    CAPTURE(whole);
    CHECK(std::any_of(keys.begin(), keys.end(), [&](const std::string& key) {
      return key.find(whole) != std::string::npos;
    }));
  }
}

TEST_CASE("layout: many keys push those of the next block down, without overlap") {
  std::string many;
  for (int i = 0; i < 60; ++i) many += "K" + std::to_string(i) + " ";
  std::string blocks;
  for (int i = 0; i < 30; ++i) blocks += "<p key='" + many + "'>one line</p>";
  const auto list =
      set(blocks + "<table wide='yes' columns='l:*'><row><cell>x</cell></row></table>");
  CHECK(faults(list).empty());
  std::size_t keys = 0;
  for (const Page& page : list.pages) {
    for (const auto& run : runs(page)) {
      keys += static_cast<std::size_t>(std::count(run.text.begin(), run.text.end(), 'K'));
    }
  }
  CHECK(keys == 30 * 60);
}

TEST_CASE("layout: keys of one block that a page cannot hold go on over pages") {
  std::string many;
  for (int i = 0; i < 3000; ++i) many += "K" + std::to_string(i) + " ";
  const auto list = set("<p key='" + many + "'>one line</p><p>next</p>");
  CHECK(faults(list).empty());
  CHECK(page_of(list, "K0") == 0);
  CHECK(std::count_if(list.pages.begin(), list.pages.end(), [](const Page& page) {
          return text(page).find("K2999") != std::string::npos;
        }) == 1);
}

TEST_CASE("layout: the title block stands on every sheet with its number") {
  const auto list =
      set("<titleblock><cell name='owner' label='Legal owner'>Maker</cell><cell name='status'>"
          "PRELIMINARY</cell><cell name='sheet' label='Sheet'/></titleblock>" +
          paragraph(900) + paragraph(900));
  const std::size_t count = list.pages.size();
  REQUIRE(count > 2);
  for (std::size_t i = 0; i < count; ++i) {
    const Page& page = list.pages[i];
    run_of(page, std::to_string(i + 1) + " / " + std::to_string(count));
    CHECK(run_of(page, "PRELIMINARY").face == output::Face::text_bold);
    CHECK(run_of(page, "Legal owner").size < run_of(page, "Maker").size);
    CHECK(page.boxes.back().kind == Box::Kind::furniture);
  }
  CHECK(faults(list).empty());
}

TEST_CASE("layout: a value too long for its cell is made smaller, then cut short") {
  const std::string longish = words(90);
  const auto list = set("<titleblock><cell name='number'>N</cell><cell name='title'>" + longish +
                        "</cell></titleblock><p>x</p>");
  CHECK(faults(list).empty());
  const auto cut = run_of(list.pages.at(0), "…");
  CHECK(cut.y > list.pages[0].height - 62);
  CHECK(cut.size < run_of(list.pages[0], "N").size);
}

TEST_CASE("layout: a title block cell needs a name, and a span within its row") {
  CHECK_THROWS_AS(set("<titleblock><cell>x</cell></titleblock>"), MarkupError);
  CHECK_THROWS_AS(set("<titleblock><cell name='a' span='25'/></titleblock>"), MarkupError);
}

TEST_CASE("layout: page one opens with title and customer") {
  const auto list =
      set("<front><p>answer</p></front><contents title='Contents'/>"
          "<section title='One'><p>x</p></section>",
          "title='The station' customer='For them' author='Me' date='2026-01-02'");
  const Page& page = list.pages.at(0);
  CHECK(run_of(page, "The station").size > 2 * run_of(page, "answer").size);
  CHECK(run_of(page, "For them").y < run_of(page, "answer").y);
  CHECK(run_of(page, "answer").y < run_of(page, "Contents").y);
  CHECK(list.info.title == "The station");
  CHECK(list.info.author == "Me");
  CHECK(list.info.date == "2026-01-02");
}

TEST_CASE("layout: new pages are made when asked, empty ones never") {
  const auto list = set("<newpage/><p>a</p><newpage/><newpage/><p>b</p><newpage/>");
  CHECK(list.pages.size() == 2);
  CHECK(page_of(list, "b") == 1);
  CHECK(faults(list).empty());
}

TEST_CASE("layout: the ground of a note lies under its text, notes differ in more than colour") {
  std::map<std::string, std::size_t> paths;
  for (const char* kind : {"info", "caution", "warning"}) {
    const auto list = set("<note title='Word' kind='" + std::string(kind) +
                          "'><p>text</p><list>"
                          "<item>point</item></list></note>");
    const Page& page = list.pages.at(0);
    const auto* const ground = std::get_if<output::Path>(&page.items.at(0));
    REQUIRE(ground != nullptr);
    CHECK(ground->fill == output::PageStyle().shade);
    const double top = ground->steps.at(0).a.y, bottom = ground->steps.at(2).a.y;
    CHECK(top < run_of(page, "Word").y);
    CHECK(bottom > run_of(page, "point").y);
    const auto* const bar = std::get_if<output::Path>(&page.items.at(1));
    REQUIRE(bar != nullptr);
    paths[kind] = static_cast<std::size_t>(10 * (bar->steps.at(1).a.x - bar->steps.at(0).a.x));
  }
  CHECK(paths["info"] < paths["caution"]);
  CHECK(paths["caution"] < paths["warning"]);
  CHECK_THROWS_AS(set("<note kind='danger'>x</note>"), MarkupError);
}

TEST_CASE("layout: a note that breaks has a ground on both pages") {
  std::string inner;
  for (int i = 0; i < 12; ++i) inner += paragraph(70);
  const auto list = set(filling(20) + "<note title='Word'>" + inner + "</note>");
  REQUIRE(list.pages.size() >= 2);
  CHECK(faults(list).empty());
  for (std::size_t i = 0; i < 2; ++i) {
    const auto& items = list.pages[i].items;
    CHECK(std::any_of(items.begin(), items.end(), [](const output::Item& item) {
      const auto* const path = std::get_if<output::Path>(&item);
      return path != nullptr && path->fill == output::PageStyle().shade;
    }));
  }
}

TEST_CASE("layout: superscripts are smaller and higher, subscripts smaller and lower") {
  const auto list = set("<p>x<sub>low</sub>y<sup>high</sup><code>mono</code><b>B</b><i>I</i></p>");
  const Page& page = list.pages.at(0);
  const auto base = run_of(page, "x");
  CHECK(run_of(page, "low").y > base.y);
  CHECK(run_of(page, "high").y < base.y);
  CHECK(run_of(page, "low").size < base.size);
  CHECK(run_of(page, "mono").face == output::Face::mono);
  CHECK(run_of(page, "B").face == output::Face::text_bold);
  CHECK(run_of(page, "I").face == output::Face::text_italic);
}

TEST_CASE("layout: items are numbered or have a bullet, nested ones are indented") {
  const auto list =
      set("<list ordered='yes'><item>first</item><item>second<list><item>inner"
          "</item></list></item></list>");
  const Page& page = list.pages.at(0);
  CHECK(run_of(page, "1.").y == run_of(page, "first").y);
  CHECK(run_of(page, "2.").y == run_of(page, "second").y);
  CHECK(run_of(page, "inner").x > run_of(page, "second").x);
  CHECK(run_of(page, "\u2022").y == run_of(page, "inner").y);
  CHECK(box_count(page, Box::Kind::text) == 3);
}

TEST_CASE("layout: an empty document is one sheet") {
  const auto list = set("");
  CHECK(list.pages.size() == 1);
  CHECK(run_of(list.pages[0], "1 / 1").x > 500);
}

TEST_CASE("layout: equal documents give equal pages") {
  const auto one = set(paragraph(300) + "<contents/><section title='A'><p>x</p></section>");
  const auto other = set(paragraph(300) + "<contents/><section title='A'><p>x</p></section>");
  REQUIRE(one.pages.size() == other.pages.size());
  for (std::size_t i = 0; i < one.pages.size(); ++i) {
    CHECK(text(one.pages[i]) == text(other.pages[i]));
  }
}
