/// The bar code on the delivered lattice: whole dots a module and what they print.
#include "calc/barcode.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis rounding{"rounding to whole dots", SourceTag::computed,
                     "one more or less where the symbol's range asks for it"};
const Basis whole_dots{"plane geometry", SourceTag::computed, "module > 0"};

/// "R" [dpi], the delivered resolution of an axis of the line.
StepInput resolution(const TraceWriter& w, const Group& group, bool across, const std::string& g) {
  const std::string axis = across ? "across" : "along";
  const Resolution value = across ? group.resolution_across : group.resolution_along;
  return w.step_of_value("R", {g + "." + axis, g + ".motion", "required." + axis}, in_dpi(value),
                         "dpi");
}

void fit_step(TraceWriter& w, const Group& group, const BarcodeFit& fit, const std::string& g) {
  const std::string axis = fit.across ? "across" : "along";
  const StepInput r = resolution(w, group, fit.across, g);
  std::vector<StepInput> inputs{
      from_value("X", *w.job.module, in_mm(fit.module_asked), "mm", "image.barcode_module"), r};
  const int nearest = dots_per_module(fit.module_asked, dpi(r.value));
  std::string formula = "max(1,floor(X*R/25.4+0.5))";
  if (fit.dots != nearest) {
    formula += "+z";
    inputs.push_back(chosen("z", fit.dots - nearest, ""));
  }
  w.formula(g + ".bar_code_" + axis, "n", formula, std::move(inputs), fit.dots, "", rounding);
  w.formula(g + ".module_" + axis, "X_p", "25.4*n/R", {w.step("n", g + ".bar_code_" + axis), r},
            in_mm(fit.module_printed), "mm", whole_dots);
}

}  // namespace

void trace_barcodes(TraceWriter& w, const Group& group, const std::string& g) {
  for (const BarcodeFit& fit : group.barcodes) fit_step(w, group, fit, g);
}

}  // namespace calc
