#include "output/os.h"

#include <dirent.h>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/ioctl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <atomic>
#include <cerrno>
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <system_error>
#include <utility>

namespace output {
namespace {

// A signal can reach nothing but what is global.
// NOLINTNEXTLINE(cppcoreguidelines-avoid-non-const-global-variables)
std::atomic<bool> interrupt_seen{false};

extern "C" void on_interrupt(int /*signal*/) { interrupt_seen.store(true); }

std::string message_of(const std::string& operation, const std::string& path, int code) {
  return path + ": cannot " + operation + ": " + std::generic_category().message(code);
}

/// A file descriptor that closes itself.
class Descriptor {
 public:
  explicit Descriptor(int number) : number_(number) {}
  ~Descriptor() {
    if (number_ >= 0) ::close(number_);
  }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  Descriptor(Descriptor&&) = delete;
  Descriptor& operator=(Descriptor&&) = delete;
  int number() const { return number_; }
  /// Closes it now; errno of a failed close, else 0.
  int close() {
    const int result = ::close(std::exchange(number_, -1));
    return result == 0 ? 0 : errno;
  }

 private:
  int number_;
};

/// Tries again what a signal broke off, unless the signal asked for an end.
bool try_again() { return errno == EINTR && !interrupt_seen.load(); }

/// Hands on what is left of a file in pieces.
void hand_on(int descriptor, const std::string& path,
             const std::function<void(std::string_view)>& take) {
  std::vector<char> buffer(65536);
  for (;;) {
    const ssize_t count = ::read(descriptor, buffer.data(), buffer.size());
    if (count == 0) return;
    if (count > 0) {
      take({buffer.data(), static_cast<std::size_t>(count)});
    } else if (!try_again()) {
      throw OsError("read", path, errno);
    }
  }
}

std::string read_all(int descriptor, const std::string& path) {
  std::string text;
  struct stat known {};
  if (::fstat(descriptor, &known) == 0 && S_ISREG(known.st_mode)) {
    text.reserve(std::min(static_cast<std::size_t>(known.st_size), Os::read_limit));
  }
  hand_on(descriptor, path, [&](std::string_view piece) {
    text += piece;
    if (text.size() > Os::read_limit) throw OsError("read", path, EFBIG);
  });
  return text;
}

void write_all(int descriptor, std::string_view bytes, const std::string& path) {
  while (!bytes.empty()) {
    const ssize_t count = ::write(descriptor, bytes.data(), bytes.size());
    if (count < 0) {
      if (errno == EINTR) continue;
      throw OsError("write", path, errno);
    }
    bytes.remove_prefix(static_cast<std::size_t>(count));
  }
}

EntryKind kind_of(mode_t mode) {
  if (S_ISDIR(mode)) return EntryKind::folder;
  return S_ISREG(mode) ? EntryKind::file : EntryKind::other;
}

EntryKind entry_kind(const std::string& path) {
  struct stat own {};
  struct stat target {};
  if (::lstat(path.c_str(), &own) != 0) return EntryKind::other;
  if (!S_ISLNK(own.st_mode)) return kind_of(own.st_mode);
  if (::stat(path.c_str(), &target) != 0) return EntryKind::other;
  return S_ISDIR(target.st_mode) ? EntryKind::linked_folder : kind_of(target.st_mode);
}

/// A new file; one already of that name goes first. Throws OsError.
int open_new_file(const std::string& path) {
  constexpr int flags = O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC;
  int number = ::open(path.c_str(), flags, 0666);
  if (number < 0 && errno == EEXIST && ::unlink(path.c_str()) == 0) {
    number = ::open(path.c_str(), flags, 0666);
  }
  if (number < 0) throw OsError("create", path, errno);
  return number;
}

/// Collects pieces up to a good size for the disk.
class SystemWriter final : public FileWriter {
 public:
  explicit SystemWriter(const std::string& path) : path_(path), file_(open_new_file(path)) {}
  void add(std::string_view bytes) override {
    constexpr std::size_t piece = 65536;
    if (waiting_.empty() && bytes.size() >= piece) return write_all(file_.number(), bytes, path_);
    waiting_ += bytes;
    if (waiting_.size() >= piece) write_waiting();
  }
  void finish() override {
    write_waiting();
    if (::fsync(file_.number()) != 0) throw OsError("flush", path_, errno);
    if (const int code = file_.close(); code != 0) throw OsError("write", path_, code);
  }

