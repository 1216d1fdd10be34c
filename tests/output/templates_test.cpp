#include "output/templates.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <span>
#include <stdexcept>
#include <string>

#include "calc/codes.h"
#include "output/embedded.h"
#include "output/markup.h"
#include "output/templates_scan.h"
#include "output/templates_style.h"
#include "output/templates_words.h"

namespace {

const std::string first = "{{%AUTOESCAPE context=\"XML\"}}\n";

/// The message of what `action` throws, empty when it throws nothing.
template <class Action>
std::string message_of(Action action) {
  try {
    action();
  } catch (const std::exception& fault) {
    return fault.what();
  }
  return {};
}

std::string scan_fault(const std::string& text) {
  return message_of([&] { output::scan_template("t.tpl", text); });
}

std::string style_fault(const std::string& text) {
  return message_of([&] { output::parse_style("style.ini", text); });
}

std::string words_fault(const std::string& text) {
  return message_of([&] {
    output::Words words;
    words.read("w.txt", text);
  });
}

std::string_view shipped_style() { return output::embedded("templates/style.ini"); }

}  // namespace

TEST_CASE("a template without its first line, or ill nested, is refused with file and line") {
  CHECK(scan_fault("<p/>") == "t.tpl:1: the first line is not {{%AUTOESCAPE context=\"XML\"}}");
  CHECK(scan_fault(first + "\n{{#A}}") == "t.tpl:3: section is not closed");
  CHECK(scan_fault(first + "{{#A}}\n{{/B}}") ==
        "t.tpl:3: {{/B}} closes no open section of that name");
  CHECK(scan_fault(first + "{{/A}}") == "t.tpl:2: {{/A}} closes no open section of that name");
  CHECK(scan_fault(first + "{{name}}") == "t.tpl:2: bad marker {{name}}");
  CHECK(scan_fault(first + "{{>INCLUDE}}") == "t.tpl:2: bad marker {{>INCLUDE}}");
  CHECK(scan_fault(first + "{{NAME:h}}") == "t.tpl:2: bad marker {{NAME:h}}");
  CHECK(scan_fault(first + "{{NAME") == "t.tpl:2: marker without }}");
  CHECK(scan_fault(first + "{{! remark }}{{#A}}{{B:none}}{{/A}}").empty());
}

TEST_CASE("an unset marker, and one set the other way, is named with file and line") {
  const output::TemplatePart part =
      output::scan_template("t.tpl", first + "{{A}}\n{{#S}}{{B:none}}{{A}}{{/S}}\n{{C}}");
  output::Values values;
  const auto fault = [&] {
    return message_of([&] { output::check_values("t.tpl", part, values); });
  };
  CHECK(fault() == "t.tpl:2: marker {{A}} is not set");
  values.set("A", "x");
  CHECK(fault() == "t.tpl:4: marker {{C}} is not set");
  values.set("C", "x");
  CHECK(fault().empty());  // S is not shown, so B need not be set
  output::Values& section = values.add("S");
  CHECK(fault() == "t.tpl:3: marker {{B}} is not set");
  section.set("B", "<b>");
  CHECK(fault() == "t.tpl:3: {{B:none}} is set to text");
  section.set_markup("B", "<b/>");
  values.set_markup("C", "<b/>");
  CHECK(fault().empty());  // the text C found first still stands
}

TEST_CASE("text that goes into a template is escaped, markup is not") {
  CHECK(output::escaped("a<b>&\"'") == "a&lt;b&gt;&amp;&quot;&#39;");
  CHECK(output::printable("a\x01\x7F\tz") == "a\\x01\\x7f\tz");
  CHECK(output::printable("\xC3\xA9\xE2\x80\xAF\xF0\x9F\x98\x80") ==
        "\xC3\xA9\xE2\x80\xAF\xF0\x9F\x98\x80");
  const std::string replaced = "\xEF\xBF\xBD";
  // Overlong form, surrogate, lone continuation, cut sequence: RFC 3629.
  CHECK(output::printable("\xC0\x80") == replaced + replaced);
  CHECK(output::printable("\xED\xA0\x80") == replaced + replaced + replaced);
  CHECK(output::printable("\xBFz") == replaced + "z");
  CHECK(output::printable("a\xE2\x80") == "a" + replaced + replaced);
  CHECK(output::printable("\xF4\x90\x80\x80").size() == 4 * replaced.size());
}

TEST_CASE("words take arguments and name what is missing") {
  output::Words words;
  words.read("w.txt", "# remark\na.b = one {{X}}\n  and {{Y}}\nc = <b>two</b>\n");
  output::Values values;
  CHECK(message_of([&] { words.fill("a.b", values); }) ==
        "w.txt:2: argument {{X}} of a.b is not set");
  values.set("X", "<1>");
  values.set_markup("Y", "<i>2</i>");
  CHECK(words.fill("a.b", values) == "one &lt;1&gt; and <i>2</i>");
  CHECK(words.fill("c", values) == "<b>two</b>");
  CHECK_THROWS_AS(words.fill("d", values), std::out_of_range);
  CHECK(words_fault("a = 1\na = 2") == "w.txt:2: a stands already in line 1");
  CHECK(words_fault("a =") == "w.txt:1: no text for a");
  CHECK(words_fault("\na") == "w.txt:2: no = after the key");
  CHECK(words_fault(" a") == "w.txt:1: a text goes on, but none has begun");
}

