#include "output/text_line.h"

#include <doctest/doctest.h>

#include "layout_support.h"

using output::Line;
using output::TextFlow;

namespace {

/// A text of size 10 in the text face, and the ways to break it.
class Text {
 public:
  explicit Text(std::string_view utf8) : measurer_(layout_test::fonts(), unprintable_) {
    flow_.open();
    flow_.append(utf8, {output::Face::text, 10, 0, {}, nullptr});
    range_ = flow_.close();
  }

  double width() const { return flow_.width(range_); }
  double widest() const { return widest_word(flow_, range_); }

  std::vector<Line> broken(double width) const {
    std::vector<Line> lines;
    break_lines(flow_, range_, width, width, lines);
    return lines;
  }

  /// The lines at this width, gaps shown as _, separated by |.
  std::string at(double width) const {
    std::string shown;
    for (const Line& line : broken(width)) {
      if (!shown.empty()) shown += '|';
      for (std::size_t i = line.first; i < line.last; ++i) {
        const output::Glyph& glyph = flow_.glyphs()[i];
        if (glyph.character != 0) output::append_utf8(shown, glyph.character);
        if (glyph.kind == output::GlyphKind::gap) shown += '_';
      }
      if (line.hyphen) shown += '-';
    }
    return shown;
  }

  /// Whether every line fits the width, and the next line's first word would not have.
  bool is_greedy(double width) const {
    double last = 1e9;
    for (const Line& line : broken(width)) {
      output::Range word{line.first, line.first};
      while (word.last < line.last && flow_.glyphs()[word.last].kind != output::GlyphKind::space) {
        ++word.last;
      }
      const double blank = 2.78;  // 278/1000 em
      if (line.width > width + 1e-6 || last + blank + flow_.width(word) <= width) return false;
      last = line.width;
    }
    return true;
  }

  std::vector<output::Item> items() const {
    std::vector<output::Item> items;
    emit_line(flow_, {range_.first, range_.last, 0, false}, 50, 100, items);
    return items;
  }

  std::vector<char32_t> unprintable() const { return unprintable_; }

 private:
  std::vector<char32_t> unprintable_;
  output::Measurer measurer_;
  TextFlow flow_{measurer_};
  output::Range range_;
};

double width_of(std::string_view utf8) { return Text(utf8).width(); }

}  // namespace

TEST_CASE("lines: widths are the sums of the advances of the face") {
  int sum = 0;
  for (const char32_t c : std::u32string_view(U"Head 1")) {
    sum += layout_test::fonts().advance(output::Face::text, c);
  }
  CHECK(width_of("Head 1") == doctest::Approx(sum * 10 / 1000.0).epsilon(1e-12));
}

TEST_CASE("lines: as full as they can be, blanks at the ends dropped") {
  const Text text("one two  three");
  CHECK(text.at(1000) == "one two three");
  CHECK(text.at(width_of("one two") + 0.01) == "one two|three");
  CHECK(text.at(width_of("one two") - 0.01) == "one|two|three");
}

TEST_CASE("lines: no line is wider than asked, none could have taken the next word") {
  const Text text(layout_test::words(80));
  for (int width = 60; width < 300; width += 7) {
    CAPTURE(width);
    CHECK(text.is_greedy(width));
  }
  CHECK(text.broken(1e6).size() == 1);
}

TEST_CASE("lines: a number and its unit, and groups of digits, stay together") {
  const double narrow = width_of("12 345 kHz ");
  CHECK(Text("about 12\u202F345\u00A0kHz").at(narrow) == "about|12_345 kHz");
  CHECK(Text("about 12\u2009345").at(narrow) == "about|12_345");
  CHECK(width_of("1\u202F2") == doctest::Approx(width_of("12") + 1.7));
}

TEST_CASE("lines: a hyphen between letters ends a line, one between digits does not") {
  CHECK(Text("drop-watching").at(width_of("watching")) == "drop-|watching");
  CHECK(Text("of 10-20").at(width_of("of 10-2")) == "of|10-20");
}

