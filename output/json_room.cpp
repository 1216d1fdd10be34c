/// What would make something fit, and the edges of what fits.
#include "output/json_parts.h"
#include "output/json_words.h"

namespace output {
namespace {

Json heads_json(const calc::HeadsOf& heads) {
  return {{"group", heads.group},
          {"head", heads.head},
          {"mode", heads.mode},
          {"family", json_word(heads.family)},
          {"heads_total", heads.heads_total}};
}

Json miss_json(const calc::NearestMiss& miss) {
  return {{"field", miss.field},
          {"from", json_number(miss.from)},
          {"to", json_number(miss.to)},
          {"unit", miss.unit},
          {"relative", json_number(miss.relative)},
          {"arrangement", json_list(miss.arrangement, heads_json)}};
}

Json edge_json(const calc::Edge& edge) {
  Json object{{"quantity", edge.quantity},
              {"kind", json_word(edge.kind)},
              {"direction", edge.up ? "up" : "down"},
              {"unit", edge.unit},
              {"now", json_number(edge.now)},
              {"value", json_number_or_null(edge.value)},
              {"printed", json_number_or_null(edge.printed)}};
  json_set(object, "beyond", edge.beyond);
  object["arrangement"] = json_list(edge.arrangement, heads_json);
  return object;
}

}  // namespace

void set_room(Json& root, const calc::Specification& specification) {
  if (specification.verdict == calc::Verdict::infeasible) {
    root["nearest_miss"] = Json();
    if (specification.nearest_miss) root["nearest_miss"] = miss_json(*specification.nearest_miss);
    root["musts_in_the_way"] = specification.musts_in_the_way;
  }
  if (!specification.edges.empty()) root["edges"] = json_list(specification.edges, edge_json);
}

}  // namespace output
