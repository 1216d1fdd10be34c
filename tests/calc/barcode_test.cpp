#include "calc/barcode.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "calc/compare.h"
#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;

namespace {

constexpr const char* closed = "[C] whole dots a module, computed independently";

const BarcodeSymbol& symbol(std::string_view key) {
  const BarcodeSymbol* row = find_barcode_symbol(key);
  REQUIRE(row != nullptr);
  return *row;
}

struct FitRow {
  double module_mm, dpi;
  const char* key;
  int dots, repair;
  double delivered_mm;
  bool in_range;
};

}  // namespace

TEST_CASE("every row of the bar-code table is whole and in order") {
  std::string_view last;
  for (const BarcodeSymbol& row : barcode_symbols()) {
    CAPTURE(std::string(row.key));
    CHECK(row.key > last);
    last = row.key;
    CHECK(row.least.si() > 0);
    CHECK(row.least <= row.target);
    CHECK(row.target <= row.most);
    CHECK_FALSE(row.name.empty());
    CHECK_FALSE(row.source.empty());
    CHECK_FALSE(row.edition.empty());
    CHECK((row.tag == "P" || row.tag == "M"));
    CHECK(find_barcode_symbol(row.key) == &row);
  }
  CHECK(find_barcode_symbol("ean-13") == nullptr);
}

TEST_CASE("modules of the table are those printed") {
  const auto least = [](const char* key) { return in_mm(symbol(key).least); };
  const auto target = [](const char* key) { return in_mm(symbol(key).target); };
  const auto most = [](const char* key) { return in_mm(symbol(key).most); };
  constexpr const char* guide = "[P] GS1 Sweden size guide";
  constexpr const char* general = "[P] GS1 General Specifications";
  constexpr const char* uk = "[P] gs1uk.org, target ibn.link";
  support::check_all({
      {"EAN-13 retail least", least("ean-13-retail"), 0.264, identity, guide},
      {"EAN-13 retail target", target("ean-13-retail"), 0.330, identity, guide},
      {"EAN-13 retail most", most("ean-13-retail"), 0.660, identity, guide},
      {"EAN-13 distribution least", least("ean-13-distribution"), 0.495, identity, guide},
      {"EAN-13 distribution target", target("ean-13-distribution"), 0.660, identity, guide},
      {"EAN-13 distribution most", most("ean-13-distribution"), 0.660, identity, guide},
      {"ITF-14 least", least("itf-14"), 0.495, identity, guide},
      {"EAN-8 retail least", least("ean-8-retail"), 0.264, identity, guide},
      {"EAN-8 retail target", target("ean-8-retail"), 0.330, identity, guide},
      {"EAN-8 retail most", most("ean-8-retail"), 0.660, identity, guide},
      {"ITF-14 target", target("itf-14"), 0.495, identity, guide},
      {"ITF-14 most", most("itf-14"), 1.016, identity, guide},
      {"GS1-128 distribution least", least("gs1-128-distribution"), 0.495, identity, guide},
      {"GS1-128 distribution target", target("gs1-128-distribution"), 0.495, identity, guide},
      {"GS1-128 distribution most", most("gs1-128-distribution"), 1.016, identity, guide},
      {"GS1-128 healthcare least", least("gs1-128-healthcare"), 0.170, identity, general},
      {"GS1-128 healthcare target", target("gs1-128-healthcare"), 0.495, identity, general},
      {"GS1-128 healthcare most", most("gs1-128-healthcare"), 0.495, identity, general},
      {"DataMatrix healthcare least", least("datamatrix-healthcare"), 0.254, identity, general},
      {"DataMatrix healthcare target", target("datamatrix-healthcare"), 0.380, identity, general},
      {"DataMatrix healthcare most", most("datamatrix-healthcare"), 0.990, identity, general},
      {"QR retail least is 1.5 linear", least("qr-retail"), 1.5 * 0.264, identity, general},
      {"QR retail target is 1.5 linear", target("qr-retail"), 1.5 * 0.330, identity, general},
      {"QR retail most is 1.5 linear", most("qr-retail"), 1.5 * 0.660, identity, general},
      {"DataMatrix retail least", least("datamatrix-retail"), 0.396, identity, uk},
      {"DataMatrix retail target", target("datamatrix-retail"), 0.495, identity, uk},
      {"DataMatrix retail most", most("datamatrix-retail"), 0.990, identity, uk},
      {"DataBar distribution least", least("databar-distribution"), 0.495, identity, general},
      {"DataBar distribution target", target("databar-distribution"), 0.660, identity, general},
      {"DataBar distribution most", most("databar-distribution"), 0.660, identity, general},
      {"EAN-13 quiet zone left", symbol("ean-13-retail").quiet_left, 11, identity, guide},
      {"EAN-13 quiet zone right", symbol("ean-13-retail").quiet_right, 7, identity, guide},
      {"ITF-14 quiet zone", symbol("itf-14").quiet_left, 10, identity, guide},
      {"GS1-128 quiet zone", symbol("gs1-128-distribution").quiet_right, 10, identity, guide},
      {"DataMatrix quiet zone", symbol("datamatrix-healthcare").quiet_left, 1, identity, general},
      {"GS1-128 longest", in_mm(symbol("gs1-128-distribution").longest), 165.10, identity, general},
      {"GS1-128 healthcare longest", in_mm(symbol("gs1-128-healthcare").longest), 165.10, identity,
       general},
  });
  CHECK(symbol("gs1-128-healthcare").quality == "1.5/06/660");
  CHECK(symbol("datamatrix-healthcare").quality == "1.5/08/660");
  CHECK(symbol("databar-distribution").quality == "1.5/10/660");
  CHECK(symbol("qr-retail").two_dimensional);
  CHECK(symbol("datamatrix-healthcare").two_dimensional);
  CHECK_FALSE(symbol("itf-14").two_dimensional);
}

