/// The budgets of placement, term by term.
#include <algorithm>
#include <stdexcept>

#include "calc/eye.h"
#include "calc/placement.h"
#include "calc/trace.h"
#include "calc/trace_apart.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis guide{
    "GUM, ISO/IEC Guide 98-3: root of the sum of squares, coverage factor 2; "
    "systematic terms added linearly; no more than the worst case",
    SourceTag::memory, "terms independent of each other"};
const Basis all_at_once{"sum of the shifts, each at its worst", SourceTag::computed,
                        "all terms at once"};
const Basis geometry{"plane geometry", SourceTag::computed, "small angles and ways"};
const Basis lateness{"speed over the surface times delay", SourceTag::computed,
                     "twice where strokes to and fro are late in opposite ways"};
const Basis counting{"a count off by half its way at most", SourceTag::computed, "no limit"};
const Basis steel{"expansion of steel 11.5e-6 a kelvin", SourceTag::printed, "frame of steel"};
const Basis wander{"a product wanders A sin: between two rows 2 A sin(pi L / wavelength)",
                   SourceTag::computed, "beyond half a wavelength the whole 2 A"};

std::string divisor(const BudgetTerm& term) {
  switch (term.kind) {
    case TermKind::rectangular:
    case TermKind::resolution:
      return "3";
    case TermKind::normal:
      return term.coverage > 2 ? "9" : "4";
    case TermKind::sinusoid:
      return "2";
    case TermKind::systematic:
      break;
  }
  return "1";
}

/// What makes the worst of a term's shift.
std::string most(const BudgetTerm& term) {
  return term.kind == TermKind::normal && term.coverage < 3 ? "*3/2" : "";
}

/// The steps of one budget.
class Terms {
 public:
  /// `before`: start of the ids of the same budget at another speed, whose steps are already there;
  /// empty for none.
  Terms(TraceWriter& writer, const Budget& budget, std::string id, std::string before = {})
      : w_(writer), budget_(budget), id_(std::move(id)), before_(std::move(before)) {}

  void all() {
    std::string squares;
    std::string linear;
    std::string worst;
    std::vector<StepInput> inputs;
    for (const BudgetTerm& term : budget_.terms) {
      StepInput a = known(term).value_or(chosen("a", in_um(term.shift), "um"));
      if (a.origin != "step") a = shift(term);
      a.symbol = "a_" + std::string(term.name);
      if (term.kind == TermKind::systematic) {
        linear += "+" + a.symbol;
      } else {
        squares += (squares.empty() ? "" : "+") + a.symbol + "^2/" + divisor(term);
      }
      worst += (worst.empty() ? "" : "+") + a.symbol + most(term);
      inputs.push_back(std::move(a));
    }
    w_.formula(id_, "U_95", "min(2*sqrt(" + squares + ")" + linear + "," + worst + ")", inputs,
               in_um(budget_.expanded), "um", guide);
    if (before_.empty()) {
      w_.formula(id_ + ".worst", "W", worst, std::move(inputs), in_um(budget_.worst), "um",
                 all_at_once);
    }
  }

 private:
  /// What a term says of itself, in its own unit.
  StepInput half_width(std::string symbol, const BudgetTerm& term, double number,
                       std::string unit) const {
    std::string key(term.field);
    const bool assumed = std::any_of(
        w_.spec.assumptions.begin(), w_.spec.assumptions.end(), [&](const Assumption& a) {
          return a.field == key || (key == "line.weave" && a.field == "assume.weave");
        });
    if (assumed && key == "line.weave") key = "assume.weave";
    return {std::move(symbol), number, std::move(unit), assumed ? "assumed" : "given", key};
  }

  /// The displacement of a term that is the same at the other speed.
  std::optional<StepInput> known(const BudgetTerm& term) const {
    if (before_.empty()) return std::nullopt;
    return w_.step_of_value("a", {before_ + "." + std::string(term.name)}, in_um(term.shift), "um");
  }

