/// The codes of findings, by name. Append-only: a code never changes its meaning.
#pragma once

#include <string_view>

namespace intake::code {

// The text of the file.
inline constexpr std::string_view bad_utf8 = "E0101";
inline constexpr std::string_view control_character = "E0102";
inline constexpr std::string_view encoding = "E0103";
inline constexpr std::string_view too_much = "E0104";
inline constexpr std::string_view not_well_formed = "E0105";
inline constexpr std::string_view bad_reference = "E0106";
inline constexpr std::string_view duplicate_attribute = "E0107";
inline constexpr std::string_view unknown_attribute = "E0108";
inline constexpr std::string_view outside_root = "E0109";
inline constexpr std::string_view document_type = "E0110";
inline constexpr std::string_view unknown_root = "E0111";
inline constexpr std::string_view stray_content = "E0112";
inline constexpr std::string_view not_a_line = "E0113";
inline constexpr std::string_view bad_header = "E0114";
inline constexpr std::string_view key_missing = "E0115";
inline constexpr std::string_view outside_section = "E0116";
inline constexpr std::string_view no_request = "E0117";

// Sections and keys.
inline constexpr std::string_view unknown_section = "E0121";
inline constexpr std::string_view unknown_key = "E0122";
inline constexpr std::string_view duplicate_key = "E0123";
inline constexpr std::string_view duplicate_section = "E0124";
inline constexpr std::string_view name_missing = "E0125";
inline constexpr std::string_view name_not_taken = "E0126";
inline constexpr std::string_view bad_name = "E0127";
inline constexpr std::string_view field_missing = "E0128";

// Values.
inline constexpr std::string_view empty_value = "E0131";
inline constexpr std::string_view not_a_number = "E0132";
inline constexpr std::string_view decimal_comma = "E0133";
inline constexpr std::string_view not_finite = "E0134";
inline constexpr std::string_view leading_plus = "E0135";
inline constexpr std::string_view unit_missing = "E0136";
inline constexpr std::string_view unknown_unit = "E0137";
inline constexpr std::string_view wrong_dimension = "E0138";
inline constexpr std::string_view out_of_range = "E0139";
inline constexpr std::string_view bad_word = "E0140";
inline constexpr std::string_view range_reversed = "E0141";
inline constexpr std::string_view spread_not_taken = "E0142";
inline constexpr std::string_view range_needed = "E0143";
inline constexpr std::string_view bad_date = "E0144";
inline constexpr std::string_view bad_text = "E0145";
inline constexpr std::string_view not_whole = "E0146";
inline constexpr std::string_view bad_list = "E0147";
inline constexpr std::string_view bad_point = "E0148";
inline constexpr std::string_view unit_not_taken = "E0149";
inline constexpr std::string_view bad_money = "E0150";
inline constexpr std::string_view bad_share = "E0151";
inline constexpr std::string_view viscosity_rises = "E0152";
inline constexpr std::string_view not_text = "E0153";

// Contradictions of a request.
inline constexpr std::string_view cylinder_without_diameter = "E0161";
inline constexpr std::string_view flat_with_diameter = "E0162";
inline constexpr std::string_view image_wider_than_product = "E0163";
inline constexpr std::string_view mean_above_peak = "E0164";
inline constexpr std::string_view ink_not_there = "E0165";
inline constexpr std::string_view ink_not_said = "E0166";
// E0167 is retired: what it named is the warning symbol_missing.
inline constexpr std::string_view pitch_below_image = "E0168";
inline constexpr std::string_view same_temperature = "E0169";
inline constexpr std::string_view shares_above_one = "E0170";
inline constexpr std::string_view currencies_differ = "E0171";
inline constexpr std::string_view variation_above_value = "E0172";
inline constexpr std::string_view image_around_body = "E0173";
inline constexpr std::string_view two_encoder_steps = "E0176";

// Contradictions of a catalogue.
inline constexpr std::string_view lists_differ = "E0181";
inline constexpr std::string_view row_not_there = "E0182";
inline constexpr std::string_view window_reversed = "E0183";
inline constexpr std::string_view drops_not_ascending = "E0184";
inline constexpr std::string_view no_mode = "E0185";
inline constexpr std::string_view bad_offsets = "E0186";
inline constexpr std::string_view outside_window = "E0187";
inline constexpr std::string_view uneven_rows = "E0188";
inline constexpr std::string_view no_head = "E0189";
inline constexpr std::string_view tilt_unmeasured = "E0190";

// Faults of a price list.
inline constexpr std::string_view bad_price_line = "E0191";

// Warnings.
inline constexpr std::string_view ink_unused = "W0201";
inline constexpr std::string_view text_size_missing = "W0202";
inline constexpr std::string_view dot_missing = "W0203";
inline constexpr std::string_view price_undated = "W0204";
inline constexpr std::string_view symbol_missing = "W0205";
inline constexpr std::string_view half_encoder = "W0206";
inline constexpr std::string_view half_shear_law = "W0207";
inline constexpr std::string_view price_of_nothing = "W0208";
inline constexpr std::string_view scanning_without_stop = "W0209";

}  // namespace intake::code
