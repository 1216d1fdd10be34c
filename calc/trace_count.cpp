/// How many there are of each part of the bill.
#include <algorithm>
#include <map>
#include <string_view>

#include "calc/named.h"
#include "calc/spares.h"
#include "calc/station_sizing.h"
#include "calc/trace_stages.h"

namespace calc {
namespace {

const Basis by_row{"count, by what the row of the catalogue says its pieces follow",
                   SourceTag::computed,
                   "heads, rows, channels and supplies of the groups it serves"};
const Basis turning{"count", SourceTag::computed, "one at each place that turns the body"};
const Basis fan_count{"whole numbers of parts that serve every limit stated", SourceTag::computed,
                      "as the catalogue rates them"};
const Basis filling{"containers of a shift", SourceTag::computed, "no less than one a supply"};
const Basis hours{"definition", SourceTag::computed, "every joint aligned once"};
const Basis poisson{"Poisson distribution: no more failures than spares", SourceTag::computed,
                    "failures independent of each other"};
const Basis crash{"common practice, no source: one more where the product may strike a head",
                  SourceTag::practice, "no limit"};

std::string group_id(std::size_t index) { return "g" + std::to_string(index + 1); }

/// The quantity of one line as a sum of what is counted.
struct Count {
  std::string formula;
  std::vector<StepInput> inputs;
  std::string next() const { return "n_" + std::to_string(inputs.size() + 1); }
  void add(StepInput input) {
    formula += (formula.empty() ? "" : "+") + input.symbol;
    inputs.push_back(std::move(input));
  }
};

class Bill {
 public:
  explicit Bill(TraceWriter& writer)
      : w_(writer),
        book_(writer.catalogue, writer.job.currency),
        sizing_(size(writer.job, book_, writer.spec.chosen)) {}

  void all() {
    for (std::size_t i = 0; i < w_.spec.chosen.size(); ++i) group(i);
    for (const ChannelFeed& feed : w_.spec.station->feeds) supplies(feed);
    for (const Stage& stage : w_.spec.station->stages) lamps(stage);
    for (const BomLine& line : w_.spec.station->bom) {
      if (line.kind == "encoder" || line.kind == "product_sensor") timing(line);
      const auto found = counts_.find(line.source);
      if (found != counts_.end()) count(line, found->second);
    }
    for (const Fans& fan : w_.spec.station->fans) fans(fan);
    for (const ChannelFeed& feed : w_.spec.station->feeds) fill(feed);
    alignment();
    for (const Spare& spare : w_.spec.station->spares) spares(spare);
  }

 private:
  void count(const BomLine& line, const Count& of) {
    const std::string id = "station.count." + line.source.substr(line.source.find('.') + 1);
    if (w_.has(id)) return;  // the spare of a head stands in the bill under the same row
    w_.formula(id, "n", of.formula, of.inputs, line.quantity, "", by_row);
  }

  /// Heads, and the parts of a group, by what they are counted by.
  void group(std::size_t index) {
    const std::string g = group_id(index);
    Count& heads = counts_["head." + w_.spec.chosen[index].head];
    heads.add(w_.step(heads.next(), g + ".heads_total"));
    for (const Need& need : parts_of_group(w_.job, book_, w_.spec.chosen, sizing_, index)) {
      const Part* const part = part_of(need);
      if (part == nullptr || part->air_flow) continue;
      add_part(need, *part, index, counts_);
    }
  }

  const Part* part_of(const Need& need) const {
    const bool has = need.item.row != nullptr && need.item.row->element == "part";
    return has ? named(w_.catalogue.parts, need.item.row->name) : nullptr;
  }

  void add_part(const Need& need, const Part& part, std::size_t index,
                std::map<std::string, Count>& counts) const {
    const Per per = counted_by(part, need.code);
    if (per == Per::station) return;
    Count& count = counts["part." + part.name];
    const Group& of = w_.spec.chosen[index];
    if (per == Per::supply) {
      for (const ChannelFeed& feed : w_.spec.station->feeds) {
        const bool own =
            std::find(of.channels.begin(), of.channels.end(), feed.channel) != of.channels.end();
        if (!own) continue;
        count.add(w_.step_or_chosen(count.next(), "station." + feed.channel + ".supplies",
                                    feed.supplies, ""));
      }
    } else if (per == Per::channel) {
      // Idle inlets of a head are kept full of flush.
      const auto channels = static_cast<double>(of.channels.size());
      count.add({count.next(), channels, "", "derived", ""});
      if (need.quantity > channels) {
        count.add(chosen(count.next(), need.quantity - channels, ""));
      }
    } else {
      const char* const step = per == Per::head ? ".heads_total" : ".head_rows";
      count.add(w_.step_of_value(count.next(), {group_id(index) + step}, need.quantity, ""));
    }
  }

