#include "intake/codes.h"

#include <array>

#include "intake/field.h"

namespace intake {
namespace {

constexpr std::array table = {
    CodeInfo{code::bad_utf8, "bytes that are not UTF-8"},
    CodeInfo{code::control_character, "a control character in the text"},
    CodeInfo{code::encoding, "an encoding other than UTF-8"},
    CodeInfo{code::too_much, "a limit of size, depth or number is passed"},
    CodeInfo{code::not_well_formed, "XML that is not well formed"},
    CodeInfo{code::bad_reference, "an & that is no reference XML defines"},
    CodeInfo{code::duplicate_attribute, "an attribute is given twice"},
    CodeInfo{code::unknown_attribute, "an attribute other than name"},
    CodeInfo{code::outside_root, "text or a second element outside the root element"},
    CodeInfo{code::document_type, "a document type declaration"},
    CodeInfo{code::unknown_root, "a root element that is not known"},
    CodeInfo{code::stray_content, "text between fields, or elements within a field"},
    CodeInfo{code::not_a_line, "an INI line that is no section, entry or comment"},
    CodeInfo{code::bad_header, "a line with the name of an INI section is malformed"},
    CodeInfo{code::key_missing, "an INI entry without a key"},
    CodeInfo{code::outside_section, "an INI entry before the first section"},
    CodeInfo{code::no_request, "a file without a request"},
    CodeInfo{code::unknown_section, "a section that is not known"},
    CodeInfo{code::unknown_key, "a key that is not known in its section"},
    CodeInfo{code::duplicate_key, "a field is given twice"},
    CodeInfo{code::duplicate_section, "a section stands twice"},
    CodeInfo{code::name_missing, "a section that needs a name has none"},
    CodeInfo{code::name_not_taken, "a section that takes no name has one"},
    CodeInfo{code::bad_name, "a name with characters no name may hold"},
    CodeInfo{code::field_missing, "an obligatory field is missing"},
    CodeInfo{code::empty_value, "a field without a value"},
    CodeInfo{code::not_a_number, "text where a number is needed"},
    CodeInfo{code::decimal_comma, "a comma in a number"},
    CodeInfo{code::not_finite, "a number that is infinite, not a number or out of range"},
    CodeInfo{code::leading_plus, "a plus sign before a number"},
    CodeInfo{code::unit_missing, "a bare number where a unit is needed"},
    CodeInfo{code::unknown_unit, "a unit that is not known"},
    CodeInfo{code::wrong_dimension, "a unit of another dimension"},
    CodeInfo{code::out_of_range, "a number outside what the field accepts"},
    CodeInfo{code::bad_word, "a word the field does not know"},
    CodeInfo{code::range_reversed, "a range that starts above its end"},
    CodeInfo{code::spread_not_taken, "a range or uncertainty where one value is needed"},
    CodeInfo{code::range_needed, "one value where a range is needed"},
    CodeInfo{code::bad_date, "a date that is none"},
    CodeInfo{code::bad_text, "a text that is too long or of the wrong form"},
    CodeInfo{code::not_whole, "a number that is not whole"},
    CodeInfo{code::bad_list, "a list with an empty item or too many"},
    CodeInfo{code::bad_point, "a viscosity without its temperature"},
    CodeInfo{code::unit_not_taken, "a unit behind a plain number"},
    CodeInfo{code::bad_money, "an amount with parts of a cent"},
    CodeInfo{code::bad_share, "solvents whose shares are missing or do not make 100 %"},
    CodeInfo{code::cylinder_without_diameter, "a cylinder without a diameter"},
    CodeInfo{code::flat_with_diameter, "a flat product with a diameter"},
    CodeInfo{code::image_wider_than_product, "the image is wider than the product"},
    CodeInfo{code::mean_above_peak, "the mean cover is above the greatest"},
    CodeInfo{code::ink_not_there, "a colour names an ink that is not there"},
    CodeInfo{code::ink_not_said, "a colour leaves open which of several inks it prints with"},
    CodeInfo{code::module_without_symbol, "a bar code without its kind"},
    CodeInfo{code::pitch_below_image, "the image is longer than the pitch of the products"},
    CodeInfo{code::same_temperature, "two viscosities at the same temperature"},
    CodeInfo{code::shares_above_one, "water and solvent are more than the whole ink"},
    CodeInfo{code::currencies_differ, "prices of a request in different currencies"},
    CodeInfo{code::variation_above_value, "a variation is greater than what varies"},
    CodeInfo{code::image_around_body, "the image is longer than the way around the cylinder"},
    CodeInfo{code::lists_differ, "ratings and drops of a mode differ in number"},
    CodeInfo{code::row_not_there, "a row that is named is not in the catalogue"},
    CodeInfo{code::window_reversed, "a least value above the greatest"},
    CodeInfo{code::drops_not_ascending, "the drops of a mode do not ascend"},
    CodeInfo{code::no_mode, "a head without a mode"},
    CodeInfo{code::bad_offsets, "no row of a mode stands at offset 0"},
    CodeInfo{code::outside_window, "a nominal value outside its window"},
    CodeInfo{code::uneven_rows, "the rows of a mode cannot have equally many nozzles"},
    CodeInfo{code::no_head, "a catalogue without a head"},
    CodeInfo{code::ink_unused, "no colour prints with an ink"},
    CodeInfo{code::text_size_missing, "typeface or quality of a text whose size is not given"},
    CodeInfo{code::dot_missing, "the drop of a measured dot that is not given"},
    CodeInfo{code::price_undated, "a price without its date"},
};

}  // namespace

std::span<const CodeInfo> diagnostic_codes() { return table; }

}  // namespace intake
