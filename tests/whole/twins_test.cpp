// The INI and the XML form of one request are one request.
#include <doctest/doctest.h>

#include <stdexcept>

#include "output/csv.h"
#include "tests/whole/support/case.h"
#include "tests/whole/support/figures.h"
#include "tests/whole/support/written.h"

namespace {

/// Every kind of field: text, words, numbers, lists of points, ranges, uncertainty, prices, yes/no,
/// US units, a name that is not Latin, characters that XML escapes.
whole::Entries rich() {
  return whole::changed(whole::plain_request(),
                        "request.title = Labels < 1 & more\n"
                        "request.revision = C\n"
                        "request.currency = EUR\n"
                        "request.units = us\n"
                        "request.notes = proofs; then 2 trials\n"
                        "customer.organisation = \xC3\x89tiquettes \xE6\x9C\xA8\xE7\x89\x88\n"
                        "product.width = 10 in\n"
                        "product.thickness_variation = 4 mil\n"
                        "image.length = 120 mm\n"
                        "image.resolution = 600 x 300 dpi\n"
                        "image.smallest_text = 5 pt\n"
                        "image.typeface = bold\n"
                        "image.solids = yes\n"
                        "image.levels = 3\n"
                        "ink.black.settles = yes\n"
                        "ink.black.flash_point = 105 degC\n"
                        "ink.cyan.viscosity = 22 mPa.s at 25 degC; 15 mPa.s at 35 degC; "
                        "9 mPa.s at 50 degC\n"
                        "substrate.width = 230 mm\n"
                        "line.speed = 60..100 ft/min\n"
                        "line.throw_distance = 1 mm +- 0.2 mm\n"
                        "service.waveform = prefer\n"
                        "limits.heads = 60\n"
                        "limits.budget = 250000 EUR\n"
                        "limits.lead_time = 20 week\n"
                        "costs.energy = 0.174 EUR/kWh\n"
                        "costs.discount = 6.5 %\n"
                        "costs.years = 7\n");
}

intake::ReadRequest read(const std::string& name, const std::string& text) {
  auto file = intake::read_requests(name, text);
  if (file.requests.size() != 1 || !file.requests.front().usable) {
    throw std::runtime_error(intake::to_human(file.requests.at(0).findings.at(0)));
  }
  return std::move(file.requests.front());
}

}  // namespace

TEST_CASE("the INI and the XML form of one request give the same figures, places apart") {
  const auto catalogue = whole::read_catalogue(whole::plain_catalogue());
  const output::Environment environment{catalogue, whole::templates(), whole::fonts()};
  const auto ini = read("twin.ini", whole::as_ini(rich()));
  const auto xml = read("twin.xml", whole::as_xml(rich(), "request"));
  const auto from_ini = output::specify(ini, environment, "2026-11-20");
  const auto from_xml = output::specify(xml, environment, "2026-11-20");
  CHECK_FALSE(from_ini.chosen.empty());
  CHECK(ini.source != xml.source);
  const std::string one = whole::without_places(output::figures_of(from_ini, ini));
  const std::string other = whole::without_places(output::figures_of(from_xml, xml));
  const std::string where = whole::differences(one, other);
  CHECK_MESSAGE(where.empty(), where);
  CHECK(output::write_bom_csv(from_ini) == output::write_bom_csv(from_xml));
}

TEST_CASE("a request alone and the same among others give the same figures") {
  const auto catalogue = whole::read_catalogue(whole::plain_catalogue());
  const output::Environment environment{catalogue, whole::templates(), whole::fonts()};
  const std::string text = whole::as_xml(rich(), "request");
  const auto alone = read("one.xml", text);
  const auto file =
      intake::read_requests("two.xml", "<requests>\n" + text + text + "</requests>\n");
  REQUIRE(file.requests.size() == 2);
  for (const auto& request : file.requests) {
    REQUIRE(request.usable);
    const std::string where =
        whole::differences(whole::without_places(output::figures_of(
                               output::specify(alone, environment, "2026-11-20"), alone)),
                           whole::without_places(output::figures_of(
                               output::specify(request, environment, "2026-11-20"), request)));
    CHECK_MESSAGE(where.empty(), where);
  }
}
