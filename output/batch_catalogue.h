/// Which catalogue a request is calculated with.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>

#include "intake/read.h"
#include "output/os.h"

namespace output {

struct LoadedCatalogue {
  std::string path, text;
  intake::ReadCatalogue read;
  bool usable = false;  ///< of the catalogue by itself
  std::string prices;   ///< path of the price list laid over it; empty for none
  std::string prices_text;
};

/// Finds and reads catalogues, each once.
class Catalogues {
 public:
  /// `named`: the one of the command line, which then serves every request. `prices`: a price list
  /// laid over each.
  explicit Catalogues(Os& os, std::optional<std::string> named = {},
                      std::optional<std::string> prices = {});

  /// The named one, else catalogue.xml beside the request, then one folder up, then the one of
  /// SWATHSPEC_CATALOGUE; null when there is none. "-" is looked for from the current folder.
  /// Throws OsError when it cannot be read.
  std::shared_ptr<const LoadedCatalogue> find(const std::string& request_path);

 private:
  std::optional<std::string> place(const std::string& request_path);
  std::shared_ptr<const LoadedCatalogue> load(const std::string& path);
  void lay_prices(LoadedCatalogue& over) const;

  Os& os_;
  std::optional<std::string> named_, prices_;
  std::map<std::string, std::optional<std::string>> by_folder_;
  std::map<std::string, std::shared_ptr<const LoadedCatalogue>> loaded_;
};

}  // namespace output
