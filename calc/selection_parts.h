/// The parts of select(): what each head can do for each group, and the stations made of it.
/// Internal to selection*.cpp and verdict.cpp.
#pragma once

#include <deque>
#include <map>
#include <memory>
#include <unordered_map>
#include <utility>
#include <vector>

#include "calc/arrangement.h"
#include "calc/least.h"
#include "calc/ranking.h"
#include "calc/selection.h"
#include "calc/station.h"
#include "calc/station_web.h"

namespace calc {

struct Sizing;

/// One accepted arrangement for one group. What only its price needs, the group, is worked out when
/// it is priced, and the flight of its drops when it is gated, which most of many never are.
struct Candidate {
  mutable Arrangement arrangement;
  mutable Group group;
  Floor floor{};
  mutable const GroupNeed* unwritten = nullptr;  ///< what its group is still to be written for
  mutable const GroupNeed* unflown = nullptr;    ///< what its drops are still to fly for
  std::shared_ptr<const ModeFacts> facts{};      ///< null where neither is still to be done
};
/// Works out the group of a candidate, without the flight, unless that is done.
void write(const Search& search, const Candidate& candidate);
/// Works out the flight of a written candidate's drops unless that is done.
void fly(const Search& search, const Candidate& candidate);

/// Candidates, one a group, that make a station.
using Parts = std::vector<const Candidate*>;
/// What each comes to at least.
std::vector<const Floor*> floors_of(const Parts& parts);

/// What one head can do for one group in one way of motion: its accepted arrangements, or the gates
/// that its attempt with the fewest failures fails.
struct HeadTry {
  std::vector<Candidate> accepted;
  std::vector<Finding> failures;
};

class Attempts;

/// Tries heads in one way of motion, each time in the same room (selection_try.cpp). The search
/// must outlive it.
class Tries {
 public:
  Tries(const Search& search, bool scanning);
  Tries(const Tries&) = delete;
  Tries& operator=(const Tries&) = delete;
  Tries(Tries&&) noexcept;
  Tries& operator=(Tries&&) noexcept;
  ~Tries();
  HeadTry of(const GroupNeed& need, std::size_t head);

 private:
  std::unique_ptr<Attempts> attempts_;
};

/// tries[group][head] of one way of motion.
using Field = std::vector<std::vector<HeadTry>>;

/// The heads of one way of motion for every group, each tried when it is first asked for, or all at
/// once where they will be anyway (selection_trials.cpp). The search must outlive it. `only`,
/// where not null, marks the heads to look at; the others neither pass nor fail.
class Trials {
 public:
  enum class When { asked_for, at_once };
  Trials(const Search& search, bool scanning, const std::vector<char>* only, When when);

  std::size_t groups() const { return field_.size(); }
  bool scanning() const { return scanning_; }
  /// The heads to be looked at, in order of the catalogue.
  const std::vector<std::size_t>& heads() const { return heads_; }
  const HeadTry& of(std::size_t group, std::size_t head);
  /// Whether it is known untried that the head accepts nothing.
  bool hopeless(std::size_t group, std::size_t head) const { return !least_[group][head]; }
  /// What the head comes to at least, tried or not. Precondition: not hopeless.
  const Least& least(std::size_t group, std::size_t head) const { return *least_[group][head]; }
  /// All of them tried.
  Field all();

 private:
  void look_at(std::size_t group, std::size_t head);
  void try_now(std::size_t group, std::size_t head);

  const Search* search_;
  bool scanning_;
  Tries tries_;
  std::vector<std::size_t> heads_;
  Field field_;
  std::vector<std::vector<char>> tried_;
  std::vector<std::vector<std::optional<Least>>> least_;
};

/// A station: one candidate per group.
struct Option {
  Parts parts;
  RankKey key;
  bool gated = false;             ///< whether it is known what fails
  std::vector<Finding> failures;  ///< of the gates on the whole station
};

/// What a station costs and how long it is.
struct Sized {
  Quote quote;
  Length footprint;  ///< along the line
  std::optional<StageFailure> cure, drying;
};

Sized sized_of(const Job& job, const std::vector<Group>& groups, const Sizing& sizing);

/// Prices and gates one station (selection_stations.cpp).
class Stations {
 public:
  explicit Stations(const Search& search);
  /// With a store of advances, which must outlive it.
  Stations(const Search& search, Advances& advances);
  ~Stations();
  Stations(const Stations&) = delete;
  Stations& operator=(const Stations&) = delete;
  Stations(Stations&&) = delete;
  Stations& operator=(Stations&&) = delete;
  /// Of several groups on a carriage, arrays too short for all together are made longer first.
  Option price(Parts parts) const;
  /// The same, gated where the search is to tell reasons.
  Option make(Parts parts) const;
  /// The same, gated in any case; none where it does not come before `best`, null for any.
  std::optional<Option> make_before(const RankKey* best, Parts parts) const;
  /// Gates a station unless that is done; whether it passes.
  bool passes(Option& option) const;
  /// The arrangements of a station's parts; those of a carriage ride together.
  std::vector<Arrangement> arrangements(const Parts& parts) const;
  /// Tells the groups where their pinning stands.
  Sized sized(std::vector<Group>& groups) const;
  /// Gates on the whole station, the shared carriage among them; conditions only where `conditions`
  /// is not null.
  std::vector<Finding> gate(const std::vector<Group>& groups, const Sized& size,
                            std::vector<Finding>* conditions) const;

