/// Questions to the customer, and checks before anyone commits.
#include <algorithm>
#include <cstddef>
#include <vector>

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

std::string acceptance(const Context& c, const calc::Check& check) {
  if (!check.acceptance) return c.words("by_agreement");
  const std::string limit = with_unit(*check.acceptance, check.unit, 3);
  const std::string key = "check." + check.code + ".acceptance";
  return c.has_words(key)
             ? c.words(key, {{"VALUE", limit}, {"NUMBER", number(*check.acceptance, 3)}})
             : escaped(limit);
}

/// Adds to the first group whose front is alike, else as a new group.
template <class Item, class Alike>
void add_to_group(std::vector<std::vector<const Item*>>& groups, const Item& item, Alike alike) {
  const auto found = std::find_if(groups.begin(), groups.end(),
                                  [&](const auto& group) { return alike(*group.front(), item); });
  if (found != groups.end()) {
    found->push_back(&item);
  } else {
    groups.push_back({&item});
  }
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
  std::vector<std::vector<const calc::Question*>> groups;
  for (const calc::Question& question : c.spec.questions) {
    add_to_group(groups, question, [](const calc::Question& a, const calc::Question& b) {
      return a.code == b.code && a.assumed == b.assumed;
    });
  }
  Values values;
  for (std::size_t i = 0; i < groups.size(); ++i) {
    const calc::Question& question = *groups[i].front();
    Values& row = values.add("ROW");
    row.set("NUMBER", std::to_string(i + 1));
    row.set_markup("TEXT", question_text(c, groups[i]));
    row.set_markup("ASSUMED", assumed(c, question));
    row.set_markup("EFFECT", question.effect.empty() ? std::string() : c.effect(question.effect));
  }
  return c.expand("questions", values);
}

std::string checks_section(const Context& c) {
  if (c.spec.tests.empty()) return {};
  std::vector<std::vector<const calc::Check*>> groups;
  for (const calc::Check& check : c.spec.tests) {
    add_to_group(groups, check, [](const calc::Check& a, const calc::Check& b) {
      return a.code == b.code && a.acceptance == b.acceptance;
    });
  }
  Values values;
  for (std::size_t i = 0; i < groups.size(); ++i) {
    const calc::Check& check = *groups[i].front();
    std::vector<std::string> subjects;
    for (const calc::Check* one : groups[i]) {
      if (!one->subject.empty()) subjects.push_back(escaped(one->subject));
    }
    Values& row = values.add("ROW");
    row.set("NUMBER", std::to_string(i + 1));
    row.set_markup("TEXT", c.words("check." + check.code));
    row.set_markup("SUBJECT", joined(c, subjects));
    row.set_markup("ACCEPTANCE", acceptance(c, check));
  }
  return c.expand("checks", values);
}

}  // namespace output
