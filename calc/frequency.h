/// Speed, resolution and jetting frequency, forward and back; native resolution of a head's rows.
#pragma once

#include <optional>
#include <vector>

#include "calc/catalogue.h"
#include "calc/quantity.h"

namespace calc {

inline constexpr int most_stack = 6;
inline constexpr int most_interleave = 4;
inline constexpr double frequency_use_note = 0.90;  ///< use above this is a printed condition
inline constexpr double amplitude_grey_factor = 0.6;

/// Frequency of a dot column [1/s]: v R_m.
Frequency column_frequency(Speed speed, Resolution motion_axis);

/// Frequency of one nozzle [1/s] where `stack` heads share a column. stack >= 1.
Frequency nozzle_frequency(Frequency column, int stack);

/// Rating less the reserve [1/s]: f (1 - reserve). 0 <= reserve < 1.
Frequency usable_frequency(Frequency rating, double reserve = 0);

/// Least heads sharing a column [1]: ceil(f_column / usable), at least 1; 150 over 50 is 3. May be
/// above most_stack: the caller gates. usable > 0.
int least_stack(Frequency column, Frequency usable);

/// Share of the usable frequency in use [1]: f_nozzle / usable. usable > 0.
double frequency_use(Frequency per_nozzle, Frequency usable);

/// Greatest speed [m/s] by frequency: m usable / R_m. stack >= 1, resolution > 0.
Speed speed_limit(int stack, Frequency usable, Resolution motion_axis);

/// A head's rating for the highest level used.
struct AllowedFrequency {
  Frequency value;
  bool from_binary = false;  ///< worked out from a binary rating: ask the maker
};

/// Rating [1/s] at `levels_used` (empty dot counted, >= 2) of a head with `drops` drop sizes.
/// ratings[i] belongs to drop size i as the highest level. One rating beside several drop sizes is
/// binary: as rated at 2 levels; by amplitude 0.6 of it; by sub-drops rated/(levels_used - 1).
/// Preconditions: ratings not empty, levels_used - 1 <= drops. Common practice for the last two.
AllowedFrequency allowed_frequency(const std::vector<Frequency>& ratings, int drops,
                                   GreyMethod method, int levels_used);

/// Whether a frequency lies in a known bad band, its ends included.
bool in_bad_band(Frequency per_nozzle, Frequency low, Frequency high);

/// Native resolution of one colour's rows.
struct NativeResolution {
  Resolution value;       ///< rows x row pitch if even, else one over the largest gap
  bool even = false;      ///< whether the rows' nozzles are equally spaced
  int distinct_rows = 0;  ///< rows at different positions; the others only double nozzles
};

/// Native resolution [1/m] of rows at offsets (in nozzle pitches of a row; only the fraction
/// counts). Equal within 1 % of the spacing counts as equal. Offsets not empty, row_pitch > 0.
NativeResolution native_resolution(Resolution row_pitch, const std::vector<double>& offsets);

/// The least interleave 1..most_interleave whose k native meets the need, as all above it do; none
/// where the most does not.
std::optional<int> least_interleave(Resolution native, Resolution required);

/// Delivered resolution [1/m]: k native, never trimmed.
Resolution interleaved(Resolution native, int interleave);

}  // namespace calc
