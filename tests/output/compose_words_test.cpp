/// Figures, names and lists as the language of the document has them.
#include <doctest/doctest.h>

#include <string>

#include "output/compose.h"
#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_list.h"
#include "tests/output/support/hand_made.h"

namespace {

using hand_made::Case;
using hand_made::holds;
using hand_made::templates;

Case in_german() {
  Case made = hand_made::feasible();
  made.spec.language = "de";
  return made;
}

}  // namespace

TEST_CASE("figures stand in the language, each with its unit") {
  const Case made = in_german();
  const output::Context c(made.spec, made.request, templates());
  const auto text = [&](const char* typed) { return output::figures_text(c, typed); };
  CHECK(text("600 x 600 dpi") == "600\u00A0\u00D7\u00A0600\u00A0dpi");
  CHECK(text("black; 5 x 1 L") == "black; 5\u00A0\u00D7\u00A01\u00A0L");
  CHECK(text("5.9 mPa.s at 25 degC; 4 mPa.s at 35 degC") ==
        "5.9\u00A0mPa\u00B7s bei 25\u00A0\u00B0C; 4\u00A0mPa\u00B7s bei 35\u00A0\u00B0C");
  CHECK(text("life 10000 h") == "life 10\u202F000\u00A0h");
  CHECK(text("lead time 10 week") == "lead time 10\u00A0Wochen");
  CHECK(text("lead time 1 week") == "lead time 1\u00A0Woche");
  CHECK(text("drying rate 24 kg/(m2 h)") == "drying rate 24\u00A0kg/(m\u00B2\u00A0h)");
  CHECK(text("1.2.3 x at").starts_with("1.2.3\u00A0"));  // no number: stays as typed
}

TEST_CASE("a group of several channels has a name in the language, a channel its own") {
  Case made = in_german();
  const output::Context german(made.spec, made.request, templates());
  CHECK(german.group_name("process") == "Prozessfarben");
  CHECK(german.group_name("process2") == "Prozessfarben 2");
  CHECK(german.group_name("white") == "white");
  CHECK(german.group_name("processed") == "processed");
  made.request.colours.emplace_back();
  made.request.colours.back().name = "process";
  CHECK(german.group_name("process") == "process");
  made.spec.language = "en";
  CHECK(output::Context(made.spec, made.request, templates()).group_name("process3") ==
        "process colours 3");
}

TEST_CASE("a sum has its currency before it, in a reason too, and the sums stand on one page") {
  Case made = hand_made::feasible();
  const output::Context c(made.spec, made.request, templates());
  CHECK(holds(c.reason({"lost", "process", "ownership", 25400000, 15300000, "EUR", false}),
              "EUR\u00A025\u202F400\u202F000 against EUR\u00A015\u202F300\u202F000"));
  made.spec.uncertainty = {
      {"capital", "EUR", 1000, 900, 1100, "line.hours_per_day", "h", 8, 24},
      {"running_per_year", "EUR", 1000, 900, 1100, "line.hours_per_day", "h", 8, 24},
      {"ownership", "EUR", 1000, 900, 1100, "line.hours_per_day", "h", 8, 24}};
  const std::string rows = output::uncertainty_section(c);
  const std::string keep = " keep=\"yes\"><cell>";
  CHECK(holds(rows, keep + c.words("figure.capital")));
  CHECK(holds(rows, keep + c.words("figure.running_per_year")));
  CHECK_FALSE(holds(rows, keep + c.words("figure.ownership")));
}

TEST_CASE("a row of the catalogue is called by its kind, a part of the bill by its designation") {
  Case made = hand_made::feasible();
  calc::BomLine& line = made.spec.station->bom.front();
  line.source = "part.EN-1";
  line.designation = "Encoder & wheel";
  made.spec.warnings = {{"price_stale",
                         {{"row", std::string("dryer.D-6"), ""},
                          {"price_date", std::string("2026-05-10"), ""},
                          {"age", 194.0, "d"}},
                         "dryer.D-6.price_date",
                         {}}};
  const output::Context c(made.spec, made.request, templates());
  CHECK(output::row_text(c, "supply.IS-WH") == "ink supply IS-WH");
  CHECK(output::row_text(c, "part.EN-1") == "Encoder &amp; wheel (EN-1)");
  CHECK(output::row_text(c, "part.EN-2") == "part EN-2");
  CHECK(output::row_text(c, "sheet.1") == "sheet.1");
  CHECK(holds(output::conditions_section(c), "The price of dryer D-6 dates from 2026-05-10"));
  made.spec.language = "de";
  const output::Context german(made.spec, made.request, templates());
  CHECK(output::row_text(german, "supply.IS-WH") == "Tintenversorgung IS-WH");
  line.designation.clear();
  CHECK(output::row_text(german, "part.EN-1") == "Teil EN-1");
}

TEST_CASE("a group is called by what prints in it") {
  Case made = hand_made::feasible();
  made.request.colours.clear();
  for (const char* name : {"gold", "red"}) {
    made.request.colours.emplace_back();
    made.request.colours.back().name = name;
    made.request.colours.back().kind.emplace().value = calc::ColourKind::spot;
  }
  made.spec.chosen.resize(1);
  made.spec.chosen.front().name = "process";
  made.spec.chosen.front().channels = {"gold", "red"};
  const auto name = [&](const char* group) {
    return output::Context(made.spec, made.request, templates()).group_name(group);
  };
  CHECK(name("process") == "spot colours");
  CHECK(name("process2") == "spot colours 2");  // of no group chosen: as all of the request
  made.request.colours.back().kind.reset();
  CHECK(name("process") == "colours");
  made.spec.chosen.front().channels = {"red"};
  CHECK(name("process") == "process colours");
}

