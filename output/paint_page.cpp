#include "output/paint_page.h"

#include <cmath>
#include <numbers>

namespace output {
namespace {

/// Thousandths of a point are finer than any device and keep the stream short.
HPDF_REAL rounded(double value) { return static_cast<HPDF_REAL>(std::round(value * 1e3) / 1e3); }

HPDF_REAL channel(std::uint8_t value) { return rounded(value / 255.0); }

}  // namespace

PageWriter::PageWriter(const Pdf& pdf, HPDF_Page page, double height, const PdfFonts& fonts)
    : pdf_(pdf), page_(page), height_(height), fonts_(fonts) {}

void PageWriter::operator()(const TextRun& run) {
  if (run.text.empty()) return;
  begin_text();
  fill_colour(run.colour);
  HPDF_Font font = fonts_.at(static_cast<std::size_t>(run.face));
  if (font != font_ || run.size != size_) {
    pdf_.ok(HPDF_Page_SetFontAndSize(page_, font, rounded(run.size)));
    font_ = font;
    size_ = run.size;
  }
  const double angle = run.rotation * std::numbers::pi / 180;
  const auto cosine = static_cast<HPDF_REAL>(std::cos(angle));
  const auto sine = static_cast<HPDF_REAL>(std::sin(angle));
  pdf_.ok(HPDF_Page_SetTextMatrix(page_, cosine, sine, -sine, cosine, rounded(run.x),
                                  rounded(height_ - run.y)));
  pdf_.ok(HPDF_Page_ShowText(page_, run.text.c_str()));
}

void PageWriter::operator()(const Path& path) {
  if (path.steps.empty() || (!path.fill && !path.stroke)) return;
  end_text();
  if (path.fill) fill_colour(*path.fill);
  if (path.stroke) use_stroke(*path.stroke);
  trace(path.steps);
  if (path.fill && path.stroke) {
    pdf_.ok(HPDF_Page_FillStroke(page_));
  } else {
    pdf_.ok(path.fill ? HPDF_Page_Fill(page_) : HPDF_Page_Stroke(page_));
  }
}

void PageWriter::operator()(const Image& image) {
  end_text();
  const Raster& raster = *image.raster;
  HPDF_Image made = pdf_.made(HPDF_LoadRawImageFromMem(
      pdf_.doc(), as_bytes(raster.rgb), raster.width, raster.height, HPDF_CS_DEVICE_RGB, 8));
  pdf_.ok(HPDF_Page_DrawImage(page_, made, rounded(image.x),
                              rounded(height_ - image.y - image.height), rounded(image.width),
                              rounded(image.height)));
}

void PageWriter::operator()(const Link&) const {}

void PageWriter::finish() {
  end_text();
  pdf_.check();
}

void PageWriter::begin_text() {
  if (!in_text_) pdf_.ok(HPDF_Page_BeginText(page_));
  in_text_ = true;
}

void PageWriter::end_text() {
  if (in_text_) pdf_.ok(HPDF_Page_EndText(page_));
  in_text_ = false;
}

void PageWriter::fill_colour(const Colour& colour) {
  if (fill_ == colour) return;
  pdf_.ok(HPDF_Page_SetRGBFill(page_, channel(colour.red), channel(colour.green),
                               channel(colour.blue)));
  fill_ = colour;
}

void PageWriter::use_stroke(const Stroke& stroke) {
  const Colour& colour = stroke.colour;
  if (stroke_colour_ != colour) {
    pdf_.ok(HPDF_Page_SetRGBStroke(page_, channel(colour.red), channel(colour.green),
                                   channel(colour.blue)));
    stroke_colour_ = colour;
  }
  if (stroke_width_ != stroke.width) {
    pdf_.ok(HPDF_Page_SetLineWidth(page_, rounded(stroke.width)));
    stroke_width_ = stroke.width;
  }
  if (dash_ == stroke.dash) return;
  const std::vector<HPDF_UINT16> lengths(stroke.dash.begin(), stroke.dash.end());
  pdf_.ok(HPDF_Page_SetDash(page_, lengths.data(), static_cast<HPDF_UINT>(lengths.size()), 0));
  dash_ = stroke.dash;
}

void PageWriter::trace(const std::vector<PathStep>& steps) {
  const auto y = [this](const Point& point) { return rounded(height_ - point.y); };
  for (const PathStep& step : steps) {
    const auto& [verb, a, b, c] = step;
    switch (verb) {
      case PathStep::Verb::move:
        pdf_.ok(HPDF_Page_MoveTo(page_, rounded(a.x), y(a)));
        break;
      case PathStep::Verb::line:
        pdf_.ok(HPDF_Page_LineTo(page_, rounded(a.x), y(a)));
        break;
      case PathStep::Verb::curve:
        pdf_.ok(
            HPDF_Page_CurveTo(page_, rounded(a.x), y(a), rounded(b.x), y(b), rounded(c.x), y(c)));
        break;
      case PathStep::Verb::close:
        pdf_.ok(HPDF_Page_ClosePath(page_));
        break;
    }
  }
}

}  // namespace output
