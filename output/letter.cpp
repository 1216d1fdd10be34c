/// The letter to the customer: what is still open, in plain text.
#include <algorithm>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/report_text.h"
#include "output/section_list.h"

namespace output {
namespace {

constexpr std::size_t letter_width = 78;

void add_questions(const Context& c, Values& values, const std::vector<AlikeQuestions>& groups) {
  for (std::size_t i = 0; i < groups.size(); ++i) {
    const std::string effect = question_effect(c, groups[i]);
    Values& row = values.add("ROW");
    set_question(c, row, i + 1, groups[i]);
    if (!effect.empty()) row.add("MOVES").set_markup("EFFECT", effect);
  }
}

/// The part of the template that says how far the requirements can be met.
const char* intro(calc::Verdict verdict) {
  switch (verdict) {
    case calc::Verdict::infeasible:
      return "INFEASIBLE";
    case calc::Verdict::incomplete:
      return "INCOMPLETE";
    case calc::Verdict::feasible:
    case calc::Verdict::conditional:
      break;
  }
  return "DRAWN_UP";
}

/// Each line of the markup wrapped to the blanks it begins with; before <p> stands an empty line.
std::string lines_of(std::string_view markup) {
  std::string text;
  while (!markup.empty()) {
    const std::size_t end = std::min(markup.find('\n'), markup.size());
    const std::string_view line = markup.substr(0, end);
    markup.remove_prefix(std::min(end + 1, markup.size()));
    const std::string plain = terminal_safe(without_markup(line));
    const std::size_t indent = plain.find_first_not_of(' ');
    if (indent == std::string::npos) continue;
    if (line.starts_with("<p>") && !text.empty()) text += '\n';
    text += wrapped(plain, indent, letter_width);
  }
  return text;
}

}  // namespace

std::string letter_text(const Context& c, Values& head) {
  const std::vector<AlikeQuestions> groups = grouped_questions(c);
  if (groups.empty()) return {};
  if (c.request.customer.organisation || c.request.customer.contact) head.add("TO");
  if (!c.house("creator").empty() || !c.house("owner").empty()) head.add("FROM");
  head.add(intro(c.spec.verdict));
  add_questions(c, head, groups);
  return lines_of(c.expand("letter", head));
}

}  // namespace output
