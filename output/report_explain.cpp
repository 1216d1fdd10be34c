#include "output/report_explain.h"

#include <numbers>
#include <utility>
#include <vector>

#include "output/compose_context.h"
#include "output/json_words.h"
#include "output/plain_number.h"
#include "output/report_text.h"
#include "output/section_list.h"

namespace output {
namespace {

using Rows = std::vector<std::vector<std::string>>;

std::string with_plain_unit(double value, const std::string& unit, int digits = 6) {
  return plain(value, digits) + (unit.empty() ? "" : " " + unit);
}

std::string dpi_pair(calc::Resolution across, calc::Resolution along) {
  return plain(in_dpi(across), 5) + " x " + plain(in_dpi(along), 5) + " dpi";
}

std::string section(const std::string& title, const std::string& body) {
  return body.empty() ? "" : "\n" + title + "\n" + body;
}

std::string joined(const std::vector<std::string>& texts, const char* separator) {
  std::string all;
  for (const std::string& text : texts) all.append(all.empty() ? "" : separator).append(text);
  return all;
}

/// One item of a list.
std::string bullet(const std::string& text) {
  return wrapped(terminal_safe(text), 4).replace(2, 1, 1, '-');
}

std::string input_value(const calc::Input& input) {
  if (!input.text.empty()) return input.text;
  std::string text = with_plain_unit(input.value, input.unit);
  if (input.spread == calc::Spread::none) return text;
  return text + " (" + plain(input.low, 6) + " to " + with_plain_unit(input.high, input.unit) + ")";
}

/// The line it was given at, else "derived" or "assumed".
std::string input_origin(const calc::Input& input) {
  return input.origin.line > 0 ? place_key(input.origin)
                               : std::string(json_word(input.origin.kind));
}

/// Catalogue values stand with the steps that use them; here is what was asked.
std::string requirement(const calc::Specification& specification) {
  Rows rows;
  for (const calc::Input& input : specification.inputs) {
    if (input.origin.kind == calc::OriginKind::catalogue) continue;
    rows.push_back({"  " + terminal_safe(input.key), terminal_safe(input_origin(input)),
                    terminal_safe(input_value(input))});
  }
  return columns(rows);
}

std::string demand_text(const std::optional<calc::Resolution>& value) {
  return value ? plain(in_dpi(*value), 5) : "-";
}

std::string resolution(const calc::Required& required) {
  Rows rows{{"  demand", "across dpi", "along dpi", ""}};
  for (const calc::Demand& demand : required.demands) {
    rows.push_back({"  " + demand.name, demand_text(demand.across), demand_text(demand.along),
                    demand.hard ? "hard" : "soft"});
  }
  return columns(rows, {1, 2}) + "  required: " + dpi_pair(required.across, required.along) +
         ", governed by " + required.governed_by + "\n";
}

std::string tilt_text(const calc::Group& group) {
  if (group.family != calc::Family::tilted) return {};
  return " by " + plain(group.tilt * 180 / std::numbers::pi, 5) + " deg";
}

std::string group_text(const calc::Group& group) {
  std::string text = wrapped(
      group.name + ": " + std::to_string(group.heads_total) + " of " + terminal_safe(group.head) +
          " in mode " + terminal_safe(group.mode) + ", " + std::string(json_word(group.family)) +
          tilt_text(group) + ", for " + terminal_safe(joined(group.channels, ", ")),
      2);
  Rows rows{{"    arrangement", std::to_string(group.heads_across) + " across, interleave " +
                                    std::to_string(group.interleave) + ", stack " +
                                    std::to_string(group.stack) + ", " +
                                    std::to_string(group.positions) + " position(s)"},
            {"    resolution", dpi_pair(group.resolution_across, group.resolution_along)},
            {"    frequency", plain(in_khz(group.frequency_per_nozzle), 5) + " of " +
                                  plain(in_khz(group.frequency_allowed), 5) + " kHz a nozzle"},
            {"    speed limit", plain(group.speed_limit.si() * 60, 5) + " m/min"}};
  for (const calc::ChannelDots& dots : group.dots) {
    rows.push_back({"    dots of " + terminal_safe(dots.channel),
                    plain(in_pl(dots.drop), 4) + " pL, dot " + plain(in_um(dots.dot_diameter), 4) +
                        " um, cover " + plain(dots.cover_fraction * 100, 4) + " %, laydown " +
                        plain(dots.laydown * 1e6, 4) + " mL/m2"});
  }
  return text + columns(rows);
}

std::string money_text(calc::Money amount, const std::string& currency) {
  return plain(amount.major()) + " " + currency;
}

std::string station_text(const calc::Station& station) {
  const std::string& currency = station.currency;
  Rows rows{{"  capital", money_text(station.cost.capital, currency)},
            {"  running", money_text(station.cost.running_per_year, currency) + " a year"},
            {"  ownership", money_text(station.cost.ownership, currency) + " over " +
                                std::to_string(station.cost.years) + " years"},
            {"  unpriced lines", std::to_string(station.bom_unpriced)}};
  return columns(rows);
}

std::string answer(const calc::Specification& specification) {
  std::string text;
  if (specification.chosen.empty()) text = "  no arrangement of the catalogue's heads\n";
  for (const calc::Group& group : specification.chosen) text += group_text(group);
  if (specification.station && specification.station->speed_limit) {
    const calc::StationSpeed& limit = *specification.station->speed_limit;
    text += "  line speed of heads, lamps and dryers together: up to " +
            plain(limit.speed.si() * 60, 5) + " m/min, set by " + limit.by + "\n";
  }
  if (specification.station) text += station_text(*specification.station);
  return text;
}

std::string notices(const Context& context, const char* kind,
                    const std::vector<calc::Notice>& list) {
  std::string text;
  for (const calc::Notice& notice : list) {
    text += bullet(without_markup(context.notice(kind, notice)));
  }
  return text;
}

std::string left_out(const Context& context, const calc::Specification& specification) {
  std::string text;
  for (const calc::RejectedHead& head : specification.rejected) {
    text += "  " + terminal_safe(head.head) + "\n";
    for (const calc::Reason& reason : head.reasons) {
      text +=
          wrapped(reason.code + ": " + terminal_safe(without_markup(context.reason(reason))), 4);
    }
  }
  return text;
}

std::string nearest(const Context& context, const calc::Specification& specification) {
  if (specification.verdict != calc::Verdict::infeasible) return {};
  std::string text = bullet(without_markup(nearest_miss_text(context)));
  const std::string musts = musts_text(context);
  return musts.empty() ? text : text + bullet(without_markup(musts));
}

std::string edge_value(const calc::Edge& edge) {
  if (edge.printed) return with_plain_unit(*edge.printed, edge.unit, 9);
  return edge.up ? "over twice" : "under half";
}

std::string edges(const calc::Specification& specification) {
  if (specification.edges.empty()) return {};
  Rows rows{{"  moved alone", "now", "edge", "to", "gate"}};
  for (const calc::Edge& edge : specification.edges) {
    rows.push_back({"  " + terminal_safe(edge.quantity), with_plain_unit(edge.now, edge.unit, 9),
                    std::string(json_word(edge.kind)) + (edge.up ? " up" : " down"),
                    edge_value(edge), edge.beyond});
  }
  return columns(rows);
}

std::string step_input_text(const calc::StepInput& input) {
  std::string text =
      input.symbol + " = " + with_plain_unit(input.value, input.unit, 8) + " (" + input.origin;
  return text + (input.ref.empty() ? ")" : " " + terminal_safe(input.ref) + ")");
}

std::string step_text(const calc::Step& step) {
  std::string text = wrapped(step.id + ": " + step.symbol + " = " + terminal_safe(step.formula), 2);
  text += wrapped("= " + with_plain_unit(step.value, step.unit, 8) + "  [" +
                      std::string(json_word(step.kind)) + "]",
                  6);
  for (const calc::StepInput& input : step.inputs) text += wrapped(step_input_text(input), 6);
  text += wrapped("source: " + step.source + " [" + std::string(json_word(step.tag)) + "]", 6);
  if (!step.validity.empty()) text += wrapped("valid: " + step.validity, 6);
  if (!step.assumptions.empty()) text += wrapped("assumes: " + joined(step.assumptions, ", "), 6);
  return text;
}

std::string trace(const calc::Specification& specification) {
  std::string text;
  for (const calc::Step& step : specification.trace) text += step_text(step);
  return text;
}

std::string questions(const Context& context, const calc::Specification& specification) {
  std::string text;
  for (const calc::Question& question : specification.questions) {
    text += wrapped("- " + terminal_safe(without_markup(context.field(question.field))) + " (" +
                        terminal_safe(question.field) + ")",
                    2);
  }
  return text;
}

}  // namespace

std::string explanation(const calc::Specification& specification, const calc::Request& request,
                        const Templates& templates) {
  const Context context(specification, request, templates);
  std::string text = terminal_safe(specification.id) + " revision " + specification.revision +
                     ", " + specification.date + ": " + terminal_safe(specification.title) +
                     "\nverdict: " + std::string(json_word(specification.verdict)) + "\n";
  text += section("REQUIREMENT", requirement(specification));
  if (specification.required) text += section("RESOLUTION", resolution(*specification.required));
  text += section("ANSWER", answer(specification));
  text += section("CONDITIONS", notices(context, "condition", specification.conditions));
  text += section("WARNINGS", notices(context, "warning", specification.warnings));
  text += section("HEADS NOT CHOSEN", left_out(context, specification));
  text += section("NEAREST MISS", nearest(context, specification));
  text += section("EDGES", edges(specification));
  text += section("QUESTIONS", questions(context, specification));
  return text + section("TRACE", trace(specification));
}

}  // namespace output
