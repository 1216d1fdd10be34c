// Air against solvent vapour: ACGIH Industrial Ventilation, 29 CFR 1910.94, Crowl and Louvar,
// worked cases of our own.
#include "calc/ventilation.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>

#include "calc/flash_point.h"
#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;

namespace {

constexpr const char* acgih = "ACGIH Industrial Ventilation, dilution, worked [M, C]";
constexpr const char* cfr = "29 CFR 1910.94(c)(6)(ii); table layout WAC 296-62-11019 [P, C]";
constexpr const char* own = "worked from the definitions [C]";
constexpr double ppm = 1e-6;
constexpr double pint = 3.785411784e-3 / 8;  // m3
constexpr double cubic_foot = 0.028316846592;
constexpr double us_reference_k = 70 / 1.8 + 459.67 / 1.8;  // 70 degF

MolarMass grams(double v) { return MolarMass::from_si(v * 1e-3); }
MassFlow kg_per_h(double v) { return MassFlow::from_si(v / 3600); }
double m3_per_h(VolumeFlow v) { return v.si() * 3600; }
double cfm(VolumeFlow v) { return v.si() * 60 / cubic_foot; }
/// Vapour at 70 degF of a liquid used up in an hour.
VolumeFlow of_pints(double pints, double relative_density, double g_per_mol) {
  return vapour_volume(MassFlow::from_si(pints * pint * relative_density * 1000 / 3600),
                       grams(g_per_mol), Temperature::kelvin(us_reference_k));
}
/// Air per gallon [ft3] to a quarter of the limit: 4 (100 - LEL) V/LEL, which leaves out the vapour
/// itself: 1 - LEL of the whole.
double per_gallon(double cubic_feet, double lel) {
  return explosion_air(VolumeFlow::from_si(cubic_feet), lel, 0.25).si() * (1 - lel);
}

}  // namespace

TEST_CASE("volumes of a mole and conversion of concentrations") {
  const auto litres_at = [](double celsius) {
    return molar_volume(Temperature::celsius(celsius)).si() * 1e3;
  };
  support::check_all({
      {"0 degC [L]", litres_at(0), 22.414, 1e-4, own},
      {"20 degC [L]", litres_at(20), 24.055, 1e-4, own},
      {"70 degF [L]", molar_volume(Temperature::kelvin(us_reference_k)).si() * 1e3, 24.146, 1e-4,
       own},
      {"25 degC [L]", litres_at(25), 24.465, 1e-4, own},
      {"70 degF [ft3/lbmol]",
       molar_volume(Temperature::kelvin(us_reference_k)).si() * 453.59237 / cubic_foot, 386.7, 1e-3,
       "constant 403 = 386.7 x 8.345/8 [P]"},
      {"ozone, 0.1 ppm at 25 degC [mg/m3]",
       mass_concentration(0.1 * ppm, grams(48), Temperature::celsius(25)).si() * 1e6, 0.196, 2e-3,
       own},
      {"a quarter of MEK's limit, 1.4 % [g/m3]",
       mass_concentration(0.25 * 0.014, grams(72.1), flow_reference).si() * 1e3, 10.5, 2e-3, own},
  });
  // Two conventions for the same limit: 20 degC in Europe, 25 degC in the United States.
  CHECK(litres_at(25) / litres_at(20) == doctest::Approx(1.0171).epsilon(1e-3));
}

TEST_CASE("vapour of a gallon, Table G-11") {
  struct Row {
    const char* liquid;
    double relative_density, molar, printed, worked;
  };
  // Densities as the sheet's table, formula 8.345 SG 386.7/MW; printed with 0.5 % [M].
  for (const Row& row :
       {Row{"toluene", 0.866, 92.14, 30.4, 30.3}, Row{"MEK", 0.805, 72.11, 36.0, 36.0},
        Row{"ethanol", 0.789, 46.07, 55.2, 55.3}, Row{"ethyl acetate", 0.900, 88.11, 32.8, 33.0}}) {
    CAPTURE(row.liquid);
    const double feet = of_pints(8, row.relative_density, row.molar).si() * 3600 / cubic_foot;
    CHECK(support::near(feet, row.printed, 8e-3));
    CHECK(support::near(feet, row.worked, 2e-3));  // 8.345 SG 386.7/MW [C]
  }
}

