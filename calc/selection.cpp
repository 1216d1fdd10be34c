#include "calc/selection.h"

#include <algorithm>

#include "calc/bom_prices.h"
#include "calc/flight_inputs.h"
#include "calc/lattice.h"
#include "calc/nearest_head.h"
#include "calc/selection_parts.h"
#include "calc/station_cure.h"
#include "calc/worst_ratio.h"

namespace calc {

struct SearchStore {
  PriceBook book;
  Advances advances;
  std::shared_ptr<Flights> flights = std::make_shared<Flights>();
};

namespace {

constexpr std::size_t most_alternatives = 3;

/// Heads and families of a station: what an alternative must differ in.
using Signature = std::vector<std::pair<std::size_t, Family>>;
Signature signature(const Option& option) {
  Signature s;
  for (const Candidate* part : option.parts) {
    s.emplace_back(part->arrangement.shape.head, part->group.family);
  }
  return s;
}

bool uses(const Option& option, std::size_t head) {
  return std::any_of(option.parts.begin(), option.parts.end(),
                     [&](const Candidate* part) { return part->arrangement.shape.head == head; });
}

/// The whole search of one job: fields per way of motion, all stations, what came first.
class Run {
 public:
  Run(const Job& job, const Catalogue& catalogue)
      : own_book_(std::make_unique<const PriceBook>(catalogue, job.currency)),
        search_(prepare(job, catalogue, *own_book_)),
        stations_(search_) {
    fill_sundries(search_);
    run(nullptr);
  }
  Run(const Job& job, const Catalogue& catalogue, SearchStore& store, const std::vector<char>* only,
      Chooser::Told told)
      : search_(prepare(job, catalogue, store.book)),
        stations_(search_, store.advances),
        told_(told) {
    fill_sundries(search_);
    search_.flights = store.flights;
    search_.reasons = told_ == Chooser::Told::over;
    search_.reasons ? run(only) : run_quick(only);
  }

  Choice choice() const {
    Choice c;
    if (chosen_) c.groups = groups(*chosen_, false);
    if (told_ != Chooser::Told::winner) c.candidates = serving();
    if (!chosen_ && search_.reasons) c.over = least_miss();
    return c;
  }

  Selection result() {
    Selection s;
    find_alternatives();
    if (chosen_) {
      annotate(search_, stations_, chosen_->parts, s);
      s.chosen = groups(*chosen_);
      s.substrate_ceiling = ceiling(*chosen_);
    }
    for (const Option& a : alternatives_) s.alternatives.push_back(groups(a));
    reject(s);
    s.candidates = serving();
    s.hopefuls =
        marked([](const HeadTry& t) { return !t.failures.empty() && only_of_fit(t.failures); });
    s.hopeless = marked([](const HeadTry& t) { return !of_kind(t.failures); });
    for (char& mark : s.hopeless) mark = static_cast<char>(mark == 0);
    return s;
  }

 private:
  void run(const std::vector<char>* only) {
    for (const bool scanning : motions()) {
      ways_.emplace_back(search_, scanning, only, Trials::When::at_once);
    }
    choose_of_all();
  }

  /// Tries and prices only what might be chosen.
  void run_quick(const std::vector<char>* only) {
    const auto when =
        told_ == Chooser::Told::winner ? Trials::When::asked_for : Trials::When::at_once;
    for (const bool scanning : motions()) ways_.emplace_back(search_, scanning, only, when);
    chosen_ = winner_of(search_, stations_, ways_);
    // Of several groups, one that combines with none that passes may still be found beside others.
    const bool search_on = !chosen_ && search_.groups.size() > 1;
    if (search_on) return choose_of_all();
    if (told_ == Chooser::Told::winner) return;
    for (Trials& way : ways_) fields_.push_back(way.all());
  }

  /// Ways of motion to be looked at: whether they scan.
  std::vector<bool> motions() const {
    std::vector<bool> scanning;
    if (search_.job->single_pass) scanning.push_back(false);
    if (search_.job->scanning) scanning.push_back(true);
    return scanning;
  }

  /// Where what comes of every head is to be told, or a station is looked for beside combinations.
  void choose_of_all() {
    for (Trials& way : ways_) {
      std::vector<Option> made = combine(search_, stations_, way);
      std::move(made.begin(), made.end(), std::back_inserter(options_));
      fields_.push_back(way.all());
    }
    choose();
  }

  std::vector<char> serving() const {
    return marked([](const HeadTry& t) { return !t.accepted.empty(); });
  }

