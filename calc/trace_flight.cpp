/// How the drops fly: gaps, law of drag, arrival, and the delays the budgets rest on.
#include <algorithm>
#include <cmath>

#include "calc/air.h"
#include "calc/dot.h"
#include "calc/eye.h"
#include "calc/fluid.h"
#include "calc/throw.h"
#include "calc/trace_find.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis geometry{"plane geometry", SourceTag::computed, "nozzle rows in one plane"};
const Basis gap_rule{"gaps add up; the nominal one is to a product of nominal thickness",
                     SourceTag::computed, "throw > 0"};
const Basis sutherland{"Sutherland's law, US Standard Atmosphere 1976", SourceTag::library,
                       "100 K to 1900 K"};
const Basis ideal_gas{"ideal gas, 101325 Pa, R 287.05287 J/(kg K)", SourceTag::computed, "dry air"};
const Basis sphere{"volume of a sphere", SourceTag::computed, "free drop"};
const Basis stated{"catalogue, as its provenance says", SourceTag::table,
                   "the ink of the catalogue"};
const Basis drag{
    "drag of a sphere: Schiller and Naumann 1935", SourceTag::memory,
    "Re below 800; law within 5 % of measured drag; an isolated drop in still air, no "
    "gravity: along the throw it changes the speed by at most 9.81 m/s2 times the time"};
const Basis exact_time{"Schiller and Naumann's drag, integrated in closed form",
                       SourceTag::computed, "Re below 800; series cut below 1e-15 of its sum"};
const Basis fall{"free fall", SourceTag::computed, "an upper bound: drag is left out"};
const Basis difference{"difference of two arrivals", SourceTag::computed, "both drops arrive"};

const std::string way_formula = "tau*integral(1/(1+c*v^0.687),v,";

/// The steps of one group.
class Flight {
 public:
  Flight(TraceWriter& writer, const Group& group, std::string prefix)
      : w_(writer), group_(group), f_(*group.flight), g_(std::move(prefix)) {}

  void all() {
    gaps();
    air();
    level("small", f_.levels.front());
    if (f_.levels_used > 1) level("large", f_.levels.at(1));
    gravity();
    delays();
  }

 private:
  const Head& head() const { return trace_head(w_.catalogue, group_); }
  std::string head_ref(const std::string& field) const {
    return "head." + group_.head + "." + field;
  }

  StepInput nominal(const std::string& symbol, Length value) const {
    if (w_.job.throw_distance) {
      return from_value(symbol, *w_.job.throw_distance, in_mm(value), "mm", "line.throw_distance");
    }
    if (head().throw_nominal) {
      return from_catalogue(symbol, in_mm(value), "mm", head_ref("throw_nominal"));
    }
    return from_parameter(w_.job, symbol, P::throw_mm);
  }
  StepInput flutter() const {
    return from_value("h", w_.job.throw_variation, in_mm(served_high(w_.job.throw_variation)), "mm",
                      "line.throw_variation");
  }
  StepInput thickness() const {
    return {"b", in_mm(w_.job.thickness_variation), "mm", "given", "product.thickness_variation"};
  }

  /// "c" across: the image, or the swath where that is less.
  StepInput chord_across(Length chord) const {
    const double mm = in_mm(chord);
    const Length image = served_high(*w_.job.width);
    if (std::abs(in_mm(image) / mm - 1) < 1e-12) {
      return from_value("c", *w_.job.width, in_mm(image), "mm", "image.width");
    }
    return w_.step_of_value("c", {g_ + ".plate_swath", g_ + ".swath"}, mm, "mm");
  }

  void bend(const std::string& id, StepInput chord, Length radius, Length value) {
    w_.formula(g_ + id, "s", "(c/2)^2/(r+sqrt((r-c/2)*(r+c/2)))",
               {std::move(chord), {"r", in_mm(radius), "mm", "derived", "product.diameter"}},
               in_mm(value), "mm", geometry);
  }

  /// Where the outermost drops land on a body that bends away along one axis.
  void slope(const Throw& t) {
    const bool along = t.along > Length{};
    if (along == (t.across > Length{}) || !t.slope) return;
    const std::string bend = g_ + (along ? ".sagitta_along" : ".sagitta_across");
    const Length radius = along ? *w_.job.radius : *w_.job.radius_across;
    const double degrees = *t.slope * 180 / pi;
    w_.formula(g_ + ".slope", "b", "acos(1-s/r)*180/pi",
               {w_.step("s", bend),
                {"r", in_mm(radius), "mm", "derived", "product.diameter"},
                constant("pi", pi, "")},
               degrees, "deg", geometry);
    w_.formula(g_ + ".stretch", "e", "100*(1/cos(b*pi/180)-1)",
               {w_.step("b", g_ + ".slope"), constant("pi", pi, "")},
               100 * (1 / std::cos(*t.slope) - 1), "%", geometry);
  }

