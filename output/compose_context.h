/// What every section of the document needs, and the small wordings they share.
#pragma once

#include <cstddef>
#include <functional>
#include <initializer_list>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "calc/specification.h"
#include "output/format.h"
#include "output/matter.h"
#include "output/templates.h"

namespace output {

/// Language of the document where there are no texts in the one asked for.
inline constexpr std::string_view base_language = "en";

/// Arguments of a text: name and value.
using Arguments = std::initializer_list<std::pair<std::string_view, std::string>>;

/// Makes a link of an argument of a notice in words, of its field where there is no argument.
using LinkArgument = std::function<std::string(const calc::Arg*, const std::string& markup)>;
/// Makes a link of a figure of a reason in words, its "value" or its "limit".
using LinkReason = std::function<std::string(const calc::Reason&, std::string_view figure,
                                             const std::string& markup)>;

/// For what is not a whole document.
inline const Matter no_matter;

class Context {
 public:
  /// All must outlive the context.
  Context(const calc::Specification& specification, const calc::Request& source,
          const Templates& house, const Matter& what = no_matter);

  const calc::Specification& spec;
  const calc::Request& request;
  const Templates& templates;
  const Matter& matter;
  const std::string& language() const { return language_; }

  /// The words of a key, escaped for markup. Throws std::out_of_range when there are none.
  std::string words(const std::string& key, Arguments arguments = {}) const;
  /// The same with arguments that are markup.
  std::string worded(const std::string& key, Arguments markup) const;
  /// The same for a count: `key.one` when it is 1 and has words of its own.
  std::string counted(const std::string& key, std::size_t count, Arguments arguments = {}) const;
  /// The same, or `fallback` (escaped) for a key without words: names that come from the input.
  std::string words_or(const std::string& key, std::string_view fallback) const;
  bool has_words(const std::string& key) const;
  /// The key of what is said of a carriage (`key.scan`) where the heads ride on one and there are
  /// such words, else the key.
  std::string of_motion(const std::string& key) const;
  /// A text of the house ("owner"), that of the language where the style has one.
  const std::string& house(std::string_view name) const;
  /// Expands a section's template of the language.
  std::string expand(const std::string& name, const Values& values) const;

  /// A notice in words: the text of `kind.code` with its arguments in capitals, and FIELD.
  std::string notice(std::string_view kind, const calc::Notice& notice,
                     const LinkArgument& link = {}) const;
  /// A failed gate in words, with value, limit, shortfall and subject.
  std::string reason(const calc::Reason& reason) const;
  /// Reasons in words, each once: one that holds for several groups names them together; `first`
  /// gets the index of each in the list.
  std::vector<std::string> reasons(const std::vector<calc::Reason>& list,
                                   std::vector<std::size_t>* first = nullptr,
                                   const LinkReason& link = {}) const;
  /// Notices in words, each once; `first` gets the index of each in the list.
  std::vector<std::string> notices(std::string_view kind, const std::vector<calc::Notice>& list,
                                   std::vector<std::size_t>* first = nullptr) const;
  /// A number with its unit, United States units first where the request wants them.
  std::string measure(double value, std::string_view unit, int digits = 3) const;
  /// The same rounded up or down: of what must be reached, or is allowed.
  std::string bound(double value, std::string_view unit, Rounding way, int digits = 3) const;
  /// A number for a column whose head names the unit; United States units behind it where the
  /// request wants them. Micrometres of dots stay alone: their columns are of `number`.
  std::string in_column(double value, std::string_view unit, int digits = 3,
                        Rounding way = Rounding::nearest) const;
  /// A unit that is a word ("dots") in the language, any other as it is.
  std::string unit(std::string_view unit) const;
  /// A number with its unit, never in United States units.
  std::string plain(double value, std::string_view unit, int digits = 3) const;
  /// A source or range of validity of the calculation as markup, each piece between semicolons that
  /// has words in the language's; titles of books and standards have none.
  std::string said(std::string_view text) const;
  /// The keys of the words of its pieces.
  static std::vector<std::string> said_keys(std::string_view text);
  bool in_us_units() const;
  /// A request or catalogue key in words, the name of a repeated section in it.
  std::string field(const std::string& key) const;
  /// Keys of one pattern (below) in words at once, their names joined. At least one.
  std::string field(const std::string& pattern, const std::vector<std::string>& keys) const;
  /// The key with NAME for the name of a repeated section, and that name (empty when it has none).
  static std::string pattern(const std::string& key);
  static std::string name(const std::string& key);
  /// A group as it is printed: one of several channels in words, any other by its channel's name.
  std::string group_name(const std::string& name) const;
  /// The figure an assumption or a question moves, in words.
  std::string effect(const std::string& key) const;

