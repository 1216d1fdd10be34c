#include "tests/whole/support/verify.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace whole {
namespace {

using namespace calc;

constexpr double slack = 1e-9;  // share by which a limit may be passed: the method's tolerance

bool not_above(double a, double b) { return a <= b + slack * std::max(std::abs(a), std::abs(b)); }

const Head& head_named(const Catalogue& catalogue, const std::string& name) {
  const auto found = std::find_if(catalogue.heads.begin(), catalogue.heads.end(),
                                  [&](const Head& h) { return h.name == name; });
  REQUIRE(found != catalogue.heads.end());
  return *found;
}

const HeadMode& mode_named(const Head& head, const std::string& name) {
  const auto found = std::find_if(head.modes.begin(), head.modes.end(),
                                  [&](const HeadMode& m) { return m.name == name; });
  REQUIRE(found != head.modes.end());
  return *found;
}

/// Nozzles per length of a colour [1/m]: the row's over the largest gap between its rows.
double native_of(const HeadMode& mode) {
  std::vector<double> offsets{0};
  if (mode.row_offsets) offsets = mode.row_offsets->value;
  for (double& offset : offsets) offset -= std::floor(offset);
  std::sort(offsets.begin(), offsets.end());
  double gap = offsets.front() + 1 - offsets.back();
  for (std::size_t i = 1; i < offsets.size(); ++i) {
    gap = std::max(gap, offsets[i] - offsets[i - 1]);
  }
  return mode.row_pitch->value.si() / gap;
}

double printed_width(const Request& r) {
  const Given<Length>& width = r.image.width     ? r.image.width
                               : r.product.width ? r.product.width
                                                 : r.substrate.width;
  REQUIRE(width);
  double margin = r.line.weave ? r.line.weave->high.si() : 0;
  if (r.image.margin) margin = r.image.margin->value.si();
  return width->high.si() + 2 * margin;
}

/// The range of line speed that must be served [m/s], where the request states it in one way only:
/// as a speed, or as parts of a stated pitch.
struct Speeds {
  double low, high;
};
std::optional<Speeds> stated_speed(const Request& r) {
  const bool by_speed = r.line.speed && r.line.speed->spread != Spread::uncertain;
  const auto& parts = r.line.throughput_parts;
  if (by_speed && !parts && !r.line.throughput_area) {
    return Speeds{r.line.speed->low.si(), r.line.speed->high.si()};
  }
  if (r.line.speed || !parts || !r.product.pitch) return std::nullopt;
  const double pitch = r.product.pitch->value.si();
  return Speeds{parts->low.si() * pitch, parts->high.si() * pitch};
}

void verify_counts(const Group& g, const Head& head, const HeadMode& mode) {
  const int colours = mode.colours ? mode.colours->value : 1;
  const int channels = static_cast<int>(g.channels.size());
  CHECK(g.positions == (channels + colours - 1) / colours);
  CHECK(g.heads_total == g.positions * g.heads_across * g.interleave * g.stack * g.film_heads);
  CHECK(g.places.size() == static_cast<std::size_t>(g.heads_total));
  CHECK(g.dots.size() == g.channels.size());
  if (g.scan) CHECK(g.scan->heads_per_colour == g.heads_across);
  const bool joins = head.joins && head.joins->value && g.family != Family::tilted;
  if (joins || g.heads_across == 1) CHECK(g.rows_staggered == 1);
}

constexpr double pi = 3.14159265358979323846;

/// How far a head stands turned [rad].
double tilt_of(const HeadPlace& place) { return place.rotation_deg * pi / 180; }
bool is_straight(double angle) { return std::abs(angle) < slack; }

/// Length along the line of the corners of a body as it stands [m].
double depth_of(const Head& head, double angle) {
  double most = 0;
  for (const double side : {-0.5, 0.5}) {
    const double x = head.body_width ? side * head.body_width->value.si() : 0;
    const double y = 0.5 * head.body_depth->value.si();
    most = std::max(most, std::abs(x * std::sin(angle) + y * std::cos(angle)));
  }
  return 2 * most;
}

/// Heads of one bank, side by side, reach from the first pitch to the end of the width in steps no
/// wider than a swath less its overlap.
void verify_bank(const std::vector<HeadPlace>& bank, const Group& g, double width) {
  std::vector<double> centres;
  centres.reserve(bank.size());
  for (const HeadPlace& place : bank) centres.push_back(place.x.si());
  std::sort(centres.begin(), centres.end());
  const double swath = g.swath.si();
  CHECK(not_above(centres.front() - swath / 2, g.pitch.si()));
  CHECK(not_above(width, centres.back() + swath / 2));
  for (std::size_t i = 1; i < centres.size(); ++i) {
    CHECK(not_above(centres[i] - centres[i - 1], swath - g.overlap.si()));
  }
}

/// Bodies that stand in one row do not touch; slanted ones neither beside nor behind each other.
void verify_bodies(const std::vector<HeadPlace>& bank, const Head& head) {
  const double angle = tilt_of(bank.front());
  if (!head.body_width || (head.joins && head.joins->value && is_straight(angle))) return;
  for (const HeadPlace& a : bank) {
    for (const HeadPlace& b : bank) {
      if (&a == &b || std::abs((a.y - b.y).si()) > slack || a.station != b.station) continue;
      const double apart = std::abs((a.x - b.x).si());
      const bool beside = not_above(head.body_width->value.si(), apart * std::cos(angle));
      const bool behind = !is_straight(angle) &&
                          not_above(head.body_depth->value.si(), apart * std::sin(std::abs(angle)));
      CHECK((beside || behind));
    }
  }
}

/// Plates of neighbours round a body, each across its own radius, touch at their corners at the
/// earliest; each stands at the throw from the surface, none upside down.
void verify_round(const Group& g, const Head& head, const Request& r) {
  const double throw_si = r.line.throw_distance ? r.line.throw_distance->value.si()
                          : head.throw_nominal  ? head.throw_nominal->value.si()
                                                : 1e-3;
  const Value<Length>& diameter = *r.product.diameter;
  const bool uncertain = diameter.spread == Spread::uncertain;
  const double reach = (uncertain ? diameter.value : diameter.low).si() / 2 + throw_si;
  for (const HeadPlace& a : g.places) {
    const double turn = a.angle_deg * 3.14159265358979323846 / 180;
    CHECK(a.z.si() == doctest::Approx(reach * std::cos(turn)).epsilon(slack));
    CHECK(not_above(std::abs(a.angle_deg), 90));
    for (const HeadPlace& b : g.places) {
      const double apart = std::abs(a.angle_deg - b.angle_deg) * 3.14159265358979323846 / 180;
      if (a.station != b.station || apart < slack) continue;
      CHECK(not_above(head.body_depth->value.si(), 2 * reach * std::tan(apart / 2)));
    }
  }
}

/// Rows along the line stand at least a body apart.
void verify_rows(const Group& g, const Head& head) {
  if (!head.body_depth) return;
  std::vector<double> rows;
  for (const HeadPlace& place : g.places) rows.push_back(place.y.si());
  std::sort(rows.begin(), rows.end());
  const double depth = depth_of(head, rows.empty() ? 0 : tilt_of(g.places.front()));
  for (std::size_t i = 1; i < rows.size(); ++i) {
    const double step = rows[i] - rows[i - 1];
    if (step > slack) CHECK(not_above(depth, step));
  }
}

void verify_places(const Group& g, const Head& head, const Request& r) {
  const auto across = static_cast<std::size_t>(g.heads_across);
  for (std::size_t first = 0; first + across <= g.places.size(); first += across) {
    const auto begin = g.places.begin() + static_cast<std::ptrdiff_t>(first);
    const std::vector<HeadPlace> bank(begin, begin + static_cast<std::ptrdiff_t>(across));
    if (!g.scan) verify_bank(bank, g, printed_width(r));
    if (!g.scan) verify_bodies(bank, head);
  }
  if (g.round) {
    verify_round(g, head, r);
  } else {
    verify_rows(g, head);
  }
}

/// Every row of a head reaches over the swath, in steps of its pitch as it projects, and none of
/// its nozzles is more than a tenth of that off.
void verify_swath(const Group& g, const HeadMode& mode, double angle) {
  std::vector<double> offsets{0};
  if (mode.row_offsets) offsets = mode.row_offsets->value;
  const double row_pitch = 1 / mode.row_pitch->value.si();
  const double plate = g.nozzles / g.native.si();
  double first = -1;
  double last = 1;
  std::vector<double> seen;
  for (std::size_t row = 0; row < offsets.size(); ++row) {
    const double place = mode.row_places ? mode.row_places->value.at(row).si() : 0;
    const double shift = -place * std::sin(angle);
    first = std::max(first, shift);
    last = std::min(last, plate * std::cos(angle) + shift);
    const double at = offsets[row] * row_pitch * std::cos(angle) + shift;
    const double period = row_pitch * std::cos(angle);
    seen.push_back(at - std::floor(at / period + slack) * period);
  }
  CHECK(not_above(g.swath.si(), last - first));
  if (is_straight(angle)) CHECK(g.swath.si() == doctest::Approx(plate).epsilon(slack));
  if (is_straight(angle)) return;
  std::sort(seen.begin(), seen.end());
  seen.push_back(seen.front() + row_pitch * std::cos(angle));
  for (std::size_t i = 1; i < seen.size(); ++i) {
    CHECK(not_above(std::abs(seen[i] - seen[i - 1] - g.pitch.si()), 0.1 * g.pitch.si()));
  }
}

void verify_lattice(const Group& g, const HeadMode& mode) {
  const double native = native_of(mode);
  CHECK(g.native.si() ==
        doctest::Approx(native).epsilon(0.011));  // equal within 1 % counts as equal
  const double nozzle_axis = g.scan ? g.resolution_along.si() : g.resolution_across.si();
  const double angle = g.places.empty() ? 0 : tilt_of(g.places.front());
  const double steps = nozzle_axis / g.native.si() * std::cos(angle);
  CHECK(steps == doctest::Approx(std::round(steps)).epsilon(slack));
  if (!g.scan) CHECK(std::lround(steps) == g.interleave);
  verify_swath(g, mode, angle);
}

/// The catalogue's rating for the highest level used: none above the first is ever allowed.
void verify_rating(const Group& g, const HeadMode& mode) {
  const std::vector<Frequency>& ratings = mode.frequency->value;
  for (const ChannelDots& dots : g.dots) {
    const auto level = static_cast<std::size_t>(dots.levels_used - 2);
    REQUIRE(level < mode.drops->value.size());
    CHECK(dots.drop.si() == doctest::Approx(mode.drops->value[level].si()).epsilon(slack));
    const Frequency most = ratings.size() == 1 ? ratings.front() : ratings.at(level);
    CHECK(not_above(g.frequency_allowed.si(), most.si()));
  }
}

void verify_frequency(const Group& g, const Head& head, const HeadMode& mode, const Request& r) {
  verify_rating(g, mode);
  CHECK(not_above(g.frequency_per_nozzle.si(), g.frequency_allowed.si()));
  const auto speed = stated_speed(r);
  if (g.scan || !speed) return;
  const double columns = g.resolution_along.si() / g.stack;
  CHECK(g.frequency_per_nozzle.si() == doctest::Approx(speed->high * columns).epsilon(slack));
  CHECK(not_above(speed->high, g.speed_limit.si()));
  if (!head.avoid) return;
  const bool clear =
      speed->high * columns < head.avoid->low.si() || speed->low * columns > head.avoid->high.si();
  CHECK(clear);
}

/// An explicit resolution is met exactly; a bar code's where none is explicit.
void verify_demands(const Group& g, const Specification& spec) {
  REQUIRE(spec.required);
  const auto& demands = spec.required->demands;
  const bool is_explicit = std::any_of(demands.begin(), demands.end(),
                                       [](const Demand& d) { return d.name == "explicit"; });
  for (const Demand& demand : demands) {
    if (!demand.hard || (is_explicit && demand.name != "explicit")) continue;
    if (demand.across) CHECK(not_above(demand.across->si(), g.resolution_across.si()));
    if (demand.along) CHECK(not_above(demand.along->si(), g.resolution_along.si()));
  }
  for (const BarcodeFit& fit : g.barcodes) {
    CHECK(fit.pass);
    CHECK(not_above(fit.module_least.si(), fit.module_printed.si()));
    CHECK(not_above(fit.module_printed.si(), fit.module_most.si()));
  }
}

void verify_family(const Group& g, const Head& head, const Request& r) {
  if (!head.families) return;
  const std::vector<InkFamily>& takes = head.families->value;
  for (const Colour& colour : r.colours) {
    if (std::find(g.channels.begin(), g.channels.end(), colour.name) == g.channels.end()) continue;
    const std::string ink = colour.ink ? colour.ink->value : colour.name;
    for (const Ink& row : r.inks) {
      if (row.name != ink || !row.family) continue;
      CHECK(std::find(takes.begin(), takes.end(), row.family->value) != takes.end());
    }
  }
}

void verify_limits(const Specification& spec, const Request& r) {
  int heads = 0;
  for (const Group& group : spec.chosen) heads += group.heads_total;
  CHECK(spec.heads_total == heads);
  const Limits& limits = r.limits;
  if (limits.heads) CHECK(heads <= limits.heads->value);
  REQUIRE(spec.station);
  const Station& station = *spec.station;
  if (limits.space) CHECK(not_above(station.footprint.si(), limits.space->value.si()));
  if (limits.budget && limits.budget->value.currency == station.currency) {
    CHECK_FALSE(limits.budget->value.amount < station.cost.capital);
  }
  if (limits.lead_time && station.lead_time) {
    CHECK(not_above(station.lead_time->days, limits.lead_time->value / days(1)));
  }
}

bool fails_by_its_figures(const Reason& r) {
  return r.at_least ? !not_above(r.limit, r.value) : !not_above(r.value, r.limit);
}

/// The figures of a reason that stand in the catalogue are those of the catalogue.
void verify_reason(const Reason& reason, const Head& head) {
  if (reason.code == "driver_sources") CHECK(reason.value == head.driver_sources->value);
  if (reason.code == "temperature") {
    CHECK(reason.limit == doctest::Approx(head.temperature_most->value.in_celsius()));
  }
  if (reason.code == "tension") {
    const Value<SurfaceTension>& window = *head.tension_window;
    const SurfaceTension end = reason.at_least ? window.low : window.high;
    CHECK(reason.limit == doctest::Approx(end.si() * 1e3).epsilon(slack));
  }
  if (reason.code == "viscosity") {
    const Value<Viscosity>& window = *head.viscosity_window;
    const Viscosity end = reason.at_least ? window.low : window.high;
    CHECK(reason.limit == doctest::Approx(end.si() * 1e3).epsilon(slack));
  }
  if (reason.code == "throw" && reason.subject == "most") {
    CHECK(reason.limit == doctest::Approx(head.throw_most->value.si() * 1e3).epsilon(slack));
  }
}

void verify_one(const RejectedHead& rejected, const Catalogue& catalogue) {
  CAPTURE(rejected.head);
  CHECK_FALSE(rejected.reasons.empty());
  const Head& head = head_named(catalogue, rejected.head);
  for (const Reason& reason : rejected.reasons) {
    CAPTURE(reason.code);
    CAPTURE(reason.subject);
    CAPTURE(reason.value);
    CAPTURE(reason.limit);
    CHECK(fails_by_its_figures(reason));
    verify_reason(reason, head);
  }
}

}  // namespace

