#include "intake/read.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "intake/table.h"

namespace {

const std::string ini_form = R"(; a marking line, invented
[request]
id = T-1
title = Marking of <barrels> & "caps"
date = 2026-03-31
[customer]
organisation = Граница и сын
[product]
form = cylinder
diameter = 7..8 mm
[image]
width = 60 mm
resolution = 600 x 900 dpi
barcode_symbol = itf-14
barcode_module = 13 mil
viewing_distance = 300..500 mm
solids = no
[colour.black]
cover_mean = 0.15
[ink.black]
family = uv
viscosity = 14 mPa.s at 20 degC; 8 mPa.s at 45 degC
surface_tension = 32 mN/m ± 2 mN/m
price = 95 EUR/L
flash_point = 212 degF
[line]
speed = 30..60 m/min
throughput = 120 parts/min
throw_distance = 2 mm +- 0.3 mm
[costs]
energy = 0.185 EUR/kWh
)";

const std::string xml_form = R"(<?xml version="1.0" encoding="UTF-8"?>
<!-- the same -->
<request>
  <id>T-1</id>
  <title>Marking of &lt;barrels&gt; &amp; <![CDATA["caps"]]></title>
  <date> 2026-03-31 </date>
  <customer><organisation>Граница и сын</organisation></customer>
  <product>
    <form>cylinder</form>
    <diameter>7..8 mm</diameter>
  </product>
  <image>
    <width>60 mm</width>
    <resolution>600 x 900 dpi</resolution>
    <barcode_symbol>itf-14</barcode_symbol>
    <barcode_module>13 mil</barcode_module>
    <viewing_distance>300..500 mm</viewing_distance>
    <solids>no</solids>
  </image>
  <colour name="black"><cover_mean>0.15</cover_mean></colour>
  <ink name='black'>
    <family>uv</family>
    <viscosity>14 mPa.s at 20 degC; 8 mPa.s at 45 degC</viscosity>
    <surface_tension>32 mN/m &#xB1; 2 mN/m</surface_tension>
    <price>95 <!-- net -->EUR/L</price>
    <flash_point>212 degF</flash_point>
  </ink>
  <line>
    <speed>30..60 m/min</speed>
    <throughput>120 parts/min</throughput>
    <throw_distance>2 mm +- 0.3 mm</throw_distance>
  </line>
  <costs><energy>0.185 EUR/kWh</energy></costs>
</request>
)";

intake::ReadRequest read_one(std::string_view name, std::string_view text) {
  auto file = intake::read_requests(name, text);
  REQUIRE(file.requests.size() == 1);
  std::string faults;
  for (const auto& d : file.requests.front().findings) faults += to_human(d);
  CAPTURE(faults);
  CHECK(file.requests.front().usable);
  return std::move(file.requests.front());
}

/// A request with id, title and one entry of a section.
std::string text_with(std::string_view section, std::string_view entry) {
  std::string text = "[request]\nid = 1\ntitle = t\n[";
  text.append(section).append("]\n").append(entry).append("\n");
  return text;
}

intake::ReadRequest with(std::string_view section, std::string_view entry) {
  return read_one("a.ini", text_with(section, entry));
}

std::string first_code(std::string_view section, std::string_view entry) {
  const auto file = intake::read_requests("a.ini", text_with(section, entry));
  const auto& findings = file.requests.front().findings;
  return findings.empty() ? "none" : findings.front().code;
}

}  // namespace

TEST_CASE("the INI and the XML form of one request are equal") {
  const auto ini = read_one("a.ini", ini_form);
  const auto xml = read_one("a.xml", xml_form);
  REQUIRE(ini.request.inputs.size() == xml.request.inputs.size());
  for (std::size_t i = 0; i < ini.request.inputs.size(); ++i) {
    const calc::Input& a = ini.request.inputs[i];
    const calc::Input& b = xml.request.inputs[i];
    CAPTURE(a.key);
    CHECK(a.key == b.key);
    CHECK(a.text == b.text);
    CHECK(a.value == b.value);
    CHECK(a.unit == b.unit);
    CHECK(a.low == b.low);
    CHECK(a.high == b.high);
    CHECK(a.spread == b.spread);
  }
  CHECK(ini.request.request.title->value == "Marking of <barrels> & \"caps\"");
  CHECK(xml.request.request.title->value == ini.request.request.title->value);
  CHECK(xml.request.line.speed->value == ini.request.line.speed->value);
  CHECK(ini.source == ini_form);
  CHECK(xml.source == xml_form);
}

