/// What resolution is asked for, by whom, and which demand governs.
#include <algorithm>
#include <cmath>

#include "calc/compare.h"
#include "calc/eye.h"
#include "calc/job_parts.h"
#include "calc/resolution.h"

namespace calc {
namespace {

void demand_both(Job& job, const char* name, Resolution r) {
  job.required.demands.push_back({name, false, r, r});
}

void demand_explicit(Job& job) {
  const Given<ResolutionPair>& given = job.request->image.resolution;
  if (!given) return;
  job.required.demands.push_back({"explicit", true, given->high.across, given->high.along});
}

P stroke_parameter(Typeface typeface) {
  if (typeface == Typeface::bold) return P::stroke_bold;
  return typeface == Typeface::serif ? P::stroke_serif : P::stroke_regular;
}

void demand_feature(Job& job) {
  const Image& image = job.request->image;
  if (!image.smallest_feature) return;
  demand_both(job, "feature",
              feature_demand(image.smallest_feature->low, assume(job, P::feature_dots)));
}

void demand_text(Job& job) {
  const Image& image = job.request->image;
  if (!image.smallest_text) return;
  const Typeface face = image.typeface ? image.typeface->value : Typeface::regular;
  const bool good = image.text_quality && image.text_quality->value == TextQuality::good;
  const double dots = assume(job, good ? P::text_dots_good : P::text_dots_legible);
  const Length stroke = image.smallest_text->low * assume(job, stroke_parameter(face));
  demand_both(job, "text", feature_demand(stroke, dots));
}

void demand_barcode(Job& job) {
  const Image& image = job.request->image;
  if (image.barcode_symbol) job.symbol = find_barcode_symbol(image.barcode_symbol->value);
  if (image.barcode_module) {
    job.module = image.barcode_module;
  } else if (job.symbol != nullptr) {
    job.module = derived(job.symbol->target);
  } else {
    return;
  }
  const bool matrix = job.symbol != nullptr && job.symbol->two_dimensional;
  const bool directed = image.barcode_direction && !matrix;
  const bool across = directed && image.barcode_direction->value == BarcodeDirection::across;
  job.edges_across = !directed || across;
  job.edges_along = !directed || !across;
  const Resolution r =
      barcode_demand(job.module->low, static_cast<int>(std::lround(assume(job, P::barcode_dots))));
  Demand demand{"bar_code", true, std::nullopt, std::nullopt};
  if (job.edges_across) demand.across = r;
  if (job.edges_along) demand.along = r;
  job.required.demands.push_back(demand);
}

void demand_viewing(Job& job) {
  const Image& image = job.request->image;
  if (!image.viewing_distance) return;
  const double angle = assume(job, P::acuity_arcmin) * one_arc_minute;
  demand_both(job, "viewing", eye_limit(image.viewing_distance->low, angle));
}

using Axis = std::optional<Resolution> Demand::*;

/// The demand that governs one axis: the explicit one, else the largest; null for none.
const Demand* governing(const std::vector<Demand>& demands, Axis axis) {
  const Demand* best = nullptr;
  for (const Demand& d : demands) {
    if (!(d.*axis)) continue;
    if (d.name == "explicit") return &d;
    if (best == nullptr || *(d.*axis) > *(best->*axis)) best = &d;
  }
  return best;
}

/// The least that passes on one axis: the explicit demand alone, else hard demands whole and soft
/// ones at their share.
Resolution least_passing(const std::vector<Demand>& demands, Axis axis, double share) {
  Resolution least;
  for (const Demand& d : demands) {
    if (!(d.*axis)) continue;
    if (d.name == "explicit") return *(d.*axis);
    least = std::max(least, d.hard ? *(d.*axis) : *(d.*axis) * share);
  }
  return least;
}

const Origin& demand_origin(const Image& image, const std::string& name) {
  if (name == "feature") return image.smallest_feature->origin;
  if (name == "text") return image.smallest_text->origin;
  if (name == "viewing") return image.viewing_distance->origin;
  return image.barcode_module ? image.barcode_module->origin : image.barcode_symbol->origin;
}

std::string demand_field(const std::string& name) {
  if (name == "feature") return "image.smallest_feature";
  if (name == "text") return "image.smallest_text";
  if (name == "viewing") return "image.viewing_distance";
  return "image.barcode_module";
}

/// An explicit demand wins; where a derived one asks for more, both places are shown.
void warn_explicit_below(Job& job) {
  const Image& image = job.request->image;
  if (!image.resolution) return;
  const ResolutionPair& asked = image.resolution->high;
  for (const Demand& d : job.required.demands) {
    if (d.name == "explicit") continue;
    const bool across = d.across && !at_least(asked.across, *d.across);
    const bool along = d.along && !at_least(asked.along, *d.along);
    if (!across && !along) continue;
    job.warnings.push_back({"explicit_below_derived",
                            {{"demand", d.name, ""},
                             {"explicit", in_dpi(across ? asked.across : asked.along), "dpi"},
                             {"derived", in_dpi(across ? *d.across : *d.along), "dpi"}},
                            demand_field(d.name),
                            {image.resolution->origin, demand_origin(image, d.name)}});
  }
}

void warn_beyond_eye(Job& job) {
  const Image& image = job.request->image;
  if (!image.viewing_distance) return;
  const Resolution most = std::max(job.required.across, job.required.along);
  if (!far_beyond_eye(most, image.viewing_distance->low)) return;
  job.warnings.push_back({"finer_than_eye",
                          {{"required", in_dpi(most), "dpi"},
                           {"eye", in_dpi(eye_limit(image.viewing_distance->low)), "dpi"}},
                          image.resolution ? "image.resolution" : "image.viewing_distance",
                          {image.viewing_distance->origin}});
}

/// Whether the symbol at its module still fits the image.
void warn_symbol_width(Job& job) {
  if (job.symbol == nullptr || job.symbol->modules <= 0 || !job.module) return;
  const Length symbol = symbol_width(job.symbol->modules, job.module->high);
  const Length room = job.edges_across || job.length.value <= Length{}
                          ? (job.width ? job.width->low : Length{})
                          : job.length.low;
  if (room <= Length{} || at_most(symbol, room)) return;
  job.warnings.push_back({"symbol_too_wide",
                          {{"symbol", in_mm(symbol), "mm"}, {"room", in_mm(room), "mm"}},
                          "image.barcode_symbol",
                          {job.request->image.barcode_symbol->origin}});
}

/// An axis without any demand takes the other's, so that dots stay square.
void fill_required(Job& job) {
  Required& required = job.required;
  const Demand* across = governing(required.demands, &Demand::across);
  const Demand* along = governing(required.demands, &Demand::along);
  const double share = job.parameters[P::soft_share];
  job.least_across = least_passing(required.demands, &Demand::across, share);
  job.least_along = least_passing(required.demands, &Demand::along, share);
  required.across = across != nullptr ? *across->across : *along->along;
  required.along = along != nullptr ? *along->along : *across->across;
  if (across == nullptr) job.least_across = required.across * share;
  if (along == nullptr) job.least_along = required.along * share;
  const Demand* governs = across == nullptr                  ? along
                          : along == nullptr                 ? across
                          : required.along > required.across ? along
                                                             : across;
  required.governed_by = governs->name;
}

}  // namespace

std::string governing_field(const Job& job) {
  const std::string& name = job.required.governed_by;
  if (name == "explicit") return "image.resolution";
  return name.empty() || name == "assumed" ? std::string() : demand_field(name);
}

void resolve_demands(Job& job) {
  const Image& image = job.request->image;
  job.levels = image.levels ? image.levels->value : 2;
  job.solids = !image.solids || image.solids->value;
  demand_explicit(job);
  demand_feature(job);
  demand_text(job);
  demand_barcode(job);
  demand_viewing(job);
  std::vector<Demand>& demands = job.required.demands;
  job.required_known = !demands.empty();
  if (demands.empty()) demand_both(job, "assumed", dpi(assume(job, P::fallback_dpi)));
  const bool soft =
      std::any_of(demands.begin(), demands.end(), [](const Demand& d) { return !d.hard; });
  if (soft && !image.resolution) assume(job, P::soft_share);
  fill_required(job);
  warn_explicit_below(job);
  warn_beyond_eye(job);
  warn_symbol_width(job);
}

}  // namespace calc
