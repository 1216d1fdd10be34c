/// Rows of the tables of fields: each binds a key to a member and says all there is to say of it.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "calc/catalogue.h"
#include "calc/request.h"
#include "intake/field.h"
#include "intake/node.h"
#include "intake/number.h"
#include "intake/sink.h"
#include "intake/words.h"

namespace intake {

/// Where reading stands: the sink of findings, the list of inputs that grows, the kind of origin
/// values get, and the section's real key (`ink.black`).
struct Scribe {
  Sink& sink;
  std::vector<calc::Input>* inputs = nullptr;
  calc::OriginKind kind = calc::OriginKind::given;
  std::string prefix;  ///< of this section's fields
  std::string base;    ///< of its sub-sections, with the point; the root's is empty

  /// The scribe of a sub-section.
  Scribe inside(const std::string& section) const {
    return {sink, inputs, kind, base + section, base + section + "."};
  }

  std::string key(const Node& field) const { return prefix + "." + field.key; }
  /// The value's place and text.
  calc::Origin origin(const Node& field) const;
  /// Adds the finding at the field's value.
  void report(const Node& field, const Fault& fault) const;
  /// Adds to the inputs a value that is text.
  void note_text(const Node& field, std::string_view text) const;
  /// Adds to the inputs a number; `text` beside it for points, pairs and lists.
  void note_number(const Node& field, const Span& listed, std::string_view unit,
                   std::string_view text = {}) const;
};

/// A row of the table of fields of a section that is read into an S.
template <class S>
struct Row {
  FieldInfo info;
  std::function<void(S&, const Node&, const FieldInfo&, Scribe&)> bind;

  /// Accepted numbers, in the row's unit.
  Row within(double least, double most) const {
    Row row = *this;
    row.info.least = least;
    row.info.most = most;
    return row;
  }
  /// Takes `30..60 m/min`; `governing` end is its value.
  Row demand(std::string_view governing) const { return spread("demand", governing); }
  /// Takes `2 mm +- 0.3 mm`.
  Row uncertain() const { return spread("uncertain", ""); }
  Row demand_or_uncertain(std::string_view governing) const { return spread("both", governing); }
  /// Must be a range, whose both ends are kept.
  Row window() const { return spread("window", "low"); }
  /// What holds when it is absent.
  Row otherwise(std::string_view fallback) const {
    Row row = *this;
    row.info.fallback = fallback;
    return row;
  }
  Row required() const {
    Row row = *this;
    row.info.required = true;
    return row;
  }
  /// Stands in the document but moves no figure.
  Row printed_only() const {
    Row row = *this;
    row.info.printed_only = true;
    return row;
  }