TEST_CASE("values come out in SI with their ends and origins") {
  const calc::Request r = read_one("a.ini", ini_form).request;
  CHECK(r.product.form->value == calc::Form::cylinder);
  CHECK(r.product.diameter->value == calc::millimetres(7));
  CHECK(r.product.diameter->high == calc::millimetres(8));
  CHECK(r.product.diameter->spread == calc::Spread::demand);
  CHECK(calc::in_dpi(r.image.resolution->value.across) == doctest::Approx(600));
  CHECK(calc::in_dpi(r.image.resolution->value.along) == doctest::Approx(900));
  CHECK(calc::in_mm(r.image.barcode_module->value) == doctest::Approx(0.3302));
  CHECK(r.image.viewing_distance->value == r.image.viewing_distance->low);
  CHECK(r.image.solids->value == false);
  CHECK(r.colours.front().cover_mean->value == doctest::Approx(0.15));
  const calc::Ink& ink = r.inks.front();
  REQUIRE(ink.viscosity->value.size() == 2);
  CHECK(calc::in_mpas(ink.viscosity->value[1].viscosity) == doctest::Approx(8));
  CHECK(ink.viscosity->value[1].temperature.in_celsius() == doctest::Approx(45));
  CHECK(calc::in_mn_per_m(ink.surface_tension->low) == doctest::Approx(30));
  CHECK(ink.surface_tension->spread == calc::Spread::uncertain);
  CHECK(ink.price->value.amount.minor == 9500);
  CHECK(ink.price->value.currency == "EUR");
  CHECK(ink.flash_point->value.in_celsius() == doctest::Approx(100));
  CHECK(r.line.speed->value.si() == doctest::Approx(1.0));
  CHECK(r.line.speed->low.si() == doctest::Approx(0.5));
  CHECK(!r.line.throughput_area);
  CHECK(r.line.throughput_parts->value.si() == doctest::Approx(2));
  CHECK(calc::in_mm(r.line.throw_distance->low) == doctest::Approx(1.7));
  CHECK(r.costs.energy->value.amount.minor == 19);
  CHECK(r.costs.energy_per_kwh->value == 0.185);
  CHECK(r.line.speed->origin.file == "a.ini");
  CHECK(r.line.speed->origin.line == 27);
  CHECK(r.line.speed->origin.column == 9);
  CHECK(r.line.speed->origin.raw == "30..60 m/min");
}

TEST_CASE("inputs list every given field in order of appearance") {
  const auto read = read_one("a.ini", ini_form);
  std::string keys;
  for (const auto& input : read.request.inputs) keys += input.key + " ";
  CHECK(keys ==
        "request.id request.title request.date customer.organisation product.form "
        "product.diameter image.width image.resolution image.barcode_symbol "
        "image.barcode_module image.viewing_distance image.solids colour.black.cover_mean "
        "ink.black.family ink.black.viscosity ink.black.surface_tension ink.black.price "
        "ink.black.flash_point line.speed line.throughput line.throw_distance costs.energy ");
  const auto& speed = read.request.inputs[18];
  CHECK(speed.value == 60);
  CHECK(speed.low == 30);
  CHECK(speed.unit == "m/min");
}

TEST_CASE("units people write mean the same length, speed and rate") {
  struct Case {
    const char* section;
    const char* entry;
    double si;
  };
  const auto first = [](const calc::Request& r) {
    if (r.image.width) return r.image.width->value.si();
    if (r.line.speed) return r.line.speed->value.si();
    return r.line.throughput_area->value.si();
  };
  for (const Case& c : {Case{"image", "width = 1 ft", 0.3048},
                        {"image", "width=12in", 0.3048},
                        {"image", "width = 304.8 mm", 0.3048},
                        {"image", "width = 304800 µm", 0.3048},
                        {"image", "width = 864 pt", 0.3048},
                        {"line", "speed = 100 ft/min", 0.508},
                        {"line", "speed = 30.48 m/min", 0.508},
                        {"line", "throughput = 36 m²/h", 0.01},
                        {"line", "throughput = 10..36 m2/h", 0.01}}) {
    CAPTURE(c.entry);
    CHECK(first(with(c.section, c.entry).request) == doctest::Approx(c.si).epsilon(1e-12));
  }
}

TEST_CASE("what limits itself to a bound passes in every unit") {
  CHECK(first_code("line", "hours_per_day = 24 h") == "none");
  CHECK(first_code("line", "hours_per_day = 1440 min") == "none");
  CHECK(first_code("line", "hours_per_day = 86400 s") == "none");
  CHECK(first_code("line", "hours_per_day = 24.001 h") == "E0139");
  CHECK(first_code("colour.k", "cover_mean = 1") == "none");
  CHECK(first_code("product", "width = 25.4 mm\n[image]\nwidth = 1 in") == "none");
  CHECK(first_code("product", "width = 25.4 mm\n[image]\nwidth = 1.0001 in") == "E0163");
}

