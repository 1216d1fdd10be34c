#include "calc/station_flexibility.h"

#include <algorithm>

#include "calc/bom_prices.h"
#include "calc/compare.h"
#include "calc/gates.h"
#include "calc/named.h"

namespace calc {
namespace {

/// Equal within a hundredth of a millimetre, as bodies that change places must be.
bool equal_length(const Given<Length>& a, const Given<Length>& b) {
  constexpr Length play = micrometres(10);
  return a && b && a->value <= b->value + play && b->value <= a->value + play;
}

/// Swath [m] of a head in its first mode that prints one colour with all nozzles.
Length swath_of(const Head& head) {
  Length widest;
  for (const HeadMode& mode : head.modes) {
    if (!mode.nozzles || !mode.row_pitch || !mode.row_offsets) continue;
    const auto rows = static_cast<double>(std::max<std::size_t>(1, mode.row_offsets->value.size()));
    widest = std::max(widest, mode.nozzles->value / rows / mode.row_pitch->value);
  }
  return widest;
}

bool interchangeable(const Head& a, const Head& b) {
  const bool board = a.board && b.board && a.board->value == b.board->value;
  return board && equal_length(a.body_width, b.body_width) &&
         equal_length(a.body_depth, b.body_depth) && at_least(swath_of(b), swath_of(a));
}

std::vector<std::string> other_families(const Job& job, const Head& head, const Group& group) {
  std::vector<std::string> names;
  if (!head.families) return names;
  for (const InkFamily family : head.families->value) {
    const bool own = std::any_of(job.channels.begin(), job.channels.end(), [&](const Channel& c) {
      return c.family == family && std::find(group.channels.begin(), group.channels.end(),
                                             c.name) != group.channels.end();
    });
    if (!own) names.emplace_back(family_word(family));
  }
  return names;
}

/// Width [m] printed by the heads across beyond what is asked.
std::optional<Length> spare_width(const Job& job, const Group& group) {
  if (!job.width || group.scan) return std::nullopt;
  const Length printed = (group.heads_across - 1) * group.head_pitch + group.swath;
  return printed - (job.width->value + 2 * job.margin.value);
}

int free_colours(const Group& group, const HeadMode* mode) {
  const int places = mode != nullptr && mode->colours ? mode->colours->value : 1;
  return group.positions * places - static_cast<int>(group.channels.size());
}

void describe_head(const Job& job, const Catalogue& catalogue, const Head& head, const Group& group,
                   Flexibility& f) {
  f.families = other_families(job, head, group);
  f.free_colours = free_colours(group, named(head.modes, group.mode));
  for (const Head& other : catalogue.heads) {
    if (other.name != head.name && interchangeable(head, other)) {
      f.interchangeable.push_back(other.name);
    }
  }
  if (const auto price = price_in(head.price, job.currency)) {
    f.replace_cost = *price + to_money(f.replace_hours * job.labour.value);
  }
  if (head.serviceable) f.serviceable = head.serviceable->value;
  if (head.waveform) f.waveform = head.waveform->value;
  if (head.driver_sources) f.driver_sources = head.driver_sources->value;
}

}  // namespace

std::vector<Flexibility> flexibility(const Job& job, const Catalogue& catalogue,
                                     const std::vector<Group>& groups) {
  std::vector<Flexibility> list;
  for (const Group& group : groups) {
    Flexibility f;
    f.group = group.name;
    f.head = group.head;
    f.replace_hours = job.parameters[P::alignment_h];
    if (job.speed && !group.scan) f.spare_speed = group.speed_limit - job.speed->high;
    f.spare_width = spare_width(job, group);
    const Head* head = named(catalogue.heads, group.head);
    if (head != nullptr) describe_head(job, catalogue, *head, group, f);
    list.push_back(std::move(f));
  }
  return list;
}

bool has_single_source(const Catalogue& catalogue, const BomLine& line) {
  // A head names the one board that drives it, so there is no second source of a board.
  if (line.source.starts_with("board.")) return true;
  if (!line.source.starts_with("head.")) return false;
  const Head* head = named(catalogue.heads, line.source.substr(5));
  if (head == nullptr) return false;
  return std::none_of(catalogue.heads.begin(), catalogue.heads.end(), [&](const Head& other) {
    return other.maker && head->maker && other.maker->value != head->maker->value &&
           interchangeable(*head, other);
  });
}

std::optional<double> single_source_share(const Catalogue& catalogue, const Station& station) {
  Money priced, single;
  for (const BomLine& line : station.bom) {
    if (!line.extended_price) continue;
    priced = priced + *line.extended_price;
    if (has_single_source(catalogue, line)) single = single + *line.extended_price;
  }
  if (priced.minor <= 0) return std::nullopt;
  return single.major() / priced.major();
}

std::vector<std::string> single_source_unpriced(const Catalogue& catalogue,
                                                const Station& station) {
  std::vector<std::string> parts;
  for (const BomLine& line : station.bom) {
    if (line.extended_price || !has_single_source(catalogue, line)) continue;
    const bool known = std::find(parts.begin(), parts.end(), line.part_number) != parts.end();
    if (!known) parts.push_back(line.part_number);
  }
  return parts;
}

}  // namespace calc
