#include "output/overview_page.h"

#include <algorithm>
#include <string_view>
#include <tuple>
#include <utility>

#include "output/compose_context.h"
#include "output/format.h"
#include "output/names.h"
#include "output/plain_number.h"

namespace output {
namespace {

constexpr std::string_view language = "en";
constexpr const char* page_template = "en/overview.html.tpl";
constexpr const char* row_template = "en/overview_row.html.tpl";
constexpr std::string_view rows_mark = "<!-- rows -->";
/// In order of how much they ask for attention.
constexpr std::array<std::string_view, 4> verdicts{"incomplete", "infeasible", "conditional",
                                                   "feasible"};

bool comes_before(const std::string& revision_a, const std::string& date_a,
                  const std::string& revision_b, const std::string& date_b) {
  if (revision_a != revision_b) return revision_before(revision_a, revision_b);
  return date_a < date_b;
}

std::string number_or_dash(const std::optional<double>& value) {
  return value ? fixed(*value, 0) : "\u2013";
}

std::string sortable(const std::optional<double>& value) { return value ? plain(*value) : ""; }

int rank_of(std::string_view verdict) {
  return static_cast<int>(std::find(verdicts.begin(), verdicts.end(), verdict) - verdicts.begin());
}

}  // namespace

void OverviewPage::count(const OverviewRow& row) {
  ++issues_;
  const auto [found, fresh] = latest_.try_emplace(row.id);
  Latest& latest = found->second;
  if (!fresh && comes_before(row.revision, row.date, latest.revision, latest.date)) return;
  latest = {row.revision,
            row.date,
            row.stem,
            row.verdict,
            row.currency,
            row.heads,
            {},
            row.capital.value_or(0),
            row.ownership.value_or(0),
            row.capital.has_value(),
            row.unpriced.value_or(0) > 0};
  for (QuestionKind& kind : kinds_of(row.questions)) {
    latest.questions.push_back(std::move(kind.code));
  }
}

OverviewPage::Totals OverviewPage::totals() const {
  Totals all;
  for (const auto& [id, latest] : latest_) {
    ++all.verdicts[latest.verdict];
    for (const std::string& head : latest.heads) ++all.heads[head];
    for (const std::string& code : latest.questions) ++all.questions[code];
    if (!latest.priced) continue;
    Sum& sum = all.sums[latest.currency];
    sum.capital += latest.capital;
    sum.ownership += latest.ownership;
    ++sum.requests;
    if (latest.lacks_prices) ++sum.lacking;
  }
  return all;
}

std::string OverviewPage::question_words(const QuestionKind& kind) const {
  const std::string key = "question." + kind.code;
  if (!templates_.has_words(language, key)) return escaped(kind.code);
  std::string names;
  for (const std::string& field : kind.fields) {
    names.append(names.empty() ? "" : ", ").append(Context::name(field));
  }
  Values values;
  values.set("NAME", names.empty() ? "\u2026" : names);
  values.set("TEMPERATURE", "\u2026");  // of a head, which the rows do not have
  return templates_.words(language, key, values);
}

void OverviewPage::set_totals(Values& values) const {
  const Totals all = totals();
  values.set("REQUESTS", std::to_string(latest_.size()));
  values.set("ISSUES", std::to_string(issues_));
  for (const std::string_view verdict : verdicts) {
    Values& row = values.add("VERDICT_COUNT");
    const auto count = all.verdicts.find(verdict);
    row.set("VERDICT", verdict);
    row.set_markup("WORDS", templates_.words(language, "verdict." + std::string(verdict), {}));
    row.set("COUNT", std::to_string(count == all.verdicts.end() ? 0 : count->second));
  }
  for (const auto& [head, count] : all.heads) {
    Values& row = values.add("HEAD_OPTION");
    row.set("HEAD", head);
    row.set("COUNT", std::to_string(count));
  }
  for (const auto& [currency, sum] : all.sums) {
    Values& row = values.add("SUM");
    row.set("CURRENCY", currency);
    row.set("CAPITAL", fixed(sum.capital, 0));
    row.set("OWNERSHIP", fixed(sum.ownership, 0));
    row.set("PRICED", std::to_string(sum.requests));
    row.set("LACKING", std::to_string(sum.lacking));
  }
  std::vector<std::pair<int, std::string>> open;
  for (const auto& [code, count] : all.questions) open.emplace_back(-count, code);
  std::sort(open.begin(), open.end());
  if (open.empty()) return;
  Values& questions = values.add("QUESTIONS");
  for (const auto& [count, code] : open) {
    Values& row = questions.add("QUESTION_COUNT");
    row.set_markup("WORDS", question_words({code, {}}));
    row.set("COUNT", std::to_string(-count));
  }
}

const std::pair<std::string, std::string>& OverviewPage::frame() {
  if (!frame_.first.empty()) return frame_;
  Values values;
  values.set("OWNER", templates_.setting("house.owner"));
  values.set_markup("ROWS", std::string(rows_mark));
  set_totals(values);
  const std::string page = templates_.expand(page_template, values);
  const std::size_t rows = page.find(rows_mark);
  frame_ = {page.substr(0, rows), page.substr(rows + rows_mark.size())};
  return frame_;
}

std::string OverviewPage::head() { return frame().first; }
std::string OverviewPage::foot() { return frame().second; }

std::string OverviewPage::row(const OverviewRow& row) const {
  Values values;
  const std::vector<QuestionKind> kinds = kinds_of(row.questions);
  const auto latest = latest_.find(row.id);
  const bool earlier = latest != latest_.end() && latest->second.stem != row.stem;
  for (const auto& [name, text] : std::initializer_list<std::pair<const char*, std::string>>{
           {"ID", row.id},
           {"REVISION", row.revision},
           {"DATE", row.date},
           {"STEM", row.stem},
           {"TITLE", row.title},
           {"CUSTOMER", row.customer},
           {"VERDICT", row.verdict},
           {"RANK", std::to_string(rank_of(row.verdict))},
           {"HEADS_TOTAL", row.heads_total ? std::to_string(*row.heads_total) : "0"},
           {"CAPITAL", number_or_dash(row.capital)},
           {"CAPITAL_SORT", sortable(row.capital)},
           {"OWNERSHIP", number_or_dash(row.ownership)},
           {"OWNERSHIP_SORT", sortable(row.ownership)},
           {"CURRENCY", row.capital ? row.currency : ""},
           {"LEAD", number_or_dash(row.lead_time_days)},
           {"LEAD_SORT", sortable(row.lead_time_days)},
           {"OPEN", std::to_string(kinds.size())},
           {"STATE", earlier ? "earlier" : "latest"}}) {
    values.set(name, text);
  }
  const std::string words = "verdict." + row.verdict;
  values.set_markup("VERDICT_WORDS", templates_.has_words(language, words)
                                         ? templates_.words(language, words, {})
                                         : escaped(row.verdict));
  if (!row.customer.empty()) values.add("HAS_CUSTOMER");
  if (earlier) values.add("IS_EARLIER");
  if (row.unpriced.value_or(0) > 0) {
    values.add("HAS_UNPRICED").set("UNPRICED", std::to_string(*row.unpriced));
  }
  if (row.heads_total) values.add("HEAD_COUNT");
  for (const std::string& head : row.heads) values.add("HEAD").set("NAME", head);
  if (row.heads.empty()) values.add("NO_HEAD");
  if (kinds.empty()) {
    values.add("NO_QUESTION");
  } else {
    Values& questions = values.add("HAS_QUESTIONS");
    for (const QuestionKind& kind : kinds) {
      questions.add("QUESTION").set_markup("WORDS", question_words(kind));
    }
  }
  return templates_.expand(row_template, values);
}

}  // namespace output
