/// The speed at which a carriage just makes what the line asks for, and where its dots then land.
#pragma once

#include <optional>
#include <vector>

#include "calc/job.h"
#include "calc/specification.h"

namespace calc {

/// From image to image of a scanned line [m]: the pitch, but never less than the image's length.
Length image_repeat(const Job& job);

/// The carriage of a scanning station slowed until it just serves the highest speed of the line
/// asked for: what lags behind shrinks in proportion. None without a carriage or where it has no
/// such speed below its own, and where one of its heads would jet in a band known bad there.
/// Preconditions: groups complete, their line speed known. Lamps as on the carriage.
std::optional<CarriagePace> carriage_pace(const Job& job, const Catalogue& catalogue,
                                          const std::vector<Group>& groups);

/// The budgets that are beyond their limit at the speed the carriage runs at, and of these the ones
/// that hold at its pace [1].
struct PaceGain {
  int beyond = 0, held = 0;
};
PaceGain pace_gain(const std::vector<Budget>& placement, const CarriagePace& pace);

}  // namespace calc
