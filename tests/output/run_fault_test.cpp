/// Every call to the system fails once at every place of a whole run: nothing that stood is lost,
/// nothing half-written stays, the exit status is right, and the next run completes the folder.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <string>

#include "tests/output/support/desk.h"

namespace {

using output::Exit;
using support::Desk;

struct Fault {
  const char* operation;
  int code;
  Exit exit;
};

/// interface.md: 73 what cannot be created, 74 what cannot be read or written.
constexpr std::array<Fault, 10> faults{{{"create", EACCES, Exit::cannot_create},
                                        {"create", ENOSPC, Exit::io},
                                        {"create", EMFILE, Exit::cannot_create},
                                        {"write", ENOSPC, Exit::io},
                                        {"flush", EIO, Exit::io},
                                        {"rename", EACCES, Exit::cannot_create},
                                        {"make folder", EROFS, Exit::cannot_create},
                                        {"lock", EACCES, Exit::cannot_create},
                                        {"list", EIO, Exit::io},
                                        {"read", EIO, Exit::io}}};

/// The program's own file, the work data, the catalogue for the key of the first level.
bool is_help(const std::string& path) {
  return path == "/proc/self/exe" || path == "out/.swathspec/known.jsonl" ||
         path == "catalogue.xml";  // read again for the request itself
}

/// An issue that stands, and one request more.
void prepare(Desk& desk) {
  desk.request("a.ini", "A");
  REQUIRE(desk.build() == Exit::success);
  desk.request("b.ini", "B");
}

void copy(const Desk& from, Desk& to) {
  to.files = from.files;
  to.folders = from.folders;
}

bool has_temporaries(const Desk& desk) {
  return std::any_of(desk.files.begin(), desk.files.end(), [](const auto& file) {
    return output::is_temporary(output::name_of(file.first));
  });
}

TEST_CASE("every call fails once at every place of a run") {
  Desk before;
  prepare(before);
  Desk undisturbed;
  copy(before, undisturbed);
  REQUIRE(undisturbed.build() == Exit::success);
  for (const Fault& fault : faults) {
    const std::string operation = fault.operation;
    int places = 0;
    for (int nth = 1;; ++nth) {
      CAPTURE(operation);
      CAPTURE(fault.code);
      CAPTURE(nth);
      Desk desk;
      copy(before, desk);
      desk.fail(operation, nth, fault.code);
      const Exit exit = desk.build();
      if (desk.faults() == 0) {
        CHECK(exit == Exit::success);
        break;
      }
      ++places;
      // What is only read to go faster may be unreadable.
      CHECK(exit ==
            (operation == "read" && is_help(desk.failed_path()) ? Exit::success : fault.exit));
      for (const auto& [name, bytes] : before.issued()) {
        if (name.ends_with(".pdf") || name.ends_with(".bom.csv") || name.ends_with(".json")) {
          CHECK(desk.files.at(name) == bytes);
        }
      }
      support::check_archive(desk, false);
      CHECK_FALSE(has_temporaries(desk));
      Desk next;
      copy(desk, next);
      CHECK(next.build() == Exit::success);
      CHECK(next.issued() == undisturbed.issued());
      support::check_archive(next, true);
    }
    CHECK(places > 0);
  }
}

TEST_CASE("a run that ends at any call leaves whole files, and the next completes them") {
  Desk before;
  prepare(before);
  Desk undisturbed;
  copy(before, undisturbed);
  REQUIRE(undisturbed.build() == Exit::success);
  const int calls = undisturbed.call_count();
  REQUIRE(calls > 20);
  for (int call = 1; call <= calls; ++call) {
    CAPTURE(call);
    Desk desk;
    copy(before, desk);
    desk.end_at(call);
    CHECK(desk.build() != Exit::success);
    support::check_archive(desk, false);
    Desk next;
    copy(desk, next);
    CHECK(next.build() == Exit::success);
    CHECK(next.issued() == undisturbed.issued());
    support::check_archive(next, true);
  }
}

TEST_CASE("a run that supersedes ends at any call and loses nothing") {
  Desk before;
  prepare(before);
  REQUIRE(before.build() == Exit::success);
  before.request("a.ini", "A", "revision = A\n\n[line]\nspeed = 30 m/min\n");
  Desk undisturbed;
  copy(before, undisturbed);
  REQUIRE(undisturbed.build({"--force"}) == Exit::success);
  for (int call = 1; call <= undisturbed.call_count(); ++call) {
    CAPTURE(call);
    Desk desk;
    copy(before, desk);
    desk.end_at(call);
    CHECK(desk.build({"--force"}) != Exit::success);
    support::check_archive(desk, false);
    Desk next;
    copy(desk, next);
    CHECK(next.build({"--force"}) == Exit::success);
    CHECK(next.issued() == undisturbed.issued());
  }
}

}  // namespace
