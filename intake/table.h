/// Tables of sections: how a tree of nodes is read into the models.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "intake/rows.h"

namespace intake {

/// What is the same for every section, whatever it is read into: judges its nodes against its keys.
class SectionReader {
 public:
  /// `keys` are those of its fields, `kinds` its sub-sections; `named` tells which of these take a
  /// name.
  SectionReader(std::vector<const FieldInfo*> fields, std::vector<std::string_view> kinds,
                std::vector<bool> named)
      : fields_(std::move(fields)), kinds_(std::move(kinds)), named_(std::move(named)) {}

  /// What to do with a child: read it as field or section number `index`, or pass it over because
  /// of a fault that was reported.
  struct Verdict {
    enum class Kind { pass_over, field, section } kind = Kind::pass_over;
    std::size_t index = 0;
  };
  /// One verdict for each child of `section`.
  std::vector<Verdict> judge(const Node& section, Scribe& scribe) const;

  /// Adds a finding for each required field that has no node.
  void report_missing(const Node& section, Scribe& scribe) const;

 private:
  Verdict judge_field(const Node& child, Scribe& scribe) const;
  Verdict judge_section(const Node& child, std::size_t kind, Scribe& scribe) const;
  void report_unknown_key(const Node& child, Scribe& scribe) const;
  void report_unknown_section(const Node& child, Scribe& scribe) const;

  std::vector<const FieldInfo*> fields_;
  std::vector<std::string_view> kinds_;
  std::vector<bool> named_;
};

/// The last part of a key.
std::string_view last_part(std::string_view key);
/// Origin of a section itself.
calc::Origin section_origin(const Node& section, const Scribe& scribe);

/// A kind of section within an S.
template <class S>
struct Section {
  std::string_view kind;
  bool named = false;
  std::function<void(S&, const Node&, Scribe&)> read;
  std::vector<FieldInfo> infos;  ///< of its rows and its sub-sections' rows
};

/// The fields and sections of an S.
template <class S>
struct Table {
  std::vector<Row<S>> rows;
  std::vector<Section<S>> sections;

  std::vector<FieldInfo> infos() const {
    std::vector<FieldInfo> all;
    for (const Row<S>& row : rows) all.push_back(row.info);
    for (const Section<S>& section : sections) {
      all.insert(all.end(), section.infos.begin(), section.infos.end());
    }
    return all;
  }
};

/// Reads all fields and sections of a node into `to`, reporting every fault.
template <class S>
void read_section(const Table<S>& table, S& to, const Node& node, Scribe& scribe) {
  std::vector<const FieldInfo*> fields;
  std::vector<std::string_view> kinds;
  std::vector<bool> named;
  for (const Row<S>& row : table.rows) fields.push_back(&row.info);
  for (const Section<S>& section : table.sections) {
    kinds.push_back(section.kind);
    named.push_back(section.named);
  }
  const SectionReader reader(std::move(fields), std::move(kinds), std::move(named));
  const auto verdicts = reader.judge(node, scribe);
  for (std::size_t i = 0; i < verdicts.size(); ++i) {
    using Kind = SectionReader::Verdict::Kind;
    const Node& child = node.children[i];
    if (verdicts[i].kind == Kind::field) {
      const Row<S>& row = table.rows[verdicts[i].index];
      row.bind(to, child, row.info, scribe);
    } else if (verdicts[i].kind == Kind::section) {
      table.sections[verdicts[i].index].read(to, child, scribe);
    }
  }
  reader.report_missing(node, scribe);
}

/// A section that stands at most once and is a member of S.
template <class S, class M>
Section<S> section(std::string_view kind, M S::*member, Table<M> table) {
  auto infos = table.infos();
  return {kind, false,
          [kind, member, table = std::move(table)](S& to, const Node& node, Scribe& scribe) {
            Scribe inner = scribe.inside(std::string(kind));
            read_section(table, to.*member, node, inner);
          },
          std::move(infos)};
}

/// A named section that repeats; each becomes an element of the vector. A
/// catalogue row keeps its inputs itself.
template <class S, class M>
Section<S> repeated(std::string_view kind, std::vector<M> S::*member, Table<M> table) {
  auto infos = table.infos();
  return {kind, true,
          [kind, member, table = std::move(table)](S& to, const Node& node, Scribe& scribe) {
            M element;
            element.name = node.label;
            element.where = section_origin(node, scribe);
            Scribe inner = scribe.inside(std::string(kind) + "." + node.label);
            if constexpr (std::is_base_of_v<calc::Row, M>) {
              element.element = kind;
              inner.inputs = &element.inputs;
            }
            read_section(table, element, node, inner);
            (to.*member).push_back(std::move(element));
          },
          std::move(infos)};
}

/// The rows of a member as rows of the whole.
template <class S, class M>
std::vector<Row<S>> lifted(M S::*member, std::vector<Row<M>> rows) {
  std::vector<Row<S>> out;
  out.reserve(rows.size());
  for (Row<M>& row : rows) {
    out.push_back({row.info, [member, bind = std::move(row.bind)](
                                 S& to, const Node& node, const FieldInfo& info, Scribe& scribe) {
                     bind(to.*member, node, info, scribe);
                   }});
  }
  return out;
}

const Table<calc::Request>& request_table();
const Table<calc::Catalogue>& catalogue_table();

}  // namespace intake
