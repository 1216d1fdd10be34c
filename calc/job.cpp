#include "calc/job.h"

#include <algorithm>
#include <cmath>

#include "calc/job_parts.h"

namespace calc {

std::string unit_of(const Job& job, P id) {
  constexpr std::string_view money = "money";
  const std::string_view unit = parameter(id).unit;
  if (!unit.starts_with(money)) return std::string(unit);
  return job.currency + std::string(unit.substr(money.size()));
}

std::string_view effect_of(const Job& job, P id) {
  if (id != P::process_limit) return parameter(id).effect;
  const auto prints = [&](InkFamily family) {
    return std::any_of(job.channels.begin(), job.channels.end(),
                       [&](const Channel& c) { return c.family == family; });
  };
  if (prints(InkFamily::aqueous)) return parameter(id).effect;
  return prints(InkFamily::solvent) ? "vapour_kg_per_h" : "wet_film_um";
}

Assumption to_assumption(const Job& job, P id) {
  const Parameter& row = parameter(id);
  Assumption a;
  a.field = row.key;
  a.value = job.parameters[id];
  a.unit = unit_of(job, id);
  if (row.low < row.high) {
    a.low = row.low;
    a.high = row.high;
  }
  a.effect = effect_of(job, id);
  a.source = row.source;
  return a;
}

double assume(Job& job, P id) {
  const std::string_view key = parameter(id).key;
  const bool known = std::any_of(job.assumptions.begin(), job.assumptions.end(),
                                 [&](const Assumption& a) { return a.field == key; });
  if (!known) job.assumptions.push_back(to_assumption(job, id));
  return job.parameters[id];
}

namespace {

Value<double> given_or_assumed(Job& job, const Given<double>& given, P id) {
  if (given) return *given;
  return assumed(assume(job, id));
}

/// The currency asked for, else that of the request's own prices, which are all in one, else the
/// catalogue's.
std::string currency_of(const Request& request, const Catalogue& catalogue) {
  if (request.request.currency) return request.request.currency->value;
  const Costs& costs = request.costs;
  for (const Given<Price>* price : {&request.limits.budget, &costs.labour, &costs.energy}) {
    if (*price) return (*price)->value.currency;
  }
  for (const Ink& ink : request.inks) {
    if (ink.price) return ink.price->value.currency;
  }
  for (const Head& head : catalogue.heads) {
    if (head.price) return head.price->value.currency;
  }
  return "EUR";
}

Value<double> rate_of(Job& job, const Given<Price>& given, P id) {
  if (given) return exactly(given->value.amount.major(), given->origin);
  return assumed(assume(job, id));
}

}  // namespace

void resolve_economics(Job& job) {
  const Request& r = *job.request;
  job.hours_per_day = r.line.hours_per_day ? *r.line.hours_per_day
                                           : assumed(seconds(assume(job, P::hours_per_day) * 3600));
  job.days_per_year = given_or_assumed(job, r.line.days_per_year, P::days_per_year);
  job.discount = given_or_assumed(job, r.costs.discount, P::discount);
  job.years =
      r.costs.years ? r.costs.years->value : static_cast<int>(std::lround(assume(job, P::years)));
  job.labour = rate_of(job, r.costs.labour, P::labour_per_hour);
  job.energy = given_or_assumed(job, r.costs.energy_per_kwh, P::energy_per_kwh);
}

void find_missing(Job& job) {
  const Request& r = *job.request;
  if (!job.width) job.missing.emplace_back("image.width");
  if (!job.speed) {
    job.missing.emplace_back(rate_without_pitch(job) ? "product.pitch" : "line.speed");
  }
  const bool any_ink = std::any_of(r.inks.begin(), r.inks.end(),
                                   [](const Ink& ink) { return ink.family.has_value(); });
  if (!any_ink) job.missing.emplace_back("ink.NAME.family");
  const Product& p = r.product;
  const bool product = p.description || p.form || p.diameter || p.width || p.thickness || p.pitch;
  const Substrate& s = r.substrate;
  const bool substrate = s.material || s.absorbency || s.contact_angle || s.dot_diameter ||
                         s.spread_factor || s.surface_energy;
  if (!product && !substrate) job.missing.emplace_back("substrate.material");
}

Job resolve(const Request& request, const Catalogue& catalogue, const std::string& date,
            const Parameters& parameters) {
  Job job;
  job.request = &request;
  job.parameters = parameters;
  job.date = date;
  job.currency = currency_of(request, catalogue);
  resolve_geometry(job);
  resolve_line(job);
  resolve_demands(job);
  resolve_channels(job);
  resolve_economics(job);
  find_missing(job);
  ask(job);
  return job;
}

}  // namespace calc
