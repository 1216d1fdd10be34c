#include "tests/output/support/memory_os.h"

#include <cerrno>
#include <functional>
#include <utility>

namespace support {

using output::Entry;
using output::EntryKind;
using output::OsError;

void MemoryOs::fail(const std::string& operation, int nth, int code) {
  planned_[operation] = {nth, code};
}

void MemoryOs::step(const std::string& operation, const std::string& path) {
  const std::lock_guard guard(mutex_);
  ++count_;
  calls.push_back(operation + " " + path);
  if (last_call_ && count_ >= *last_call_) throw OsError(operation, path, EIO);
  const auto planned = planned_.find(operation);
  if (planned != planned_.end() && --planned->second.nth == 0) {
    ++faults_;
    failed_path_ = path;
    throw OsError(operation, path, planned->second.code);
  }
}

std::string MemoryOs::read_file(const std::string& path) {
  const std::lock_guard guard(mutex_);
  step("read", path);
  const auto file = files.find(path);
  if (file == files.end()) throw OsError("read", path, ENOENT);
  return file->second;
}

/// In pieces that end within a line.
void MemoryOs::read_pieces(const std::string& path,
                           const std::function<void(std::string_view)>& take) {
  constexpr std::size_t piece = 100;
  const std::string whole = read_file(path);
  for (std::size_t at = 0; at < whole.size(); at += piece) {
    take(std::string_view(whole).substr(at, piece));
  }
}

class MemoryOs::Writer final : public output::FileWriter {
 public:
  Writer(MemoryOs& os, std::string path) : os_(os), path_(std::move(path)) {
    os_.step("create", path_);
    const std::lock_guard guard(os_.mutex_);
    os_.files[path_].clear();
  }
  void add(std::string_view bytes) override {
    const std::lock_guard guard(os_.mutex_);
    os_.files[path_] += bytes.substr(0, bytes.size() / 2);  // what a fault in the middle leaves
    os_.step("write", path_);
    os_.files[path_] += bytes.substr(bytes.size() / 2);
  }
  void finish() override { os_.step("flush", path_); }

 private:
  MemoryOs& os_;
  std::string path_;
};

std::unique_ptr<output::FileWriter> MemoryOs::open_new(const std::string& path) {
  return std::make_unique<Writer>(*this, path);
}

std::optional<output::Stamp> MemoryOs::stamp(const std::string& path) {
  const std::lock_guard guard(mutex_);
  const auto file = files.find(path);
  if (file == files.end()) return std::nullopt;
  output::Stamp stamp;
  stamp.size = file->second.size();
  stamp.inode = std::hash<std::string>()(file->second);
  stamp.modified_ns = noted_late ? 0 : 2;
  stamp.changed_ns = 1;
  return stamp;
}

void MemoryOs::create_file(const std::string& path, std::string_view bytes) {
  const std::lock_guard guard(mutex_);
  step("create", path);
  files[path] = bytes.substr(0, bytes.size() / 2);  // what a fault in the middle leaves
  step("write", path);
  files[path] = bytes;
  step("flush", path);
}

void MemoryOs::rename_file(const std::string& from, const std::string& to) {
  const std::lock_guard guard(mutex_);
  step("rename", to);
  files[to] = files.at(from);
  files.erase(from);
}

bool MemoryOs::remove_file(const std::string& path) noexcept {
  const std::lock_guard guard(mutex_);
  if (last_call_ && count_ >= *last_call_) return false;
  return files.erase(path) != 0;
}

void MemoryOs::flush_folder(const std::string& path) { step("flush", path); }

void MemoryOs::make_folders(const std::string& path) {
  const std::lock_guard guard(mutex_);
  step("make folder", path);
  for (std::size_t slash = path.find('/'); slash != std::string::npos;
       slash = path.find('/', slash + 1)) {
    folders.insert(path.substr(0, slash));
  }
  folders.insert(path);
}

std::vector<Entry> MemoryOs::list_folder(const std::string& path) {
  const std::lock_guard guard(mutex_);
  step("list", path);
  if (!folders.contains(path)) throw OsError("list", path, ENOENT);
  std::vector<Entry> entries;
  const std::string prefix = path == "." ? "" : path + "/";
  const auto add = [&](const std::string& full, EntryKind kind) {
    if (!full.starts_with(prefix) || full.size() == prefix.size() || full == ".") return;
    const std::string name = full.substr(prefix.size());
    if (name.find('/') == std::string::npos) entries.push_back({name, kind});
  };
  for (const auto& [full, bytes] : files) add(full, EntryKind::file);
  for (const std::string& full : folders) add(full, EntryKind::folder);
  return entries;
}

std::optional<EntryKind> MemoryOs::look(const std::string& path) {
  const std::lock_guard guard(mutex_);
  if (files.contains(path)) return EntryKind::file;
  if (folders.contains(path)) return EntryKind::folder;
  return std::nullopt;
}

std::optional<std::string> MemoryOs::real_path(const std::string& path) {
  if (!look(path)) return std::nullopt;
  return path.starts_with("./") ? path.substr(2) : path;
}

std::shared_ptr<void> MemoryOs::lock(const std::string& path, output::Hold) {
  step("lock", path);
  return locked_by_another ? nullptr : std::make_shared<int>(0);
}

void MemoryOs::write_output(std::string_view text) {
  const std::lock_guard guard(mutex_);
  step("print", "<stdout>");
  standard_output += text;
}

void MemoryOs::write_error(std::string_view text) {
  const std::lock_guard guard(mutex_);
  standard_error += text;
}

std::optional<std::string> MemoryOs::environment(const std::string& name) {
  const auto found = variables.find(name);
  if (found == variables.end()) return std::nullopt;
  return found->second;
}

}  // namespace support
