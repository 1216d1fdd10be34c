/// What a station costs: its parts, a year of running, and both over the years.
#include <algorithm>
#include <optional>

#include "calc/cost.h"
#include "calc/named.h"
#include "calc/present_value.h"
#include "calc/running.h"
#include "calc/station_sizing.h"
#include "calc/trace_find.h"
#include "calc/trace_stages.h"

namespace calc {
namespace {

const Basis definition{"definition", SourceTag::computed, "while running"};
const Basis sum_basis{"sum", SourceTag::computed, "priced items only"};
const Basis use_basis{"what is used up in a year times its price", SourceTag::computed,
                      "today's prices, to the cent"};
const Basis mean_power{"energy balance", SourceTag::computed, "mean cover, nominal speed"};
const Basis lit_power{"energy balance", SourceTag::computed,
                      "mean cover, nominal speed; lamps lit all the time"};
const Basis annuity_basis{"present value of a yearly amount, year end", SourceTag::computed,
                          "real terms, no residual value"};
const Basis swing_basis{"common practice, no source", SourceTag::practice,
                        "one term alone, the others as they are"};
const Basis unit_basis{"annuity of the cost of ownership over what is made in a year",
                       SourceTag::computed, "mean figures of running time"};

std::string numbered(const std::string& symbol, std::size_t i) {
  return symbol + "_" + std::to_string(i + 1);
}

/// The lines of running cost, one after the other.
class Running {
 public:
  explicit Running(TraceWriter& writer)
      : w_(writer),
        book_(writer.catalogue, writer.job.currency),
        sizing_(size(writer.job, book_, writer.spec.chosen)),
        cost_(writer.spec.station->cost) {}

  void all() {
    inks();
    heads();
    energy();
    labour();
    cleaning();
  }

 private:
  const std::string& currency() const { return w_.job.currency; }
  StepInput year() const { return w_.step("t_y", "station.hours"); }
  std::string of(const ChannelLoad& load, const char* name) const {
    return "station." + w_.job.channels[load.channel].name + "." + name;
  }
  static std::string group_id(std::size_t index) { return "g" + std::to_string(index + 1); }

  void line(const std::string& id, const std::string& formula, std::vector<StepInput> inputs,
            double amount) {
    w_.formula(id, "Y", "round(100*" + formula + ")/100", std::move(inputs),
               to_money(amount).major(), currency(), use_basis);
  }

  void total(const char* name, const char* symbol, const std::vector<std::string>& ids,
             Money value) {
    sum_up(w_, std::string("station.") + name, symbol, ids, value.major(), currency(), sum_basis);
  }

  void inks() {
    std::vector<std::string> ids;
    for (std::size_t i = 0; i < sizing_.loads.size(); ++i) {
      const ChannelLoad& load = sizing_.loads[i];
      const Ink* const ink = w_.job.channels[load.channel].ink;
      const auto price = ink == nullptr ? std::nullopt : price_in(ink->price, currency());
      if (!price) continue;
      ids.push_back(of(load, "ink_cost"));
      const double litres = (sizing_.flows[i].ink() * running_time(w_.job)).si() * 1e3;
      line(ids.back(), "(M+M_p)*t_y/1000*p",
           {w_.step("M", of(load, "printed")), w_.step("M_p", of(load, "purged")), year(),
            from_value("p", *ink->price, price->major(), currency() + "/L",
                       "ink." + ink->name + ".price")},
           litres * price->major());
    }
    total("ink_per_year", "Y_i", ids, cost_.ink_per_year);
  }

  void heads() {
    std::vector<std::string> ids;
    for (std::size_t i = 0; i < w_.spec.chosen.size(); ++i) {
      const auto index = book_.find_head(w_.spec.chosen[i].head);
      if (!index || !book_.head(*index).row.price) continue;
      const Money price = *book_.head(*index).row.price;
      const StepInput replaced = w_.step("n_r", group_id(i) + ".replaced");
      ids.push_back(group_id(i) + ".replaced_cost");
      line(ids.back(), "n_r*p",
           {replaced, from_catalogue("p", price.major(), currency(),
                                     "head." + w_.spec.chosen[i].head + ".price")},
           replaced.value * price.major());
    }
    total("heads_per_year", "Y_h", ids, cost_.heads_per_year);
  }

  void labour() {
    std::vector<std::string> ids;
    const Value<double>& rate = w_.job.labour;
    const StepInput wage = from_value("l", rate, rate.value, currency() + "/h", "costs.labour");
    const StepInput each = from_parameter(w_.job, "t_a", P::alignment_h);
    for (std::size_t i = 0; i < w_.spec.chosen.size(); ++i) {
      const StepInput replaced = w_.step("n_r", group_id(i) + ".replaced");
      ids.push_back(group_id(i) + ".replaced_labour");
      line(ids.back(), "n_r*t_a*l", {replaced, each, wage},
           replaced.value * each.value * wage.value);
    }
    total("labour_per_year", "Y_l", ids, cost_.labour_per_year);
  }