TEST_CASE("health dilution and fire dilution as worked in the manual") {
  const VolumeFlow chloroform = of_pints(1.5, 1.32, 133.4);
  const VolumeFlow xylene = of_pints(2, 0.88, 106);
  const VolumeFlow fire = explosion_air(xylene, 0.01, 0.1, 0.7);
  support::check_all({
      {"methyl chloroform, K 1 [cfm]", cfm(health_air(chloroform, 350 * ppm, 1)), 285, 2e-3, acgih},
      {"methyl chloroform, by the rounded 403 [cfm]", cfm(health_air(chloroform, 350 * ppm, 1)),
       284.8, 2e-3, acgih},
      {"methyl chloroform, K 5 [cfm]", cfm(health_air(chloroform, 350 * ppm, 5)), 1425, 2e-3,
       acgih},
      {"xylene at 350 degF, standard [cfm]", cfm(fire), 159, 4e-3, acgih},
      {"xylene at 350 degF, unrounded [cfm]", cfm(fire), 159.3, 2e-3, acgih},
      {"xylene at 350 degF, as it is, unrounded [cfm]",
       cfm(fire * (from_fahrenheit(350).in_kelvin() / us_reference_k)), 243.5, 2e-3, acgih},
      {"xylene at 350 degF, as it is [cfm]",
       cfm(fire * (from_fahrenheit(350).in_kelvin() / us_reference_k)), 243, 4e-3, acgih},
  });
  CHECK(hot_factor(from_fahrenheit(350), false) == 0.7);
  CHECK(hot_factor(Temperature::celsius(120), false) == 1);
  // A limit that was measured hot is not lowered once more.
  CHECK(hot_factor(from_fahrenheit(350), true) == 1);
}

TEST_CASE("air per gallon of solvent to a quarter of the limit") {
  support::check_all({
      {"toluene [ft3]", per_gallon(30.4, 0.014), 8564, 1e-4, cfr},
      {"MEK [ft3]", per_gallon(36.0, 0.018), 7856, 1e-4, cfr},
      {"ethanol [ft3]", per_gallon(55.2, 0.043), 4914, 1e-4, cfr},
      {"isopropanol [ft3]", per_gallon(44.0, 0.020), 8624, 1e-4, cfr},
      {"ethyl acetate [ft3]", per_gallon(32.8, 0.025), 5117, 1e-4, cfr},
      {"o-xylene [ft3]", per_gallon(26.4, 0.010), 10454, 1e-4, cfr},
      {"10000 ft3 a gallon [m3/L]", 10000 * cubic_foot / 3.785411784, 74.8, 1e-3,
       "rule of thumb of the trade [P]"},
  });
}

TEST_CASE("toluene in a room") {
  const VolumeFlow vapour =
      vapour_volume(MassFlow::from_si(0.1e-3 / 60), grams(92.14), from_fahrenheit(80));
  const VolumeFlow air = VolumeFlow::from_si(100 * cubic_foot / 60);
  const char* book = "Crowl and Louvar, Chemical Process Safety, chapter 3 [P, C]";
  support::check_all({
      {"mixing 10 [ppm]", steady_share(vapour, air, 10) / ppm, 94.3, 2e-3, book},
      {"mixing 10, unrounded [ppm]", steady_share(vapour, air, 10) / ppm, 94.30, 1e-3, book},
      {"mixing 2, unrounded [ppm]", steady_share(vapour, air, 2) / ppm, 18.86, 1e-3, book},
      {"mixing 2 [ppm]", steady_share(vapour, air, 2) / ppm, 18.9, 3e-3, book},
  });
}

