/// A fixed arrangement under other inputs: which gates it fails then, and what it comes to.
/// Internal to verdict*.cpp and selection*.cpp.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "calc/flight_inputs.h"
#include "calc/station_sizing.h"

namespace calc {

struct Candidate;

/// What came of one job.
struct Judged {
  std::vector<Reason> failing;
  std::vector<Notice> conditions;  ///< where they are asked for
  std::vector<Group> groups;       ///< without the places of their heads; empty where the inputs no
                                   ///< longer tell what a group comes to
  Sizing sizing;                   ///< of these groups
};

/// Keeps the shape of groups (head, mode, interleave, stack, resolution) and works all else out
/// anew for each job it is asked about. The jobs are those of one request in one currency, with
/// some of its values moved; groups are of its channels.
class Judge {
 public:
  /// Heads that are only planned are as many as a job asks. Those that are built stand: a width
  /// they do not reach fails (`heads`, subject "width", in mm), while along the motion they jet as
  /// densely as the job asks.
  enum class Heads { planned, built };
  /// All must outlive it. Throws std::logic_error where the catalogue lacks a head or mode.
  Judge(const Catalogue& catalogue, const std::string& currency, const std::vector<Group>& groups,
        Heads heads = Heads::planned);
  /// Whether the conditions are gathered as well, which takes longer.
  enum class Conditions { left, gathered };
  /// Holds until the next call.
  const Judged& of(const Job& job, Conditions conditions = Conditions::left);

 private:
  struct Part {
    const std::string* group = nullptr;
    Shape shape;
    const Group* built = nullptr;  ///< null: planned
  };
  static void reach(const Search& search, const Part& part, const Arrangement& a,
                    std::vector<Reason>& failing);
  void regate(const Search& search, const GroupNeed& need, std::size_t part,
              std::vector<Candidate>& anew, std::vector<Finding>* conditions);
  void gate_station(const Search& search, const std::vector<Candidate>& anew,
                    std::vector<Finding>* conditions);

  const Catalogue* catalogue_;
  PriceBook book_;
  std::vector<Part> parts_;
  std::shared_ptr<Flights> flights_ = std::make_shared<Flights>();
  Judged judged_;
};

}  // namespace calc
