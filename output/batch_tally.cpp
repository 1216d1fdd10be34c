#include "output/batch_tally.h"

#include <string_view>

#include "output/os.h"
#include "output/report_text.h"

namespace output {
namespace {

constexpr std::array<std::string_view, 6> names{"failed",     "refused",     "incomplete",
                                                "infeasible", "conditional", "feasible"};

std::string row(std::string_view name, const std::string& count, const std::string& look) {
  constexpr std::size_t name_width = 11, count_width = 10;
  std::string text(name);
  text.append(name_width - name.size(), ' ');
  if (count.size() < count_width) text.append(count_width - count.size(), ' ');
  return text.append(count).append("  ").append(look).append("\n");
}

/// Where the first error of an outcome stands, as the diagnostics have it.
std::string fault_place(const Outcome& outcome) {
  for (const intake::Diagnostic& finding : outcome.findings) {
    if (finding.severity != intake::Severity::error) continue;
    return finding.file + ":" + std::to_string(finding.line) + ":" +
           std::to_string(finding.column) + " " + finding.code;
  }
  return outcome.file;
}

}  // namespace

std::size_t Tally::kind_of(const Outcome& outcome) {
  if (outcome.status == Status::refused) return refused;
  if (outcome.status == Status::failed || !outcome.verdict) return failed;
  switch (*outcome.verdict) {
    case calc::Verdict::feasible:
      return feasible;
    case calc::Verdict::conditional:
      return conditional;
    case calc::Verdict::infeasible:
      return infeasible;
    case calc::Verdict::incomplete:
      return incomplete;
  }
  return failed;
}

std::string Tally::first_look(const Outcome& outcome) const {
  const std::size_t kind = kind_of(outcome);
  return terminal_safe(kind == failed || kind == refused
                           ? fault_place(outcome)
                           : join_path(folder_, outcome.stem + ".pdf"));
}

void Tally::count(const Outcome& outcome) {
  ++total_;
  if (outcome.status == Status::issued) ++issued_;
  if (outcome.status == Status::unchanged) ++unchanged_;
  Kind& kind = kinds_.at(kind_of(outcome));
  if (kind.count++ == 0) kind.first = first_look(outcome);
}

std::string Tally::table(TerminalStyle style) const {
  std::string text = row("", "requests", "look first at");
  for (std::size_t i = 0; i < kinds_.size(); ++i) {
    const Kind& kind = kinds_.at(i);
    if (kind.count != 0) text += row(names.at(i), std::to_string(kind.count), kind.first);
  }
  const std::size_t without = kinds_[failed].count + kinds_[refused].count;
  const std::string faults = std::to_string(without) + " without a document";
  return text + std::to_string(total_) + " requests: " + std::to_string(issued_) + " issued, " +
         std::to_string(unchanged_) + " unchanged, " +
         (without == 0 ? faults : marked(faults, style)) + "\n";
}

}  // namespace output