TEST_CASE("a temperature's uncertainty is a difference") {
  const auto read = with("line", "air_temperature = 68 degF +- 9 degF").request;
  CHECK(read.line.air_temperature->value.in_celsius() == doctest::Approx(20));
  CHECK(read.line.air_temperature->low.in_celsius() == doctest::Approx(15));
  CHECK(read.line.air_temperature->high.in_celsius() == doctest::Approx(25));
}

TEST_CASE("a price for another volume becomes one for a litre") {
  const auto read = with("ink.a", "price = 0.25 USD/mL").request;
  CHECK(read.inks.front().price->value.amount.minor == 25000);
  CHECK(read.inputs.back().unit == "USD/L");
  CHECK(read.inputs.back().value == doctest::Approx(250));
}

TEST_CASE("byte order mark, CR LF and lone CR are passed over") {
  const std::vector<std::string> lines{"[request]", "id = 1", "title = t", "[image]",
                                       "width = 60 mm"};
  for (const std::string end : {"\n", "\r\n", "\r"}) {
    std::string text = "\xEF\xBB\xBF";
    for (const std::string& line : lines) text += line + end;
    const auto read = read_one("a.ini", text);
    CHECK(read.request.image.width->origin.line == 5);
    CHECK(read.request.image.width->origin.column == 9);
    CHECK(read.request.request.id->origin.column == 6);
  }
  const auto xml =
      read_one("<stdin>", "\xEF\xBB\xBF<request>\r\n<id>1</id><title>t</title></request>");
  CHECK(xml.request.request.id->origin.line == 2);
  CHECK(xml.request.request.id->origin.column == 5);
}

TEST_CASE("columns count code points") {
  const auto file = intake::read_requests(
      "a.xml", "<request><id>Ж漢😀</id><title>é</title><image><width>6</width></image></request>");
  REQUIRE(file.requests.front().findings.size() == 1);
  CHECK(file.requests.front().findings.front().column == 52);
}

TEST_CASE("the kind of a text is told by its name, else by its first byte") {
  CHECK(intake::kind_of("A.XML", "x") == intake::TextKind::xml);
  CHECK(intake::kind_of("a.Ini", "<x") == intake::TextKind::ini);
  CHECK(intake::kind_of("<stdin>", " \n\t<request/>") == intake::TextKind::xml);
  CHECK(intake::kind_of("<stdin>", "\n[request]") == intake::TextKind::ini);
  CHECK(intake::kind_of("<stdin>", "") == intake::TextKind::ini);
}

TEST_CASE("each request of a file has its own text and a catalogue has none") {
  const std::string one = "<request><id>1</id><title>t</title></request>";
  const std::string two = "<request>\n<id>2</id><title>t</title>\n</request>";
  const auto file = intake::read_requests("a.xml", "<requests>" + one + "\n" + two + "</requests>");
  REQUIRE(file.requests.size() == 2);
  CHECK(file.requests[0].source == one);
  CHECK(file.requests[1].source == two);
  CHECK(intake::read_requests("c.xml", "<catalogue date='2026-01-01'/>").is_catalogue);
  CHECK(intake::read_requests("c.xml", "<catalogue date='2026-01-01'/>").requests.empty());
}

