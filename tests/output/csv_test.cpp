#include "output/csv.h"

#include <doctest/doctest.h>

#include <limits>
#include <stdexcept>

#include "output/plain_number.h"

namespace {

calc::Specification with_line(const calc::BomLine& line) {
  calc::Specification specification;
  specification.station.emplace();
  specification.station->currency = "EUR";
  specification.station->bom.push_back(line);
  return specification;
}

std::string second_line(const std::string& csv) { return csv.substr(csv.find("\r\n") + 2); }

TEST_CASE("fields are quoted as RFC 4180 has it") {
  CHECK(output::csv_record({"a", "b c", ""}) == "a,b c,\r\n");
  CHECK(output::csv_record({"a,b", "say \"no\"", "two\nlines"}) ==
        "\"a,b\",\"say \"\"no\"\"\",\"two\nlines\"\r\n");
}

TEST_CASE("no field starts a formula") {
  CHECK(output::csv_record({"=1+1", "+2", "-3", "@x", "a=b"}) == "'=1+1,'+2,'-3,'@x,a=b\r\n");
  CHECK(output::csv_record({"\tx", "\rx"}) == "'\tx,\"'\rx\"\r\n");
  CHECK(output::csv_record({"=a,b"}) == "\"'=a,b\"\r\n");
}

TEST_CASE("the head of the parts list is the public one, alone when nothing was chosen") {
  CHECK(output::write_bom_csv({}) ==
        "item,part_number,designation,technical_data,quantity,unit,unit_price,extended_price,"
        "currency,lead_time_days,source,serves,reference\r\n");
}

TEST_CASE("a priced line") {
  calc::BomLine line;
  line.item = 3;
  line.part_number = "P-7";
  line.designation = "drive board";
  line.technical_data = "4 heads, 1.5 W";
  line.quantity = 2;
  line.unit = "pc";
  line.unit_price = calc::Money{120005};
  line.extended_price = calc::Money{240010};
  line.lead_time_days = 42;
  line.source = "board.B-1";
  line.serves = {"line.speed", "image.width"};
  line.reference = "A1..A2";
  CHECK(second_line(output::write_bom_csv(with_line(line))) ==
        "3,P-7,drive board,\"4 heads, 1.5 W\",2,pc,1200.05,2400.10,EUR,42,board.B-1,"
        "line.speed; image.width,A1..A2\r\n");
}

TEST_CASE("an unpriced line leaves its prices and lead time empty") {
  calc::BomLine line;
  line.item = 1;
  line.designation = "mount";
  line.quantity = 0.5;
  line.unit = "L";
  CHECK(second_line(output::write_bom_csv(with_line(line))) == "1,,mount,,0.5,L,,,EUR,,,,\r\n");
}

TEST_CASE("small amounts keep their decimals") {
  calc::BomLine line;
  line.unit_price = calc::Money{5};
  line.extended_price = calc::Money{0};
  CHECK(second_line(output::write_bom_csv(with_line(line))).find(",0.05,0.00,") !=
        std::string::npos);
}

TEST_CASE("plain numbers: no exponent, no grouping, no negative zero") {
  CHECK(output::plain(600.0000000000001) == "600");
  CHECK(output::plain(1e12) == "1000000000000");
  CHECK(output::plain(0.00001234) == "0.00001234");
  CHECK(output::plain(-0.0) == "0");
  CHECK(output::plain(39370.0787401575, 5) == "39370");
  CHECK(output::plain(2.0 / 3, 3) == "0.667");
  CHECK(output::round_12(0.1 + 0.2) == 0.3);
}

TEST_CASE("a figure that is not finite never leaves the program") {
  CHECK_THROWS_AS(output::plain(std::numeric_limits<double>::quiet_NaN()), std::logic_error);
  CHECK_THROWS_AS(output::round_12(std::numeric_limits<double>::infinity()), std::logic_error);
}

}  // namespace
