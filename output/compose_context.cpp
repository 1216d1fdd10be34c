#include "output/compose_context.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

#include "output/format.h"

namespace output {
namespace {

constexpr std::string_view base_language = "en";

/// A number of a notice: one more digit than elsewhere, so that value and limit differ on paper;
/// the unit "1" marks a share, which reads as percent.
std::string argument_text(double value, const std::string& unit) {
  return unit == "1" ? with_unit(value * 100, "%", 4) : with_unit(value, unit, 4);
}

std::string capitals(std::string_view text) {
  std::string upper(text);
  std::transform(upper.begin(), upper.end(), upper.begin(), [](char c) {
    return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
  });
  return upper;
}

/// The key of a field's words: the names of repeated sections become NAME.
/// "ink.black.viscosity" -> "ink.NAME.viscosity" with "black".
std::pair<std::string, std::string> split_name(const std::string& key) {
  constexpr std::array<std::string_view, 8> repeated{"colour", "ink",  "head",  "board",
                                                     "supply", "lamp", "dryer", "part"};
  const std::size_t first = key.find('.');
  const std::size_t last = key.rfind('.');
  const bool has_name =
      first != std::string::npos && last > first &&
      std::find(repeated.begin(), repeated.end(), key.substr(0, first)) != repeated.end();
  if (!has_name) return {key, {}};
  std::string name = key.substr(first + 1, last - first - 1);
  return {key.substr(0, first) + ".NAME" + key.substr(last), std::move(name)};
}

}  // namespace

Context::Context(const calc::Specification& specification, const calc::Request& source,
                 const Templates& house)
    : spec(specification),
      request(source),
      templates(house),
      language_(house.has_language(specification.language) ? specification.language
                                                           : std::string(base_language)) {
  for (const calc::Step& step : spec.trace) steps_.insert(step.id);
  for (const calc::Input& input : spec.inputs) inputs_.emplace(input.key, &input);
}

std::string Context::words(const std::string& key, Arguments arguments) const {
  Values values;
  for (const auto& [name, text] : arguments) values.set(name, text);
  return templates.words(language_, key, values);
}

std::string Context::counted(const std::string& key, std::size_t count, Arguments arguments) const {
  const std::string one = key + ".one";
  return words(count == 1 && has_words(one) ? one : key, arguments);
}

std::string Context::words_or(const std::string& key, std::string_view fallback) const {
  return has_words(key) ? words(key) : escaped(fallback);
}

bool Context::has_words(const std::string& key) const {
  return templates.has_words(language_, key);
}

std::string Context::expand(const std::string& name, const Values& values) const {
  return templates.expand(language_ + "/" + name + ".tpl", values);
}

std::string Context::variant(const std::string& key, const std::string& subject) const {
  const std::string whole = key + "." + subject;
  return !subject.empty() && has_words(whole) ? whole : key;
}

std::string Context::notice(std::string_view kind, const calc::Notice& notice) const {
  Values values;
  std::string subject;
  for (const calc::Arg& arg : notice.args) {
    const auto* const text = std::get_if<std::string>(&arg.value);
    if (text != nullptr) {
      values.set_markup(capitals(arg.name), words_or("name." + *text, *text));
      if (arg.name == "subject") subject = *text;
    } else {
      values.set(capitals(arg.name), argument_text(std::get<double>(arg.value), arg.unit));
    }
  }
  values.set_markup("FIELD", field(notice.field));
  const std::string key = std::string(kind) + "." + notice.code;
  return templates.words(language_, variant(key, subject), values);
}

std::string Context::reason(const calc::Reason& reason) const {
  Values values;
  values.set("VALUE", argument_text(reason.value, reason.unit));
  values.set("LIMIT", argument_text(reason.limit, reason.unit));
  values.set("SHORTFALL", argument_text(std::abs(reason.limit - reason.value), reason.unit));
  values.set_markup("SUBJECT", words_or("name." + reason.subject, reason.subject));
  values.set("GROUP", reason.group);
  return templates.words(language_, variant("reason." + reason.code, reason.subject), values);
}

std::string Context::field(const std::string& key) const {
  const auto [pattern, name] = split_name(key);
  const std::string text = "field." + pattern;
  if (!has_words(text)) return "<code>" + escaped(key) + "</code>";
  return words(text, {{"NAME", name}});
}

std::string Context::field(const std::string& pattern, const std::vector<std::string>& keys) const {
  const std::string text = "field." + pattern;
  if (keys.size() == 1 || !has_words(text)) return field(keys.front());
  std::string names;
  for (std::size_t i = 0; i < keys.size(); ++i) {
    if (i > 0) names += i + 1 == keys.size() ? " " + words("and") + " " : std::string(", ");
    names += name(keys[i]);
  }
  return words(text, {{"NAME", names}});
}

std::string Context::pattern(const std::string& key) { return split_name(key).first; }

std::string Context::name(const std::string& key) { return split_name(key).second; }

std::string Context::effect(const std::string& key) const { return words_or("effect." + key, key); }

std::string Context::step_keys(std::initializer_list<std::string> ids) const {
  std::string keys;
  for (const std::string& id : ids) {
    if (!has_step(id)) continue;
    if (!keys.empty()) keys += ' ';
    keys += anchor(id);
  }
  return keys;
}

bool Context::has_step(const std::string& id) const { return steps_.contains(id); }

const calc::Input* Context::input(const std::string& key) const {
  const auto found = inputs_.find(key);
  return found == inputs_.end() ? nullptr : found->second;
}

std::string Context::place_of(const std::string& key) const {
  const calc::Input* const found = input(key);
  return found == nullptr ? std::string() : place_key(found->origin);
}

std::string group_prefix(std::size_t index) { return "g" + std::to_string(index + 1); }

std::string place_key(const calc::Origin& origin) {
  if (origin.file.empty()) return {};
  const std::size_t slash = origin.file.find_last_of('/');
  const std::string name = slash == std::string::npos ? origin.file : origin.file.substr(slash + 1);
  return anchor(name) + ":" + std::to_string(origin.line);
}

std::string place_keys(const std::vector<calc::Origin>& origins) {
  std::vector<std::string> seen;
  std::string keys;
  for (const calc::Origin& origin : origins) {
    const std::string key = place_key(origin);
    if (key.empty() || std::find(seen.begin(), seen.end(), key) != seen.end()) continue;
    keys += (keys.empty() ? "" : " ") + key;
    seen.push_back(key);
  }
  return keys;
}

std::string anchor(std::string_view id) {
  std::string safe;
  for (const char byte : id) {
    if (byte == ' ' || byte == '\t' || byte == '\n' || byte == '\r') {
      safe += "\xC2\xA0";
    } else {
      safe += byte;
    }
  }
  return safe;
}

}  // namespace output
