#include "output/paint_check.h"

#include <bitset>
#include <cmath>
#include <memory>
#include <set>
#include <stdexcept>
#include <variant>

#include "output/paint_text.h"

namespace output {
namespace {

// Limits of PDF 1.4 (appendix C of its reference) and of libharu 2.3.0 (hpdf_consts.h).
constexpr double largest_real = 32767;
constexpr double smallest_page = 3;
constexpr double largest_page = 14400;
constexpr double largest_size = 600;
constexpr double largest_stroke = 100;
constexpr double largest_dash = 100;
constexpr std::size_t most_dashes = 8;
constexpr std::size_t longest_text = 65535;

void require(bool condition, const char* message) {
  if (!condition) throw std::invalid_argument(message);
}

void check_real(double value) {
  require(std::isfinite(value), "coordinate that is not finite");
  require(std::abs(value) <= largest_real, "coordinate beyond the reach of PDF");
}

void check_within(double value, double least, double most, const char* message) {
  require(std::isfinite(value) && value >= least && value <= most, message);
}

/// Walks the items of a list, one face's set of characters beside the other.
class Checker {
 public:
  Checker(const DisplayList& list, const Fonts& fonts) : fonts_(fonts) {
    for (const Anchor& anchor : list.anchors) {
      require(names_.insert(anchor.name).second, "two anchors of one name");
      require(anchor.page >= 0 && static_cast<std::size_t>(anchor.page) < list.pages.size(),
              "anchor on no page");
      check_real(anchor.y);
    }
  }

  void operator()(const TextRun& run) {
    check_real(run.x);
    check_real(run.y);
    check_real(run.rotation);
    require(std::isfinite(run.size) && run.size > 0 && run.size <= largest_size,
            "type size out of range");
    require(run.text.size() <= longest_text, "text run too long");
    auto& marks = marked(run.face);
    for (std::string_view rest = run.text; !rest.empty();) {
      const char32_t character = take_valid_character(rest);
      if (character < marks.size() && marks.test(character)) continue;
      require(character >= 0x20 && (character < 0x7F || character > 0x9F),
              "control character in text");
      require(character < marks.size(), "character above U+FFFF");
      require(fonts_.has(run.face, character), "character the face lacks");
      marks.set(character);
    }
  }

  void operator()(const Path& path) const {
    for (const PathStep& step : path.steps) {
      for (const Point& point : {step.a, step.b, step.c}) {
        check_real(point.x);
        check_real(point.y);
      }
    }
    require(path.steps.empty() || path.steps.front().verb == PathStep::Verb::move,
            "outline that does not start with a move");
    if (path.stroke) check_stroke(*path.stroke);
  }

  void operator()(const Link& link) const {
    for (const double value : {link.x, link.y, link.x + link.width, link.y + link.height}) {
      check_real(value);
    }
    require(link.width >= 0 && link.height >= 0, "link with negative extent");
    require(names_.count(link.anchor) == 1, "link to an anchor that is not there");
  }

  void operator()(const Image& image) const {
    for (const double value : {image.x, image.y, image.x + image.width, image.y + image.height}) {
      check_real(value);
    }
    require(image.raster != nullptr && image.raster->width > 0 && image.raster->height > 0,
            "picture without pixels");
    require(image.raster->rgb.size() == std::size_t{3} * image.raster->width * image.raster->height,
            "picture of another size than its pixels");
  }

  void check_bookmarks(const std::vector<Bookmark>& bookmarks) const {
    int depth = 0;
    for (const Bookmark& bookmark : bookmarks) {
      require(bookmark.level >= 1 && bookmark.level <= depth + 1, "bookmark that skips a level");
      require(names_.count(bookmark.anchor) == 1, "bookmark to an anchor that is not there");
      depth = bookmark.level;
    }
  }

  UsedCharacters used() const {
    UsedCharacters characters;
    for (std::size_t face = 0; face < characters.size(); ++face) {
      if (!marks_.at(face)) continue;
      for (char32_t c = 0; c < marks_.at(face)->size(); ++c) {
        if (marks_.at(face)->test(c)) characters.at(face) += c;
      }
    }
    return characters;
  }

 private:
  using Marks = std::bitset<0x10000>;

  static void check_stroke(const Stroke& stroke) {
    check_within(stroke.width, 0, largest_stroke, "stroke width out of range");
    require(stroke.dash.size() % 2 == 0 && stroke.dash.size() <= most_dashes,
            "dash pattern of an odd count or too long");
    for (const double length : stroke.dash) {
      check_within(length, 1, largest_dash, "dash length out of range");
      require(length == std::floor(length), "dash length that is not whole");
    }
  }

  Marks& marked(Face face) {
    auto& marks = marks_.at(static_cast<std::size_t>(face));
    if (!marks) marks = std::make_unique<Marks>();
    return *marks;
  }

  const Fonts& fonts_;
  std::set<std::string, std::less<>> names_;
  std::array<std::unique_ptr<Marks>, face_count> marks_;
};

}  // namespace

UsedCharacters check_list(const DisplayList& list, const Fonts& fonts) {
  require(!list.pages.empty(), "document without pages");
  Checker checker(list, fonts);
  for (const Page& page : list.pages) {
    check_within(page.width, smallest_page, largest_page, "page width out of range");
    check_within(page.height, smallest_page, largest_page, "page height out of range");
    for (const Item& item : page.items) std::visit(checker, item);
  }
  checker.check_bookmarks(list.bookmarks);
  return checker.used();
}

}  // namespace output
