#include "intake/table.h"

#include <algorithm>
#include <map>

#include "intake/codes.h"
#include "intake/suggest.h"

namespace intake {
namespace {

using Verdict = SectionReader::Verdict;
constexpr int longest_name = 60;

std::string quoted(std::string_view text) {
  return "\"" + std::string(text.substr(0, 60)) + (text.size() > 60 ? "...\"" : "\"");
}

/// `image` of `image.width`, `ink` of `ink.NAME.price`.
std::string_view first_part(std::string_view key) { return key.substr(0, key.find('.')); }

/// The sections in which a key stands, `image, product`.
std::string sections_with(std::string_view key, calc::OriginKind kind) {
  const auto all = kind == calc::OriginKind::catalogue ? catalogue_fields() : request_fields();
  std::vector<std::string_view> sections;
  for (const FieldInfo& info : all) {
    const bool is_new = sections.empty() || sections.back() != first_part(info.key);
    if (last_part(info.key) == key && is_new) sections.push_back(first_part(info.key));
  }
  return joined(sections);
}

bool good_name(std::string_view name) {
  if (name.empty() || code_points(name) > longest_name || trim(name) != name) return false;
  return name.find_first_of(".;[]=<>&\"\t\r\n") == std::string_view::npos;
}

/// Whether an element must be a section: it holds elements or has a name.
bool looks_like_section(const Node& node) {
  return node.form == Node::Form::section || node.labelled || !node.children.empty();
}

std::string place_of(const Node& node, const Scribe& scribe) {
  const SourceText& text = scribe.sink.text();
  return text.name() + ":" + std::to_string(text.line_of(node.place.offset)) + ":" +
         std::to_string(text.column_of(node.place.offset));
}

std::string identity(const Node& node) {
  return node.labelled ? node.key + "." + node.label : node.key;
}

}  // namespace

std::string_view last_part(std::string_view key) { return key.substr(key.rfind('.') + 1); }

calc::Origin section_origin(const Node& section, const Scribe& scribe) {
  const SourceText& text = scribe.sink.text();
  return {scribe.kind, text.name(), text.line_of(section.place.offset),
          text.column_of(section.place.offset),
          std::string(text.text().substr(section.place.offset, section.place.length))};
}

std::vector<Verdict> SectionReader::judge(const Node& section, Scribe& scribe) const {
  std::vector<Verdict> verdicts;
  std::map<std::string, const Node*> seen;
  for (const Node& child : section.children) {
    const auto kind = std::find(kinds_.begin(), kinds_.end(), child.key);
    const bool is_section = kind != kinds_.end() && child.form != Node::Form::field;
    Verdict verdict;
    if (is_section) {
      verdict = judge_section(child, static_cast<std::size_t>(kind - kinds_.begin()), scribe);
    } else {
      verdict = judge_field(child, scribe);
    }
    const auto [first, is_new] = seen.emplace(identity(child), &child);
    if (!is_new && verdict.kind != Verdict::Kind::pass_over) {
      Diagnostic& d =
          scribe.sink.add(is_section ? code::duplicate_section : code::duplicate_key, child.place,
                          is_section ? "section " + quoted(identity(child)) + " stands twice"
                                     : scribe.key(child) + " is given twice");
      d.notes.push_back("the first stands at " + place_of(*first->second, scribe));
      d.hint = is_section && child.labelled ? "give each its own name or leave one out"
                                            : "leave one of the two out";
      d.field = scribe.key(child);
      verdict.kind = Verdict::Kind::pass_over;
    }
    verdicts.push_back(verdict);
  }
  return verdicts;
}

Verdict SectionReader::judge_field(const Node& child, Scribe& scribe) const {
  const auto field = std::find_if(fields_.begin(), fields_.end(), [&](const FieldInfo* info) {
    return last_part(info->key) == child.key;
  });
  const bool known = field != fields_.end() && child.form != Node::Form::section;
  if (!known && looks_like_section(child)) {
    report_unknown_section(child, scribe);
    return {};
  }
  if (!known) {
    report_unknown_key(child, scribe);
    return {};
  }
  if (looks_like_section(child)) {
    Diagnostic& d = scribe.sink.add(code::stray_content, child.place,
                                    scribe.key(child) + " is a field, not a section");
    d.hint = "write its value alone between the tags";
    d.field = scribe.key(child);
    return {};
  }
  if (child.value.empty()) {
    Diagnostic& d = scribe.sink.add(code::empty_value,
                                    child.value_place.length > 0 ? child.value_place : child.place,
                                    scribe.key(child) + " is empty");
    d.hint = (*field)->required ? "give it a value: " + std::string((*field)->meaning)
                                : "give a value or leave the line out";
    d.field = scribe.key(child);
    return {Verdict::Kind::pass_over, 0};
  }
  return {Verdict::Kind::field, static_cast<std::size_t>(field - fields_.begin())};
}

Verdict SectionReader::judge_section(const Node& child, std::size_t kind, Scribe& scribe) const {
  const bool named = named_[kind];
  if (named && !child.labelled) {
    Diagnostic& d =
        scribe.sink.add(code::name_missing, child.place, "section " + child.key + " needs a name");
    d.hint = child.form == Node::Form::section ? "write [" + child.key + ".NAME]"
                                               : "write <" + child.key + " name=\"NAME\">";
    return {};
  }
  if (!named && child.labelled) {
    Diagnostic& d = scribe.sink.add(code::name_not_taken, child.label_place,
                                    "section " + child.key + " takes no name");
    d.hint = child.form == Node::Form::section ? "write [" + child.key + "]"
                                               : "write <" + child.key + ">";
    return {};
  }
  if (named && !good_name(child.label)) {
    Diagnostic& d =
        scribe.sink.add(code::bad_name, child.label.empty() ? child.place : child.label_place,
                        quoted(child.label) + " cannot be the name of a section");
    d.hint = "use 1 to 60 characters, none of . ; [ ] = < > & \"";
    return {};
  }
  if (!trim(child.value).empty()) {
    Diagnostic& d = scribe.sink.add(code::stray_content, child.value_place,
                                    "text in section " + child.key + " outside any field");
    d.hint = "put each value between the tags of its field";
  }
  return {Verdict::Kind::section, kind};
}

void SectionReader::report_unknown_key(const Node& child, Scribe& scribe) const {
  if (scribe.sink.full()) return;
  std::vector<std::string_view> keys;
  for (const FieldInfo* info : fields_) keys.push_back(last_part(info->key));
  Diagnostic& d = scribe.sink.add(code::unknown_key, child.place,
                                  "unknown key " + quoted(child.key) + " in " + scribe.prefix);
  d.field = scribe.key(child).substr(0, 200);
  const std::string_view near = nearest(child.key, keys);
  const std::string elsewhere = sections_with(child.key, scribe.kind);
  const std::string_view near_section = nearest(child.key, kinds_);
  if (!elsewhere.empty()) {
    d.hint = child.key + " stands in section " + elsewhere;
  } else if (!near.empty()) {
    d.hint = "did you mean " + std::string(near);
  } else if (!near_section.empty()) {
    d.hint = "did you mean the section " + std::string(near_section);
  } else {
    d.hint = keys.empty() ? "leave it out" : "keys that fit: " + joined(keys);
  }
}

void SectionReader::report_unknown_section(const Node& child, Scribe& scribe) const {
  if (scribe.sink.full()) return;
  Diagnostic& d =
      scribe.sink.add(code::unknown_section, child.place, "unknown section " + quoted(child.key));
  d.field = child.key.substr(0, 200);
  const std::string_view near = nearest(child.key, kinds_);
  if (!near.empty()) {
    d.hint = "did you mean " + std::string(near);
  } else {
    d.hint = kinds_.empty() ? "no section stands within this one: leave it out"
                            : "sections that fit: " + joined(kinds_);
  }
}

void SectionReader::report_missing(const Node& section, Scribe& scribe) const {
  for (const FieldInfo* info : fields_) {
    if (!info->required) continue;
    const std::string_view key = last_part(info->key);
    const bool there = std::any_of(section.children.begin(), section.children.end(),
                                   [&](const Node& child) { return child.key == key; });
    if (there) continue;
    Diagnostic& d = scribe.sink.add(code::field_missing, section.place,
                                    scribe.prefix + "." + std::string(key) + " is missing");
    d.field = scribe.prefix + "." + std::string(key);
    d.hint = "add " + std::string(key) + ": " + std::string(info->meaning);
  }
}

std::span<const FieldInfo> request_fields() {
  static const std::vector<FieldInfo> infos = request_table().infos();
  return infos;
}

std::span<const FieldInfo> catalogue_fields() {
  static const std::vector<FieldInfo> infos = catalogue_table().infos();
  return infos;
}

}  // namespace intake
