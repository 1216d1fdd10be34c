#include "intake/words.h"

#include <doctest/doctest.h>

#include <set>
#include <string>

namespace {

/// Every word leads to its enumerator and back, and no two are the same.
template <class E>
void check_words(std::size_t count) {
  std::set<std::string> texts;
  std::set<E> values;
  for (const intake::Word<E>& word : intake::words<E>()) {
    CAPTURE(word.text);
    CHECK(texts.insert(std::string(word.text)).second);
    CHECK(values.insert(word.value).second);
    CHECK(intake::from_word<E>(word.text) == word.value);
    CHECK(intake::to_word(word.value) == word.text);
  }
  CHECK(texts.size() == count);
  CHECK(!intake::from_word<E>("no such word"));
}

}  // namespace

TEST_CASE("words and enumerators are one to one and complete") {
  // The count is that of the enumeration in calc: its last enumerator plus one.
  const auto upto = [](auto last) { return static_cast<std::size_t>(last) + 1; };
  check_words<calc::Form>(upto(calc::Form::cylinder));
  check_words<calc::BarcodeDirection>(upto(calc::BarcodeDirection::along));
  check_words<calc::Typeface>(upto(calc::Typeface::serif));
  check_words<calc::TextQuality>(upto(calc::TextQuality::good));
  check_words<calc::ColourKind>(upto(calc::ColourKind::primer));
  check_words<calc::InkFamily>(upto(calc::InkFamily::oil));
  check_words<calc::Absorbency>(upto(calc::Absorbency::high));
  check_words<calc::Mode>(upto(calc::Mode::either));
  check_words<calc::Wish>(upto(calc::Wish::prefer));
  check_words<calc::UnitSystem>(upto(calc::UnitSystem::us));
  check_words<calc::Serviceable>(upto(calc::Serviceable::none));
  check_words<calc::WaveformAccess>(upto(calc::WaveformAccess::maker));
  check_words<calc::GreyMethod>(upto(calc::GreyMethod::subdrops));
  check_words<calc::SpeedPoint>(upto(calc::SpeedPoint::one_mm));
  check_words<calc::Provenance>(upto(calc::Provenance::assumed));
  check_words<calc::Per>(upto(calc::Per::supply));
  check_words<calc::PartKind>(upto(calc::PartKind::training));
  check_words<bool>(2);
}
