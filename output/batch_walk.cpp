#include "output/batch_walk.h"

#include <algorithm>
#include <optional>
#include <set>
#include <utility>

#include "output/names.h"

namespace output {
namespace {

constexpr const char* standard_input = "<stdin>";

bool is_request_name(std::string_view name) {
  const std::string lower = lower_ascii(name);
  return lower.ends_with(".xml") || lower.ends_with(".ini");
}

class Walker {
 public:
  Walker(Os& os, const std::string& skipped) : os_(os) {
    if (!skipped.empty()) skipped_ = os_.real_path(skipped);
  }

  void take(const std::string& root) {
    walk_.roots.push_back(root);
    if (root == "-") {
      if (!add(root, standard_input)) tell_again(root);
      return;
    }
    try {
      take_named(root);
    } catch (const OsError& error) {
      fail(root, error);
    }
  }
  Walk result() { return std::move(walk_); }

 private:
  void take_named(const std::string& root) {
    const std::optional<EntryKind> kind = os_.look(root);
    if (!kind) {
      walk_.faults.push_back(
          {file_finding(path_missing, root, "there is no such file or folder"), Exit::no_input});
    } else if (*kind != EntryKind::folder) {
      if (!add(root, std::string(name_of(root)))) tell_again(root);
    } else {
      std::vector<std::string> found;
      collect(root, found);
      std::sort(found.begin(), found.end());
      const std::size_t start = join_path(root, "").size();
      bool fresh = found.empty();
      for (const std::string& path : found) fresh = add(path, path.substr(start)) || fresh;
      if (!fresh) tell_again(root);
    }
  }

  void collect(const std::string& folder, std::vector<std::string>& found) {
    for (const Entry& entry : os_.list_folder(folder)) {
      if (entry.name.starts_with('.')) continue;
      std::string path = join_path(folder, entry.name);
      if (entry.kind == EntryKind::file && is_request_name(entry.name)) {
        found.push_back(std::move(path));
      } else if (entry.kind == EntryKind::folder && !is_skipped(path)) {
        collect_below(path, found);
      }
    }
  }

  /// A folder that cannot be listed does not hide the others.
  void collect_below(const std::string& folder, std::vector<std::string>& found) {
    try {
      collect(folder, found);
    } catch (const OsError& error) {
      fail(folder, error);
    }
  }

  void fail(const std::string& path, const OsError& error) {
    walk_.faults.push_back({file_finding(unreadable, path, error.what()), Exit::io});
  }

  bool is_skipped(const std::string& path) { return skipped_ && os_.real_path(path) == skipped_; }

  /// False where the file is there already.
  bool add(std::string path, std::string name) {
    if (!seen_.insert(os_.real_path(path).value_or(path)).second) return false;
    walk_.sources.push_back({std::move(path), std::move(name), walk_.roots.size() - 1});
    return true;
  }

  /// What is named twice is worked through once.
  void tell_again(const std::string& root) {
    walk_.faults.push_back({file_finding(named_twice, root, "named twice, and read once",
                                         "name each file or folder once"),
                            Exit::success});
  }

  Os& os_;
  std::optional<std::string> skipped_;
  std::set<std::string> seen_;
  Walk walk_;
};

}  // namespace

Walk walk(Os& os, const std::vector<std::string>& paths, const std::string& skipped) {
  Walker walker(os, skipped);
  for (const std::string& path : paths) walker.take(path);
  return walker.result();
}

}  // namespace output
