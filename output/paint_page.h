/// The items of one page as operators of its content stream.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "output/display_list.h"
#include "output/paint_content.h"
#include "output/paint_pdf.h"

namespace output {

/// Name of a face's font among the resources of every page.
std::string font_name(Face face);

/// Writes items in their order; graphics state is set only where it changes. Precondition: the
/// items passed check_list(). Throws std::runtime_error on libharu's faults.
class PageWriter {
 public:
  PageWriter(const Pdf& pdf, HPDF_Page page, double height);

  void operator()(const TextRun& run);
  void operator()(const Path& path);
  void operator()(const Image& image);
  /// Links are annotations, which need all pages to exist; see add_link().
  void operator()(const Link& link) const;
  /// Closes what is open and gives the page its content. To be called once, last.
  void finish();

 private:
  void begin_text();
  void end_text();
  void fill_colour(const Colour& colour);
  void place(double x, double y);
  void turn(double rotation);
  void operate_colour(const Colour& colour, std::string_view operation);
  void use_stroke(const Stroke& stroke);
  void trace(const std::vector<PathStep>& steps);

  const Pdf& pdf_;
  HPDF_Page page_;
  double height_;
  Content content_;
  bool in_text_ = false;
  std::optional<Face> face_;
  double size_ = 0;
  std::optional<Colour> fill_, stroke_colour_;
  double stroke_width_ = -1;
  std::vector<double> dash_;
};

}  // namespace output
