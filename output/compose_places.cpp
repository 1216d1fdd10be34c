/// Where a row or a paragraph leads: the keys of steps and places that stand in the margin.
#include <algorithm>
#include <cstddef>

#include "output/compose_context.h"
#include "output/section_list.h"

namespace output {
namespace {

constexpr std::size_t margin_line = 30;  ///< characters of small type on a line of the margin

}  // namespace

std::string Context::step_keys(std::initializer_list<std::string> ids) const {
  std::string keys;
  for (const std::string& id : ids) {
    if (!has_step(id)) continue;
    if (!keys.empty()) keys += ' ';
    keys += anchor(id);
  }
  return keys;
}

std::string Context::row_keys(const std::vector<std::string>& ids) const {
  std::string keys;
  for (const std::string& id : ids) {
    const std::string key = step_keys({id});
    if (key.empty()) continue;
    if (!keys.empty() && keys.size() + 1 + key.size() > margin_line) break;
    keys += (keys.empty() ? "" : " ") + key;
  }
  return keys;
}

bool Context::has_step(const std::string& id) const { return steps_.contains(id); }

const calc::Input* Context::input(const std::string& key) const {
  const auto found = inputs_.find(key);
  return found == inputs_.end() ? nullptr : found->second;
}

bool Context::lists_row(const std::string& row) const { return rows_.contains(row); }

std::string Context::place_of(const std::string& key) const {
  const calc::Input* const found = input(key);
  return found == nullptr ? std::string() : place_key(found->origin);
}

std::string Context::linked(const std::string& key, const std::string& text) const {
  return as_link(listed_at(*this, key), text);
}

std::string Context::to_step(const std::string& id, const std::string& text) const {
  return has_step(id) ? link_to(anchor(id), text) : text;
}

std::string Context::figure(std::initializer_list<std::string> ids, const std::string& text) const {
  return quiet(ids, escaped(text));
}

std::string Context::quiet(std::initializer_list<std::string> ids,
                           const std::string& markup) const {
  const auto* const id =
      std::find_if(ids.begin(), ids.end(), [&](const std::string& one) { return has_step(one); });
  return as_quiet_link(id == ids.end() ? std::string() : anchor(*id), markup);
}

std::string Context::figure_given(const std::string& key, const std::string& text) const {
  return as_quiet_link(listed_at(*this, key), escaped(text));
}

std::string catalogue_row(const std::string& key) {
  const std::size_t mode = key.find(".mode.");
  return key.substr(0, mode == std::string::npos ? key.rfind('.') : mode);
}

std::string link_to(std::string_view anchor, const std::string& text) {
  return "<a to=\"" + escaped(anchor) + "\">" + text + "</a>";
}

std::string as_link(const std::string& anchor, const std::string& text) {
  if (anchor.empty() || text.empty() || text.find("<a ") != std::string::npos) return text;
  return link_to(anchor, text);
}

std::string as_quiet_link(const std::string& anchor, const std::string& markup) {
  const bool has_number = markup.find_first_of("0123456789") != std::string::npos;
  if (anchor.empty() || !has_number || markup.find("<a ") != std::string::npos) return markup;
  return "<a to=\"" + escaped(anchor) + R"(" quiet="yes">)" + markup + "</a>";
}

std::string listed_at(const Context& c, const std::string& key) {
  const std::string row = catalogue_row(key);
  if (c.lists_row(row)) return input_anchor(row);
  const calc::Input* const input = c.input(key);
  const bool given = input != nullptr && input->origin.kind == calc::OriginKind::given;
  const bool derived = input != nullptr && input->origin.kind == calc::OriginKind::derived;
  if (given || (derived && is_listed(*input))) return input_anchor(key);
  return assumed_at(c, key);
}

std::string assumed_at(const Context& c, const std::string& key) {
  const auto& all = c.spec.assumptions;
  const bool known = std::any_of(all.begin(), all.end(),
                                 [&](const calc::Assumption& row) { return row.field == key; });
  return known ? input_anchor("assumed " + key) : std::string();
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
