#include <algorithm>
#include <cmath>
#include <set>
#include <vector>

#include "intake/checks.h"
#include "intake/codes.h"
#include "intake/suggest.h"

namespace intake {
namespace {

constexpr double slack = 1e-9;  // as at every limit

template <class T>
std::string stands(const std::string& key, const calc::Value<T>& value) {
  return key + " is " + value.origin.raw + " at " + place_text(value.origin);
}

template <class T>
Diagnostic& fault(Sink& sink, std::string_view code, const calc::Value<T>& value,
                  const std::string& key, const std::string& message) {
  Diagnostic& d = sink.add(code, value.origin, key + ": " + message);
  d.field = key;
  return d;
}

using Names = std::vector<std::string_view>;

template <class S>
Names names_of(const std::vector<S>& rows) {
  Names names;
  for (const S& row : rows) names.push_back(row.name);
  std::sort(names.begin(), names.end());
  return names;
}

template <class T>
void check_named(Sink& sink, const std::string& key, const calc::Value<T>& value,
                 const std::string& name, std::string_view element, const Names& names) {
  if (std::binary_search(names.begin(), names.end(), std::string_view(name))) return;
  if (sink.full()) return;
  Diagnostic& d = fault(sink, code::row_not_there, value, key,
                        "there is no " + std::string(element) + " \"" + name + "\"");
  const std::string_view near = nearest(name, names);
  d.hint = near.empty() ? "add the row or name another" : "did you mean " + std::string(near);
}

void check_speeds(const calc::HeadMode& mode, const std::string& key, Sink& sink) {
  if (!mode.drops || !mode.drop_speed) return;
  const std::size_t drops = mode.drops->value.size();
  const std::size_t speeds = mode.drop_speed->value.size();
  if (speeds == drops) return;
  Diagnostic& d = fault(sink, code::lists_differ, *mode.drop_speed, key + ".drop_speed",
                        std::to_string(speeds) + " speeds for " + std::to_string(drops) + " drops");
  d.notes.push_back(stands(key + ".drops", *mode.drops));
  d.hint = "give one speed for each drop";
}

void check_lists(const calc::HeadMode& mode, const std::string& key, Sink& sink) {
  check_speeds(mode, key, sink);
  if (!mode.drops || !mode.frequency) return;
  const std::size_t drops = mode.drops->value.size();
  const std::size_t ratings = mode.frequency->value.size();
  if (ratings == 1 || ratings == drops) return;
  Diagnostic& d =
      fault(sink, code::lists_differ, *mode.frequency, key + ".frequency",
            std::to_string(ratings) + " ratings for " + std::to_string(drops) + " drops");
  d.notes.push_back(stands(key + ".drops", *mode.drops));
  d.hint = "give one rating for each drop, or one for the binary use";
}

void check_drops(const calc::HeadMode& mode, const std::string& key, Sink& sink) {
  if (!mode.drops) return;
  const auto& drops = mode.drops->value;
  const auto wrong = std::adjacent_find(
      drops.begin(), drops.end(), [](calc::Volume a, calc::Volume b) { return b.si() <= a.si(); });
  if (wrong == drops.end()) return;
  fault(sink, code::drops_not_ascending, *mode.drops, key + ".drops", "the drops do not ascend")
      .hint = "write the smallest drop first, each once";
}

void check_offsets(const calc::HeadMode& mode, const std::string& key, Sink& sink) {
  if (!mode.row_offsets) return;
  std::vector<double> offsets = mode.row_offsets->value;
  std::sort(offsets.begin(), offsets.end());
  if (std::abs(offsets.front()) > slack) {
    fault(sink, code::bad_offsets, *mode.row_offsets, key + ".row_offsets",
          "no row stands at offset 0")
        .hint = "count the offsets from the first row, whose offset is 0";
  }
  if (!mode.nozzles) return;
  const auto rows = static_cast<int>(offsets.size());
  if (mode.nozzles->value % rows == 0) return;
  Diagnostic& d =
      fault(sink, code::uneven_rows, *mode.nozzles, key + ".nozzles",
            "not the same number of nozzles in each of " + std::to_string(rows) + " rows");
  d.notes.push_back(stands(key + ".row_offsets", *mode.row_offsets));
  d.hint = "count the nozzles of one colour, all its rows together";
}

std::size_t rows_of(const calc::HeadMode& mode) {
  return mode.row_offsets ? mode.row_offsets->value.size() : 1;
}

void check_places(const calc::HeadMode& mode, const std::string& key, Sink& sink) {
  if (!mode.row_places || mode.row_places->value.size() == rows_of(mode)) return;
  Diagnostic& d = fault(sink, code::lists_differ, *mode.row_places, key + ".row_places",
                        std::to_string(mode.row_places->value.size()) + " places for " +
                            std::to_string(rows_of(mode)) + " rows");
  if (mode.row_offsets) d.notes.push_back(stands(key + ".row_offsets", *mode.row_offsets));
  d.hint = "give one place for each row, in the order of row_offsets";
}

/// A head that tilts prints evenly or not, and loses part of its swath, by where its rows stand.
void check_tilt(const calc::Head& head, const calc::HeadMode& mode, Sink& sink) {
  if (!head.tilts || !head.tilts->value) return;
  const std::string key = "head." + head.name;
  const std::string in_mode = " in mode " + mode.name;
  if (rows_of(mode) > 1 && !mode.row_places) {
    fault(sink, code::tilt_unmeasured, *head.tilts, key + ".tilts",
          "the places of its rows along the motion are not said" + in_mode)
        .hint = "add row_places to the mode, or say tilts = no";
  }
  if (mode.colours && mode.colours->value > 1 && !head.field_depth) {
    fault(sink, code::tilt_unmeasured, *head.tilts, key + ".tilts",
          "how far the rows of its colours stand apart is not said" + in_mode)
        .hint = "add field_depth to the head, or say tilts = no";
  }
}

void check_order(Sink& sink, const std::string& head, std::string_view low_key,
                 const calc::Given<calc::Length>& low, std::string_view high_key,
                 const calc::Given<calc::Length>& high) {
  if (!low || !high || low->value.si() <= high->value.si() * (1 + slack)) return;
  const std::string key = head + "." + std::string(low_key);
  Diagnostic& d =
      fault(sink, code::window_reversed, *low, key, "greater than " + std::string(high_key));
  d.notes.push_back(stands(head + "." + std::string(high_key), *high));
  d.hint = "make " + std::string(low_key) + " at most " + std::string(high_key);
}

void check_viscosity(const calc::Head& head, const std::string& key, Sink& sink) {
  if (!head.viscosity || !head.viscosity_window) return;
  const double value = head.viscosity->value.si();
  const bool inside = value >= head.viscosity_window->low.si() * (1 - slack) &&
                      value <= head.viscosity_window->high.si() * (1 + slack);
  if (inside) return;
  Diagnostic& d = fault(sink, code::outside_window, *head.viscosity, key + ".viscosity",
                        "the nominal viscosity is outside the head's window");
  d.notes.push_back(stands(key + ".viscosity_window", *head.viscosity_window));
  d.hint = "make it one within the window";
}

void check_head(const calc::Head& head, const Names& boards, const Names& supplies, Sink& sink) {
  const std::string key = "head." + head.name;
  check_order(sink, key, "throw_least", head.throw_least, "throw_nominal", head.throw_nominal);
  check_order(sink, key, "throw_nominal", head.throw_nominal, "throw_most", head.throw_most);
  if (!head.throw_nominal) {
    check_order(sink, key, "throw_least", head.throw_least, "throw_most", head.throw_most);
  }
  check_viscosity(head, key, sink);
  if (head.board) {
    check_named(sink, key + ".board", *head.board, head.board->value, "board", boards);
  }
  if (head.supply) {
    check_named(sink, key + ".supply", *head.supply, head.supply->value, "supply", supplies);
  }
  if (head.modes.empty()) {
    Diagnostic& d = sink.add(code::no_mode, head.where, key + " has no mode");
    d.field = key;
    d.hint = "add <mode name=\"...\"> with row_pitch, nozzles, drops and frequency";
  }
  for (const calc::HeadMode& mode : head.modes) {
    const std::string mode_key = key + ".mode." + mode.name;
    check_lists(mode, mode_key, sink);
    check_drops(mode, mode_key, sink);
    check_offsets(mode, mode_key, sink);
    check_places(mode, mode_key, sink);
    check_tilt(head, mode, sink);
  }
}

template <class S>
void check_prices(const std::vector<S>& rows, Sink& sink) {
  for (const calc::Row& row : rows) {
    if (!row.price || row.price_date) continue;
    const std::string key = row.element + "." + row.name + ".price";
    fault(sink, code::price_undated, *row.price, key, "a price without its date").hint =
        "add price_date, as in 2026-03-31";
  }
}

}  // namespace

void check_catalogue(const calc::Catalogue& catalogue, Sink& sink) {
  const Names boards = names_of(catalogue.boards);
  const Names supplies = names_of(catalogue.supplies);
  const Names heads = names_of(catalogue.heads);
  for (const calc::Head& head : catalogue.heads) {
    check_head(head, boards, supplies, sink);
  }
  for (const calc::Part& part : catalogue.parts) {
    if (!part.fits) continue;
    for (const std::string& name : part.fits->value) {
      check_named(sink, "part." + part.name + ".fits", *part.fits, name, "head", heads);
    }
  }
  check_prices(catalogue.heads, sink);
  check_prices(catalogue.boards, sink);
  check_prices(catalogue.supplies, sink);
  check_prices(catalogue.lamps, sink);
  check_prices(catalogue.dryers, sink);
  check_prices(catalogue.parts, sink);
}

}  // namespace intake