void verify_rejected(const Specification& spec, const Catalogue& catalogue) {
  std::set<std::string> named;
  for (const Group& group : spec.chosen) named.insert(group.head);
  for (const RejectedHead& rejected : spec.rejected) {
    const bool once = named.insert(rejected.head).second;
    CHECK_MESSAGE(once, rejected.head << " is both in use and rejected, or rejected twice");
    verify_one(rejected, catalogue);
  }
  for (const Head& head : catalogue.heads) {
    CHECK_MESSAGE(named.count(head.name) == 1, head.name << " is neither chosen nor rejected");
  }
  for (const Alternative& alternative : spec.alternatives) {
    for (const Group& group : alternative.groups) CHECK(named.count(group.head) == 1);
  }
}

void verify_chosen(const Specification& spec, const Request& request, const Catalogue& catalogue) {
  for (const Group& group : spec.chosen) {
    CAPTURE(group.name);
    CAPTURE(group.head);
    const Head& head = head_named(catalogue, group.head);
    const HeadMode& mode = mode_named(head, group.mode);
    verify_counts(group, head, mode);
    verify_places(group, head, request);
    verify_lattice(group, mode);
    verify_frequency(group, head, mode, request);
    verify_demands(group, spec);
    verify_family(group, head, request);
  }
  verify_limits(spec, request);
}

}  // namespace whole