  /// Adds the step of a power, or a figure where it has none.
  void add_power(const std::string& id, Power power, std::vector<StepInput>& inputs) const {
    if (power <= Power()) return;
    inputs.push_back(w_.step_of_value(numbered("P", inputs.size()), {id}, power.si() / 1e3, "kW"));
  }

  void energy() {
    std::vector<StepInput> inputs;
    add_power("station.drying.electrical_mean", sizing_.drying.electrical_mean, inputs);
    Power power = sizing_.drying.electrical_mean;
    const auto add = [&](const char* kind, const Curing& lamps) {
      if (!lamps.drawn) return;
      const std::string id = std::string("station.") + kind;
      add_power(id + (w_.has(id + ".running") ? ".running" : ".electrical"), *lamps.drawn, inputs);
      power += *lamps.drawn;
    };
    add("pinning", sizing_.pinning);
    add("uv", sizing_.curing);
    if (inputs.empty()) return;
    std::string list;
    for (const StepInput& input : inputs) list += (list.empty() ? "" : ",") + input.symbol;
    const bool lit = sizing_.pinning.drawn || sizing_.curing.drawn;
    w_.formula("station.power_mean", "P", "sum(" + list + ")", std::move(inputs), power.si() / 1e3,
               "kW", lit ? lit_power : mean_power);
    const double kwh = power.si() / 1e3 * (running_time(w_.job).si() / 3600);
    w_.formula("station.energy", "E", "P*t_y", {w_.step("P", "station.power_mean"), year()}, kwh,
               "kWh", definition);
    const Value<double>& price = w_.job.energy;
    w_.formula("station.energy_per_year", "Y_e", "round(100*E*p)/100",
               {w_.step("E", "station.energy"),
                from_value("p", price, price.value, currency() + "/kWh", "costs.energy")},
               cost_.energy_per_year.major(), currency(), use_basis);
  }

  void cleaning() {
    std::vector<std::string> ids;
    for (std::size_t i = 0; i < sizing_.loads.size(); ++i) flush(i, ids);
    for (const Need& need : sizing_.needs.list()) wear(need, ids);
    total("cleaning_per_year", "Y_c", ids, cost_.cleaning_per_year);
  }

  /// Flushing fluid of the catalogue by what is used of it; one that states its life wears instead.
  void flush(std::size_t i, std::vector<std::string>& ids) {
    const ChannelLoad& load = sizing_.loads[i];
    const auto head = book_.find_head(w_.spec.chosen[load.group].head);
    const Priced<Part>* const fluid = book_.part(PartKind::flush, head.value_or(book_.head_count()),
                                                 w_.job.channels[load.channel].family);
    if (fluid == nullptr || fluid->row.life || !fluid->row.price) return;
    if (!w_.has(of(load, "flush"))) return;
    const StepInput bottle = from_parameter(w_.job, "B", P::flush_bottle_l);
    const double litres = (sizing_.flows[i].flush * running_time(w_.job)).si() * 1e3;
    ids.push_back(of(load, "flush_cost"));
    line(ids.back(), "M_f*t_y/(1000*B)*p",
         {w_.step("M_f", of(load, "flush")), year(), bottle,
          from_catalogue("p", fluid->row.price->major(), currency(),
                         "part." + fluid->item->name + ".price")},
         litres / bottle.value * fluid->row.price->major());
  }

  /// What the catalogue gives a life.
  void wear(const Need& need, std::vector<std::string>& ids) {
    const PricedRow& item = need.item;
    if (item.row == nullptr || !item.price || !item.life || *item.life <= Time()) return;
    const std::string row = item.row->element + "." + item.row->name;
    ids.push_back("station.wear." + item.row->name);
    if (w_.has(ids.back())) ids.back() += "." + std::to_string(ids.size());
    line(ids.back(), "n*t_y/t_l*p",
         {{"n", need.quantity, "", "parts", ""},
          year(),
          from_catalogue("t_l", item.life->si() / 3600, "h", row + ".life"),
          from_catalogue("p", item.price->major(), currency(), row + ".price")},
         need.quantity * (running_time(w_.job) / *item.life) * item.price->major());
  }

