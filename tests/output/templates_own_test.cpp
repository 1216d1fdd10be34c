// Templates of the user's own: what replaces what, and how a fault is named.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <stdexcept>

#include "output/embedded.h"
#include "output/raster.h"
#include "output/templates.h"

namespace {

using output::OwnTemplates;
using output::Templates;

std::string shipped(const std::string& name) {
  return std::string(output::embedded("templates/" + name));
}

/// A shipped file with its first `from` replaced.
std::string changed(const std::string& name, const std::string& from, const std::string& to) {
  std::string text = shipped(name);
  const std::size_t place = text.find(from);
  REQUIRE(place != std::string::npos);
  return text.replace(place, from.size(), to);
}

/// The message a folder with these files is refused with; empty when it is taken.
std::string refusal(const OwnTemplates& own) {
  try {
    const Templates templates(own);
  } catch (const std::runtime_error& fault) {
    return fault.what();
  }
  return {};
}

std::string line_of(const std::string& text, const std::string& part) {
  const std::string before = text.substr(0, text.find(part));
  return std::to_string(1 + std::count(before.begin(), before.end(), '\n'));
}

/// A PNG of two pixels: opaque red, and blue that is wholly transparent.
std::string small_png() {
  constexpr std::array<unsigned char, 70> bytes{
      0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0x00, 0x00, 0x00, 0x0D, 0x49, 0x48,
      0x44, 0x52, 0x00, 0x00, 0x00, 0x02, 0x00, 0x00, 0x00, 0x01, 0x08, 0x06, 0x00, 0x00,
      0x00, 0xF4, 0x22, 0x7F, 0x8A, 0x00, 0x00, 0x00, 0x0D, 0x49, 0x44, 0x41, 0x54, 0x78,
      0x9C, 0x63, 0xF8, 0xCF, 0xC0, 0x00, 0x46, 0x00, 0x0E, 0xFA, 0x02, 0xFE, 0xF5, 0x1E,
      0x4C, 0xA9, 0x00, 0x00, 0x00, 0x00, 0x49, 0x45, 0x4E, 0x44, 0xAE, 0x42, 0x60, 0x82};
  return {bytes.begin(), bytes.end()};
}

}  // namespace

TEST_CASE("a file of the user's replaces the shipped one of its name, the others stay") {
  const Templates own(
      {"mine",
       {{"style.ini", changed("style.ini", "owner = Station Engineering Office",
                              "owner = Willow Works (invented)")},
        {"en/words_control.txt", changed("en/words_control.txt", "sign.checker = Checker",
                                         "sign.checker = Second pair of eyes")}}});
  CHECK(own.setting("house.owner") == "Willow Works (invented)");
  CHECK(own.words("en", "sign.checker", {}) == "Second pair of eyes");
  CHECK(own.words("en", "sign.creator", {}) == "Creator");
  CHECK(own.words("de", "sign.checker", {}) == "Pr\u00FCfer");
  CHECK(own.own_digest().size() == 64);
  CHECK(Templates().own_digest().empty());
}

TEST_CASE("an unknown marker, section, key or argument is named with its file and line") {
  const std::string marker = changed("en/front.tpl", "{{SUMMARY:none}}", "{{SUMARY:none}}");
  CHECK(refusal({"mine", {{"en/front.tpl", marker}}}) ==
        "mine/en/front.tpl:" + line_of(marker, "{{SUMARY") + ": unknown marker {{SUMARY:none}}");
  const std::string section = shipped("en/checks.tpl") + "{{#NOTHING}}x{{/NOTHING}}\n";
  CHECK(refusal({"mine", {{"en/checks.tpl", section}}}) ==
        "mine/en/checks.tpl:" + line_of(section, "{{#NOTHING") + ": unknown section {{#NOTHING}}");
  const std::string key = shipped("en/words_control.txt") + "sign.guest = Guest\n";
  CHECK(refusal({"mine", {{"en/words_control.txt", key}}}) ==
        "mine/en/words_control.txt:" + line_of(key, "sign.guest") + ": unknown key sign.guest");
  const std::string argument =
      changed("en/words_control.txt", "{{REVISION}} of {{DATE}}.", "{{REVISION}} of {{DAY}}.");
  CHECK(refusal({"mine", {{"en/words_control.txt", argument}}}) ==
        "mine/en/words_control.txt:" + line_of(argument, "{{DAY}}") +
            ": unknown argument {{DAY}} of change.front");
}

