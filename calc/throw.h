/// The gap from nozzle plate to surface that a head must bridge in a job, and how a curved body
/// bends away under it.
#pragma once

#include <optional>

#include "calc/job.h"

namespace calc {

/// Gaps [m]. The nominal one is to a product of nominal thickness. Least: less thickness variation
/// and flutter. Greatest: with both, and with the sagitta.
struct Throw {
  Length least, nominal, most;
  Length greatest_nominal;         ///< the upper end of a demand, with the sagitta
  Length along, across;            ///< sagitta under the nozzle rows, under the swath
  std::optional<double> slope{0};  ///< where the outermost drop lands [rad]; none: past the body
  bool curved = false;
  bool field_unknown = false;  ///< curved under the rows, whose depth the catalogue lacks
  friend bool operator==(const Throw&, const Throw&) = default;
};

/// The throw of a head. A cylinder that turns bends under the depth of its rows, one that moves
/// along its axis under its swath or the image, whichever is narrower.
Throw throw_of(const Job& job, const Head& head);

/// Nominal throw [m] for a head: given, else the head's own, else the default.
Length nominal_throw(const Job& job, const Head& head);

}  // namespace calc
