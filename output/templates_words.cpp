#include "output/templates_words.h"

#include <algorithm>
#include <cstddef>
#include <stdexcept>

namespace output {
namespace {

constexpr std::string_view blanks = " \t\r";

[[noreturn]] void fail(const std::string& file, int line, const std::string& message) {
  throw std::runtime_error(file + ":" + std::to_string(line) + ": " + message);
}

std::string_view trimmed(std::string_view text) {
  const std::size_t start = text.find_first_not_of(blanks);
  if (start == std::string_view::npos) return {};
  return text.substr(start, text.find_last_not_of(blanks) - start + 1);
}

}  // namespace

void Words::take_line(const std::string& file, int line, std::string_view content) {
  const std::string_view text = trimmed(content);
  if (text.empty() || text.front() == '#') return;
  if (blanks.find(content.front()) != std::string_view::npos) {
    if (last_ == nullptr) fail(file, line, "a text goes on, but none has begun");
    last_->text += ' ';
    last_->text += text;
    return;
  }
  const std::size_t equals = text.find('=');
  if (equals == std::string_view::npos) fail(file, line, "no = after the key");
  const std::string key(trimmed(text.substr(0, equals)));
  const std::string value(trimmed(text.substr(equals + 1)));
  if (value.empty()) fail(file, line, "no text for " + key);
  const auto [place, added] = entries_.try_emplace(key, Entry{value, file, line});
  if (!added) {
    fail(file, line, key + " stands already in line " + std::to_string(place->second.line));
  }
  last_ = &place->second;
}

void Words::read(const std::string& file, std::string_view text) {
  last_ = nullptr;
  int line = 0;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    take_line(file, ++line, text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
}

const std::string& Words::text(std::string_view key) const { return entry(key).text; }

std::vector<std::string> Words::keys(std::string_view prefix) const {
  std::vector<std::string> found;
  for (auto it = entries_.lower_bound(prefix);
       it != entries_.end() && it->first.starts_with(prefix); ++it) {
    found.push_back(it->first);
  }
  return found;
}

const Words::Entry& Words::entry(std::string_view key) const {
  const auto found = entries_.find(key);
  if (found == entries_.end()) throw std::out_of_range("no words for " + std::string(key));
  return found->second;
}

std::pair<std::string, int> Words::place(std::string_view key) const {
  return {entry(key).file, entry(key).line};
}

std::set<std::string> Words::arguments(std::string_view key) const {
  const std::string& text = entry(key).text;
  std::set<std::string> names;
  for (std::size_t at = text.find("{{"); at != std::string::npos; at = text.find("{{", at + 2)) {
    const std::size_t end = std::min(text.find("}}", at), text.size());
    names.insert(text.substr(at + 2, end - at - 2));
  }
  return names;
}

std::string Words::fill(std::string_view key, const Values& values) const {
  const Entry& entry = this->entry(key);
  std::string filled;
  std::size_t at = 0;
  for (std::size_t open = entry.text.find("{{"); open != std::string::npos;
       open = entry.text.find("{{", at)) {
    const std::size_t close = std::min(entry.text.find("}}", open), entry.text.size());
    const std::string_view name = std::string_view(entry.text).substr(open + 2, close - open - 2);
    filled.append(entry.text, at, open - at);
    const auto text = values.texts().find(name);
    const auto markup = values.markups().find(name);
    if (text != values.texts().end()) {
      filled += escaped(text->second);
    } else if (markup != values.markups().end()) {
      filled += markup->second;
    } else {
      fail(entry.file, entry.line,
           "argument {{" + std::string(name) + "}} of " + std::string(key) + " is not set");
    }
    at = std::min(close + 2, entry.text.size());
  }
  return filled.append(entry.text, at);
}

}  // namespace output
