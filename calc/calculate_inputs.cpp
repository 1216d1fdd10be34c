#include "calc/calculate_inputs.h"

#include <algorithm>
#include <array>
#include <set>
#include <string_view>

#include "calc/named.h"

namespace calc {
namespace {

struct ReasonFields {
  std::string_view code;
  std::array<std::string_view, 6> fields;
};

// The catalogue's fields that a gate reads.
constexpr std::array<ReasonFields, 23> behind{{
    {"head_data", {"row_pitch", "row_offsets", "nozzles", "drops", "frequency", "colours"}},
    {"ink_family", {"families"}},
    {"ink_substrate", {"families"}},
    {"temperature", {"temperature_most"}},
    {"viscosity", {"viscosity", "viscosity_window", "temperature_most"}},
    {"tension", {"tension_window"}},
    {"throw",
     {"throw_least", "throw_nominal", "throw_most", "field_depth", "drop_speed", "drop_speed_at"}},
    {"placement",
     {"drop_speed", "drop_speed_at", "straightness", "speed_spread", "drops", "body_depth"}},
    {"slope", {"field_depth"}},
    {"serviceable", {"serviceable"}},
    {"waveform", {"waveform"}},
    {"driver_sources", {"driver_sources"}},
    {"levels", {"drops", "frequency", "grey_method"}},
    {"resolution", {"row_pitch", "row_offsets", "tilts", "row_places", "nozzle_delay"}},
    {"cover", {"drops", "row_pitch", "row_offsets"}},
    {"feature", {"drops", "row_pitch", "row_offsets"}},
    {"film", {"drops", "row_pitch", "row_offsets"}},
    {"bar_code", {"row_pitch", "row_offsets"}},
    {"frequency", {"frequency", "drops", "grey_method", "avoid"}},
    {"heads", {"nozzles", "row_pitch", "row_offsets", "overlap", "joins", "tilts"}},
    {"space", {"body_width", "body_depth", "joins", "tilts"}},
    {"budget", {"price", "currency"}},
    {"lead_time", {"lead_time"}},
}};

std::string_view last_part(std::string_view key) { return key.substr(key.rfind('.') + 1); }

bool is_behind(const Reason& reason, std::string_view field) {
  // A head that lost on the whole was compared with all it has.
  if (reason.code == "lost") return true;
  for (const ReasonFields& row : behind) {
    if (row.code != reason.code) continue;
    return !field.empty() &&
           std::find(row.fields.begin(), row.fields.end(), field) != row.fields.end();
  }
  return false;
}

/// Which rows appear whole, and the reasons of the others.
class Use {
 public:
  explicit Use(const Specification& spec) : rejected_(spec.rejected) {
    add(spec.chosen);
    if (spec.station) add(*spec.station);
    for (const Alternative& alternative : spec.alternatives) {
      add(alternative.groups);
      add(alternative.station);
    }
    for (const SpeedStep& step : spec.speed_steps) {
      whole_.insert(step.rows.begin(), step.rows.end());
    }
  }
  bool takes(const Row& row, const Input& input) const {
    if (whole_.contains(row.element + "." + row.name)) return true;
    if (row.element != "head") return false;
    const auto found = std::find_if(rejected_.begin(), rejected_.end(),
                                    [&](const RejectedHead& r) { return r.head == row.name; });
    if (found == rejected_.end()) return false;
    return std::any_of(found->reasons.begin(), found->reasons.end(), [&](const Reason& reason) {
      return is_behind(reason, last_part(input.key));
    });
  }

