#include "output/fonts.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <stdexcept>
#include <string>
#include <thread>
#include <vector>

#include "output/embedded.h"
#include "tests/output/support/hard_document.h"

namespace {

using output::Face;
using output::Fonts;

constexpr int embedded_faces = output::face_count - 1;

/// Number of glyphs, from the table `maxp` of a TrueType file.
int glyph_count(const std::string& file) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(file.at(i)); };
  const int tables = byte(4) * 256 + byte(5);
  for (int t = 0; t < tables; ++t) {
    const std::size_t entry = 12 + 16 * static_cast<std::size_t>(t);
    if (file.compare(entry, 4, "maxp") != 0) continue;
    std::size_t offset = 0;
    for (std::size_t i = 0; i < 4; ++i) offset = offset * 256 + byte(entry + 8 + i);
    return byte(offset + 4) * 256 + byte(offset + 5);
  }
  return -1;
}

}  // namespace

TEST_CASE("fonts: embedded files are there and in order") {
  const auto files = output::embedded_files();
  REQUIRE(files.size() >= 7);
  CHECK(std::is_sorted(files.begin(), files.end(),
                       [](const auto& a, const auto& b) { return a.name < b.name; }));
  for (const auto& file : files) {
    CAPTURE(file.name);
    CHECK(output::embedded(file.name).data() == file.bytes.data());
    CHECK_FALSE(file.bytes.empty());
  }
  CHECK(output::embedded("srgb.icc").substr(36, 4) == "acsp");  // signature, ICC.1 7.2.9
  CHECK_THROWS_AS(output::embedded("no such file"), std::out_of_range);
}

TEST_CASE("fonts: advances are those of the fonts' hmtx tables") {
  // [1/1000 em] = advance / units per em, read from cmap and hmtx by a script of its own.
  struct Row {
    Face face;
    char32_t character;
    int advance;
  };
  const std::vector<Row> rows = {{Face::text, U' ', 278},
                                 {Face::text, U'A', 667},
                                 {Face::text, U'm', 833},
                                 {Face::text, U'\u0161', 500},
                                 {Face::text_bold, U'A', 722},
                                 {Face::text_bold, U'm', 889},
                                 {Face::text_italic, U'f', 278},
                                 {Face::mono, U'i', 600},
                                 {Face::mono, U'W', 600},
                                 {Face::symbol, U'\u0161', 521},
                                 {Face::symbol, U'\u2192', 838},
                                 {Face::symbol, U'\u2300', 602},
                                 {Face::symbol_bold, U'\u0161', 595}};
  const Fonts fonts;
  for (const Row& row : rows) {
    CAPTURE(static_cast<unsigned>(row.character));
    CHECK(fonts.has(row.face, row.character));
    CHECK(fonts.advance(row.face, row.character) == row.advance);
  }
  CHECK(fonts.ascent(Face::text) == 905);
  CHECK(fonts.descent(Face::text) == 212);
  CHECK(fonts.ascent(Face::symbol_bold) == 928);
  CHECK(fonts.descent(Face::symbol_bold) == 236);
}

TEST_CASE("fonts: what a face lacks") {
  const Fonts fonts;
  // Tried on the fonts themselves: no subscript two, no diameter sign, no thin space.
  for (const char32_t character : {U'\u2082', U'\u2300', U'\u2009', U'\u5370', U'\U0001F4A7'}) {
    CAPTURE(static_cast<unsigned>(character));
    CHECK_FALSE(fonts.has(Face::text, character));
    CHECK_THROWS_AS(fonts.advance(Face::text, character), std::out_of_range);
    CHECK_FALSE(fonts.has(Face::cjk, character));
  }
  CHECK(fonts.bytes(Face::cjk).empty());
  for (int i = 0; i < embedded_faces; ++i) CHECK(fonts.bytes(static_cast<Face>(i)).size() > 1000);
}

