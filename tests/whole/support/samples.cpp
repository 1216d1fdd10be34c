#include "tests/whole/support/samples.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>

#include "tests/source.h"

namespace whole {
namespace {

const std::string folder = "sample_requests/";

std::vector<std::string> sample_names() {
  std::vector<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator(tests::source(folder))) {
    const std::string extension = entry.path().extension();
    const std::string name = entry.path().filename();
    if ((extension == ".ini" || extension == ".xml") && name != "catalogue.xml") {
      names.push_back(name);
    }
  }
  std::sort(names.begin(), names.end());
  return names;
}

std::vector<intake::ReadRequest> read_samples() {
  std::vector<intake::ReadRequest> requests;
  for (const std::string& name : sample_names()) {
    for (auto& request : intake::read_requests(name, read_source(folder + name)).requests) {
      if (!request.usable) throw std::runtime_error(name + ": " + request.findings.at(0).message);
      requests.push_back(std::move(request));
    }
  }
  return requests;
}

calc::Catalogue read_sample_catalogue() {
  auto read = intake::read_catalogue("catalogue.xml", read_source(folder + "catalogue.xml"));
  if (!read.usable) throw std::runtime_error(intake::to_human(read.findings.at(0)));
  return std::move(read.catalogue);
}

}  // namespace

std::string read_source(const std::string& path) {
  std::ifstream file(tests::source(path), std::ios::binary);
  if (!file) throw std::runtime_error("cannot read " + path);
  return {std::istreambuf_iterator<char>(file), {}};
}

const calc::Catalogue& sample_catalogue() {
  static const calc::Catalogue catalogue = read_sample_catalogue();
  return catalogue;
}

const std::vector<intake::ReadRequest>& sample_requests() {
  static const std::vector<intake::ReadRequest> requests = read_samples();
  return requests;
}

}  // namespace whole
