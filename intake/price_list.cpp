#include "intake/price_list.h"

#include <algorithm>
#include <array>
#include <boost/tokenizer.hpp>
#include <functional>
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "intake/codes.h"
#include "intake/rows.h"
#include "intake/suggest.h"

namespace intake {
namespace {

using RowRef = std::reference_wrapper<calc::Row>;
/// Rows by part number; several rows may share one.
using RowsByNumber = std::map<std::string, std::vector<RowRef>, std::less<>>;

constexpr std::string_view header = "part_number,unit_price,currency,price_date";
constexpr std::size_t columns = 4;

struct Cell {
  std::string text;
  Place place;
};
using Line = std::vector<Cell>;

template <class S>
void add_rows(std::vector<S>& rows, RowsByNumber& by_number) {
  for (S& row : rows) {
    by_number[row.part_number ? row.part_number->value : row.name].emplace_back(row);
  }
}

RowsByNumber rows_of(calc::Catalogue& catalogue) {
  RowsByNumber rows;
  add_rows(catalogue.heads, rows);
  add_rows(catalogue.boards, rows);
  add_rows(catalogue.supplies, rows);
  add_rows(catalogue.lamps, rows);
  add_rows(catalogue.dryers, rows);
  add_rows(catalogue.parts, rows);
  return rows;
}

/// The cells of a line that begins at `offset` of the text. Throws boost::escaped_list_error.
Line cells_of(std::string_view line, std::size_t offset) {
  using Separator = boost::escaped_list_separator<char>;
  const std::string own(line);
  const boost::tokenizer<Separator> tokens(own, Separator('\\', ',', '"'));
  Line cells;
  std::size_t begin = 0;
  for (auto token = tokens.begin(); token != tokens.end(); ++token) {
    const auto end = static_cast<std::size_t>(token.base() - own.begin());
    const bool last = end >= own.size();
    const std::size_t length = (last ? own.size() : end - 1) - begin;
    cells.push_back({std::string(trim(*token)), {offset + begin, length}});
    begin = end;
  }
  return cells;
}

/// A field as the tables of fields take it.
Node field(std::string key, const std::string& value, Place place) {
  Node node;
  node.form = Node::Form::field;
  node.key = std::move(key);
  node.value = value;
  node.place = node.value_place = place;
  return node;
}

class PriceList {
 public:
  PriceList(const SourceText& text, calc::Catalogue& catalogue, Sink& sink)
      : text_(text), rows_(rows_of(catalogue)), sink_(sink) {}

  void read() {
    if (!read_header()) return;
    const int last = text_.line_of(text_.text().size());
    for (int number = 2; number <= last && !sink_.full(); ++number) read_line(number);
  }

 private:
  /// Whether the lines below can be read: also under a header with a fault, if it has the columns.
  bool read_header() {
    const std::string_view first = trim(text_.line(1));
    if (first == header) return true;
    const bool alike =
        first.starts_with("part_number,") &&
        static_cast<std::size_t>(std::count(first.begin(), first.end(), ',')) + 1 == columns;
    sink_
        .add(code::bad_price_line, Place{0, text_.line(1).size()},
             alike ? "a column of another name" : "not a price list")
        .hint = "begin it with the line " + std::string(header);
    return alike;
  }

  void read_line(int number) {
    const std::string_view line = text_.line(number);
    if (trim(line).empty()) return;
    const std::size_t offset = text_.offset_of(number, 1);
    const Place whole{offset, line.size()};
    try {
      const Line cells = cells_of(line, offset);
      if (cells.size() == columns) return take(cells, number);
    } catch (const boost::escaped_list_error&) {
      sink_.add(code::bad_price_line, whole, "a backslash that stands for nothing").hint =
          "write \\\\ for a backslash";
      return;
    }
    sink_.add(code::bad_price_line, whole, "a line of a price list has four fields").hint =
        "write " + std::string(header) + "; put a field with a comma in double quotes";
  }

  void take(const Line& cells, int number) {
    const Cell& part = cells[0];
    const auto [told, fresh] = told_.try_emplace(part.text, number);
    if (!fresh) {
      Diagnostic& twice =
          sink_.add(code::bad_price_line, part.place, "part number " + part.text + " twice");
      twice.notes = {"the first stands in line " + std::to_string(told->second)};
      twice.hint = "keep the line that holds";
    }
    const auto found = rows_.find(part.text);
    if (fresh && found == rows_.end()) miss(part);
    const Place money{cells[1].place.offset,
                      cells[2].place.offset + cells[2].place.length - cells[1].place.offset};
    const Node price_node = field("price", cells[1].text + " " + cells[2].text, money);
    const Node date_node = field("price_date", cells[3].text, cells[3].place);
    if (fresh && found != rows_.end()) {
      for (calc::Row& row : found->second) set(row, price_node, date_node);
      return;
    }
    calc::Row nothing;  // what is wrong with the other fields is told all the same
    nothing.element = "part";
    nothing.name = part.text;
    set(nothing, price_node, date_node);
  }

  /// A list serves several catalogues: what this one lacks is no fault.
  void miss(const Cell& part) {
    Diagnostic& warning = sink_.add(code::price_of_nothing, part.place,
                                    "no row of the catalogue has the part number " + part.text);
    std::vector<std::string_view> numbers;
    for (const auto& [number, rows] : rows_) numbers.push_back(number);
    const std::string_view near = nearest(part.text, numbers);
    warning.hint = near.empty() ? "leave the line out if the catalogue needs no such part"
                                : "did you mean " + std::string(near) + "?";
  }

  void set(calc::Row& row, const Node& price_node, const Node& date_node) {
    static const Row<calc::Row> price_row =
        price("price", &calc::Row::price, "price", "EUR", "price of one").within(0, 1e8);
    static const Row<calc::Row> date_row =
        intake::text("price_date", &calc::Row::price_date, check_date, "day of the price");
    std::vector<calc::Input> inputs;
    Scribe scribe{sink_, &inputs, calc::OriginKind::catalogue, row.element + "." + row.name, ""};
    price_row.bind(row, price_node, price_row.info, scribe);
    date_row.bind(row, date_node, date_row.info, scribe);
    for (calc::Input& input : inputs) {
      const auto known = std::find_if(row.inputs.begin(), row.inputs.end(),
                                      [&](const calc::Input& i) { return i.key == input.key; });
      if (known != row.inputs.end()) {
        *known = std::move(input);
      } else {
        row.inputs.push_back(std::move(input));
      }
    }
  }

  const SourceText& text_;
  RowsByNumber rows_;
  Sink& sink_;
  std::map<std::string, int> told_;  ///< part numbers with their lines
};

}  // namespace

Diagnostics apply_prices(std::string_view name, std::string_view text, calc::Catalogue& catalogue) {
  const bool binary = is_binary(text);
  const SourceText source(name, binary ? std::string_view() : text);
  Sink sink(source);
  if (binary) {
    sink.add(code::not_text, Place{}, "this is no text").hint = "name a price list, a CSV text";
    return sink.take();
  }
  calc::Catalogue priced = catalogue;
  for (const Place& place : source.bad_bytes()) {
    sink.add(code::bad_utf8, place, "a byte that is not UTF-8").hint = "save the file as UTF-8";
  }
  PriceList(source, priced, sink).read();
  Diagnostics findings = sink.take();
  if (!has_errors(findings)) catalogue = std::move(priced);
  return findings;
}

}  // namespace intake
