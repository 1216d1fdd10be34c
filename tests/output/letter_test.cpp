// The letter with the open questions: what stands in it, and when it is written.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "output/archive_sums.h"
#include "output/compose.h"
#include "output/digest.h"
#include "output/report_text.h"
#include "tests/output/support/desk.h"
#include "tests/output/support/hand_made.h"

namespace {

using support::Desk;

std::string letter(const hand_made::Case& of) {
  static const output::Templates shared;
  return output::compose_letter(of.spec, of.request, shared);
}

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    lines.push_back(text.substr(at, end - at));
    at = end + 1;
  }
  return lines;
}

const std::string on_paper = "out/Q-1_rA_2026-01-02";

TEST_CASE("a letter numbers the open questions and keeps to its width") {
  const hand_made::Case incomplete = hand_made::incomplete();
  REQUIRE(incomplete.spec.questions.size() > 1);
  const std::string text = letter(incomplete);
  CHECK(text.find("Our reference: " + incomplete.spec.id) != std::string::npos);
  CHECK(text.find("\n\n1. ") != std::string::npos);
  CHECK(text.find("\n\n2. ") != std::string::npos);
  CHECK(text.find("Your answer moves: ") != std::string::npos);
  for (const std::string& line : lines_of(text)) CHECK(output::width_of(line) <= 78);
}

TEST_CASE("where nothing is open there is no letter") {
  hand_made::Case answered = hand_made::incomplete();
  answered.spec.questions.clear();
  CHECK(letter(answered).empty());
}

TEST_CASE("a letter is plain text whatever the customer is called") {
  hand_made::Case hostile = hand_made::hostile();
  hostile.spec.questions = hand_made::incomplete().spec.questions;
  const std::string text = letter(hostile);
  REQUIRE_FALSE(text.empty());
  for (const char byte : text) CHECK((byte == '\n' || static_cast<unsigned char>(byte) >= 0x20));
  CHECK(text.find("&amp;amp;") == std::string::npos);
}

TEST_CASE("a German request has a German letter") {
  hand_made::Case german = hand_made::incomplete();
  german.spec.language = "de";
  CHECK(letter(german).find("Unser Zeichen: ") != std::string::npos);
}

TEST_CASE("letters are written when asked for, for what stands already too") {
  Desk desk;
  desk.request("a.ini", "Q-1");
  REQUIRE(desk.build() == output::Exit::success);
  CHECK_FALSE(desk.files.contains(on_paper + ".letter.txt"));
  REQUIRE(desk.build({"--letters"}) == output::Exit::success);
  CHECK(desk.files.at(on_paper + ".letter.txt").find("Our reference: Q-1") != std::string::npos);
  CHECK_FALSE(desk.files.contains(on_paper + ".summary.pdf"));
}

TEST_CASE("letters and summaries are listed with what they belong to, and told of when they go") {
  for (const std::string ending : {".letter.txt", ".summary.pdf"}) {
    CAPTURE(ending);
    Desk desk;
    desk.request("a.ini", "Q-1");
    REQUIRE(desk.build() == output::Exit::success);
    REQUIRE(desk.build({"--letters", "--summary"}) == output::Exit::success);
    const auto sums = output::read_sums(desk.files.at("out/SHA256SUMS"));
    CHECK(sums.size() == 5);
    const std::string name = "Q-1_rA_2026-01-02" + ending;
    REQUIRE(sums.contains(name));
    const std::string bytes = desk.files.at("out/" + name);
    CHECK(sums.at(name) == output::digest_of(bytes));
    CHECK(desk.run({"verify", "out"}) == output::Exit::success);
    CHECK(desk.standard_output == "5 files as they went out\n");
    // Changed: its line stays, and every run says so; the issue itself stands.
    const std::string lines = desk.files.at("out/SHA256SUMS");
    desk.files["out/" + name] += " ";
    REQUIRE(desk.build() == output::Exit::success);
    CHECK(desk.files.at("out/SHA256SUMS") == lines);
    CHECK(desk.standard_error.find(name + ":1:1: warning[W0303]") != std::string::npos);
    CHECK(desk.files.at("out/overview.csv").find("Q-1") != std::string::npos);
    CHECK(desk.run({"verify", "out"}) == output::Exit::different);
    CHECK(desk.standard_output.starts_with("altered " + name + "\n"));
    CHECK(desk.run({"index", "out"}) == output::Exit::data);
    // Lost: told too, until it is made again, the same or not.
    desk.files.erase("out/" + name);
    REQUIRE(desk.build() == output::Exit::success);
    CHECK(desk.standard_error.find(name + ":1:1: warning[W0303]") != std::string::npos);
    CHECK(desk.run({"verify", "out"}) == output::Exit::different);
    CHECK(desk.standard_output.starts_with("missing " + name + "\n"));
    REQUIRE(desk.build({"--letters", "--summary"}) == output::Exit::success);
    CHECK(desk.files.at("out/" + name) == bytes);
    CHECK(desk.files.at("out/SHA256SUMS") == lines);
    CHECK(desk.standard_error.find("W0303") == std::string::npos);
  }
}

TEST_CASE("a superseded issue takes its letter along") {
  Desk desk;
  desk.request("a.ini", "Q-1");
  REQUIRE(desk.build({"--letters"}) == output::Exit::success);
  const std::string old = desk.files.at(on_paper + ".letter.txt");
  const std::string digest = output::sha256(desk.files.at(on_paper + ".json")).substr(0, 8);
  desk.request("a.ini", "Q-1", "[image]\nwidth = 100 mm\n");
  REQUIRE(desk.build({"--force"}) == output::Exit::success);
  CHECK_FALSE(desk.files.contains(on_paper + ".letter.txt"));
  CHECK(desk.files.at("out/superseded/Q-1_rA_2026-01-02." + digest + ".letter.txt") == old);
}

}  // namespace
