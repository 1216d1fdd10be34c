/// Classes of flammable liquids by flash and boiling point.
#pragma once

#include <optional>

#include "calc/quantity.h"

namespace calc {

/// CLP categories (hazard statements H224, H225, H226). `one_or_two`: boiling point not known.
enum class ClpCategory { one, two, one_or_two, three, none };
/// GHS adds category 4 (H227), used by OSHA.
enum class NfpaClass { ia, ib, ia_or_ib, ic, ii, iiia, iiib };

/// Category: FP < 23 degC and initial boiling point <= 35 (1) or above (2); 23 <= FP <= 60 (3).
/// Source: Regulation (EC) 1272/2008 Annex I Table 2.6.1.
ClpCategory clp_category(Temperature flash, std::optional<Temperature> boiling);

/// Whether the liquid is GHS category 4: 60 < FP <= 93 degC (H227). Source: UN GHS; OSHA.
bool ghs_category_4(Temperature flash);

/// Class by closed-cup flash and boiling point in degF: IA FP < 73, BP < 100; IB FP < 73, BP >=
/// 100; IC FP < 100; II FP < 140; IIIA FP < 200; IIIB above. Source: NFPA 30.
NfpaClass nfpa_class(Temperature flash, std::optional<Temperature> boiling);

/// Packing group for transport as a flammable liquid of class 3; none above 60 degC. `i_or_ii`:
/// boiling point not known. Source: ADR 2.2.3.1.3, from memory: I boils at 35 degC or below, II
/// flashes below 23 degC, III from 23 to 60 degC.
enum class PackingGroup { i, ii, i_or_ii, iii, none };
PackingGroup packing_group(Temperature flash, std::optional<Temperature> boiling);

/// What decides whether a liquid waste is ignitable.
struct IgnitableWaste {
  Temperature flash;
  double water = 0;    ///< share by mass
  double alcohol = 0;  ///< share by volume
};
/// Whether waste is ignitable, code D001: flash point below 60 degC, but not an aqueous solution
/// (at least half water by mass) with less than 24 % of alcohol by volume. Source: 40 CFR
/// 261.21(a)(1); the half by guidance of EPA.
bool ignitable_waste(const IgnitableWaste& waste);

/// Greatest volume [m3] in containers in one fire area outside a storage room or cabinet: 25 gal of
/// class IA, 120 gal of IB to III. Source: 29 CFR 1910.106(e)(2)(ii)(b) as interpreted in 2003.
Volume container_limit(NfpaClass liquid);
/// Temperature from degrees Fahrenheit.
Temperature from_fahrenheit(double f);

/// Whether handling at a temperature may form an explosive atmosphere: at or above FP - 5 K for a
/// pure liquid, FP - 15 K for a mixture, so: have a competent person classify. From memory.
bool may_form_vapour(Temperature handling, Temperature flash, bool pure);

}  // namespace calc
