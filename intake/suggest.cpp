#include "intake/suggest.h"

#include <algorithm>
#include <vector>

namespace intake {
namespace {

constexpr std::size_t longest_word = 40;

std::string lower(std::string_view text) {
  std::string out(text);
  for (char& c : out) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return out;
}

}  // namespace

int edit_distance(std::string_view a, std::string_view b) {
  std::vector<int> before;
  std::vector<int> last(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) last[j] = static_cast<int>(j);
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::vector<int> row(b.size() + 1);
    row[0] = static_cast<int>(i);
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const int replaced = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
      row[j] = std::min({last[j] + 1, row[j - 1] + 1, replaced});
      const bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
      if (swapped) row[j] = std::min(row[j], before[j - 2] + 1);
    }
    before = std::move(last);
    last = std::move(row);
  }
  return last.back();
}

std::string_view nearest(std::string_view word, std::span<const std::string_view> candidates) {
  if (word.size() > longest_word) return {};
  const std::string wanted = lower(word);
  std::string_view best;
  int least = static_cast<int>(longest_word);
  for (const std::string_view candidate : candidates) {
    const int allowed = static_cast<int>(std::max(candidate.size(), word.size())) / 3;
    const int distance = edit_distance(wanted, lower(candidate));
    if (distance <= allowed && distance < least) {
      least = distance;
      best = candidate;
    }
  }
  return best;
}

std::string joined(std::span<const std::string_view> texts) {
  std::string out;
  for (const std::string_view text : texts) {
    if (text.empty()) continue;
    if (!out.empty()) out += ", ";
    out += text;
  }
  return out;
}

}  // namespace intake