 private:
  void write_waiting() {
    write_all(file_.number(), waiting_, path_);
    waiting_.clear();
  }

  std::string path_;
  Descriptor file_;
  std::string waiting_;
};

std::int64_t nanoseconds(const timespec& time) {
  return std::int64_t{time.tv_sec} * 1'000'000'000 + time.tv_nsec;
}

void make_folder(const std::string& path) {
  if (::mkdir(path.c_str(), 0777) == 0) return;
  const int code = errno;
  struct stat found {};
  if (code == EEXIST && ::stat(path.c_str(), &found) == 0 && S_ISDIR(found.st_mode)) return;
  throw OsError("make folder", path, code == EEXIST ? ENOTDIR : code);
}

}  // namespace

OsError::OsError(std::string tried, std::string place, int number)
    : std::runtime_error(message_of(tried, place, number)),
      operation(std::move(tried)),
      path(std::move(place)),
      code(number) {}

std::string Os::read_file(const std::string& path) {
  const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
  if (file.number() < 0) throw OsError("read", path, errno);
  return read_all(file.number(), path);
}

void Os::read_pieces(const std::string& path, const std::function<void(std::string_view)>& take) {
  const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
  if (file.number() < 0) throw OsError("read", path, errno);
  hand_on(file.number(), path, take);
}

std::string Os::read_input() { return read_all(STDIN_FILENO, "<stdin>"); }

void Os::create_file(const std::string& path, std::string_view bytes) {
  SystemWriter writer(path);
  writer.add(bytes);
  writer.finish();
}

std::unique_ptr<FileWriter> Os::open_new(const std::string& path) {
  return std::make_unique<SystemWriter>(path);
}

void Os::rename_file(const std::string& from, const std::string& to) {
  if (::rename(from.c_str(), to.c_str()) != 0) throw OsError("rename", to, errno);
}

bool Os::remove_file(const std::string& path) noexcept { return ::unlink(path.c_str()) == 0; }

void Os::flush_folder(const std::string& path) {
  const Descriptor folder(::open(path.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (folder.number() < 0) throw OsError("flush", path, errno);
  // EINVAL: a file system that cannot flush folders; there is nothing more to be done on it.
  if (::fsync(folder.number()) != 0 && errno != EINVAL) throw OsError("flush", path, errno);
}

void Os::make_folders(const std::string& path) {
  for (std::size_t slash = path.find('/', 1); slash != std::string::npos;
       slash = path.find('/', slash + 1)) {
    make_folder(path.substr(0, slash));
  }
  make_folder(path);
}

std::vector<Entry> Os::list_folder(const std::string& path) {
  const std::unique_ptr<DIR, int (*)(DIR*)> folder(::opendir(path.c_str()), &::closedir);
  if (!folder) throw OsError("list", path, errno);
  std::vector<Entry> entries;
  for (;;) {
    errno = 0;
    // One handle is read by one thread, which is all readdir asks.
    const dirent* entry = ::readdir(folder.get());  // NOLINT(concurrency-mt-unsafe)
    if (entry == nullptr) break;
    std::string name(static_cast<const char*>(entry->d_name));
    if (name == "." || name == "..") continue;
    const EntryKind kind =
        entry->d_type == DT_REG ? EntryKind::file : entry_kind(join_path(path, name));
    entries.push_back({std::move(name), kind});
  }
  if (errno != 0) throw OsError("list", path, errno);
  return entries;
}

std::optional<EntryKind> Os::look(const std::string& path) {
  struct stat found {};
  if (::stat(path.c_str(), &found) == 0) return kind_of(found.st_mode);
  if (errno == ENOENT || errno == ENOTDIR) return std::nullopt;
  throw OsError("read", path, errno);
}

std::optional<Stamp> Os::stamp(const std::string& path) {
  struct stat found {};
  if (::stat(path.c_str(), &found) == 0) {
    return Stamp{static_cast<std::uint64_t>(found.st_size), found.st_ino,
                 nanoseconds(found.st_mtim), nanoseconds(found.st_ctim)};
  }
  if (errno == ENOENT || errno == ENOTDIR) return std::nullopt;
  throw OsError("read", path, errno);
}

std::optional<std::string> Os::real_path(const std::string& path) {
  const std::unique_ptr<char, void (*)(void*)> real(::realpath(path.c_str(), nullptr), &std::free);
  if (!real) return std::nullopt;
  return std::string(real.get());
}

std::shared_ptr<void> Os::lock(const std::string& path, Hold hold) {
  auto file =
      std::make_shared<Descriptor>(::open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0666));
  if (file->number() < 0) throw OsError("lock", path, errno);
  const int kind = hold == Hold::shared ? LOCK_SH : LOCK_EX;
  const int call = hold == Hold::waiting ? kind : kind | LOCK_NB;
  while (::flock(file->number(), call) != 0) {
    if (errno == EWOULDBLOCK) return nullptr;
    if (errno != EINTR) break;  // no locks here
  }
  return file;
}

void Os::write_output(std::string_view text) { write_all(STDOUT_FILENO, text, "<stdout>"); }
void Os::write_error(std::string_view text) { write_all(STDERR_FILENO, text, "<stderr>"); }

std::optional<unsigned> Os::columns(Stream stream) {
  constexpr unsigned usual = 80;
  const int number = stream == Stream::output ? STDOUT_FILENO : STDERR_FILENO;
  winsize size{};
  if (::isatty(number) == 0) return std::nullopt;
  const bool told = ::ioctl(number, TIOCGWINSZ, &size) == 0 && size.ws_col != 0;
  return told ? size.ws_col : usual;
}

std::optional<std::string> Os::environment(const std::string& name) {
  // Read before any thread starts, and nothing here ever sets a variable.
  const char* value = std::getenv(name.c_str());  // NOLINT(concurrency-mt-unsafe)
  if (value == nullptr) return std::nullopt;
  return std::string(value);
}

std::int64_t Os::now() {
  using std::chrono::duration_cast, std::chrono::seconds, std::chrono::system_clock;
  return duration_cast<seconds>(system_clock::now().time_since_epoch()).count();
}

double Os::stopwatch() {
  return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

void Os::watch_signals() {
  struct sigaction action {};
  action.sa_handler = &on_interrupt;  // NOLINT(cppcoreguidelines-pro-type-union-access)
  action.sa_flags = static_cast<int>(SA_RESETHAND);
  ::sigaction(SIGINT, &action, nullptr);
  action.sa_handler = SIG_IGN;  // NOLINT
  action.sa_flags = 0;
  ::sigaction(SIGPIPE, &action, nullptr);
  ::sigaction(SIGXFSZ, &action, nullptr);
}

bool Os::interrupted() { return interrupt_seen.load(); }

void write_whole(Os& os, const std::string& path, std::string_view bytes) {
  const std::string temporary = temporary_path(path);
  try {
    os.create_file(temporary, bytes);
    os.rename_file(temporary, path);
  } catch (const OsError&) {
    os.remove_file(temporary);
    throw;
  }
}

WholeFile::WholeFile(Os& os, std::string path)
    : os_(os),
      path_(std::move(path)),
      temporary_(temporary_path(path_)),
      writer_(os.open_new(temporary_)) {}

WholeFile::~WholeFile() {
  if (!committed_) os_.remove_file(temporary_);
}

void WholeFile::commit() {
  writer_->finish();
  os_.rename_file(temporary_, path_);
  committed_ = true;
}

void each_line(Os& os, const std::string& path, const std::function<void(std::string_view)>& take) {
  std::string rest;
  os.read_pieces(path, [&](std::string_view piece) {
    rest += piece;
    std::size_t begin = 0;
    for (std::size_t end = rest.find('\n'); end != std::string::npos;
         end = rest.find('\n', begin)) {
      take(std::string_view(rest).substr(begin, end - begin));
      begin = end + 1;
    }
    rest.erase(0, begin);
  });
  if (!rest.empty()) take(rest);
}

std::string join_path(std::string_view folder, std::string_view name) {
  std::string path(folder);
  if (!path.empty() && path.back() != '/') path += '/';
  return path.append(name);
}

std::string folder_of(std::string_view path) {
  const std::size_t slash = path.rfind('/');
  if (slash == std::string_view::npos) return ".";
  return std::string(path.substr(0, slash == 0 ? 1 : slash));
}

std::string_view name_of(std::string_view path) { return path.substr(path.rfind('/') + 1); }

std::string temporary_path(std::string_view path) {
  std::string name = ".";
  name.append(name_of(path)).append(".part");
  const std::size_t folder = path.rfind('/');
  if (folder == std::string_view::npos) return name;
  return std::string(path.substr(0, folder + 1)) + name;
}

bool is_temporary(std::string_view name) {
  return name.size() > 6 && name.front() == '.' && name.ends_with(".part");
}

}  // namespace output
