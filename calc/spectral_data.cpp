/// The spectral weighting of ultraviolet light. The nodes were written down from memory; the five
/// entries of the legal table that could be read (181, 228, 276, 324, 372 nm) lie within 1 % of the
/// interpolation.
#include <array>

#include "calc/exposure.h"

namespace calc {
namespace {

constexpr std::array<SpectralRow, 56> rows{{
    {180, 0.012},  {190, 0.019},  {200, 0.030},  {205, 0.051},  {210, 0.075},  {215, 0.095},
    {220, 0.120},  {225, 0.150},  {230, 0.190},  {235, 0.240},  {240, 0.300},  {245, 0.360},
    {250, 0.430},  {254, 0.500},  {255, 0.520},  {260, 0.650},  {265, 0.810},  {270, 1.000},
    {275, 0.960},  {280, 0.880},  {285, 0.770},  {290, 0.640},  {295, 0.540},  {297, 0.460},
    {300, 0.300},  {303, 0.120},  {305, 0.060},  {308, 0.026},  {310, 0.015},  {313, 0.006},
    {315, 0.003},  {316, 0.0024}, {317, 0.0020}, {318, 0.0016}, {319, 0.0012}, {320, 0.0010},
    {322, 6.7e-4}, {323, 5.4e-4}, {325, 5.0e-4}, {328, 4.4e-4}, {330, 4.1e-4}, {333, 3.7e-4},
    {335, 3.4e-4}, {340, 2.8e-4}, {345, 2.4e-4}, {350, 2.0e-4}, {355, 1.6e-4}, {360, 1.3e-4},
    {365, 1.1e-4}, {370, 9.3e-5}, {375, 7.7e-5}, {380, 6.4e-5}, {385, 5.3e-5}, {390, 4.4e-5},
    {395, 3.6e-5}, {400, 3.0e-5},
}};

}  // namespace

const SpectralTable& spectral_table() {
  static constexpr SpectralTable table{
      rows, "ICNIRP, Health Phys. 87(2):171-186, Table 1; Directive 2006/25/EC Annex I Table 1.2",
      "2004; 2006", "180 to 400 nm, nothing above", SourceTag::memory};
  return table;
}

}  // namespace calc
