#include "output/csv.h"

#include <optional>

#include "output/plain_number.h"

namespace output {
namespace {

std::string csv_field(std::string_view text) {
  std::string field;
  if (!text.empty() && std::string_view("=+-@\t\r").find(text.front()) != std::string_view::npos) {
    field = "'";
  }
  field += text;
  if (field.find_first_of(",\"\r\n") == std::string::npos) return field;
  std::string quoted = "\"";
  for (const char c : field) quoted.append(c == '"' ? 2 : 1, c);
  return quoted + "\"";
}

std::string joined(const std::vector<std::string>& texts) {
  std::string all;
  for (const std::string& text : texts) all.append(all.empty() ? "" : "; ").append(text);
  return all;
}

std::string bom_record(const calc::BomLine& line, const std::string& currency) {
  return csv_record({std::to_string(line.item), line.part_number, line.designation,
                     line.technical_data, plain(line.quantity), line.unit,
                     price_text(line.unit_price), price_text(line.extended_price), currency,
                     line.lead_time_days ? plain(*line.lead_time_days) : "", line.source,
                     joined(line.serves), line.reference});
}

}  // namespace

std::string price_text(const std::optional<calc::Money>& price) {
  if (!price) return {};
  const bool negative = price->minor < 0;
  std::string text = std::to_string(negative ? -price->minor : price->minor);
  if (text.size() < 3) text.insert(0, 3 - text.size(), '0');
  text.insert(text.size() - 2, ".");
  return negative ? "-" + text : text;
}

std::string csv_record(const std::vector<std::string>& fields) {
  std::string record;
  for (const std::string& field : fields) {
    if (&field != &fields.front()) record += ',';
    record += csv_field(field);
  }
  return record + "\r\n";
}

std::string write_bom_csv(const calc::Specification& specification) {
  std::string text = csv_record({"item", "part_number", "designation", "technical_data", "quantity",
                                 "unit", "unit_price", "extended_price", "currency",
                                 "lead_time_days", "source", "serves", "reference"});
  if (!specification.station) return text;
  for (const calc::BomLine& line : specification.station->bom) {
    text += bom_record(line, specification.station->currency);
  }
  return text;
}

}  // namespace output
