#include "calc/trace.h"

#include "calc/trace_stages.h"
#include "calc/trace_writer.h"

namespace calc {

namespace {

/// What a group has of itself alone.
void trace_group(TraceWriter& w, const Group& group, const std::string& g) {
  trace_round(w, group, g);
  trace_ink(w, group, g);
  trace_flight(w, group, g);
  trace_impact(w, group, g);
  trace_standing(w, group, g);
  trace_barcodes(w, group, g);
}

/// Groups on one line, one after the other.
void trace_line(TraceWriter& w) {
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    const Group& group = w.spec.chosen[i];
    const std::string g = "g" + std::to_string(i + 1);
    trace_lattice(w, group, g);
    trace_rating(w, group, g);
    trace_frequency(w, group, g);
    trace_across(w, group, g);
    trace_group(w, group, g);
  }
}

/// Groups on one carriage: first what its speed and advance follow from.
void trace_carriage(TraceWriter& w) {
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    const std::string g = "g" + std::to_string(i + 1);
    trace_lattice(w, w.spec.chosen[i], g);
    trace_rating(w, w.spec.chosen[i], g);
    trace_across(w, w.spec.chosen[i], g);
  }
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    const std::string g = "g" + std::to_string(i + 1);
    trace_frequency(w, w.spec.chosen[i], g);
    trace_group(w, w.spec.chosen[i], g);
  }
}

}  // namespace

std::vector<Step> trace(const Job& job, const Catalogue& catalogue, const Specification& spec) {
  TraceWriter writer(job, catalogue, spec);
  trace_derived(writer);
  trace_required(writer);
  if (!spec.chosen.empty() && spec.chosen.front().scan) {
    trace_carriage(writer);
  } else {
    trace_line(writer);
  }
  trace_heads(writer);
  trace_ceiling(writer);
  trace_stations(writer);
  trace_seam(writer);
  trace_placement(writer);
  trace_limits(writer);
  trace_jets(writer);
  if (!spec.chosen.empty() && spec.station) {
    trace_station(writer);
    trace_drive(writer);
    trace_totals(writer);
    trace_counts(writer);
    trace_room(writer);
    trace_told(writer);
    trace_again(writer);
  }
  trace_left_out(writer);
  return writer.take();
}

}  // namespace calc
