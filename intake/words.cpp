#include "intake/words.h"

#include <array>

namespace intake {
namespace {

using calc::PartKind;

constexpr std::array forms = {Word<calc::Form>{"flat", calc::Form::flat},
                              Word<calc::Form>{"cylinder", calc::Form::cylinder}};
constexpr std::array axes = {Word<calc::BodyAxis>{"across", calc::BodyAxis::across},
                             Word<calc::BodyAxis>{"along", calc::BodyAxis::along}};
constexpr std::array jet_directions = {
    Word<calc::JetDirection>{"down", calc::JetDirection::down},
    Word<calc::JetDirection>{"sideways", calc::JetDirection::sideways}};
constexpr std::array directions = {
    Word<calc::BarcodeDirection>{"across", calc::BarcodeDirection::across},
    Word<calc::BarcodeDirection>{"along", calc::BarcodeDirection::along}};
constexpr std::array typefaces = {Word<calc::Typeface>{"regular", calc::Typeface::regular},
                                  Word<calc::Typeface>{"bold", calc::Typeface::bold},
                                  Word<calc::Typeface>{"serif", calc::Typeface::serif}};
constexpr std::array text_qualities = {
    Word<calc::TextQuality>{"legible", calc::TextQuality::legible},
    Word<calc::TextQuality>{"good", calc::TextQuality::good}};
constexpr std::array colour_kinds = {Word<calc::ColourKind>{"process", calc::ColourKind::process},
                                     Word<calc::ColourKind>{"spot", calc::ColourKind::spot},
                                     Word<calc::ColourKind>{"white", calc::ColourKind::white},
                                     Word<calc::ColourKind>{"varnish", calc::ColourKind::varnish},
                                     Word<calc::ColourKind>{"primer", calc::ColourKind::primer}};
constexpr std::array families = {Word<calc::InkFamily>{"uv", calc::InkFamily::uv},
                                 Word<calc::InkFamily>{"aqueous", calc::InkFamily::aqueous},
                                 Word<calc::InkFamily>{"solvent", calc::InkFamily::solvent},
                                 Word<calc::InkFamily>{"oil", calc::InkFamily::oil}};
constexpr std::array absorbencies = {Word<calc::Absorbency>{"none", calc::Absorbency::none},
                                     Word<calc::Absorbency>{"low", calc::Absorbency::low},
                                     Word<calc::Absorbency>{"high", calc::Absorbency::high}};
constexpr std::array modes = {Word<calc::Mode>{"single", calc::Mode::single},
                              Word<calc::Mode>{"scanning", calc::Mode::scanning},
                              Word<calc::Mode>{"either", calc::Mode::either}};
constexpr std::array wishes = {Word<calc::Wish>{"must", calc::Wish::must},
                               Word<calc::Wish>{"prefer", calc::Wish::prefer}};
constexpr std::array unit_systems = {Word<calc::UnitSystem>{"si", calc::UnitSystem::si},
                                     Word<calc::UnitSystem>{"us", calc::UnitSystem::us}};
constexpr std::array services = {Word<calc::Serviceable>{"user", calc::Serviceable::user},
                                 Word<calc::Serviceable>{"parts", calc::Serviceable::parts},
                                 Word<calc::Serviceable>{"returned", calc::Serviceable::returned},
                                 Word<calc::Serviceable>{"none", calc::Serviceable::none}};
constexpr std::array waveforms = {
    Word<calc::WaveformAccess>{"own", calc::WaveformAccess::own},
    Word<calc::WaveformAccess>{"limited", calc::WaveformAccess::limited},
    Word<calc::WaveformAccess>{"maker", calc::WaveformAccess::maker}};
constexpr std::array grey_methods = {
    Word<calc::GreyMethod>{"amplitude", calc::GreyMethod::amplitude},
    Word<calc::GreyMethod>{"subdrops", calc::GreyMethod::subdrops}};
constexpr std::array speed_points = {Word<calc::SpeedPoint>{"nozzle", calc::SpeedPoint::nozzle},
                                     Word<calc::SpeedPoint>{"one_mm", calc::SpeedPoint::one_mm}};
constexpr std::array provenances = {
    Word<calc::Provenance>{"measured", calc::Provenance::measured},
    Word<calc::Provenance>{"data_sheet", calc::Provenance::data_sheet},
    Word<calc::Provenance>{"mail", calc::Provenance::mail},
    Word<calc::Provenance>{"assumed", calc::Provenance::assumed}};
constexpr std::array pers = {
    Word<calc::Per>{"station", calc::Per::station}, Word<calc::Per>{"head", calc::Per::head},
    Word<calc::Per>{"row", calc::Per::row}, Word<calc::Per>{"channel", calc::Per::channel},
    Word<calc::Per>{"supply", calc::Per::supply}};
constexpr std::array part_kinds = {Word<PartKind>{"cable", PartKind::cable},
                                   Word<PartKind>{"mount", PartKind::mount},
                                   Word<PartKind>{"heater", PartKind::heater},
                                   Word<PartKind>{"chiller", PartKind::chiller},
                                   Word<PartKind>{"degasser", PartKind::degasser},
                                   Word<PartKind>{"filter", PartKind::filter},
                                   Word<PartKind>{"flush", PartKind::flush},
                                   Word<PartKind>{"cap", PartKind::cap},
                                   Word<PartKind>{"wipe", PartKind::wipe},
                                   Word<PartKind>{"spittoon", PartKind::spittoon},
                                   Word<PartKind>{"strike_sensor", PartKind::strike_sensor},
                                   Word<PartKind>{"pretreatment", PartKind::pretreatment},
                                   Word<PartKind>{"exhaust", PartKind::exhaust},
                                   Word<PartKind>{"ventilation", PartKind::ventilation},
                                   Word<PartKind>{"encoder", PartKind::encoder},
                                   Word<PartKind>{"product_sensor", PartKind::product_sensor},
                                   Word<PartKind>{"controller", PartKind::controller},
                                   Word<PartKind>{"alignment", PartKind::alignment},
                                   Word<PartKind>{"commissioning", PartKind::commissioning},
                                   Word<PartKind>{"training", PartKind::training}};
constexpr std::array answers = {Word<bool>{"yes", true}, Word<bool>{"no", false}};

}  // namespace

template <>
std::span<const Word<calc::Form>> words() {
  return forms;
}
template <>
std::span<const Word<calc::BodyAxis>> words() {
  return axes;
}
template <>
std::span<const Word<calc::JetDirection>> words() {
  return jet_directions;
}
template <>
std::span<const Word<calc::BarcodeDirection>> words() {
  return directions;
}
template <>
std::span<const Word<calc::Typeface>> words() {
  return typefaces;
}
template <>
std::span<const Word<calc::TextQuality>> words() {
  return text_qualities;
}
template <>
std::span<const Word<calc::ColourKind>> words() {
  return colour_kinds;
}
template <>
std::span<const Word<calc::InkFamily>> words() {
  return families;
}
template <>
std::span<const Word<calc::Absorbency>> words() {
  return absorbencies;
}
template <>
std::span<const Word<calc::Mode>> words() {
  return modes;
}
template <>
std::span<const Word<calc::Wish>> words() {
  return wishes;
}
template <>
std::span<const Word<calc::UnitSystem>> words() {
  return unit_systems;
}
template <>
std::span<const Word<calc::Serviceable>> words() {
  return services;
}
template <>
std::span<const Word<calc::WaveformAccess>> words() {
  return waveforms;
}
template <>
std::span<const Word<calc::GreyMethod>> words() {
  return grey_methods;
}
template <>
std::span<const Word<calc::SpeedPoint>> words() {
  return speed_points;
}
template <>
std::span<const Word<calc::Provenance>> words() {
  return provenances;
}
template <>
std::span<const Word<calc::Per>> words() {
  return pers;
}
template <>
std::span<const Word<calc::PartKind>> words() {
  return part_kinds;
}
template <>
std::span<const Word<bool>> words() {
  return answers;
}

}  // namespace intake
