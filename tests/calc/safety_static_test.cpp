// What charges, and what may charge (IEC TS 60079-32-1): the notes stand where nothing speaks
// against them.
#include <doctest/doctest.h>

#include "tests/calc/support/notes.h"

using namespace calc;
using support::has;
using support::notes_of;
using support::StationCase;
using support::words;

namespace {

/// A station for a substrate that is described; an empty material is not stated.
struct On : StationCase {
  On(Absorbency absorbency, const std::string& material) {
    request.substrate.absorbency = exactly(absorbency);
    job.absorbency = absorbency;
    if (!material.empty()) request.substrate.material = exactly(material);
  }
};

}  // namespace

TEST_CASE("what goes by a name of plastics may charge whatever it absorbs") {
  for (const char* material : {"polyester film", "PP, corona-treated", "Folie aus PVC",
                               "label stock on PET", "polyethylene-coated board", "vinyl"}) {
    CAPTURE(material);
    for (const Absorbency absorbency : {Absorbency::low, Absorbency::high}) {
      const auto notes = notes_of(On(absorbency, material));
      CHECK(words(notes, "static_possible", "subject") == "named");
      CHECK(words(notes, "static_possible", "material") == material);
      CHECK_FALSE(has(notes, "static"));
    }
  }
  for (const char* material : {"natural cork", "carpet, cut pile", "upper board", "oak", ""}) {
    CAPTURE(material);
    CHECK_FALSE(has(notes_of(On(Absorbency::high, material)), "static_possible"));
  }
}

TEST_CASE("a substrate of which nobody says what it absorbs may charge") {
  On c(Absorbency::low, "slab");
  CHECK_FALSE(has(notes_of(c), "static_possible"));
  c.request.substrate.absorbency.reset();
  CHECK(has(notes_of(c), "static_possible"));
  CHECK(words(notes_of(c), "static_possible", "subject").empty());
  c.request.request.region = exactly(std::string("EU"));
  CHECK(words(notes_of(c), "static_possible", "subject") == "eu");
  c.request.substrate.material = exactly(std::string("film"));
  CHECK(words(notes_of(c), "static_possible", "subject") == "named.eu");
}

TEST_CASE("paper that is dried as it runs may charge, and its like that is not does not") {
  On c(Absorbency::high, "decor base paper");
  CHECK_FALSE(has(notes_of(c), "static_possible"));
  c.set_family(InkFamily::aqueous);
  CHECK(words(notes_of(c), "static_possible", "subject") == "dried");
  c.request.request.region = exactly(std::string("EU"));
  CHECK(words(notes_of(c), "static_possible", "subject") == "dried.eu");
  c.request.substrate.material = exactly(std::string("oak"));
  CHECK_FALSE(has(notes_of(c), "static_possible"));
}

TEST_CASE("cork, wood and pulp shed dust that may explode, paper free of wood does not") {
  for (const char* material : {"natural cork", "oak", "Holz", "pulp", "MDF, sanded"}) {
    CAPTURE(material);
    CHECK(words(notes_of(On(Absorbency::high, material)), "dust_possible", "material") == material);
  }
  for (const char* material : {"wood-free paper", "holzfreies Papier", "slate", "soaked felt"}) {
    CAPTURE(material);
    CHECK_FALSE(has(notes_of(On(Absorbency::high, material)), "dust_possible"));
  }
  On c(Absorbency::high, "");
  c.request.product.description = exactly(std::string("Sanded oak barrel head"));
  CHECK(has(notes_of(c), "dust_possible"));
}

TEST_CASE("one that absorbs nothing charges, and is not told of twice") {
  const auto notes = notes_of(On(Absorbency::none, "film"));
  CHECK(has(notes, "static"));
  CHECK_FALSE(has(notes, "static_possible"));
}
