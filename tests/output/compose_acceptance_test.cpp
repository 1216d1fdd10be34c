/// Acceptances, and what the document says of bar codes.
#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "output/compose_text.h"
#include "output/section_list.h"
#include "output/sketch_list.h"
#include "tests/output/support/hand_made.h"

namespace {

using hand_made::Case;
using hand_made::context;
using hand_made::holds;

/// A print of that symbol whose modules of the axes differ.
Case printing(const char* symbol) {
  Case made = hand_made::feasible();
  calc::BarcodeFit across = made.spec.chosen.front().barcodes.front();
  across.symbol = symbol;
  across.dots = 9;
  across.module_printed = calc::millimetres(0.381);
  across.module_least = calc::millimetres(0.254);
  across.module_most = calc::millimetres(0.99);
  calc::BarcodeFit along = across;
  along.across = false;
  along.dots = 10;
  along.module_printed = calc::millimetres(0.399);
  made.spec.chosen.front().barcodes = {across, along};
  made.spec.tests = {{"barcode_grade", 1.5, "grade", symbol, {}},
                     {"barcode_module", 381.0, "um", symbol, "across"}};
  made.spec.inputs.push_back(made.spec.inputs[1]);  // a number in mm
  made.spec.inputs.back().key = "image.width";
  return made;
}

int rectangles(const std::string& drawing) {
  int count = 0;
  for (std::size_t at = 0; (at = drawing.find("<rect", at)) != std::string::npos; ++at) ++count;
  return count;
}

}  // namespace

TEST_CASE("a least acceptance is rounded up and a greatest down") {
  const Case made = hand_made::feasible();
  const output::Context c = context(made);
  const auto text = [&](const char* code, double value, const char* unit) {
    return output::check_acceptance(c, {code, value, unit, {}, {}});
  };
  CHECK(text("dot_diameter", 98.2448, "um") == "98.25\u00A0\u00B5m or more");
  CHECK(text("dot_diameter", 59.8684, "um") == "59.87\u00A0\u00B5m or more");
  CHECK(text("film", 8.012, "um") == "8.02\u00A0\u00B5m or more");
  CHECK(text("capture", 90.04, "%") == "at least 90.1\u00A0%");
  CHECK(text("stitch", 21.1667, "um") == "at most 21.16\u00A0\u00B5m");
  CHECK(text("strokes", 17.0, "um") == "at most 17\u00A0\u00B5m");
  CHECK(text("registration", 42.3333, "um") == "at most 42.33\u00A0\u00B5m");
}

// ISO/IEC 15416 is of linear symbols, ISO/IEC 15415 of two-dimensional ones.
TEST_CASE("a symbol is graded by the standard of its kind, and drawn as what it is") {
  const Case matrix = printing("datamatrix-healthcare"), linear = printing("itf-14");
  const std::string of_matrix = output::checks_section(context(matrix));
  const std::string of_linear = output::checks_section(context(linear));
  CHECK(holds(of_matrix, "ISO/IEC 15415"));
  CHECK_FALSE(holds(of_matrix, "ISO/IEC 15416"));
  CHECK(holds(of_linear, "ISO/IEC 15416"));
  CHECK_FALSE(holds(of_linear, "ISO/IEC 15415"));
  const int bars = rectangles(output::sketch_pattern(context(linear)));
  CHECK(bars > 0);
  CHECK(bars <= 12);
  CHECK(rectangles(output::sketch_pattern(context(matrix))) > 12);
}

TEST_CASE("a module is answered on both axes where they differ, and accepted within its range") {
  Case made = printing("datamatrix-healthcare");
  const output::Context c = context(made);
  const std::string module = output::requirement_answer(c, "image.barcode_module");
  CHECK(holds(module, "0.381\u00A0mm in 9 dots across"));
  CHECK(holds(module, "0.399\u00A0mm in 10 dots along"));
  CHECK(holds(output::requirement_answer(c, "image.barcode_symbol"),
              "passes: its module within 0.254\u00A0mm to 0.99\u00A0mm"));
  CHECK(output::check_acceptance(c, made.spec.tests.back()) ==
        "about 381\u00A0\u00B5m, within 254\u00A0\u00B5m to 990\u00A0\u00B5m");
  calc::BarcodeFit& along = made.spec.chosen.front().barcodes.back();
  along.pass = false;
  CHECK(holds(output::requirement_answer(c, "image.barcode_symbol"), "fails: module 0.399"));
  along = made.spec.chosen.front().barcodes.front();
  along.across = false;
  CHECK_FALSE(holds(output::requirement_answer(c, "image.barcode_module"), "along"));
}
