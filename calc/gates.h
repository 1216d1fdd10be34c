/// Stage-A gates: whether a head can take an ink, reach the surface and be served, and whether an
/// arrangement of it meets resolution, cover, rate. Every gate that fails is kept with its figures.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "calc/dot.h"
#include "calc/job.h"
#include "calc/viscosity.h"

namespace calc {

class PriceBook;

/// A failed gate (`value` against `limit`, see Reason) or a condition under which one passes.
/// Views lead into the job, the catalogue or constants; no text is built for heads that lose.
struct Finding {
  std::string_view code;
  std::string_view subject;
  double value = 0;
  double limit = 0;
  std::string_view unit;
  bool at_least = true;
  std::string_view section, field;  ///< "ink" + subject + "viscosity" make the key concerned
  const Origin* where = nullptr;
  std::string_view group{};                  ///< of a condition that is about one of several
  std::optional<double> known_to_degc = {};  ///< as of Reason
  std::string_view axis{};                   ///< of a condition of one axis: motion, nozzle
  std::optional<double> at_degc = {};        ///< as of Reason
};

/// What the gates found out about one head or arrangement.
struct Findings {
  std::vector<Finding> failures, conditions;
  void clear() {
    failures.clear();
    conditions.clear();
  }
};

/// An ink with its viscosity over temperature, fitted once for the whole search.
struct InkNeed {
  const Channel* channel = nullptr;
  std::optional<ViscosityModel> model;
};

class Flights;

/// What a group costs at least whatever its heads (calc/floor.h); nothing until that is filled in.
struct Sundries {
  Money supplies;               ///< and their first fill
  Money lamps, carriage_lamps;  ///< over the years
};

/// What a group of channels asks of a head.
struct GroupNeed {
  const ChannelGroup* group = nullptr;
  std::vector<InkNeed> inks;  ///< one per channel
  int channels = 1;
  Length film;      ///< the greatest wet film asked for; zero for none
  double peak = 0;  ///< greatest peak cover of its process colours [1]; zero for none
  Sundries least;
};

/// The job as the search needs it, worked out once. Leads into the job and the catalogue.
struct Search {
  const Job* job = nullptr;
  const Catalogue* catalogue = nullptr;
  const PriceBook* book = nullptr;  ///< of the catalogue in the job's currency
  std::vector<GroupNeed> groups;
  Length width;            ///< to print, margins included
  Speed slowest, fastest;  ///< of the line
  DotEvidence evidence;
  SpreadRange spread;  ///< of the substrate's class; a value moved off its default is exact
  std::shared_ptr<Flights> flights;  ///< where flights already known are kept; never null
  /// Whether it is to be told why a head fails; else one that does is left at its first failure.
  bool reasons = true;
  double reserve = 0;
  double process_limit = 0;  ///< of process colours, in solids
};

/// Precondition: nothing is missing from the job; the book is of this catalogue and the job's
/// currency. All three must outlive it.
Search prepare(const Job& job, const Catalogue& catalogue, const PriceBook& book);

/// Whether the class default is all that is known of the dot.
bool dot_is_guess(const Search& search);
/// Dot [m] of a drop, with the range of a guess. volume > 0.
DotEstimate dot_of(const Search& search, Volume volume);

/// Word of a family as the input has it.
std::string_view family_word(InkFamily family);

/// Temperature a head jets a group's inks at, and the first ink's viscosity there; absent where the
/// data do not tell.
struct Jetting {
  std::optional<Temperature> temperature;
  std::optional<Viscosity> viscosity;
};

/// The temperature that check_inks gates with.
Jetting jetting_of(const Search& search, const GroupNeed& need, const Head& head);

/// Gates of a head by itself (family, substrate, temperature, viscosity, tension, throw, slope,
/// service). Appends to `findings`.
void check_head(const Search& search, const GroupNeed& need, const Head& head, Findings& findings);

/// The ink's part of check_head (gates_ink.cpp).
void check_inks(const Search& search, const GroupNeed& need, const Head& head, Findings& findings);

/// Wishes that are only preferred and not met by a head [1].
int unmet_prefers(const Service& service, const Head& head);

/// A finding as it stands in the specification; `group` where it names none itself.
Reason to_reason(const Finding& finding, const std::string& group);
Notice to_notice(const Finding& finding);

/// A yes/no gate that failed.
Finding refused(std::string_view code, std::string_view subject);
/// A condition about a field that is not known.
Finding unknown(std::string_view code, std::string_view section, std::string_view subject,
                std::string_view field);

}  // namespace calc
