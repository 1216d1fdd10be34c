/// Drops, dots and the cover of a solid on the delivered lattice.
#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_list.h"
#include "output/sketch_list.h"

namespace output {
namespace {

constexpr double laydown_to_ml_per_m2 = 1e6;  ///< 1 m of film is 1e6 mL/m2

void add_channel(const Context& c, Values& values, const calc::ChannelDots& dots,
                 const std::string& g) {
  const std::string prefix = g + "." + dots.channel;
  Values& row = values.add("ROW");
  row.set("KEY", c.step_keys({prefix + ".dot", prefix + ".cover", prefix + ".laydown"}));
  row.set("CHANNEL", dots.channel);
  row.set("LEVELS", std::to_string(dots.levels_used));
  row.set("VOLUME", number(in_pl(dots.drop), 3));
  row.set("DROP", number(in_um(dots.drop_diameter), 3));
  row.set("DOT", number(in_um(dots.dot_diameter), 3));
  row.set("COVER", percent_down(dots.cover_fraction));
  row.set("LAYDOWN", number(dots.laydown * laydown_to_ml_per_m2, 3));
}

std::string sentence(const Context& c, const calc::ChannelDots& dots) {
  const std::string key = dots.cover_fraction >= 1 ? "dots.closed" : "dots.open";
  return c.words(key, {{"CHANNEL", dots.channel},
                       {"DOT", with_unit(in_um(dots.dot_diameter), "um", 3)},
                       {"COVER", percent_down(dots.cover_fraction) + "\xC2\xA0%"}}) +
         " " + c.words("spread." + dots.spread_from);
}

bool same_dots(const calc::ChannelDots& a, const calc::ChannelDots& b) {
  return a.dot_diameter == b.dot_diameter && a.cover_fraction == b.cover_fraction &&
         a.spread_from == b.spread_from;
}

}  // namespace

std::string dots_section(const Context& c) {
  Values values;
  const calc::ChannelDots* last = nullptr;
  for (std::size_t i = 0; i < c.spec.chosen.size(); ++i) {
    for (const calc::ChannelDots& dots : c.spec.chosen[i].dots) {
      add_channel(c, values, dots, group_prefix(i));
      if (last != nullptr && same_dots(*last, dots)) continue;
      last = &dots;
      Values& text = values.add("TEXT");
      text.set("KEY", c.step_keys({group_prefix(i) + "." + dots.channel + ".spread"}));
      text.set_markup("SENTENCE", sentence(c, dots));
    }
  }
  if (last == nullptr) return {};
  values.set_markup("DRAWING", sketch_dots(c));
  return c.expand("dots", values);
}

}  // namespace output
