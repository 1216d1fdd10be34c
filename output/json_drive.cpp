#include "output/json_parts.h"

namespace output {
namespace {

constexpr double ml_per_min = 6e7;  ///< of a cubic metre a second
constexpr double litre = 1e3;

Json board_json(const calc::BoardUse& use) {
  Json object{{"board", use.board},
              {"heads", use.heads},
              {"boards", use.boards},
              {"heads_per_board", use.heads_per_board},
              {"data_rate_bit_per_s", json_number(use.data.si())}};
  if (use.board_rate) object["board_data_rate_bit_per_s"] = json_number(use.board_rate->si());
  return object;
}

Json feed_json(const calc::ChannelFeed& feed) {
  Json object{{"channel", feed.channel},
              {"heads", feed.heads},
              {"active_nozzles", json_number(feed.active_nozzles)},
              {"data_rate_bit_per_s", json_number(feed.data.si())},
              {"solid_ml_per_min", json_number(feed.solid.si() * ml_per_min)},
              {"peak_ml_per_min", json_number(feed.peak.si() * ml_per_min)},
              {"recirculation_ml_per_min", json_number(feed.recirculation.si() * ml_per_min)},
              {"supply", feed.supply},
              {"supplies", feed.supplies},
              {"bound_by", feed.bound_by}};
  if (feed.containers > 0) {
    object["containers"] = feed.containers;
    object["container_l"] = json_number(feed.container.si() * litre);
  }
  object["first_fill_l"] = json_number(feed.first_fill.si() * litre);
  return object;
}

Json encoder_json(const calc::EncoderFit& fit) {
  Json object{{"group", fit.group},
              {"step_um", json_number(in_um(fit.step))},
              {"counts_per_dot", json_number(fit.counts_per_dot)},
              {"whole_counts", fit.whole},
              {"whole_resolution_dpi", json_number(in_dpi(fit.whole_resolution))},
              {"whole_error", json_number(fit.whole_error)},
              {"fraction_counts", fit.counts},
              {"fraction_dots", fit.dots},
              {"fraction_error", json_number(fit.fraction_error)}};
  if (fit.repeat) {
    object["repeat_mm"] = json_number(in_mm(*fit.repeat));
    object["whole_residue_um"] = json_number(in_um(*fit.whole_residue));
    object["fraction_residue_um"] = json_number(in_um(*fit.fraction_residue));
  }
  object["rounding_um"] = json_number(in_um(fit.rounding));
  object["count_rate_hz"] = json_number(fit.rate.si());
  object["whole_serves"] = fit.whole_serves;
  return object;
}

}  // namespace

void set_drive(Json& root, const calc::Station& station) {
  root["drive"] = {{"boards", json_list(station.board_uses, board_json)},
                   {"cables", json_number(station.cables)}};
  root["supply"] = json_list(station.feeds, feed_json);
  if (!station.encoder.empty()) root["encoder"] = json_list(station.encoder, encoder_json);
}

}  // namespace output