 private:
  Option size_up(Parts parts, Sized& size) const;
  void gate_last(const Sized& size, Option& option) const;
  const Candidate* longer(std::size_t group, const Candidate& shorter) const;
  /// The arrangements of the parts, of which those on a carriage are made long enough first.
  std::vector<Arrangement> lengthen(Parts& parts) const;

  const Search* search_;
  std::unique_ptr<Sizing> scratch_;    ///< overwritten by every sized()
  mutable std::vector<Group> groups_;  ///< of the station sized last
  // Only a store of what was worked out before: const calls give the same whatever it holds.
  mutable Advances own_advances_;
  Advances* advances_ = &own_advances_;
  mutable std::deque<Candidate> longer_;
  mutable std::map<std::pair<std::size_t, const Candidate*>, const Candidate*> longer_of_;
};

/// The groups of a station's parts with these arrangements, without the places of their heads.
std::vector<Group> groups_of(const Parts& parts, const std::vector<Arrangement>& arrangements);

/// The candidates of the groups as if each were the whole station (selection_alone.cpp). Job and
/// stations must outlive it.
class Alone {
 public:
  Alone(const Job& job, const Stations& stations) : job_(job), stations_(stations) {}
  /// Its rank by itself, worked out once.
  const RankKey& key(const Candidate* c);
  /// The few of a group that enter combinations: the best by their own rank, and the ones with the
  /// fewest heads, the least footprint and the least cost, which may alone fit the limits of the
  /// whole station.
  Parts shortlist(Trials& trials, std::size_t group);
  /// Which of a head's ranks first; null for none.
  const Candidate* first(const std::vector<Candidate>& accepted);
  /// One head for every group, each time its first; empty where it does not serve all.
  Parts firsts(Trials& trials, std::size_t head);

 private:
  Parts first_few(Trials& trials, std::size_t group);
  void insert(const Candidate* c, Parts& few);

  const Job& job_;
  const Stations& stations_;
  std::unordered_map<const Candidate*, RankKey> keys_;
};

/// Every station worth looking at: all candidates of a single group; of several groups the
/// combinations of their shortlists, and each head for all of them, which shares one carriage
/// without regard to others. All of one way of motion.
std::vector<Option> combine(const Search& search, const Stations& stations, Trials& trials);

/// A group of a station in which candidates take each other's place.
struct Place {
  Parts parts;  ///< of the station; what stands in the place already is left
  std::size_t group = 0;
};
/// Adds the stations with a head's candidates in that place, gated, but for those that come after a
/// passing one of the same head and family: nothing is told of these.
void add_best_of(const Search& search, const Stations& stations, const HeadTry& tried,
                 const Place& place, std::vector<Option>& options);

/// The passing option that comes first; null if none passes. Gates only what might be it.
const Option* best_of(const Stations& stations, std::vector<Option>& options);

/// The station that a search that tells reasons chooses, found by trying and pricing only what
/// might be it. None: nothing passes, or of several groups nothing among their combinations
/// (selection_winner.cpp).
std::optional<Option> winner_of(const Search& search, const Stations& stations,
                                std::vector<Trials>& ways);

/// All combinations of one candidate per list, the first lists' first entries first, capped.
std::vector<Parts> product(const std::vector<Parts>& lists);

/// Conditions of the groups together that no gate gives (selection_notes.cpp).
void station_conditions(const Job& job, const std::vector<Group>& groups,
                        std::vector<Finding>& conditions);

/// Conditions, warnings, questions and assumptions of the chosen groups (selection_notes.cpp).
void annotate(const Search& search, const Stations& stations, const Parts& chosen,
              Selection& selection);

/// Defaults that a station with these groups rests on, beyond the job's own
/// (selection_assumptions.cpp).
std::vector<P> defaults_used(const Job& job, const Catalogue& catalogue,
                             const std::vector<Group>& groups);

}  // namespace calc
