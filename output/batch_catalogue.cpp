#include "output/batch_catalogue.h"

#include <utility>

#include "intake/price_list.h"
#include "output/digest.h"

namespace output {
namespace {

constexpr std::string_view catalogue_name = "catalogue.xml";

std::string beside(const std::string& folder) {
  return folder == "." ? std::string(catalogue_name) : join_path(folder, catalogue_name);
}

/// The folder above, by name where that is safe.
std::string above(const std::string& folder) {
  if (folder == ".") return "..";
  const std::string_view last = name_of(folder);
  if (last == ".." || last == "." || last.empty()) return join_path(folder, "..");
  return folder_of(folder);
}

}  // namespace

Catalogues::Catalogues(Os& os, std::optional<std::string> named, std::optional<std::string> prices)
    : os_(os), named_(std::move(named)), prices_(std::move(prices)) {}

std::optional<std::string> Catalogues::place(const std::string& request_path) {
  if (named_) return named_;
  const std::string folder = request_path == "-" ? "." : folder_of(request_path);
  const auto [known, fresh] = by_folder_.try_emplace(folder);
  if (!fresh) return known->second;
  for (const std::string& path : {beside(folder), beside(above(folder))}) {
    if (os_.look(path) == EntryKind::file) return known->second = path;
  }
  return known->second = os_.environment("SWATHSPEC_CATALOGUE");
}

std::shared_ptr<const LoadedCatalogue> Catalogues::find(const std::string& request_path) {
  const std::optional<std::string> path = place(request_path);
  return path ? load(*path) : nullptr;
}

std::shared_ptr<const LoadedCatalogue> Catalogues::load(const std::string& path) {
  std::shared_ptr<const LoadedCatalogue>& known = loaded_[path];
  if (known) return known;
  auto fresh = std::make_shared<LoadedCatalogue>();
  fresh->path = path;
  fresh->text = os_.read_file(path);
  fresh->read = intake::read_catalogue(path, fresh->text);
  fresh->read.catalogue.source_sha256 = sha256(fresh->text);
  fresh->usable = fresh->read.usable;
  if (prices_) lay_prices(*fresh);
  return known = std::move(fresh);
}

void Catalogues::lay_prices(LoadedCatalogue& over) const {
  const std::string text = os_.read_file(*prices_);
  const intake::Diagnostics findings = intake::apply_prices(*prices_, text, over.read.catalogue);
  over.read.findings.insert(over.read.findings.end(), findings.begin(), findings.end());
  over.read.usable = over.read.usable && !intake::has_errors(findings);
  over.prices = *prices_;
  over.prices_text = text;
  over.read.catalogue.source_sha256 = sha256(over.read.catalogue.source_sha256 + sha256(text));
}

}  // namespace output
