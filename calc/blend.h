/// The vapour of an ink: what its solvents are reckoned with, from the request first, then from the
/// table of solvents.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "calc/job.h"
#include "calc/solvent.h"

namespace calc {

/// One solvent of an ink; `row` null: the table does not know it.
struct BlendPart {
  std::string name;
  double share = 1;  ///< of the solvents by mass
  const SolventRow* row = nullptr;
};

/// Absent figures are not known: then ask, never guess.
struct Blend {
  std::vector<BlendPart> parts;
  double evaporates = 0;                ///< share of the ink's mass that becomes vapour
  bool share_known = false;             ///< else the whole ink is counted
  std::optional<MolarMass> molar_mass;  ///< mean by mole
  std::optional<double> lel;            ///< lower explosive limit of the vapour [1]
  bool lel_estimated = false, lel_hot = false;
  std::optional<double> limit;         ///< 8 h exposure limit of the mixture [1], as if one vapour
  std::optional<Temperature> flash;    ///< stated, else the lowest of a solvent or oil ink's
  std::optional<Temperature> boiling;  ///< stated, else the lowest of its solvents
  double alcohol = 0;                  ///< share of the solvents by mass
};

/// Whether a channel's ink gives off vapour that has to be carried away: a solvent ink, or another
/// with more than a few per cent of a named solvent.
bool gives_vapour(const Channel& channel);

/// The region whose limits apply to a job.
Region region_of_job(const Job& job);

/// The vapour of a channel's ink. Mixtures by Le Chatelier, exposure limits by their sum.
Blend blend_of(const Job& job, const Channel& channel);

}  // namespace calc
