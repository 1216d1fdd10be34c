#include <algorithm>

#include "calc/frequency.h"
#include "calc/lattice.h"
#include "calc/trace_find.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis definition{"definition: dots a second = speed times dots a length", SourceTag::computed,
                       "speed > 0"};
const Basis shared{"heads in a row share the dots of a column", SourceTag::computed, "stack >= 1"};
const Basis amplitude{"common practice, no source: two drop sizes by amplitude",
                      SourceTag::practice, "binary rating only; ask the maker"};
const Basis subdrops{"common practice, no source: several sub-drops share the rated time",
                     SourceTag::practice, "binary rating only; ask the maker"};
const Basis rated{"catalogue, as its provenance says", SourceTag::table,
                  "rating at the highest level used"};

int highest_levels(const Group& group) {
  int levels = 2;
  for (const ChannelDots& dots : group.dots) levels = std::max(levels, dots.levels_used);
  return levels;
}

void allowed(TraceWriter& w, const Group& group, const std::string& g) {
  const HeadMode& mode = trace_mode(w.catalogue, group);
  const std::string ref = "head." + group.head + ".mode." + group.mode + ".frequency";
  const std::vector<Frequency>& ratings = mode.frequency->value;
  const int levels = highest_levels(group);
  const int drops = static_cast<int>(mode.drops->value.size());
  const GreyMethod method = mode.grey_method ? mode.grey_method->value
                            : drops == 2     ? GreyMethod::amplitude
                                             : GreyMethod::subdrops;
  const AllowedFrequency value = allowed_frequency(ratings, drops, method, levels);
  const StepInput rating = from_catalogue("f_r", in_khz(ratings.front()), "kHz", ref);
  if (!value.from_binary) {
    std::vector<StepInput> inputs{chosen("levels", levels, "")};
    for (std::size_t i = 0; i < ratings.size(); ++i) {
      inputs.push_back(
          from_catalogue("f_" + std::to_string(i + 2), in_khz(ratings[i]), "kHz", ref));
    }
    w.add(g + ".rating", StepKind::table, "f_a", ref, inputs, in_khz(value.value), "kHz", rated);
  } else if (method == GreyMethod::amplitude) {
    w.formula(g + ".rating", "f_a", "a*f_r",
              {from_parameter(w.job, "a", P::amplitude_factor), rating}, in_khz(value.value), "kHz",
              amplitude);
  } else {
    w.formula(g + ".rating", "f_a", "f_r/(levels-1)", {rating, chosen("levels", levels, "")},
              in_khz(value.value), "kHz", subdrops);
  }
}

/// The speed the dots are laid at: of the line, or of the carriage.
StepInput motion(const TraceWriter& w, const Group& group, const std::string& g) {
  if (group.scan) return w.step("v", g + ".carriage_speed");
  const Value<Speed>& speed = *w.job.speed;
  return from_value("v", speed, served_high(speed).si(), "m/s", "line.speed");
}

void use(TraceWriter& w, const Group& group, const std::string& g, Frequency usable) {
  w.formula(g + ".column", "f_c", "v*R_m/25.4",
            {motion(w, group, g), motion_resolution(w, group, g)}, in_khz(group.frequency_needed),
            "kHz", definition);
  if (!group.scan && group.stack == least_stack(group.frequency_needed, usable)) {
    w.add(g + ".stack", StepKind::least, "m", "m*f_u-f_c",
          {w.step("f_u", g + ".usable"), w.step("f_c", g + ".column")}, group.stack, "", shared);
  }
  const StepInput m = w.step_of_value("m", {g + ".stack"}, group.stack, "");
  std::vector<StepInput> inputs{w.step("f_c", g + ".column")};
  if (!group.scan) inputs.push_back(m);  // no heads of a carriage share a column
  w.formula(g + ".per_nozzle", "f", group.scan ? "f_c" : "f_c/m", std::move(inputs),
            in_khz(nozzle_frequency(group.frequency_needed, group.stack)), "kHz", shared);
  w.formula(g + ".use", "u", "f/f_u",
            {w.step("f", g + ".per_nozzle"), w.step("f_u", g + ".usable")},
            frequency_use(group.frequency_per_nozzle, usable), "", shared);
  if (group.scan) return;  // there the feed limits, not the dots
  w.formula(g + ".speed_limit", "v_max", "m*f_u*25.4/R_m",
            {m, w.step("f_u", g + ".usable"), motion_resolution(w, group, g)},
            speed_limit(group.stack, usable, motion_axis(group)).si(), "m/s", definition);
}

}  // namespace

void trace_rating(TraceWriter& w, const Group& group, const std::string& g) {
  allowed(w, group, g);
  const Frequency rating = kilohertz(w.step("f_a", g + ".rating").value);
  w.formula(g + ".usable", "f_u", "f_a*(1-q)",
            {w.step("f_a", g + ".rating"), from_parameter(w.job, "q", P::reserve)},
            in_khz(usable_frequency(rating, w.job.parameters[P::reserve])), "kHz", shared);
}

void trace_frequency(TraceWriter& w, const Group& group, const std::string& g) {
  if (group.scan) trace_scan(w, group, g);
  use(w, group, g, group.frequency_allowed);
  w.formula(g + ".bits", "b", "ceil(log2(levels))", {chosen("levels", highest_levels(group), "")},
            bits_per_dot(highest_levels(group)), "bit",
            {"definition of information", SourceTag::computed, "levels >= 2"});
}

}  // namespace calc
