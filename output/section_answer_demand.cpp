/// What the design answers to demands on service, solids, mode and jetting temperature.
#include <algorithm>
#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_links.h"
#include "output/section_list.h"

namespace output {
namespace {

/// What the catalogue says of a head; empty where it says nothing.
using OfHead = std::function<std::string(const calc::Flexibility&)>;

/// One answer a head chosen, each as a link to its row of the catalogue.
std::string of_heads(const Context& c, const OfHead& of_head) {
  const Links links(c);
  std::vector<std::pair<std::string, std::string>> answers;  // head, answer
  for (const calc::Flexibility& entry : c.spec.flexibility) {
    const bool known = std::any_of(answers.begin(), answers.end(),
                                   [&](const auto& one) { return one.first == entry.head; });
    if (known) continue;
    std::string said = of_head(entry);
    if (said.empty()) said = c.words("answer.unknown");
    answers.emplace_back(entry.head, links.catalogue("head." + entry.head, said));
  }
  if (answers.size() == 1) return answers.front().second;
  std::vector<std::string> pieces;
  for (const auto& [head, said] : answers) {
    Values values;
    values.set("HEAD", head);
    values.set_markup("ANSWER", said);
    pieces.push_back(c.templates.words(c.language(), "answer.of_head", values));
  }
  return joined(c, pieces);
}

std::string serviced(const Context& c) {
  return of_heads(c, [&](const calc::Flexibility& f) {
    return f.serviceable ? c.words(serviceable_key(*f.serviceable)) : std::string();
  });
}

std::string shaped(const Context& c) {
  return of_heads(c, [&](const calc::Flexibility& f) {
    return f.waveform ? c.words(waveform_key(*f.waveform)) : std::string();
  });
}

std::string driven(const Context& c) {
  return of_heads(c, [&](const calc::Flexibility& f) {
    if (!f.driver_sources) return std::string();
    return c.counted("answer.makers", static_cast<std::size_t>(*f.driver_sources),
                     {{"COUNT", std::to_string(*f.driver_sources)}});
  });
}

std::string covered(const Context& c) {
  double least = 1;
  for (const calc::Group& group : c.spec.chosen) {
    for (const calc::ChannelDots& dots : group.dots) least = std::min(least, dots.cover_fraction);
  }
  const std::string answer =
      c.words("answer.cover", {{"VALUE", percent_down(least) + "\xC2\xA0%"}});
  const std::string step = cover_step(c);
  return step.empty() ? answer : c.to_step(step, answer);
}

std::string mode_of(const Context& c) {
  const bool scans = c.spec.chosen.front().scan.has_value();
  return as_link("s-arrangement", c.words(scans ? "answer.mode.scanning" : "answer.mode.single"));
}

std::string jetted(const Context& c, const std::string& key) {
  for (const calc::InkInHead& ink : c.spec.inks) {
    if (ink.ink != Context::name(key) || !ink.temperature) continue;
    return as_link(
        listed_at(c, key),
        c.words("answer.jetted", {{"VALUE", c.measure(ink.temperature->in_celsius(), "degC", 3)}}));
  }
  return {};
}

}  // namespace

std::string demand_answer(const Context& c, const std::string& key) {
  if (key == "service.serviceable") return serviced(c);
  if (key == "service.waveform") return shaped(c);
  if (key == "service.driver_sources") return driven(c);
  if (key == "image.solids") return covered(c);
  if (key == "line.mode") return mode_of(c);
  if (Context::pattern(key) == "ink.NAME.jetting_temperature") return jetted(c, key);
  return {};
}

}  // namespace output
