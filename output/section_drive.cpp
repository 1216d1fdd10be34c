/// Drive electronics, ink supply and encoder.
#include <algorithm>
#include <cmath>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_links.h"
#include "output/section_list.h"

namespace output {
namespace {

constexpr double ml_per_min = 6e7;  ///< of a cubic metre a second
constexpr double megabit = 1e-6;

/// The step that counts the cables.
std::string cables_step(const calc::Station& station) {
  const auto line = std::find_if(station.bom.begin(), station.bom.end(),
                                 [](const calc::BomLine& l) { return l.kind == "cable"; });
  if (line == station.bom.end()) return {};
  return "station.count." + line->source.substr(line->source.find('.') + 1);
}

std::string flow(const Context& c, calc::VolumeFlow value) {
  return c.in_column(value.si() * ml_per_min, "mL/min", 3);
}

void add_board(const Context& c, Values& values, const calc::BoardUse& use) {
  Values& row = values.add("BOARD");
  row.set("KEY", c.step_keys({"station.boards." + use.board}));
  row.set_markup("NAME", use.board.empty() ? c.words("drive.no_board") : escaped(use.board));
  const std::string id = "station.boards." + use.board, board = "board." + use.board + ".heads";
  row.set_markup("HEADS", c.figure({id + ".heads", heads_step(c)}, std::to_string(use.heads)));
  row.set_markup("DATA",
                 c.figure({id + ".data", "station.data"}, number(use.data.si() * megabit, 3)));
  row.set_markup("EACH", c.figure_given(board, std::to_string(use.heads_per_board)));
  row.set_markup("RATE",
                 c.figure_given(board, use.board_rate ? number(use.board_rate->si() * megabit, 3)
                                                      : std::string("\xE2\x80\x93")));
  row.set_markup("COUNT", c.figure({id}, std::to_string(use.boards)));
}

void add_feed(const Context& c, Values& values, const calc::ChannelFeed& feed) {
  const std::string id = "station." + feed.channel;
  Values& row = values.add("FEED");
  row.set("KEY", c.row_keys({id + ".supplies", id + ".peak", id + ".data"}));
  row.set("CHANNEL", feed.channel);
  row.set_markup("NOZZLES", c.figure({group_of_channel(c, feed.channel) + ".active"},
                                     count_text(std::floor(feed.active_nozzles + 0.5))));
  row.set_markup("DATA", c.figure({id + ".data"}, number(feed.data.si() * megabit, 3)));
  row.set_markup("PEAK", c.figure({id + ".peak"}, flow(c, feed.peak)));
  row.set_markup("MOVED", c.figure({id + ".supplies"}, feed.recirculation > calc::VolumeFlow()
                                                           ? flow(c, feed.recirculation)
                                                           : "\xE2\x80\x93"));
  row.set_markup("SUPPLIES", c.figure({id + ".supplies"}, std::to_string(feed.supplies)));
  row.set_markup("BY", c.words("drive.bound." + feed.bound_by));
}

void add_store(const Context& c, Values& values, const calc::ChannelFeed& feed) {
  Values& row = values.add("STORE");
  row.set("KEY", c.step_keys({"station." + feed.channel + ".containers"}));
  row.set("CHANNEL", feed.channel);
  row.set_markup("SUPPLY", feed.supply.empty() ? c.words("drive.no_supply") : escaped(feed.supply));
  const std::string id = "station." + feed.channel;
  row.set_markup("COUNT",
                 c.figure({id + ".containers"},
                          feed.containers > 0 ? std::to_string(feed.containers) : "\xE2\x80\x93"));
  row.set_markup("SIZE",
                 c.figure_given("supply." + feed.supply + ".container",
                                feed.containers > 0 ? c.in_column(feed.container.si() * 1e3, "L", 3)
                                                    : "\xE2\x80\x93"));
  row.set_markup("FILL",
                 c.figure({id + ".first_fill"}, c.in_column(feed.first_fill.si() * 1e3, "L", 3)));
}

void add_row(const Context& c, Values& table, const std::string& name, const std::string& value,
             const std::string& key) {
  Values& row = table.add("ROW");
  row.set("KEY", c.step_keys({key}));
  row.set_markup("NAME", c.words("property.encoder_" + name));
  row.set_markup("VALUE", value);
}

/// A residue in the unit it reads best in.
std::string signed_length(const Context& c, calc::Length value) {
  const double um = in_um(value);
  return std::abs(um) < 1000 ? c.measure(um, "um", 3) : c.measure(um / 1000, "mm", 3);
}

void add_encoder(const Context& c, Values& values, const calc::EncoderFit& fit,
                 const std::string& g) {
  Values& table = values.add("ENCODER");
  table.set_markup("CAPTION", c.words("drive.encoder", {{"GROUP", c.group_name(fit.group)}}));
  const std::string step = c.measure(in_um(fit.step), "um", 5);
  add_row(c, table, "step", fit.step_given ? c.linked("line.encoder_step", step) : step,
          fit.step_given ? "" : "station.encoder_step");
  add_row(c, table, "counts", number(fit.counts_per_dot, 6), g + ".encoder_counts");
  add_row(c, table, "whole", std::to_string(fit.whole), g + ".encoder_whole");
  add_row(c, table, "resolution", with_unit(in_dpi(fit.whole_resolution), "dpi", 6),
          g + ".encoder_resolution");
  if (fit.repeat) {
    add_row(c, table, "residue", signed_length(c, *fit.whole_residue), g + ".encoder_residue");
  }
  const std::string fraction = std::to_string(fit.counts) + "/" + std::to_string(fit.dots);
  const std::string to_fraction = c.to_step(g + ".encoder_fraction", fraction);
  add_row(c, table, "fraction", to_fraction, "");
  if (fit.repeat) {
    add_row(c, table, "fraction_residue", signed_length(c, *fit.fraction_residue),
            g + ".encoder_fraction_residue");
  }
  add_row(c, table, "rounding", c.measure(in_um(fit.rounding), "um", 3), g + ".encoder_rounding");
  add_row(c, table, "rate", with_unit(in_khz(fit.rate), "kHz", 4), g + ".encoder_rate");
  Values verdict;
  verdict.set("REPEAT", fit.repeat ? length_text(c, *fit.repeat) : "");
  verdict.set_markup("FRACTION", to_fraction);
  const std::string words = fit.whole_serves ? "drive.whole" : "drive.fractional";
  table.set_markup("VERDICT", c.templates.words(c.language(), words, verdict));
}

std::string group_step(const Context& c, const std::string& name) {
  for (std::size_t i = 0; i < c.spec.chosen.size(); ++i) {
    if (c.spec.chosen[i].name == name) return group_prefix(i);
  }
  return {};
}

}  // namespace

std::string drive_section(const Context& c) {
  if (!c.spec.station || c.spec.station->feeds.empty()) return {};
  const calc::Station& station = *c.spec.station;
  Values values;
  for (const calc::BoardUse& use : station.board_uses) add_board(c, values, use);
  values.set_markup(
      "SUMMARY",
      c.worded(c.of_motion("drive.summary"),
               {{"DATA", c.figure({"station.data"},
                                  with_unit(station.data_rate_bit_per_s * megabit, "Mbit/s", 3))},
                {"BOARDS", c.figure({boards_step(c)}, std::to_string(station.boards))},
                {"CABLES", c.figure({cables_step(station)}, count_text(station.cables))}}));
  values.set_markup("FEEDS", c.words(c.of_motion("drive.feeds")));
  for (const calc::ChannelFeed& feed : station.feeds) {
    add_feed(c, values, feed);
    add_store(c, values, feed);
  }
  for (const calc::EncoderFit& fit : station.encoder) {
    add_encoder(c, values, fit, group_step(c, fit.group));
  }
  if (station.encoder.empty()) {
    const bool scan = c.spec.chosen.front().scan.has_value();
    const std::string item = scan ? carriage_encoder(station) : std::string();
    const char* const key = !scan          ? "drive.encoder_unknown"
                            : item.empty() ? "drive.encoder_axis"
                                           : "drive.encoder_scan";
    values.add("NO_ENCODER").set_markup("SENTENCE", c.words(key, {{"ITEM", item}}));
  }
  return c.expand("drive", values);
}

}  // namespace output