TEST_CASE("modules on the lattice, repaired into the symbol's range") {
  // Whole dots after "You can not print on 1.5 pixels"; modules computed independently.
  const std::vector<FitRow> rows = {
      {0.330, 300, "ean-13-retail", 4, 0, 0.338667, true},
      {0.330, 360, "ean-13-retail", 5, 0, 0.352778, true},
      {0.330, 600, "ean-13-retail", 8, 0, 0.338667, true},
      {0.330, 200, "ean-13-retail", 3, 0, 0.381000, true},
      {0.264, 200, "ean-13-retail", 3, 1, 0.381000, true},
      {0.495, 300, "itf-14", 6, 0, 0.508000, true},
      {0.495, 360, "itf-14", 8, 1, 0.564444, true},
      {0.495, 600, "itf-14", 12, 0, 0.508000, true},
      {0.380, 600, "datamatrix-healthcare", 9, 0, 0.381000, true},
      {0.380, 300, "datamatrix-healthcare", 4, 0, 0.338667, true},
      {0.264, 600, "ean-13-retail", 7, 1, 0.296333, true},
      {0.660, 300, "ean-13-retail", 7, -1, 0.592667, true},
      {0.660, 30, "ean-13-retail", 1, 0, 0.846667, false},
      {0.495, 360, "gs1-128-healthcare", 7, 0, 0.493889, true},
      {0.660, 60, "ean-13-distribution", 1, -1, 0.423333, false},
  };
  for (const FitRow& row : rows) {
    CAPTURE(row.module_mm);
    CAPTURE(row.dpi);
    const BarcodeSymbol& type = symbol(row.key);
    const LatticeModule fit =
        fit_module(millimetres(row.module_mm), dpi(row.dpi), type.least, type.most);
    CHECK(fit.dots == row.dots);
    CHECK(fit.repair == row.repair);
    CHECK(support::near(in_mm(fit.module), row.delivered_mm, 2e-6));
    CHECK(fit.in_range == row.in_range);
  }
}

TEST_CASE("a raster rule of open bar-code code gives the same whole dots") {
  // scale = round(X dpmm)/2, dots = 2 scale, at 12 and 8 dots a millimetre.
  CHECK(dots_per_module(millimetres(0.33), Resolution::from_si(12000)) == 4);
  CHECK(dots_per_module(millimetres(0.495), Resolution::from_si(12000)) == 6);
  CHECK(dots_per_module(millimetres(0.495), Resolution::from_si(8000)) == 4);
}