TEST_CASE("MEK, 2 kg/h, enclosed and escaped") {
  const VolumeFlow vapour = vapour_volume(kg_per_h(2), grams(72.1));
  const VolumeFlow escaped = vapour_volume(kg_per_h(0.1), grams(72.1));
  support::check_all({
      {"vapour [m3/h]", m3_per_h(vapour), 0.667, 1e-3, own},
      {"at 25 % [m3/h]", m3_per_h(explosion_air(vapour, 0.014, 0.25)), 190.6, 1e-3, own},
      {"at 50 % [m3/h]", m3_per_h(explosion_air(vapour, 0.014, 0.50)), 95.3, 1e-3, own},
      {"at 25 %, 80 degC [m3/h]",
       m3_per_h(at_temperature(explosion_air(vapour, 0.014, 0.25), Temperature::celsius(80))),
       229.6, 1e-3, own},
      {"escaped, 200 ppm [m3/h]", m3_per_h(health_air(escaped, 200 * ppm, 1)), 166.8, 1e-3, own},
      {"escaped, K 5 [m3/h]", m3_per_h(health_air(escaped, 200 * ppm, 5)), 834, 1e-3,
       "worked case of the method"},
      {"ozone, 1 g/h to 0.1 ppm [m3/h]",
       m3_per_h(dilution_air(kg_per_h(1e-3),
                             mass_concentration(0.1 * ppm, grams(48), Temperature::celsius(25)))),
       5100, 2e-3, own},
      {"2 kg/h over 4000 h [t]", 2.0 * 4000 / 1000, 8, identity, "balance of solvent [C]"},
  });
}

TEST_CASE("mixtures and estimates of the explosive limit") {
  const std::array<ExplosivePart, 2> equal{{{0.5, 0.033}, {0.5, 0.020}}};
  const std::array<ExplosivePart, 2> scaled{{{5, 0.033}, {5, 0.020}}};
  const std::array<ExplosivePart, 1> alone{{{3, 0.014}}};
  const auto percent = [](int c, int h, int o) { return estimated_limit({c, h, o}) * 100; };
  support::check_all({
      {"ethanol and ethyl acetate, by mole [%]", mixture_limit(equal) * 100, 2.49, 1e-3,
       "Le Chatelier [P, C]"},
      {"of any whole [%]", mixture_limit(scaled) * 100, mixture_limit(equal) * 100, identity, own},
      {"one alone [%]", mixture_limit(alone) * 100, 1.4, identity, own},
      {"MEK, estimated [%]", percent(4, 8, 1), 2.02, 3e-3, "Jones [M, C]"},
      {"ethanol, estimated [%]", percent(2, 6, 1), 3.59, 3e-3, "Jones [M, C]"},
      {"PGMEA, estimated [%]", percent(6, 12, 3), 1.49, 4e-3, "Jones [M, C]"},
      {"NEP, estimated [%]", percent(6, 11, 1), 1.36, 4e-3, "Jones [M, C]"},
      {"DEGDEE, estimated [%]", percent(8, 18, 3), 1.03, 4e-3, "Jones [M, C]"},
      {"GBL, estimated [%]", percent(4, 6, 2), 2.45, 4e-3, "Jones [M, C]"},
      {"dodecane, estimated [%]", percent(12, 26, 0), 0.62, 8e-3, "Jones [M, C]"},
  });
  // Estimates against what is printed: within the quarter they are flagged with.
  CHECK(std::abs(percent(4, 8, 1) / 1.8 - 1) < estimate_error);
  CHECK(std::abs(percent(2, 6, 1) / 3.3 - 1) < estimate_error);
  CHECK(std::abs(percent(6, 12, 3) / 1.5 - 1) < estimate_error);
}

TEST_CASE("air grows with the vapour and falls with the limit and the share allowed") {
  double before = 0;
  for (int power = 0; power < 10; ++power) {
    const double kg = 0.1 * std::pow(1.7, power);
    const VolumeFlow vapour = vapour_volume(kg_per_h(kg), grams(72.1));
    const double air = explosion_air(vapour, 0.014, 0.25).si();
    CHECK(air > before);
    CHECK(explosion_air(vapour, 0.018, 0.25).si() < air);
    CHECK(explosion_air(vapour, 0.014, 0.50).si() < air);
    CHECK(health_air(vapour, 100 * ppm, 5).si() > health_air(vapour, 200 * ppm, 5).si());
    before = air;
  }
}