TEST_CASE("what is missing is named, and so is a file that nothing asks for") {
  const std::string text = changed("en/words_control.txt", "sign.checker = Checker\n", "");
  CHECK(refusal({"mine", {{"en/words_control.txt", text}}}) ==
        "mine/en/words_control.txt:1: no text for sign.checker");
  CHECK(refusal({"mine", {{"en/frnt.tpl", shipped("en/front.tpl")}}}) ==
        "mine/en/frnt.tpl:1: there is no template of that name");
  CHECK(refusal({"mine", {{"fr/front.tpl", shipped("en/front.tpl")}}}) ==
        "mine/fr/arrangement.tpl:1: the template is missing");
  CHECK(refusal({"mine", {{"notes.doc", ""}}}) ==
        "mine/notes.doc:1: neither style file, template, words nor logo");
}

TEST_CASE("a language of the user's own has every file") {
  OwnTemplates own{"mine", {}};
  for (const output::EmbeddedFile& file : output::embedded_files()) {
    const std::string name(file.name);
    if (name.starts_with("templates/en/")) own.files["xx/" + name.substr(13)] = file.bytes;
  }
  const Templates templates(own);
  CHECK(templates.has_language("xx"));
  CHECK(templates.words("xx", "sign.creator", {}) == "Creator");
}

TEST_CASE("the shipped languages have the same templates, markers, keys and arguments") {
  const Templates templates;
  CHECK(templates.languages() == std::vector<std::string>{"de", "en"});
  for (const std::string& language : templates.languages()) {
    CAPTURE(language);
    CHECK_NOTHROW(templates.check_language(language));
  }
}

TEST_CASE("faults of the style file are named with their line") {
  const auto fault = [](const std::string& from, const std::string& to) {
    const std::string text = changed("style.ini", from, to);
    const std::string message = refusal({"mine", {{"style.ini", text}}});
    CHECK(message.starts_with("mine/style.ini:" + line_of(text, to) + ": "));
    return message.substr(std::min(message.find(": ") + 2, message.size()));
  };
  CHECK(fault("size = A4", "size = A5") == "page.size wants A4 or Letter");
  CHECK(fault("decimal = point", "decimal = dot") == "numbers.decimal wants point or comma");
  CHECK(fault("sections = changes", "sections =") == "section left out: changes");
  CHECK(fault("requirement conditions", "requirement requirement") == "section twice: requirement");
  CHECK(fault("requirement conditions", "requirement conclusions") ==
        "unknown section: conclusions");
  CHECK(fault("price_days = 60", "price_days = soon") ==
        "house.price_days wants a whole number of days from 1 to 3650");
}

TEST_CASE("paper is A4 or Letter") {
  CHECK(Templates().style().page_width == doctest::Approx(595.276));
  const Templates letter(
      {"mine", {{"style.ini", changed("style.ini", "A4\nlogo", "Letter\nlogo")}}});
  CHECK(letter.style().page_width == 612);
  CHECK(letter.style().page_height == 792);
}

TEST_CASE("a logo is a PNG beside the style, what is transparent on white") {
  const output::Raster picture = output::read_png(small_png());
  CHECK(picture.width == 2);
  CHECK(picture.height == 1);
  CHECK(picture.rgb == std::string("\xFF\x00\x00\xFF\xFF\xFF", 6));
  const std::string style = changed("style.ini", "logo =\n", "logo = mark.png\n");
  const Templates own({"mine", {{"style.ini", style}, {"mark.png", small_png()}}});
  REQUIRE(own.style().logo != nullptr);
  CHECK(own.style().logo->width == 2);
  CHECK(refusal({"mine", {{"style.ini", style}}}) ==
        "mine/style.ini:1: logo mark.png is not in the folder");
  CHECK(refusal({"mine", {{"style.ini", style}, {"mark.png", "no picture"}}})
            .starts_with("mine/style.ini:1: logo mark.png: not a PNG picture"));
  CHECK_THROWS_AS(output::read_png(small_png().substr(0, 40)), std::runtime_error);
}
