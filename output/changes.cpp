#include "output/changes.h"

#include <algorithm>
#include <map>
#include <utility>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_list.h"

namespace output {
namespace {

/// What an issue says under a name.
struct Said {
  std::string name, text;
};

/// A name and its how manyth place in a list: the first fill of each ink has the same name.
using Place = std::pair<std::string, int>;

std::vector<Place> places(const std::vector<Said>& list) {
  std::map<std::string, int> seen;
  std::vector<Place> all;
  all.reserve(list.size());
  for (const Said& said : list) all.emplace_back(said.name, seen[said.name]++);
  return all;
}

/// Names in the order of the new list, those gone behind; only where the texts differ.
std::vector<Change> differences(const std::vector<Said>& before, const std::vector<Said>& now) {
  const std::vector<Place> old = places(before), fresh = places(now);
  const auto text_in = [](const std::vector<Said>& list, const std::vector<Place>& at,
                          const Place& place) {
    const auto found = std::find(at.begin(), at.end(), place);
    return found == at.end() ? std::string()
                             : list.at(static_cast<std::size_t>(found - at.begin())).text;
  };
  std::vector<Change> changes;
  for (std::size_t i = 0; i < now.size(); ++i) {
    std::string was = text_in(before, old, fresh.at(i));
    if (was != now.at(i).text) changes.push_back({now.at(i).name, std::move(was), now.at(i).text});
  }
  for (std::size_t i = 0; i < before.size(); ++i) {
    const bool gone = text_in(now, fresh, old.at(i)).empty();
    if (gone) changes.push_back({before.at(i).name, before.at(i).text, {}});
  }
  return changes;
}

std::vector<Said> requirements(const Context& c, const IssueRecord& record) {
  std::vector<Said> list;
  for (const calc::Input& input : record.inputs) {
    if (input.key == "request.revision" || input.key == "request.date") continue;
    list.push_back({c.field(input.key), escaped(input_text(c, input))});
  }
  return list;
}

std::vector<Said> assumptions(const Context& c, const IssueRecord& record) {
  std::vector<Said> list;
  for (const calc::Assumption& a : record.assumptions) {
    const std::string value =
        a.text.empty() ? plain_value(c, a.value, a.high.value_or(a.value), a.unit) : a.text;
    list.push_back({c.field(a.field), escaped(value)});
  }
  return list;
}

std::string figure_text(const Context& c, const IssueFigure& figure) {
  if (figure.key == "verdict") return c.words("verdict." + figure.text);
  if (!figure.text.empty()) return escaped(figure.text);
  if (figure.is_money) {
    return escaped(amount(figure.unit, calc::to_money(figure.value)));
  }
  const int digits = figure.unit.empty() ? 9 : 4;
  return escaped(c.measure(figure.value, figure.unit, digits));
}

std::vector<Said> figures(const Context& c, const IssueRecord& record) {
  std::vector<Said> list;
  for (const IssueFigure& figure : record.figures) {
    std::string name = c.words("change." + figure.key);
    if (!figure.group.empty())
      name += ", " + c.words("group_of", {{"NAME", c.group_name(figure.group)}});
    list.push_back({std::move(name), figure_text(c, figure)});
  }
  return list;
}

std::vector<Said> parts(const Context& c, const IssueRecord& record) {
  std::vector<Said> list;
  for (const calc::BomLine& part : record.parts) {
    std::string name = escaped(part.designation);
    if (!part.part_number.empty()) name += " (" + escaped(part.part_number) + ")";
    const std::string price = part.unit_price ? escaped(amount(record.currency, *part.unit_price))
                                              : c.words("on_request");
    list.push_back({std::move(name),
                    c.words("change.part_text",
                            {{"QUANTITY", number(part.quantity, 4)},
                             {"UNIT", c.words_or("unit." + part.unit, pretty_unit(part.unit))}}) +
                        " " + price});
  }
  return list;
}

bool same(const calc::Notice& a, const calc::Notice& b) {
  const auto equal = [](const calc::Arg& x, const calc::Arg& y) {
    return x.name == y.name && x.value == y.value && x.unit == y.unit;
  };
  return a.code == b.code && a.field == b.field &&
         std::equal(a.args.begin(), a.args.end(), b.args.begin(), b.args.end(), equal);
}

/// Those of a list that the other lacks.
std::vector<calc::Notice> lacking(const std::vector<calc::Notice>& list,
                                  const std::vector<calc::Notice>& other) {
  std::vector<calc::Notice> left;
  for (const calc::Notice& notice : list) {
    const auto is_it = [&](const calc::Notice& o) { return same(o, notice); };
    if (std::none_of(other.begin(), other.end(), is_it)) left.push_back(notice);
  }
  return left;
}

/// Whether two conditions are one whose figures moved; that of a budget may have another term
/// first.
bool same_but_figures(const calc::Notice& a, const calc::Notice& b) {
  const auto texts = [](const calc::Notice& n) {
    std::vector<std::string> all;
    for (const calc::Arg& arg : n.args) {
      if (const auto* text = std::get_if<std::string>(&arg.value)) all.push_back(*text);
    }
    return all;
  };
  return a.code == b.code && (a.field == b.field || a.code == "placement") && texts(a) == texts(b);
}

/// The figures of a condition that differ from those of its other state.
std::string differing_figures(const Context& c, const calc::Notice& notice,
                              const calc::Notice& other) {
  constexpr int digits = 4;
  std::string text;
  for (const calc::Arg& arg : notice.args) {
    const auto* const value = std::get_if<double>(&arg.value);
    const bool stays = std::any_of(other.args.begin(), other.args.end(), [&](const calc::Arg& o) {
      return o.name == arg.name && o.value == arg.value && o.unit == arg.unit;
    });
    if (value == nullptr || stays) continue;
    text += (text.empty() ? "" : "; ") +
            escaped(arg.unit == "1"    ? with_unit(*value * 100, "%", digits)
                    : arg.unit.empty() ? number(*value, digits)
                                       : c.measure(*value, arg.unit, digits));
  }
  return text.empty() ? c.field(notice.field) : text;
}

/// Takes those whose figures moved out of both lists, and tells each once.
std::vector<Change> moved_conditions(const Context& c, std::vector<calc::Notice>& gone,
                                     std::vector<calc::Notice>& come) {
  std::vector<Change> changes;
  for (auto now = come.begin(); now != come.end();) {
    const auto was = std::find_if(gone.begin(), gone.end(),
                                  [&](const calc::Notice& n) { return same_but_figures(n, *now); });
    if (was == gone.end()) {
      ++now;
      continue;
    }
    changes.push_back({c.notice("condition", *now), differing_figures(c, *was, *now),
                       differing_figures(c, *now, *was)});
    gone.erase(was);
    now = come.erase(now);
  }
  return changes;
}

/// A condition stands or does not, or its figures moved. The words of one that is gone are those of
/// this program; another version's may want other arguments, so that only its code is named.
std::vector<Change> condition_changes(const Context& c, const IssueRecord& before,
                                      const IssueRecord& now) {
  std::vector<calc::Notice> come = lacking(now.conditions, before.conditions);
  std::vector<calc::Notice> gone = lacking(before.conditions, now.conditions);
  std::vector<Change> changes = moved_conditions(c, gone, come);
  const std::string stands = c.words("change.stands");
  for (std::string& text : c.notices("condition", come)) {
    changes.push_back({std::move(text), {}, stands});
  }
  if (before.program == now.program) {
    for (std::string& text : c.notices("condition", gone)) {
      changes.push_back({std::move(text), stands, {}});
    }
  } else {
    for (const calc::Notice& notice : gone) {
      changes.push_back({"<code>" + escaped(notice.code) + "</code>", stands, {}});
    }
  }
  return changes;
}

std::vector<Said> basis(const Context& c, const IssueRecord& record) {
  constexpr std::size_t shown = 12;  // digits of a digest
  const auto digest = [](const std::string& sha256) {
    return "<code>" + escaped(sha256.substr(0, shown)) + "</code>";
  };
  std::vector<Said> list{{c.words("change.program"), escaped(record.program)},
                         {c.words("change.catalogue"), digest(record.catalogue_sha256)}};
  if (!record.catalogue_date.empty()) {
    list.push_back({c.words("change.catalogue_date"), escaped(record.catalogue_date)});
  }
  return list;
}

}  // namespace

std::vector<ChangeGroup> changes_since(const Context& c, const IssueRecord& before,
                                       const IssueRecord& now) {
  using List = std::vector<Said> (*)(const Context&, const IssueRecord&);
  struct Topic {
    const char* name;
    List list;
  };
  std::vector<ChangeGroup> groups;
  for (const Topic& topic :
       {Topic{"requirement", requirements}, Topic{"assumption", assumptions},
        Topic{"answer", figures}, Topic{"part", parts}, Topic{"basis", basis}}) {
    std::vector<Change> changes = differences(topic.list(c, before), topic.list(c, now));
    if (!changes.empty()) groups.push_back({topic.name, std::move(changes)});
  }
  std::vector<Change> conditions = condition_changes(c, before, now);
  if (!conditions.empty()) groups.push_back({"condition", std::move(conditions)});
  return groups;
}

}  // namespace output
