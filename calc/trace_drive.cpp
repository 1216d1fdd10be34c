#include <stdexcept>

#include "calc/drive.h"
#include "calc/eye.h"
#include "calc/named.h"
#include "calc/trace_find.h"
#include "calc/trace_stages.h"

namespace calc {
namespace {

constexpr double ml_per_min = 6e7;  ///< of a cubic metre a second

const Basis balance{"mass balance", SourceTag::computed, "highest speed"};
const Basis whole_parts{"whole numbers of parts that serve every limit stated", SourceTag::computed,
                        "limits the catalogue states"};
const Basis shift_rule{
    "common practice, no source: a shift is a day of operation, eight hours at most",
    SourceTag::practice, "no limit"};
const Basis rolling{"a wheel rolls off its circumference", SourceTag::computed, "no slip"};
const Basis dividing{"counts of an encoder divided into dots", SourceTag::computed,
                     "constant speed within a dot"};
const Basis rounding{"JCGM 100:2008, resolution of an indication", SourceTag::memory,
                     "standard deviation of a position on whole counts"};

/// The group that prints a channel, by its index. Throws std::logic_error when there is none.
std::size_t group_of(const Specification& spec, const std::string& channel) {
  for (std::size_t i = 0; i < spec.chosen.size(); ++i) {
    for (const std::string& name : spec.chosen[i].channels) {
      if (name == channel) return i;
    }
  }
  throw std::logic_error("no group prints " + channel);
}

void solid_flow(TraceWriter& w, const ChannelFeed& feed, const Group& group,
                const std::string& id) {
  const std::string g = "g" + std::to_string(group_of(w.spec, feed.channel) + 1);
  const StepInput film = w.step("h", dots_steps(group, feed.channel, g) + ".laydown");
  const double value = feed.solid.si() * ml_per_min;
  if (group.scan) {
    w.formula(id + ".solid", "Q", "0.06*A*v_c*h",
              {w.step("A", advance_step(w, g)), w.step("v_c", g + ".carriage_speed"), film}, value,
              "mL/min", balance);
    return;
  }
  w.formula(id + ".solid", "Q", "0.06*W*v*h",
            {w.step("W", "station.width"),
             from_value("v", *w.job.speed, w.job.speed->high.si(), "m/s", "line.speed"), film},
            value, "mL/min", balance);
}

/// "max(1,ceil(Q_p/q),ceil(n/h),ceil((Q_p+n*r)/p))" of the limits that are stated.
void supplies_of(TraceWriter& w, const ChannelFeed& feed, const Group& group,
                 const std::string& id) {
  const Supply* supply = named(w.catalogue.supplies, feed.supply);
  if (supply == nullptr) return;
  const Head& head = trace_head(w.catalogue, group);
  const SupplyLimits limits = supply_limits(*supply, &head);
  const std::string ref = "supply." + supply->name + ".";
  std::string formula = "max(1";
  std::vector<StepInput> inputs;
  if (limits.flow || limits.pump) inputs.push_back(w.step("Q_p", id + ".peak"));
  if (limits.heads || (limits.pump && limits.recirculation)) {
    inputs.push_back(w.step("n", id + ".heads"));
  }
  if (limits.flow) {
    formula += ",ceil(Q_p/q)";
    inputs.push_back(from_catalogue("q", limits.flow->si() * ml_per_min, "mL/min", ref + "flow"));
  }
  if (limits.heads) {
    formula += ",ceil(n/h)";
    inputs.push_back(from_catalogue("h", *limits.heads, "", ref + "heads"));
  }
  if (limits.pump) {
    formula += limits.recirculation ? ",ceil((Q_p+n*r)/p)" : ",ceil(Q_p/p)";
    inputs.push_back(from_catalogue("p", limits.pump->si() * ml_per_min, "mL/min", ref + "pump"));
  }
  if (limits.pump && limits.recirculation) {
    inputs.push_back(from_catalogue("r", limits.recirculation->si() * ml_per_min, "mL/min",
                                    "head." + head.name + ".recirculation"));
  }
  w.formula(id + ".supplies", "n_s", formula + ")", inputs, feed.supplies, "", whole_parts);
}

/// "t" [h], a shift.
StepInput shift(TraceWriter& w) {
  if (!w.has("station.shift")) {
    const Value<Time>& day = w.job.hours_per_day;
    w.formula("station.shift", "t", "min(h,t_m)",
              {from_value("h", day, day.value.si() / 3600, "h", "line.hours_per_day"),
               constant("t_m", longest_shift.si() / 3600, "h")},
              shift_time(w.job).si() / 3600, "h", shift_rule);
  }
  return w.step("t", "station.shift");
}

void containers_of(TraceWriter& w, const ChannelFeed& feed, const std::string& id) {
  if (feed.containers <= 0) return;
  w.formula(
      id + ".containers", "n_c", "max(n_s,ceil((M+M_p)*t/(1000*V)))",
      {w.step("n_s", id + ".supplies"), w.step("M", id + ".printed"), w.step("M_p", id + ".purged"),
       shift(w),
       from_catalogue("V", feed.container.si() * 1e3, "L", "supply." + feed.supply + ".container")},
      feed.containers, "", whole_parts);
}

void feed_steps(TraceWriter& w, const ChannelFeed& feed) {
  const Group& group = w.spec.chosen[group_of(w.spec, feed.channel)];
  const std::string id = "station." + feed.channel;
  solid_flow(w, feed, group, id);
  const Channel& channel = *named(w.job.channels, feed.channel);
  w.formula(id + ".peak", "Q_p", "Q*c_p",
            {w.step("Q", id + ".solid"), peak_cover(w.job, channel, "c_p")},
            feed.peak.si() * ml_per_min, "mL/min", balance);
  supplies_of(w, feed, group, id);
  containers_of(w, feed, id);
}

/// The groups whose heads hang on a board.
std::vector<std::size_t> groups_on(const TraceWriter& w, const BoardUse& use) {
  std::vector<std::size_t> list;
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    const Given<std::string>& board = trace_head(w.catalogue, w.spec.chosen[i]).board;
    if (board && board->value == use.board) list.push_back(i);
  }
  return list;
}

/// The sum of steps, under its own id where there are several.
StepInput sum_of(TraceWriter& w, const std::string& id, const std::string& symbol,
                 const std::vector<std::string>& ids, double value, const std::string& unit) {
  if (ids.size() == 1) return w.step(symbol, ids.front());
  std::vector<StepInput> inputs;
  std::string list;
  for (const std::string& of : ids) {
    inputs.push_back(w.step(symbol + "_" + std::to_string(inputs.size() + 1), of));
    list += (list.empty() ? "" : ",") + inputs.back().symbol;
  }
  w.formula(id, symbol, "sum(" + list + ")", std::move(inputs), value, unit, whole_parts);
  return w.step(symbol, id);
}

StepInput heads_on(TraceWriter& w, const BoardUse& use) {
  std::vector<std::string> ids;
  for (const std::size_t i : groups_on(w, use)) {
    ids.push_back("g" + std::to_string(i + 1) + ".heads_total");
  }
  return sum_of(w, "station.boards." + use.board + ".heads", "n", ids, use.heads, "");
}

StepInput data_on(TraceWriter& w, const BoardUse& use) {
  std::vector<std::string> ids;
  for (const std::size_t i : groups_on(w, use)) {
    for (const std::string& name : w.spec.chosen[i].channels) {
      ids.push_back("station." + name + ".data");
    }
  }
  if (ids.size() == w.spec.station->feeds.size()) ids = {"station.data"};
  return sum_of(w, "station.boards." + use.board + ".data", "B", ids, use.data.si() * 1e-6,
                "Mbit/s");
}

void boards(TraceWriter& w, const BoardUse& use) {
  if (use.board.empty()) return;
  const std::string ref = "board." + use.board + ".";
  std::vector<StepInput> inputs{heads_on(w, use),
                                from_catalogue("h", use.heads_per_board, "", ref + "heads")};
  if (use.board_rate) {
    inputs.push_back(data_on(w, use));
    inputs.push_back(
        from_catalogue("B_b", use.board_rate->si() * 1e-6, "Mbit/s", ref + "data_rate"));
  }
  w.formula("station.boards." + use.board, "n_b",
            use.board_rate ? "max(ceil(n/h),ceil(B/B_b))" : "ceil(n/h)", inputs, use.boards, "",
            whole_parts);
}

void residues(TraceWriter& w, const EncoderFit& fit, const std::string& g) {
  if (!fit.repeat) return;
  const bool pitch = w.job.pitch.value > Length();
  const Value<Length>& length = pitch ? w.job.pitch : w.job.length;
  const char* const key = pitch ? "product.pitch" : "image.length";
  const StepInput repeat = from_value("L", length, in_mm(*fit.repeat), "mm", key);
  w.formula(g + ".encoder_residue", "x", "1000*L*y",
            {repeat, w.step("y", g + ".encoder_whole_error")}, in_um(*fit.whole_residue), "um",
            dividing);
  w.formula(g + ".encoder_fraction_residue", "x_f", "1000*L*(M/(N*c)-1)",
            {repeat, chosen("M", fit.counts, ""), chosen("N", fit.dots, ""),
             w.step("c", g + ".encoder_counts")},
            in_um(*fit.fraction_residue), "um", dividing);
}

void encoder(TraceWriter& w, const EncoderFit& fit) {
  std::string g;
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    if (w.spec.chosen[i].name == fit.group) g = "g" + std::to_string(i + 1);
  }
  const StepInput q = trace_encoder_count(w);
  w.formula(g + ".encoder_counts", "c", "p_m/q", {w.step("p_m", g + ".pitch_m"), q},
            fit.counts_per_dot, "", dividing);
  w.formula(g + ".encoder_whole", "M", "max(1,round(c))", {w.step("c", g + ".encoder_counts")},
            fit.whole, "", dividing);
  w.formula(g + ".encoder_whole_error", "y", "M/c-1",
            {w.step("M", g + ".encoder_whole"), w.step("c", g + ".encoder_counts")},
            fit.whole_error, "", dividing);
  w.formula(g + ".encoder_resolution", "R_w", "25400/(M*q)", {w.step("M", g + ".encoder_whole"), q},
            in_dpi(fit.whole_resolution), "dpi", dividing);
  w.formula(g + ".encoder_fraction", "c_f", "M/N",
            {chosen("M", fit.counts, ""), chosen("N", fit.dots, "")},
            static_cast<double>(fit.counts) / fit.dots, "", dividing);
  residues(w, fit, g);
  w.formula(g + ".encoder_rounding", "u_q", "q/sqrt(12)", {q}, in_um(fit.rounding), "um", rounding);
  w.formula(g + ".encoder_rate", "f_q", "1000*v/q",
            {from_value("v", *w.job.speed, w.job.speed->high.si(), "m/s", "line.speed"), q},
            in_khz(fit.rate), "kHz", dividing);
}

}  // namespace

StepInput trace_encoder_count(TraceWriter& w) {
  const Line& line = w.job.request->line;
  const double um = in_um(*encoder_step(w.job));
  if (line.encoder_step) return {"q", um, "um", "given", "line.encoder_step"};
  const std::string id = "station.encoder_step";
  if (!w.has(id)) {
    w.formula(id, "q", "1000*pi*D/n",
              {constant("pi", pi, ""),
               from_value("D", *line.encoder_wheel, in_mm(line.encoder_wheel->value), "mm",
                          "line.encoder_wheel"),
               from_value("n", *line.encoder_counts, line.encoder_counts->value, "",
                          "line.encoder_counts")},
              um, "um", rolling);
  }
  return w.step("q", id);
}

void trace_drive(TraceWriter& w) {
  const Station& station = *w.spec.station;
  for (const ChannelFeed& feed : station.feeds) feed_steps(w, feed);
  for (const BoardUse& use : station.board_uses) boards(w, use);
  for (const EncoderFit& fit : station.encoder) encoder(w, fit);
}

}  // namespace calc