  /// The sagitta of the whole body under the head; zero and unsaid on a flat product.
  std::vector<StepInput> bends() const {
    std::vector<StepInput> list;
    if (w_.has(g_ + ".sagitta_along")) list.push_back(w_.step("s_a", g_ + ".sagitta_along"));
    if (w_.has(g_ + ".sagitta_across")) list.push_back(w_.step("s_c", g_ + ".sagitta_across"));
    return list;
  }

  void gap(const std::string& id, std::string symbol, std::string formula,
           std::vector<StepInput> inputs, bool bent, Length value) {
    if (bent) {
      for (StepInput& s : bends()) {
        formula += "+" + s.symbol;
        inputs.push_back(std::move(s));
      }
    }
    w_.formula(g_ + id, std::move(symbol), std::move(formula), std::move(inputs), in_mm(value),
               "mm", gap_rule);
  }

  /// The gaps over the whole of what is stated as uncertain, which safety and trials go by.
  void whole_range(const Throw& t) {
    const Given<Length>& given = w_.job.request->line.throw_distance;
    const Value<Length>& variation = w_.job.throw_variation;
    const bool uncertain =
        variation.spread == Spread::uncertain || (given && given->spread == Spread::uncertain);
    if (!uncertain) return;
    const Length low = given ? given->low : t.nominal, high = given ? given->high : t.nominal;
    const Length about = variation.high + w_.job.thickness_variation;
    const StepInput moves =
        from_value("h", variation, in_mm(variation.high), "mm", "line.throw_variation");
    gap(".gap_least", "H_l", "H-b-h", {nominal("H", low), thickness(), moves}, false, low - about);
    gap(".gap_most", "H_m", "H+b+h", {nominal("H", high), thickness(), moves}, true,
        high + about + t.along + t.across);
  }

  void gaps() {
    const Throw t = throw_of(w_.job, head());
    if (w_.job.radius && t.along > Length{}) {
      bend(".sagitta_along",
           from_catalogue("c", in_mm(head().field_depth->value), "mm", head_ref("field_depth")),
           *w_.job.radius, t.along);
    }
    if (w_.job.radius_across && t.across > Length{}) {
      // The chord back from the slope it lands on: 2 r sin.
      const Length chord = 2 * *w_.job.radius_across * std::sin(t.slope.value_or(0));
      bend(".sagitta_across", chord_across(chord), *w_.job.radius_across, t.across);
    }
    slope(t);
    const std::optional<Value<Length>>& given = w_.job.throw_distance;
    const Length low = given ? served_low(*given) : t.nominal;
    const Length high = given ? served_high(*given) : t.nominal;
    gap(".throw_least", "H_l", "H-b-h", {nominal("H", low), thickness(), flutter()}, false,
        t.least);
    gap(".throw_nominal", "H_n", "H", {nominal("H", t.nominal)}, true, f_.throw_nominal);
    gap(".throw_budget", "H_b", "H", {nominal("H", high)}, true, f_.budget_throw);
    gap(".throw_most", "H_m", "H+b+h", {nominal("H", high), thickness(), flutter()}, true,
        f_.throw_most);
    whole_range(t);
  }

  void air() {
    const Value<Temperature>& room = w_.job.room;
    const StepInput t =
        from_value("T", room, room.value.in_celsius(), "degC", "line.air_temperature");
    const Air air = air_at(room.value);
    w_.formula(g_ + ".air_viscosity", "mu", "1.458*(T+273.15)^1.5/(T+383.55)", {t},
               air.viscosity.si() * 1e6, "uPa.s", sutherland);
    w_.formula(g_ + ".air_density", "rho_a", "101325/(287.05287*(T+273.15))", {t}, air.density.si(),
               "kg/m3", ideal_gas);
  }

