#include "intake/read.h"

#include <algorithm>

#include "intake/checks.h"
#include "intake/codes.h"
#include "intake/ini_reader.h"
#include "intake/table.h"
#include "intake/xml_reader.h"

namespace intake {
namespace {

constexpr std::size_t largest_text = std::size_t{64} << 20U;

using Faults = std::vector<LexicalFault>;

bool ends_in(std::string_view name, std::string_view extension) {
  if (name.size() < extension.size()) return false;
  const std::string_view end = name.substr(name.size() - extension.size());
  return std::equal(end.begin(), end.end(), extension.begin(),
                    [](char a, char b) { return (a >= 'A' && a <= 'Z' ? a | 0x20 : a) == b; });
}

void report(const LexicalFault& fault, Sink& sink) {
  Diagnostic& d = sink.add(fault.code, fault.place, fault.message);
  if (!fault.note.empty()) d.notes.push_back(fault.note);
  d.hint = fault.hint;
}

/// What the bytes themselves are wrong in.
Faults byte_faults(const SourceText& text) {
  Faults faults;
  for (std::size_t i = 0; i < text.bad_bytes().size(); ++i) {
    faults.push_back({code::bad_utf8, text.bad_bytes()[i],
                      "byte " + text.bad_byte_texts()[i] + " is not UTF-8", "",
                      "save the file as UTF-8"});
  }
  for (const Place& place : text.controls()) {
    faults.push_back({code::control_character, place,
                      "control character " + shown(text.text().substr(place.offset, place.length)),
                      "", "take it out"});
  }
  return faults;
}

/// A text that cannot be looked into at all: too large, UTF-16, not text, empty.
std::optional<LexicalFault> hopeless(std::string_view text) {
  if (text.size() > largest_text) {
    return LexicalFault{
        code::too_much, {}, "the file is larger than 64 MiB", "", "split it into several files"};
  }
  const std::string_view start = text.substr(0, 2);
  if (start == "\xFF\xFE" || start == "\xFE\xFF") {
    return LexicalFault{code::encoding, {}, "the file is UTF-16", "", "save the file as UTF-8"};
  }
  if (is_binary(text)) {
    return LexicalFault{
        code::not_text, {}, "this is no text", "", "name a text in UTF-8 of XML or INI"};
  }
  if (trim(text).empty() || text == "\xEF\xBB\xBF") {
    return LexicalFault{code::no_request,
                        {},
                        "the file is empty",
                        "",
                        "write into it what it is for, or leave it out"};
  }
  return std::nullopt;
}

/// Faults of the places [start, end), taken out of `faults`.
Faults taken(Faults& faults, Place block) {
  const auto outside = [&](const LexicalFault& fault) {
    return fault.place.offset < block.offset || fault.place.offset >= block.offset + block.length;
  };
  const auto first = std::stable_partition(faults.begin(), faults.end(), outside);
  Faults inside(std::make_move_iterator(first), std::make_move_iterator(faults.end()));
  faults.erase(first, faults.end());
  return inside;
}

/// Reads a request's tree, with the faults of its text.
ReadRequest read_tree(const Node& root, const Faults& faults, const SourceText& text) {
  ReadRequest read;
  Sink sink(text);
  for (const LexicalFault& fault : faults) report(fault, sink);
  Scribe scribe{sink, &read.request.inputs, calc::OriginKind::given, "request", ""};
  read.request.where = section_origin(root, scribe);
  if (root.labelled) {
    sink.add(code::name_not_taken, root.label_place, "a request takes no name").hint =
        "leave name out; the request's id is a field";
  }
  if (!root.value.empty()) {
    sink.add(code::stray_content, root.value_place, "text outside any field").hint =
        "put each value between the tags of its field";
  }
  read_section(request_table(), read.request, root, scribe);
  check_request(read.request, sink);
  read.findings = sink.take();
  read.usable = !has_errors(read.findings);
  return read;
}

/// The entry of a file, or of what in it belongs to no request.
ReadRequest unusable(const Faults& faults, const SourceText& text) {
  ReadRequest read;
  Sink sink(text);
  for (const LexicalFault& fault : faults) report(fault, sink);
  read.findings = sink.take();
  return read;
}

LexicalFault unknown_root(const XmlDocument& document, std::string_view wanted) {
  return {code::unknown_root, document.root_place(),
          "unknown root element \"" + document.root_name().substr(0, 60) + "\"", "",
          "the root is " + std::string(wanted)};
}

/// One request of an XML document.
ReadRequest read_block(const XmlDocument& document, std::size_t i, Faults& faults,
                       const SourceText& text) {
  const Place place = document.block_place(i);
  if (document.block_name(i) != "request") {
    Faults own = taken(faults, place);
    own.push_back({code::unknown_section,
                   {place.offset + 1, document.block_name(i).size()},
                   "unknown element \"" + document.block_name(i).substr(0, 60) + "\"",
                   "",
                   "within <requests> stands <request>"});
    return unusable(own, text);
  }
  const Node root = document.block(i, faults);
  ReadRequest read = read_tree(root, taken(faults, place), text);
  read.source = text.text().substr(place.offset, place.length);
  read.source_line = text.line_of(place.offset);
  return read;
}

ReadFile read_xml_requests(std::string_view original, const SourceText& text, Faults faults) {
  ReadFile file;
  const XmlDocument document(text, faults);
  const std::string& root = document.root_name();
  if (root == "catalogue") {
    file.is_catalogue = true;
    return file;
  }
  if (!root.empty() && root != "request" && root != "requests") {
    faults.push_back(unknown_root(document, "<request> or <requests>"));
  }
  if (root == "requests" && document.block_count() == 0) {
    faults.push_back({code::no_request, document.root_place(), "no request in the file", "",
                      "put at least one <request> into <requests>"});
  }
  if (root == "request" || root == "requests") {
    for (std::size_t i = 0; i < document.block_count(); ++i) {
      file.requests.push_back(read_block(document, i, faults, text));
    }
  }
  if (root == "request") {
    file.requests.front().source = original;
    file.requests.front().source_line = 1;
  }
  if (faults.empty() && !file.requests.empty()) return file;
  // What lies in no request spoils the file only when there is one request to spoil.
  if (root == "request") {
    ReadRequest rest = unusable(faults, text);
    ReadRequest& only = file.requests.front();
    only.findings.insert(only.findings.begin(), rest.findings.begin(), rest.findings.end());
    std::stable_sort(only.findings.begin(), only.findings.end(), [](const auto& a, const auto& b) {
      return std::pair(a.line, a.column) < std::pair(b.line, b.column);
    });
    only.usable = !has_errors(only.findings);
  } else {
    file.requests.insert(file.requests.begin(), unusable(faults, text));
  }
  return file;
}

ReadFile read_ini_requests(std::string_view original, const SourceText& text, Faults faults) {
  const Node root = read_ini_tree(text, faults);
  ReadFile file;
  file.requests.push_back(read_tree(root, faults, text));
  file.requests.front().source = original;
  return file;
}

void check_has_heads(const ReadCatalogue& read, const Node& root, Sink& sink) {
  if (!read.catalogue.heads.empty()) return;
  sink.add(code::no_head, root.place, "the catalogue has no head").hint =
      "add at least one <head name=\"...\">";
}

void read_catalogue_tree(const XmlDocument& document, Faults& faults, Sink& sink,
                         ReadCatalogue& read) {
  const Node root = document.block(0, faults);
  Scribe scribe{sink, nullptr, calc::OriginKind::catalogue, "catalogue", ""};
  if (!root.value.empty()) {
    sink.add(code::stray_content, root.value_place, "text outside any field").hint =
        "put each value between the tags of its field";
  }
  read_section(catalogue_table(), read.catalogue, root, scribe);
  check_has_heads(read, root, sink);
  check_catalogue(read.catalogue, sink);
}

}  // namespace

TextKind kind_of(std::string_view name, std::string_view text) {
  if (ends_in(name, ".xml")) return TextKind::xml;
  if (ends_in(name, ".ini")) return TextKind::ini;
  if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);
  const std::string_view body = trim(text);
  return !body.empty() && body.front() == '<' ? TextKind::xml : TextKind::ini;
}

ReadFile read_requests(std::string_view name, std::string_view text) {
  if (const auto fault = hopeless(text)) {
    const SourceText nothing(name, "");
    ReadFile file;
    file.requests.push_back(unusable({*fault}, nothing));
    return file;
  }
  const SourceText source(name, text);
  Faults faults = byte_faults(source);
  return kind_of(name, text) == TextKind::xml ? read_xml_requests(text, source, std::move(faults))
                                              : read_ini_requests(text, source, std::move(faults));
}

ReadCatalogue read_catalogue(std::string_view name, std::string_view text) {
  ReadCatalogue read;
  const auto fault = hopeless(text);
  const SourceText source(name, fault ? std::string_view{} : text);
  Sink sink(source);
  Faults faults = fault ? Faults{*fault} : byte_faults(source);
  if (!fault) {
    const XmlDocument document(source, faults);
    if (document.root_name() == "catalogue") {
      read_catalogue_tree(document, faults, sink, read);
    } else if (!document.root_name().empty()) {
      faults.push_back(unknown_root(document, "<catalogue>"));
    }
  }
  for (const LexicalFault& lexical : faults) report(lexical, sink);
  read.findings = sink.take();
  read.usable = !has_errors(read.findings);
  return read;
}

}  // namespace intake
