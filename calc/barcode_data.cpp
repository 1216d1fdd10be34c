#include <array>

#include "calc/barcode.h"

namespace calc {

namespace {

constexpr std::string_view size_guide = "GS1 Sweden size guide for bar codes";
constexpr std::string_view general = "GS1 General Specifications";
constexpr std::string_view release_18 = "release 18";
constexpr std::string_view undated = "edition not stated";

constexpr BarcodeSymbol symbol(std::string_view key, std::string_view name, double least,
                               double target, double most, bool two_dimensional) {
  BarcodeSymbol row;
  row.key = key;
  row.name = name;
  row.least = millimetres(least);
  row.target = millimetres(target);
  row.most = millimetres(most);
  row.two_dimensional = two_dimensional;
  return row;
}

constexpr BarcodeSymbol with_width(BarcodeSymbol row, double quiet_left, double quiet_right,
                                   double modules, double longest_mm = 0) {
  row.quiet_left = quiet_left;
  row.quiet_right = quiet_right;
  row.modules = modules;
  row.longest = millimetres(longest_mm);
  return row;
}

constexpr BarcodeSymbol from(BarcodeSymbol row, std::string_view source, std::string_view edition,
                             std::string_view quality = {}) {
  row.source = source;
  row.edition = edition;
  row.quality = quality;
  row.tag = "P";
  return row;
}

constexpr std::array<BarcodeSymbol, 10> table{{
    from(with_width(symbol("databar-distribution", "GS1 DataBar, general distribution", 0.495,
                           0.660, 0.660, false),
                    0, 0, 0),
         general, release_18, "1.5/10/660"),
    from(with_width(symbol("datamatrix-healthcare", "GS1 DataMatrix, healthcare label", 0.254,
                           0.380, 0.990, true),
                    1, 1, 0),
         "GS1 General Specifications 5.12.3.6", "later release (earlier: greatest 0.495 mm)",
         "1.5/08/660"),
    from(with_width(symbol("datamatrix-retail", "GS1 DataMatrix, retail point of sale", 0.396,
                           0.495, 0.990, true),
                    1, 1, 0),
         "GS1 UK guidance on 2D bar codes at retail", undated),
    from(with_width(symbol("ean-13-distribution", "EAN-13, general distribution", 0.495, 0.660,
                           0.660, false),
                    11, 7, 113),
         size_guide, undated),
    from(with_width(symbol("ean-13-retail", "EAN-13 or UPC-A, retail point of sale", 0.264, 0.330,
                           0.660, false),
                    11, 7, 113),
         size_guide, undated),
    from(with_width(
             symbol("ean-8-retail", "EAN-8, retail point of sale", 0.264, 0.330, 0.660, false), 7,
             7, 81),
         size_guide, undated),
    from(with_width(symbol("gs1-128-distribution", "GS1-128, general distribution", 0.495, 0.495,
                           1.016, false),
                    10, 10, 0, 165.10),
         size_guide, undated),
    from(with_width(
             symbol("gs1-128-healthcare", "GS1-128, healthcare label", 0.170, 0.495, 0.495, false),
             10, 10, 0, 165.10),
         "GS1 General Specifications 5.12.3.6", undated, "1.5/06/660"),
    from(with_width(symbol("itf-14", "ITF-14, general distribution", 0.495, 0.495, 1.016, false),
                    10, 10, 140.5),
         size_guide, undated),
    from(with_width(symbol("qr-retail", "QR code with GS1 Digital Link, retail point of sale",
                           0.396, 0.495, 0.990, true),
                    4, 4, 0),
         "GS1 UK guidance on 2D bar codes at retail", undated),
}};

}  // namespace

std::span<const BarcodeSymbol> barcode_symbols() { return table; }

}  // namespace calc
