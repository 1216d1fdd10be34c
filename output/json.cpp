#include "output/json.h"

#include <set>
#include <utility>

#include "output/digest.h"
#include "output/json_parts.h"
#include "output/json_words.h"

namespace output {
namespace {

Json file_json(const FileDigest& file) { return {{"name", file.name}, {"sha256", file.sha256}}; }

Json revision_json(const EarlierIssue& issue) {
  return {{"revision", issue.revision},
          {"date", issue.date},
          {"verdict", issue.verdict},
          {"sha256", issue.sha256}};
}

Json notice_json(const calc::Notice& notice) {
  Json object{{"code", notice.code}, {"field", notice.field}, {"args", Json::object()}};
  Json units = Json::object();
  for (const calc::Arg& arg : notice.args) {
    const auto* number = std::get_if<double>(&arg.value);
    object["args"][arg.name] =
        number != nullptr ? json_number(*number) : Json(std::get<std::string>(arg.value));
    if (!arg.unit.empty()) units[arg.name] = arg.unit;
  }
  if (!units.empty()) object["units"] = units;
  return object;
}

Json input_json(const calc::Input& input) {
  Json object = JsonObject()
                    .with("key", input.key)
                    .with("value", input.text.empty() ? json_number(input.value) : Json(input.text))
                    .with("unit", input.unit)
                    .made();
  if (input.spread != calc::Spread::none) {
    object["low"] = json_number(input.low);
    object["high"] = json_number(input.high);
  }
  object["origin"] = json_word(input.origin.kind);
  if (!input.origin.file.empty()) {
    object["file"] = input.origin.file;
    object["line"] = input.origin.line;
    object["column"] = input.origin.column;
  }
  return object;
}

Json demand_json(const calc::Demand& demand) {
  Json object{{"name", demand.name}};
  json_set_dpi(object, "across_dpi", demand.across);
  json_set_dpi(object, "along_dpi", demand.along);
  object["hard"] = demand.hard;
  return object;
}

Json required_json(const calc::Required& required) {
  Json object{{"resolution_across_dpi", json_number(in_dpi(required.across))},
              {"resolution_along_dpi", json_number(in_dpi(required.along))},
              {"governed_by", required.governed_by},
              {"demands", json_list(required.demands, demand_json)}};
  json_set_dpi(object, "substrate_ceiling_dpi", required.substrate_ceiling);
  return object;
}

Json consumption_json(const calc::Consumption& use) {
  Json object{{"channel", use.channel},
              {"ml_per_hour", json_number(use.ml_per_hour)},
              {"l_per_month", json_number(use.l_per_month)},
              {"l_per_year", json_number(use.l_per_year)},
              {"printed_ml_per_hour", json_number(use.printed_ml_per_hour)},
              {"waste_ml_per_hour", json_number(use.waste_ml_per_hour)},
              {"flush_ml_per_hour", json_number(use.flush_ml_per_hour)}};
  json_set(object, "ml_per_thousand", use.ml_per_thousand);
  return object;
}

Json bom_json(const calc::BomLine& line) {
  return JsonObject()
      .with("item", line.item)
      .with("part_number", line.part_number)
      .with("designation", line.designation)
      .with("technical_data", line.technical_data)
      .with("quantity", json_number(line.quantity))
      .with("unit", line.unit)
      .with("unit_price", json_money_or_null(line.unit_price))
      .with("extended_price", json_money_or_null(line.extended_price))
      .with("lead_time_days", json_number_or_null(line.lead_time_days))
      .with("source", line.source)
      .with("serves", line.serves)
      .with("reference", line.reference)
      .made();
}

/// What the yearly sums stand without, which makes them lower bounds.
Json cost_without(const calc::Cost& cost) {
  Json without = Json::array();
  if (cost.ink_unpriced) without.push_back("ink");
  if (cost.heads_unpriced) without.push_back("heads");
  if (cost.power_unknown) without.push_back("power");
  if (cost.flush_unpriced) without.push_back("flush");
  return without;
}

Json cost_json(const calc::Cost& cost) {
  Json object{{"capital", json_money(cost.capital)},
              {"running_per_year", json_money(cost.running_per_year)},
              {"ownership", json_money(cost.ownership)}};
  json_set(object, "per_m2", cost.per_m2);
  json_set(object, "per_thousand", cost.per_thousand);
  json_set(object, "images_m2_per_year", cost.images_m2_per_year);
  json_set(object, "parts_per_year", cost.parts_per_year);
  object["discount"] = json_number(cost.discount);
  object["years"] = cost.years;
  object["ink_per_year"] = json_money(cost.ink_per_year);
  object["heads_per_year"] = json_money(cost.heads_per_year);
  object["energy_per_year"] = json_money(cost.energy_per_year);
  object["labour_per_year"] = json_money(cost.labour_per_year);
  object["cleaning_per_year"] = json_money(cost.cleaning_per_year);
  object["tornado"] = json_list(cost.terms, [&cost](const calc::CostTerm& term) {
    return JsonObject()
        .with("term", term.name)
        .with("value", json_money(term.value))
        .with("low", json_money(cost.ownership - term.swing))
        .with("high", json_money(cost.ownership + term.swing))
        .made();
  });
  object["without"] = cost_without(cost);
  return object;
}

Json fans_json(const calc::Fans& fans) {
  Json object{{"kind", fans.kind}, {"part", fans.part}, {"units", fans.units}};
  object["m3_per_h"] = json_number_or_null(fans.m3_per_h);
  return object;
}

Json spare_json(const calc::Spare& spare) {
  return {{"part_number", spare.part_number},
          {"mean", json_number(spare.mean)},
          {"quantity", spare.quantity}};
}

void set_station(Json& object, const calc::Station& station) {
  object["data_rate_bit_per_s"] = json_number(station.data_rate_bit_per_s);
  object["consumption"] = json_list(station.consumption, consumption_json);
  object["stages"] = json_list(station.stages, stage_json);
  object["bom"] = json_list(station.bom, bom_json);
  object["bom_total"] = json_money(station.bom_total);
  object["bom_unpriced"] = station.bom_unpriced;
  object["currency"] = station.currency;
  if (station.speed_limit) {
    object["station_speed_limit"] = {{"m_per_s", json_number(station.speed_limit->speed.si())},
                                     {"by", station.speed_limit->by},
                                     {"at_most", station.speed_limit->at_most}};
  }
  object["lead_time"] = Json();
  if (station.lead_time) {
    object["lead_time"] = {{"days", json_number(station.lead_time->days)},
                           {"item", station.lead_time->item},
                           {"parts_without", station.lead_time->lead_time_unknown}};
  }
  object["cost"] = cost_json(station.cost);
  object["spares"] = json_list(station.spares, spare_json);
  object["footprint_mm"] = json_number(in_mm(station.footprint));
  object["service_access_mm"] = json_number(in_mm(station.service_access));
  json_set(object, "heat_kw", station.heat_kw);
  object["fans"] = json_list(station.fans, fans_json);
  object["boards"] = station.boards;
  object["unpriced_items"] = station.unpriced_items;
  set_drive(object, station);
}

Json alternative_json(const calc::Alternative& alternative) {
  return {{"groups", json_list(alternative.groups, group_json)},
          {"cost", cost_json(alternative.station.cost)},
          {"differs", alternative.differs},
          {"pareto", alternative.on_front},
          {"bom_unpriced", alternative.station.bom_unpriced}};
}

/// Without cost where nothing is feasible.
Json speed_step_json(const calc::SpeedStep& step) {
  Json object{{"speed_m_per_s", json_number(step.speed.si())}, {"heads_total", step.heads}};
  if (step.heads == 0) return object;
  object["heads"] = step.kinds;
  object["capital"] = step.capital.major();
  object["ownership"] = step.ownership.major();
  return object;
}

Json reason_json(const calc::Reason& reason) {
  Json object{{"code", reason.code},
              {"value", json_number(reason.value)},
              {"limit", json_number(reason.limit)},
              {"unit", reason.unit},
              {"group", reason.group},
              {"subject", reason.subject},
              {"at_least", reason.at_least}};
  json_set(object, "at_degc", reason.at_degc);
  json_set(object, "known_to_degc", reason.known_to_degc);
  json_set(object, "field", reason.field);
  return object;
}

Json rejected_json(const calc::RejectedHead& rejected) {
  return {{"head", rejected.head}, {"reasons", json_list(rejected.reasons, reason_json)}};
}

Json assumption_json(const calc::Assumption& assumption) {
  Json object{{"field", assumption.field}};
  object["value"] = assumption.text.empty() ? json_number(assumption.value) : Json(assumption.text);
  object["unit"] = assumption.unit;
  json_set(object, "low", assumption.low);
  json_set(object, "high", assumption.high);
  object["effect"] = assumption.effect;
  object["source"] = assumption.source;
  return object;
}

Json question_json(const calc::Question& question) {
  Json object{{"code", question.code}, {"field", question.field}};
  json_set(object, "assumed", question.assumed);
  json_set(object, "low", question.low);
  json_set(object, "high", question.high);
  object["effect"] = question.effect;
  object["unit"] = question.unit;
  json_set(object, "up_to_degc", question.up_to_degc);
  if (!question.lets_pass.empty()) object["lets_pass"] = question.lets_pass;
  return object;
}

Json check_json(const calc::Check& check) {
  Json object{{"code", check.code}};
  json_set(object, "acceptance", check.acceptance);
  object["unit"] = check.unit;
  json_set(object, "subject", check.subject);
  json_set(object, "axis", check.axis);
  return object;
}

Json step_input_json(const calc::StepInput& input) {
  return JsonObject()
      .with("symbol", input.symbol)
      .with("value", json_exact(input.value))
      .with("unit", input.unit)
      .with("origin", input.origin)
      .with("ref", input.ref)
      .made();
}

Json step_json(const calc::Step& step) {
  return JsonObject()
      .with("id", step.id)
      .with("kind", json_word(step.kind))
      .with("symbol", step.symbol)
      .with("formula", step.formula)
      .with("inputs", json_list(step.inputs, step_input_json))
      .with("value", json_exact(step.value))
      .with("unit", step.unit)
      .with("source", step.source)
      .with("tag", json_word(step.tag))
      .with("validity", step.validity)
      .with("assumptions", step.assumptions)
      .made();
}

void set_head(Json& root, const calc::Specification& specification, const JsonFacts& facts) {
  root["schema"] = "swathspec/1";
  root["program"] = {{"version", facts.version}};
  if (!facts.templates_sha256.empty()) root["templates"] = {{"sha256", facts.templates_sha256}};
  root["request"] = {{"id", specification.id},
                     {"revision", specification.revision},
                     {"date", specification.date},
                     {"title", specification.title},
                     {"source_sha256", facts.source_sha256}};
  root["catalogue"] = {{"used_sha256", used_catalogue_digest(specification)}};
  json_set(root["catalogue"], "date", specification.catalogue_date);
  if (facts.pdf && facts.bom_csv) {
    root["files"] = {{"pdf", file_json(*facts.pdf)}, {"bom_csv", file_json(*facts.bom_csv)}};
  }
  if (!facts.revisions.empty()) root["revisions"] = json_list(facts.revisions, revision_json);
  root["verdict"] = json_word(specification.verdict);
  root["conditions"] = json_list(specification.conditions, notice_json);
  root["warnings"] = json_list(specification.warnings, notice_json);
  root["inputs"] = json_list(specification.inputs, input_json);
}

void set_answer(Json& root, const calc::Specification& specification) {
  if (specification.required) root["required"] = required_json(*specification.required);
  if (specification.chosen.empty()) return;
  root["chosen"] = chosen_json(specification);
  const calc::Group& leading = leading_group(specification);
  if (leading.flight) root["placement"] = placement_json(specification, leading);
  if (specification.carriage_pace) root["carriage_pace"] = pace_json(*specification.carriage_pace);
  root["ink"] = inks_json(specification.inks);
}

/// Two levels of structure on lines of their own, the rest compact: a line is one input, part or
/// step, so that a text comparison of two files shows what changed.
void lay_out_lines(std::string& text, const Json& value, int depth) {
  if (depth == 0 || !value.is_structured() || value.empty()) {
    text += value.dump();
    return;
  }
  const std::string indent(static_cast<std::size_t>(3 - depth), ' ');
  text += value.is_object() ? "{" : "[";
  for (auto it = value.begin(); it != value.end(); ++it) {
    text += it == value.begin() ? "\n" : ",\n";
    text += indent;
    if (value.is_object()) text += Json(it.key()).dump() + ": ";
    lay_out_lines(text, *it, depth - 1);
  }
  text += "\n" + indent.substr(1) + (value.is_object() ? "}" : "]");
}

std::string text_of(const Json& root) {
  std::string text;
  lay_out_lines(text, root, 2);
  return text + "\n";
}

}  // namespace

Json whole_json(const calc::Specification& specification, const JsonFacts& facts) {
  Json root = Json::object();
  set_head(root, specification, facts);
  set_answer(root, specification);
  if (specification.station) set_station(root, *specification.station);
  root["alternatives"] = json_list(specification.alternatives, alternative_json);
  root["speed_steps"] = json_list(specification.speed_steps, speed_step_json);
  root["rejected"] = json_list(specification.rejected, rejected_json);
  set_room(root, specification);
  root["assumptions"] = json_list(specification.assumptions, assumption_json);
  root["uncertainty"] = json_list(specification.uncertainty, uncertainty_json);
  root["questions"] = json_list(specification.questions, question_json);
  root["tests"] = json_list(specification.tests, check_json);
  root["safety"] = json_list(specification.safety, notice_json);
  root["trace"] = json_list(specification.trace, step_json);
  return root;
}

std::string used_catalogue_digest(const calc::Specification& specification) {
  std::set<std::string> lines;
  for (const calc::Input& input : specification.inputs) {
    if (input.origin.kind != calc::OriginKind::catalogue) continue;
    lines.insert(input.key + "=" + input.origin.raw + "\n");
  }
  std::string text;
  for (const std::string& line : lines) text += line;
  return sha256(text);
}

std::string write_json(const calc::Specification& specification, const JsonFacts& facts) {
  return text_of(whole_json(specification, facts));
}

WrittenJson write_issue(const calc::Specification& specification, const JsonFacts& facts) {
  Json root = whole_json(specification, facts);
  std::string text = text_of(root);
  return {std::move(text), issued_from(std::move(root))};
}

}  // namespace output