  /// The displacement of a term, with a step where it takes a formula.
  StepInput shift(const BudgetTerm& term) {
    const std::string id = id_ + "." + std::string(term.name);
    const double um = in_um(term.shift);
    if (term.late > Time{} || term.name == "levels") return late(term, id, um);
    const StepInput over = apart_input(w_, budget_, term);
    if (term.name == "straightness") {
      w_.formula(id, "a", "1000*H*tan(b/1000)",
                 {w_.step("H", group_id() + ".throw_budget"),
                  half_width("b", term, term.half_width, "mrad")},
                 um, "um", geometry);
    } else if (term.name == "wheel") {
      w_.formula(id, "a", "10*L*e", {over, half_width("e", term, term.half_width, "%")}, um, "um",
                 geometry);
    } else if (term.name == "thermal") {
      w_.formula(id, "a", "L*k*T*1000",
                 {over, constant("k", steel_expansion, "1/K"),
                  half_width("T", term, term.half_width, "K")},
                 um, "um", steel);
    } else if (term.name == "weave" && budget_.name != "image") {
      weave(term, id, um);
    } else if (term.name == "count") {
      const bool known = term.field != parameter(P::encoder_count_um).key;
      w_.formula(
          id, "a", "q/2",
          {known ? trace_encoder_count(w_) : half_width("q", term, 2 * term.half_width, "um")}, um,
          "um", counting);
    } else if (term.name == "tilt") {
      w_.formula(id, "a", "max(x_w-1000*p,1000*p-x_n)", gaps_of_tilt(), um, "um", geometry);
    } else if (term.name == "sag") {
      return chosen("a", um, "um");
    } else {
      const double in_length = term.unit == "mm" ? term.half_width * 1000 : term.half_width;
      return half_width("a", term, in_length, "um");
    }
    return w_.step("a", id);
  }

  /// Widest and narrowest gap between the nozzles of tilted heads, and their pitch.
  std::vector<StepInput> gaps_of_tilt() const {
    const std::string g = group_id();
    return {w_.step("x_w", g + ".tilt_widest"), w_.step("x_n", g + ".tilt_narrowest"),
            w_.step("p", g + ".nozzle_pitch")};
  }

  StepInput late(const BudgetTerm& term, const std::string& id, double um) {
    const bool levels = term.name == "levels";
    const std::string delay = std::string(levels ? "level" : term.name) + "_delay";
    std::string formula = levels ? "U*t/2" : "U*t";
    std::vector<StepInput> inputs{speed_of(term), delay_step(delay, term)};
    if (term.ways > 1) {
      formula += "*w";
      inputs.push_back(constant("w", term.ways, ""));
    }
    w_.formula(id, "a", formula, std::move(inputs), um, "um", lateness);
    return w_.step("a", id);
  }

  /// The speed of the dots over the surface: of the line, or of the carriage.
  StepInput speed_of(const BudgetTerm& term) const {
    if (w_.spec.chosen.front().scan) {
      return w_.step_of_value("U", {"g1.carriage_speed", "g1.pace"}, term.at.si(), "m/s");
    }
    return from_value("U", *w_.job.speed, term.at.si(), "m/s", "line.speed");
  }

  /// The step that has the delay: of the group whose drops it is.
  StepInput delay_step(const std::string& name, const BudgetTerm& term) const {
    const double us = term.late.si() * 1e6;
    for (std::size_t i = 0; i < w_.spec.chosen.size(); ++i) {
      const std::string id = "g" + std::to_string(i + 1) + "." + name;
      if (!w_.has(id)) continue;
      StepInput step = w_.step("t", id);
      if (step.value <= us && step.value >= us) return step;
    }
    throw std::logic_error("no step has the delay of " + name);
  }

  void weave(const BudgetTerm& term, const std::string& id, double um) {
    const Given<Length>& given = w_.job.request->line.weave_wavelength;
    const double length = given ? served_low(*given).si() : 0;
    const StepInput wave = from_value_or("l", given, length, "m", "line.weave_wavelength", w_.job,
                                         P::weave_wavelength_m);
    w_.formula(id, "a", "2000*A*sin(min(pi*L/(1000*l),pi/2))",
               {half_width("A", term, term.half_width, "mm"), constant("pi", pi, ""),
                apart_input(w_, budget_, term), wave},
               um, "um", wander);
  }

  /// Start of the ids of the budget's group, of the first where it is of the whole station.
  std::string group_id() const {
    for (std::size_t i = 0; i < w_.spec.chosen.size(); ++i) {
      if (w_.spec.chosen[i].name == budget_.group) return "g" + std::to_string(i + 1);
    }
    return "g1";
  }

  TraceWriter& w_;
  const Budget& budget_;
  std::string id_, before_;
};

}  // namespace

std::string budget_step(const Specification& spec, const Budget& budget) {
  return budget_prefix(spec, budget) + "." + std::string(budget.name) +
         (budget.motion ? ".motion" : ".nozzle");
}

void trace_placement(TraceWriter& writer) {
  if (!writer.spec.placement.empty()) trace_apart(writer);
  for (const Budget& budget : writer.spec.placement) {
    Terms(writer, budget, budget_step(writer.spec, budget)).all();
  }
  if (!writer.spec.carriage_pace) return;
  for (const Budget& budget : writer.spec.carriage_pace->placement) {
    if (!budget.motion) continue;  // the other axis knows no lag
    const std::string id = budget_step(writer.spec, budget);
    Terms(writer, budget, "pace." + id, id).all();
  }
}

}  // namespace calc