 private:
  Row spread(std::string_view kind, std::string_view governing) const {
    Row row = *this;
    row.info.spread = kind;
    row.info.governing = governing;
    return row;
  }
};

/// What all rows start from; `units` are those of the dimension. Pre: views of static text.
FieldInfo field_info(std::string_view key, std::string_view type, std::string_view dimension,
                     std::string_view unit, std::string_view meaning);

/// The span of a field's value, reported and listed; nullopt when it has a fault.
std::optional<Span> take_span(const Node& node, const FieldInfo& info, Scribe& scribe);
/// The whole number of a field's value, reported and listed.
std::optional<int> take_integer(const Node& node, const FieldInfo& info, Scribe& scribe);
/// The word's index in info.words, reported and listed.
std::optional<std::size_t> take_word(const Node& node, const FieldInfo& info, Scribe& scribe);
/// The index of each word of a list.
std::optional<std::vector<std::size_t>> take_words(const Node& node, const FieldInfo& info,
                                                   Scribe& scribe);
/// Measures of a list, at least one.
std::optional<std::vector<Measure>> take_measures(const Node& node, const FieldInfo& info,
                                                  Scribe& scribe);
/// The value as it stands, listed.
std::optional<std::string> take_text(const Node& node, Scribe& scribe);
/// Names separated by semicolons.
std::optional<std::vector<std::string>> take_names(const Node& node, Scribe& scribe);
/// An amount with its currency.
std::optional<calc::Price> take_price(const Node& node, const FieldInfo& info, Scribe& scribe);
std::optional<calc::ResolutionPair> take_pair(const Node& node, const FieldInfo& info,
                                              Scribe& scribe);
std::optional<std::vector<calc::ViscosityPoint>> take_points(const Node& node,
                                                             const FieldInfo& info, Scribe& scribe);

/// `ethanol 60 %; ethyl acetate 40 %`: names with their shares, which may be left out of one alone.
std::optional<std::vector<calc::SolventShare>> take_solvents(const Node& node, Scribe& scribe);

/// What a text must look like: nullopt, or the fault.
using TextCheck = std::optional<Fault> (*)(std::string_view);
std::optional<Fault> check_date(std::string_view text);
std::optional<Fault> check_revision(std::string_view text);
std::optional<Fault> check_currency(std::string_view text);
std::optional<Fault> check_language(std::string_view text);
std::optional<Fault> check_short(std::string_view text);
std::optional<Fault> check_any(std::string_view text);

template <class T>
calc::Value<T> spread_value(const Span& span, calc::Origin origin) {
  if constexpr (std::is_same_v<T, double>) {
    return {span.value.si, span.low.si, span.high.si, span.spread, std::move(origin)};
  } else {
    return {T::from_si(span.value.si), T::from_si(span.low.si), T::from_si(span.high.si),
            span.spread, std::move(origin)};
  }
}

/// A number with a unit, kept in SI.
template <class S, class T>
Row<S> quantity(std::string_view key, calc::Given<T> S::*member, std::string_view dimension,
                std::string_view unit, std::string_view meaning) {
  return {field_info(key, "quantity", dimension, unit, meaning),
          [member](S& to, const Node& node, const FieldInfo& info, Scribe& scribe) {
            if (const auto span = take_span(node, info, scribe)) {
              to.*member = spread_value<T>(*span, scribe.origin(node));
            }
          }};
}

/// A number kept in the row's unit: plain ones, and those calc holds in ppm.
template <class S>
Row<S> number(std::string_view key, calc::Given<double> S::*member, std::string_view dimension,
              std::string_view unit, std::string_view meaning) {
  return {field_info(key, dimension.empty() ? "number" : "quantity", dimension, unit, meaning),
          [member](S& to, const Node& node, const FieldInfo& info, Scribe& scribe) {
            if (const auto span = take_span(node, info, scribe)) {
              to.*member = {span->value.listed, span->low.listed, span->high.listed, span->spread,
                            scribe.origin(node)};
            }
          }};
}

template <class S>
Row<S> integer(std::string_view key, calc::Given<int> S::*member, std::string_view meaning) {
  return {field_info(key, "integer", "", "", meaning),
          [member](S& to, const Node& node, const FieldInfo& info, Scribe& scribe) {
            if (const auto value = take_integer(node, info, scribe)) {
              to.*member = calc::exactly(*value, scribe.origin(node));
            }
          }};
}

template <class S>
Row<S> text(std::string_view key, calc::Given<std::string> S::*member, TextCheck check,
            std::string_view meaning) {
  return {field_info(key, check == check_date ? "date" : "text", "", "", meaning),
          [member, check](S& to, const Node& node, const FieldInfo&, Scribe& scribe) {
            if (const auto fault = check(node.value)) {
              scribe.report(node, *fault);
            } else if (auto value = take_text(node, scribe)) {
              to.*member = calc::exactly(std::move(*value), scribe.origin(node));
            }
          }};
}

template <class E>
FieldInfo word_info(std::string_view key, std::string_view type, std::string_view meaning) {
  FieldInfo info = field_info(key, type, "", "", meaning);
  for (const Word<E>& word : words<E>()) info.words.push_back(word.text);
  return info;
}

/// One of an enumeration's words, or yes and no.
template <class S, class E>
Row<S> word(std::string_view key, calc::Given<E> S::*member, std::string_view meaning) {
  return {word_info<E>(key, std::is_same_v<E, bool> ? "yes/no" : "word", meaning),
          [member](S& to, const Node& node, const FieldInfo& info, Scribe& scribe) {
            if (const auto k = take_word(node, info, scribe)) {
              to.*member = calc::exactly(words<E>()[*k].value, scribe.origin(node));
            }
          }};
}

template <class S, class E>
Row<S> word_list(std::string_view key, calc::Given<std::vector<E>> S::*member,
                 std::string_view meaning) {
  return {word_info<E>(key, "list", meaning),
          [member](S& to, const Node& node, const FieldInfo& info, Scribe& scribe) {
            const auto indices = take_words(node, info, scribe);
            if (!indices) return;
            std::vector<E> list;
            for (const std::size_t k : *indices) list.push_back(words<E>()[k].value);
            to.*member = calc::exactly(std::move(list), scribe.origin(node));
          }};
}

/// A list of measures of one dimension, or of plain numbers.
template <class S, class T>
Row<S> quantity_list(std::string_view key, calc::Given<std::vector<T>> S::*member,
                     std::string_view dimension, std::string_view unit, std::string_view meaning) {
  return {field_info(key, "list", dimension, unit, meaning),
          [member](S& to, const Node& node, const FieldInfo& info, Scribe& scribe) {
            const auto measures = take_measures(node, info, scribe);
            if (!measures) return;
            std::vector<T> list;
            for (const Measure& m : *measures) {
              list.push_back(spread_value<T>(Span{m, m, m, {}}, {}).value);
            }
            to.*member = calc::exactly(std::move(list), scribe.origin(node));
          }};
}

template <class S>
Row<S> price(std::string_view key, calc::Given<calc::Price> S::*member, std::string_view dimension,
             std::string_view unit, std::string_view meaning) {
  return {field_info(key, "price", dimension, unit, meaning),
          [member](S& to, const Node& node, const FieldInfo& info, Scribe& scribe) {
            if (auto value = take_price(node, info, scribe)) {
              to.*member = calc::exactly(std::move(*value), scribe.origin(node));
            }
          }};
}

}  // namespace intake
