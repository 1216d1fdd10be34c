#include "calc/flash_point.h"

#include "calc/compare.h"

namespace calc {

namespace {

/// Below a limit, taking a value within the tolerance of it as at the limit.
bool below(Temperature t, Temperature limit) { return !at_least(t.si(), limit.si()); }

}  // namespace

Temperature from_fahrenheit(double f) { return Temperature::celsius((f - 32) / 1.8); }

ClpCategory clp_category(Temperature flash, std::optional<Temperature> boiling) {
  if (!below(flash, Temperature::celsius(23))) {
    return at_most(flash.si(), Temperature::celsius(60).si()) ? ClpCategory::three
                                                              : ClpCategory::none;
  }
  if (!boiling) return ClpCategory::one_or_two;
  return at_most(boiling->si(), Temperature::celsius(35).si()) ? ClpCategory::one
                                                               : ClpCategory::two;
}

bool ghs_category_4(Temperature flash) {
  return !at_most(flash.si(), Temperature::celsius(60).si()) &&
         at_most(flash.si(), Temperature::celsius(93).si());
}

NfpaClass nfpa_class(Temperature flash, std::optional<Temperature> boiling) {
  if (!below(flash, from_fahrenheit(200))) return NfpaClass::iiib;
  if (!below(flash, from_fahrenheit(140))) return NfpaClass::iiia;
  if (!below(flash, from_fahrenheit(100))) return NfpaClass::ii;
  if (!below(flash, from_fahrenheit(73))) return NfpaClass::ic;
  if (!boiling) return NfpaClass::ia_or_ib;
  return below(*boiling, from_fahrenheit(100)) ? NfpaClass::ia : NfpaClass::ib;
}

PackingGroup packing_group(Temperature flash, std::optional<Temperature> boiling) {
  switch (clp_category(flash, boiling)) {
    case ClpCategory::one:
      return PackingGroup::i;
    case ClpCategory::two:
      return PackingGroup::ii;
    case ClpCategory::one_or_two:
      return PackingGroup::i_or_ii;
    case ClpCategory::three:
      return PackingGroup::iii;
    case ClpCategory::none:
      break;
  }
  return PackingGroup::none;
}

bool ignitable_waste(const IgnitableWaste& waste) {
  constexpr double aqueous_from = 0.5, alcohol_below = 0.24;
  if (!below(waste.flash, Temperature::celsius(60))) return false;
  const bool excluded =
      at_least(waste.water, aqueous_from) && !at_least(waste.alcohol, alcohol_below);
  return !excluded;
}

Volume container_limit(NfpaClass liquid) {
  constexpr Volume gallon = litres(3.785411784);
  const bool lightest = liquid == NfpaClass::ia || liquid == NfpaClass::ia_or_ib;
  return (lightest ? 25 : 120) * gallon;
}

bool may_form_vapour(Temperature handling, Temperature flash, bool pure) {
  return at_least(handling.si(), (flash + TemperatureDifference::from_si(pure ? -5 : -15)).si());
}

}  // namespace calc
