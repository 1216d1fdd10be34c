/// The search: every head, mode and arrangement; what passes, what fails and by how much.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "calc/job.h"

namespace calc {

/// The outcome of the search. `chosen` empty: nothing passed; `nearest_head` then is the head that
/// came nearest (calc/nearest_head.h).
struct Selection {
  std::vector<Group> chosen;
  std::vector<std::vector<Group>> alternatives;  ///< at most three, differing in head or family
  std::vector<RejectedHead> rejected;            ///< every head not chosen, with all reasons; those
                                       ///< of the alternatives too, with what they lost by
  std::vector<Notice> conditions;  ///< of the chosen arrangement as it stands, safety among them
  /// Per head of the catalogue: whether it serves some group; whether another throw or viscosity
  /// might let it; whether no number of the request could.
  std::vector<char> candidates, hopefuls, hopeless;
  std::string nearest_head;
  std::vector<Notice> warnings;         ///< beside figures of the chosen arrangement
  std::vector<Assumption> assumptions;  ///< used in it, beyond the job's own
  std::vector<Question> questions;      ///< it raises, beyond the job's own
  /// Finest resolution the smallest dots of the chosen heads can show on this substrate.
  std::optional<Resolution> substrate_ceiling;
};

Selection select(const Job& job, const Catalogue& catalogue);

/// What the search comes to, without reasons, notes and places of heads.
struct Choice {
  std::vector<Group> groups;     ///< empty: nothing passed
  std::vector<char> candidates;  ///< per head of the catalogue: whether it serves some group; empty
                                 ///< where that was not asked
  double over = 1;  ///< when nothing passed: by which ratio the least failing misses; 1: not known
};
Choice choose(const Job& job, const Catalogue& catalogue);

/// What does not change from one search of a catalogue to the next (selection.cpp).
struct SearchStore;

/// choose() for many jobs in one currency, of which some numbers differ: what hangs on none of them
/// is worked out once.
class Chooser {
 public:
  /// What is to be told, each with all before it and taking longer: what is chosen, which heads
  /// serve some group, by how much a job fails that nothing passes.
  enum class Told { winner, candidates, over };
  /// The catalogue must outlive it.
  Chooser(const Catalogue& catalogue, const std::string& currency);
  ~Chooser();
  Chooser(const Chooser&) = delete;
  Chooser& operator=(const Chooser&) = delete;
  Chooser(Chooser&&) = delete;
  Chooser& operator=(Chooser&&) = delete;
  /// `only`, where not null, marks the heads to be looked at.
  Choice choose(const Job& job, const std::vector<char>* only = nullptr, Told told = Told::over);

 private:
  const Catalogue* catalogue_;
  std::unique_ptr<SearchStore> store_;
};

/// The gates an arrangement of fixed shape fails under a job: for "what if this assumption moves".
/// The groups' shape (head, mode, interleave, stack, resolution) is kept, all else is computed
/// anew.
std::vector<Reason> failing_gates(const Job& job, const Catalogue& catalogue,
                                  const std::vector<Group>& groups);

}  // namespace calc
