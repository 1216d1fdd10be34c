#include "calc/eye.h"
#include "calc/resolution.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis sampling{"sampling theorem (Shannon 1949): at least two dots a feature",
                     SourceTag::computed, "feature > 0"};
const Basis stroke_rule{"common practice, no source: stroke width by typeface", SourceTag::practice,
                        "upright text, normal width"};
const Basis rounding{"rounding to whole dots", SourceTag::computed, "module > 0"};
const Basis eye{"plane geometry; ISO 8596: grade 1 resolves 1 minute of arc", SourceTag::computed,
                "distance > 0"};
const Basis largest{"the largest demand governs; an explicit one stands as given",
                    SourceTag::computed, "at least one demand"};

const Demand* find(const Required& required, std::string_view name) {
  for (const Demand& demand : required.demands) {
    if (demand.name == name) return &demand;
  }
  return nullptr;
}

double number(const Demand& demand) { return in_dpi(demand.across.value_or(*demand.along)); }

P stroke_parameter(const Image& image) {
  const Typeface face = image.typeface ? image.typeface->value : Typeface::regular;
  if (face == Typeface::bold) return P::stroke_bold;
  return face == Typeface::serif ? P::stroke_serif : P::stroke_regular;
}

P dots_parameter(const Image& image) {
  const bool good = image.text_quality && image.text_quality->value == TextQuality::good;
  return good ? P::text_dots_good : P::text_dots_legible;
}

void feature(TraceWriter& w, const Image& image, const Demand& demand) {
  w.formula("required.feature", "R_feature", "25.4*n/s",
            {from_parameter(w.job, "n", P::feature_dots),
             from_value("s", *image.smallest_feature, in_mm(image.smallest_feature->value), "mm",
                        "image.smallest_feature")},
            number(demand), "dpi", sampling);
}

void text(TraceWriter& w, const Image& image, const Demand& demand) {
  const double points = in_mm(image.smallest_text->value) / 25.4 * 72;
  const P stroke = stroke_parameter(image);
  w.formula("required.stroke", "w", "k*h*25.4/72",
            {from_parameter(w.job, "k", stroke),
             from_value("h", *image.smallest_text, points, "pt", "image.smallest_text")},
            w.job.parameters[stroke] * in_mm(image.smallest_text->value), "mm", stroke_rule);
  w.formula("required.text", "R_text", "25.4*n/w",
            {from_parameter(w.job, "n", dots_parameter(image)), w.step("w", "required.stroke")},
            number(demand), "dpi", sampling);
}

void bar_code(TraceWriter& w, const Demand& demand) {
  w.formula(
      "required.bar_code", "R_code", "25.4*(n-0.5)/X",
      {from_parameter(w.job, "n", P::barcode_dots),
       from_value("X", *w.job.module, in_mm(w.job.module->low), "mm", "image.barcode_module")},
      number(demand), "dpi", rounding);
}

void viewing(TraceWriter& w, const Image& image, const Demand& demand) {
  w.formula("required.viewing", "R_eye", "25.4/(2*D*tan(a*pi/21600))",
            {from_value("D", *image.viewing_distance, in_mm(image.viewing_distance->value), "mm",
                        "image.viewing_distance"),
             from_parameter(w.job, "a", P::acuity_arcmin), constant("pi", pi, "")},
            number(demand), "dpi", eye);
}

StepInput demand_input(const TraceWriter& w, const Demand& demand, const std::string& symbol,
                       Resolution value) {
  const std::string id = "required." + demand.name;
  if (w.has(id)) return w.step(symbol, id);
  const bool given = demand.name == "explicit";
  return {symbol, in_dpi(value), "dpi", given ? "given" : "assumed", "image.resolution"};
}

/// The largest of the demands on one axis; an explicit demand stands alone.
void governing(TraceWriter& w, bool across) {
  const Required& required = *w.spec.required;
  std::vector<StepInput> inputs;
  std::string list;
  for (const Demand& demand : required.demands) {
    const std::optional<Resolution> value = across ? demand.across : demand.along;
    if (!value || (find(required, "explicit") != nullptr && demand.name != "explicit")) continue;
    std::string symbol = "R_" + demand.name;
    list += (list.empty() ? "" : ",") + symbol;
    inputs.push_back(demand_input(w, demand, symbol, *value));
  }
  if (inputs.empty()) return;
  w.add(across ? "required.across" : "required.along", StepKind::choice, across ? "R_n" : "R_m",
        "max(" + list + ")", inputs, in_dpi(across ? required.across : required.along), "dpi",
        largest);
}

}  // namespace

void trace_required(TraceWriter& w) {
  if (!w.spec.required) return;
  const Required& required = *w.spec.required;
  const Image& image = w.job.request->image;
  if (const Demand* demand = find(required, "feature")) feature(w, image, *demand);
  if (const Demand* demand = find(required, "text")) text(w, image, *demand);
  if (const Demand* demand = find(required, "bar_code")) bar_code(w, *demand);
  if (const Demand* demand = find(required, "viewing")) viewing(w, image, *demand);
  governing(w, true);
  governing(w, false);
}

}  // namespace calc