 private:
  void add(const std::vector<Group>& groups) {
    for (const Group& group : groups) whole_.insert("head." + group.head);
  }
  void add(const Station& station) {
    for (const BomLine& line : station.bom) {
      if (!line.source.empty()) whole_.insert(line.source);
    }
  }
  const std::vector<RejectedHead>& rejected_;
  std::set<std::string> whole_;
};

template <class T>
void add_rows(const std::vector<T>& rows, const Use& use, std::vector<Input>& to) {
  for (const Row& row : rows) {
    for (const Input& input : row.inputs) {
      if (use.takes(row, input)) to.push_back(input);
    }
  }
}

Input number_input(std::string key, double value, std::string unit, OriginKind kind) {
  Input input;
  input.key = std::move(key);
  input.value = input.low = input.high = value;
  input.unit = std::move(unit);
  input.origin.kind = kind;
  return input;
}

template <class T>
void add_derived(const char* key, const std::optional<Value<T>>& value, double scale,
                 const char* unit, std::vector<Input>& to) {
  if (!value || value->origin.kind != OriginKind::derived) return;
  Input input = number_input(key, value->value.si() * scale, unit, OriginKind::derived);
  input.low = value->low.si() * scale;
  input.high = value->high.si() * scale;
  input.spread = value->spread;
  to.push_back(std::move(input));
}

Input assumed_input(const Assumption& a) {
  Input input = number_input(a.field, a.value, a.unit, OriginKind::assumed);
  input.text = a.text;
  if (a.low && a.high) {
    input.low = *a.low;
    input.high = *a.high;
    input.spread = Spread::uncertain;
  }
  return input;
}

bool any_head(const Catalogue& catalogue, const std::vector<Group>& groups,
              bool (*test)(const Head&)) {
  return std::any_of(groups.begin(), groups.end(), [&](const Group& group) {
    const Head* head = named(catalogue.heads, group.head);
    return head != nullptr && test(*head);
  });
}

bool any_aqueous(const Job& job, bool (*test)(const Ink*)) {
  return std::any_of(job.channels.begin(), job.channels.end(), [&](const Channel& c) {
    return c.family == InkFamily::aqueous && test(c.ink);
  });
}

/// Whether flushing fluid is bought by the bottle, at a price; one that states its life wears
/// instead.
bool buys_flush(const Catalogue& catalogue, const Station& station) {
  return std::any_of(catalogue.parts.begin(), catalogue.parts.end(), [&](const Part& part) {
    if (!part.kind || part.kind->value != PartKind::flush || part.life) return false;
    return std::any_of(station.bom.begin(), station.bom.end(), [&](const BomLine& line) {
      return line.source == "part." + part.name && line.unit_price;
    });
  });
}

void drying_parameters(const Job& job, const Catalogue& catalogue, const Stage& stage,
                       std::vector<P>& to) {
  to.push_back(P::dryer_efficiency);
  to.push_back(job.absorbency == Absorbency::high ? P::evaporated_high : P::evaporated_none_low);
  const Dryer* const dryer = named(catalogue.dryers, stage.equipment);
  if (dryer == nullptr || !dryer->drying_rate) to.push_back(P::drying_rate);
  if (any_aqueous(job, [](const Ink* ink) { return ink == nullptr || !ink->water_share; })) {
    to.push_back(P::water_share);
  }
  if (any_aqueous(job, [](const Ink* ink) { return ink == nullptr || !ink->density; })) {
    to.push_back(P::ink_density);
  }
}

/// The place of the section that a field is of.
template <class T>
void add_section(const std::vector<T>& sections, std::string_view kind, Notice& warning) {
  for (const T& section : sections) {
    const std::string start = std::string(kind) + "." + section.name + ".";
    if (warning.field.starts_with(start)) warning.where.push_back(section.where);
  }
}

}  // namespace

std::vector<Input> request_inputs(const Job& job, const std::vector<Assumption>& assumptions) {
  std::vector<Input> inputs = job.request->inputs;
  add_derived("image.width", job.width, 1e3, "mm", inputs);
  add_derived("image.length", std::optional(job.length), 1e3, "mm", inputs);
  add_derived("product.pitch", std::optional(job.pitch), 1e3, "mm", inputs);
  add_derived("line.speed", job.speed, 60, "m/min", inputs);
  add_derived("line.throughput", job.throughput, 3600, "m2/h", inputs);
  for (const Assumption& assumption : assumptions) inputs.push_back(assumed_input(assumption));
  return inputs;
}

std::vector<Input> catalogue_inputs(const Catalogue& catalogue, const Specification& spec) {
  const Use use(spec);
  std::vector<Input> inputs;
  add_rows(catalogue.heads, use, inputs);
  add_rows(catalogue.boards, use, inputs);
  add_rows(catalogue.supplies, use, inputs);
  add_rows(catalogue.lamps, use, inputs);
  add_rows(catalogue.dryers, use, inputs);
  add_rows(catalogue.parts, use, inputs);
  return inputs;
}

void place(const Request& request, std::vector<Notice>& warnings) {
  for (Notice& warning : warnings) {
    if (!warning.where.empty() || warning.field.empty()) continue;
    for (const Input& input : request.inputs) {
      if (input.key == warning.field) warning.where.push_back(input.origin);
    }
    if (warning.where.empty()) add_section(request.inks, "ink", warning);
    if (warning.where.empty()) add_section(request.colours, "colour", warning);
  }
}

std::vector<Assumption> station_assumptions(const Job& job, const Catalogue& catalogue,
                                            const std::vector<Group>& groups,
                                            const Station& station) {
  std::vector<P> used{P::uptime,           P::purge_share,       P::purges_per_day, P::alignment_h,
                      P::spare_confidence, P::service_access_mm, P::flush_ml};
  if (buys_flush(catalogue, station)) used.push_back(P::flush_bottle_l);
  if (any_head(catalogue, groups, [](const Head& h) { return !h.purge; })) {
    used.push_back(P::purge_ml);
  }
  if (any_head(catalogue, groups, [](const Head& h) { return !h.life && !h.life_drops; })) {
    used.push_back(P::head_life_h);
  }
  for (const Stage& stage : station.stages) {
    if (stage.kind == "uv" && stage.rows) used.push_back(P::lamp_ageing);
    if (stage.kind == "drying") drying_parameters(job, catalogue, stage, used);
  }
  std::vector<Assumption> list;
  list.reserve(used.size());
  for (const P id : used) list.push_back(to_assumption(job, id));
  return list;
}

}  // namespace calc
