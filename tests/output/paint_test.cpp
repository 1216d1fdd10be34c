#include "output/paint.h"

#include <doctest/doctest.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>
#include <stdexcept>
#include <string>
#include <thread>
#include <vector>

#include "output/paint_pdf.h"
#include "output/paint_text.h"
#include "tests/output/support/hard_document.h"
#include "tests/source.h"

namespace {

using output::Colour;
using output::DisplayList;
using output::Face;
using output::Fonts;
using output::Page;
using output::Path;
using output::PathStep;
using output::Stroke;
using output::TextRun;

const Fonts& shared_fonts() {
  static const Fonts fonts(support::cjk_face());
  return fonts;
}

bool contains(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

int count(const std::string& text, const std::string& part) {
  int found = 0;
  for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++found;
  return found;
}

/// A folder of its own that vanishes with the test.
class Folder {
 public:
  Folder() {
    std::string name = (std::filesystem::temp_directory_path() / "paint_test_").string();
    name.append(6, 'X');  // as mkdtemp asks
    REQUIRE(mkdtemp(name.data()) != nullptr);
    path_ = name;
  }
  ~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  Folder(Folder&&) = delete;
  Folder& operator=(Folder&&) = delete;

  std::string put(const std::string& name, const std::string& bytes) const {
    std::ofstream(path_ / name, std::ios::binary) << bytes;
    return (path_ / name).string();
  }
  std::string get(const std::string& name) const {
    std::ostringstream bytes;
    bytes << std::ifstream(path_ / name, std::ios::binary).rdbuf();
    return bytes.str();
  }
  std::string at(const std::string& name) const { return (path_ / name).string(); }

 private:
  std::filesystem::path path_;
};

/// Exit status of a shell command; what it prints goes to the test's own output.
int run(const std::string& command) {
  // The commands are fixed texts and names of this test's own folder.
  return std::system(command.c_str());  // NOLINT(cert-env33-c,concurrency-mt-unsafe)
}

DisplayList one_glyph(const std::string& text) {
  DisplayList list;
  list.info.date = "2026-11-25";
  Page page;
  page.width = 300;
  page.height = 300;
  TextRun run;
  run.x = 50;
  run.y = 200;
  run.size = 200;
  run.face = Face::symbol_bold;
  run.text = text;
  page.items.emplace_back(run);
  list.pages.push_back(page);
  return list;
}

/// Dark pixels of the page, by row, at one pixel a point.
std::vector<int> ink_by_row(const DisplayList& list) {
  const Folder folder;
  const std::string file = folder.put("page.pdf", output::paint(list, shared_fonts()));
  REQUIRE(run("pdftoppm -r 72 -gray -singlefile " + file + " " + folder.at("page")) == 0);
  std::istringstream picture(folder.get("page.pgm"));
  std::string magic;
  int width = 0;
  int height = 0;
  int most = 0;
  picture >> magic >> width >> height >> most;
  REQUIRE(magic == "P5");
  picture.get();
  std::vector<int> rows(static_cast<std::size_t>(height), 0);
  for (int& row : rows) {
    for (int x = 0; x < width; ++x) row += picture.get() < most / 2 ? 1 : 0;
  }
  return rows;
}

int sum(const std::vector<int>& rows, std::size_t first, std::size_t last) {
  int total = 0;
  for (std::size_t i = first; i < last; ++i) total += rows.at(i);
  return total;
}

/// One bit a character, the highest first, and the bit of code 0 (ISO 19005-1, 6.3.5).
std::string expected_set(const std::set<char32_t>& characters) {
  std::string bits(*characters.rbegin() / 8 + 1, '\0');
  std::set<char32_t> codes = characters;
  codes.insert(0);
  for (const char32_t code : codes) {
    const int byte = static_cast<unsigned char>(bits[code / 8]);
    bits[code / 8] = static_cast<char>(byte + (128 >> (code % 8)));
  }
  return bits;
}

/// The streams under the key in a file that qpdf wrote plainly.
std::set<std::string> streams_under(const std::string& plain, const std::string& key) {
  std::set<std::string> streams;
  for (auto at = plain.find(key); at != std::string::npos; at = plain.find(key, at + 1)) {
    const auto number_begin = at + key.size();
    const std::string number =
        plain.substr(number_begin, plain.find(' ', number_begin) - number_begin);
    const auto object = plain.find("\n" + number + " 0 obj\n");
    const auto begin = plain.find("stream\n", object) + 7;
    streams.insert(plain.substr(begin, plain.find("\nendstream", begin) - begin));
  }
  return streams;
}

}  // namespace

TEST_CASE("paint: version, metadata and structure of the file") {
  const std::string file = output::paint(support::hard_document(shared_fonts()), shared_fonts());
  CHECK(file.substr(0, 9) == "%PDF-1.4\n");
  CHECK(contains(file, "/Type /Metadata\n/Subtype /XML"));
  CHECK(contains(file,
                 "A &lt;title&gt; &amp; &quot;quotes&quot; \u2013 \u5370\u5237 \u0161</rdf:li>"));
  CHECK(contains(file, "/DisplayDocTitle true"));
  CHECK(contains(file, "/Lang (en)"));
  CHECK(contains(file, "/S /GTS_PDFA1"));
  CHECK(contains(file, "/CreationDate (D:20261125000000+00'00')"));
  CHECK_FALSE(contains(file, "/ExtGState"));
  CHECK(count(file, "/Subtype /Link") == 3);
  CHECK(count(file, "/F 4\n") == 3);
  CHECK(count(file, "/Dest ") == 3 + 5);  // links and bookmarks
  CHECK(count(file, "/Dest [ ") == 5);    // those of the bookmarks are their own
  CHECK(count(file, "/CapHeight ") == output::face_count);
  CHECK(count(file, "/CIDSet ") == output::face_count);
  CHECK(count(file, "/FontFile2 ") == output::face_count);
}

TEST_CASE("paint: equal lists give equal bytes, others another identifier") {
  DisplayList list = support::hard_document(shared_fonts());
  const std::string file = output::paint(list, shared_fonts());
  CHECK(output::paint(list, shared_fonts()) == file);
  CHECK(output::paint(list, Fonts(support::cjk_face())) == file);
  const auto identifier = [](const std::string& pdf) {
    const auto at = pdf.find("/ID [ <", pdf.rfind("trailer"));
    REQUIRE(at != std::string::npos);
    CHECK(pdf.substr(at + 7, 32) == pdf.substr(at + 42, 32));
    return pdf.substr(at + 7, 32);
  };
  std::get<TextRun>(list.pages[0].items[1]).x += 0.5;
  CHECK(identifier(output::paint(list, shared_fonts())) != identifier(file));
}

TEST_CASE("paint: several threads with one set of fonts") {
  const Fonts fonts(support::cjk_face());
  const DisplayList list = support::hard_document(fonts);
  std::vector<std::string> files(4);
  std::vector<std::thread> threads;
  threads.reserve(files.size());
  for (std::string& file : files) {
    threads.emplace_back([&] { file = output::paint(list, fonts); });
  }
  for (std::thread& thread : threads) thread.join();
  for (const std::string& file : files) CHECK(file == files[0]);
  CHECK(files[0] == output::paint(list, shared_fonts()));
}

TEST_CASE("paint: bits of the CID sets") {
  const Folder folder;
  const DisplayList list = support::hard_document(shared_fonts());
  const std::string file = folder.put("hard.pdf", output::paint(list, shared_fonts()));
  REQUIRE(run("qpdf --qdf --object-streams=disable " + file + " " + folder.at("plain.pdf")) == 0);
  std::vector<std::set<char32_t>> used(output::face_count);
  for (const Page& page : list.pages) {
    for (const auto& item : page.items) {
      if (const auto* text = std::get_if<TextRun>(&item)) {
        for (const char32_t c : output::decode_utf8(text->text)) {
          used[static_cast<std::size_t>(text->face)].insert(c);
        }
      }
    }
  }
  std::set<std::string> expected;
  for (const auto& characters : used) expected.insert(expected_set(characters));
  CHECK(streams_under(folder.get("plain.pdf"), "/CIDSet ") == expected);
}

TEST_CASE("paint: a glyph composed of composed glyphs is whole") {
  // x-height of the face is 0.547 em by its OS/2 table; above it s has nothing but its overshoot,
  // s with caron has the caron, between 0.6 and 0.8 em.
  const std::vector<int> plain = ink_by_row(one_glyph("s"));
  const std::vector<int> caron = ink_by_row(one_glyph("\u0161"));
  CHECK(sum(plain, 85, 205) > 1000);
  CHECK(sum(plain, 0, 80) == 0);
  CHECK(sum(caron, 0, 80) > 300);
  CHECK(sum(caron, 90, 205) == sum(plain, 90, 205));
}

TEST_CASE("paint: libharu's faults are exceptions with their code, and stay") {
  const output::Pdf pdf;
  HPDF_Page page = pdf.made(HPDF_AddPage(pdf.doc()));
  CHECK_NOTHROW(pdf.check());
  // 0x1054: HPDF_PAGE_INVALID_SIZE of hpdf_error.h
  CHECK_THROWS_WITH_AS(pdf.ok(HPDF_Page_SetWidth(page, 1)), "libharu fault 0x1054, detail 0",
                       std::runtime_error);
  CHECK_THROWS_AS(pdf.check(), std::runtime_error);
}

TEST_CASE("paint: two faces of one name in a document are two fonts") {
  const Fonts fonts(shared_fonts().bytes(Face::text));  // the text face a second time, as cjk
  DisplayList list = one_glyph("a");
  std::get<TextRun>(list.pages[0].items[0]).face = Face::text;
  CHECK(count(output::paint(list, fonts), "/Subtype /Type0") == 1);
  list.pages[0].items.push_back(list.pages[0].items[0]);
  std::get<TextRun>(list.pages[0].items[1]).face = Face::cjk;
  CHECK(count(output::paint(list, fonts), "/Subtype /Type0") == 2);
}

TEST_CASE("paint: a page without text and an empty page") {
  DisplayList list;
  list.info.date = "2026-11-25";
  list.pages.resize(2);
  Path line;
  line.steps = {{PathStep::Verb::move, {10, 10}, {}, {}}, {PathStep::Verb::line, {20, 20}, {}, {}}};
  line.stroke = Stroke{Colour{0, 0x72, 0xB2}, 0.5, {}};
  list.pages[0].items.emplace_back(line);
  const Folder folder;
  const std::string file = folder.put("lines.pdf", output::paint(list, Fonts()));
  CHECK(run("qpdf --check " + file + " > " + folder.at("out") + " 2>&1") == 0);
  CHECK(contains(folder.get("out"), "No syntax or stream encoding errors found"));
}

TEST_CASE("paint: text comes out again") {
  const Folder folder;
  const std::string file =
      folder.put("hard.pdf", output::paint(support::hard_document(shared_fonts()), shared_fonts()));
  REQUIRE(run("pdftotext -raw " + file + " " + folder.at("text") + " 2> " + folder.at("err")) == 0);
  CHECK(folder.get("err").empty());
  for (const char* line :
       {"Hard page (parentheses) \\ & <tags>\n", "symbol_bold: Šš č ž ő ǖ ṩ ậ é ß\n",
        "± × − ≥ ⌀ ⁻¹ ₂ → Ω\n", "Ελληνικά Кириллица\n", "印刷仕様書 カタカナ ひらがな 龘\n",
        "Landscape page\n"}) {
    CAPTURE(line);
    CHECK(contains(folder.get("text"), line));
  }
}

TEST_CASE("paint: the validators pass a hard and a long document") {
  const Folder folder;
  const Fonts& fonts = shared_fonts();
  const std::string hard =
      folder.put("hard.pdf", output::paint(support::hard_document(fonts), fonts));
  const std::string pages =
      folder.put("long.pdf", output::paint(support::long_document(fonts, 8), fonts));
  CHECK(run("bash " + tests::source("tests/validators/pdf.sh ") + hard + " " + pages) == 0);
}

TEST_CASE("paint: the validators catch broken documents") {
  const Folder folder;
  const Fonts& fonts = shared_fonts();
  const std::string hard =
      folder.put("hard.pdf", output::paint(support::hard_document(fonts), fonts));
  CHECK(run("bash " + tests::source("tests/validators/self_test.sh ") + hard) == 0);
}
