/// Operands as ISO 32000-1 writes them: numbers 7.3.3, literal strings 7.3.4.2, names 7.3.5 [M].
#include "output/paint_content.h"

#include <doctest/doctest.h>

#include <stdexcept>
#include <string>

#include "output/deflate.h"

namespace {

using output::Content;
using namespace std::string_literals;

std::string number(double value) { return Content().number(value).bytes(); }

}  // namespace

TEST_CASE("content: numbers to thousandths, short, never a minus before nothing") {
  CHECK(number(0) == "0 ");
  CHECK(number(-0.0004) == "0 ");
  CHECK(number(12.3456) == "12.346 ");
  CHECK(number(-1.5) == "-1.5 ");
  CHECK(number(0.007) == "0.007 ");
  CHECK(number(841.89) == "841.89 ");
  CHECK(Content().fine_number(-0.70710678).bytes() == "-0.707107 ");
}

TEST_CASE("content: two bytes a character, brackets, backslash and carriage return escaped") {
  CHECK(Content().text("a(\\)").bytes() == "(\0a\0\\(\0\\\\\0\\)) "s);
  // U+010D ends in the byte of a carriage return, U+0128 in that of a bracket.
  CHECK(Content().text("\u010D\u0128").bytes() == "(\x01\\r\x01\\() "s);
  CHECK_THROWS_AS(Content().text("\xFF"), std::invalid_argument);
}

TEST_CASE("content: operands before their operator, one operation a line") {
  Content content;
  content.name("F1").number(9.5).operate("Tf");
  content.lengths({3, 1}).number(0).operate("d");
  CHECK(content.bytes() == "/F1 9.5 Tf\n[3 1 ] 0 d\n");
}

TEST_CASE("content: packed bytes are smaller, equal for equal ones, with the header of RFC 1950") {
  const std::string plain(10000, 'x');
  const std::string packed = output::deflated(plain);
  CHECK(packed.size() < 100);
  CHECK(packed == output::deflated(plain));
  const int first = static_cast<unsigned char>(packed.at(0));
  const int second = static_cast<unsigned char>(packed.at(1));
  CHECK((first & 15) == 8);
  CHECK((first * 256 + second) % 31 == 0);
  CHECK(output::deflated("").size() > 2);
}
