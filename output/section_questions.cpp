/// Questions to the customer, and checks before anyone commits.
#include <cstddef>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_list.h"

namespace output {
namespace {

std::string assumed(const Context& c, const calc::Question& question) {
  if (!question.assumed) return c.words("nothing_assumed");
  std::string text = with_unit(*question.assumed, question.unit, 3);
  const bool ranged = question.low && question.high && *question.low < *question.high;
  if (ranged) {
    text += " (" + number(*question.low, 3) + " " + c.words("to") + " " +
            number(*question.high, 3) + ")";
  }
  return escaped(text);
}

}  // namespace

std::string question_text(const Context& c, const std::vector<const calc::Question*>& alike) {
  std::vector<std::string> names;
  for (const calc::Question* question : alike) {
    std::string name = Context::name(question->field);
    if (!name.empty()) names.push_back(escaped(name));
  }
  Values values;
  values.set_markup("NAME", joined(c, names));
  return c.templates.words(c.language(), "question." + alike.front()->code, values);
}

std::string questions_section(const Context& c) {
  if (c.spec.questions.empty()) return {};
  Values values;
  for (std::size_t i = 0; i < c.spec.questions.size(); ++i) {
    const calc::Question& question = c.spec.questions[i];
    Values& row = values.add("ROW");
    row.set("NUMBER", std::to_string(i + 1));
    row.set_markup("TEXT", question_text(c, {&question}));
    row.set_markup("ASSUMED", assumed(c, question));
    row.set_markup("EFFECT", question.effect.empty() ? std::string() : c.effect(question.effect));
  }
  return c.expand("questions", values);
}

std::string checks_section(const Context& c) {
  if (c.spec.tests.empty()) return {};
  Values values;
  for (std::size_t i = 0; i < c.spec.tests.size(); ++i) {
    const calc::Check& check = c.spec.tests[i];
    const std::string limit =
        check.acceptance ? with_unit(*check.acceptance, check.unit, 3) : c.words("by_agreement");
    Values& row = values.add("ROW");
    row.set("NUMBER", std::to_string(i + 1));
    row.set_markup("TEXT", c.words("check." + check.code, {{"SUBJECT", check.subject}}));
    row.set_markup("SUBJECT", c.words_or("name." + check.subject, check.subject));
    const std::string key = "check." + check.code + ".acceptance";
    row.set_markup("ACCEPTANCE", check.acceptance && c.has_words(key)
                                     ? c.words(key, {{"VALUE", limit}})
                                     : escaped(limit));
  }
  return c.expand("checks", values);
}

}  // namespace output
