#include <algorithm>
#include <array>

#include "output/text_line.h"

namespace output {
namespace {

constexpr double slack = 1e-6;  // pt; sums of widths in another order differ by rounding

bool is_letter(char32_t c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= 0xC0 && c < 0x2000);
}

/// Scripts that are set without blanks: a line may end beside each of their characters.
bool is_ideograph(char32_t c) {
  if (c < 0x2E80) return false;
  return c <= 0x9FFF || (c >= 0xF900 && c <= 0xFAFF) || (c >= 0xFF00 && c <= 0xFFEF) ||
         (c >= 0x20000 && c <= 0x3FFFF);
}

bool is_any_of(std::u32string_view set, char32_t c) {
  return set.find(c) != std::u32string_view::npos;
}

bool may_not_begin_line(char32_t c) {
  return is_any_of(
      U"、。，．」』】〉》）］｝：；！？ー々"
      U"ぁぃぅぇぉっゃゅょァィゥェォッャュョ"
      U".,;:!?)]}%",
      c);
}

bool may_not_end_line(char32_t c) { return is_any_of(U"「『【〈《（［｛([{", c); }

/// Whether a line may end between two inked characters, without being forced to.
bool breaks_between(char32_t before, char32_t at, char32_t after) {
  if (at == '-' || at == 0x2010) return is_letter(before) && is_letter(after);
  if (at == 0x2014) return true;
  if (!is_ideograph(at) && !is_ideograph(after)) return false;
  return at != ' ' && after != ' ' && !may_not_begin_line(after) && !may_not_end_line(at);
}

/// Where a word too long for a line is broken rather than anywhere.
bool is_seam(char32_t c) {
  switch (c) {  // asked of every character: a search through a set takes ten times as long
    case '/':
    case '_':
    case '.':
    case ',':
    case ';':
    case ':':
    case '=':
    case '+':
    case '*':
    case ')':
    case '&':
    case '-':
    case 0xB7:  // middle dot
    case 0xD7:  // multiplication sign
      return true;
    default:
      return false;
  }
}

bool is_digit(char32_t c) { return c >= '0' && c <= '9'; }

/// The same between two characters: the sign within a number is no seam.
bool is_seam_between(char32_t before, char32_t at, char32_t after) {
  const bool may_be_sign = at == '.' || at == ',';
  return is_seam(at) && !(may_be_sign && is_digit(before) && is_digit(after));
}

/// Room of the hyphen that shows where a line ends at this soft one [pt].
double hyphen_width(const TextFlow& flow, const Glyph& soft) {
  const InlineStyle& style = flow.style(soft);
  return flow.measurer().of(style.face, '-').advance * style.size / 1000;
}

class Breaker {
 public:
  Breaker(const TextFlow& flow, Range text, double first_width, double width,
          std::vector<Line>& lines)
      : flow_(flow), text_(text), limit_(first_width), width_(width), lines_(lines) {}

  void run() {
    begin(text_.first);
    while (at_ < text_.last) step(flow_.glyphs()[at_]);
    if (start_ < text_.last) lines_.push_back({start_, text_.last, x_, false});
  }

 private:
  /// A place where the line may end: what is on it, and where the next one begins.
  struct Place {
    Line line;
    std::size_t next = 0;
    bool known = false;
  };

  void begin(std::size_t start) {
    start_ = at_ = start;
    x_ = 0;
    natural_ = {};
    seam_ = {};
  }

  void end_with(const Place& place) {
    lines_.push_back(place.line);
    limit_ = width_;
    begin(place.next);
  }

  Place here(std::size_t last, std::size_t next) const {
    return {{start_, last, x_, false}, next, true};
  }

  void step(const Glyph& glyph) {
    switch (glyph.kind) {
      case GlyphKind::space:
      case GlyphKind::opportunity:
        if (at_ > start_) natural_ = here(at_, at_ + 1);
        break;
      case GlyphKind::soft_hyphen:
        offer_hyphen(glyph);
        break;
      case GlyphKind::ink:
      case GlyphKind::gap:
        if (x_ + glyph.width > limit_ + slack && at_ > start_) {
          overflow();
          return;
        }
        break;
    }
    x_ += glyph.width;
    ++at_;
    if (glyph.kind == GlyphKind::ink) offer_after();
  }

  void overflow() {
    if (natural_.known) {
      end_with(natural_);
    } else if (seam_.known && (seam_.line.width > limit_ / 2 || rest_fits())) {
      end_with(seam_);
    } else {
      end_with(here(at_, at_));
    }
  }

  /// Whether what stands behind the seam, to the next one, fits the line that follows.
  bool rest_fits() const {
    const std::vector<Glyph>& glyphs = flow_.glyphs();
    double width = 0;
    for (std::size_t i = seam_.next; i < text_.last; ++i) {
      if (glyphs[i].kind == GlyphKind::space || glyphs[i].kind == GlyphKind::opportunity) break;
      width += glyphs[i].width;
      if (i > seam_.next && !glyphs[i].joined && is_seam(glyphs[i].character)) break;
    }
    return width <= width_ + slack;
  }

  void offer_hyphen(const Glyph& glyph) {
    const double hyphen = hyphen_width(flow_, glyph);
    if (at_ == start_ || x_ + hyphen > limit_ + slack) return;
    natural_ = {{start_, at_, x_ + hyphen, true}, at_ + 1, true};
  }

  /// Called behind an inked character that fits.
  void offer_after() {
    const std::vector<Glyph>& glyphs = flow_.glyphs();
    if (at_ >= text_.last || glyphs[at_ - 1].joined) return;
    const char32_t last = glyphs[at_ - 1].character;
    const char32_t before = at_ - 1 > start_ ? glyphs[at_ - 2].character : U' ';
    if (glyphs[at_].kind == GlyphKind::ink && breaks_between(before, last, glyphs[at_].character)) {
      natural_ = here(at_, at_);
    } else if (is_seam_between(before, last, glyphs[at_].character)) {
      seam_ = here(at_, at_);
    }
  }

  const TextFlow& flow_;
  Range text_;
  double limit_;
  double width_;
  std::vector<Line>& lines_;
  std::size_t start_ = 0;
  std::size_t at_ = 0;
  double x_ = 0;
  Place natural_;
  Place seam_;
};

}  // namespace

void break_lines(const TextFlow& flow, Range text, double first_width, double width,
                 std::vector<Line>& lines) {
  Breaker(flow, text, first_width, width, lines).run();
}

double widest_word(const TextFlow& flow, Range text) {
  const std::vector<Glyph>& glyphs = flow.glyphs();
  double widest = 0, word = 0;
  for (std::size_t i = text.first; i < text.last; ++i) {
    const bool inked = glyphs[i].kind == GlyphKind::ink;
    if (glyphs[i].kind == GlyphKind::soft_hyphen) {
      widest = std::max(widest, word + hyphen_width(flow, glyphs[i]));
    }
    word = inked || glyphs[i].kind == GlyphKind::gap ? word + glyphs[i].width : 0;
    widest = std::max(widest, word);
    if (!inked || glyphs[i].joined) continue;
    if (i + 1 == text.last || glyphs[i + 1].kind != GlyphKind::ink) continue;
    const char32_t at = glyphs[i].character;
    const char32_t before = i > text.first ? glyphs[i - 1].character : U' ';
    const char32_t after = glyphs[i + 1].character;
    if (is_seam_between(before, at, after) || breaks_between(before, at, after)) word = 0;
  }
  return widest;
}

}  // namespace output
