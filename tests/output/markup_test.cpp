#include "output/markup.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using output::MarkupError;
using output::Node;
using output::parse_markup;

namespace {

std::string fault_of(const std::string& xml) {
  try {
    parse_markup(xml);
  } catch (const MarkupError& error) {
    return error.what();
  }
  return "no fault";
}

/// Text and inline elements on one line, for comparison.
std::string flat(const Node& node) {
  if (node.name.empty()) return node.text;
  std::string inner;
  for (const Node& child : node.children) inner += flat(child);
  return node.name + "(" + inner + ")";
}

}  // namespace

TEST_CASE("markup: white space folds in text and vanishes between blocks") {
  const Node root = parse_markup(
      "<document>\n  <p> one\n\t two <b>three</b> <i>four</i>\u00A0five </p>\n  <newpage/>\n"
      "</document>\n");
  CHECK(flat(root) == "document(p( one two b(three) i(four)\u00A0five )newpage())");
}

TEST_CASE("markup: escapes and character references are read, CDATA is text") {
  const Node root =
      parse_markup("<document><p>a &lt; b &amp; c &#xB5;m<![CDATA[ <x> ]]></p></document>");
  CHECK(flat(root) == "document(p(a < b & c \u00B5m <x> ))");
}

TEST_CASE("markup: attributes are kept, absent ones give the fallback") {
  const Node root = parse_markup("<document title='A &amp; B'><section title='x'/></document>");
  CHECK(root.get("title") == "A & B");
  CHECK(root.get("id") == "");
  CHECK(root.children.at(0).get("wide", "no") == "no");
}

TEST_CASE("markup: each fault is said with line and column") {
  struct Case {
    const char* xml;
    const char* message;
  };
  const std::vector<Case> cases{
      {"<document>\n<p>\u00B5 <u>x</u></p></document>", "markup:2:7: unknown element <u>"},
      {"<document>\n\n <p colour='red'/></document>",
       "markup:3:3: unknown attribute colour of <p>"},
      {"<document><p key='a' key='b'/></document>", "markup:1:12: attribute key of <p> twice"},
      {"<document><row/></document>", "markup:1:12: element <row> may not stand in <document>"},
      {"<document>loose</document>", "markup:1:11: text may not stand in <document>"},
      {"<document><p>R & D</p></document>", "markup:1:16: unknown entity or bare ampersand"},
      {"<document><p>&nbsp;</p></document>", "markup:1:14: unknown entity or bare ampersand"},
      {"<page/>", "markup:1:2: the root is not <document>"},
      {"<document/>\n<document/>", "markup:2:2: more than one root"},
      {"<document>\n<p></document>", "markup:2:6: Start-end tags mismatch"},
      {"", "markup:1:1: No document element found"},
  };
  for (const Case& one : cases) {
    CAPTURE(one.xml);
    CHECK(fault_of(one.xml) == one.message);
  }
}

TEST_CASE("markup: sections nest three deep and no deeper") {
  const std::string three =
      "<document><section><section><section></section></section></section></document>";
  CHECK(fault_of(three) == "no fault");
  CHECK(fault_of("<document><section><section><section><section/></section></section></section>"
                 "</document>") == "markup:1:39: sections nest at most three deep");
}

TEST_CASE("markup: an ampersand inside a comment is no fault") {
  CHECK(fault_of("<document><!-- R & D --><p>x</p></document>") == "no fault");
}
