/// Room that the heads chosen leave, what one of them costs to replace, and what one maker alone
/// offers.
#include "calc/bom_prices.h"
#include "calc/station_flexibility.h"
#include "calc/trace_find.h"
#include "calc/trace_stages.h"

namespace calc {
namespace {

const Basis faster{"definition", SourceTag::computed, "by the frequency of the heads alone"};
const Basis wider{"plane geometry", SourceTag::computed, "image and margins as they stand"};
const Basis counting{"count", SourceTag::computed, "whole heads"};
const Basis replacing{"price and labour of one head", SourceTag::computed,
                      "today's prices, to the cent"};
const Basis single{"share of the sum", SourceTag::computed, "priced items only"};

void room(TraceWriter& w, const Group& group, const Flexibility& entry, const std::string& g) {
  if (entry.spare_speed) {
    w.formula(g + ".spare_speed", "v", "v_m-v_h",
              {w.step("v_m", g + ".speed_limit"),
               from_value("v_h", *w.job.speed, w.job.speed->high.si(), "m/s", "line.speed")},
              entry.spare_speed->si(), "m/s", faster);
  }
  if (entry.spare_width) {
    w.formula(g + ".spare_width", "W_s", "(n-1)*P+S-W",
              {w.step("n", g + ".heads_across"), w.step("P", g + ".head_pitch"),
               w.step("S", g + ".swath"), w.step("W", "station.width")},
              in_mm(*entry.spare_width), "mm", wider);
  }
  if (entry.free_colours <= 0) return;
  const HeadMode& mode = trace_mode(w.catalogue, group);
  w.formula(g + ".free_colours", "c_f", "p*c_h-c",
            {w.step("p", g + ".positions"),
             from_catalogue("c_h", mode.colours ? mode.colours->value : 1, "",
                            "head." + group.head + ".mode." + group.mode + ".colours"),
             {"c", static_cast<double>(group.channels.size()), "", "derived", ""}},
            entry.free_colours, "", counting);
}

void replacing_one(TraceWriter& w, const Group& group, const Flexibility& entry,
                   const std::string& g) {
  const auto price = price_in(trace_head(w.catalogue, group).price, w.job.currency);
  if (!price || !entry.replace_cost) return;
  w.formula(
      g + ".replace_cost", "C", "p+round(100*t_a*l)/100",
      {from_catalogue("p", price->major(), w.job.currency, "head." + group.head + ".price"),
       from_parameter(w.job, "t_a", P::alignment_h),
       from_value("l", w.job.labour, w.job.labour.value, w.job.currency + "/h", "costs.labour")},
      entry.replace_cost->major(), w.job.currency, replacing);
}

void single_source(TraceWriter& w) {
  const std::optional<double>& share = w.spec.single_source_share;
  if (!share || *share <= 0 || !w.has("station.capital")) return;
  const Station& station = *w.spec.station;
  std::vector<StepInput> inputs;
  std::string list;
  for (const BomLine& line : station.bom) {
    if (!line.extended_price || !has_single_source(w.catalogue, line)) continue;
    const std::string symbol = "b_" + std::to_string(line.item);
    list += (list.empty() ? "" : ",") + symbol;
    inputs.push_back(
        {symbol, line.extended_price->major(), station.currency, "catalogue", line.source});
  }
  inputs.push_back(w.step("K", "station.capital"));
  w.formula("station.single_source", "s", "sum(" + list + ")/K", std::move(inputs), *share, "",
            single);
}

}  // namespace

void trace_room(TraceWriter& w) {
  for (std::size_t i = 0; i < w.spec.flexibility.size() && i < w.spec.chosen.size(); ++i) {
    const std::string g = "g" + std::to_string(i + 1);
    room(w, w.spec.chosen[i], w.spec.flexibility[i], g);
    replacing_one(w, w.spec.chosen[i], w.spec.flexibility[i], g);
  }
  single_source(w);
}

}  // namespace calc
