/// Standing matter: revisions, how long the prices hold, remarks, the lines to sign on.
#include <algorithm>
#include <optional>

#include "output/compose_text.h"
#include "output/date.h"
#include "output/json_words.h"
#include "output/section_list.h"

namespace output {
namespace {

void add_revision(const Context& c, Values& values, const EarlierIssue& issue, bool is_this) {
  Values& row = values.add("REVISION");
  row.set("NAME", issue.revision);
  row.set("DATE", issue.date);
  row.set_markup("VERDICT", c.words("verdict." + issue.verdict));
  row.set_markup("RECORD", is_this ? c.words("control.this")
                                   : "<code>" + escaped(issue.sha256.substr(0, 16)) + "</code>");
}

bool is_in_bill(const calc::Station& station, const std::string& row) {
  return std::any_of(station.bom.begin(), station.bom.end(),
                     [&](const calc::BomLine& line) { return line.source == row; });
}

/// The oldest price the bill rests on: its date and the catalogue's row.
const calc::Input* oldest_price(const Context& c) {
  constexpr std::string_view suffix = ".price_date";
  const calc::Input* oldest = nullptr;
  for (const calc::Input& input : c.spec.inputs) {
    if (!input.key.ends_with(suffix) || !is_date(input.text)) continue;
    const std::string row = input.key.substr(0, input.key.size() - suffix.size());
    if (!is_in_bill(*c.spec.station, row)) continue;
    if (oldest == nullptr || input.text < oldest->text) oldest = &input;
  }
  return oldest;
}

/// Prices of the bill that a warning names as old, as markup; empty where there are none.
std::string stale_prices(const Context& c) {
  std::vector<std::string> rows;
  for (const calc::Notice& warning : c.spec.warnings) {
    if (warning.code != "price_stale") continue;
    const std::string row = warning.field.substr(0, warning.field.rfind('.'));
    if (is_in_bill(*c.spec.station, row)) rows.push_back(row_text(c, row));
  }
  return rows.empty() ? std::string() : joined(c, rows);
}

/// What the prices are of: old ones hold no more, and without those of the heads there is no
/// estimate of the station.
std::string price_limits(const Context& c) {
  std::string text;
  if (const std::string stale = stale_prices(c); !stale.empty()) {
    Values values;
    values.set_markup("ROWS", stale);
    text += " " + c.templates.words(c.language(), "control.prices.stale", values);
  }
  if (!heads_unpriced(*c.spec.station)) text += " " + c.words("control.prices.estimate");
  return text;
}

void add_prices(const Context& c, Values& values) {
  if (!c.spec.station || c.spec.station->bom_total.minor == 0) return;
  const std::string& days = c.house("price_days");
  Values& prices = values.add("PRICES");
  const calc::Input* const oldest = oldest_price(c);
  prices.set("KEY", oldest == nullptr ? std::string() : place_key(oldest->origin));
  std::string text = c.words("control.prices", {{"DATE", date_after(c.spec.date, std::stoi(days))},
                                                {"DAYS", days},
                                                {"CURRENCY", c.spec.station->currency}}) +
                     price_limits(c);
  if (oldest != nullptr) {
    Values said;
    said.set("DATE", oldest->text);
    said.set_markup("ROW", row_text(c, oldest->key.substr(0, oldest->key.rfind('.'))));
    text += " " + c.templates.words(c.language(), "control.oldest", said);
  }
  prices.set_markup("TEXT", std::move(text));
}

/// The lines to sign on; only the customer is known by name.
void add_signatures(const Context& c, Values& values) {
  values.add(c.spec.chosen.empty() ? "READS" : "ACCEPTS");
  for (const std::string role : {"creator", "checker", "approver", "customer"}) {
    Values& row = values.add("SIGN");
    row.set_markup("ROLE", c.words("sign." + role));
    const bool offers = !c.spec.chosen.empty() || role != "customer";
    row.set_markup("MEANING", c.words("sign." + role + (offers ? ".meaning" : ".no_offer")));
    const auto& organisation = c.request.customer.organisation;
    row.set("NAME", role == "customer" && organisation ? organisation->value : std::string());
  }
}

}  // namespace

std::string control_section(const Context& c) {
  Values values;
  for (const EarlierIssue& issue : c.matter.revisions()) add_revision(c, values, issue, false);
  add_revision(c, values,
               {c.spec.revision, c.spec.date, std::string(json_word(c.spec.verdict)), {}}, true);
  add_prices(c, values);
  const std::string& legal = c.house("legal");
  if (!legal.empty()) values.add("LINE").set("TEXT", legal);
  if (const auto& notes = c.request.request.notes) {
    Values& remarks = values.add("REMARKS");
    remarks.set("KEY", place_key(notes->origin));
    remarks.set("TEXT", notes->value);
  }
  add_signatures(c, values);
  return c.expand("control", values);
}

}  // namespace output
