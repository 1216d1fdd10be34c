#include "output/trace_rows.h"

#include <array>
#include <bit>
#include <charconv>
#include <cstddef>
#include <cstdint>
#include <string_view>
#include <unordered_map>
#include <utility>

namespace output {
namespace {

/// All that two steps must have in common, as one text.
class Likeness {
 public:
  void add(std::string_view text) { (text_ += text) += separator; }
  void add(double value) {
    std::array<char, 17> digits{};
    char* const end = std::to_chars(digits.data(), digits.data() + digits.size(),
                                    std::bit_cast<std::uint64_t>(value), 16)
                          .ptr;
    text_.append(digits.data(), end) += separator;
  }
  std::string take() { return std::move(text_); }

 private:
  static constexpr char separator = '\0';
  std::string text_;
};

/// A key of the request without the name of the channel, where the step's id has that name too.
std::string of_any_channel(const std::string& key, const std::string& id) {
  constexpr std::string_view section = "colour.";
  const std::size_t point = key.rfind('.');
  if (!key.starts_with(section) || point < section.size()) return key;
  const std::string name = key.substr(section.size(), point - section.size());
  if (id.find("." + name + ".") == std::string::npos) return key;
  return std::string(section) + "*" + key.substr(point);
}

/// Rows by the ids and the likeness of the steps so far.
class Rows {
 public:
  void take(const calc::Step& step) {
    const auto [place, fresh] = by_likeness_.try_emplace(likeness(step), rows_.size());
    by_id_.emplace(step.id, place->second);
    if (fresh) {
      rows_.push_back({&step, {}});
    } else {
      rows_[place->second].others.push_back(&step);
    }
  }
  std::vector<TraceRow> finish() { return std::move(rows_); }

 private:
  std::string likeness(const calc::Step& step) const {
    Likeness all;
    all.add(static_cast<double>(step.kind));
    all.add(static_cast<double>(step.tag));
    all.add(step.value);
    for (const std::string* text :
         {&step.symbol, &step.formula, &step.unit, &step.source, &step.validity}) {
      all.add(*text);
    }
    for (const calc::StepInput& input : step.inputs) {
      all.add(input.value);
      for (const std::string* text : {&input.symbol, &input.unit, &input.origin}) all.add(*text);
      const auto row = by_id_.find(input.ref);
      all.add(row == by_id_.end() ? of_any_channel(input.ref, step.id)
                                  : rows_[row->second].step->id);
    }
    all.add("");
    for (const std::string& key : step.assumptions) all.add(of_any_channel(key, step.id));
    return all.take();
  }

  std::vector<TraceRow> rows_;
  std::unordered_map<std::string, std::size_t> by_likeness_, by_id_;
};

/// The parts of an id between its points.
std::vector<std::string_view> parts_of(std::string_view id) {
  std::vector<std::string_view> parts;
  for (std::size_t point = id.find('.'); point != std::string_view::npos; point = id.find('.')) {
    parts.push_back(id.substr(0, point));
    id.remove_prefix(point + 1);
  }
  parts.push_back(id);
  return parts;
}

/// Which part is the one that differs; the count of parts when it is not one.
std::size_t place_of_difference(const std::vector<std::string_view>& a,
                                const std::vector<std::string_view>& b) {
  std::size_t place = a.size();
  if (a.size() != b.size()) return place;
  for (std::size_t i = 0; i < a.size(); ++i) {
    if (a[i] == b[i]) continue;
    if (place != a.size()) return a.size();
    place = i;
  }
  return place;
}

}  // namespace

std::vector<TraceRow> trace_rows(const std::vector<calc::Step>& trace) {
  Rows rows;
  for (const calc::Step& step : trace) rows.take(step);
  return rows.finish();
}

std::vector<std::string> differing_parts(const std::string& first,
                                         const std::vector<const calc::Step*>& others) {
  const std::vector<std::string_view> own = parts_of(first);
  std::vector<std::string> found;
  std::size_t place = own.size();
  for (const calc::Step* other : others) {
    const std::vector<std::string_view> parts = parts_of(other->id);
    const std::size_t at = place_of_difference(own, parts);
    if (at == own.size() || (place != own.size() && at != place)) return {};
    place = at;
    found.emplace_back(parts[at]);
  }
  return found;
}

}  // namespace output
