#include "tests/whole/support/blocks.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <cstdlib>
#include <sstream>
#include <string_view>

#include "output/compose.h"
#include "output/issue.h"
#include "tests/whole/support/case.h"
#include "tests/whole/support/samples.h"

namespace whole {
namespace {

bool is_digit(std::string_view text, std::size_t at) {
  return at < text.size() && std::isdigit(static_cast<unsigned char>(text[at])) != 0;
}

bool is_of_word(std::string_view text, std::size_t at) {
  return at < text.size() && (std::isalnum(static_cast<unsigned char>(text[at])) != 0 ||
                              text[at] == '-' || text[at] == '_');
}

/// Thin gaps within numbers gone, others as blanks.
void join_groups(std::string& text) {
  for (const std::string_view gap : {"\u202F", "\u2009"}) {
    for (std::size_t at = 0; (at = text.find(gap, at)) != std::string::npos;) {
      const bool inside = at > 0 && is_digit(text, at - 1) && is_digit(text, at + gap.size());
      text.replace(at, gap.size(), inside ? "" : " ");
    }
  }
}

/// Without word joiners, which are not printed.
void drop_joiners(std::string& text) {
  constexpr std::string_view joiner = "\u2060";
  for (std::size_t at = 0; (at = text.find(joiner, at)) != std::string::npos;) {
    text.erase(at, joiner.size());
  }
}

/// The running number in the first cell of a row.
void drop_row_number(std::string& text) {
  const std::size_t cell = text.find(" | ");
  if (cell != std::string::npos && text.find_first_not_of("0123456789") == cell) {
    text.erase(0, cell);
  }
}

std::size_t end_of_number(std::string_view text, std::size_t at) {
  while (is_digit(text, at) || (at < text.size() && text[at] == '.' && is_digit(text, at + 1))) {
    ++at;
  }
  return at;
}

Figure figure(const std::string& number) {
  const std::size_t dot = number.find('.');
  constexpr double of_one_digit = 0.05, of_two_digits = 0.5;
  double slack = number.size() == 1 ? of_one_digit : number.size() == 2 ? of_two_digits : 0;
  if (dot != std::string::npos) {
    slack = std::pow(10.0, -static_cast<double>(number.size() - dot - 1));
  }
  return {std::strtod(number.c_str(), nullptr), slack};
}

/// Share by which rounding may have changed a figure, up or down.
double tolerance(const Figure& figure) {
  constexpr double three_digits = 0.01;
  return std::max(three_digits, figure.slack / std::abs(figure.value));
}

bool is_as(const Figure& figure, double value) {
  return std::abs(figure.value / value - 1) < tolerance(figure);
}

/// Equal but for a power of ten, such as that of a prefix.
bool is_as_but_for_tens(const Figure& figure, double value) {
  const double power = std::log10(std::abs(figure.value / value));
  return std::abs(power - std::round(power)) < tolerance(figure) / std::log(10.0);
}

bool shows(const Figure& figure, double value) {
  // Minutes, hours, m/s to km/h, months, weeks; inches, feet, gallons, fluid ounces, feet a minute,
  // square and cubic feet.
  constexpr double foot = 0.3048;
  constexpr std::array units{1.0,
                             60.0,
                             3600.0,
                             3.6,
                             12.0,
                             7.0,
                             25.4,
                             304.8,
                             3.785411784,
                             29.5735,
                             60 / foot,
                             foot * foot,
                             foot * foot * foot};
  constexpr double ice = 273.15;
  if (!(std::abs(value) > 0)) return !(figure.value > 0);
  for (const double degrees : {value, value - ice}) {
    if (is_as(figure, degrees) || is_as(figure, degrees * 1.8 + 32)) return true;
  }
  return std::any_of(units.begin(), units.end(), [&](double unit) {
    return is_as_but_for_tens(figure, value * unit) || is_as_but_for_tens(figure, value / unit);
  });
}

/// What stands in drawings is drawn from figures elsewhere.
void collect(const output::Node& node, std::string& text) {
  if (node.name == "drawing") return;
  text += node.text;
  for (const output::Node& child : node.children) collect(child, text);
  if (node.name == "cell") text += " | ";
}

void collect_links(const output::Node& node, std::vector<TextLink>& links) {
  if (node.name == "a") {
    TextLink link{std::string(node.get("to")), {}};
    collect(node, link.text);
    links.push_back(std::move(link));
  }
  for (const output::Node& child : node.children) collect_links(child, links);
}

bool is_block(const output::Node& node) {
  constexpr std::array<std::string_view, 4> names{"p", "item", "row", "note"};
  return std::find(names.begin(), names.end(), node.name) != names.end();
}

bool holds_blocks(const output::Node& node) {
  return std::any_of(node.children.begin(), node.children.end(), [](const output::Node& child) {
    return is_block(child) || child.name == "list" || child.name == "table";
  });
}

void gather_blocks(const output::Node& node, std::string section, std::string keys,
                   std::vector<Block>& out) {
  if (node.name == "front") section = "front";
  if (node.name == "section" && !node.get("id").empty()) section = node.get("id");
  if (!node.get("key").empty()) keys = node.get("key");
  if (is_block(node) && !holds_blocks(node)) {
    Block block{section, node.name, {}, keys, {}};
    collect(node, block.text);
    collect_links(node, block.links);
    out.push_back(std::move(block));
    return;
  }
  for (const output::Node& child : node.children) gather_blocks(child, section, keys, out);
}

void gather_anchors(const output::Node& node, Document& out) {
  std::string text;
  if (node.name == "row") collect(node, text);
  if (!node.get("id").empty()) out.anchors[std::string(node.get("id"))] = text;
  std::istringstream also{std::string(node.get("also"))};
  for (std::string name; also >> name;) out.anchors[name] = text;
  for (const output::Node& child : node.children) gather_anchors(child, out);
}

}  // namespace

std::vector<Figure> figures(std::string text) {
  drop_joiners(text);
  join_groups(text);
  drop_row_number(text);
  std::vector<Figure> found;
  for (std::size_t at = 0; at < text.size(); ++at) {
    if (!is_digit(text, at)) continue;
    const std::size_t end = end_of_number(text, at);
    const bool in_word = (at > 0 && is_of_word(text, at - 1)) || is_of_word(text, end);
    if (!in_word) found.push_back(figure(text.substr(at, end - at)));
    at = end;
  }
  return found;
}

bool shows(const std::vector<Figure>& figures, double value) {
  return std::any_of(figures.begin(), figures.end(),
                     [&](const Figure& figure) { return shows(figure, value); });
}

std::vector<std::string> cells(const Block& row) {
  constexpr std::string_view end = " | ", blank = " \n";
  std::vector<std::string> list;
  for (std::size_t from = 0, to = 0; (to = row.text.find(end, from)) != std::string::npos;
       from = to + end.size()) {
    const std::string cell = row.text.substr(from, to - from);
    const std::size_t first = cell.find_first_not_of(blank);
    list.push_back(first == std::string::npos
                       ? std::string()
                       : cell.substr(first, cell.find_last_not_of(blank) + 1 - first));
  }
  return list;
}

Document document(const intake::ReadRequest& request) {
  const output::Environment environment{sample_catalogue(), templates(), fonts()};
  Document d;
  d.made = output::specify(request, environment, "2026-11-25");
  const output::Node root = output::parse_markup(
      output::compose(d.made, request.request, templates(), output::matter_of(d.made, request)));
  gather_blocks(root, {}, {}, d.blocks);
  collect_links(root, d.links);
  gather_anchors(root, d);
  return d;
}

}  // namespace whole
