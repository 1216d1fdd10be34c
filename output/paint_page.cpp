#include "output/paint_page.h"

#include <cmath>
#include <numbers>

namespace output {

std::string font_name(Face face) { return "F" + std::to_string(static_cast<int>(face)); }

PageWriter::PageWriter(const Pdf& pdf, HPDF_Page page, double height)
    : pdf_(pdf), page_(page), height_(height) {}

void PageWriter::operator()(const TextRun& run) {
  if (run.text.empty()) return;
  begin_text();
  fill_colour(run.colour);
  if (run.face != face_ || run.size != size_) {
    content_.name(font_name(run.face)).number(run.size).operate("Tf");
    face_ = run.face;
    size_ = run.size;
  }
  turn(run.rotation);
  place(run.x, run.y);
  content_.operate("Tm");
  content_.text(run.text).operate("Tj");
}

void PageWriter::operator()(const Path& path) {
  if (path.steps.empty() || (!path.fill && !path.stroke)) return;
  end_text();
  if (path.fill) fill_colour(*path.fill);
  if (path.stroke) use_stroke(*path.stroke);
  trace(path.steps);
  if (path.fill && path.stroke) {
    content_.operate("B");
  } else {
    content_.operate(path.fill ? "f" : "S");
  }
}

void PageWriter::operator()(const Image& image) {
  end_text();
  const Raster& raster = *image.raster;
  HPDF_Image made = pdf_.made(HPDF_LoadRawImageFromMem(
      pdf_.doc(), as_bytes(raster.rgb), raster.width, raster.height, HPDF_CS_DEVICE_RGB, 8));
  content_.operate("q");
  content_.number(image.width).number(0).number(0).number(image.height);
  place(image.x, image.y + image.height);
  content_.operate("cm");
  content_.name(pdf_.made(HPDF_Page_GetXObjectName(page_, made))).operate("Do");
  content_.operate("Q");
}

void PageWriter::operator()(const Link&) const {}

void PageWriter::finish() {
  end_text();
  auto* const attributes = static_cast<HPDF_PageAttr>(page_->attr);
  pdf_.write_packed(attributes->contents, content_.bytes());
  pdf_.check();
}

/// The first four operands of the matrix that turns text by so many degrees.
void PageWriter::turn(double rotation) {
  if (rotation == 0) {
    content_.number(1).number(0).number(0).number(1);
    return;
  }
  const double angle = rotation * std::numbers::pi / 180;
  const double cosine = std::cos(angle), sine = std::sin(angle);
  content_.fine_number(cosine).fine_number(sine).fine_number(-sine).fine_number(cosine);
}

void PageWriter::begin_text() {
  if (!in_text_) content_.operate("BT");
  in_text_ = true;
}

void PageWriter::end_text() {
  if (in_text_) content_.operate("ET");
  in_text_ = false;
}

/// The point as two operands; PDF has its origin at the lower left corner.
void PageWriter::place(double x, double y) { content_.number(x).number(height_ - y); }

void PageWriter::operate_colour(const Colour& colour, std::string_view operation) {
  constexpr double most = 255;
  content_.number(colour.red / most).number(colour.green / most).number(colour.blue / most);
  content_.operate(operation);
}

void PageWriter::fill_colour(const Colour& colour) {
  if (fill_ == colour) return;
  operate_colour(colour, "rg");
  fill_ = colour;
}

void PageWriter::use_stroke(const Stroke& stroke) {
  if (stroke_colour_ != stroke.colour) {
    operate_colour(stroke.colour, "RG");
    stroke_colour_ = stroke.colour;
  }
  if (stroke_width_ != stroke.width) {
    content_.number(stroke.width).operate("w");
    stroke_width_ = stroke.width;
  }
  if (dash_ == stroke.dash) return;
  content_.lengths(stroke.dash).number(0).operate("d");
  dash_ = stroke.dash;
}

void PageWriter::trace(const std::vector<PathStep>& steps) {
  for (const auto& [verb, a, b, c] : steps) {
    switch (verb) {
      case PathStep::Verb::move:
        place(a.x, a.y);
        content_.operate("m");
        break;
      case PathStep::Verb::line:
        place(a.x, a.y);
        content_.operate("l");
        break;
      case PathStep::Verb::curve:
        place(a.x, a.y);
        place(b.x, b.y);
        place(c.x, c.y);
        content_.operate("c");
        break;
      case PathStep::Verb::close:
        content_.operate("h");
        break;
    }
  }
}

}  // namespace output
