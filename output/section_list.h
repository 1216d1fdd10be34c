/// The sections of the document, each from the specification to markup. A section that has nothing
/// to say is an empty string.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "output/compose_context.h"

namespace output {

std::string front_page(const Context& context);           ///< the answer on one page
std::string changes_section(const Context& context);      ///< since the issue before
std::string requirement_section(const Context& context);  ///< given, derived, assumed
std::string conditions_section(const Context& context);   ///< conditions, warnings
std::string resolution_section(const Context& context);   ///< demands, lattice, bar code
std::string arrangement_section(const Context& context);  ///< heads, positions, plan
std::string layout_section(const Context& context);       ///< section, line-up to scale
std::string frequency_section(const Context& context);    ///< jetting frequency, speed, strokes
std::string dots_section(const Context& context);         ///< drop, dot, cover
std::string jetting_section(const Context& context);      ///< the inks in their heads
std::string drive_section(const Context& context);        ///< electronics, supply, encoder
std::string placement_section(const Context& context);    ///< drop flight, budgets of placement
std::string ink_section(const Context& context);          ///< consumption, spares
std::string stages_section(const Context& context);       ///< cure, drying
std::string services_section(const Context& context);     ///< of the building, signals, shares
std::string safety_section(const Context& context);       ///< what can hurt someone
std::string parts_section(const Context& context);        ///< bill of materials, cost
std::string heads_section(const Context& context);        ///< alternatives, rejected heads
std::string flexibility_section(const Context& context);  ///< spare room, service
std::string uncertainty_section(const Context& context);  ///< what moves the key figures
std::string edges_section(const Context& context);        ///< how far each number may move
std::string questions_section(const Context& context);    ///< what the customer is asked
std::string checks_section(const Context& context);       ///< before commitment
std::string control_section(const Context& context);      ///< revisions, prices, sign-off
std::string terms_section(const Context& context, std::string_view body);  ///< those used in it
std::string trace_section(const Context& context);                         ///< every step
std::string sources_section(const Context& context);  ///< sources, catalogue values used
std::string record_section(const Context& context);   ///< the request's text, digests

/// The chosen station in one sentence, as markup. At least one group is chosen.
std::string station_sentence(const Context& context);
/// The steps of its figures: of several groups the heads of each.
std::string station_keys(const Context& context);
/// Whether the requirement lists an input: a derived zero says that its field does not apply.
bool is_listed(const calc::Input& input);
/// The key of the words that say an input as a requirement, those of its own word where there are
/// some; empty where it demands nothing.
std::string shall_words(const Context& context, const calc::Input& input);
/// "s-given-KEY", the anchor of an input's row; what the trace links to.
std::string input_anchor(const std::string& key);
/// Questions of one code.
using AlikeQuestions = std::vector<const calc::Question*>;
/// Questions in their order, those of one code together.
std::vector<AlikeQuestions> grouped_questions(const Context& context);
/// Adds SIDE: the chosen station and its alternatives figure by figure. A station is chosen.
void add_side_by_side(const Context& context, Values& values);
/// Power a stage takes while printing, "at least" where it is a lower bound, as markup. It is
/// known.
std::string stage_power_text(const Context& context, const calc::Stage& stage);
/// Whether what besides water an ink holds is unknown, so that no air is reckoned for it.
bool cosolvents_unknown(const Context& context);
/// Who has to show that a condition is met, as markup.
std::string condition_owner(const Context& context, const calc::Notice& condition);
/// Keys of the words for who can mend a head, and who shapes its waveform.
std::string serviceable_key(calc::Serviceable who);
std::string waveform_key(calc::WaveformAccess access);
/// What the answers move; whether anything passes, where one of them could change that.
std::string question_effect(const Context& context, const AlikeQuestions& alike);
/// Sets NUMBER, TEXT and ASSUMED, what is taken until they are answered.
void set_question(const Context& context, Values& row, std::size_t number,
                  const AlikeQuestions& alike);
/// The letter with the open questions, in plain text; empty without one. `head` has the markers of
/// every document's head and gets the rest.
std::string letter_text(const Context& context, Values& head);
/// What the bill does not contain, in words; a station is chosen.
std::string not_contained(const Context& context);
/// The unpriced lines of the bill by their designations, each once, as markup.
std::vector<std::string> unpriced_items(const Context& context, const calc::Station& station);
/// The same of several stations, each item once.
std::vector<std::string> unpriced_items(const Context& context,
                                        const std::vector<const calc::Station*>& stations);
/// The row of the catalogue that has the longest lead time; empty where none is known.
std::string slowest_row(const calc::Station& station);
/// Whether a printhead is among them.
bool heads_unpriced(const calc::Station& station);
/// The acceptance figure of a check in words, as markup.
std::string check_acceptance(const Context& context, const calc::Check& check);
/// What the design answers to the requirement of that key, as markup.
std::string requirement_answer(const Context& context, const std::string& key);
/// The module of the bar code as printed, of both axes where they differ, as markup; empty where
/// none is printed.
std::string module_answer(const Context& context);
/// Whether it lies in the range of its symbol: of the axis and group that fails, if one does.
std::string symbol_answer(const Context& context);
/// Its part for what is asked of service, solids, mode and jetting temperature; empty for others.
std::string demand_answer(const Context& context, const std::string& key);
/// What the answer leaves of that requirement, "+49 %", or a dash where it is no figure; negative
/// where it falls short.
std::string requirement_margin(const Context& context, const std::string& key);
/// Where the request states what a head fails by, as margin keys.
std::string reason_key(const Context& context, const calc::Reason& reason);
/// The smallest change that lets something fit, or that there is none, as markup.
std::string nearest_miss_text(const Context& context);
/// The demands without which something fits, as markup; empty where there are none.
std::string musts_text(const Context& context);
/// The rejected head that came nearest: fewest reasons, then the catalogue's order; null: none.
const calc::RejectedHead* nearest_head(const calc::Specification& spec);
/// A value without its own form: a share as percent, else with its unit; `high` tells a share (at
/// most 1) from a factor.
std::string plain_value(const Context& context, double value, double high, const std::string& unit);
/// "15 % to 30 %" of a range, its unit once; empty where it is none.
std::string plain_range(const Context& context, const std::optional<double>& low,
                        const std::optional<double>& high, const std::string& unit);
/// Questions of one code in words, as markup, asked at once for all the names they concern. At
/// least one.
std::string question_text(const Context& context, const AlikeQuestions& alike);

}  // namespace output
