/// What the design answers to the requirements of a bar code.
#include <algorithm>

#include "output/compose_text.h"
#include "output/figure_places.h"
#include "output/section_list.h"

namespace output {
namespace {

/// The first group that prints a bar code, or null.
const calc::Group* bar_code_group(const Context& c) {
  const auto found = std::find_if(c.spec.chosen.begin(), c.spec.chosen.end(),
                                  [](const calc::Group& g) { return !g.barcodes.empty(); });
  return found == c.spec.chosen.end() ? nullptr : &*found;
}

std::string module_led(const Context& c, const std::string& answer, const calc::Group& group,
                       const calc::BarcodeFit& fit) {
  return as_link(anchor(figure_step(c, fit.across ? ".module_across" : ".module_along",
                                    {in_um(fit.module_printed), "um", {group.name}})),
                 answer);
}

/// The fit along an axis, or null.
const calc::BarcodeFit* fit_on(const calc::Group& group, bool across) {
  const auto found = std::find_if(group.barcodes.begin(), group.barcodes.end(),
                                  [&](const calc::BarcodeFit& f) { return f.across == across; });
  return found == group.barcodes.end() ? nullptr : &*found;
}

}  // namespace

/// The module as printed, of both axes where they differ.
std::string module_answer(const Context& c) {
  const calc::Group* const group = bar_code_group(c);
  if (group == nullptr) return {};
  const calc::BarcodeFit& fit = group->barcodes.front();
  const auto printed = [&](const calc::BarcodeFit& of) {
    return length_text(c, of.module_printed, 4);
  };
  const calc::BarcodeFit* const across = fit_on(*group, true);
  const calc::BarcodeFit* const along = fit_on(*group, false);
  const bool differ = across != nullptr && along != nullptr && printed(*across) != printed(*along);
  const std::string answer =
      differ ? c.words("answer.module.axes", {{"ACROSS", printed(*across)},
                                              {"COUNT_ACROSS", std::to_string(across->dots)},
                                              {"ALONG", printed(*along)},
                                              {"COUNT_ALONG", std::to_string(along->dots)}})
             : c.words("answer.module",
                       {{"VALUE", printed(fit)}, {"COUNT", std::to_string(fit.dots)}});
  return module_led(c, answer, *group, fit);
}

/// Whether the module lies in the range of the symbol: of the axis and group that fails, if one
/// does.
std::string symbol_answer(const Context& c) {
  const calc::Group* worst = bar_code_group(c);
  if (worst == nullptr) return {};
  const calc::BarcodeFit* shown = &worst->barcodes.front();
  for (const calc::Group& group : c.spec.chosen) {
    for (const calc::BarcodeFit& fit : group.barcodes) {
      if (fit.pass || !shown->pass) continue;
      shown = &fit;
      worst = &group;
    }
  }
  if (shown->module_most <= calc::Length()) return {};
  const std::string answer =
      c.words(shown->pass ? "answer.symbol.in_range" : "answer.symbol.beyond",
              {{"VALUE", length_text(c, shown->module_printed, 4)},
               {"LEAST", length_text(c, shown->module_least, 4)},
               {"MOST", length_text(c, shown->module_most, 4)}});
  return shown->pass ? as_link("s-barcode", answer) : module_led(c, answer, *worst, *shown);
}

}  // namespace output
