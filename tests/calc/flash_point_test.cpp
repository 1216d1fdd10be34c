#include "calc/flash_point.h"

#include <doctest/doctest.h>

#include <vector>

#include "tests/calc/support/check.h"

using namespace calc;

namespace {

struct NfpaRow {
  const char* liquid;
  double flash_f, boiling_f;
  NfpaClass expected;
};
struct ClpRow {
  double flash, boiling;
  ClpCategory expected;
};

NfpaClass nfpa(double flash_f, double boiling_f) {
  return nfpa_class(from_fahrenheit(flash_f), from_fahrenheit(boiling_f));
}
ClpCategory clp(double flash, double boiling) {
  return clp_category(Temperature::celsius(flash), Temperature::celsius(boiling));
}

}  // namespace

TEST_CASE("NFPA 30 classes as printed in the NIOSH Pocket Guide") {
  // DHHS (NIOSH) 2005-149.
  const std::vector<NfpaRow> rows = {{"acetaldehyde", -36, 69, NfpaClass::ia},
                                     {"propylene oxide", -35, 94, NfpaClass::ia},
                                     {"acetone", 0, 133, NfpaClass::ib},
                                     {"n-propanol", 72, 207, NfpaClass::ib},
                                     {"n-butanol", 84, 243, NfpaClass::ic},
                                     {"PGME", 97, 248, NfpaClass::ic},
                                     {"butyl acrylate", 103, 293, NfpaClass::ii},
                                     {"2-ethoxyethanol", 110, 275, NfpaClass::ii},
                                     {"furfural", 140, 323, NfpaClass::iiia},
                                     {"EGBE", 143, 339, NfpaClass::iiia},
                                     {"MEK", 16, 175, NfpaClass::ib},
                                     {"ethanol", 55, 173, NfpaClass::ib},
                                     {"isopropanol", 53, 181, NfpaClass::ib},
                                     {"ethyl acetate", 24, 171, NfpaClass::ib},
                                     {"n-propyl acetate", 55, 215, NfpaClass::ib},
                                     {"n-butyl acetate", 72, 258, NfpaClass::ib},
                                     {"butyl glycol acetate", 160, 378, NfpaClass::iiia}};
  for (const NfpaRow& row : rows) {
    CAPTURE(row.liquid);
    CHECK(nfpa(row.flash_f, row.boiling_f) == row.expected);
  }
  CHECK(nfpa(201, 600) == NfpaClass::iiib);  // fonofos, above 201 degF
}

TEST_CASE("NFPA 30 classes at their limits") {
  CHECK(nfpa(72.9, 99.9) == NfpaClass::ia);
  CHECK(nfpa(72.9, 100) == NfpaClass::ib);
  CHECK(nfpa(73, 50) == NfpaClass::ic);
  CHECK(nfpa(100, 300) == NfpaClass::ii);
  CHECK(nfpa(200, 300) == NfpaClass::iiib);
  CHECK(nfpa_class(from_fahrenheit(60), {}) == NfpaClass::ia_or_ib);
  CHECK(nfpa_class(from_fahrenheit(90), {}) == NfpaClass::ic);
}

TEST_CASE("CLP categories of Annex I Table 2.6.1") {
  const std::vector<ClpRow> rows = {
      {22.9, 35, ClpCategory::one},    {22.9, 35.1, ClpCategory::two},
      {23, 35, ClpCategory::three},    {23, 120, ClpCategory::three},
      {60, 162, ClpCategory::three},   {60.1, 162, ClpCategory::none},
      {-17.8, 56.1, ClpCategory::two}, {-37.8, 20.6, ClpCategory::one},
      {22.2, 125.6, ClpCategory::two}, {36.1, 120, ClpCategory::three}};
  for (const ClpRow& row : rows) {
    CAPTURE(row.flash);
    CHECK(clp(row.flash, row.boiling) == row.expected);
  }
  // Furfural, 140 degF, is exactly 60 degC: inclusive.
  CHECK(clp_category(from_fahrenheit(140), {}) == ClpCategory::three);
  CHECK(clp_category(Temperature::celsius(10), {}) == ClpCategory::one_or_two);
}

TEST_CASE("GHS category 4") {
  CHECK_FALSE(ghs_category_4(Temperature::celsius(60)));
  CHECK(ghs_category_4(Temperature::celsius(60.5)));
  CHECK(ghs_category_4(Temperature::celsius(93)));
  CHECK_FALSE(ghs_category_4(Temperature::celsius(93.5)));
}

TEST_CASE("handling near the flash point asks for a classification") {
  const Temperature flash = Temperature::celsius(50);
  CHECK(may_form_vapour(Temperature::celsius(45), flash, true));
  CHECK_FALSE(may_form_vapour(Temperature::celsius(44.9), flash, true));
  CHECK(may_form_vapour(Temperature::celsius(35), flash, false));
  CHECK_FALSE(may_form_vapour(Temperature::celsius(34.9), flash, false));
}

TEST_CASE("packing groups of class 3") {
  const auto group = [](double flash, std::optional<double> boiling) {
    std::optional<Temperature> t;
    if (boiling) t = Temperature::celsius(*boiling);
    return packing_group(Temperature::celsius(flash), t);
  };
  // ADR 2.2.3.1.3 [M].
  CHECK(group(-38, 20) == PackingGroup::i);
  CHECK(group(10, 80) == PackingGroup::ii);
  CHECK(group(10, {}) == PackingGroup::i_or_ii);
  CHECK(group(23, 80) == PackingGroup::iii);
  CHECK(group(60, 160) == PackingGroup::iii);
  CHECK(group(60.1, 160) == PackingGroup::none);
}

TEST_CASE("ignitable waste, D001") {
  const auto waste = [](double flash, double water, double alcohol) {
    return ignitable_waste({Temperature::celsius(flash), water, alcohol});
  };
  // RCRA hotline, July 1992: 54 degC, 77 % water, 13 % alcohol, 10 % other is not D001 [P].
  CHECK_FALSE(waste(54, 0.77, 0.13));
  CHECK(waste(54, 0.77, 0.24));  // 40 CFR 261.21(a)(1): less than 24 % is excluded [P]
  CHECK(waste(54, 0.49, 0.13));  // aqueous from 50 % water on, EPA guidance [P, secondary]
  CHECK(waste(54, 0, 0));
  CHECK_FALSE(waste(60, 0, 0));  // below 60 degC only
  CHECK(waste(59.9, 0, 0));
}

TEST_CASE("containers outside a storage room") {
  constexpr const char* rule = "29 CFR 1910.106(e)(2)(ii)(b), OSHA letter of 2003-12-02 [P]";
  support::check_all({
      {"IA [L]", container_limit(NfpaClass::ia).si() * 1e3, 95, 5e-3, rule},
      {"IA or IB [L]", container_limit(NfpaClass::ia_or_ib).si() * 1e3, 94.6, 1e-3, rule},
      {"IB [L]", container_limit(NfpaClass::ib).si() * 1e3, 454, 1e-3, rule},
      {"IIIA [L]", container_limit(NfpaClass::iiia).si() * 1e3, 454, 1e-3, rule},
  });
}
