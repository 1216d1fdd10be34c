/// Product, image and line: widths, lengths, speed, throw.
#include <algorithm>
#include <cmath>

#include "calc/across.h"
#include "calc/compare.h"
#include "calc/eye.h"
#include "calc/job_parts.h"

namespace calc {
namespace {

std::optional<Value<Length>> width_of(const Request& r) {
  if (r.image.width) return *r.image.width;
  for (const Given<Length>* source : {&r.product.width, &r.substrate.width}) {
    if (*source) {
      const Value<Length>& w = **source;
      return derived(w.value, w.low, w.high, w.spread);
    }
  }
  return std::nullopt;
}

template <class T, class Factor>
Value<Speed> speed_from(const Value<T>& rate, Factor per) {
  return derived(rate.value * per, rate.low * per, rate.high * per, rate.spread);
}

/// Speed that the throughput asks for, if it can be told.
std::optional<Value<Speed>> speed_of_throughput(const Job& job) {
  const Line& line = job.request->line;
  if (line.throughput_parts && job.pitch.value > Length{}) {
    return speed_from(*line.throughput_parts, job.pitch.value);
  }
  const std::optional<Length> width = passing_width(job);
  if (line.throughput_area && width && *width > Length{}) {
    return speed_from(*line.throughput_area, 1.0 / *width);
  }
  return std::nullopt;
}

Origin throughput_origin(const Line& line) {
  return line.throughput_parts ? line.throughput_parts->origin : line.throughput_area->origin;
}

/// Speed and throughput both given: where they differ by more than rounding, both places are shown
/// and both served, at the greater.
void agree_on_speed(Job& job, const Value<Speed>& asked) {
  constexpr double rounding = 0.01;
  const Line& line = job.request->line;
  const Speed given = served_high(*line.speed);
  if (at_most(std::abs(asked.high / given - 1), rounding)) return;
  const bool below = given < asked.high;
  job.warnings.push_back({below ? "speed_below_throughput" : "throughput_below_speed",
                          {{"speed", given.si(), "m/s"}, {"needed", asked.high.si(), "m/s"}},
                          below ? "line.speed" : "line.throughput",
                          {line.speed->origin, throughput_origin(line)}});
  if (!below) return;
  const Speed low = std::min(served_low(*line.speed), asked.high);
  job.speed = derived(asked.high, low, asked.high,
                      line.speed->spread == Spread::none ? asked.spread : Spread::demand);
}

void resolve_speed(Job& job) {
  const Line& line = job.request->line;
  if (line.throughput_parts) job.parts_rate = line.throughput_parts->high;
  const std::optional<Value<Speed>> asked = speed_of_throughput(job);
  job.speed = line.speed ? served(*line.speed) : asked;
  if (line.speed && asked) agree_on_speed(job, *asked);
  const std::optional<Length> width = passing_width(job);
  if (line.throughput_area) {
    job.throughput = line.throughput_area;
  } else if (job.speed && width) {
    const Value<Speed>& v = *job.speed;
    job.throughput = derived(v.value * *width, v.low * *width, v.high * *width, v.spread);
  }
}

void warn_overspray(Job& job) {
  const Request& r = *job.request;
  if (!job.width || !r.substrate.width) return;
  const Length printed = print_width(job.width->high, job.margin.value);
  if (at_most(printed, r.substrate.width->low)) return;
  job.warnings.push_back(
      {"overspray",
       {{"printed", in_mm(printed), "mm"}, {"substrate", in_mm(r.substrate.width->low), "mm"}},
       "image.width",
       {job.width->origin, r.substrate.width->origin}});
}

}  // namespace

std::optional<Length> passing_width(const Job& job) {
  const Request& r = *job.request;
  if (r.substrate.width) return r.substrate.width->value;
  if (r.product.width) return r.product.width->value;
  if (job.width) return print_width(job.width->high, job.margin.value);
  return std::nullopt;
}

bool rate_without_pitch(const Job& job) {
  return job.request->line.throughput_parts && job.pitch.value <= Length{};
}

bool image_meets_itself(const Job& job) {
  if (!job.radius) return false;
  return at_least(job.length.high, job.request->product.diameter->value * pi);
}

namespace {

/// An assumption that is a word and no number, by common practice.
void assume_said(Job& job, const char* field, const char* text, const char* effect) {
  Assumption a;
  a.field = field;
  a.text = text;
  a.effect = effect;
  a.source = "common practice, no source";
  job.assumptions.push_back(std::move(a));
}

/// A flat product of which image length or pitch is not known counts as printed all along.
void resolve_share(Job& job) {
  if (!share_known(job)) {
    job.printed_share = assume(job, P::printed_share);
  } else if (job.pitch.value > Length{} && job.length.value > Length{}) {
    job.printed_share = std::min(1.0, job.length.value / job.pitch.value);
  }
}

}  // namespace

bool share_known(const Job& job) {
  return job.radius || (job.request->image.length && job.request->product.pitch);
}

void resolve_geometry(Job& job) {
  const Request& r = *job.request;
  job.width = width_of(r);
  if (r.image.margin) {
    job.margin = *r.image.margin;
  } else {
    job.margin = derived(r.line.weave ? r.line.weave->high : Length{});
  }
  const bool cylinder = r.product.form && r.product.form->value == Form::cylinder;
  Length around;
  const bool along = r.product.axis && r.product.axis->value == BodyAxis::along;
  if (cylinder && r.product.diameter && along) {
    job.radius_across = served_low(*r.product.diameter) / 2;
  } else if (cylinder && r.product.diameter) {
    job.radius = served_low(*r.product.diameter) / 2;
    around = r.product.diameter->value * pi;
    if (!r.product.axis) assume_said(job, "product.axis", "across", "heads_total");
  }
  job.length = r.image.length ? *r.image.length : derived(around);
  job.pitch =
      r.product.pitch ? *r.product.pitch : derived(around > Length{} ? around : job.length.value);
  resolve_share(job);
  if (r.product.thickness_variation) {
    job.thickness_variation = r.product.thickness_variation->high;
  }
  warn_overspray(job);
}

namespace {

/// Where nothing is said of it, a carriage is looked at only if the line can stop and index. That
/// it may not, where that is not said either, is an assumption.
Mode mode_of(Job& job) {
  const Line& line = job.request->line;
  if (line.mode) return line.mode->value;
  if (line.indexing) return line.indexing->value ? Mode::either : Mode::single;
  assume_said(job, "line.mode", "single", "family");
  return Mode::single;
}

}  // namespace

void resolve_line(Job& job) {
  const Line& line = job.request->line;
  resolve_speed(job);
  const Mode mode = mode_of(job);
  job.single_pass = mode != Mode::scanning;
  job.scanning = mode != Mode::single;
  if (line.throw_distance) job.throw_distance = served(*line.throw_distance);
  job.throw_variation = line.throw_variation
                            ? *line.throw_variation
                            : assumed(millimetres(assume(job, P::throw_variation_mm)));
  job.room = line.air_temperature ? served(*line.air_temperature)
                                  : assumed(Temperature::celsius(assume(job, P::room_c)));
  const Substrate& s = job.request->substrate;
  job.contact_angle = s.contact_angle;
  job.absorbency = s.absorbency ? s.absorbency->value : Absorbency::low;
}

}  // namespace calc
