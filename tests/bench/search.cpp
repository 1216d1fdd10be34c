/// Time of the search: catalogues made by number at 1,000 heads, and the sample requests with their
/// own catalogue and with one of 1,000 heads. `winner` tells what is chosen, `search` the reasons
/// of every other head and the alternatives too. A measurement, not a test.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "calc/edges.h"
#include "calc/nearest.h"
#include "calc/selection.h"
#include "calc/verdict.h"
#include "intake/read.h"
#include "tests/calc/support/catalogue_maker.h"

namespace {

constexpr const char* date = "2026-11-25";
constexpr int repeats = 5;

/// Least time of several runs [ms], for the machine may be busy.
template <class Work>
double milliseconds(Work work) {
  using Clock = std::chrono::steady_clock;
  double least = 1e300;
  for (int i = 0; i < repeats; ++i) {
    const auto begin = Clock::now();
    work();
    least =
        std::min(least, std::chrono::duration<double, std::milli>(Clock::now() - begin).count());
  }
  return least;
}

struct Times {
  std::vector<double> winner, search, decision, edges, nearest;
  void add(const calc::Request& request, const calc::Catalogue& catalogue) {
    const calc::Job job = calc::resolve(request, catalogue, date);
    calc::Selection selection;
    winner.push_back(milliseconds([&] {
      calc::Chooser(catalogue, job.currency).choose(job, nullptr, calc::Chooser::Told::winner);
    }));
    search.push_back(milliseconds([&] { selection = calc::select(job, catalogue); }));
    decision.push_back(milliseconds([&] { calc::decide(job, catalogue, selection); }));
    if (!job.missing.empty()) return;
    if (selection.chosen.empty()) {
      nearest.push_back(milliseconds([&] { calc::nearest_miss(job, catalogue, selection); }));
    } else {
      edges.push_back(milliseconds([&] { calc::edges(job, catalogue, selection); }));
    }
  }
};

void print(const char* what, std::vector<double> times) {
  if (times.empty()) return;
  std::sort(times.begin(), times.end());
  double sum = 0;
  for (const double t : times) sum += t;
  std::printf("%-36s %.2f ms median, %.2f mean, %.2f most   (%zu requests)\n", what,
              times[times.size() / 2], sum / static_cast<double>(times.size()), times.back(),
              times.size());
}

void print(const std::string& of, const Times& times) {
  print(("winner, " + of).c_str(), times.winner);
  print(("search, " + of).c_str(), times.search);
  print(("decision, " + of).c_str(), times.decision);
  print(("edges, " + of).c_str(), times.edges);
  print(("nearest miss, " + of).c_str(), times.nearest);
}

std::string text_of(const std::filesystem::path& path) {
  std::ostringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  return text.str();
}

Times of_samples(const std::filesystem::path& folder, const calc::Catalogue& catalogue) {
  Times times;
  for (const auto& entry : std::filesystem::directory_iterator(folder)) {
    const std::string extension = entry.path().extension().string();
    if (extension != ".ini" && extension != ".xml") continue;
    const std::string name = entry.path().filename().string();
    for (const auto& read : intake::read_requests(name, text_of(entry.path())).requests) {
      if (read.usable) times.add(read.request, catalogue);
    }
  }
  return times;
}

Times of_made(std::size_t heads, std::uint64_t requests) {
  Times times;
  for (std::uint64_t i = 0; i < requests; ++i) {
    times.add(made::request(i), made::catalogue(i, heads));
  }
  return times;
}

}  // namespace

int main(int count, char** arguments) {
  if (count != 2) {
    static_cast<void>(std::fputs("usage: bench_search SAMPLES\n", stderr));
    return 64;
  }
  const std::filesystem::path samples = arguments[1];
  print("1,000 heads", of_made(1000, 40));
  print("the samples at 1,000 heads", of_samples(samples, made::catalogue(0, 1000)));
  const auto own = intake::read_catalogue("", text_of(samples / "catalogue.xml"));
  print("the samples", of_samples(samples, own.catalogue));
  return 0;
}
