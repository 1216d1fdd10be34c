/// Where the figures of a text were worked out or given: the trace step, or the row of an input.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "output/compose_context.h"

namespace output {

/// A figure and what it is about: names of groups, heads, channels or inks that come before others.
struct Figure {
  double value = 0;
  std::string_view unit;
  std::vector<std::string> about = {};
};

/// The first step that has the figure, its id; empty for none. `at` names steps and inputs,
/// separated by blanks, in the order they are looked at: a step by its id, or from a dot on by the
/// end of it (".dot.motion"); an input ("@line.speed") is passed over.
std::string figure_step(const Context& context, std::string_view at, const Figure& figure);

/// The anchor of the first input that `at` names and the document lists, given, derived, assumed or
/// of the catalogue; empty for none. NAME stands for any that `figure` is about.
std::string figure_input(const Context& context, std::string_view at, const Figure& figure);

/// The places of an argument of a notice, its field and arguments filled in.
std::string notice_places(std::string_view kind, const calc::Notice& notice,
                          const std::string& argument);

/// The margin keys of the steps that the figures of a notice come from, `before` in front of them.
std::string notice_keys(const Context& context, std::string_view kind, const calc::Notice& notice,
                        const std::string& before);

/// A notice in words, its figures that are inputs as links to where they are listed.
std::string linked_notice(const Context& context, std::string_view kind,
                          const calc::Notice& notice);

/// Reasons against a head in words as Context::reasons() has them, their figures that are inputs,
/// or that a step or a station beside has, as links to where they stand.
std::vector<std::string> linked_reasons(const Context& context, const calc::RejectedHead& head,
                                        std::vector<std::size_t>* first = nullptr);

/// Margin keys of the steps of a check's acceptance, and the acceptance as a link to its input
/// where it is one.
std::string check_keys(const Context& context, const calc::Check& check);
std::string linked_acceptance(const Context& context, const calc::Check& check);

}  // namespace output
