#include "output/os.h"

#include <doctest/doctest.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <string>
#include <string_view>

#include "output/digest.h"
#include "tests/output/support/memory_os.h"

namespace {

using output::EntryKind;
using output::Os;
using output::OsError;

/// A fresh folder of the real file system, taken away at the end.
class Folder {
 public:
  Folder() {
    std::string pattern = "/tmp/swathspec_os_test." + std::string(6, 'X');  // as mkdtemp asks
    REQUIRE(::mkdtemp(pattern.data()) != nullptr);
    path_ = pattern;
  }
  ~Folder() { remove(path_); }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  Folder(Folder&&) = delete;
  Folder& operator=(Folder&&) = delete;
  std::string operator/(const std::string& name) const { return path_ + "/" + name; }
  const std::string& path() const { return path_; }

 private:
  static void remove(const std::string& folder) {
    Os os;
    for (const output::Entry& entry : os.list_folder(folder)) {
      const std::string path = output::join_path(folder, entry.name);
      if (entry.kind == EntryKind::folder) {
        remove(path);
      } else {
        os.remove_file(path);
      }
    }
    ::rmdir(folder.c_str());
  }
  std::string path_;
};

template <class Call>
int code_of(Call call) {
  try {
    call();
  } catch (const OsError& error) {
    return error.code;
  }
  return 0;
}

TEST_CASE("a file written whole reads back, and leaves nothing beside it") {
  const Folder folder;
  Os os;
  const std::string bytes("a\0b\r\n\xFF", 6);
  output::write_whole(os, folder / "x.pdf", bytes);
  CHECK(os.read_file(folder / "x.pdf") == bytes);
  output::write_whole(os, folder / "x.pdf", "second");
  CHECK(os.read_file(folder / "x.pdf") == "second");
  CHECK(os.list_folder(folder.path()).size() == 1);
}

TEST_CASE("a temporary left by a killed run is replaced, a link in its place not followed") {
  const Folder folder;
  Os os;
  os.create_file(folder / "precious", "keep");
  REQUIRE(::symlink((folder / "precious").c_str(), (folder / ".x.pdf.part").c_str()) == 0);
  output::write_whole(os, folder / "x.pdf", "new");
  CHECK(os.read_file(folder / "precious") == "keep");
  CHECK(os.read_file(folder / "x.pdf") == "new");
}

TEST_CASE("failed calls name what was tried and give the errno") {
  const Folder folder;
  Os os;
  CHECK(code_of([&] { os.read_file(folder / "none"); }) == ENOENT);
  CHECK(code_of([&] { os.read_file(folder.path()); }) == EISDIR);
  CHECK(code_of([&] { os.list_folder(folder / "none"); }) == ENOENT);
  CHECK(code_of([&] { os.rename_file(folder / "none", folder / "x"); }) == ENOENT);
  CHECK(code_of([&] { os.create_file(folder / "none/x", ""); }) == ENOENT);
  CHECK(code_of([&] { os.create_file("/dev/full/x", ""); }) == ENOTDIR);
  CHECK_FALSE(os.remove_file(folder / "none"));
  try {
    os.read_file(folder / "none");
    FAIL("no error");
  } catch (const OsError& error) {
    CHECK(error.operation == "read");
    CHECK(std::string(error.what()).find("none: cannot read: No such file") != std::string::npos);
  }
}

TEST_CASE("folders are made with their parents, a file in the way is an error") {
  const Folder folder;
  Os os;
  os.make_folders(folder / "a/b/c");
  os.make_folders(folder / "a/b/c");
  CHECK(os.look(folder / "a/b/c") == EntryKind::folder);
  os.create_file(folder / "file", "");
  CHECK(code_of([&] { os.make_folders(folder / "file"); }) == ENOTDIR);
  CHECK(code_of([&] { os.make_folders(folder / "file/x"); }) == ENOTDIR);
}

TEST_CASE("listing tells files, folders and linked folders apart") {
  const Folder folder;
  Os os;
  os.make_folders(folder / "sub");
  os.create_file(folder / "file", "");
  REQUIRE(::symlink((folder / "sub").c_str(), (folder / "to_sub").c_str()) == 0);
  REQUIRE(::symlink((folder / "file").c_str(), (folder / "to_file").c_str()) == 0);
  REQUIRE(::symlink("nowhere", (folder / "broken").c_str()) == 0);
  const auto entries = os.list_folder(folder.path());
  const auto kind = [&](const std::string& name) {
    return std::find_if(entries.begin(), entries.end(),
                        [&](const auto& entry) { return entry.name == name; })
        ->kind;
  };
  REQUIRE(entries.size() == 5);
  CHECK(kind("sub") == EntryKind::folder);
  CHECK(kind("file") == EntryKind::file);
  CHECK(kind("to_sub") == EntryKind::linked_folder);
  CHECK(kind("to_file") == EntryKind::file);
  CHECK(kind("broken") == EntryKind::other);
  CHECK_FALSE(os.look(folder / "none").has_value());
  CHECK(os.real_path(folder / "to_sub") == os.real_path(folder / "sub"));
}

TEST_CASE("a lock is held by one handle at a time") {
  const Folder folder;
  Os os;
  auto first = os.lock(folder / "lock", output::Hold::exclusive);
  REQUIRE(first != nullptr);
  CHECK(os.lock(folder / "lock", output::Hold::exclusive) == nullptr);
  first.reset();
  CHECK(os.lock(folder / "lock", output::Hold::exclusive) != nullptr);
}

TEST_CASE("paths") {
  CHECK(output::join_path("a", "b") == "a/b");
  CHECK(output::join_path("a/", "b") == "a/b");
  CHECK(output::join_path("/", "b") == "/b");
  CHECK(output::folder_of("a/b/c") == "a/b");
  CHECK(output::folder_of("c") == ".");
  CHECK(output::folder_of("/c") == "/");
  CHECK(output::name_of("a/b/c") == "c");
  CHECK(output::temporary_path("a/b.pdf") == "a/.b.pdf.part");
  CHECK(output::temporary_path("b.pdf") == ".b.pdf.part");
  CHECK(output::is_temporary(".b.pdf.part"));
  CHECK_FALSE(output::is_temporary("b.part"));
}

TEST_CASE("whatever step of a write fails, the old file stays and no temporary is left") {
  for (const char* operation : {"create", "write", "flush", "rename"}) {
    CAPTURE(operation);
    support::MemoryOs os;
    os.files["x"] = "old";
    os.fail(operation, 1, ENOSPC);
    CHECK(code_of([&] { output::write_whole(os, "x", "new content"); }) == ENOSPC);
    CHECK(os.files.size() == 1);
    CHECK(os.files.at("x") == "old");
  }
}

TEST_CASE("a long file comes in pieces, its lines whole, its digest the same") {
  const Folder folder;
  std::string text;
  for (int i = 0; i < 30000; ++i) text += "line " + std::to_string(i) + "\n";
  text += "the last without an end";
  output::Os os;
  os.create_file(folder / "long", text);
  std::size_t lines = 0;
  std::string last;
  output::each_line(os, folder / "long", [&](std::string_view line) {
    ++lines;
    last = line;
  });
  CHECK(lines == 30001);
  CHECK(last == "the last without an end");
  output::Hasher hasher;
  os.read_pieces(folder / "long", [&](std::string_view piece) { hasher.add(piece); });
  CHECK(hasher.finish() == output::digest_of(text));
}

TEST_CASE("a stamp tells a file that was touched, whatever its times were set to") {
  const Folder folder;
  output::Os os;
  CHECK_FALSE(os.stamp(folder / "none").has_value());
  os.create_file(folder / "a", "one");
  const auto before = os.stamp(folder / "a");
  REQUIRE(before.has_value());
  CHECK(os.stamp(folder / "a") == before);
  CHECK(before->size == 3);
  os.create_file(folder / "a", "two");
  CHECK(os.stamp(folder / "a") != before);
}

TEST_CASE("shared locks stand beside each other, an exclusive one beside none") {
  const Folder folder;
  output::Os os;
  auto one = os.lock(folder / "lock", output::Hold::shared);
  auto two = os.lock(folder / "lock", output::Hold::shared);
  CHECK(one != nullptr);
  CHECK(two != nullptr);
  CHECK(os.lock(folder / "lock", output::Hold::exclusive) == nullptr);
  one.reset();
  two.reset();
  CHECK(os.lock(folder / "lock", output::Hold::waiting) != nullptr);
}

TEST_CASE("a file written in pieces stands under its name only when it is whole") {
  const Folder folder;
  output::Os os;
  {
    output::WholeFile file(os, folder / "a");
    file.add("half");
  }
  CHECK(os.list_folder(folder / ".").empty());
  output::WholeFile file(os, folder / "a");
  file.add("one ");
  file.add(std::string(100000, 'x'));
  file.commit();
  CHECK(os.read_file(folder / "a") == "one " + std::string(100000, 'x'));
}

}  // namespace
