/// The pattern printed for acceptance: a band for each thing that is measured on it.
#include <algorithm>
#include <array>
#include <cmath>
#include <sstream>

#include "calc/barcode.h"
#include "output/compose_text.h"
#include "output/drawing_fill.h"
#include "output/format.h"
#include "output/section_list.h"
#include "output/sketch.h"
#include "output/sketch_list.h"

namespace output {
namespace {

constexpr double paper_width = 178;
constexpr double widest = 108;     ///< of the pattern on paper [mm]
constexpr double label_gap = 6;    ///< from the pattern to its labels [mm]
constexpr double least_left = 60;  ///< of the labels: a sample text may stand out of the pattern
constexpr double label_letter = 1.25;  ///< width of a character of a label, at most [mm]
constexpr double band_height = 11, band_gap = 3.5, top_margin = 8;
constexpr std::size_t combs = 48;
constexpr double letter_width = 1.35;  ///< of a name in a solid, about [mm]
constexpr double line_step = 2.6;      ///< from line to line of it

/// Where the bands of a pattern stand on paper.
struct Sheet {
  double width = 0;   ///< [mm on paper]
  double factor = 1;  ///< paper over real

  /// Where the labels begin [mm].
  double labels() const { return std::max(width + label_gap, least_left); }
};

const calc::Check* find(const Context& c, std::string_view code) {
  const auto found = std::find_if(c.spec.tests.begin(), c.spec.tests.end(),
                                  [&](const calc::Check& check) { return check.code == code; });
  return found == c.spec.tests.end() ? nullptr : &*found;
}

std::vector<std::string> channels(const Context& c) {
  std::vector<std::string> names;
  for (const calc::Group& group : c.spec.chosen) {
    for (const std::string& channel : group.channels) names.push_back(channel);
  }
  return names;
}

/// Short lines side by side and one below the other: each nozzle by itself.
void draw_combs(const Context& c, Sketch& sketch, const Sheet& sheet, double y) {
  const double step = sheet.width / combs;
  const Pen pen{c.templates.setting("drawing.outline"), 0.4, ""};
  for (std::size_t i = 0; i < combs; ++i) {
    const double x = step * (static_cast<double>(i) + 0.5);
    const double top = y + band_height / 4 * static_cast<double>(i % 4);
    sketch.line({x, top}, {x, top + band_height / 4 - 0.4}, pen);
  }
}

/// A name in a solid: in one line, or where it is too long broken behind its hyphen.
std::vector<std::string> name_lines(const std::string& name, std::size_t room) {
  const std::size_t hyphen = name.find('-');
  if (name.size() <= room || hyphen == std::string::npos) return {shortened(name, room)};
  return {shortened(name.substr(0, hyphen + 1), room), shortened(name.substr(hyphen + 1), room)};
}

/// A name on a white field, so that it is read on every ink.
void draw_name(Sketch& sketch, Spot centre, const std::vector<std::string>& lines,
               double widest_box) {
  std::size_t longest = 0;
  for (const std::string& line : lines) longest = std::max(longest, line.size());
  const double box = std::min(letter_width * static_cast<double>(longest) + 2, widest_box);
  const double height = 1.4 + line_step * static_cast<double>(lines.size());
  const double top = centre.y - height / 2;
  sketch.rect({centre.x - box / 2, top}, box, height, {"none", 0.1, ""}, "FFFFFF");
  double base = top + 2.9;
  for (const std::string& line : lines) {
    sketch.label({centre.x, base}, "middle", 6.5, escaped(line));
    base += line_step;
  }
}

void draw_solids(const Context& c, Sketch& sketch, const Sheet& sheet, double y) {
  const std::vector<std::string> names = channels(c);
  const double width = sheet.width / static_cast<double>(names.size());
  for (std::size_t i = 0; i < names.size(); ++i) {
    const double x = width * static_cast<double>(i) + 0.5;
    sketch.rect({x, y}, width - 1, band_height, {c.templates.setting("drawing.outline"), 0.4, ""},
                fill_of(c, names[i], i));
    const auto room = static_cast<std::size_t>(width / letter_width);
    draw_name(sketch, {x + (width - 1) / 2, y + band_height / 2}, name_lines(names[i], room),
              width - 1);
  }
}

void draw_crosses(const Context& c, Sketch& sketch, const Sheet& sheet, double y) {
  const Pen pen{c.templates.setting("drawing.outline"), 0.5, ""};
  const double arm = band_height / 2 - 1;
  const double middle = y + band_height / 2;
  for (const double x : {arm + 1, sheet.width / 2, sheet.width - arm - 1}) {
    sketch.line({x - arm, middle}, {x + arm, middle}, pen);
    sketch.line({x, middle - arm}, {x, middle + arm}, pen);
    sketch.circle({x, middle}, arm / 2, pen, "none");
  }
}

/// The first group whose heads stand side by side, or null.
const calc::Group* joined_group(const Context& c) {
  const auto found = std::find_if(c.spec.chosen.begin(), c.spec.chosen.end(),
                                  [](const calc::Group& g) { return g.heads_across > 1; });
  return found == c.spec.chosen.end() ? nullptr : &*found;
}

/// Lines across every joint between the heads of that group, where they stand.
void draw_joints(const Context& c, Sketch& sketch, const Sheet& sheet, double y) {
  const Pen pen{c.templates.setting("drawing.outline"), 0.35, ""};
  for (int i = 0; i < 5; ++i) {
    const double line = y + band_height * (i + 0.5) / 5;
    sketch.line({0, line}, {sheet.width, line}, pen);
  }
  const calc::Group* const group = joined_group(c);
  if (group == nullptr) return;
  const double pitch = in_mm(group->head_pitch) * sheet.factor;
  for (int i = 1; i < group->heads_across; ++i) {
    const double x = std::min(pitch * i, sheet.width);
    sketch.line({x, y - 1}, {x, y + band_height + 1},
                {c.templates.setting("drawing.dimension"), 0.5, "2 1"});
  }
}

bool has_bar_code(const Context& c) {
  return find(c, "barcode_grade") != nullptr || find(c, "barcode_module") != nullptr;
}

/// Whether the code asked for is a two-dimensional symbol.
bool has_matrix(const Context& c) {
  const calc::Check* const check = find(c, "barcode_module");
  const calc::BarcodeSymbol* const symbol =
      check == nullptr ? nullptr : calc::find_barcode_symbol(check->subject);
  return symbol != nullptr && symbol->two_dimensional;
}

/// A square of cells: two sides whole, two in turn on and off, inside by no message.
void draw_matrix(Sketch& sketch, const Pen& pen, double y) {
  constexpr int cells = 10;
  const double cell = (band_height - 1) / cells;
  for (int row = 0; row < cells; ++row) {
    for (int column = 0; column < cells; ++column) {
      const bool whole = column == 0 || row == cells - 1;
      const bool in_turn = row == 0 || column == cells - 1;
      const bool inside = (row * row + 3 * column + row * column) % 5 < 2;
      if (!whole && !(in_turn ? (row + column) % 2 == 0 : inside)) continue;
      sketch.rect({1 + column * cell, y + 0.5 + row * cell}, cell, cell, {"none", 0.1, ""},
                  pen.colour);
    }
  }
}

void draw_bars(Sketch& sketch, const Sheet& sheet, const Pen& pen, double y) {
  double x = 1;
  for (int i = 1; i <= 12 && x < sheet.width * 0.45; ++i) {
    sketch.rect({x, y + 1}, 0.25 * i, band_height - 2, pen, pen.colour);
    x += 0.5 * i + 0.4;
  }
}

void draw_finest(const Context& c, Sketch& sketch, const Sheet& sheet, double y) {
  const Pen pen{c.templates.setting("drawing.outline"), 0.3, ""};
  for (int i = 0; !has_bar_code(c) && i < 6; ++i) {
    const double line = y + 1.5 + 1.6 * i;
    sketch.line({1, line}, {sheet.width * 0.45, line}, {pen.colour, 0.15 + 0.1 * i, ""});
  }
  if (has_matrix(c)) {
    draw_matrix(sketch, pen, y);
  } else if (has_bar_code(c)) {
    draw_bars(sketch, sheet, pen, y);
  }
  sketch.label({sheet.width * 0.55, y + band_height / 2 + 1}, "start", 7,
               c.words("pattern.sample"));
}

void draw_field(const Context& c, Sketch& sketch, const Sheet& sheet, double y) {
  const Pen pen{c.templates.setting("drawing.outline"), 0.4, ""};
  sketch.rect({0.5, y}, sheet.width - 1, band_height, pen, "F2F2F2");
  // A cross-cut is for what adheres to a surface; a material that absorbs is rubbed only.
  for (int i = 0; i < 6 && find(c, "adhesion") != nullptr; ++i) {
    const double at = 4 + 1.5 * i;
    sketch.line({at, y + 1}, {at, y + band_height - 1}, pen);
    sketch.line({3, y + 2 + 1.4 * i}, {13, y + 2 + 1.4 * i}, pen);
  }
}

using Draw = void (*)(const Context&, Sketch&, const Sheet&, double);

struct Band {
  std::string_view name;
  Draw draw;
  std::array<std::string_view, 6> checks;  ///< it stands when one of them is asked for
};

constexpr std::array<Band, 6> bands{{
    {"nozzles", draw_combs, {"dead_nozzles", "frequency"}},
    {"solids", draw_solids, {"solid_cover", "solids_close", "film"}},
    {"crosses", draw_crosses, {"registration"}},
    {"joints", draw_joints, {"stitch", "strokes"}},
    {"finest", draw_finest, {"barcode_grade", "barcode_module", "throw_trial"}},
    {"field",
     draw_field,
     {"adhesion", "rub", "cure_at_speed", "drying_at_speed", "solvent_dry", "absorption"}},
}};

/// The figures that hold for a band: "at most 60 µm; ...", each once; empty where no check asks for
/// it.
std::vector<std::string> accepted(const Context& c, const Band& band) {
  std::vector<std::string> texts;
  for (const std::string_view code : band.checks) {
    std::string all;
    for (const calc::Check& check : c.spec.tests) {
      if (code.empty() || check.code != code) continue;
      const std::string text = check_acceptance(c, check);
      if (all.find(text) == std::string::npos) all += (all.empty() ? "" : "; ") + text;
    }
    if (!all.empty()) texts.push_back(std::move(all));
  }
  return texts;
}

/// A text in lines of at most that many characters.
std::vector<std::string> in_lines(const std::string& text, std::size_t longest_line) {
  std::vector<std::string> lines;
  std::istringstream words(text);
  for (std::string word; words >> word;) {
    const bool fits = !lines.empty() && lines.back().size() + 1 + word.size() <= longest_line;
    if (fits) {
      lines.back() += " " + word;
    } else {
      lines.push_back(std::move(word));
    }
  }
  return lines;
}

void draw_label(const Context& c, Sketch& sketch, const Sheet& sheet, char letter, const Band& band,
                const std::vector<std::string>& texts, double y) {
  const bool dashed = band.draw == draw_joints && joined_group(c) != nullptr;
  const bool plain = band.draw == draw_finest && !has_bar_code(c);
  const std::string name = c.words("pattern." + std::string(band.name) + (dashed ? ".dashed" : "") +
                                   (plain ? ".plain" : ""));
  const double left = sheet.labels();
  const double indent = 4;
  const auto longest_line = static_cast<std::size_t>((paper_width - left - indent) / label_letter);
  sketch.label({left, y + 2.6}, "start", 7.5, std::string(1, letter) + "\xC2\xA0\xC2\xA0" + name,
               true);
  double line = y + 5.4;
  for (const std::string& text : texts) {
    for (const std::string& part : in_lines(text, longest_line)) {
      if (line > y + band_height + band_gap - 1) return;
      sketch.label({left + indent, line}, "start", 6.5, part);
      line += line_step;
    }
  }
}

}  // namespace

std::string sketch_pattern(const Context& c) {
  const calc::Input* const width = c.input("image.width");
  if (c.spec.chosen.empty() || width == nullptr || width->unit != "mm" || width->high <= 0) {
    return {};
  }
  const double real = std::max(width->value, width->high);
  const Scale scale = fitting_scale(real, 1, widest, widest);
  const Sheet sheet{real * scale.factor, scale.factor};
  Sketch sketch(paper_width, top_margin + band_height);
  double y = top_margin;
  char letter = 'A';
  for (const Band& band : bands) {
    const std::vector<std::string> texts = accepted(c, band);
    if (texts.empty()) continue;
    band.draw(c, sketch, sheet, y);
    draw_label(c, sketch, sheet, letter++, band, texts, y);
    y += band_height + band_gap;
  }
  if (letter == 'A') return {};
  sketch.stretch(y);
  sketch.dimension_across(0, sheet.width, top_margin - 3,
                          c.words("pattern.width", {{"VALUE", c.measure(real, "mm", 4)}}),
                          c.templates.setting("drawing.dimension"));
  return sketch.figure(c.words("pattern.caption", {{"SCALE", scale.text}}), "", true);
}

}  // namespace output