  /// The margin keys of those trace steps that exist, separated by blanks.
  std::string step_keys(std::initializer_list<std::string> ids) const;
  /// The same for a table row of one line: only so many as stand on one line of the margin, at
  /// least one.
  std::string row_keys(const std::vector<std::string>& ids) const;
  /// Whether a trace step of that id exists.
  bool has_step(const std::string& id) const;
  /// The origin of the given input of that key as a margin key `file:line`, or empty.
  std::string place_of(const std::string& key) const;
  /// `text` (markup) as a link to where the value of that key stands: among the given or derived
  /// values, the assumptions, or in a row of the catalogue; as it is where the document has none.
  std::string linked(const std::string& key, const std::string& text) const;
  /// `text` (markup) as a link to the trace step of that id, as it is where there is none.
  std::string to_step(const std::string& id, const std::string& text) const;
  /// A figure (text) as a link to the first of those trace steps that exists, without the colour of
  /// links: for tables, in which nearly all would have it.
  std::string figure(std::initializer_list<std::string> ids, const std::string& text) const;
  /// The same of markup.
  std::string quiet(std::initializer_list<std::string> ids, const std::string& markup) const;
  /// A figure as such a link to where the value of that key stands.
  std::string figure_given(const std::string& key, const std::string& text) const;
  /// The given, derived or assumed input of that key, or null.
  const calc::Input* input(const std::string& key) const;
  /// Whether a value of that row of the catalogue is an input: "head.H-1".
  bool lists_row(const std::string& row) const;

 private:
  /// A reason said of the groups named so ("group white", "both groups").
  std::string reason_of(const calc::Reason& reason, const std::string& groups,
                        const LinkReason& link = {}) const;
  /// A text or a figure of a notice, as markup.
  std::string word_of(const calc::Notice& notice, const calc::Arg& arg) const;
  std::string figure_of(std::string_view kind, const calc::Arg& arg, int digits) const;
  /// A condition that another value of an assumption brings.
  std::string arising(std::string_view kind, const calc::Notice& notice,
                      const LinkArgument& link) const;
  /// Whether an assumption that does not hold over its range does not even to the value assumed.
  bool fails_as_assumed(const calc::Notice& notice) const;
  /// `key.subject` when it has words of its own, else the key.
  std::string variant(const std::string& key, const std::string& subject) const;

  std::string language_;
  std::set<std::string, std::less<>> steps_;
  std::map<std::string, const calc::Input*, std::less<>> inputs_;
  std::set<std::string, std::less<>> rows_;  ///< of the catalogue
};

/// The row of the catalogue that a key belongs to: "head.H-1.mode.grey.drops" -> "head.H-1".
std::string catalogue_row(const std::string& key);
/// `text` (markup) as a link to an anchor.
std::string link_to(std::string_view anchor, const std::string& text);
/// The same; as it is where there is no anchor, no text, or a link in it.
std::string as_link(const std::string& anchor, const std::string& text);
/// The same without the colour of links; as it is where there is no figure in it.
std::string as_quiet_link(const std::string& anchor, const std::string& markup);
/// The anchor of the row that lists an input as given, derived, assumed or of the catalogue; empty
/// where none does.
std::string listed_at(const Context& context, const std::string& key);
/// The anchor of the row of an assumption; empty where there is none of that key.
std::string assumed_at(const Context& context, const std::string& key);
/// Start of the trace ids of the group with that index: "g1".
std::string group_prefix(std::size_t index);
/// `file:line` of a place, without blanks so that it is one margin key; empty when it has none.
std::string place_key(const calc::Origin& origin);
/// Places separated by blanks, each once.
std::string place_keys(const std::vector<calc::Origin>& origins);
/// A name made fit to be one margin key and an anchor: blanks become no-break spaces.
std::string anchor(std::string_view id);

}  // namespace output