TEST_CASE("fonts: the face that takes over") {
  const Fonts fonts;
  CHECK(fonts.pick(Face::text, U'A') == Face::text);
  CHECK(fonts.pick(Face::mono, U'\u03A9') == Face::mono);
  CHECK(fonts.pick(Face::text, U'\u2300') == Face::symbol);
  CHECK(fonts.pick(Face::text_italic, U'\u2300') == Face::symbol);
  CHECK(fonts.pick(Face::text_bold, U'\u2300') == Face::symbol_bold);
  CHECK(fonts.pick(Face::symbol_bold, U'\u0161') == Face::symbol_bold);
  CHECK_FALSE(fonts.pick(Face::text, U'\u5370').has_value());
}

TEST_CASE("fonts: characters that no face may draw by itself") {
  const Fonts fonts;
  // Control, delete, soft hyphen, combining acute, Hebrew, Arabic, Devanagari, Thai, zero width
  // space, line separator, conjoining jamo, private use, byte order mark, above U+FFFF.
  for (const char32_t character :
       {U'\n', U'\t', char32_t{0x7F}, U'\u00AD', U'\u0301', U'\u05D0', U'\u0627', U'\u0905',
        U'\u0E01', U'\u200B', U'\u2028', U'\u1100', U'\uE000', U'\uFEFF', U'\U0001D400'}) {
    CAPTURE(static_cast<unsigned>(character));
    CHECK_FALSE(fonts.pick(Face::text, character).has_value());
  }
}

TEST_CASE("fonts: Han and kana from a face of the system") {
  const std::string file = support::cjk_face();
  REQUIRE_MESSAGE(!file.empty(), "package fonts-droid-fallback is not installed");
  const Fonts fonts(file);
  CHECK(fonts.bytes(Face::cjk) == file);
  for (const char32_t character : {U'\u5370', U'\u30AB', U'\u3072'}) {
    CHECK(fonts.pick(Face::text_bold, character) == Face::cjk);
    CHECK(fonts.advance(Face::cjk, character) == 1000);
  }
  CHECK(fonts.pick(Face::text, U'A') == Face::text);
}

TEST_CASE("fonts: a file that is no TrueType font is refused") {
  for (const char* bytes : {"x", "not a font", "ttcf", "OTTO"}) {
    CAPTURE(bytes);
    CHECK_THROWS_AS(Fonts{bytes}, std::invalid_argument);
  }
}

TEST_CASE("fonts: subsets hold the characters and what they are composed of") {
  const Fonts fonts;
  const std::string letter = fonts.subset(Face::symbol_bold, U"s");
  const std::string caron = fonts.subset(Face::symbol_bold, U"\u0161");
  CHECK(letter.substr(0, 4) == std::string("\0\1\0\0", 4));
  CHECK(glyph_count(letter) == 2);  // the missing glyph and s
  CHECK(glyph_count(caron) > 3);    // with its parts, one of which has a part itself
  CHECK(caron.size() < fonts.bytes(Face::symbol_bold).size() / 50);
  CHECK(fonts.subset(Face::symbol_bold, U"\u0161") == caron);
  CHECK_THROWS_AS(fonts.subset(Face::text, U"\u5370"), std::invalid_argument);
  CHECK_THROWS_AS(fonts.subset(Face::cjk, U"A"), std::invalid_argument);
}

TEST_CASE("fonts: one object serves several threads from the start") {
  const Fonts expected;
  const Fonts shared;
  std::vector<int> wrong(4, 0);
  std::vector<std::thread> threads;
  threads.reserve(wrong.size());
  for (int& count : wrong) {
    threads.emplace_back([&] {
      for (int i = 0; i < embedded_faces; ++i) {
        const auto face = static_cast<Face>(i);
        if (shared.advance(face, U'W') != expected.advance(face, U'W')) ++count;
        if (shared.subset(face, U"W\u0161") != expected.subset(face, U"W\u0161")) ++count;
      }
    });
  }
  for (std::thread& thread : threads) thread.join();
  CHECK(wrong == std::vector<int>(4, 0));
}
