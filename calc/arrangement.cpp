#include "calc/arrangement.h"

#include <algorithm>
#include <cmath>

#include "calc/across.h"
#include "calc/compare.h"
#include "calc/frequency.h"
#include "calc/lattice.h"
#include "calc/tilt.h"

namespace calc {
namespace {

/// Field the gates cannot do without that a mode lacks; empty for none.
std::string_view lacking(const HeadMode& mode) {
  if (!mode.row_pitch) return "row_pitch";
  if (!mode.nozzles) return "nozzles";
  if (!mode.drops || mode.drops->value.empty()) return "drops";
  if (!mode.frequency || mode.frequency->value.empty()) return "frequency";
  const std::size_t ratings = mode.frequency->value.size();
  if (ratings != 1 && ratings != mode.drops->value.size()) return "frequency";
  if (mode.drops->value.size() > most_levels) return "drops";
  if (mode.drop_speed && mode.drop_speed->value.size() != mode.drops->value.size()) {
    return "drop_speed";
  }
  return {};
}

const std::vector<double>& offsets_of(const HeadMode& mode) {
  static const std::vector<double> single{0.0};
  return mode.row_offsets && !mode.row_offsets->value.empty() ? mode.row_offsets->value : single;
}

void fill_lattice(const HeadMode& mode, ModeFacts& f) {
  const std::vector<double>& offsets = offsets_of(mode);
  const Resolution row = mode.row_pitch->value;
  f.native = native_resolution(row, offsets).value;
  f.untilted = f.native;
  const double per_row = mode.nozzles->value / static_cast<double>(offsets.size());
  f.nozzles = static_cast<int>(floor_tolerant(per_row * (f.native / row)));
  f.pitch = pitch(f.native);
  f.swath = swath(f.nozzles, f.native);
}

void resolution_gate(Resolution value, const AxisDemand& demand, std::string_view axis,
                     Findings& out) {
  if (!at_least(value, demand.least)) {
    out.failures.push_back(
        {"resolution", axis, in_dpi(value), in_dpi(demand.least), "dpi", true, {}, {}, {}});
  } else if (!at_least(value, demand.required)) {
    out.conditions.push_back(
        {"soft_demand", axis, in_dpi(value), in_dpi(demand.required), "dpi", true, {}, {}, {}});
  }
}

void barcode_gate(const BarcodeFit& fit, Findings& out) {
  if (fit.pass) return;
  const bool small = fit.module_printed < fit.module_least;
  const Length limit = small ? fit.module_least : fit.module_most;
  out.failures.push_back({"bar_code",
                          fit.across ? "across" : "along",
                          in_mm(fit.module_printed),
                          in_mm(limit),
                          "mm",
                          small,
                          {},
                          {},
                          {}});
}

void check_barcode(const Job& job, Resolution across, Resolution along, Findings& out) {
  if (!job.module) return;
  if (job.symbol == nullptr) {
    out.conditions.push_back(unknown("symbol_unknown", "image", {}, "barcode_symbol"));
    return;
  }
  const std::vector<BarcodeFit> fits = fit_barcode(job, across, along);
  for (const BarcodeFit& fit : fits) barcode_gate(fit, out);
  if (!job.symbol->two_dimensional || fits.size() != 2) return;
  const double mismatch = axis_mismatch(fits[0].module_printed, fits[1].module_printed);
  if (at_most(mismatch, axis_mismatch_limit)) return;
  out.failures.push_back(
      {"bar_code", "axes", mismatch, axis_mismatch_limit, "", false, {}, {}, {}});
}

/// Whether the frequencies of the slowest to the fastest speed touch the head's bad band.
bool touches_band(const Search& s, const Head& head, Resolution motion, int stack) {
  if (!head.avoid) return false;
  const Frequency low = nozzle_frequency(column_frequency(s.slowest, motion), stack);
  const Frequency high = nozzle_frequency(column_frequency(s.fastest, motion), stack);
  return at_least(high, head.avoid->low) && at_most(low, head.avoid->high);
}

int stack_for(const Search& s, const Head& head, const Arrangement& a) {
  const int least = std::min(least_stack(a.column, a.allowed), most_stack);
  for (int m = least; m <= most_stack; ++m) {
    if (!touches_band(s, head, a.shape.motion_axis, m)) return m;
  }
  return least;
}

/// The stack that was tried, in words.
std::string_view stack_word(int stack) {
  constexpr std::array<std::string_view, most_stack> words{"1 stacked", "2 stacked", "3 stacked",
                                                           "4 stacked", "5 stacked", "6 stacked"};
  return words.at(static_cast<std::size_t>(stack - 1));
}

void frequency_gates(const Search& s, const Head& head, const Arrangement& a, Findings& out) {
  if (!at_most(a.per_nozzle, a.allowed)) {
    out.failures.push_back({"frequency",
                            stack_word(a.shape.stack),
                            in_khz(a.per_nozzle),
                            in_khz(a.allowed),
                            "kHz",
                            false,
                            {},
                            {},
                            {}});
  } else if (touches_band(s, head, a.shape.motion_axis, a.shape.stack)) {
    out.failures.push_back({"frequency",
                            "band",
                            in_khz(a.per_nozzle),
                            in_khz(head.avoid->low),
                            "kHz",
                            false,
                            {},
                            {},
                            {}});
  }
  const double use = frequency_use(a.per_nozzle, a.allowed);
  const double high = s.job->parameters[P::high_use];
  if (!at_most(use, high) && at_most(use, 1.0)) {
    out.conditions.push_back({"high_use", {}, use, high, "1", false, {}, {}, {}});
  }
}

void run_line(const Search& s, const ModeFacts& f, Arrangement& a, Findings& out) {
  a.column = column_frequency(s.fastest, a.shape.motion_axis);
  if (a.shape.stack == 0) a.shape.stack = stack_for(s, *f.head, a);
  a.per_nozzle = nozzle_frequency(a.column, a.shape.stack);
  a.speed_limit = speed_limit(a.shape.stack, a.allowed, a.shape.motion_axis);
  frequency_gates(s, *f.head, a, out);
  a.across = heads_across(s.width, f.swath, f.head_pitch);
  a.idle = f.is_tilted() ? idle_counted(s.width, a.across, f.nozzles, f.pitch)
                         : idle_nozzle_share(s.width, a.across, f.swath, f.head_pitch);
}

void count_heads(const Search& s, const ModeFacts& f, Arrangement& a, Findings& out) {
  const int in_line = a.shape.stack * a.shape.film_heads;
  a.heads = heads_in_group(a.positions, a.across, a.shape.interleave, in_line);
  a.joints = joints(a.positions, a.across, a.shape.interleave, in_line).total();
  a.round = round_of(s, f, a);
  a.footprint = a.round ? a.round->station_length * a.round->stations : depth_of(s, f, a, a.rows);
  if (a.round && !f.head->body_height && a.round->per_station > 1) {
    out.conditions.push_back(unknown("head_data_unknown", "head", f.head->name, "body_height"));
  }
  if (!f.head->body_depth) {
    out.conditions.push_back(unknown("head_data_unknown", "head", f.head->name, "body_depth"));
  }
  const bool joins = f.head->joins && f.head->joins->value;
  if (!f.head->body_width && a.across > 1 && !joins) {
    out.conditions.push_back(unknown("head_data_unknown", "head", f.head->name, "body_width"));
  }
  const Given<int>& limit = s.job->request->limits.heads;
  if (limit && a.heads > limit->value) {
    out.failures.push_back({"heads",
                            {},
                            static_cast<double>(a.heads),
                            static_cast<double>(limit->value),
                            "",
                            false,
                            {},
                            {},
                            {}});
  }
}

/// Delivered resolution of a carriage's feed: whole interlace steps.
Resolution interlaced(Resolution native, Resolution least) {
  return native * std::max(1.0, ceil_tolerant(least / native));
}

}  // namespace

std::optional<ModeFacts> mode_facts(const Search& search, const Head& head, const HeadMode& mode,
                                    Findings& findings) {
  const std::string_view missing = lacking(mode);
  if (!missing.empty()) {
    findings.failures.push_back(refused("head_data", missing));
    return std::nullopt;
  }
  ModeFacts f;
  f.head = &head;
  f.mode = &mode;
  f.colours = mode.colours ? std::max(1, mode.colours->value) : 1;
  fill_lattice(mode, f);
  fill_overlap(search, f);
  if (f.nozzles < 1 || f.head_pitch <= Length{}) {
    findings.failures.push_back(refused("head_data", f.nozzles < 1 ? "nozzles" : "overlap"));
    return std::nullopt;
  }
  f.levels = mode.drops->value.size();
  for (std::size_t i = 0; i < f.levels; ++i) f.dots.at(i) = dot_of(search, mode.drops->value[i]);
  return f;
}

void fill_overlap(const Search& search, ModeFacts& f) {
  const Head& head = *f.head;
  const bool joins = head.joins && head.joins->value && !f.is_tilted();
  if (head.overlap) {
    f.overlap = head.overlap->value * (f.untilted / f.native);
  } else {
    f.overlap = joins ? Length{} : f.pitch * search.job->parameters[P::overlap_nozzles];
  }
  f.head_pitch = f.overlap < f.swath ? head_pitch(f.swath, f.overlap, f.pitch) : Length{};
}

int rows_of(const Search& search, const ModeFacts& facts, int across) {
  const Head& head = *facts.head;
  const bool joins = head.joins && head.joins->value;
  if (across == 1 || (joins && !facts.is_tilted())) return 1;
  if (!head.body_width) return 2;
  const Length gap = millimetres(search.job->parameters[P::body_gap_mm]);
  if (facts.is_tilted()) {
    return tilted_rows(across, head.body_width->value, head.body_depth->value, gap,
                       facts.head_pitch, facts.tilt);
  }
  return rows_in_group(across,
                       staggered_rows(false, head.body_width->value, gap, facts.head_pitch));
}

Length depth_of(const Search& search, const ModeFacts& facts, const Arrangement& a, int rows) {
  if (!facts.head->body_depth) return {};
  const int banks = a.positions * a.shape.interleave * a.shape.stack * a.shape.film_heads;
  return rows_depth(rows * banks, depth_along(facts),
                    millimetres(search.job->parameters[P::row_gap_mm]));
}

AxisDemand nozzle_demand(const Job& job, bool scanning) {
  return scanning ? AxisDemand{job.required.along, job.least_along}
                  : AxisDemand{job.required.across, job.least_across};
}
AxisDemand motion_demand(const Job& job, bool scanning) { return nozzle_demand(job, !scanning); }

Resolution nozzle_axis(const Search& search, const ModeFacts& facts, bool scanning,
                       int interleave) {
  if (!scanning) return interleaved(facts.native, interleave);
  return interlaced(facts.native, nozzle_demand(*search.job, true).least);
}

Arrangement outline(const Search& search, const GroupNeed& need, const ModeFacts& facts,
                    const Shape& shape, Findings& findings, std::size_t bound) {
  const bool scanning = shape.scanning;
  Arrangement a;
  a.shape = shape;
  a.nozzle_axis = nozzle_axis(search, facts, scanning, shape.interleave);
  resolution_gate(a.nozzle_axis, nozzle_demand(*search.job, scanning),
                  scanning ? "along" : "across", findings);
  resolution_gate(shape.motion_axis, motion_demand(*search.job, scanning),
                  scanning ? "across" : "along", findings);
  if (findings.failures.size() < bound) choose_drop(search, need, facts, a, findings);
  return a;
}

void complete(const Search& search, const GroupNeed& need, const ModeFacts& facts, Arrangement& a,
              Findings& findings, std::size_t bound) {
  const bool scanning = a.shape.scanning;
  check_barcode(*search.job, scanning ? a.shape.motion_axis : a.nozzle_axis,
                scanning ? a.nozzle_axis : a.shape.motion_axis, findings);
  if (findings.failures.size() >= bound) return;
  a.allowed = usable_rating(search, facts, a);
  if (a.from_binary) {
    findings.conditions.push_back(
        unknown("rating_from_binary", "head", facts.head->name, "frequency"));
  }
  a.positions = (need.channels + facts.colours - 1) / facts.colours;
  if (scanning) {
    scan_with(search, need, facts, a, findings);
  } else {
    run_line(search, facts, a, findings);
  }
  a.margin = a.speed_limit / search.fastest;
  a.rows = rows_of(search, facts, a.across);
  count_heads(search, facts, a, findings);
}

Arrangement arrange(const Search& search, const GroupNeed& need, const ModeFacts& facts,
                    const Shape& shape, Findings& findings) {
  Arrangement a = outline(search, need, facts, shape, findings, no_bound);
  complete(search, need, facts, a, findings, no_bound);
  return a;
}

}  // namespace calc
