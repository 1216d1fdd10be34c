/// What no document can be painted of.
#include <doctest/doctest.h>

#include <functional>
#include <limits>
#include <stdexcept>
#include <string>
#include <variant>
#include <vector>

#include "output/paint.h"
#include "tests/output/support/hard_document.h"

namespace {

using output::DisplayList;
using output::Fonts;
using output::Path;
using output::PathStep;
using output::Stroke;
using output::TextRun;

const Fonts& shared_fonts() {
  static const Fonts fonts(support::cjk_face());
  return fonts;
}

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

/// A change to the hard document that makes it one nobody can paint.
struct Row {
  const char* name;
  std::function<void(DisplayList&)> change;
};

std::function<void(DisplayList&)> text(const std::function<void(TextRun&)>& change) {
  return [change](DisplayList& list) { change(std::get<TextRun>(list.pages[0].items[0])); };
}

std::function<void(DisplayList&)> path(const std::function<void(Path&)>& change) {
  return [change](DisplayList& list) {
    Path outline;
    outline.steps = {{PathStep::Verb::move, {10, 10}, {}, {}},
                     {PathStep::Verb::line, {20, 20}, {}, {}}};
    outline.stroke = Stroke{};
    change(outline);
    list.pages[0].items.emplace_back(outline);
  };
}

std::function<void(DisplayList&)> link(const output::Link& added) {
  return [added](DisplayList& list) { list.pages[0].items.emplace_back(added); };
}

std::vector<Row> document_rows() {
  return {{"no pages", [](DisplayList& l) { l.pages.clear(); }},
          {"page too small", [](DisplayList& l) { l.pages[0].width = 2; }},
          {"page too large", [](DisplayList& l) { l.pages[0].height = 14401; }},
          {"page nan", [](DisplayList& l) { l.pages[0].height = nan; }},
          {"title bad", [](DisplayList& l) { l.info.title = "\xFF"; }},
          {"title too long", [](DisplayList& l) { l.info.title.assign(70000, 'a'); }},
          {"date bad", [](DisplayList& l) { l.info.date = "yesterday"; }}};
}

std::vector<Row> text_rows() {
  return {{"text x nan", text([](TextRun& r) { r.x = nan; })},
          {"text y infinite", text([](TextRun& r) { r.y = -infinity; })},
          {"text far away", text([](TextRun& r) { r.x = 32768; })},
          {"rotation nan", text([](TextRun& r) { r.rotation = nan; })},
          {"size zero", text([](TextRun& r) { r.size = 0; })},
          {"size nan", text([](TextRun& r) { r.size = nan; })},
          {"size too large", text([](TextRun& r) { r.size = 601; })},
          {"text too long", text([](TextRun& r) { r.text.assign(65536, 'a'); })},
          {"newline", text([](TextRun& r) { r.text = "a\nb"; })},
          {"tab", text([](TextRun& r) { r.text = "\t"; })},
          {"nul", text([](TextRun& r) { r.text = std::string("a\0b", 3); })},
          {"c1 control", text([](TextRun& r) { r.text = "\u0085"; })},
          {"missing glyph", text([](TextRun& r) { r.text = "\u5370"; })},
          {"above U+FFFF", text([](TextRun& r) { r.text = "\U0001F4A7"; })},
          {"bad utf-8", text([](TextRun& r) { r.text = "\xFF"; })},
          {"cut utf-8", text([](TextRun& r) { r.text = "\xC5"; })}};
}

std::vector<Row> path_rows() {
  return {{"path nan", path([](Path& p) { p.steps[1].a.y = nan; })},
          {"path far away", path([](Path& p) { p.steps[1].a.y = -40000; })},
          {"path without move", path([](Path& p) { p.steps.erase(p.steps.begin()); })},
          {"stroke negative", path([](Path& p) { p.stroke->width = -1; })},
          {"stroke nan", path([](Path& p) { p.stroke->width = nan; })},
          {"dash odd", path([](Path& p) { p.stroke->dash = {3}; })},
          {"dash zero", path([](Path& p) {
             p.stroke->dash = {3, 0};
           })},
          {"dash broken", path([](Path& p) {
             p.stroke->dash = {3, 1.5};
           })},
          {"dash nan", path([](Path& p) {
             p.stroke->dash = {3, nan};
           })},
          {"dash too long", path([](Path& p) { p.stroke->dash.assign(10, 1); })}};
}

std::vector<Row> place_rows() {
  return {{"link nowhere", link({1, 1, 1, 1, "?"})},
          {"link nan", link({nan, 1, 1, 1, "one"})},
          {"link inside out", link({1, 1, -1, 1, "one"})},
          {"anchor twice", [](DisplayList& l) { l.anchors.push_back(l.anchors[0]); }},
          {"anchor on no page", [](DisplayList& l) { l.anchors[0].page = 2; }},
          {"anchor before page 0", [](DisplayList& l) { l.anchors[0].page = -1; }},
          {"anchor nan", [](DisplayList& l) { l.anchors[0].y = nan; }},
          {"bookmark nowhere", [](DisplayList& l) { l.bookmarks[0].anchor = "?"; }},
          {"bookmark level 0", [](DisplayList& l) { l.bookmarks[0].level = 0; }},
          {"bookmark starts deep", [](DisplayList& l) { l.bookmarks[0].level = 2; }},
          {"bookmark skips", [](DisplayList& l) { l.bookmarks[1].level = 3; }},
          {"bookmark bad title", [](DisplayList& l) { l.bookmarks[1].title = "a\tb"; }}};
}

/// The names of the changes that were not refused.
std::vector<std::string> painted(const std::vector<Row>& rows) {
  std::vector<std::string> names;
  for (const Row& row : rows) {
    DisplayList list = support::hard_document(shared_fonts());
    row.change(list);
    try {
      output::paint(list, shared_fonts());
      names.emplace_back(row.name);
    } catch (const std::invalid_argument&) {
      continue;
    }
  }
  return names;
}

}  // namespace

TEST_CASE("paint: what cannot be painted is refused") {
  const std::vector<std::string> none;
  CHECK(painted({{"the hard document itself", [](DisplayList&) {}}}).size() == 1);
  CHECK(painted(document_rows()) == none);
  CHECK(painted(text_rows()) == none);
  CHECK(painted(path_rows()) == none);
  CHECK(painted(place_rows()) == none);
  const DisplayList list = support::hard_document(shared_fonts());
  CHECK_THROWS_AS(output::paint(list, Fonts()), std::invalid_argument);  // has Han, no face for it
}
