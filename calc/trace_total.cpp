/// What is told of the station as a whole, added up from groups, channels and stages.
#include <algorithm>

#include "calc/named.h"
#include "calc/station_cure.h"
#include "calc/trace_find.h"
#include "calc/trace_stages.h"

namespace calc {
namespace {

const Basis joining{"count", SourceTag::computed, "every head of a group is aligned to the next"};
const Basis whole_parts{"whole numbers of parts that serve every limit stated", SourceTag::computed,
                        "limits the catalogue states"};
const Basis months{"mass balance", SourceTag::computed, "twelve equal months of running"};
const Basis air{"sum", SourceTag::computed, "as hot as it is carried off"};
const Basis in_line{"rows of heads, lamps and dryers stand one behind the other",
                    SourceTag::computed, "as installed"};

std::string group_id(std::size_t index) { return "g" + std::to_string(index + 1); }

std::string listed(const std::vector<StepInput>& inputs) {
  std::string list;
  for (const StepInput& input : inputs) list += (list.empty() ? "" : ",") + input.symbol;
  return list;
}

/// Adds those steps up under an id of their own, where there are several.
void sum_several(TraceWriter& w, const std::string& id, const std::string& symbol,
                 const std::vector<std::string>& ids, double value, const std::string& unit,
                 const Basis& basis) {
  if (ids.size() > 1) sum_up(w, id, symbol, ids, value, unit, basis);
}

void joints(TraceWriter& w) {
  std::vector<std::string> ids;
  int joined = 0;
  for (const Group& group : w.spec.chosen) {
    ids.push_back(group_id(ids.size()) + ".joints");
    joined += group.joints;
  }
  sum_several(w, "station.joints", "J", ids, joined, "", joining);
}

void parts(TraceWriter& w) {
  const Station& station = *w.spec.station;
  std::vector<std::string> boards;
  for (const BoardUse& use : station.board_uses) {
    if (!use.board.empty()) boards.push_back("station.boards." + use.board);
  }
  if (boards.size() == station.board_uses.size()) {
    sum_several(w, "station.boards", "n_b", boards, station.boards, "", whole_parts);
  }
  std::vector<StepInput> inputs;
  int supplies = 0;
  for (const ChannelFeed& feed : station.feeds) {
    supplies += feed.supplies;
    inputs.push_back(w.step_or_chosen("n_" + std::to_string(inputs.size() + 1),
                                      "station." + feed.channel + ".supplies", feed.supplies, ""));
  }
  if (inputs.empty()) return;
  const std::string sum = "sum(" + listed(inputs) + ")";
  w.formula("station.supplies", "n_s", sum, std::move(inputs), supplies, "", whole_parts);
}

/// Waste of all channels in a month.
void waste(TraceWriter& w) {
  if (!w.has("station.waste")) return;
  const StepInput waste = w.step("M_w", "station.waste"), year = w.step("t_y", "station.hours");
  w.formula("station.waste_month", "V_w", "M_w*t_y/12000", {waste, year},
            waste.value * year.value / 12000, "L", months);
}

/// Air that exhausts carry off: of dryers, and where vapour is captured.
void exhausts(TraceWriter& w) {
  std::vector<std::string> ids;
  double sum = 0;
  for (const Stage& stage : w.spec.station->stages) {
    if (stage.exhaust_m3_per_h) ids.push_back("station." + stage.kind + ".exhaust");
    sum += stage.exhaust_m3_per_h.value_or(0);
    const bool captured = stage.airing && stage.airing->lel_hot_m3_per_h;
    if (!captured) continue;
    const bool hot = stage.airing->lel_hot;
    ids.push_back("station." + stage.kind + (hot ? ".air_lel_hot" : ".air_lel"));
    sum += hot ? *stage.airing->lel_hot_m3_per_h : *stage.airing->lel_m3_per_h;
  }
  sum_several(w, "station.exhaust", "Q_x", ids, sum, "m3/h", air);
}

/// A sum whose terms bring their inputs.
struct Sum {
  std::string formula;
  std::vector<StepInput> inputs;
  void add(const std::string& term, std::vector<StepInput> own) {
    formula += (formula.empty() ? "" : "+") + term;
    for (StepInput& input : own) inputs.push_back(std::move(input));
  }
};

/// Rows of lamps one behind the other.
void add_lamps(const TraceWriter& w, const Stage& stage, Sum& sum) {
  const Lamp* const lamp = named(w.catalogue.lamps, stage.equipment);
  if (lamp == nullptr || !stage.rows || !stage.length_m) return;
  const std::string end = "_" + stage.kind, ref = "lamp." + lamp->name;
  const std::string rows = stage.kind == "uv" ? "station.lamp_rows" : "station.pinning.rows";
  sum.add("n" + end + "*d" + end,
          {w.step_or_chosen("n" + end, rows, *stage.rows, ""),
           from_catalogue("d" + end, in_mm(lamp_depth(*lamp)), "mm",
                          ref + (lamp->depth ? ".depth" : ".window_along"))});
}

void add_dryers(const TraceWriter& w, const Stage& stage, Sum& sum) {
  const double metres = stage.installed_length_m.value_or(stage.length_m.value_or(0));
  if (metres <= 0) return;
  const std::string id = "station.drying.";
  sum.add("1000*l_d", {w.step_of_value("l_d", {id + "installed", id + "length"}, metres, "m")});
}

/// Length of the station of a line; that of a carriage has its step with the feed.
void length(TraceWriter& w) {
  if (w.spec.chosen.front().scan) return;
  Sum sum;
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    const std::string symbol = "l_" + std::to_string(i + 1), id = group_id(i) + ".footprint";
    if (w.has(id)) sum.add(symbol, {w.step(symbol, id)});
  }
  for (const Stage& stage : w.spec.station->stages) {
    if (stage.kind == "drying") {
      add_dryers(w, stage, sum);
    } else {
      add_lamps(w, stage, sum);
    }
  }
  sum.add("l_s", {from_parameter(w.job, "l_s", P::service_access_mm)});
  w.formula("station.footprint", "L_s", sum.formula, std::move(sum.inputs),
            in_mm(w.spec.station->footprint), "mm", in_line);
}

}  // namespace

void sum_up(TraceWriter& w, const std::string& id, const std::string& symbol,
            const std::vector<std::string>& ids, double value, const std::string& unit,
            const Basis& basis) {
  if (ids.empty()) return;
  std::vector<StepInput> inputs;
  inputs.reserve(ids.size());
  for (const std::string& of : ids) {
    inputs.push_back(w.step(symbol + "_" + std::to_string(inputs.size() + 1), of));
  }
  const std::string sum = "sum(" + listed(inputs) + ")";
  w.formula(id, symbol, sum, std::move(inputs), value, unit, basis);
}

void trace_totals(TraceWriter& w) {
  joints(w);
  parts(w);
  waste(w);
  exhausts(w);
  length(w);
}

}  // namespace calc
