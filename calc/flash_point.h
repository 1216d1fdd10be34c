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

/// Temperature from degrees Fahrenheit.
Temperature from_fahrenheit(double f);

/// Whether handling at a temperature may form an explosive atmosphere: at or above FP - 5 K for a
/// pure liquid, FP - 15 K for a mixture, so: have a competent person classify. From memory.
bool may_form_vapour(Temperature handling, Temperature flash, bool pure);

}  // namespace calc
