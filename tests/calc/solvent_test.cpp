// The table of solvents against itself and against what is printed of it: NIOSH Pocket Guide (DHHS
// 2005-149), OSHA, EU indicative limits. Rows [P] are printed, [P, C] agree with what is printed.
#include "calc/solvent.h"

#include <doctest/doctest.h>

#include <cmath>
#include <set>
#include <string>
#include <vector>

#include "calc/flash_point.h"
#include "tests/calc/support/check.h"

using namespace calc;

namespace {

const SolventRow& row(std::string_view name) {
  const SolventRow* found = find_solvent(name);
  REQUIRE(found != nullptr);
  return *found;
}

double lel_percent(std::string_view name) { return lower_limit(row(name)).value * 100; }
double limit_ppm(std::string_view name, Region region) {
  return exposure_limit(row(name), region).value_or(-1e-6) * 1e6;
}

}  // namespace

TEST_CASE("milligrams a cubic metre for a part per million") {
  struct Row {
    const char* name;
    double printed;
  };
  // NIOSH Pocket Guide, conversion of each entry at 25 degC [P].
  for (const Row& r : {Row{"MEK", 2.95}, Row{"ethanol", 1.89}, Row{"isopropanol", 2.46},
                       Row{"ethyl acetate", 3.60}, Row{"n-propyl acetate", 4.18},
                       Row{"n-butyl acetate", 4.75}, Row{"EGBEA", 6.55}, Row{"PGME", 3.69}}) {
    CAPTURE(r.name);
    const Density of_one_ppm =
        mass_concentration(1e-6, molar_mass(row(r.name)), Temperature::celsius(25));
    CHECK(support::near(of_one_ppm.si() * 1e6, r.printed, 4e-3));
  }
}

TEST_CASE("European limits by mass agree with those by volume at 20 degC") {
  struct Row {
    const char* name;
    double mg_per_m3, worked;
  };
  // Directives 2000/39/EC and (EU) 2019/1831, mg/m3 beside ppm [P, C].
  for (const Row& r : {Row{"n-butyl acetate", 241, 241.4}, Row{"MEK", 600, 599.5},
                       Row{"PGMEA", 275, 274.7}, Row{"EGBEA", 133, 133.2}, Row{"PGME", 375, 374.6},
                       Row{"EGBE", 98, 98.3}, Row{"cyclohexanone", 40.8, 40.8}}) {
    CAPTURE(r.name);
    const SolventRow& solvent = row(r.name);
    const double ppm = solvent.eu_indicative->value * 1e-6;
    const double mass = mass_concentration(ppm, molar_mass(solvent), flow_reference).si() * 1e6;
    CHECK(support::near(mass, r.mg_per_m3, 4e-3));
    CHECK(support::near(mass, r.worked, 7e-4));
  }
}

TEST_CASE("a tenth of the explosive limit as printed with the immediate danger") {
  struct Row {
    const char* name;
    double ppm;
  };
  // NIOSH: "IDLH ... [10 % LEL]" [P, C].
  for (const Row& r : {Row{"acetone", 2500}, Row{"ethanol", 3300}, Row{"isopropanol", 2000},
                       Row{"ethyl acetate", 2000}, Row{"n-butyl acetate", 1700}}) {
    CAPTURE(r.name);
    CHECK(support::near(0.1 * lel_percent(r.name) * 1e4, r.ppm, support::identity));
  }
}

TEST_CASE("classes printed for the rows follow from their flash and boiling points") {
  struct Row {
    const char* name;
    NfpaClass nfpa;
    ClpCategory clp;
  };
  // NFPA class as printed in the Pocket Guide [P]; CLP by Annex I Table 2.6.1 [C].
  for (const Row& r : {Row{"acetone", NfpaClass::ib, ClpCategory::two},
                       Row{"MEK", NfpaClass::ib, ClpCategory::two},
                       Row{"ethanol", NfpaClass::ib, ClpCategory::two},
                       Row{"isopropanol", NfpaClass::ib, ClpCategory::two},
                       Row{"n-propanol", NfpaClass::ib, ClpCategory::two},
                       Row{"ethyl acetate", NfpaClass::ib, ClpCategory::two},
                       Row{"n-propyl acetate", NfpaClass::ib, ClpCategory::two},
                       Row{"n-butyl acetate", NfpaClass::ib, ClpCategory::two},
                       Row{"PGME", NfpaClass::ic, ClpCategory::three},
                       Row{"EGBE", NfpaClass::iiia, ClpCategory::none},
                       Row{"EGBEA", NfpaClass::iiia, ClpCategory::none},
                       Row{"kerosene", NfpaClass::ii, ClpCategory::three}}) {
    CAPTURE(r.name);
    const SolventRow& solvent = row(r.name);
    const Temperature boiling = Temperature::celsius(solvent.boiling->value);
    CHECK(nfpa_class(*lower_flash(solvent), boiling) == r.nfpa);
    CHECK(clp_category(*lower_flash(solvent), boiling) == r.clp);
  }
  // UN 1173 PG II, ICSC 0367; UN 1993 PG III, ICSC 0800 [P].
  const auto group = [](const SolventRow& s) {
    return packing_group(*lower_flash(s), Temperature::celsius(s.boiling->value));
  };
  CHECK(group(row("ethyl acetate")) == PackingGroup::ii);
  CHECK(group(row("PGMEA")) == PackingGroup::iii);
}

