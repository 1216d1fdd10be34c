#include "calc/later_questions.h"

#include <algorithm>
#include <array>

#include "calc/named.h"
#include "calc/throw.h"

namespace calc {
namespace {

constexpr double choice = 52;  // may change the head: above what only moves its figures
constexpr double safety = 20;
constexpr double money_first = 40;   // before safety and physics, after what may change the head
constexpr double money_share = 0.5;  // of a sum, over the whole range of the answer

/// Safety notes that say "unknown, ask", the question each asks and what its answer moves.
struct Ask {
  std::string_view note, question, effect;
};
constexpr std::array<Ask, 4> asks{{{"food_unknown", "q_contact", "safety"},
                                   {"flush_hazard", "q_flush", "safety"},
                                   {"flash_point_unknown", "q_flash_point", "fire_protection"},
                                   {"aqueous_rest", "q_cosolvent", "vapour_kg_per_h"}}};

/// Conditions that the customer can settle, the question each asks and the field it is about.
struct AskOfCondition {
  std::string_view condition, question, field, effect;
};
constexpr std::array<AskOfCondition, 3> condition_asks{
    {{"zone_unclassified", "q_zone", "line.enclosed", "fire_protection"},
     {"solvent_drying", "q_drying", "ink.solvent", "safety"},
     {"food_face", "q_food_face", "substrate.food_contact", "safety"}}};

Question question(std::string_view code, std::string field, std::string_view effect,
                  double weight) {
  Question q;
  q.code = code;
  q.field = std::move(field);
  q.effect = effect;
  q.weight = weight;
  return q;
}

/// The inks a note names, "black, blue".
std::vector<std::string> inks_in(const Notice& note) {
  std::vector<std::string> names;
  for (const Arg& arg : note.args) {
    if (arg.name != "ink") continue;
    std::string rest = std::get<std::string>(arg.value);
    for (std::size_t at = rest.find(", "); at != std::string::npos; at = rest.find(", ")) {
      names.push_back(rest.substr(0, at));
      rest.erase(0, at + 2);
    }
    names.push_back(rest);
  }
  return names;
}

/// Whether a note is about a fluid of the parts list: then its supplier knows it, not the customer.
bool names_part(const Notice& note) {
  return std::any_of(note.args.begin(), note.args.end(),
                     [](const Arg& arg) { return arg.name == "fluid"; });
}

bool flash_point_known(const Job& job, const std::string& name) {
  return std::any_of(job.channels.begin(), job.channels.end(), [&](const Channel& c) {
    return c.ink != nullptr && c.ink->name == name && c.ink->flash_point;
  });
}

void ask_safety(const Job& job, const Notice& note, std::vector<Question>& to) {
  for (const Ask& ask : asks) {
    if (note.code != ask.note) continue;
    if (ask.question == "q_flush" && names_part(note)) continue;
    const std::vector<std::string> inks = inks_in(note);
    if (inks.empty()) to.push_back(question(ask.question, note.field, ask.effect, safety));
    const bool flash = ask.question == "q_flash_point";
    for (const std::string& ink : inks) {
      if (flash && flash_point_known(job, ink)) continue;
      const char* field = flash ? ".flash_point" : ".solvent";
      to.push_back(question(ask.question, "ink." + ink + field, ask.effect, safety));
    }
  }
}

void ask_condition(const Notice& condition, std::vector<Question>& to) {
  for (const AskOfCondition& ask : condition_asks) {
    if (condition.code != ask.condition) continue;
    to.push_back(question(ask.question, std::string(ask.field), ask.effect, safety + 1));
  }
}

/// Whether a head lists the family of the ink of that name, or does not say what it takes.
bool takes_ink(const Job& job, const Head& head, const std::string& ink) {
  if (!head.families) return true;
  return std::any_of(job.channels.begin(), job.channels.end(), [&](const Channel& c) {
    if (c.ink == nullptr || c.ink->name != ink || !c.family) return false;
    const std::vector<InkFamily>& list = head.families->value;
    return std::find(list.begin(), list.end(), *c.family) != list.end();
  });
}

/// Adds the question for an ink, or raises the temperature up to which it is asked.
void ask_viscosity(const std::string& ink, const Head* head, std::vector<Question>& to) {
  if (head == nullptr || !head->temperature_most) return;
  const double most = head->temperature_most->value.in_celsius();
  const std::string field = "ink." + ink + ".viscosity";
  const auto known = std::find_if(to.begin(), to.end(), [&](const Question& q) {
    return q.code == "q_viscosity_hot" && q.field == field;
  });
  if (known != to.end()) {
    known->up_to_degc = std::max(*known->up_to_degc, most);
    return;
  }
  Question q = question("q_viscosity_hot", field, "head", choice);
  q.up_to_degc = most;
  to.push_back(std::move(q));
}

/// Whether an ink misses its nominal viscosity only because it is not known hotter.
bool held_by_span(const InkInHead& ink, const Head* head) {
  if (ink.temperature_from != "nearest" || !ink.temperature || !ink.known_to) return false;
  return head != nullptr && head->temperature_most && !(*ink.temperature < *ink.known_to) &&
         *ink.known_to < head->temperature_most->value;
}

}  // namespace

std::optional<Assumption> throw_taken(const Job& job, const Catalogue& catalogue,
                                      const std::vector<Group>& groups) {
  if (job.throw_distance) return std::nullopt;
  std::optional<Length> least, most;
  for (const Group& group : groups) {
    const Head* head = named(catalogue.heads, group.head);
    if (head == nullptr || !head->throw_nominal) continue;
    const Length nominal = nominal_throw(job, *head);
    least = std::min(least.value_or(nominal), nominal);
    most = std::max(most.value_or(nominal), nominal);
  }
  if (!least) return std::nullopt;
  Assumption a;
  a.field = "line.throw_distance";
  a.value = in_mm(*most);
  a.unit = "mm";
  if (*least < *most) {
    a.low = in_mm(*least);
    a.high = in_mm(*most);
  }
  a.effect = parameter(P::throw_mm).effect;
  a.source = "nominal throw of the heads chosen, catalogue";
  return a;
}

std::vector<Question> later_questions(const Job& job, const Catalogue& catalogue,
                                      const Specification& spec) {
  std::vector<Question> list;
  for (const Notice& note : spec.safety) ask_safety(job, note, list);
  for (const Notice& condition : spec.conditions) ask_condition(condition, list);
  for (const RejectedHead& rejected : spec.rejected) {
    for (const Reason& reason : rejected.reasons) {
      if (!reason.known_to_degc) continue;
      const Head* head = named(catalogue.heads, rejected.head);
      if (head == nullptr || !takes_ink(job, *head, reason.subject)) continue;
      ask_viscosity(reason.subject, head, list);
    }
  }
  for (const InkInHead& ink : spec.inks) {
    const Head* head = named(catalogue.heads, ink.head);
    if (held_by_span(ink, head)) ask_viscosity(ink.ink, head, list);
  }
  return list;
}

void rank_by_money(const std::vector<Uncertainty>& figures, const std::string& currency,
                   std::vector<Question>& questions) {
  for (const Uncertainty& figure : figures) {
    const bool wide = figure.high - figure.low > money_share * figure.value;
    if (figure.unit != currency || figure.mover.empty() || !wide) continue;
    for (Question& q : questions) {
      if (q.parameter == figure.mover || q.field == figure.mover) {
        q.weight = std::max(q.weight, money_first);
      }
    }
  }
}

}  // namespace calc
