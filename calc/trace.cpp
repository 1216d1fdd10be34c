#include "calc/trace.h"

#include "calc/trace_writer.h"

namespace calc {

std::vector<Step> trace(const Job& job, const Catalogue& catalogue, const Specification& spec) {
  TraceWriter writer(job, catalogue, spec);
  trace_required(writer);
  for (std::size_t i = 0; i < spec.chosen.size(); ++i) {
    const std::string prefix = "g" + std::to_string(i + 1);
    trace_lattice(writer, spec.chosen[i], prefix);
    trace_frequency(writer, spec.chosen[i], prefix);
    trace_across(writer, spec.chosen[i], prefix);
    trace_round(writer, spec.chosen[i], prefix);
    trace_ink(writer, spec.chosen[i], prefix);
    trace_flight(writer, spec.chosen[i], prefix);
  }
  trace_seam(writer);
  trace_placement(writer);
  trace_jets(writer);
  if (!spec.chosen.empty() && spec.station) {
    trace_station(writer);
    trace_drive(writer);
  }
  return writer.take();
}

}  // namespace calc