TEST_CASE("points printed in degrees Celsius beside Fahrenheit") {
  struct Row {
    const char* name;
    double flash, boiling;
  };
  // The sheet's table of solvents: degF printed [P], degC worked out to a tenth [C].
  for (const Row& r : {Row{"acetone", -17.8, 56.1}, Row{"MEK", -8.9, 79.4},
                       Row{"ethanol", 12.8, 78.3}, Row{"isopropanol", 11.7, 82.8},
                       Row{"n-propanol", 22.2, 97.2}, Row{"ethyl acetate", -4.4, 77.2},
                       Row{"n-propyl acetate", 12.8, 101.7}, Row{"n-butyl acetate", 22.2, 125.6},
                       Row{"cyclohexanone", 63.3, 155.6}, Row{"PGME", 36.1, 120.0},
                       Row{"EGBE", 61.7, 170.6}, Row{"EGBEA", 71.1, 192.2}, Row{"PGMEA", 42, 145.8},
                       Row{"DEGDEE", 54, 189}, Row{"GBL", 98, 204}, Row{"kerosene", 37.8, 175}}) {
    CAPTURE(r.name);
    CHECK(std::abs(row(r.name).flash->value - r.flash) < 0.051);
    CHECK(std::abs(row(r.name).boiling->value - r.boiling) < 0.051);
  }
  CHECK(std::abs(row("kerosene").other_flash->value - 72.2) < 0.051);
}

TEST_CASE("explosive limits and relative densities as printed") {
  struct Row {
    const char* name;
    double lel, density, molar;
  };
  // NIOSH Pocket Guide, ICSC and OSHA pages [P].
  for (const Row& r :
       {Row{"acetone", 2.5, 0.79, 58.1}, Row{"MEK", 1.4, 0.81, 72.1},
        Row{"ethanol", 3.3, 0.79, 46.1}, Row{"isopropanol", 2.0, 0.79, 60.1},
        Row{"n-propanol", 2.2, 0.81, 60.1}, Row{"ethyl acetate", 2.0, 0.90, 88.1},
        Row{"n-propyl acetate", 1.7, 0.84, 102.2}, Row{"n-butyl acetate", 1.7, 0.88, 116.2},
        Row{"cyclohexanone", 1.1, 0.95, 98.2}, Row{"PGME", 1.6, 0.96, 90.1},
        Row{"EGBE", 1.1, 0.90, 118.2}, Row{"EGBEA", 0.88, 0.94, 160.2},
        Row{"kerosene", 0.7, 0.81, 170}}) {
    CAPTURE(r.name);
    CHECK(support::near(lel_percent(r.name), r.lel, support::identity));
    CHECK(support::near(density(row(r.name)).si() / 1000, r.density, support::identity));
    CHECK(support::near(molar_mass(row(r.name)).si() * 1e3, r.molar, support::identity));
  }
}

TEST_CASE("molar masses follow from the atoms the estimates are made of") {
  for (const SolventRow& solvent : solvents()) {
    CAPTURE(solvent.name);
    const Atoms& atoms = solvent.atoms;
    const double of_atoms = 12.011 * atoms.carbon + 1.008 * atoms.hydrogen + 15.999 * atoms.oxygen +
                            (solvent.cas == "2687-91-4" ? 14.007 : 0);  // the one with nitrogen
    CHECK(support::near(solvent.molar_g, of_atoms, 3e-3));
  }
}

TEST_CASE("limits of exposure as printed, by region") {
  constexpr double unset = -1;
  struct Row {
    const char* name;
    double us, eu;
  };
  // The lower of NIOSH recommended and OSHA permissible; EU indicative, 8 h [P].
  for (const Row& r :
       {Row{"MEK", 200, 200}, Row{"ethanol", 1000, unset}, Row{"isopropanol", 400, unset},
        Row{"n-propanol", 200, unset}, Row{"n-propyl acetate", 200, unset},
        Row{"n-butyl acetate", 150, 50}, Row{"PGME", 100, 100}, Row{"EGBE", 5, 20},
        Row{"EGBEA", 5, 20}, Row{"PGMEA", unset, 50}, Row{"DEGDEE", unset, unset}}) {
    CAPTURE(r.name);
    CHECK(limit_ppm(r.name, Region::us) == doctest::Approx(r.us));
    CHECK(limit_ppm(r.name, Region::eu) == doctest::Approx(r.eu));
  }
  CHECK(limit_ppm("ethyl acetate", Region::us) == doctest::Approx(400));
  CHECK(limit_ppm("cyclohexanone", Region::us) == doctest::Approx(25));
  // 100 mg/m3 at 25 degC.
  const Density kerosene =
      mass_concentration(*exposure_limit(row("kerosene"), Region::us), molar_mass(row("kerosene")),
                         Temperature::celsius(25));
  CHECK(support::near(kerosene.si() * 1e6, 100, 1e-3));
}