  TraceWriter& w_;
  PriceBook book_;
  Sizing sizing_;
  const Cost& cost_;
};

void capital(TraceWriter& w) {
  const Station& station = *w.spec.station;
  std::vector<StepInput> inputs;
  std::string list;
  for (const BomLine& line : station.bom) {
    if (!line.extended_price) continue;
    const std::string symbol = "b_" + std::to_string(line.item);
    list += (list.empty() ? "" : ",") + symbol;
    inputs.push_back({symbol, line.extended_price->major(), station.currency,
                      line.source.empty() ? "parts" : "catalogue", line.source});
  }
  if (inputs.empty()) return;
  w.formula("station.capital", "K", "sum(" + list + ")", inputs, station.cost.capital.major(),
            station.currency, sum_basis);
}

/// The lines of running cost that have a figure.
void yearly(TraceWriter& w) {
  std::vector<StepInput> inputs;
  std::string list;
  const auto add = [&](const char* symbol, const char* id) {
    if (!w.has(id)) return;
    inputs.push_back(w.step(symbol, id));
    list += (list.empty() ? "" : "+") + inputs.back().symbol;
  };
  add("Y_i", "station.ink_per_year");
  add("Y_h", "station.heads_per_year");
  add("Y_e", "station.energy_per_year");
  add("Y_l", "station.labour_per_year");
  add("Y_c", "station.cleaning_per_year");
  w.formula("station.running", "Y", list, std::move(inputs),
            w.spec.station->cost.running_per_year.major(), w.spec.station->currency, sum_basis);
}

/// The great terms at today's value, and what a fifth of each moves.
void swing_steps(TraceWriter& w) {
  const Cost& cost = w.spec.station->cost;
  const std::string& currency = w.spec.station->currency;
  for (const CostTerm& term : cost.terms) {
    const std::string id = "station.swing." + term.name;
    const StepInput share = constant("s", cost_swing, "");
    if (term.name == "capital") {
      w.formula(id, "d", "round(100*s*K)/100", {share, w.step("K", "station.capital")},
                term.swing.major(), currency, swing_basis);
      continue;
    }
    w.formula("station.value." + term.name, "V", "round(100*Y_k*a)/100",
              {w.step("Y_k", "station." + term.name + "_per_year"), w.step("a", "station.annuity")},
              term.value.major(), currency, annuity_basis);
    w.formula(id, "d", "round(100*s*Y_k*a)/100",
              {share, w.step("Y_k", "station." + term.name + "_per_year"),
               w.step("a", "station.annuity")},
              term.swing.major(), currency, swing_basis);
  }
}

void ownership_steps(TraceWriter& w) {
  const Cost& cost = w.spec.station->cost;
  const StepInput rate = from_value("i", w.job.discount, cost.discount, "", "costs.discount");
  const bool years_given = w.job.request->costs.years.has_value();
  const StepInput years{"n", static_cast<double>(cost.years), "a",
                        years_given ? "given" : "assumed", "costs.years"};
  const bool free_of_interest = cost.discount == 0;
  w.formula("station.annuity", "a", free_of_interest ? "n" : "(1-(1+i)^(-n))/i", {rate, years},
            annuity_factor(cost.discount, cost.years), "a", annuity_basis);
  if (!w.has("station.capital")) return;
  w.formula("station.ownership", "C", "round(100*(K+Y*a))/100",
            {w.step("K", "station.capital"), w.step("Y", "station.running"),
             w.step("a", "station.annuity")},
            cost.ownership.major(), w.spec.station->currency, annuity_basis);
  swing_steps(w);
}

/// Parts a year, and what a thousand of them cost.
void per_thousand(TraceWriter& w) {
  const Cost& cost = w.spec.station->cost;
  if (!cost.per_thousand || !w.has("station.ownership")) return;
  w.formula("station.parts_year", "N", "n*t_y", {parts_an_hour(w), w.step("t_y", "station.hours")},
            *cost.parts_per_year, "1/a", definition);
  w.formula("station.per_thousand", "C_t", "1000*C/(a*N)",
            {w.step("C", "station.ownership"), w.step("a", "station.annuity"),
             w.step("N", "station.parts_year")},
            *cost.per_thousand, w.spec.station->currency, unit_basis);
}

/// Area of the images of a year, and what a square metre of it costs.
void per_square_metre(TraceWriter& w) {
  const Cost& cost = w.spec.station->cost;
  if (!cost.per_m2 || !w.has("station.ownership")) return;
  w.formula("station.images_year", "A", "q*t_y*s",
            {w.step("q", "station.area"), w.step("t_y", "station.hours"), printed_share(w)},
            *cost.images_m2_per_year, "m2/a", definition);
  w.formula("station.per_m2", "C_m", "C/(a*A)",
            {w.step("C", "station.ownership"), w.step("a", "station.annuity"),
             w.step("A", "station.images_year")},
            *cost.per_m2, w.spec.station->currency + "/m2", unit_basis);
}

}  // namespace

void trace_cost(TraceWriter& w) {
  capital(w);
  Running(w).all();
  yearly(w);
  ownership_steps(w);
  per_square_metre(w);
  per_thousand(w);
}

}  // namespace calc
