#include "output/batch_catalogue.h"
#include "output/command.h"
#include "output/json_lines.h"
#include "output/plain_number.h"
#include "output/report_text.h"

namespace output {
namespace {

std::string number_or_dash(const std::optional<double>& value, int digits = 4) {
  return value ? plain(*value, digits) : "-";
}

constexpr std::string_view family_word(calc::InkFamily family) {
  switch (family) {
    case calc::InkFamily::uv:
      return "uv";
    case calc::InkFamily::aqueous:
      return "aqueous";
    case calc::InkFamily::solvent:
      return "solvent";
    case calc::InkFamily::oil:
      return "oil";
  }
  return "?";
}

/// What one mode of one head says, in the units of the table.
struct ModeFigures {
  std::optional<double> colours, native_npi, nozzles, swath_mm;
  std::vector<double> drops_pl, frequencies_khz;
};

ModeFigures figures_of(const calc::HeadMode& mode) {
  ModeFigures figures;
  if (mode.colours) figures.colours = mode.colours->value;
  if (mode.nozzles) figures.nozzles = mode.nozzles->value;
  if (mode.row_pitch) {
    const double rows =
        mode.row_offsets ? static_cast<double>(mode.row_offsets->value.size()) : 1.0;
    figures.native_npi = in_dpi(mode.row_pitch->value) * rows;
    if (figures.nozzles) figures.swath_mm = *figures.nozzles * 25.4 / *figures.native_npi;
  }
  if (mode.drops) {
    for (const calc::Volume drop : mode.drops->value) figures.drops_pl.push_back(in_pl(drop));
  }
  if (mode.frequency) {
    for (const calc::Frequency rating : mode.frequency->value) {
      figures.frequencies_khz.push_back(in_khz(rating));
    }
  }
  return figures;
}

std::string joined(const std::vector<double>& values) {
  std::string text;
  for (const double value : values) text += (text.empty() ? "" : "/") + plain(value, 4);
  return text.empty() ? "-" : text;
}

std::string families(const calc::Head& head) {
  std::string text;
  if (head.families) {
    for (const calc::InkFamily family : head.families->value) {
      text.append(text.empty() ? "" : "/").append(family_word(family));
    }
  }
  return text.empty() ? "-" : text;
}

std::string price(const calc::Head& head) {
  if (!head.price) return "on request";
  return plain(head.price->value.amount.major()) + " " + head.price->value.currency;
}

std::vector<std::string> row(const calc::Head& head, const calc::HeadMode& mode) {
  const ModeFigures figures = figures_of(mode);
  return {terminal_safe(head.name),
          terminal_safe(mode.name),
          number_or_dash(figures.colours),
          number_or_dash(figures.native_npi),
          number_or_dash(figures.nozzles, 6),
          number_or_dash(figures.swath_mm),
          joined(figures.drops_pl),
          joined(figures.frequencies_khz),
          families(head),
          price(head)};
}

std::string table(const calc::Catalogue& catalogue) {
  std::vector<std::vector<std::string>> rows{{"head", "mode", "colours", "npi", "nozzles",
                                              "swath mm", "drops pL", "kHz", "inks", "price"}};
  for (const calc::Head& head : catalogue.heads) {
    for (const calc::HeadMode& mode : head.modes) rows.push_back(row(head, mode));
  }
  return columns(rows, {2, 3, 4, 5});
}

std::string number_or_null(const std::optional<double>& value) {
  return value ? number_json(*value) : "null";
}

std::string numbers(const std::vector<double>& values) {
  std::vector<std::string> texts;
  texts.reserve(values.size());
  for (const double value : values) texts.push_back(number_json(value));
  return array_json(texts);
}

std::string mode_json(const calc::Head& head, const calc::HeadMode& mode) {
  const ModeFigures figures = figures_of(mode);
  return object_json(
      {{"head", text_json(head.name)},
       {"mode", text_json(mode.name)},
       {"colours", number_or_null(figures.colours)},
       {"native_npi", number_or_null(figures.native_npi)},
       {"nozzles", number_or_null(figures.nozzles)},
       {"swath_mm", number_or_null(figures.swath_mm)},
       {"drops_pl", numbers(figures.drops_pl)},
       {"frequencies_khz", numbers(figures.frequencies_khz)},
       {"families", text_json(families(head))},
       {"price", head.price ? number_json(head.price->value.amount.major()) : "null"},
       {"currency", head.price ? text_json(head.price->value.currency) : "null"}});
}

std::string lines_json(const calc::Catalogue& catalogue) {
  std::string text;
  for (const calc::Head& head : catalogue.heads) {
    for (const calc::HeadMode& mode : head.modes) text += mode_json(head, mode) + "\n";
  }
  return text;
}

}  // namespace

Exit run_heads(Os& os, const Options& options) {
  Catalogues catalogues(os, options.catalogue, options.prices);
  const std::shared_ptr<const LoadedCatalogue> found = catalogues.find("-");
  if (!found) {
    os.write_error(program_message("there is no catalogue here; name one with -c"));
    return Exit::no_input;
  }
  const calc::Catalogue& catalogue = found->read.catalogue;
  os.write_error(findings_text(found->read.findings, options.diagnostics));
  if (options.json) {
    os.write_output(lines_json(catalogue));
  } else {
    os.write_output(terminal_safe(found->path) + ": " + std::to_string(catalogue.heads.size()) +
                    " heads, " + std::to_string(found->read.findings.size()) + " findings\n\n" +
                    table(catalogue));
  }
  return found->read.usable ? Exit::success : Exit::data;
}

}  // namespace output
