/// Rows of heads round a body that turns under them, and what that asks of the line.
#include <algorithm>
#include <cmath>

#include "calc/arrangement.h"
#include "calc/compare.h"
#include "calc/cylinder.h"
#include "calc/eye.h"
#include "calc/job_parts.h"
#include "calc/throw.h"

namespace calc {
namespace {

/// Rows of a station: whole banks of staggered rows where one fits, dealt out evenly.
int rows_a_station(int rows, int of_bank, int fit) {
  const int together = fit >= of_bank ? fit / of_bank * of_bank : fit;
  const int stations = (rows + together - 1) / together;
  const int units = fit >= of_bank ? of_bank : 1;
  const int even = (rows + stations - 1) / stations;
  return std::min(together, (even + units - 1) / units * units);
}

/// Angle of row i of n about the axis, from straight above [rad].
double angle_of(int i, int n, double pitch_angle) { return (i - (n - 1) / 2.0) * pitch_angle; }

/// Finding about the product: `value` against `limit`.
Finding of_product(std::string_view code, std::string_view field, Length value, Length limit) {
  return {code, {}, in_mm(value), in_mm(limit), "mm", false, "product", field, nullptr};
}

Length finest_line(const std::vector<Group>& groups) {
  Length finest = 1.0 / groups.front().resolution_along;
  for (const Group& g : groups) finest = std::min(finest, 1.0 / g.resolution_along);
  return finest;
}

void seam_condition(const Job& job, const std::vector<Group>& groups, std::vector<Finding>& all) {
  if (!image_meets_itself(job)) return;
  const std::optional<Length> seam = seam_of(job);
  const Length line = finest_line(groups);
  if (!seam) {
    all.push_back(unknown("seam_unknown", "product", {}, "diameter"));
  } else if (!at_most(*seam, line)) {
    all.push_back(of_product("seam", "diameter", *seam, line));
  }
}

/// Under the rows of one station the body turns by the image and the way from first to last row;
/// by one turn at most, after which every row has seen all of it.
Length turned(const Job& job, const Round& round) {
  const Length image = job.length.high;
  const Length around = *job.radius * (2 * pi);
  return std::min(image + round.step * (round.per_station - 1), std::max(image, around));
}

}  // namespace

std::optional<Round> round_of(const Search& search, const ModeFacts& facts, const Arrangement& a) {
  const Job& job = *search.job;
  const Head& head = *facts.head;
  const int rows = a.rows * a.positions * a.shape.interleave * a.shape.stack * a.shape.film_heads;
  const bool alone = rows < 2 && search.groups.size() < 2;
  if (!job.radius || a.shape.scanning || alone || !head.body_depth) return std::nullopt;
  const Length gap = millimetres(job.parameters[P::body_gap_mm]);
  const Length away = nominal_throw(job, head);
  Round r;
  r.depth = head.body_depth->value;
  if (head.body_height) r.height = head.body_height->value;
  r.radius = *job.radius;
  r.reach = r.radius + away;
  r.pitch_angle = radial_pitch_angle(r.depth, gap, *job.radius, away);
  r.step = *job.radius * r.pitch_angle;
  r.fit = rows_round(r.pitch_angle, job.parameters[P::round_share]);
  r.per_station = rows_a_station(rows, a.rows, r.fit);
  r.stations = (rows + r.per_station - 1) / r.per_station;
  const double outermost = angle_of(r.per_station - 1, r.per_station, r.pitch_angle);
  const Length half = std::max(half_room(outermost, r.reach, r.depth, r.height), *job.radius);
  r.station_length = 2 * half + millimetres(job.parameters[P::row_gap_mm]);
  return r;
}

void stand_round(const Round& round, Group& group) {
  int rows = 0;
  for (const HeadPlace& place : group.places) rows = std::max(rows, place.station + 1);
  for (HeadPlace& place : group.places) {
    const int slot = place.station;
    place.station = slot / round.per_station;
    const int first = place.station * round.per_station;
    const int here = std::min(round.per_station, rows - first);
    const double angle = angle_of(slot - first, here, round.pitch_angle);
    place.angle_deg = angle * 180 / pi;
    place.y = round.station_length * (place.station + 0.5) + round.reach * std::sin(angle);
    place.z = round.reach * std::cos(angle);
  }
}

std::optional<Length> seam_of(const Job& job) {
  if (!image_meets_itself(job)) return std::nullopt;
  const Value<Length>& d = *job.request->product.diameter;
  if (d.spread != Spread::uncertain) return std::nullopt;
  return seam_error(std::max(d.high - d.value, d.value - d.low));
}

void round_conditions(const Job& job, const std::vector<Group>& groups,
                      std::vector<Finding>& conditions) {
  if (!job.radius || groups.empty()) return;
  seam_condition(job, groups, conditions);
  int stations = 0;
  Length longest;
  for (const Group& g : groups) {
    stations += g.round ? g.round->stations : 1;
    if (g.round) longest = std::max(longest, turned(job, *g.round));
  }
  if (stations > 1) {
    conditions.push_back({"several_stations",
                          {},
                          static_cast<double>(stations),
                          1,
                          "",
                          false,
                          "product",
                          "form",
                          nullptr});
  }
  if (!at_most(longest, job.pitch.value)) {
    conditions.push_back(of_product("turn_travel", "pitch", longest, job.pitch.value));
  }
}

}  // namespace calc
