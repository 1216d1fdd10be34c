/// The fields of a request that set the terms: wishes for service, limits, costs.
#include "intake/fields_parts.h"

namespace intake {

using namespace calc;  // the rows below name little else

namespace {

/// The price of energy keeps parts of a cent beside the amount in whole cents.
Row<Costs> energy() {
  const auto info =
      field_info("costs.energy", "price", "price per kWh", "EUR/kWh", "price of electrical energy");
  return Row<Costs>{info,
                    [](Costs& to, const Node& node, const FieldInfo& row, Scribe& scribe) {
                      const std::size_t before = scribe.inputs->size();
                      const auto value = take_price(node, row, scribe);
                      if (!value) return;
                      to.energy = exactly(*value, scribe.origin(node));
                      to.energy_per_kwh =
                          exactly((*scribe.inputs)[before].value, scribe.origin(node));
                    }}
      .within(0, 100);
}

}  // namespace

Table<Service> service() {
  using S = Service;
  return {{
              word("service.serviceable", &S::serviceable, "that the user can service the head")
                  .otherwise("indifferent"),
              word("service.waveform", &S::waveform, "that the waveform can be changed")
                  .otherwise("indifferent"),
              word("service.driver_sources", &S::driver_sources,
                   "that more than one maker has drive electronics")
                  .otherwise("indifferent"),
          },
          {}};
}

Table<Limits> limits() {
  using L = Limits;
  return {{
              integer("limits.heads", &L::heads, "most heads").within(1, 100000),
              price("limits.budget", &L::budget, "price", "EUR", "most capital").within(0, 1e9),
              quantity("limits.lead_time", &L::lead_time, "time", "day", "longest lead time")
                  .within(0, 3650),
              quantity("limits.space", &L::space, "length", "mm",
                       "room along the line for the whole station")
                  .within(10, 100000),
          },
          {}};
}

Table<Costs> costs() {
  using C = Costs;
  return {{
              price("costs.labour", &C::labour, "price per hour", "EUR/h",
                    "price of an operator's hour")
                  .within(0, 10000),
              energy(),
              quantity("costs.discount", &C::discount, "fraction", "%", "discount rate a year")
                  .within(0, 100)
                  .otherwise("8 %"),
              integer("costs.years", &C::years, "years the cost of ownership runs over")
                  .within(1, 50)
                  .otherwise("5"),
          },
          {}};
}

}  // namespace intake
