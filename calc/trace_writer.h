/// Tools the parts of the trace share: inputs with their origin, steps that refer to earlier ones.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "calc/job.h"

namespace calc {

/// Where a formula stands and where it holds.
struct Basis {
  std::string source;
  SourceTag tag = SourceTag::computed;
  std::string validity = "no limit";
};

StepInput constant(std::string symbol, double value, std::string unit);
/// A figure of a chosen arrangement, found by the search: no formula gives it.
StepInput chosen(std::string symbol, double value, std::string unit);
StepInput from_catalogue(std::string symbol, double value, std::string unit, std::string ref);
StepInput from_parameter(const Job& job, std::string symbol, P id);
/// An end of the range of a default, which stands beside it where it is listed.
StepInput from_range(const Job& job, std::string symbol, P id, double end);

std::string origin_word(OriginKind kind);

/// A value of the request or what stands in for it.
template <class T>
StepInput from_value(std::string symbol, const Value<T>& value, double number, std::string unit,
                     std::string key) {
  return {std::move(symbol), number, std::move(unit), origin_word(value.origin.kind),
          std::move(key)};
}

/// What is given, else the default.
template <class T>
StepInput from_value_or(std::string symbol, const Given<T>& given, double number, std::string unit,
                        std::string key, const Job& job, P id) {
  if (!given) return from_parameter(job, std::move(symbol), id);
  return from_value(std::move(symbol), *given, number, std::move(unit), std::move(key));
}

class TraceWriter {
 public:
  TraceWriter(const Job& the_job, const Catalogue& the_catalogue, const Specification& the_spec)
      : job(the_job), catalogue(the_catalogue), spec(the_spec) {}

  const Job& job;
  const Catalogue& catalogue;
  const Specification& spec;

  /// Adds a step; ids are unique. Throws std::logic_error on a repeated id.
  void add(std::string id, StepKind kind, std::string symbol, std::string formula,
           std::vector<StepInput> inputs, double value, std::string unit, const Basis& basis,
           std::vector<std::string> assumptions = {});
  void formula(std::string id, std::string symbol, std::string formula,
               std::vector<StepInput> inputs, double value, std::string unit, const Basis& basis);
  /// An earlier step as an input. Throws std::logic_error when there is none of that id.
  StepInput step(std::string symbol, const std::string& id) const;
  /// The earlier step of that id, else, as for an empty one, a figure of the chosen arrangement.
  StepInput step_or_chosen(std::string symbol, const std::string& id, double value,
                           std::string unit) const;
  /// The first of the earlier steps of those ids that has that very value, in its unit, but for
  /// the last bits; else a figure of the chosen arrangement.
  StepInput step_of_value(std::string symbol, const std::vector<std::string>& ids, double value,
                          std::string unit) const;
  bool has(const std::string& id) const { return find(id) != nullptr; }
  /// The earlier step of that id, or null. Valid until the next is added.
  const Step* find(const std::string& id) const;
  std::vector<Step> take() { return std::move(steps_); }

