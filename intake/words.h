/// The words of the vocabulary: the one place that ties them to calc's enumerators.
#pragma once

#include <algorithm>
#include <optional>
#include <span>
#include <string_view>

#include "calc/catalogue.h"
#include "calc/request.h"

namespace intake {

template <class E>
struct Word {
  std::string_view text;
  E value;
};

/// Every word of an enumeration of calc, in the order of its enumerators. Defined for each one a
/// field holds.
template <class E>
std::span<const Word<E>> words();

template <>
std::span<const Word<calc::Form>> words();
template <>
std::span<const Word<calc::BodyAxis>> words();
template <>
std::span<const Word<calc::JetDirection>> words();
template <>
std::span<const Word<calc::BarcodeDirection>> words();
template <>
std::span<const Word<calc::Typeface>> words();
template <>
std::span<const Word<calc::TextQuality>> words();
template <>
std::span<const Word<calc::ColourKind>> words();
template <>
std::span<const Word<calc::InkFamily>> words();
template <>
std::span<const Word<calc::Absorbency>> words();
template <>
std::span<const Word<calc::Mode>> words();
template <>
std::span<const Word<calc::Wish>> words();
template <>
std::span<const Word<calc::UnitSystem>> words();
template <>
std::span<const Word<calc::Serviceable>> words();
template <>
std::span<const Word<calc::WaveformAccess>> words();
template <>
std::span<const Word<calc::GreyMethod>> words();
template <>
std::span<const Word<calc::SpeedPoint>> words();
template <>
std::span<const Word<calc::Provenance>> words();
template <>
std::span<const Word<calc::Per>> words();
template <>
std::span<const Word<calc::PartKind>> words();
template <>
std::span<const Word<bool>> words();  // yes, no

/// The enumerator of a word, or nullopt.
template <class E>
std::optional<E> from_word(std::string_view text) {
  for (const Word<E>& word : words<E>()) {
    if (word.text == text) return word.value;
  }
  return std::nullopt;
}

/// The word of an enumerator. Pre: it is one of the enumeration.
template <class E>
std::string_view to_word(E value) {
  const auto all = words<E>();
  const auto is_value = [&](const Word<E>& word) { return word.value == value; };
  return std::find_if(all.begin(), all.end(), is_value)->text;
}

}  // namespace intake
