/// The one door to the operating system: files, streams, clock, environment, interruption.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace output {

/// A call to the operating system that failed: what was tried ("read", "create", "write", "flush",
/// "rename", "list", "make folder", "lock"), on what, and the errno it gave.
struct OsError : std::runtime_error {
  OsError(std::string tried, std::string place, int number);
  std::string operation, path;
  int code;
};

enum class EntryKind { file, folder, linked_folder, other };

struct Entry {
  std::string name;
  EntryKind kind = EntryKind::other;  ///< a link to a file counts as the file
};

/// What tells a file that was touched since: any write to it moves `changed_ns`, whatever its
/// writer does to the other times. Equal stamps mean an equal file unless `changed_ns` is as late
/// as the moment the stamp was noted.
struct Stamp {
  std::uint64_t size = 0, inode = 0;
  std::int64_t modified_ns = 0, changed_ns = 0;
  bool operator==(const Stamp&) const = default;
};

/// A new file being written piece by piece. What was not finished is left as it stands.
class FileWriter {
 public:
  FileWriter() = default;
  virtual ~FileWriter() = default;
  FileWriter(const FileWriter&) = delete;
  FileWriter& operator=(const FileWriter&) = delete;
  FileWriter(FileWriter&&) = delete;
  FileWriter& operator=(FileWriter&&) = delete;
  /// Throws OsError, as `finish` does, which flushes the file to the disk and closes it.
  virtual void add(std::string_view bytes) = 0;
  virtual void finish() = 0;
};

enum class Stream { output, error };

/// `exclusive` and `shared` give up at once when somebody is in the way; `waiting` is exclusive and
/// waits for its turn.
enum class Hold { exclusive, shared, waiting };

/// Every call throws OsError unless it says otherwise. Virtual, so that tests can inject faults.
class Os {
 public:
  Os() = default;
  virtual ~Os() = default;
  Os(const Os&) = delete;
  Os& operator=(const Os&) = delete;
  Os(Os&&) = delete;
  Os& operator=(Os&&) = delete;

  /// The whole content of a file or pipe, at most `read_limit` bytes (EFBIG beyond).
  virtual std::string read_file(const std::string& path);
  /// Hands on a file in pieces, however long it is.
  virtual void read_pieces(const std::string& path,
                           const std::function<void(std::string_view)>& take);
  /// The whole of standard input, under the same limit.
  virtual std::string read_input();
  /// Writes a new file and flushes it to the disk; a file already of that name goes first.
  virtual void create_file(const std::string& path, std::string_view bytes);
  /// The same for a file that comes piece by piece.
  virtual std::unique_ptr<FileWriter> open_new(const std::string& path);
  /// Renames within a file system; replaces `to`.
  virtual void rename_file(const std::string& from, const std::string& to);
  /// Removes a file; false when that was not possible. Never throws.
  virtual bool remove_file(const std::string& path) noexcept;
  /// Flushes a folder's list of names to the disk.
  virtual void flush_folder(const std::string& path);
  /// Makes a folder and its parents; nothing to do when it is there.
  virtual void make_folders(const std::string& path);
  /// Every entry but "." and "..", in no particular order.
  virtual std::vector<Entry> list_folder(const std::string& path);
  /// What stands at a path, links followed; nullopt when nothing does.
  virtual std::optional<EntryKind> look(const std::string& path);
  /// The stamp of what stands at a path, links followed; nullopt when nothing does.
  virtual std::optional<Stamp> stamp(const std::string& path);
  /// The path without links and dots, of something that exists; nullopt when it does not.
  virtual std::optional<std::string> real_path(const std::string& path);
  /// A lock held as long as the handle lives; null when somebody else is in the way. On file
  /// systems without locks the handle guards nothing.
  virtual std::shared_ptr<void> lock(const std::string& path, Hold hold);

  /// Writes all of it to standard output or standard error.
  virtual void write_output(std::string_view text);
  virtual void write_error(std::string_view text);
  /// Columns of the terminal a stream goes to; nullopt when it goes elsewhere.
  virtual std::optional<unsigned> columns(Stream stream);

  virtual std::optional<std::string> environment(const std::string& name);
  /// Seconds since 1970-01-01 UTC; never throws.
  virtual std::int64_t now();
  /// Seconds from an unspecified start, never going back, for measuring; never throws.
  virtual double stopwatch();

  /// From now on a closed pipe is an error of the write (EPIPE), and the first interruption
  /// (SIGINT) sets interrupted() instead of ending the program; the second ends it.
  virtual void watch_signals();
  virtual bool interrupted();

  static constexpr std::size_t read_limit = std::size_t{64} << 20;
};

/// Writes a whole file so that its name holds either the old or the new content at any time: a
/// temporary file in the same folder, flushed, renamed. The temporary is removed on failure. The
/// caller flushes the folder.
void write_whole(Os& os, const std::string& path, std::string_view bytes);

/// The same for a file that comes piece by piece: nothing stands under its name before `commit`,
/// and nothing is left of one that was never committed.
class WholeFile {
 public:
  WholeFile(Os& os, std::string path);
  ~WholeFile();
  WholeFile(const WholeFile&) = delete;
  WholeFile& operator=(const WholeFile&) = delete;
  WholeFile(WholeFile&&) = delete;
  WholeFile& operator=(WholeFile&&) = delete;
  void add(std::string_view bytes) { writer_->add(bytes); }
  void commit();

 private:
  Os& os_;
  std::string path_, temporary_;
  std::unique_ptr<FileWriter> writer_;
  bool committed_ = false;
};

/// Hands on the lines of a file one by one, without their ends, however long the file is.
void each_line(Os& os, const std::string& path, const std::function<void(std::string_view)>& take);

/// The path of `name` in `folder`.
std::string join_path(std::string_view folder, std::string_view name);
/// The part before the last "/", "." when there is none, "/" for what stands at the root.
std::string folder_of(std::string_view path);
/// The part after the last "/".
std::string_view name_of(std::string_view path);
/// The name write_whole uses while it writes; a run that was killed may leave it behind.
std::string temporary_path(std::string_view path);
bool is_temporary(std::string_view name);

}  // namespace output