TEST_CASE("lines: soft hyphens show only where a line ends, zero width spaces never") {
  const Text text("inter\u00ADleaving");
  CHECK(text.at(1000) == "interleaving");
  CHECK(text.at(width_of("interlea")) == "inter-|leaving");
  CHECK(Text("inter\u200Bleaving").at(width_of("interlea")) == "inter|leaving");
}

TEST_CASE("lines: the widest word has room for the hyphen it may part with") {
  const Text text("inter\u00ADleaving");
  CHECK(text.widest() == doctest::Approx(width_of("leaving")));
  CHECK(Text("interleav\u00ADing").widest() == doctest::Approx(width_of("interleav-")));
  CHECK(Text("interleav\u00ADing").at(width_of("interleav-") + 0.01) == "interleav-|ing");
}

TEST_CASE("lines: a word wider than the line is broken within, at a seam when there is one") {
  CHECK(Text("aaaaaaaa").at(width_of("aaa") + 0.01) == "aaa|aaa|aa");
  CHECK(Text("folder/request.ini").at(width_of("folder/requ")) == "folder/|request.ini");
  CHECK(Text("i").at(0.5) == "i");
}

TEST_CASE("lines: a number and its unit are one word, with the decimal sign within it") {
  CHECK(Text("4 mil (0.102\u00A0mm)").widest() == doctest::Approx(width_of("(0.102\u00A0mm)")));
  CHECK(Text("10,5").widest() == doctest::Approx(width_of("10,5")));
  CHECK(Text("12.345").at(width_of("12.3") + 0.01) == "12.3|45");  // only where nothing else fits
  CHECK(Text("request.ini").widest() == doctest::Approx(width_of("request.")));
}

TEST_CASE("lines: behind a word joiner no line ends, and none is drawn") {
  CHECK(Text("of drop-\u2060watching").at(width_of("drop-watching") + 0.01) == "of|drop-watching");
  CHECK(Text("a_\u2060straight+b").at(width_of("a_straight+")) == "a_straight+|b");
  CHECK(Text("head.LR-\u2060OIL").at(width_of("head.LR-O")) == "head.|LR-OIL");
  CHECK(Text("head.LR-\u2060OIL").widest() == doctest::Approx(width_of("LR-OIL")));
  CHECK(width_of("a-\u2060b") == doctest::Approx(width_of("a-b")));
}

TEST_CASE("lines: an empty text has no line") {
  CHECK(Text("").broken(100).empty());
  CHECK(Text(" \n ").broken(100).empty());
}

TEST_CASE("lines: thin spaces split a run and leave a gap of their width") {
  const std::vector<output::Item> items = Text("12\u202F345").items();
  REQUIRE(items.size() == 2);
  const auto& first = std::get<output::TextRun>(items[0]);
  const auto& second = std::get<output::TextRun>(items[1]);
  CHECK(first.text == "12");
  CHECK(second.text == "345");
  CHECK(first.x == 50);
  CHECK(second.x == doctest::Approx(50 + first.width + 1.7));
  CHECK(first.width == doctest::Approx(width_of("12")));
}

TEST_CASE("lines: a character of another face gets its own run, one without face its number") {
  const Text text("a\u2B22b \u0001\u05D0\u0001");
  const std::vector<output::Item> items = text.items();
  REQUIRE(items.size() == 3);
  CHECK(std::get<output::TextRun>(items[1]).face == output::Face::symbol);
  CHECK(std::get<output::TextRun>(items[2]).text == "b [U+0001][U+05D0][U+0001]");
  CHECK(text.unprintable() == std::vector<char32_t>{1, 0x5D0});
}

TEST_CASE("lines: malformed UTF-8 is shown, not dropped") {
  for (const char* bytes : {"\xC3", "\x80", "\xC0\xAF", "\xED\xA0\x80", "\xF5\x80"}) {
    CAPTURE(bytes);
    std::string_view rest(bytes);
    CHECK(output::take_character(rest) == 0xFFFD);
  }
  std::string_view good("\u20ACx");
  CHECK(output::take_character(good) == 0x20AC);
  CHECK(good == "x");
}
