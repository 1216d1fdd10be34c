#include "tests/output/support/hard_document.h"

#include <fstream>
#include <sstream>
#include <utility>

namespace support {
namespace {

using output::Colour;
using output::DisplayList;
using output::Face;
using output::Fonts;
using output::Item;
using output::Link;
using output::Page;
using output::Path;
using output::PathStep;
using output::Stroke;
using output::TextRun;

constexpr Colour blue{0x00, 0x72, 0xB2};
constexpr Colour orange{0xD5, 0x5E, 0x00};
constexpr Colour grey{0xF2, 0xF2, 0xF2};

TextRun text(double x, double y, double size, Face face, std::string words) {
  TextRun run;
  run.x = x;
  run.y = y;
  run.size = size;
  run.face = face;
  run.text = std::move(words);
  return run;
}

PathStep move(double x, double y) { return {PathStep::Verb::move, {x, y}, {}, {}}; }
PathStep line(double x, double y) { return {PathStep::Verb::line, {x, y}, {}, {}}; }
PathStep closed() { return {PathStep::Verb::close, {}, {}, {}}; }

Path rectangle(double x, double y, double width, double height) {
  Path path;
  path.steps = {move(x, y), line(x + width, y), line(x + width, y + height), line(x, y + height),
                closed()};
  return path;
}

Path circle(double x, double y, double radius) {
  const double k = 0.5522847498 * radius;  // Bezier arc of 90 degrees
  const auto arc = [](double ax, double ay, double bx, double by, double cx, double cy) {
    return PathStep{PathStep::Verb::curve, {ax, ay}, {bx, by}, {cx, cy}};
  };
  Path path;
  path.steps = {move(x + radius, y),
                arc(x + radius, y + k, x + k, y + radius, x, y + radius),
                arc(x - k, y + radius, x - radius, y + k, x - radius, y),
                arc(x - radius, y - k, x - k, y - radius, x, y - radius),
                arc(x + k, y - radius, x + radius, y - k, x + radius, y),
                closed()};
  return path;
}

void add_faces(Page& page, const Fonts& fonts) {
  const std::string latin = "\u0160\u0161 \u010D \u017E \u0151 \u01D6 \u1E69 \u1EAD \u00E9 \u00DF";
  const std::string signs = "\u00B1 \u00D7 \u2212 \u2265 \u2300 \u207B\u00B9 \u2082 \u2192 \u03A9";
  page.items.emplace_back(text(54, 80, 16, Face::text_bold, "Hard page (parentheses) \\ & <tags>"));
  page.items.emplace_back(
      text(54, 110, 12, Face::text,
           "text: \u0160\u0161 \u010D \u017E \u0151 \u00E9 \u00DF \u00B5 \u00B2 \u20AC"));
  page.items.emplace_back(
      text(54, 130, 12, Face::text_bold, "text_bold: \u0160\u0161 \u010D \u017E \u0151 \u00E9"));
  page.items.emplace_back(
      text(54, 150, 12, Face::text_italic, "text_italic: \u0160\u0161 \u010D \u017E fi ffl"));
  page.items.emplace_back(text(54, 170, 12, Face::mono, "mono: \u0161 0123456789 |{}[]~^`"));
  page.items.emplace_back(text(54, 190, 12, Face::symbol, "symbol: " + latin));
  page.items.emplace_back(text(54, 210, 12, Face::symbol_bold, "symbol_bold: " + latin));
  page.items.emplace_back(text(54, 230, 12, Face::symbol, signs));
  page.items.emplace_back(text(54, 250, 12, Face::symbol_bold, signs));
  page.items.emplace_back(text(54, 270, 12, Face::text,
                               "\u0395\u03BB\u03BB\u03B7\u03BD\u03B9\u03BA\u03AC "
                               "\u041A\u0438\u0440\u0438\u043B\u043B\u0438\u0446\u0430"));
  if (!fonts.bytes(Face::cjk).empty()) {
    page.items.emplace_back(text(
        54, 290, 12, Face::cjk,
        "\u5370\u5237\u4ED5\u69D8\u66F8 \u30AB\u30BF\u30AB\u30CA \u3072\u3089\u304C\u306A \u9F98"));
  }
  page.items.emplace_back(TextRun{});  // nothing to show
}

void add_rotated(Page& page) {
  for (int i = 0; i < 12; ++i) {
    TextRun run =
        text(420, 420, 9, i % 2 == 0 ? Face::text : Face::symbol_bold, "    turned \u0161");
    run.rotation = 30.0 * i;
    run.colour = i % 2 == 0 ? blue : orange;
    page.items.emplace_back(run);
  }
}

void add_outlines(Page& page) {
  Path filled = rectangle(54, 320, 80, 40);
  filled.fill = grey;
  Path both = rectangle(150, 320, 80, 40);
  both.fill = grey;
  both.stroke = Stroke{blue, 2, {}};
  Path dashed = circle(100, 420, 40);
  dashed.stroke = Stroke{orange, 1, {6, 2, 1, 2}};
  Path open;
  open.steps = {move(160, 380), line(240, 460)};
  open.stroke = Stroke{{}, 0.25, {3, 3}};
  Path nothing = rectangle(1, 1, 1, 1);
  for (const Path& path : {filled, both, dashed, open, nothing}) page.items.emplace_back(path);
}

void add_places(DisplayList& list) {
  list.anchors = {{"one", 0, 60}, {"one.one", 0, 300}, {"two", 1, 40.5}};
  list.bookmarks = {{1, "1 First (\u0161) \\", "one"},
                    {2, "1.1 \u5370\u5237", "one.one"},
                    {3, "1.1.1 deep \U0001F4A7", "one.one"},
                    {2, "1.2 back & forth", "one"},
                    {1, "2 Second", "two"}};
  list.pages[0].items.emplace_back(Link{54, 68, 200, 14, "two"});
  list.pages[0].items.emplace_back(Link{54, 100, 50, 12, "one.one"});
  list.pages[1].items.emplace_back(Link{54, 40, 50, 12, "one"});
}

}  // namespace

std::string cjk_face() {
  std::ifstream file("/usr/share/fonts/truetype/droid/DroidSansFallbackFull.ttf", std::ios::binary);
  std::ostringstream bytes;
  bytes << file.rdbuf();
  return bytes.str();
}

DisplayList hard_document(const Fonts& fonts) {
  DisplayList list;
  list.info.title = "A <title> & \"quotes\" \u2013 \u5370\u5237 \u0161";
  list.info.author = "M\u00FCller & Sons (invented)";
  list.info.subject = "<subject>";
  list.info.keywords = "drop, dot; cover";
  list.info.creator = "the painter's tests";
  list.info.date = "2026-11-25";
  list.info.language = "en";
  list.pages.resize(2);
  list.pages[1].width = 841.89;
  list.pages[1].height = 595.276;
  add_faces(list.pages[0], fonts);
  add_outlines(list.pages[0]);
  add_rotated(list.pages[0]);
  list.pages[1].items.emplace_back(text(54, 50, 12, Face::text, "Landscape page"));
  add_places(list);
  return list;
}

DisplayList long_document(const Fonts& fonts, int pages) {
  DisplayList list = hard_document(fonts);
  list.pages.assign(static_cast<std::size_t>(pages), Page{});
  for (int p = 0; p < pages; ++p) {
    Page& page = list.pages[static_cast<std::size_t>(p)];
    list.anchors.push_back({"page" + std::to_string(p), p, 40});
    list.bookmarks.push_back({2, "Page " + std::to_string(p + 1), "page" + std::to_string(p)});
    for (int row = 0; row < 52; ++row) {
      const double y = 60 + 13.5 * row;
      const std::string number = std::to_string(p * 5273 + row * 7919);
      std::string words = "The drop of " + number;
      words += " pL reaches the surface after 41 \u00B5s and is spread to a dot of";
      page.items.emplace_back(
          text(54, y, 9.6, row % 6 == 0 ? Face::text_bold : Face::text, std::move(words)));
      page.items.emplace_back(text(430, y, 7.5, Face::mono, "[T" + number + "]"));
      if (row % 4 != 0) continue;
      Path rule = rectangle(54, y + 3, 360, 0.25);
      rule.stroke = Stroke{blue, 0.25, {}};
      page.items.emplace_back(rule);
      page.items.emplace_back(Link{430, y - 8, 40, 10, "page" + std::to_string(p)});
    }
  }
  return list;
}

}  // namespace support
