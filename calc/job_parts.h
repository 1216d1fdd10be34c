/// The parts of resolve(), one topic each; internal to job*.cpp. Each reads job.request and fills
/// its members, recording what it assumes, warns of and finds missing.
#pragma once

#include "calc/job.h"

namespace calc {

/// The value of a default, recorded once among the job's assumptions.
double assume(Job& job, P id);
/// A value that stands in for a field the request does not have.
template <class T>
Value<T> assumed(T value) {
  return exactly(value, Origin{OriginKind::assumed, {}, 0, 0, {}});
}
template <class T>
Value<T> derived(T value) {
  return exactly(value, Origin{OriginKind::derived, {}, 0, 0, {}});
}
template <class T>
Value<T> derived(T value, T low, T high, Spread spread) {
  return {value, low, high, spread, Origin{OriginKind::derived, {}, 0, 0, {}}};
}

/// A value with the ends that must be served: an uncertainty about it is for the verdict alone.
template <class T>
Value<T> served(const Value<T>& value) {
  return value.spread == Spread::uncertain ? exactly(value.value, value.origin) : value;
}

/// Default of the mean cover of a kind of colour.
P mean_parameter(ColourKind kind);

void resolve_geometry(Job& job);          ///< width, margin, length, pitch, radius (job_line.cpp)
void resolve_line(Job& job);              ///< speed, throughput, motion, throw (job_line.cpp)
void resolve_demands(Job& job);           ///< every demand on resolution (job_demands.cpp)
void resolve_channels(Job& job);          ///< colours, inks, groups (job_channels.cpp)
void resolve_economics(Job& job);         ///< hours, rates, currency (job.cpp)
void ask(Job& job);                       ///< questions, ranked (job_questions.cpp)
void find_missing(Job& job);              ///< what nothing can be answered without (job.cpp)
bool rate_without_pitch(const Job& job);  ///< parts per time, but no way from part to part
bool share_known(const Job& job);         ///< of the length that passes: how much is printed
/// Width of the substrate that passes: what an area rate counts.
std::optional<Length> passing_width(const Job& job);
bool image_meets_itself(const Job& job);  ///< all round a body that turns under the heads

}  // namespace calc