TEST_CASE("a catalogue comes out with its rows, modes and inputs") {
  const std::string text = R"(<catalogue date="2026-02-01">
  <head name="H-1">
    <maker>Invented</maker> <price>1450 EUR</price> <price_date>2026-01-15</price_date>
    <families>uv; oil</families> <body_width>80 mm</body_width> <body_depth>30 mm</body_depth>
    <viscosity_window>8..14 mPa.s</viscosity_window> <joins>yes</joins> <board>D</board>
    <mode name="grey">
      <colours>2</colours> <row_pitch>150 npi</row_pitch> <row_offsets>0; 0.5</row_offsets>
      <nozzles>640</nozzles> <drops>7 pL; 14 pL</drops> <frequency>40 kHz; 28 kHz</frequency>
    </mode>
  </head>
  <board name="D"><heads>4</heads><data_rate>1.2 Gbit/s</data_rate></board>
  <part name="cap"><kind>cap</kind><per>head</per><fits>H-1</fits><price>12.50 EUR</price>
    <price_date>2026-01-15</price_date></part>
  <dryer name="oven"><width>1 m</width><length>2 m</length><drying_rate>18 kg/(m2 h)</drying_rate></dryer>
</catalogue>)";
  const auto read = intake::read_catalogue("c.xml", text);
  std::string faults;
  for (const auto& d : read.findings) faults += to_human(d);
  CHECK(faults.empty());
  REQUIRE(read.usable);
  CHECK(read.catalogue.date->value == "2026-02-01");
  const calc::Head& head = read.catalogue.heads.front();
  CHECK(head.element == "head");
  CHECK(head.name == "H-1");
  CHECK(head.price->value.amount.minor == 145000);
  CHECK(head.price->origin.kind == calc::OriginKind::catalogue);
  CHECK(head.families->value == std::vector{calc::InkFamily::uv, calc::InkFamily::oil});
  CHECK(calc::in_mpas(head.viscosity_window->high) == doctest::Approx(14));
  CHECK(head.viscosity_window->spread == calc::Spread::demand);
  const calc::HeadMode& mode = head.modes.front();
  CHECK(mode.row_offsets->value == std::vector{0.0, 0.5});
  CHECK(calc::in_pl(mode.drops->value[1]) == doctest::Approx(14));
  CHECK(calc::in_khz(mode.frequency->value[1]) == doctest::Approx(28));
  CHECK(read.catalogue.boards.front().data_rate->value.si() == 1.2e9);
  CHECK(read.catalogue.parts.front().fits->value.front() == "H-1");
  CHECK(read.catalogue.parts.front().price->value.amount.minor == 1250);
  CHECK(read.catalogue.dryers.front().drying_rate->value.si() == doctest::Approx(18.0 / 3600));
  REQUIRE(head.inputs.size() == 15);
  CHECK(head.inputs.front().key == "head.H-1.maker");
  CHECK(head.inputs.back().key == "head.H-1.mode.grey.frequency");
  CHECK(head.inputs.back().text == "40 kHz; 28 kHz");
  CHECK(head.inputs.back().value == 40);
}

TEST_CASE("hostile texts cost little and throw nothing") {
  std::string many_keys = "[request]\nid = 1\ntitle = t\n[image]\n";
  for (int i = 0; i < 30000; ++i) many_keys.append("k").append(std::to_string(i)).append(" = 1\n");
  const auto keys = intake::read_requests("a.ini", many_keys).requests.front();
  CHECK(!keys.usable);
  CHECK(keys.findings.size() <= 200);
  std::string one_line = "<requests>";
  for (int i = 0; i < 20000; ++i) {
    one_line += "<request><id>1</id><title>t</title><line><speed>3</speed></line></request>";
  }
  const auto wide = intake::read_requests("a.xml", one_line + "</requests>");
  REQUIRE(wide.requests.size() == 20000);
  CHECK(wide.requests.back().findings.front().column == 10 + 19999 * 74 + 49);
  CHECK(wide.requests.back().findings.front().source_line.size() <= 200);
  std::string deep;
  for (int i = 0; i < 100000; ++i) deep += "<a>";
  CHECK(intake::read_requests("a.xml", deep).requests.front().findings.front().code == "E0104");
  const std::string huge((std::size_t{64} << 20U) + 1, ' ');
  CHECK(intake::read_requests("a.xml", huge).requests.front().findings.front().code == "E0104");
  CHECK(!intake::read_requests("a.xml", std::string("<request>\0</request>", 20))
             .requests.front()
             .usable);
}

TEST_CASE("the table of fields says of each all there is to say") {
  for (const auto fields : {intake::request_fields(), intake::catalogue_fields()}) {
    CHECK(fields.size() > 60);
    std::string_view last;
    for (const intake::FieldInfo& field : fields) {
      CAPTURE(field.key);
      CHECK(field.key != last);
      last = field.key;
      CHECK(!field.meaning.empty());
      CHECK(!field.since.empty());
      CHECK(field.repeats == (field.key.find(".NAME.") != std::string_view::npos));
      CHECK((field.type != "word" || !field.words.empty()));
      const bool has_unit = !field.dimension.empty();
      CHECK((!has_unit ||
             std::find(field.units.begin(), field.units.end(), field.unit) != field.units.end()));
      const bool is_number = field.type == "quantity" || field.type == "number" ||
                             field.type == "integer" || field.type == "price";
      CHECK((!is_number || field.least < field.most));
      CHECK((field.governing.empty() == (field.spread == "none" || field.spread == "uncertain")));
    }
  }
}
