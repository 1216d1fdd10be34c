// A price list laid over a catalogue: whose price then stands, and with which place.
#include "intake/price_list.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "intake/read.h"

namespace {

const std::string header = "part_number,unit_price,currency,price_date\n";

calc::Catalogue catalogue() {
  return intake::read_catalogue("c.xml", R"(<catalogue>
  <lamp name="L-1"><part_number>UV,1</part_number><price>900 EUR</price><price_date>2026-01-02</price_date></lamp>
  <part name="F-1"><part_number>FAN</part_number></part>
  <part name="F-2"><part_number>FAN</part_number><price>70 EUR</price><price_date>2026-01-02</price_date></part>
  <part name="G-1"><price>5 EUR</price><price_date>2026-01-02</price_date></part>
</catalogue>)")
      .catalogue;
}

const calc::Input* price_input(const calc::Row& row) {
  const auto found =
      std::find_if(row.inputs.begin(), row.inputs.end(),
                   [](const calc::Input& input) { return input.key.ends_with(".price"); });
  return found == row.inputs.end() ? nullptr : &*found;
}

TEST_CASE("a listed price takes the place of the catalogue's, with its date and its line") {
  calc::Catalogue c = catalogue();
  const auto findings = intake::apply_prices(
      "p.csv", header + "\"UV,1\",1200.50,EUR,2026-09-01\n\nG-1,6,EUR,2026-09-02\r\n", c);
  CHECK(findings.empty());
  const calc::Lamp& lamp = c.lamps.front();
  CHECK(lamp.price->value.amount.major() == 1200.5);
  CHECK(lamp.price->value.currency == "EUR");
  CHECK(lamp.price->origin.file == "p.csv");
  CHECK(lamp.price->origin.line == 2);
  CHECK(lamp.price->origin.column == 8);
  CHECK(lamp.price_date->value == "2026-09-01");
  REQUIRE(price_input(lamp) != nullptr);
  CHECK(price_input(lamp)->key == "lamp.L-1.price");
  CHECK(price_input(lamp)->value == 1200.5);
  CHECK(std::count_if(lamp.inputs.begin(), lamp.inputs.end(),
                      [](const calc::Input& input) { return input.key == "lamp.L-1.price"; }) == 1);
  CHECK(c.parts.back().price->value.amount.major() == 6);  // by its name, having no number
  CHECK(c.parts.back().price->origin.line == 4);
}

TEST_CASE("a part on request gets its price, and all rows of one number get the same") {
  calc::Catalogue c = catalogue();
  CHECK(intake::apply_prices("p.csv", header + "FAN,88,EUR,2026-09-01", c).empty());
  CHECK(c.parts[0].price->value.amount.major() == 88);
  CHECK(c.parts[1].price->value.amount.major() == 88);
  REQUIRE(price_input(c.parts[0]) != nullptr);
  CHECK(price_input(c.parts[0])->key == "part.F-1.price");
}

TEST_CASE("a faulty list leaves the catalogue as it was") {
  calc::Catalogue c = catalogue();
  const auto findings =
      intake::apply_prices("p.csv", header + "FAN,88,EUR,2026-09-01\nG-1,x,EUR,2026-09-01\n", c);
  CHECK(intake::has_errors(findings));
  CHECK_FALSE(c.parts[0].price.has_value());
  CHECK(c.parts[1].price->value.amount.major() == 70);
}

}  // namespace