TEST_CASE("the style file is read whole, and its faults name file and line") {
  const output::Style style = output::parse_style("style.ini", shipped_style());
  CHECK(style.page.body_size > 8);
  CHECK(style.settings.contains("house.owner"));
  CHECK(style_fault("[page]\nwidth = wide") == "style.ini:2: page.width wants a number above 0");
  CHECK(style_fault("[page]\nwidth = -1") == "style.ini:2: page.width wants a number above 0");
  CHECK(style_fault("[page]\ncolumns = 2") == "style.ini:2: unknown key page.columns");
  CHECK(style_fault("[colours]\naccent = blue") ==
        "style.ini:2: colours.accent wants a colour RRGGBB");
  CHECK(style_fault("[drawing]\nbar = 12345") == "style.ini:2: drawing.bar wants a colour RRGGBB");
  CHECK(style_fault("[page]\nwidth = 1\nwidth = 1") == "style.ini:3: page.width stands twice");
  CHECK(style_fault("[page") == "style.ini:1: section without ]");
  CHECK(style_fault("[house]\nowner =") == "style.ini:2: house.owner has no value");
  CHECK(style_fault("") == "style.ini:0: drawing.bar is missing");
}

TEST_CASE("the shipped templates load, and an unset marker stops the expansion") {
  const output::Templates templates;
  CHECK(templates.has_language("en"));
  CHECK_FALSE(templates.has_language("xx"));
  output::Values values;
  const std::string fault = message_of([&] { templates.expand("en/front.tpl", values); });
  CHECK(fault == "templates/en/front.tpl:2: marker {{KIND}} is not set");
  CHECK_THROWS_AS(templates.expand("en/none.tpl", values), std::runtime_error);
  CHECK_THROWS_AS(templates.words("xx", "and", values), std::out_of_range);
  CHECK_THROWS_AS(templates.setting("house.none"), std::out_of_range);
}

TEST_CASE("every code has its words") {
  const output::Templates templates;
  const auto check = [&](const std::string& prefix, std::span<const std::string_view> codes,
                         const std::string& suffix) {
    CHECK_FALSE(codes.empty());
    for (const std::string_view code : codes) {
      std::string key = prefix;
      key.append(code).append(suffix);
      CAPTURE(key);
      CHECK(templates.has_words("en", key));
    }
  };
  check("reason.", calc::reason_codes(), "");
  check("condition.", calc::condition_codes(), "");
  check("warning.", calc::warning_codes(), "");
  check("warning.", calc::station_warning_codes(), "");
  check("question.", calc::question_codes(), "");
  check("check.", calc::check_codes(), "");
  check("safety.", calc::safety_codes(), "");
  check("safety.", calc::safety_codes(), ".title");
  check("part.", calc::part_codes(), "");
}

TEST_CASE("every condition has its owner but those whose field tells it") {
  const output::Templates templates;
  for (const std::string_view code : calc::condition_codes()) {
    CAPTURE(code);
    const bool by_field = code == "placement" || code.starts_with("assumption_");
    CHECK(templates.has_words("en", "owner." + std::string(code)) != by_field);
  }
}

TEST_CASE("no words stand for a code that nothing says") {
  std::set<std::string, std::less<>> known;
  const auto add = [&](const std::string& prefix, std::span<const std::string_view> codes) {
    for (const std::string_view code : codes) known.insert(prefix + std::string(code));
  };
  add("reason.", calc::reason_codes());
  add("condition.", calc::condition_codes());
  add("warning.", calc::warning_codes());
  add("warning.", calc::station_warning_codes());
  add("question.", calc::question_codes());
  add("check.", calc::check_codes());
  add("safety.", calc::safety_codes());
  add("part.", calc::part_codes());
  int seen = 0;
  for (const std::string file : {"templates/en/words_codes.txt", "templates/en/words_safety.txt"}) {
    std::string_view text = output::embedded(file);
    while (!text.empty()) {
      const std::string_view row = text.substr(0, text.find('\n'));
      text.remove_prefix(std::min(row.size() + 1, text.size()));
      const std::size_t end = row.find(" = ");
      if (row.empty() || row.front() == '#' || end == std::string_view::npos) continue;
      const std::string_view key = row.substr(0, end);
      const std::size_t point = key.find('.', key.find('.') + 1);
      CAPTURE(key);
      CHECK(known.contains(key.substr(0, point)));
      ++seen;
    }
  }
  CHECK(seen > 100);
}

TEST_CASE("every text of the words is well-formed inline markup") {
  for (const output::EmbeddedFile& file : output::embedded_files()) {
    if (!file.name.ends_with(".txt") || !file.name.starts_with("templates/")) continue;
    std::string_view text = file.bytes;
    while (!text.empty()) {
      const std::string_view row = text.substr(0, text.find('\n'));
      text.remove_prefix(std::min(row.size() + 1, text.size()));
      if (row.empty() || row.front() == '#') continue;
      CAPTURE(row);
      CHECK_NOTHROW(output::parse_markup(
          "<document><p>" + std::string(row.substr(row.find('=') + 1)) + "</p></document>"));
    }
  }
}