 private:
  std::vector<Step> steps_;
};

/// Delivered resolution along the nozzle rows, and along the motion while jetting.
Resolution nozzle_axis(const Group& group);
Resolution motion_axis(const Group& group);
/// The step that has the first of them.
std::string nozzle_axis_step(const Group& group, const std::string& prefix);

/// "R_m" [dpi], the same along the motion: its step, or the demand it meets before there is one.
StepInput motion_resolution(const TraceWriter& w, const Group& group, const std::string& g,
                            const std::string& symbol = "R_m");
/// Start of the ids of the steps of a channel's dots ("g1.black"): those of the first channel of
/// the group that prints the same.
std::string dots_steps(const Group& group, const std::string& channel, const std::string& g);

/// Heads interleaved, or on a carriage strokes interlaced: steps of the native resolution.
int lattice_steps(const Group& group);
StepInput steps_input(const TraceWriter& w, const Group& group, const std::string& g,
                      const std::string& symbol);
/// The step with the widest gap between neighbouring columns: of tilted heads not the pitch.
std::string closing_pitch(const TraceWriter& w, const std::string& g);
/// The default spread of the drops on a substrate of that class.
P spread_parameter(Absorbency absorbency);

/// "s", the printed share of the length that passes [1].
StepInput printed_share(const TraceWriter& w);
/// "w_m" [mm], printed beyond the image on each side: the margin given, else the weave.
StepInput margin_input(const Job& job, Length margin);

/// The step `at`.drop: a drop of the group's mode, as the row of its levels.
void drop_step(TraceWriter& w, const Group& group, const std::string& at, Volume drop);

/// The parts, each in its file.
/// Values of the request that follow from others; the first of all.
void trace_derived(TraceWriter& writer);
void trace_required(TraceWriter& writer);
/// One group of the chosen arrangement; `g` starts its steps' ids ("g1").
void trace_lattice(TraceWriter& writer, const Group& group, const std::string& g);
/// Its parts: drops and dots, then what the dots do on the lattice.
void trace_drops(TraceWriter& writer, const Group& group, const std::string& g);
void trace_dots(TraceWriter& writer, const Group& group, const std::string& g);
/// The resolution along the motion: the demand, else the least above it that closes solids or lays
/// the film. Of tilted heads it may be another, which is no step then. After the dots.
void trace_motion(TraceWriter& writer, const Group& group, const std::string& g);
/// What the dots do on impact; after the flight.
void trace_impact(TraceWriter& writer, const Group& group, const std::string& g);
/// Rating and usable frequency of the head.
void trace_rating(TraceWriter& writer, const Group& group, const std::string& g);
/// What of it is used; on a carriage with the carriage's own steps, after the ratings of all
/// groups.
void trace_frequency(TraceWriter& writer, const Group& group, const std::string& g);
/// The angle of tilted heads and what it does to their rows; after the native resolution. Then
/// their swath, overlap, rows of heads and room (trace_tilt.cpp).
void trace_tilt(TraceWriter& writer, const Group& group, const std::string& g);
void trace_tilted_swath(TraceWriter& writer, const Group& group, const std::string& g);
void trace_tilted_rows(TraceWriter& writer, const Group& group, const std::string& g);
/// Nozzles of tilted heads that print nothing; after heads across.
void trace_tilted_idle(TraceWriter& writer, const Group& group, const std::string& g);
bool is_tilted(const Group& group);
/// Width to print, image and margins.
void trace_width(TraceWriter& writer, const std::string& g);
void trace_across(TraceWriter& writer, const Group& group, const std::string& g);
/// "B", banks of a colour one behind the other; none where there cannot be but one. After the
/// stack's step.
std::optional<StepInput> banks_of_heads(TraceWriter& writer, const Group& group,
                                        const std::string& g);
/// "r", the rows that heads side by side stand in.
StepInput rows_of_heads(const TraceWriter& writer, const Group& group, const std::string& g);
/// Rows of heads round a body that turns; after the throw of its heads (trace_round.cpp).
void trace_round(TraceWriter& writer, const Group& group, const std::string& g);
/// Joints and length along the motion of a group (trace_standing.cpp), and the heads of all groups.
void trace_standing(TraceWriter& writer, const Group& group, const std::string& g);
void trace_heads(TraceWriter& writer);
/// The bar code on the lattice of a group (trace_barcode.cpp).
void trace_barcodes(TraceWriter& writer, const Group& group, const std::string& g);
/// What the smallest dot leaves a resolution to show; after the groups.
void trace_ceiling(TraceWriter& writer);
/// Stations round a body that turns, of all groups; after those of each.
void trace_stations(TraceWriter& writer);
/// The seam of an image all round a body.
void trace_seam(TraceWriter& writer);
void trace_scan(TraceWriter& writer, const Group& group, const std::string& g);
/// The step of a carriage's advance: the group's own where it is alone.
std::string advance_step(const TraceWriter& w, const std::string& g);
void trace_ink(TraceWriter& writer, const Group& group, const std::string& g);
/// "T" [K], the temperature a group jets at, which it has; writes the step where the room says it.
StepInput jetting_temperature(TraceWriter& writer, const Group& group, const std::string& g);
/// The inks in their heads: numbers of the jet, shear, particles (trace_jet.cpp).
void trace_jets(TraceWriter& writer);
void trace_flight(TraceWriter& writer, const Group& group, const std::string& g);
/// Way of the product a count of its encoder, "q" [um]; writes the step where it follows from a
/// wheel. Only where encoder_step() has one (trace_drive.cpp).
StepInput trace_encoder_count(TraceWriter& writer);
/// Of the whole station; the flights come first.
void trace_placement(TraceWriter& writer);
void trace_station(TraceWriter& writer);
/// Limits of placement and what checks and answers state of lattice and heads; after the lattices
/// (trace_limits.cpp).
void trace_limits(TraceWriter& writer);
/// What notes on safety and checks tell; the last of all (trace_told.cpp).
void trace_told(TraceWriter& writer);
/// Boards, supplies and encoder; after the station's data and consumption (trace_drive.cpp).
void trace_drive(TraceWriter& writer);

}  // namespace calc
