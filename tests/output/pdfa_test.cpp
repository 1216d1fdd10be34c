#include "output/pdfa.h"

#include <doctest/doctest.h>

#include <stdexcept>
#include <string>

#include "output/paint_text.h"

namespace {

output::Info whole_info() {
  output::Info info;
  info.title = "A <title> & \"quotes\" \u0161";
  info.author = "author";
  info.subject = "subject";
  info.keywords = "keywords";
  info.creator = "creator";
  info.date = "2026-02-28";
  return info;
}

bool contains(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("pdfa: dates") {
  CHECK(output::pdf_date("2026-02-28") == "D:20260228000000+00'00'");  // ISO 32000-1, 7.9.4
  for (const char* date :
       {"", "2026-2-28", "2026-13-01", "2026-02-30", "28.02.2026", "2026-02-28Z"}) {
    CAPTURE(date);
    CHECK_THROWS_AS(output::pdf_date(date), std::invalid_argument);
  }
}

TEST_CASE("pdfa: the packet says what the dictionary says") {
  const std::string packet = output::xmp_packet(whole_info(), "producer");
  CHECK(contains(packet,
                 ">A &lt;title&gt; &amp; &quot;quotes&quot; \u0161</rdf:li></rdf:Alt></dc:title>"));
  CHECK(contains(packet, "<rdf:li>author</rdf:li></rdf:Seq></dc:creator>"));
  CHECK(contains(packet, ">subject</rdf:li></rdf:Alt></dc:description>"));
  CHECK(contains(packet, "<pdf:Keywords>keywords</pdf:Keywords>"));
  CHECK(contains(packet, "<xmp:CreatorTool>creator</xmp:CreatorTool>"));
  CHECK(contains(packet, "<pdf:Producer>producer</pdf:Producer>"));
  CHECK(contains(packet, "<xmp:CreateDate>2026-02-28T00:00:00+00:00</xmp:CreateDate>"));
  CHECK(contains(packet, "<pdfaid:part>1</pdfaid:part><pdfaid:conformance>B<"));
}

TEST_CASE("pdfa: what is empty in the dictionary is absent from the packet") {
  output::Info info;
  info.date = "2026-02-28";
  const std::string packet = output::xmp_packet(info, "");
  for (const char* name :
       {"dc:title", "dc:creator", "dc:description", "Keywords", "CreatorTool", "Producer"}) {
    CAPTURE(name);
    CHECK_FALSE(contains(packet, name));
  }
}

TEST_CASE("pdfa: text that cannot stand in a packet is refused") {
  for (const char* title : {"a\nb", "a\x01", "\xC3", "\xC0\x80", "\xED\xA0\x80", "\xEF\xBF\xBE"}) {
    CAPTURE(title);
    output::Info info = whole_info();
    info.title = title;
    CHECK_THROWS_AS(output::xmp_packet(info, ""), std::invalid_argument);
  }
}

TEST_CASE("pdfa: text strings") {
  CHECK(output::text_string("plain (text)") == "plain (text)");
  // UTF-16BE by the Unicode standard, table 3-5: U+0161 is 0161, U+1F4A7 is D83D DCA7.
  CHECK(output::text_string("\u0161\U0001F4A7") == std::string("\xFE\xFF\x01\x61\xD8\x3D\xDC\xA7"));
  CHECK(output::decode_utf8("a\u0161\u5370\U0001F4A7") == U"a\u0161\u5370\U0001F4A7");
  CHECK(output::hex4(0x1AF) == "01AF");
}

TEST_CASE("pdfa: the identifier is the digest of the file with zeros in its place") {
  const std::string zeros(32, '0');
  std::string file = "\ntrailer <" + zeros + "> <" + zeros + ">\n";
  output::seal(file);
  // First half of what sha256sum prints for the unsealed text.
  const std::string half = "6d39cc02f95ae31aaeb6a5950ebb1624";
  CHECK(file == "\ntrailer <" + half + "> <" + half + ">\n");
  std::string without = "\nno trailer <" + zeros + ">";
  CHECK_THROWS_AS(output::seal(without), std::runtime_error);
  std::string single = "\ntrailer <" + zeros + ">";
  CHECK_THROWS_AS(output::seal(single), std::runtime_error);
}
