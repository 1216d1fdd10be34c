#include "output/rate_text.h"

#include <algorithm>
#include <cmath>

#include "intake/unit.h"
#include "output/compose_text.h"
#include "output/format.h"

namespace output {
namespace {

/// The unit at the end of the text as it was written; parts a minute where it is none.
intake::Unit written_unit(const std::string& raw) {
  const std::size_t number = raw.find_last_of("0123456789.");
  const std::size_t from =
      number == std::string::npos ? raw.size() : raw.find_first_not_of(' ', number + 1);
  const std::string text = from < raw.size() ? raw.substr(from) : std::string();
  const auto found = intake::find_unit("part rate", text);
  return found ? *found : intake::find_unit("part rate", "parts/min").value();
}

}  // namespace

std::optional<double> speed_over_needed(const Context& c) {
  const calc::Input* const needed = c.input("line.speed");
  if (needed == nullptr || needed->high <= 0 || c.spec.chosen.empty()) return {};
  calc::Speed reached = c.spec.chosen.front().speed_limit;
  for (const calc::Group& group : c.spec.chosen) reached = std::min(reached, group.speed_limit);
  if (!c.spec.chosen.front().scan) reached = highest_speed(c).speed;
  constexpr double minute = 60;
  return reached.si() * minute / needed->high;
}

std::optional<PartsRate> parts_rate(const Context& c) {
  const auto& asked = c.request.line.throughput_parts;
  const std::optional<double> over = speed_over_needed(c);
  if (!asked || !over) return {};
  PartsRate rate;
  const intake::Unit unit = written_unit(asked->origin.raw);
  const std::string name(unit.text);
  const auto in_unit = [&](calc::Frequency f) { return intake::to_unit(f.si(), unit); };
  const double high = in_unit(asked->high);
  rate.reached = c.plain(rounded(high * *over, 3, Rounding::down), name, 3);
  rate.asked = asked->low < asked->high ? number(in_unit(asked->low), 6) + " " + c.words("to") +
                                              " " + c.plain(high, name, 6)
                                        : c.plain(high, name, 6);
  return rate;
}

}  // namespace output