TEST_CASE("a value at which the design fails comes with what fails, and how far solids close") {
  const Case made = hand_made::feasible();
  const output::Context c(made.spec, made.request, templates());
  const auto text = [&](const char* gate, double to, double last) {
    calc::Notice notice{"assumption_edge", {}, "assume.spread_high", {}};
    notice.args = {{"value", to, ""},
                   {"gate", std::string(gate), ""},
                   {"reached", 55.1, "um"},
                   {"limit", 74.8, "um"},
                   {"holds", last, ""}};
    return c.notice("condition", notice);
  };
  CHECK(holds(text("throw", 1.8, 2.45), "it fails (throw distance)"));
  CHECK(holds(text("cover", 1.8, 2.45), "it holds down to 2.45"));
  CHECK(holds(text("cover", 2.8, 2.45), "it holds to 2.45"));
}

TEST_CASE("groups that share a check stand in it by their names") {
  Case made = hand_made::feasible();
  calc::Check check;
  check.code = "stitch";
  check.axis = "along";
  check.subject = "white, process";
  made.spec.tests = {check};
  const output::Context c(made.spec, made.request, templates());
  CHECK(holds(output::checks_section(c), "white, process colours"));
}

TEST_CASE("what the room must keep is to be confirmed where it is assumed, and only there") {
  Case made = hand_made::feasible();
  const auto services = [&made] {
    return output::services_section({made.spec, made.request, templates()});
  };
  calc::Input humidity = made.spec.inputs[1];
  humidity.key = "line.air_humidity";
  humidity.value = humidity.low = humidity.high = 55;
  humidity.unit = "%";
  made.spec.inputs.push_back(humidity);
  CHECK(holds(services(), "55\u00A0%"));
  CHECK_FALSE(holds(services(), "confirm"));
  made.spec.assumptions.push_back({"line.air_humidity", 0.55, "", "1", 0.4, 0.7, "", ""});
  CHECK(holds(services(), "confirm"));
}

TEST_CASE("the ends of a range differ on paper where they differ") {
  Case made = hand_made::feasible();
  calc::Uncertainty& cost = made.spec.uncertainty[1];
  cost.value = 33801;
  cost.low = 33799;
  cost.high = 33804;
  const output::Context c(made.spec, made.request, templates());
  CHECK(holds(output::uncertainty_section(c), "EUR\u00A033\u202F799"));
  cost.mover.clear();
  CHECK_FALSE(holds(output::uncertainty_section(c), "\u202F799"));
}

TEST_CASE("terms stand in the order of the letters, of any case and with any mark") {
  const Case made = in_german();
  const output::Context c(made.spec, made.request, templates());
  std::string body;
  for (const std::string& key : templates().keys("de", "glossary.")) body += c.words(key) + ". ";
  const std::string terms = output::terms_section(c, body);
  const auto at = [&](const std::string& term) { return terms.find("<b>" + term); };
  REQUIRE(at("hintereinander") != std::string::npos);
  CHECK(at("Graustufen") < at("hintereinander"));
  CHECK(at("hintereinander") < at("Lieferzeit"));
  CHECK(at("Druckkopf") < at("D\u00FCse"));
  CHECK(at("D\u00FCse") < at("eigene Aufl\u00F6sung"));
}

TEST_CASE("what fails already as assumed is told so") {
  Case made = hand_made::feasible();
  calc::Assumption mount;
  mount.field = "line.mount_tolerance";
  mount.value = 10;
  mount.unit = "um";
  made.spec.assumptions.push_back(mount);
  const output::Context c = hand_made::context(made);
  const auto told = [&](double value, double holds) {
    calc::Notice notice;
    notice.code = "assumption_edge";
    notice.field = mount.field;
    notice.args = {{"value", value, "um"},          {"gate", "placement", ""},
                   {"gate_subject", "dot", ""},     {"reached", 23.0, "um"},
                   {"limit", 10.6, "um"},           {"holds", holds, "um"},
                   {"holds_gate", "placement", ""}, {"holds_gate_subject", "joint", ""}};
    return c.notice("condition", notice);
  };
  const std::string below = "which the value assumed does not meet";
  CHECK(holds(told(20, 8.69), below));
  CHECK(holds(told(20, 8.69), "it fails (placement, dots of a head)"));
  CHECK(holds(told(20, 8.69), "it holds only to 8.69\u00A0µm (placement, joints)"));
  CHECK_FALSE(holds(told(20, 12), below));
  CHECK(holds(told(5, 12), below));
  CHECK_FALSE(holds(told(5, 8.69), below));
}

TEST_CASE("speeds and edges in United States units are no more than those beside them") {
  Case made = hand_made::feasible();
  made.request.request.units = calc::exactly(calc::UnitSystem::us);
  const output::Context c = hand_made::context(made);
  const calc::Speed limit = calc::metres_per_second(59.0 / 60);
  CHECK(output::speed_limit_text(c, limit) == "193\u00A0ft/min (59\u00A0m/min)");
  CHECK(output::speed_limit_number(c, limit) == "59 (193\u00A0ft/min)");
  CHECK(output::in_us_unit(210, "mm", 4) == "8.268\u00A0in");
  CHECK(output::in_us_unit(210, "mm", 4, output::Rounding::down) == "8.267\u00A0in");
  CHECK(output::in_us_unit(1.62, "mm", 4, output::Rounding::up) == "63.78\u00A0mil");
}
