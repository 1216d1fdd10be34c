/// Values of the request that were not given as they are needed but follow from others.
#include <cmath>

#include "calc/eye.h"
#include "calc/job_parts.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis taken_rule{"definition", SourceTag::computed, "as wide as what is printed on"};
const Basis round_rule{"circumference of a circle", SourceTag::computed,
                       "an image made for the nominal diameter"};
const Basis abutting_rule{"definition", SourceTag::computed, "images that follow without a gap"};
const Basis parts_rule{"definition", SourceTag::computed, "one part a pitch"};
const Basis share_rule{"definition", SourceTag::computed, "one image a pitch"};
const Basis area_rule{"definition", SourceTag::computed, "width of what passes"};

template <class T>
bool is_derived(const Value<T>& value) {
  return value.origin.kind == OriginKind::derived;
}

void width(TraceWriter& w) {
  if (!w.job.width || !is_derived(*w.job.width)) return;
  const Request& r = *w.job.request;
  const double mm = in_mm(w.job.width->value);
  w.formula("derived.image.width", "W_i", "W_p",
            {r.product.width ? from_value("W_p", *r.product.width, mm, "mm", "product.width")
                             : from_value("W_p", *r.substrate.width, mm, "mm", "substrate.width")},
            mm, "mm", taken_rule);
}

/// All round a body that turns.
void around(TraceWriter& w, const char* id, const char* symbol, Length value) {
  const Value<Length>& d = *w.job.request->product.diameter;
  w.formula(id, symbol, "pi*D",
            {constant("pi", pi, ""), from_value("D", d, in_mm(d.value), "mm", "product.diameter")},
            in_mm(value), "mm", round_rule);
}

void lengths(TraceWriter& w) {
  const Job& job = w.job;
  if (is_derived(job.length) && job.length.value > Length{}) {
    around(w, "derived.image.length", "L", job.length.value);
  }
  if (!is_derived(job.pitch) || job.pitch.value <= Length{}) return;
  if (job.radius) return around(w, "derived.product.pitch", "p", job.pitch.value);
  const double mm = in_mm(job.pitch.value);
  w.formula("derived.product.pitch", "p", "L",
            {from_value("L", job.length, mm, "mm", "image.length")}, mm, "mm", abutting_rule);
}

/// Of what passes, the share that is printed, where length and pitch say it.
void share(TraceWriter& w) {
  const Job& job = w.job;
  if (!share_known(job) || job.pitch.value <= Length{} || job.length.value <= Length{}) return;
  w.formula("derived.printed_share", "s", "min(1,L/p)",
            {from_value("L", job.length, in_mm(job.length.value), "mm", "image.length"),
             from_value("p", job.pitch, in_mm(job.pitch.value), "mm", "product.pitch")},
            job.printed_share, "", share_rule);
}

/// "W" [mm], the width of what passes.
StepInput passing(TraceWriter& w) {
  const Request& r = *w.job.request;
  const double mm = in_mm(*passing_width(w.job));
  if (r.substrate.width) return from_value("W", *r.substrate.width, mm, "mm", "substrate.width");
  if (r.product.width) return from_value("W", *r.product.width, mm, "mm", "product.width");
  const std::string id = "derived.width";
  if (!w.has(id)) {
    w.formula(id, "W", "W_i+2*w_m",
              {from_value("W_i", *w.job.width, in_mm(w.job.width->high), "mm", "image.width"),
               margin_input(w.job, w.job.margin.value)},
              mm, "mm", area_rule);
  }
  return w.step("W", id);
}

/// Which end of a rate the speed was worked out from: the highest where a lower speed is stated.
template <class T>
double rate_behind(const TraceWriter& w, const Value<T>& rate, double per) {
  const double speed = w.job.speed->value.si();
  const bool nominal = std::abs(rate.value.si() * per / speed - 1) < 1e-12;
  return nominal ? rate.value.si() : rate.high.si();
}

void speed(TraceWriter& w) {
  if (!w.job.speed || !is_derived(*w.job.speed)) return;
  const Line& line = w.job.request->line;
  const double value = w.job.speed->value.si();
  if (line.throughput_parts && w.job.pitch.value > Length{}) {
    const double rate = rate_behind(w, *line.throughput_parts, w.job.pitch.value.si());
    w.formula("derived.line.speed", "v", "n*p/3600000",
              {from_value("n", *line.throughput_parts, rate * 3600, "1/h", "line.throughput"),
               from_value("p", w.job.pitch, in_mm(w.job.pitch.value), "mm", "product.pitch")},
              value, "m/s", parts_rule);
    return;
  }
  const double rate = rate_behind(w, *line.throughput_area, 1 / passing_width(w.job)->si());
  w.formula("derived.line.speed", "v", "q_a/(3.6*W)",
            {from_value("q_a", *line.throughput_area, rate * 3600, "m2/h", "line.throughput"),
             passing(w)},
            value, "m/s", area_rule);
}

void throughput(TraceWriter& w) {
  if (!w.job.throughput || !is_derived(*w.job.throughput)) return;
  w.formula(
      "derived.line.throughput", "q_a", "3.6*W*v",
      {passing(w), from_value("v", *w.job.speed, w.job.speed->value.si(), "m/s", "line.speed")},
      w.job.throughput->value.si() * 3600, "m2/h", area_rule);
}

}  // namespace

void trace_derived(TraceWriter& w) {
  width(w);
  lengths(w);
  share(w);
  speed(w);
  throughput(w);
}

}  // namespace calc
