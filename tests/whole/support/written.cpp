#include "tests/whole/support/written.h"

#include <algorithm>
#include <set>
#include <stdexcept>

namespace whole {
namespace {

bool is_named(const std::string& section) {
  static const std::set<std::string> named{"ink",  "colour", "head", "board", "supply",
                                           "lamp", "dryer",  "part", "mode"};
  return named.count(section) == 1;
}

/// The opening part of a key: its section with its name; empty for a field.
std::string section_of(const std::string& key) {
  const std::size_t dot = key.find('.');
  if (dot == std::string::npos) return {};
  return is_named(key.substr(0, dot)) ? key.substr(0, key.find('.', dot + 1)) : key.substr(0, dot);
}

std::string escaped(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c == '<') {
      out += "&lt;";
    } else if (c == '&') {
      out += "&amp;";
    } else {
      out += c;
    }
  }
  return out;
}

std::string trimmed(std::string_view text) {
  const std::size_t first = text.find_first_not_of(' ');
  if (first == std::string_view::npos) return {};
  return std::string(text.substr(first, text.find_last_not_of(' ') - first + 1));
}

void take_out(Entries& entries, const std::string& prefix) {
  entries.erase(std::remove_if(entries.begin(), entries.end(),
                               [&](const Entry& e) {
                                 return e.first == prefix || e.first.starts_with(prefix + ".");
                               }),
                entries.end());
}

void set(Entries& entries, const Entry& entry) {
  const auto found = std::find_if(entries.begin(), entries.end(),
                                  [&](const Entry& e) { return e.first == entry.first; });
  if (found != entries.end()) {
    found->second = entry.second;
  } else {
    entries.push_back(entry);
  }
}

void apply_line(Entries& entries, const std::string& line) {
  const std::size_t equals = line.find('=');
  if (line.empty()) return;
  if (line.front() == '-') {
    take_out(entries, line.substr(1));
  } else if (equals != std::string::npos) {
    set(entries, {trimmed(line.substr(0, equals)), trimmed(line.substr(equals + 1))});
  } else {
    throw std::invalid_argument("no change: " + line);
  }
}

/// Sections in order of appearance, each with the entries below it, keys less the section.
std::vector<std::pair<std::string, Entries>> by_section(const Entries& entries) {
  std::vector<std::pair<std::string, Entries>> sections;
  for (const Entry& entry : entries) {
    const std::string section = section_of(entry.first);
    auto found = std::find_if(sections.begin(), sections.end(),
                              [&](const auto& s) { return s.first == section; });
    if (found == sections.end()) found = sections.insert(sections.end(), {section, {}});
    const std::size_t start = section.empty() ? 0 : section.size() + 1;
    found->second.emplace_back(entry.first.substr(start), entry.second);
  }
  return sections;
}

std::string xml_of(const Entries& entries, const std::string& root) {
  std::string text;
  for (const auto& [section, inner] : by_section(entries)) {
    if (section.empty()) {
      for (const auto& [key, value] : inner) {
        text.append("<").append(key).append(">").append(escaped(value));
        text.append("</").append(key).append(">\n");
      }
    } else if (section == root) {
      text += xml_of(inner, root);
    } else {
      const std::string element = section.substr(0, section.find('.'));
      const bool named = element.size() < section.size();
      text += "<" + element;
      if (named) text += " name=\"" + escaped(section.substr(element.size() + 1)) + "\"";
      text += ">\n" + xml_of(inner, root) + "</" + element + ">\n";
    }
  }
  return text;
}

std::string all(const intake::Diagnostics& findings) {
  std::string text;
  for (const intake::Diagnostic& finding : findings) text += intake::to_human(finding);
  return text;
}

}  // namespace

Entries changed(Entries entries, std::string_view changes) {
  while (!changes.empty()) {
    const std::size_t end = changes.find('\n');
    apply_line(entries, trimmed(changes.substr(0, end)));
    changes = end == std::string_view::npos ? std::string_view() : changes.substr(end + 1);
  }
  return entries;
}

std::string as_ini(const Entries& request) {
  std::string text;
  for (const auto& [section, inner] : by_section(request)) {
    text += "[" + section + "]\n";
    for (const auto& [key, value] : inner) text.append(key).append(" = ").append(value) += "\n";
  }
  return text;
}

std::string as_xml(const Entries& entries, const std::string& root) {
  return "<" + root + ">\n" + xml_of(entries, root) + "</" + root + ">\n";
}

intake::ReadRequest read_request(const Entries& entries) {
  auto read = intake::read_requests("case.ini", as_ini(entries));
  if (read.requests.size() != 1 || !read.requests.front().usable) {
    throw std::runtime_error(all(read.requests.at(0).findings));
  }
  return std::move(read.requests.front());
}

calc::Catalogue read_catalogue(const Entries& entries) {
  auto read = intake::read_catalogue("catalogue.xml", as_xml(entries, "catalogue"));
  if (!read.usable) throw std::runtime_error(all(read.findings));
  return std::move(read.catalogue);
}

}  // namespace whole
