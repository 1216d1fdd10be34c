// Nothing of the samples stands in the program: no id, no head, no maker, no customer.
#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <set>
#include <string>
#include <vector>

#include "tests/source.h"
#include "tests/whole/support/samples.h"

namespace {

std::string lower(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(), [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  });
  return text;
}

void add(const calc::Given<std::string>& given, std::set<std::string>& names) {
  if (!given) return;
  names.insert(lower(given->value.substr(0, given->value.find(" (invented)"))));
}

std::set<std::string> sample_names() {
  std::set<std::string> names;
  for (const auto& read : whole::sample_requests()) {
    add(read.request.request.id, names);
    add(read.request.request.title, names);
    add(read.request.customer.organisation, names);
    add(read.request.customer.contact, names);
  }
  for (const calc::Head& head : whole::sample_catalogue().heads) {
    names.insert(lower(head.name));
    add(head.maker, names);
    add(head.part_number, names);
  }
  return names;
}

std::vector<std::string> program_files() {
  std::vector<std::string> files;
  const std::filesystem::path root = tests::source("");
  for (const char* folder : {"calc", "intake", "output", "templates"}) {
    for (const auto& entry : std::filesystem::recursive_directory_iterator(root / folder)) {
      if (entry.is_regular_file()) {
        files.push_back(std::filesystem::relative(entry.path(), root).string());
      }
    }
  }
  return files;
}

/// The names that occur in a text, in any case of letters.
std::vector<std::string> found_in(const std::string& text, const std::set<std::string>& names) {
  std::vector<std::string> found;
  const std::string small = lower(text);
  std::copy_if(names.begin(), names.end(), std::back_inserter(found),
               [&](const std::string& name) { return small.find(name) != std::string::npos; });
  return found;
}

}  // namespace

TEST_CASE("no id, head, maker or customer of the samples stands in the program") {
  const std::set<std::string> names = sample_names();
  CHECK(names.size() > 40);
  const std::vector<std::string> files = program_files();
  CHECK(files.size() > 200);
  for (const std::string& file : files) {
    for (const std::string& name : found_in(whole::read_source(file), names)) {
      FAIL_CHECK(file << " names " << name);
    }
  }
}

TEST_CASE("a name in a text is found whatever its letters' case") {
  CHECK(found_in("if (head == \"Xy-1\")", {"xy-1", "xy-2"}) == std::vector<std::string>{"xy-1"});
}
