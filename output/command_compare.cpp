#include <algorithm>
#include <array>

#include "output/command.h"
#include "output/compare.h"
#include "output/report_text.h"

namespace output {
namespace {

std::string name_text(const IssueName& name) {
  return terminal_safe(name.id + " revision " + name.revision + " of " + name.date);
}

constexpr std::array<std::size_t, 4> widths{8, 34, 27, 27};

/// The lines of a text that fit a column.
std::vector<std::string> lines_of(std::string_view text, std::size_t width) {
  std::vector<std::string> lines;
  const std::string all = wrapped(text, 0, width);
  for (std::size_t begin = 0; begin < all.size();) {
    const std::size_t end = all.find('\n', begin);
    lines.push_back(all.substr(begin, end - begin));
    begin = end + 1;
  }
  return lines;
}

/// One row of the table, each cell broken within its own column.
std::string table_row(const std::array<std::string, 4>& cells) {
  std::array<std::vector<std::string>, 4> columns;
  std::size_t height = 0;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    columns.at(i) = lines_of(cells.at(i), widths.at(i));
    height = std::max(height, columns.at(i).size());
  }
  std::string text;
  for (std::size_t line = 0; line < height; ++line) {
    std::string row;
    for (std::size_t i = 0; i < cells.size(); ++i) {
      const std::string cell = line < columns.at(i).size() ? columns.at(i)[line] : "";
      row += cell + std::string(widths.at(i) - std::min(width_of(cell), widths.at(i)) + 1, ' ');
    }
    row.erase(row.find_last_not_of(' ') + 1);
    text += row + "\n";
  }
  return text;
}

}  // namespace

std::string comparison_text(const Comparison& comparison) {
  const std::string names =
      name_text(comparison.before) + "\n" + name_text(comparison.after) + "\n";
  if (comparison.changes.empty()) return names + "the same specification\n";
  std::string table = table_row({"in", "what", "before", "after"});
  for (const Change& change : comparison.changes) {
    table += table_row({change.area, terminal_safe(change.name), terminal_safe(change.before),
                        terminal_safe(change.after)});
  }
  return names + "\n" + table;
}

Exit run_compare(Os& os, const Options& options) {
  const std::string& before = options.paths.at(0);
  const std::string& after = options.paths.at(1);
  const Compared compared = compare_issues(os.read_file(before), os.read_file(after));
  if (!compared.comparison) {
    os.write_error(program_message((compared.second_at_fault ? after : before) +
                                   ": this is no issued JSON; name the .json of an issue"));
    return Exit::data;
  }
  os.write_output(options.json ? comparison_json(*compared.comparison)
                               : comparison_text(*compared.comparison));
  return compared.comparison->changes.empty() ? Exit::success : Exit::different;
}

}  // namespace output