  void supplies(const ChannelFeed& feed) {
    if (feed.supply.empty()) return;
    Count& count = counts_["supply." + feed.supply];
    count.add(w_.step(count.next(), "station." + feed.channel + ".supplies"));
  }

  void lamps(const Stage& stage) {
    const std::string id = "station." + stage.kind + ".units";
    if (!w_.has(id)) return;
    const char* const element = stage.kind == "drying" ? "dryer." : "lamp.";
    Count& count = counts_[element + stage.equipment];
    count.add(w_.step(count.next(), id));
  }

  /// One at each place that turns a body, of several.
  void timing(const BomLine& line) {
    if (line.quantity <= 1 || counts_.contains(line.source) || line.source.empty()) return;
    Count count;
    for (std::size_t i = 0; i < w_.spec.chosen.size(); ++i) {
      count.add(w_.step_or_chosen(count.next(), group_id(i) + ".round_stations", 1, ""));
    }
    w_.formula("station.count." + line.source.substr(line.source.find('.') + 1), "n", count.formula,
               count.inputs, line.quantity, "", turning);
  }

  void fans(const Fans& fan) {
    if (!fan.m3_per_h) return;
    const bool exhausts = fan.kind == "exhaust";
    std::vector<std::string> ids{"station.ventilation.air_health_most"};
    if (exhausts) {
      ids = {"station.exhaust", "station.drying.exhaust", "station.ventilation.air_lel_hot"};
    }
    const VolumeFlow air =
        exhausts ? station_exhaust(sizing_) : sizing_.vapour.health_most.value_or(VolumeFlow());
    w_.formula(
        "station.count." + fan.part, "n", "max(1,ceil(Q/q))",
        {w_.step_of_value("Q", ids, air.si() * 3600, "m3/h"),
         from_catalogue("q", *fan.m3_per_h / fan.units, "m3/h", "part." + fan.part + ".air_flow")},
        fan.units, "", fan_count);
  }

  void fill(const ChannelFeed& feed) {
    const std::string id = "station." + feed.channel;
    const double litres = feed.first_fill.si() * 1e3;
    if (feed.containers > 0) {
      w_.formula(id + ".first_fill", "V", "n_c*V_c",
                 {w_.step("n_c", id + ".containers"),
                  from_catalogue("V_c", feed.container.si() * 1e3, "L",
                                 "supply." + feed.supply + ".container")},
                 litres, "L", filling);
      return;
    }
    w_.formula(id + ".first_fill", "V", "max(n_s,ceil((M+M_p)*t/1000))",
               {w_.step_or_chosen("n_s", id + ".supplies", feed.supplies, ""),
                w_.step("M", id + ".printed"), w_.step("M_p", id + ".purged"),
                chosen("t", shift_time(w_.job).si() / 3600, "h")},
               litres, "L", filling);
  }

  void alignment() {
    const std::vector<BomLine>& bom = w_.spec.station->bom;
    const auto line = std::find_if(bom.begin(), bom.end(),
                                   [](const BomLine& l) { return l.kind == "alignment_hours"; });
    if (line == bom.end()) return;
    const char* const joints = w_.has("station.joints") ? "station.joints" : "g1.joints";
    w_.formula("station.alignment", "t", "J*t_a",
               {w_.step("J", joints), from_parameter(w_.job, "t_a", P::alignment_h)},
               line->quantity, "h", hours);
  }

  /// The least count that serves, and one more where a product may strike a head.
  void spares(const Spare& spare) {
    constexpr double most_exact = 100;
    const std::string id = "station.spares." + spare.part_number;
    if (spare.mean > most_exact || w_.has(id + ".needed")) return;
    const double confidence = w_.job.parameters[P::spare_confidence];
    const int needed = calc::spares(spare.mean, false, confidence);
    w_.add(id + ".needed", StepKind::least, "k",
           "integral(x^k*exp(-x),x,m,m+k+40)/"
           "(integral(x^k*exp(-x),x,0,m)+integral(x^k*exp(-x),x,m,m+k+40))-c",
           {w_.step_or_chosen("m", id, spare.mean, ""),
            from_parameter(w_.job, "c", P::spare_confidence)},
           needed, "", poisson);
    if (spare.quantity == needed) return;
    w_.formula(id + ".count", "n", "k+1", {w_.step("k", id + ".needed")}, spare.quantity, "",
               crash);
  }

  TraceWriter& w_;
  PriceBook book_;
  Sizing sizing_;
  std::map<std::string, Count> counts_;  ///< by row of the catalogue
};

}  // namespace

void trace_counts(TraceWriter& w) { Bill(w).all(); }

}  // namespace calc
