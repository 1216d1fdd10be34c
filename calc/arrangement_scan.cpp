/// A carriage that scans across the substrate while it is fed step by step.
#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <utility>

#include "calc/across.h"
#include "calc/arrangement.h"
#include "calc/compare.h"
#include "calc/frequency.h"
#include "calc/scan.h"
#include "calc/station_cure.h"

namespace calc {
namespace {

/// Speeds of a carriage at high use of the rating and at the whole of it.
using Speeds = std::array<Speed, 2>;
Speeds speeds_of(const Parameters& p, const std::vector<Rider>& riders) {
  return {shared_speed(p, riders, p[P::high_use]), shared_speed(p, riders, 1.0)};
}

/// The figures all riders of a carriage share, and the feed of the line it reaches.
struct Carriage {
  Scan scan;
  Speed feed;
};

/// Feed of the substrate [m/s] that a carriage reaches: an image's pitch over its time, or the
/// advance over a stroke in an endless run.
Speed feed_speed(const Job& job, const Scan& scan) {
  if (job.length.high <= Length{}) return scan.advance / scan.stroke_time;
  const Length step = std::max(job.pitch.value, job.length.high);
  return step / (scan.stroke_time * scan.strokes);
}

int passes_of(const Parameters& p) { return static_cast<int>(std::lround(p[P::quality_passes])); }

void fill_stroke(const Search& s, Scan& scan) {
  const Parameters& p = s.job->parameters;
  const auto acceleration = Acceleration::from_si(p[P::carriage_acceleration]);
  scan.stroke_time = stroke_time(s.width, scan.array_length, scan.carriage_speed, acceleration,
                                 seconds(p[P::stroke_dwell_s]), Time{});
  scan.machine_width = machine_width(s.width, scan.array_length, scan.carriage_speed, acceleration,
                                     millimetres(p[P::park_mm]));
}

void fill_throughput(const Search& s, int steps, Scan& scan) {
  const Length length = s.job->length.high;
  if (length <= Length{}) {
    scan.throughput = endless_throughput(s.width, scan.advance, scan.stroke_time);
    return;
  }
  const int count = strokes(length, scan.advance, steps, scan.quality_passes);
  scan.strokes = count;
  scan.throughput = scan_throughput(s.width, length, image_time(count, scan.stroke_time));
}

int most_steps(const std::vector<Rider>& riders) {
  int steps = 1;
  for (const Rider& r : riders) steps = std::max(steps, r.steps);
  return steps;
}

/// Adds what a group brings to the choice of lamps.
void add_inks(const Search& s, const GroupNeed& need, const Arrangement& a, CarriageInks& inks) {
  inks.loads.reserve(s.job->channels.size());
  for (const std::size_t channel : need.group->channels) {
    ChannelLoad& load = inks.loads.emplace_back();
    load.channel = channel;
    load.laydown = a.laydown;
    inks.exhausted = inks.exhausted || wants_vapour_exhaust(*s.job, channel);
  }
}

/// The carriage of these riders, with its lamps where `inks` is not null; at high use of the rating
/// only where the line asks for it.
std::optional<Carriage> carriage_of(const Search& s, const std::vector<Rider>& riders,
                                    const Speeds& speeds, std::optional<Length> advance,
                                    const CarriageInks* inks) {
  const Parameters& p = s.job->parameters;
  if (!advance) return std::nullopt;
  Carriage c;
  c.scan.advance = *advance;
  c.scan.quality_passes = passes_of(p);
  c.scan.interlace_steps = riders.front().steps;
  c.scan.passes = most_steps(riders) * c.scan.quality_passes;
  Length rows;
  for (const Rider& r : riders) rows += r.depth;
  for (const Speed speed : speeds) {
    c.scan.carriage_speed = speed;
    c.scan.array_length = rows;
    // Speed and advance decide the lamps and are not decided by them: nothing has to be iterated.
    if (inks != nullptr) c.scan.array_length += carriage_lamps(*s.job, *s.book, *inks, c.scan);
    fill_stroke(s, c.scan);
    fill_throughput(s, most_steps(riders), c.scan);
    c.feed = feed_speed(*s.job, c.scan);
    if (at_least(c.feed, s.fastest)) break;
  }
  return c;
}

/// What an arrangement with so many heads end to end brings; none where they are too few to print
/// each row as often as asked.
std::optional<Rider> rider_of(const Search& s, const ModeFacts& f, const Arrangement& a,
                              int heads) {
  Rider r;
  r.allowed = a.allowed;
  r.motion_axis = a.shape.motion_axis;
  r.nozzle_axis = a.nozzle_axis;
  r.steps = interlace_steps(a.nozzle_axis, f.native);
  const int overlap = static_cast<int>(ceil_tolerant(f.overlap / f.pitch));
  const int line = joined_nozzles(f.nozzles, heads, std::min(overlap, f.nozzles - 1));
  const std::optional<int> rows = advance_rows(line, r.steps, passes_of(s.job->parameters));
  if (!rows || *rows < 1) return std::nullopt;
  r.rows = *rows;
  r.advance = advance_length(*rows, r.steps, f.native);
  r.depth = depth_of(s, f, a, rows_of(s, f, heads));
  r.along = (heads - 1) * f.head_pitch;
  r.along += f.head->body_width ? f.head->body_width->value : f.swath;
  if (f.head->avoid) r.avoid = &*f.head->avoid;
  return r;
}

void take(const Search& s, const Carriage& c, const Rider& r, int heads, Arrangement& a) {
  a.scan = c.scan;
  a.scan->heads_per_colour = heads;
  a.scan->interlace_steps = r.steps;
  a.scan->advance_nozzles = r.rows;
  a.scan->heads_along = r.along;
  a.column = column_frequency(c.scan.carriage_speed, r.motion_axis);
  a.per_nozzle = a.column;
  a.speed_limit = c.feed;
  a.margin = c.feed / s.fastest;
}

/// The carriage of one rider: its lamps matter only where it would feed fast enough without them.
std::optional<Carriage> lone_carriage(const Search& s, const std::vector<Rider>& alone,
                                      const Speeds& speeds, const CarriageInks* inks, bool last) {
  const std::optional<Length> advance = shared_advance(alone);
  std::optional<Carriage> c = carriage_of(s, alone, speeds, advance, nullptr);
  const bool counts = c && (last || at_least(c->feed, s.fastest));
  return inks != nullptr && counts ? carriage_of(s, alone, speeds, advance, inks) : c;
}

/// The least heads end to end that feed fast enough, or what the most reach.
void least_carriage(const Search& s, const ModeFacts& f, const CarriageInks* inks, Arrangement& a) {
  const int from = a.shape.carriage_heads > 0 ? a.shape.carriage_heads : 1;
  const int to = a.shape.carriage_heads > 0 ? from : most_carriage_heads;
  std::vector<Rider> alone(1);
  std::optional<Speeds> speeds;  // the same whatever the number of heads
  for (int heads = from; heads <= to; ++heads) {
    a.across = heads;
    const std::optional<Rider> rider = rider_of(s, f, a, heads);
    if (!rider) continue;
    alone.front() = *rider;
    if (!speeds) speeds = speeds_of(s.job->parameters, alone);
    const std::optional<Carriage> c = lone_carriage(s, alone, *speeds, inks, heads == to);
    if (!c) continue;
    take(s, *c, *rider, heads, a);
    if (at_least(a.speed_limit, s.fastest)) break;
  }
  a.shape.carriage_heads = a.across;
}

/// Whole rows of a rider's lattice in an advance; none where it is not whole rows.
std::optional<int> whole_rows(const Rider& r, Length advance) {
  const double rows = advance * r.nozzle_axis;
  const double nearest = std::floor(rows + 0.5);
  if (nearest < 1 || std::abs(rows - nearest) > 1e-6) return std::nullopt;
  return static_cast<int>(nearest);
}

bool is_whole_for_all(const std::vector<Rider>& riders, Length advance) {
  return std::all_of(riders.begin(), riders.end(),
                     [&](const Rider& r) { return whole_rows(r, advance).has_value(); });
}

/// Whether an advance is whole rows of every rider's lattice that leave none out.
bool suits_all(const std::vector<Rider>& riders, Length advance) {
  return std::all_of(riders.begin(), riders.end(), [&](const Rider& r) {
    const std::optional<int> rows = whole_rows(r, advance);
    return rows && std::gcd(*rows, r.steps) == 1;
  });
}

Rider rider_from(const Search& s, const Arrangement& a) {
  const Head& head = s.catalogue->heads[a.shape.head];
  return {a.allowed,
          a.shape.motion_axis,
          a.nozzle_axis,
          a.scan->interlace_steps,
          a.scan->advance_nozzles,
          a.scan->advance,
          a.footprint,
          head.avoid ? &*head.avoid : nullptr,
          a.scan->heads_along};
}

}  // namespace

Speed shared_speed(const Parameters& parameters, const std::vector<Rider>& riders, double share) {
  Speed v = metres_per_second(parameters[P::carriage_speed]);
  for (const Rider& r : riders) {
    v = carriage_speed(r.allowed * share, r.motion_axis, 1, false, v);
  }
  // Leaving one band may lead into another, and only ever downwards: each is left at most once.
  for (std::size_t i = 0; i < riders.size(); ++i) {
    for (const Rider& r : riders) {
      if (r.avoid == nullptr) continue;
      const Frequency f = column_frequency(v, r.motion_axis);
      if (in_bad_band(f, r.avoid->low, r.avoid->high))
        v = below_band * r.avoid->low / r.motion_axis;
    }
  }
  return v;
}

namespace {

std::size_t least_of(const std::vector<Rider>& riders) {
  const auto least =
      std::min_element(riders.begin(), riders.end(),
                       [](const Rider& a, const Rider& b) { return a.advance < b.advance; });
  return static_cast<std::size_t>(least - riders.begin());
}

Length advance_of(int rows, const Rider& least) {
  return static_cast<double>(rows) / least.nozzle_axis;
}

/// Looks for the period among fewer rows than the least rider's, from where it was looked before.
void find_period(const std::vector<Rider>& riders, const Rider& least, Period& known) {
  while (known.rows == 0 && known.looked < least.rows - 1) {
    ++known.looked;
    if (is_whole_for_all(riders, advance_of(known.looked, least))) known.rows = known.looked;
  }
}

/// shared_advance() with what is known of these lattices. What is whole for all is a multiple of
/// the period.
std::optional<Length> advance_with(const std::vector<Rider>& riders, const Rider& least,
                                   Period& known) {
  if (suits_all(riders, least.advance)) return least.advance;
  find_period(riders, least, known);
  if (known.rows == 0) return std::nullopt;
  const int most = (least.rows - 1) / known.rows * known.rows;
  for (int rows = most; rows > known.barren; rows -= known.rows) {
    const Length advance = advance_of(rows, least);
    if (suits_all(riders, advance)) return advance;
  }
  known.barren = std::max(known.barren, most);
  return std::nullopt;
}

}  // namespace

std::optional<Length> shared_advance(const std::vector<Rider>& riders) {
  Period unknown;
  return advance_with(riders, riders[least_of(riders)], unknown);
}

std::optional<Length> Advances::of(const std::vector<Rider>& riders) {
  const std::size_t least = least_of(riders);
  std::vector<double> lattices;
  lattices.reserve(1 + 2 * riders.size());
  lattices.push_back(static_cast<double>(least));
  for (const Rider& r : riders) {
    lattices.push_back(static_cast<double>(r.steps));
    lattices.push_back(r.nozzle_axis.si());
  }
  return advance_with(riders, riders[least], periods_[std::move(lattices)]);
}

void ride_together(const Search& search, std::vector<Arrangement>& riders, Advances& advances) {
  std::vector<Rider> all;
  all.reserve(riders.size());
  CarriageInks inks;
  inks.head = riders.front().shape.head;
  for (std::size_t i = 0; i < riders.size(); ++i) {
    all.push_back(rider_from(search, riders[i]));
    add_inks(search, search.groups[i], riders[i], inks);
  }
  const Speeds speeds = speeds_of(search.job->parameters, all);
  const std::optional<Carriage> c = carriage_of(search, all, speeds, advances.of(all), &inks);
  for (std::size_t i = 0; i < riders.size(); ++i) {
    if (c) {
      take(search, *c, all[i], riders[i].scan->heads_per_colour, riders[i]);
    } else {
      riders[i].speed_limit = {};
      riders[i].margin = 0;
      riders[i].scan->throughput = {};
    }
  }
}

void scan_with(const Search& search, const GroupNeed& need, const ModeFacts& facts, Arrangement& a,
               Findings& findings) {
  a.shape.stack = 1;
  CarriageInks inks;
  inks.head = a.shape.head;
  add_inks(search, need, a, inks);
  least_carriage(search, facts, search.groups.size() == 1 ? &inks : nullptr, a);
  if (!a.scan || !at_least(a.speed_limit, search.fastest)) {
    findings.failures.push_back({"frequency",
                                 "throughput",
                                 a.speed_limit.si(),
                                 search.fastest.si(),
                                 "m/s",
                                 true,
                                 {},
                                 {},
                                 {}});
  }
  const Given<bool>& indexing = search.job->request->line.indexing;
  if (!indexing) {
    findings.conditions.push_back(unknown("indexing_unknown", "line", {}, "indexing"));
  } else if (!indexing->value) {
    findings.failures.push_back(refused("indexing", "scanning"));
  }
}

}  // namespace calc