  /// Marks the heads of which a try for some group in some way of motion is so.
  template <class Is>
  std::vector<char> marked(Is is) const {
    std::vector<char> marks(search_.catalogue->heads.size(), 0);
    for (const Field& field : fields_) {
      for (const auto& tries : field) {
        for (std::size_t h = 0; h < tries.size(); ++h) {
          if (is(tries[h])) marks[h] = 1;
        }
      }
    }
    return marks;
  }

  /// Whether one of the failures is of what a head is made for, which no number mends.
  static bool of_kind(const std::vector<Finding>& failures) {
    return std::any_of(failures.begin(), failures.end(), [](const Finding& f) {
      return f.code == "ink_family" || f.code == "ink_substrate" || f.code == "serviceable" ||
             f.code == "waveform" || f.code == "driver_sources";
    });
  }

  static bool only_of_fit(const std::vector<Finding>& failures) {
    return std::all_of(failures.begin(), failures.end(), [](const Finding& f) {
      return f.code == "throw" || f.code == "viscosity" || f.code == "slope";
    });
  }

  /// The least such ratio above 1 of the stations; without any, of the heads for the group that is
  /// worst off.
  double least_miss() const {
    double least = 0;
    const auto offer = [&](const std::vector<Finding>& failures) {
      const double over = worst_ratio(failures).value_or(1);
      if (over > 1 && (least <= 0 || over < least)) least = over;
    };
    for (const Option& o : options_) offer(o.failures);
    if (!options_.empty()) return std::max(1.0, least);
    double worst = 1;
    for (const Field& field : fields_) {
      for (const auto& tries : field) {
        least = 0;
        const bool served = std::any_of(tries.begin(), tries.end(),
                                        [](const HeadTry& t) { return !t.accepted.empty(); });
        for (const HeadTry& t : tries) offer(t.failures);
        if (!served) worst = std::max(worst, least);
      }
    }
    return worst;
  }

  /// The best station, then all that differ from it in one group, once more: combinations of
  /// several groups are looked at only in part.
  void choose() {
    const Option* best = best_of(stations_, options_);
    const Option* base = best != nullptr ? best : least_failing();
    if (base == nullptr) return;
    if (search_.groups.size() > 1) {
      substitute(*base);
      best = best_of(stations_, options_);
    }
    if (best != nullptr) chosen_ = *best;
  }

  /// Where none passes, so that all are gated.
  const Option* least_failing() const {
    const Option* least = nullptr;
    for (const Option& o : options_) {
      const bool fewer = least == nullptr || o.failures.size() < least->failures.size();
      const bool same = least != nullptr && o.failures.size() == least->failures.size();
      if (fewer || (same && before(o.key, least->key))) least = &o;
    }
    return least;
  }

  void substitute(const Option& base) {
    const std::vector<const Candidate*> parts = base.parts;
    const bool scanning = parts.front()->arrangement.shape.scanning;
    for (const Field& field : fields_) {
      for (std::size_t g = 0; g < field.size(); ++g) {
        for (const HeadTry& t : field[g]) {
          if (t.accepted.empty() || t.accepted.front().arrangement.shape.scanning != scanning) {
            continue;
          }
          add_best_of(search_, stations_, t, {parts, g}, options_);
        }
      }
    }
  }

  void find_alternatives() {
    if (!chosen_) return;
    std::vector<const Option*> passing;
    for (const Option& o : options_) {
      if (o.failures.empty()) passing.push_back(&o);
    }
    std::sort(passing.begin(), passing.end(),
              [](const Option* a, const Option* b) { return before(a->key, b->key); });
    std::vector<Signature> seen{signature(*chosen_)};
    for (const Option* o : passing) {
      if (alternatives_.size() >= most_alternatives) break;
      const Signature s = signature(*o);
      if (std::find(seen.begin(), seen.end(), s) != seen.end()) continue;
      seen.push_back(s);
      alternatives_.push_back(*o);
    }
  }

  std::vector<Group> groups(const Option& option, bool placed = true) const {
    std::vector<Group> out;
    const std::vector<Arrangement> parts = stations_.arrangements(option.parts);
    for (std::size_t g = 0; g < parts.size(); ++g) {
      const Arrangement& a = parts[g];
      Findings unused;
      const auto facts = facts_of(search_, a.shape, unused);
      out.push_back(to_group(search_, search_.groups[g], *facts, a, placed));
    }
    if (!placed) return out;
    const Job& job = *search_.job;
    stand_pinning(size_pinning(job, *search_.book, out, channel_loads(job, out)), out);
    stand_in_line(job, out);
    return out;
  }