TEST_CASE("a repaired module is in range whenever one dot up or down can be") {
  for (int step = 0; step < 400; ++step) {
    const Resolution resolution = dpi(100 + 3 * step);
    const LatticeModule fit =
        fit_module(millimetres(0.33), resolution, millimetres(0.264), millimetres(0.66));
    CAPTURE(in_dpi(resolution));
    CHECK(fit.in_range);
    CHECK(support::near(in_mm(fit.module), 25.4 * fit.dots / in_dpi(resolution), identity));
  }
}

TEST_CASE("widths of symbols with their quiet zones") {
  const auto ean = [](double mm) {
    return in_mm(symbol_width(symbol("ean-13-retail").modules, millimetres(mm)));
  };
  const auto ean8 = [](double mm) {
    return in_mm(symbol_width(symbol("ean-8-retail").modules, millimetres(mm)));
  };
  support::check_all({
      {"EAN-13 at 0.264", ean(0.264), 29.8320, identity, "[P] GS1 Ireland prints 29.83"},
      {"EAN-13 at 0.330", ean(0.330), 37.2900, identity, "[P] GS1 Ireland prints 37.29"},
      {"EAN-13 at 0.660", ean(0.660), 74.5800, identity, "[P] GS1 Ireland prints 74.58"},
      {"EAN-8 at 0.330", ean8(0.330), 26.73, identity, "[P] GS1 Bulgaria prints 26.73"},
      {"EAN-8 at 0.264", ean8(0.264), 21.3840, identity, "[P] GS1 Bulgaria prints 21.38"},
      {"EAN-8 at 0.660", ean8(0.660), 53.46, identity, "[P] GS1 Bulgaria prints 53.46"},
      {"ITF-14 modules", symbol("itf-14").modules, itf_modules(7), 0, "[P] GS1 5.2"},
      {"ITF-14 at 0.495", in_mm(symbol_width(itf_modules(7), millimetres(0.495))), 69.5475,
       identity, "[P] GS1 5.2; [C]"},
      {"ITF-14 at 1.016", in_mm(symbol_width(itf_modules(7), millimetres(1.016))), 142.748,
       identity, "[P] GS1 5.2; [C]"},
      {"SSCC in GS1-128 modules", gs1_128_modules(10), 176, 0,
       "[C] GS1 General Specifications 5.4"},
      {"SSCC at 0.495", in_mm(symbol_width(gs1_128_modules(10), millimetres(0.495))), 87.12,
       identity, "[C] GS1 General Specifications 5.4"},
      {"SSCC at 1.016", in_mm(symbol_width(gs1_128_modules(10), millimetres(1.016))), 178.816,
       identity, "[C] GS1 General Specifications 5.4"},
      {"greatest module of an SSCC", 165.10 / gs1_128_modules(10), 0.938068, 1e-6,
       "[P] GS1 General Specifications 5.4.4.3; [C]"},
      {"QR 29 at 0.396", in_mm(symbol_width(matrix_modules(29, 4), millimetres(0.396))), 14.652,
       identity, "[P] GS1 UK prints 14.652"},
      {"QR 29 at 0.990", in_mm(symbol_width(matrix_modules(29, 4), millimetres(0.990))), 36.63,
       identity, "[P] GS1 UK prints 36.63"},
  });
}

TEST_CASE("mismatch of the axes of a 2D code") {
  support::check_all({
      {"equal", axis_mismatch(millimetres(0.4), millimetres(0.4)), 0, identity, closed},
      {"0.381 against 0.3598", axis_mismatch(millimetres(0.38), millimetres(0.36)), 0.054054054,
       1e-8, closed},
      {"either way round", axis_mismatch(millimetres(0.36), millimetres(0.38)), 0.054054054, 1e-8,
       closed},
  });
  CHECK(at_most(axis_mismatch(millimetres(0.97), millimetres(1.03)), axis_mismatch_limit));
  CHECK_FALSE(at_most(axis_mismatch(millimetres(0.96), millimetres(1.03)), axis_mismatch_limit));
}
