#include "output/text_line.h"

namespace output {
namespace {

constexpr double thin_space = 0.17;        // em; a sixth, as type founders cast it
constexpr double script_size = 0.70;       // of the size around it
constexpr double subscript_drop = 0.17;    // em
constexpr double superscript_rise = 0.34;  // em
constexpr double code_size = 0.92;         // mono looks large beside the text face
constexpr char32_t no_break_space = 0xA0;

/// The style inside an inline element.
InlineStyle styled(const Node& node, InlineStyle style, Colour accent) {
  if (node.name == "b") style.face = Face::text_bold;
  if (node.name == "i" && style.face != Face::text_bold) style.face = Face::text_italic;
  if (node.name == "code") {
    style.face = Face::mono;
    style.size *= code_size;
  }
  if (node.name == "sub") {
    style.shift += subscript_drop * style.size;
    style.size *= script_size;
  }
  if (node.name == "sup") {
    style.shift -= superscript_rise * style.size;
    style.size *= script_size;
  }
  if (node.name == "a") {
    if (node.get("quiet").empty()) style.colour = accent;
    style.link = &node.attributes.at("to");
  }
  return style;
}

/// Appends runs glyph by glyph; a run goes on while face and style stay and no gap comes.
class RunWriter {
 public:
  RunWriter(const TextFlow& flow, double x, double y, std::vector<Item>& items)
      : flow_(flow), items_(items), x_(x), y_(y) {}

  void take(const Glyph& glyph) {
    if (glyph.width == 0 && glyph.kind != GlyphKind::ink) return;
    if (glyph.character == 0) {
      finish();
    } else {
      take_ink(glyph);
    }
    x_ += glyph.width;
  }

  void finish() {
    if (text_.empty()) return;
    const InlineStyle& style = flow_.style(first_);
    items_.emplace_back(TextRun{start_, y_ + style.shift, x_ - start_, style.size, 0, first_.face,
                                style.colour, text_});
    if (style.link != nullptr) {
      items_.emplace_back(Link{start_, y_ + style.shift - 0.82 * style.size, x_ - start_,
                               1.08 * style.size, *style.link});
    }
    text_.clear();
  }

 private:
  void take_ink(const Glyph& glyph) {
    if (!text_.empty() && (glyph.style != first_.style || glyph.face != first_.face)) finish();
    if (text_.empty()) {
      first_ = glyph;
      start_ = x_;
    }
    append_utf8(text_, glyph.character);
  }

  const TextFlow& flow_;
  std::vector<Item>& items_;
  double x_;
  double y_;
  double start_ = 0;
  Glyph first_;
  std::string text_;
};

}  // namespace

void TextFlow::clear() {
  glyphs_.clear();
  styles_.clear();
  start_ = 0;
}

void TextFlow::open() { start_ = glyphs_.size(); }

Range TextFlow::close() {
  while (glyphs_.size() > start_ && glyphs_.back().kind == GlyphKind::space) glyphs_.pop_back();
  return {start_, glyphs_.size()};
}

std::uint32_t TextFlow::add_style(const InlineStyle& style) {
  if (styles_.empty() || styles_.back() != style) styles_.push_back(style);
  return static_cast<std::uint32_t>(styles_.size() - 1);
}

void TextFlow::append(std::string_view utf8, const InlineStyle& style) {
  const std::uint32_t index = add_style(style);
  while (!utf8.empty()) add(take_character(utf8), index, style);
}

void TextFlow::append(std::span<const Node> nodes, const InlineStyle& style, Colour accent) {
  for (const Node& node : nodes) {
    if (node.name.empty()) {
      append(node.text, style);
    } else {
      append(node.children, styled(node, style, accent), accent);
    }
  }
}

void TextFlow::add(char32_t character, std::uint32_t index, const InlineStyle& style) {
  switch (character) {
    case ' ':
    case '\t':
    case '\n':
    case '\r':
      add_space(index, style);
      break;
    case no_break_space:
      add_ink(' ', index, style);
      break;
    case 0x2009:
    case 0x202F:
      add_room(thin_space, GlyphKind::gap, index, style);
      break;
    case 0x2007:
      add_room(0.556, GlyphKind::gap, index, style);
      break;  // as wide as a digit
    case 0x2002:
      add_room(0.5, GlyphKind::space, index, style);
      break;
    case 0x2003:
    case 0x3000:
      add_room(1.0, GlyphKind::space, index, style);
      break;
    case 0xAD:
      add_room(0, GlyphKind::soft_hyphen, index, style);
      break;
    case 0x200B:
      add_room(0, GlyphKind::opportunity, index, style);
      break;
    case 0x2060:
    case 0xFEFF:
      if (glyphs_.size() > start_) glyphs_.back().joined = true;
      break;
    case 0x2011:
      add_ink(0x2010, index, style);
      break;
    default:
      add_ink(character, index, style);
  }
}

void TextFlow::add_space(std::uint32_t index, const InlineStyle& style) {
  if (glyphs_.size() == start_ || glyphs_.back().kind == GlyphKind::space) return;
  add_ink(' ', index, style);
  glyphs_.back().kind = GlyphKind::space;
}

void TextFlow::add_room(double em, GlyphKind kind, std::uint32_t index, const InlineStyle& style) {
  glyphs_.push_back({0, em * style.size, index, style.face, kind});
}

void TextFlow::add_ink(char32_t character, std::uint32_t index, const InlineStyle& style) {
  const Metrics metrics = measurer_.of(style.face, character);
  if (metrics.drawable) {
    glyphs_.push_back(
        {character, metrics.advance * style.size / 1000, index, metrics.face, GlyphKind::ink});
    return;
  }
  measurer_.report(character);
  for (const char sign : code_point_mark(character)) {
    const auto plain = static_cast<char32_t>(sign);
    const Metrics own = measurer_.of(style.face, plain);
    glyphs_.push_back({plain, own.advance * style.size / 1000, index, own.face, GlyphKind::ink});
  }
}

double TextFlow::width(Range range) const {
  double sum = 0;
  for (std::size_t i = range.first; i < range.last; ++i) sum += glyphs_[i].width;
  return sum;
}

void emit_line(const TextFlow& flow, const Line& line, double x, double y,
               std::vector<Item>& items) {
  RunWriter writer(flow, x, y, items);
  for (std::size_t i = line.first; i < line.last; ++i) writer.take(flow.glyphs()[i]);
  if (line.hyphen) {
    Glyph hyphen = flow.glyphs()[line.last];
    const InlineStyle& style = flow.style(hyphen);
    const Metrics metrics = flow.measurer().of(style.face, '-');
    hyphen = {'-', metrics.advance * style.size / 1000, hyphen.style, metrics.face, GlyphKind::ink};
    writer.take(hyphen);
  }
  writer.finish();
}

}  // namespace output
