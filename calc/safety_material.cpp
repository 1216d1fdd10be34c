#include "calc/safety_material.h"

#include <algorithm>
#include <array>
#include <span>
#include <string_view>

#include "calc/safety_parts.h"

namespace calc {
namespace {

using namespace std::string_view_literals;

/// Short names stand as words of their own, the others anywhere in a word.
struct Names {
  std::span<const std::string_view> words, parts;
};

constexpr std::array plastic_words{"pp"sv, "pe"sv, "pet"sv, "pvc"sv,
                                   "ps"sv, "pc"sv, "abs"sv, "pla"sv};
constexpr std::array plastic_parts{"film"sv,  "plastic"sv, "poly"sv,  "vinyl"sv,
                                   "acryl"sv, "nylon"sv,   "folie"sv, "kunststoff"sv};
constexpr std::array paper_words{"board"sv, "card"sv};
constexpr std::array paper_parts{"paper"sv,  "papier"sv, "cardboard"sv, "paperboard"sv,
                                 "karton"sv, "pappe"sv,  "tissue"sv};
constexpr std::array dusty_words{"oak"sv,   "eiche"sv, "beech"sv,  "buche"sv, "birch"sv,
                                 "birke"sv, "pine"sv,  "kiefer"sv, "mdf"sv};
constexpr std::array dusty_parts{"cork"sv, "kork"sv, "wood"sv, "holz"sv, "pulp"sv, "zellstoff"sv};
constexpr std::array free_of_wood{"wood-free"sv, "woodfree"sv, "wood free"sv, "holzfrei"sv};
constexpr std::array nitro_parts{"nitrocellulose"sv, "cellulose nitrate"sv, "celluloid"sv,
                                 "nitrozellulose"sv, "cellulosenitrat"sv,   "nitrolack"sv,
                                 "zelluloid"sv};

bool is_letter(char c) { return c >= 'a' && c <= 'z'; }

std::string lower(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(), [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  });
  return text;
}

bool named(const std::string& text, const Names& names) {
  const auto stands_in = [&](std::string_view name) {
    return text.find(name) != std::string::npos;
  };
  if (std::any_of(names.parts.begin(), names.parts.end(), stands_in)) return true;
  for (auto from = text.begin(); from != text.end();) {
    const auto to = std::find_if_not(from, text.end(), is_letter);
    const std::string word(from, to);
    if (std::find(names.words.begin(), names.words.end(), word) != names.words.end()) return true;
    from = std::find_if(to, text.end(), is_letter);
  }
  return false;
}

/// The material, else the description of the product, by which it is known; empty where neither.
std::string known_by(const Request& request, bool (*names)(const std::string&)) {
  for (const Given<std::string>& text : {request.substrate.material, request.product.description}) {
    if (text && names(text->value)) return text->value;
  }
  return {};
}

}  // namespace

bool names_plastic(const std::string& material) {
  return named(lower(material), {plastic_words, plastic_parts});
}

bool names_paper(const std::string& material) {
  return named(lower(material), {paper_words, paper_parts});
}

bool names_dusty(const std::string& material) {
  std::string text = lower(material);
  for (const std::string_view free : free_of_wood) {
    const std::size_t at = text.find(free);
    if (at != std::string::npos) text.erase(at, free.size());
  }
  return named(text, {dusty_words, dusty_parts});
}

bool names_nitrocellulose(const std::string& material) {
  return named(lower(material), {{}, nitro_parts});
}

void material_notes(const SafetyCase& c, std::vector<Notice>& to) {
  const std::string dusty = known_by(*c.job.request, names_dusty);
  if (!dusty.empty()) {
    to.push_back({"dust_possible", {words("material", dusty)}, "substrate.material", {}});
  }
  const std::string nitro = known_by(*c.job.request, names_nitrocellulose);
  if (!nitro.empty()) {
    to.push_back({"nitrocellulose", {words("material", nitro)}, "substrate.material", {}});
  }
}

}  // namespace calc
