/// A libharu document with its faults made exceptions. Only the painter's own files include this.
#pragma once

#include <hpdf.h>

#include <string>
#include <string_view>

namespace output {

// The painter reads and writes fields of libharu's structures, which other versions lay out or
// fill differently.
static_assert(HPDF_VERSION_ID == 20300, "the painter was written against libharu 2.3.0");

/// Owns one document. Not to be shared between threads; every thread makes its own.
class Pdf {
 public:
  Pdf();
  ~Pdf();
  Pdf(const Pdf&) = delete;
  Pdf& operator=(const Pdf&) = delete;
  Pdf(Pdf&&) = delete;
  Pdf& operator=(Pdf&&) = delete;

  HPDF_Doc doc() const { return doc_; }
  HPDF_MMgr memory() const { return doc_->mmgr; }
  HPDF_Xref xref() const { return doc_->xref; }

  /// Throws std::runtime_error with libharu's code when any call since construction failed.
  void check() const;
  /// The same for a call that returns a status, which not every fault reports otherwise.
  void ok(HPDF_STATUS status) const;
  /// The same for a call that returns an object.
  template <class T>
  T* made(T* object) const {
    if (object == nullptr) fail(HPDF_FAILD_TO_ALLOC_MEM);
    return object;
  }

  HPDF_Dict dictionary() const;
  HPDF_Array array() const;
  /// The same array or dictionary as an object of its own, which others may share.
  template <class T>
  T registered(T object) const {
    ok(HPDF_Xref_Add(xref(), object));
    return object;
  }
  /// A stream of these bytes, registered as an object of its own.
  HPDF_Dict stream(std::string_view bytes, bool compressed) const;
  /// A string object for UTF-8 text, by text_string().
  void add_text(HPDF_Dict dictionary, const char* key, std::string_view utf8) const;
  void add_name(HPDF_Dict dictionary, const char* key, const char* name) const;
  void add_number(HPDF_Dict dictionary, const char* key, int value) const;
  void add(HPDF_Dict dictionary, const char* key, void* object) const;
  void append(HPDF_Array array, void* object) const;
  void append_number(HPDF_Array array, int value) const;
  void append_real(HPDF_Array array, double value) const;
  /// A string object written in hexadecimal.
  HPDF_Binary binary(std::string_view bytes) const;
  /// Puts bytes at the end of a stream's content.
  void write(HPDF_Dict stream, std::string_view bytes) const;
  /// Gives an empty stream its content, compressed.
  void write_packed(HPDF_Dict stream, std::string_view bytes) const;

 private:
  struct Fault {
    HPDF_STATUS code = HPDF_OK;
    HPDF_STATUS detail = 0;
  };
  static void record(HPDF_STATUS code, HPDF_STATUS detail, void* fault);
  [[noreturn]] void fail(HPDF_STATUS code) const;

  Fault fault_;
  HPDF_Doc doc_;
};

/// The bytes as libharu's functions take them.
const HPDF_BYTE* as_bytes(std::string_view text);

}  // namespace output
