/// Bar codes on a lattice of dots: which symbols there are, and what module comes out.
#pragma once

#include <span>
#include <string_view>

#include "calc/quantity.h"

namespace calc {

/// One row of the versioned table of symbols.
struct BarcodeSymbol {
  std::string_view key;  ///< as the request names it, "ean-13-retail"
  std::string_view name;
  Length least, target, most;  ///< module (X dimension)
  bool two_dimensional = false;
  double quiet_left = 0, quiet_right = 0;  ///< quiet zones in modules; 2D: on every side
  double modules = 0;        ///< total width with quiet zones, in modules; 0 = depends on the data
  Length longest;            ///< greatest total width; 0 = none stated
  std::string_view quality;  ///< grade / aperture in mil / wavelength in nm; empty = not stated
  std::string_view source, edition;
  std::string_view tag;  ///< P printed in the source named, M from memory
};

/// All rows, in order of key.
std::span<const BarcodeSymbol> barcode_symbols();

/// The row of a key, or null.
const BarcodeSymbol* find_barcode_symbol(std::string_view key);

/// A module as a lattice delivers it.
struct LatticeModule {
  int dots = 0;
  Length module;          ///< dots times the pitch
  int repair = 0;         ///< +1 or -1 dot taken to stay within the symbol's range, else 0
  bool in_range = false;  ///< whether `module` lies in the range, with the common tolerance
};

/// Whole dots a module [1]: the nearest to X R, at least 1; a half within the common tolerance goes
/// up. module, resolution > 0.
/// Source: "You can not print on 1.5 pixels"; raster rule of bar-code practice.
int dots_per_module(Length module, Resolution resolution);

/// Module [m] that comes out of whole dots: n / R. resolution > 0.
Length lattice_module(int dots, Resolution resolution);

/// Module on the lattice, repaired by one dot where rounding leaves [least, most]; still out of
/// range where no repair helps. module, resolution > 0, least <= most.
LatticeModule fit_module(Length module, Resolution resolution, Length least, Length most);

/// Difference of the modules of the two axes over their mean [1]. Both > 0. For 2D codes at most
/// `axis_mismatch_limit`. Source: ISO/IEC 15415 (axial nonuniformity, from memory).
double axis_mismatch(Length module_across, Length module_along);
inline constexpr double axis_mismatch_limit = 0.06;

/// Total width of a symbol [m]: modules with quiet zones times the module.
Length symbol_width(double modules, Length module);

/// Modules with quiet zones of a GS1-128 symbol [1] of so many code characters (a pair of digits
/// is one): (start + FNC1 + characters + check) 11 + 13 stop + 2 x 10 quiet. characters >= 1.
/// Source: GS1 General Specifications 5.4.
double gs1_128_modules(int characters);

/// Modules with quiet zones of an interleaved 2 of 5 symbol [1] of so many pairs of digits at a
/// wide to narrow ratio of 2.5: 16 a pair + 8.5 + 2 x 10. pairs >= 1. Source: GS1 5.2.
double itf_modules(int pairs);

/// Modules with a quiet zone of `quiet` on each side of a square 2D symbol [1].
double matrix_modules(int size, double quiet);

}  // namespace calc
