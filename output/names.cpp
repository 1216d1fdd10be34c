#include "output/names.h"

#include <algorithm>
#include <array>

#include "output/date.h"
#include "output/digest.h"

namespace output {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_upper(char c) { return c >= 'A' && c <= 'Z'; }
bool is_lower(char c) { return c >= 'a' && c <= 'z'; }
bool is_kept(char c) { return is_digit(c) || is_upper(c) || is_lower(c) || c == '.' || c == '-'; }
bool is_continuation(char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; }

/// Names Windows keeps for devices, with or without an extension.
bool is_device(std::string_view name) {
  const std::string stem = lower_ascii(name.substr(0, name.find('.')));
  constexpr std::array<std::string_view, 4> plain{"con", "prn", "aux", "nul"};
  if (std::find(plain.begin(), plain.end(), stem) != plain.end()) return true;
  return stem.size() == 4 && (stem.starts_with("com") || stem.starts_with("lpt")) &&
         stem.back() >= '1' && stem.back() <= '9';
}

bool same_class(char a, char b) {
  return (is_digit(a) && is_digit(b)) || (is_upper(a) && is_upper(b)) ||
         (is_lower(a) && is_lower(b));
}

/// Counts the run of like characters at the end up by one; a run that overflows grows by one.
std::string count_up(std::string revision) {
  std::size_t place = revision.size();
  const char kind = revision.back();
  while (place > 0 && same_class(revision[place - 1], kind)) {
    char& c = revision[--place];
    if (c != '9' && c != 'Z' && c != 'z') return ++c, revision;
    c = is_digit(c) ? '0' : is_upper(c) ? 'A' : 'a';
  }
  return revision.insert(place, 1, is_digit(kind) ? '1' : is_upper(kind) ? 'A' : 'a');
}

}  // namespace

std::string lower_ascii(std::string_view text) {
  std::string lower(text);
  for (char& c : lower) {
    if (is_upper(c)) c = static_cast<char>(c - 'A' + 'a');
  }
  return lower;
}

std::string name_part(std::string_view text) {
  constexpr std::size_t longest = 60;
  std::string name;
  for (const char c : text) {
    if (!is_continuation(c)) name += is_kept(c) ? c : '-';
  }
  name.resize(std::min(name.size(), longest));
  name.erase(0, std::min(name.find_first_not_of(".-"), name.size()));
  if (name == text && !is_device(name)) return name;
  return name + "~" + sha256(text).substr(0, 8);
}

std::string stem_without_date(std::string_view id, std::string_view revision) {
  return name_part(id) + "_r" + name_part(revision.empty() ? "A" : revision) + "_";
}

std::string stem_of(std::string_view id, std::string_view revision, std::string_view date) {
  return stem_without_date(id, revision).append(date);
}

bool revision_before(std::string_view a, std::string_view b) {
  return a.size() != b.size() ? a.size() < b.size() : a < b;
}

std::optional<std::string> next_revision(std::string_view revision) {
  constexpr std::size_t longest = 8;
  std::string next(revision.empty() ? "A" : revision);
  next = same_class(next.back(), next.back()) ? count_up(next) : next + "1";
  if (next.size() > longest) return std::nullopt;
  return next;
}

std::optional<StemParts> split_stem(std::string_view stem) {
  const std::size_t before_date = stem.rfind('_');
  if (before_date == std::string_view::npos || !is_date(stem.substr(before_date + 1))) {
    return std::nullopt;
  }
  const std::size_t before_revision = stem.rfind("_r", before_date - 1);
  if (before_date == 0 || before_revision == std::string_view::npos) return std::nullopt;
  const std::size_t revision = before_revision + 2;
  return StemParts{stem.substr(0, before_revision), stem.substr(revision, before_date - revision),
                   stem.substr(before_date + 1)};
}

}  // namespace output