  StepInput density(const LevelFlight& flight) const {
    const double d = flight.diameter.si();
    const double mu = air_viscosity(w_.job.room.value).si();
    const double value = flight.law.tau.si() * 18 * mu / (d * d);
    for (const Channel& channel : w_.job.channels) {
      if (channel.name != group_.channels.front() && channel.ink == nullptr) continue;
      if (channel.ink == nullptr || !channel.ink->density) continue;
      const double given = channel.ink->density->value.si();
      if (std::abs(given / value - 1) > 1e-12) continue;
      return from_value("rho", *channel.ink->density, given, "kg/m3",
                        "ink." + channel.ink->name + ".density");
    }
    return from_parameter(w_.job, "rho", P::ink_density);
  }

  void level(const std::string& name, const LevelFlight& flight) {
    const std::string at = g_ + "." + name;
    drop_step(w_, group_, at, flight.drop);
    w_.formula(at + ".diameter", "d", "(6000*V/pi)^(1/3)",
               {w_.step("V", at + ".drop"), constant("pi", pi, "")}, in_um(flight.diameter), "um",
               sphere);
    w_.formula(
        at + ".tau", "tau", "rho*d^2/(18000*mu)",
        {density(flight), w_.step("d", at + ".diameter"), w_.step("mu", g_ + ".air_viscosity")},
        flight.law.tau.si() * 1e3, "ms", drag);
    w_.formula(at + ".drag", "c", "0.15*(rho_a*d/mu)^0.687",
               {w_.step("rho_a", g_ + ".air_density"), w_.step("d", at + ".diameter"),
                w_.step("mu", g_ + ".air_viscosity")},
               flight.law.c, "(s/m)^0.687", drag);
    start(at, flight);
    w_.formula(at + ".stop", "x_s", way_formula + "0,v_0)", law(at, true), in_mm(flight.stop), "mm",
               exact_time);
    arrival(at, "least", flight.least);
    arrival(at, "nominal", flight.nominal);
    arrival(at, "most", flight.most);
  }

  /// Law and, if asked, start of a level.
  std::vector<StepInput> law(const std::string& at, bool with_start) const {
    std::vector<StepInput> inputs{w_.step("tau", at + ".tau"), w_.step("c", at + ".drag")};
    if (with_start) inputs.push_back(w_.step("v_0", at + ".start"));
    return inputs;
  }

  void start(const std::string& at, const LevelFlight& flight) {
    const HeadMode& mode = trace_mode(w_.catalogue, group_);
    const bool nozzle = head().drop_speed_at && head().drop_speed_at->value == SpeedPoint::nozzle;
    const std::string of_mode = mode.drop_speed ? "mode." + group_.mode + "." : "";
    const StepInput speed =
        from_catalogue("v_x", stated_speed(mode, flight), "m/s", head_ref(of_mode + "drop_speed"));
    if (nozzle) {
      w_.formula(at + ".start", "v_0", "v_x", {speed}, flight.start.si(), "m/s", stated);
      return;
    }
    std::vector<StepInput> inputs = law(at, false);
    inputs.push_back(speed);
    inputs.push_back(constant("x", 1, "mm"));
    w_.add(at + ".start", StepKind::solve, "v_0", "x-" + way_formula + "v_x,v_0)", inputs,
           flight.start.si(), "m/s", drag);
  }

  /// What gravity, left out of the flight, would make of the smallest drop's speed.
  void gravity() {
    const std::optional<Landing>& landing = f_.levels.front().nominal;
    if (!landing) return;
    w_.formula(
        g_ + ".gravity", "v_g", "g_n*t*1e-6",
        {constant("g_n", standard_gravity.si(), "m/s2"), w_.step("t", g_ + ".small.time_nominal")},
        standard_gravity.si() * landing->time.si(), "m/s", fall);
  }

  /// How far it parts drops of jets that lie level.
  void sag() {
    if (f_.sag_spread <= Length{}) return;
    w_.formula(
        g_ + ".sag", "s_g", "abs(g_n/2*t_1^2-g_n/2*t_2^2)*1e-6",
        {constant("g_n", standard_gravity.si(), "m/s2"), w_.step("t_1", g_ + ".small.time_budget"),
         w_.step("t_2", g_ + ".large.time_budget")},
        in_um(f_.sag_spread), "um", fall);
  }

  double stated_speed(const HeadMode& mode, const LevelFlight& flight) const {
    if (!mode.drop_speed) return head().drop_speed->value.si();
    const auto& drops = mode.drops->value;
    const auto found = std::find(drops.begin(), drops.end(), flight.drop);
    return mode.drop_speed->value.at(static_cast<std::size_t>(found - drops.begin())).si();
  }