TEST_CASE("where sources disagree the lower flash point counts") {
  struct Row {
    const char* name;
    double celsius;
  };
  for (const Row& r : {Row{"cyclohexanone", 44}, Row{"DEGDEE", 54}, Row{"kerosene", 37.8}}) {
    CAPTURE(r.name);
    CHECK(flash_conflict(row(r.name)));
    CHECK(lower_flash(row(r.name))->in_celsius() == doctest::Approx(r.celsius).epsilon(1e-3));
  }
  CHECK_FALSE(flash_conflict(row("ethanol")));
  CHECK(lower_flash(row("ethanol"))->in_celsius() == doctest::Approx(12.8).epsilon(4e-3));
  // Printed 22.2 degC makes butyl acetate category 2; the harmonised class, 3, is not as strict.
  CHECK(clp_category(*lower_flash(row("n-butyl acetate")), Temperature::celsius(125.6)) ==
        ClpCategory::two);
}

TEST_CASE("limits by region, the lowest that holds there") {
  CHECK(limit_ppm("acetone", Region::us) == doctest::Approx(250));
  CHECK(limit_ppm("acetone", Region::eu) == doctest::Approx(500));
  CHECK(limit_ppm("n-butyl acetate", Region::other) == doctest::Approx(50));
  CHECK(limit_ppm("EGBE", Region::us) == doctest::Approx(5));
  // None set: unknown, never a guess.
  CHECK_FALSE(exposure_limit(row("ethanol"), Region::eu));
  CHECK_FALSE(exposure_limit(row("PGMEA"), Region::us));
  CHECK_FALSE(exposure_limit(row("GBL"), Region::other));
}

// NIOSH Pocket Guide, ST of each entry; 2000/39/EC and (EU) 2019/1831, 15 min [P].
TEST_CASE("limits over 15 min by region, and what goes through the skin") {
  const auto ppm = [](const char* name, Region region) {
    return short_term_limit(row(name), region).value_or(-1e-6) * 1e6;
  };
  CHECK(ppm("MEK", Region::us) == doctest::Approx(300));
  CHECK(ppm("isopropanol", Region::us) == doctest::Approx(500));
  CHECK(ppm("n-butyl acetate", Region::us) == doctest::Approx(200));
  CHECK(ppm("n-butyl acetate", Region::eu) == doctest::Approx(150));
  CHECK(ppm("n-butyl acetate", Region::other) == doctest::Approx(150));
  CHECK(ppm("PGMEA", Region::other) == doctest::Approx(100));
  CHECK_FALSE(short_term_limit(row("PGMEA"), Region::us));
  CHECK_FALSE(short_term_limit(row("ethanol"), Region::other));
  for (const char* name :
       {"n-propanol", "cyclohexanone", "PGME", "EGBE", "EGBEA", "PGMEA", "NEP"}) {
    CAPTURE(name);
    CHECK(row(name).skin);
  }
  CHECK_FALSE(row("MEK").skin);
}

TEST_CASE("explosive limits: measured hot, or estimated and lowered by the error") {
  CHECK(lower_limit(row("MEK")).measured_hot);
  CHECK(lel_percent("MEK") == doctest::Approx(1.4));  // not 1.8 at 25 degC: the stricter
  CHECK_FALSE(lower_limit(row("ethanol")).measured_hot);
  CHECK_FALSE(lower_limit(row("n-propyl acetate")).measured_hot);  // 100 degF
  const LowerLimit estimate = lower_limit(row("DEGDEE"));
  CHECK(estimate.estimated);
  CHECK(estimate.value * 100 == doctest::Approx(1.03 * 0.75).epsilon(4e-3));
}

TEST_CASE("names, numbers and case") {
  CHECK(find_solvent("mek") == find_solvent("78-93-3"));
  CHECK(find_solvent("2-Butanone") == find_solvent("Methyl Ethyl Ketone"));
  CHECK(find_solvent("unobtainium") == nullptr);
  CHECK(find_solvent("") == nullptr);
  std::set<std::string> names;
  for (const SolventRow& solvent : solvents()) {
    CAPTURE(solvent.name);
    CHECK(names.insert(std::string(solvent.name)).second);
    CHECK(names.insert(std::string(solvent.cas)).second);
    CHECK_FALSE(solvent.source.empty());
    for (const std::string_view also : solvent.also) {
      if (!also.empty()) CHECK(names.insert(std::string(also)).second);
    }
    CHECK(solvent.molar_g > 0);
  }
  CHECK_FALSE(solvents_edition().empty());
  CHECK_FALSE(solvents_validity().empty());
}
