/// Resolution: what is demanded, what governs, what the chosen lattice delivers.
#include "calc/parameter.h"
#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_list.h"
#include "output/sketch_list.h"

namespace output {
namespace {

/// From which share of a wish on it counts as met.
std::string soft_text(const Context& c) {
  constexpr std::string_view key = "assume.soft_share";
  const calc::Input* const stated = c.input(std::string(key));
  const double share =
      stated != nullptr ? stated->value : calc::parameter(calc::P::soft_share).value;
  Values values;
  values.set_markup("VALUE", c.linked(std::string(key), with_unit(share * 100, "%", 3)));
  return c.templates.words(c.language(), "demand_soft", values);
}

void add_demands(const Context& c, Values& values) {
  for (const calc::Demand& demand : c.spec.required->demands) {
    Values& row = values.add("DEMAND");
    const std::string key = c.step_keys({"required." + demand.name});
    row.set("KEY", key);
    row.set_markup("NAME", c.words("demand." + demand.name));
    // A resolution itself is given or assumed, and no step works it out.
    const auto text = [&](const std::optional<calc::Resolution>& value) {
      const std::string dpi = value ? dpi_text(*value) : "\u2013";
      return key.empty() && value ? c.linked("image.resolution", dpi) : dpi;
    };
    row.set_markup("ACROSS", text(demand.across));
    row.set_markup("ALONG", text(demand.along));
    row.set_markup("KIND", demand.hard ? c.words("demand_hard") : soft_text(c));
  }
}

void add_delivered(const Context& c, Values& values) {
  if (c.spec.chosen.empty()) return;
  Values& table = values.add("DELIVERED");
  for (std::size_t i = 0; i < c.spec.chosen.size(); ++i) {
    const calc::Group& group = c.spec.chosen[i];
    const std::string g = group_prefix(i);
    Values& row = table.add("ROW");
    row.set("KEY", c.row_keys({g + ".native", g + ".across", g + ".along", g + ".motion"}));
    row.set("GROUP", c.group_name(group.name));
    row.set("NATIVE", dpi_text(group.native));
    row.set("ACROSS", dpi_text(group.resolution_across));
    row.set("ALONG", dpi_text(group.resolution_along));
  }
}

void add_barcode(const Context& c, Values& table, const calc::Group& group,
                 const calc::BarcodeFit& fit, const std::string& g) {
  const std::string axis = fit.across ? "across" : "along";
  Values& row = table.add("ROW");
  row.set("KEY", c.step_keys({g + ".module_" + axis, g + ".bar_code_" + axis}));
  row.set_markup("SYMBOL", symbol_text(c, fit.symbol));
  row.set("GROUP", c.group_name(group.name));
  row.set_markup("AXIS", c.words("axis." + axis));
  row.set("DOTS", std::to_string(fit.dots));
  row.set("ASKED", c.in_column(in_mm(fit.module_asked), "mm", 4));
  row.set("PRINTED", c.in_column(in_mm(fit.module_printed), "mm", 4));
  row.set("RANGE", number(in_mm(fit.module_least), 4) + " " + c.words("to") + " " +
                       number(in_mm(fit.module_most), 4));
  row.set_markup("VERDICT", c.words(fit.pass ? "passes" : "fails"));
}

void add_barcodes(const Context& c, Values& values) {
  Values* table = nullptr;
  for (std::size_t i = 0; i < c.spec.chosen.size(); ++i) {
    for (const calc::BarcodeFit& fit : c.spec.chosen[i].barcodes) {
      if (table == nullptr) table = &values.add("BARCODES");
      add_barcode(c, *table, c.spec.chosen[i], fit, group_prefix(i));
    }
  }
}

}  // namespace

std::string resolution_section(const Context& c) {
  if (!c.spec.required) return {};
  const calc::Required& required = *c.spec.required;
  Values values;
  values.set("KEY", c.step_keys({"required.across", "required.along"}));
  values.set("REQUIRED", lattice_text(required.across, required.along));
  values.set_markup("GOVERNED", c.words("governed." + required.governed_by));
  add_demands(c, values);
  if (required.substrate_ceiling) {
    Values& ceiling = values.add("CEILING");
    ceiling.set("KEY", c.step_keys({"required.ceiling"}));
    ceiling.set("VALUE", with_unit(in_dpi(*required.substrate_ceiling), "dpi", 3));
  }
  values.set_markup("EYE", plot_eye(c));
  add_delivered(c, values);
  add_barcodes(c, values);
  return c.expand("resolution", values);
}

}  // namespace output
