/// A carriage that scans across the substrate while it is fed step by step.
#include <algorithm>
#include <cmath>

#include "calc/across.h"
#include "calc/arrangement.h"
#include "calc/compare.h"
#include "calc/frequency.h"
#include "calc/scan.h"

namespace calc {
namespace {

/// Feed of the substrate [m/s] that a carriage reaches: an image's pitch over its time, or the
/// advance over a stroke in an endless run.
Speed feed_speed(const Job& job, const Scan& scan) {
  if (job.length.high <= Length{}) return scan.advance / scan.stroke_time;
  const Length step = std::max(job.pitch.value, job.length.high);
  return step / (scan.stroke_time * scan.strokes);
}

/// Depth of the carriage's rows, first to last [m].
Length carriage_depth(const Search& s, const ModeFacts& f, const Arrangement& a, int heads) {
  if (!f.head->body_depth) return Length{};
  const bool joins = f.head->joins && f.head->joins->value;
  const int rows = heads == 1 || joins ? 1 : 2;
  return rows_depth(rows * a.positions * a.shape.film_heads, f.head->body_depth->value,
                    millimetres(s.job->parameters[P::row_gap_mm]));
}

std::optional<Scan> scan_of(const Search& s, const ModeFacts& f, const Arrangement& a, int heads) {
  const Parameters& p = s.job->parameters;
  Scan scan;
  scan.heads_per_colour = heads;
  scan.quality_passes = static_cast<int>(std::lround(p[P::quality_passes]));
  scan.interlace_steps = interlace_steps(a.nozzle_axis, f.native);
  const int overlap = static_cast<int>(ceil_tolerant(f.overlap / f.pitch));
  const int line = joined_nozzles(f.nozzles, heads, std::min(overlap, f.nozzles - 1));
  const std::optional<int> rows = advance_rows(line, scan.interlace_steps, scan.quality_passes);
  if (!rows || *rows < 1) return std::nullopt;
  scan.advance_nozzles = *rows;
  scan.advance = advance_length(*rows, scan.interlace_steps, f.native);
  scan.array_length = carriage_depth(s, f, a, heads);
  scan.carriage_speed = carriage_speed(a.allowed, a.shape.motion_axis, scan.quality_passes, false,
                                       metres_per_second(p[P::carriage_speed]));
  const auto acceleration = Acceleration::from_si(p[P::carriage_acceleration]);
  scan.stroke_time = stroke_time(s.width, scan.array_length, scan.carriage_speed, acceleration,
                                 seconds(p[P::stroke_dwell_s]), Time{});
  scan.machine_width = machine_width(s.width, scan.array_length, scan.carriage_speed, acceleration,
                                     millimetres(p[P::park_mm]));
  const Length length = s.job->length.high;
  if (length > Length{}) {
    scan.strokes = strokes(length, scan.advance, scan.interlace_steps, scan.quality_passes);
    scan.throughput = scan_throughput(s.width, length,
                                      image_time(static_cast<int>(scan.strokes), scan.stroke_time));
  } else {
    scan.throughput = endless_throughput(s.width, scan.advance, scan.stroke_time);
  }
  return scan;
}

/// The least heads end to end that feed fast enough, or what the most reach.
void least_carriage(const Search& s, const ModeFacts& f, Arrangement& a) {
  const int from = a.shape.carriage_heads > 0 ? a.shape.carriage_heads : 1;
  const int to = a.shape.carriage_heads > 0 ? from : most_carriage_heads;
  for (int heads = from; heads <= to; ++heads) {
    a.across = heads;
    a.scan = scan_of(s, f, a, heads);
    if (!a.scan) continue;
    a.speed_limit = feed_speed(*s.job, *a.scan);
    if (at_least(a.speed_limit, s.fastest)) break;
  }
  a.shape.carriage_heads = a.across;
}

}  // namespace

void scan_with(const Search& search, const ModeFacts& facts, Arrangement& a, Findings& findings) {
  a.shape.stack = 1;
  least_carriage(search, facts, a);
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
  if (a.scan) {
    a.column = column_frequency(a.scan->carriage_speed, a.shape.motion_axis);
    a.per_nozzle = a.column;
  }
  const Given<bool>& indexing = search.job->request->line.indexing;
  if (!indexing) {
    findings.conditions.push_back(unknown("indexing_unknown", "line", {}, "indexing"));
  } else if (!indexing->value) {
    findings.failures.push_back(refused("indexing", "scanning"));
  }
}

}  // namespace calc
