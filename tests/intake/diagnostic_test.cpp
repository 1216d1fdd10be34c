#include "intake/diagnostic.h"

#include <doctest/doctest.h>

#include <string>

#include "intake/sink.h"
#include "intake/text.h"

namespace {

std::string first_human(const intake::SourceText& text, intake::Place place) {
  intake::Sink sink(text);
  sink.add("E0999", place, "message").hint = "fix";
  return to_human(sink.take().front());
}

}  // namespace

TEST_CASE("carets stand under the value behind tabs, wide and control characters") {
  const intake::SourceText text("a.ini", "\tw =\tab\nЖ\x07漢 = x\n");
  CHECK(first_human(text, {5, 2}) ==
        "a.ini:1:6: error[E0999]: message\n  \tw =\tab\n  \t   \t^^\n  hint: fix\n");
  CHECK(first_human(text, {17, 1}) ==
        "a.ini:2:7: error[E0999]: message\n  Ж\\x07漢 = x\n           ^\n  hint: fix\n");
}

TEST_CASE("the short form is the first line") {
  intake::Diagnostic d;
  d.file = "a\n.ini";
  d.severity = intake::Severity::warning;
  d.code = "W0201";
  d.message = "odd \x1B[31m";
  CHECK(to_short(d) == "a\\x0A.ini:1:1: warning[W0201]: odd \\x1B[31m\n");
  CHECK(!intake::has_errors({d}));
}

TEST_CASE("characters that turn the direction of writing are written out") {
  const std::string turning{'\xE2', '\x80', '\xAE'};  // U+202E, a byte at a time
  CHECK(intake::shown("a" + turning + "b\xC2\x85" + "c\xFF") == "a\\u{202E}b\\x85c\\xFF");
}

TEST_CASE("bytes that are not UTF-8 are found one by one") {
  // RFC 3629, section 4: overlong forms, surrogates and values above U+10FFFF are invalid.
  for (const std::string bad : {"\xC0\x80", "\xE0\x80\x80", "\xED\xA0\x80", "\xF4\x90\x80\x80",
                                "\x80", "\xF8\x88\x80\x80\x80", "\xE6\xBC"}) {
    const intake::SourceText text("a", std::string("x").append(bad));
    REQUIRE(text.bad_bytes().size() == 1);
    CHECK(text.bad_bytes().front().offset == 1);
    CHECK(text.bad_bytes().front().length == bad.size());
    CHECK(text.text() == std::string("x").append(bad.size(), '?'));
  }
  CHECK(intake::SourceText("a", "Ж漢😀").bad_bytes().empty());
}

TEST_CASE("a place leads to line and column and back") {
  std::string body;
  for (int i = 0; i < 700; ++i) body += i % 50 == 49 ? "é漢\r\n" : "é漢";
  const intake::SourceText text("a", body);
  for (std::size_t offset = 0; offset < body.size(); offset += 5) {
    const bool starts = (static_cast<unsigned char>(body[offset]) & 0xC0U) != 0x80U;
    if (!starts) continue;
    const int line = text.line_of(offset);
    CHECK(text.offset_of(line, text.column_of(offset)) == offset);
  }
  CHECK(text.line_of(body.size()) == 15);
  CHECK(text.line(1).size() == 250);
  CHECK(text.line(99).empty());
}
