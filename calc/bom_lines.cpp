/// Needs written out as the lines of the bill.
#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "calc/bom.h"
#include "calc/bom_table.h"
#include "calc/codes.h"

namespace calc {
namespace {

std::string_view last_part(std::string_view key) { return key.substr(key.rfind('.') + 1); }

std::string spaced(std::string_view field) {
  std::string text(field);
  std::replace(text.begin(), text.end(), '_', ' ');
  return text;
}

const std::string& written(const Input& input) {
  return input.origin.raw.empty() ? input.text : input.origin.raw;
}

/// Whether a field belongs to another mode of the head than those in use: keys of modes are longer
/// and hold the mode's name.
bool of_other_mode(const std::string& key, const Row& row, const std::vector<Group>& groups) {
  const std::size_t own = row.element.size() + row.name.size() + 2;
  if (key.size() <= own || key.find('.', own) == std::string::npos) return false;
  return std::none_of(groups.begin(), groups.end(), [&](const Group& g) {
    return g.head == row.name && key.find("." + g.mode + ".", own - 1) != std::string::npos;
  });
}

/// Chosen fields of the row as written: "nozzles 600; drops 7 pL".
std::string technical_data(const Row& row, const BomKind& kind, const std::vector<Group>& groups) {
  std::string text;
  for (const std::string_view field : kind.technical) {
    if (field.empty()) continue;
    for (const Input& input : row.inputs) {
      if (last_part(input.key) != field || of_other_mode(input.key, row, groups)) continue;
      if (!text.empty()) text += "; ";
      text += spaced(field) + " " + written(input);
      break;
    }
  }
  return text;
}

/// What a figure of the request was worked out from where it was not stated itself.
struct StandIn {
  std::string_view key;
  std::array<std::string_view, 3> from;
};
constexpr std::array<StandIn, 2> stand_ins{{
    {"image.width", {"product.width", "substrate.width", "product.diameter"}},
    {"line.speed", {"line.throughput"}},
}};

bool is_given(const Job& job, std::string_view key) {
  const std::vector<Input>& inputs = job.request->inputs;
  return std::any_of(inputs.begin(), inputs.end(), [&](const Input& i) { return i.key == key; });
}

/// The key of the request that stands behind a requirement; empty where the request has none.
std::string given_key(const Job& job, std::string_view key) {
  if (is_given(job, key)) return std::string(key);
  for (const StandIn& row : stand_ins) {
    if (row.key != key) continue;
    for (const std::string_view from : row.from) {
      if (!from.empty() && is_given(job, from)) return std::string(from);
    }
  }
  if (key != "image.resolution") return {};
  std::string governing = governing_field(job);
  return is_given(job, governing) ? governing : std::string();
}

void add_given(const Job& job, std::string_view key, std::vector<std::string>& to) {
  std::string given = given_key(job, key);
  if (given.empty() || std::find(to.begin(), to.end(), given) != to.end()) return;
  to.push_back(std::move(given));
}

/// Whether a need is no ink supply, or one that feeds that channel.
bool feeds(const Need& need, const std::vector<Fed>& fed, std::size_t channel) {
  if (need.code != PartCode::ink_supply) return true;
  return std::any_of(fed.begin(), fed.end(), [&](const Fed& one) {
    return one.channel == channel && one.supply == need.item.row;
  });
}

/// A key of a repeated section names the sections concerned: "ink.family" is "ink.black.family".
void add_key(const Job& job, const Need& need, const std::vector<Fed>& fed, std::string_view key,
             std::vector<std::string>& to) {
  const std::string_view section = key.substr(0, key.find('.'));
  if (section != "ink" && section != "colour") {
    add_given(job, key, to);
    return;
  }
  for (std::size_t i = 0; i < job.channels.size(); ++i) {
    if ((need.channel && *need.channel != i) || !feeds(need, fed, i)) continue;
    const Channel& channel = job.channels[i];
    if (section == "ink" && channel.ink == nullptr) continue;
    const std::string& name = section == "ink" ? channel.ink->name : channel.name;
    add_given(job, std::string(section) + "." + name + "." + std::string(last_part(key)), to);
  }
}

std::string_view unit_name(NeedUnit unit) {
  if (unit == NeedUnit::litre) return "L";
  return unit == NeedUnit::hour ? "h" : "pc";
}

/// "PH5..PH8" for the pieces after the `used` first ones of the same letters.
std::string reference(const BomKind& kind, long long used, long long count) {
  if (kind.reference.empty() || count <= 0) return {};
  const std::string letters(kind.reference);
  std::string text = letters + std::to_string(used + 1);
  if (count > 1) text += ".." + letters + std::to_string(used + count);
  return text;
}

std::string short_number(double value) {
  std::array<char, 32> digits{};
  const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value,
                                 std::chars_format::general, 6);
  return {digits.data(), end.ptr};
}

/// "black; 5 x 1 L": channel and the containers of its first fill.
std::string fill_data(const Job& job, const Need& need) {
  std::string text = job.channels[*need.channel].name;
  if (need.containers <= 0) return text;
  text += "; " + std::to_string(need.containers) + " x ";
  text += short_number(need.quantity / need.containers) + " L";
  return text;
}

std::string text_of(const Given<std::string>& given) { return given ? given->value : ""; }

void describe(const Job& job, const Need& need, const std::vector<Group>& groups, BomLine& line) {
  const BomKind& kind = bom_kind(need.code);
  const std::string code(part_codes()[static_cast<std::size_t>(need.code)]);
  line.kind = code;
  if (need.channel) line.technical_data = fill_data(job, need);
  if (need.item.row == nullptr) {
    line.code = code;
    return;
  }
  const Row& row = *need.item.row;
  line.part_number = row.part_number ? row.part_number->value : row.name;
  line.designation = text_of(row.designation);
  line.source = row.element + "." + row.name;
  line.technical_data = technical_data(row, kind, groups);
  // A spare is the same part in another role, which its words must say.
  if (line.designation.empty() || need.code == PartCode::spare_head) line.code = code;
}

BomLine line_of(const Job& job, const Need& need, const std::vector<Group>& groups,
                const std::vector<Fed>& fed) {
  BomLine line;
  describe(job, need, groups, line);
  line.quantity = need.quantity;
  line.unit = unit_name(need.unit);
  line.unit_price = need.item.price;
  line.extended_price = extended_price(need);
  line.lead_time_days = need.item.lead_days;
  for (const std::string_view key : bom_kind(need.code).serves) {
    if (!key.empty()) add_key(job, need, fed, key, line.serves);
  }
  return line;
}

}  // namespace

std::vector<BomLine> bom_lines(const Job& job, const std::vector<Group>& groups,
                               std::vector<Need> needs, const std::vector<Fed>& fed) {
  std::stable_sort(needs.begin(), needs.end(),
                   [](const Need& a, const Need& b) { return a.code < b.code; });
  std::vector<BomLine> lines;
  long long used = 0;
  for (std::size_t i = 0; i < needs.size(); ++i) {
    if (i == 0 || needs[i].code != needs[i - 1].code) used = 0;
    lines.push_back(line_of(job, needs[i], groups, fed));
    lines.back().item = static_cast<int>(i) + 1;
    const long long count = std::llround(needs[i].quantity);
    if (needs[i].unit == NeedUnit::piece) {
      lines.back().reference = reference(bom_kind(needs[i].code), used, count);
    }
    used += count;
  }
  return lines;
}

}  // namespace calc