  Resolution ceiling(const Option& option) const {
    Resolution finest;
    for (const Candidate* part : option.parts) {
      const Shape& shape = part->arrangement.shape;
      const HeadMode& mode = search_.catalogue->heads[shape.head].modes[shape.mode];
      const Length smallest = dot_of(search_, mode.drops->value.front()).diameter;
      finest = std::max(finest, useful_ceiling(smallest));
    }
    return finest;
  }

  /// Whether a comes before b as a head's best: passing or failing less, then by rank.
  static bool better(const Option& a, const Option& b) {
    if (a.failures.size() != b.failures.size()) return a.failures.size() < b.failures.size();
    return before(a.key, b.key);
  }

  /// best[group][head]: the head's best station for a group, null for none.
  std::vector<std::vector<const Option*>> best_by_head() const {
    std::vector<std::vector<const Option*>> best(
        search_.groups.size(),
        std::vector<const Option*>(search_.catalogue->heads.size(), nullptr));
    for (const Option& o : options_) {
      for (std::size_t g = 0; g < o.parts.size(); ++g) {
        const Option*& entry = best[g][o.parts[g]->arrangement.shape.head];
        if (entry == nullptr || better(o, *entry)) entry = &o;
      }
    }
    return best;
  }

  /// Fewest failures of a head for a group over the ways of motion; null where it is accepted.
  const std::vector<Finding>* failures_of(std::size_t head, std::size_t group) const {
    const std::vector<Finding>* least = nullptr;
    for (const Field& field : fields_) {
      const HeadTry& t = field[group][head];
      if (!t.accepted.empty()) return nullptr;
      if (least == nullptr || t.failures.size() < least->size()) least = &t.failures;
    }
    return least;
  }

  void add_reasons(std::size_t head, std::size_t group, const Option* best,
                   RejectedHead& out) const {
    const std::string& name = search_.groups[group].group->name;
    if (best != nullptr) {
      if (best->failures.empty() && chosen_) {
        out.reasons.push_back(lost_reason(best->key, chosen_->key, name, search_.job->currency));
      }
      for (const Finding& f : best->failures) out.reasons.push_back(to_reason(f, name));
    } else if (const std::vector<Finding>* failures = failures_of(head, group)) {
      for (const Finding& f : *failures) out.reasons.push_back(to_reason(f, name));
    }
  }

  /// A head that serves each group only in another way of motion than the rest of the station.
  void add_motion_reasons(std::size_t head, RejectedHead& out) const {
    for (const Field& field : fields_) {
      for (std::size_t g = 0; g < field.size(); ++g) {
        const std::string& name = search_.groups[g].group->name;
        for (const Finding& f : field[g][head].failures) out.reasons.push_back(to_reason(f, name));
      }
      if (!out.reasons.empty()) return;
    }
  }

  void reject(Selection& s) const {
    const std::size_t count = search_.catalogue->heads.size();
    const auto best = best_by_head();
    for (std::size_t h = 0; h < count; ++h) {
      if (chosen_ && uses(*chosen_, h)) continue;
      RejectedHead row;
      row.head = search_.catalogue->heads[h].name;
      for (std::size_t g = 0; g < search_.groups.size(); ++g) add_reasons(h, g, best[g][h], row);
      if (row.reasons.empty()) add_motion_reasons(h, row);
      s.rejected.push_back(std::move(row));
    }
    const RejectedHead* const nearest = chosen_ ? nullptr : nearest_head(s.rejected);
    if (nearest != nullptr) s.nearest_head = nearest->head;
  }

  std::unique_ptr<const PriceBook> own_book_;
  Search search_;
  Stations stations_;
  Chooser::Told told_ = Chooser::Told::over;
  std::vector<Trials> ways_;
  std::vector<Field> fields_;
  std::vector<Option> options_;
  std::optional<Option> chosen_;
  std::vector<Option> alternatives_;
};

}  // namespace

Selection select(const Job& job, const Catalogue& catalogue) {
  if (!job.missing.empty()) return {};
  return Run(job, catalogue).result();
}

Choice choose(const Job& job, const Catalogue& catalogue) {
  if (!job.missing.empty()) return {};
  return Run(job, catalogue).choice();
}

Chooser::Chooser(const Catalogue& catalogue, const std::string& currency)
    : catalogue_(&catalogue),
      store_(std::make_unique<SearchStore>(SearchStore{{catalogue, currency}, {}})) {}
Chooser::~Chooser() = default;

Choice Chooser::choose(const Job& job, const std::vector<char>* only, Told told) {
  if (!job.missing.empty()) return {};
  return Run(job, *catalogue_, *store_, only, told).choice();
}

}  // namespace calc