  void arrival(const std::string& at, const std::string& name,
               const std::optional<Landing>& landing) {
    if (landing) land_step(at, name, w_.step("H", g_ + ".throw_" + name), law(at, true), *landing);
  }

  void land_step(const std::string& at, const std::string& name, StepInput way,
                 const std::vector<StepInput>& of, const Landing& landing) {
    std::vector<StepInput> inputs = of;
    inputs.push_back(std::move(way));
    w_.add(at + ".impact_" + name, StepKind::solve, "v_1", "H-" + way_formula + "v_1,v_0)", inputs,
           landing.impact.si(), "m/s", drag);
    std::vector<StepInput> ends = of;
    ends.push_back(w_.step("v_1", at + ".impact_" + name));
    w_.formula(at + ".time_" + name, "t", "1000*tau/0.687*ln((v_1^(-0.687)+c)/(v_0^(-0.687)+c))",
               ends, landing.time.si() * 1e6, "us", exact_time);
  }

  /// Arrival of a level over the throw of the budgets.
  void on_time(const std::string& name, const LevelFlight& flight) {
    const std::string at = g_ + "." + name;
    const std::optional<Landing> landing = land(flight.law, flight.start, f_.budget_throw);
    land_step(at, "budget", w_.step("H", g_ + ".throw_budget"), law(at, true), *landing);
  }

  /// A late arrival of the smallest drop, and its delay.
  void late(const std::string& name, StepInput way, const std::vector<StepInput>& of,
            const std::optional<Landing>& landing, Time delay) {
    const std::string at = g_ + ".small";
    if (!landing) return;
    land_step(at, name, std::move(way), of, *landing);
    w_.formula(g_ + "." + name + "_delay", "t_" + name, "t_2-t_1",
               {w_.step("t_2", at + ".time_" + name), w_.step("t_1", at + ".time_budget")},
               delay.si() * 1e6, "us", difference);
  }

  void delays() {
    const LevelFlight& small = f_.levels.front();
    if (!land(small.law, small.start, f_.budget_throw)) return;
    const std::string at = g_ + ".small";
    on_time("small", small);
    const Length far = f_.budget_throw + served_high(w_.job.throw_variation);
    w_.formula(g_ + ".throw_gap", "H_g", "H+h", {w_.step("H", g_ + ".throw_budget"), flutter()},
               in_mm(far), "mm", gap_rule);
    late("gap", w_.step("H", g_ + ".throw_gap"), law(at, true), land(small.law, small.start, far),
         f_.gap_delay);
    uneven(small);
    const double spread = f_.speed_spread.value_or(w_.job.parameters[P::speed_spread]);
    const Speed slow = small.start * (1 - spread);
    StepInput share = from_parameter(w_.job, "e", P::speed_spread);
    if (f_.speed_spread) share = from_catalogue("e", spread, "", head_ref("speed_spread"));
    w_.formula(at + ".slow", "v_s", "v_0*(1-e)", {w_.step("v_0", at + ".start"), share}, slow.si(),
               "m/s", difference);
    std::vector<StepInput> of = law(at, false);
    of.push_back(w_.step("v_0", at + ".slow"));
    late("speed", w_.step("H", g_ + ".throw_budget"), of, land(small.law, slow, f_.budget_throw),
         f_.speed_delay);
    if (f_.levels_used < 2 || !land(f_.levels[1].law, f_.levels[1].start, f_.budget_throw)) return;
    on_time("large", f_.levels[1]);
    w_.formula(g_ + ".level_delay", "t_level", "abs(t_2-t_1)",
               {w_.step("t_2", g_ + ".large.time_budget"), w_.step("t_1", at + ".time_budget")},
               f_.level_delay.si() * 1e6, "us", difference);
    sag();
  }

  void uneven(const LevelFlight& small) {
    if (f_.thickness_delay <= Time{}) return;
    const Length far = f_.budget_throw + w_.job.thickness_variation;
    w_.formula(g_ + ".throw_thickness", "H_b", "H+b",
               {w_.step("H", g_ + ".throw_budget"), thickness()}, in_mm(far), "mm", gap_rule);
    late("thickness", w_.step("H", g_ + ".throw_thickness"), law(g_ + ".small", true),
         land(small.law, small.start, far), f_.thickness_delay);
  }

  TraceWriter& w_;
  const Group& group_;
  const DropFlight& f_;
  std::string g_;
};

}  // namespace

void trace_flight(TraceWriter& writer, const Group& group, const std::string& g) {
  if (group.flight) Flight(writer, group, g).all();
}

}  // namespace calc
