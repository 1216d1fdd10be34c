#include "output/paint_pdf.h"

#include <array>
#include <charconv>
#include <iterator>
#include <stdexcept>
#include <vector>

#include "output/deflate.h"
#include "output/paint_text.h"

namespace output {
namespace {

/// Names the filter of a stream whose content is packed already: libharu names only those it
/// applies itself.
HPDF_STATUS name_filter(HPDF_Dict, HPDF_Stream file) {
  return HPDF_Stream_WriteStr(file, "/Filter /FlateDecode\n");
}

}  // namespace

const HPDF_BYTE* as_bytes(std::string_view text) {
  return static_cast<const HPDF_BYTE*>(static_cast<const void*>(text.data()));
}

Pdf::Pdf() : doc_(HPDF_New(&Pdf::record, &fault_)) {
  if (doc_ == nullptr) throw std::runtime_error("libharu could not start a document");
}

Pdf::~Pdf() { HPDF_Free(doc_); }

void Pdf::record(HPDF_STATUS code, HPDF_STATUS detail, void* fault) {
  auto& first = *static_cast<Fault*>(fault);
  if (first.code == HPDF_OK) first = {code, detail};
}

void Pdf::fail(HPDF_STATUS code) const {
  const Fault fault = fault_.code != HPDF_OK ? fault_ : Fault{code, 0};
  std::array<char, 16> digits{};
  std::to_chars(digits.begin(), std::prev(digits.end()), fault.code, 16);  // zeros end it
  throw std::runtime_error(std::string("libharu fault 0x") + digits.data() + ", detail " +
                           std::to_string(fault.detail));
}

void Pdf::check() const {
  if (fault_.code != HPDF_OK) fail(fault_.code);
}

void Pdf::ok(HPDF_STATUS status) const {
  if (status != HPDF_OK || fault_.code != HPDF_OK) fail(status);
}

HPDF_Dict Pdf::dictionary() const { return made(HPDF_Dict_New(memory())); }

HPDF_Array Pdf::array() const { return made(HPDF_Array_New(memory())); }

HPDF_Dict Pdf::stream(std::string_view bytes, bool compressed) const {
  HPDF_Dict made_stream = made(HPDF_DictStream_New(memory(), xref()));
  if (compressed) {
    write_packed(made_stream, bytes);
  } else {
    write(made_stream, bytes);
  }
  return made_stream;
}

void Pdf::add_text(HPDF_Dict dictionary, const char* key, std::string_view utf8) const {
  const std::string bytes = text_string(utf8);
  if (bytes.size() > HPDF_LIMIT_MAX_STRING_LEN) {
    throw std::invalid_argument("title or other information text too long for a PDF string");
  }
  if (bytes == utf8) {
    add(dictionary, key, made(HPDF_String_New(memory(), bytes.c_str(), nullptr)));
  } else {
    add(dictionary, key, binary(bytes));
  }
}

void Pdf::add_name(HPDF_Dict dictionary, const char* key, const char* name) const {
  ok(HPDF_Dict_AddName(dictionary, key, name));
}

void Pdf::add_number(HPDF_Dict dictionary, const char* key, int value) const {
  ok(HPDF_Dict_AddNumber(dictionary, key, value));
}

void Pdf::add(HPDF_Dict dictionary, const char* key, void* object) const {
  ok(HPDF_Dict_Add(dictionary, key, object));
}

void Pdf::append(HPDF_Array array, void* object) const { ok(HPDF_Array_Add(array, object)); }

void Pdf::append_number(HPDF_Array array, int value) const {
  ok(HPDF_Array_AddNumber(array, value));
}

void Pdf::append_real(HPDF_Array array, double value) const {
  ok(HPDF_Array_AddReal(array, static_cast<HPDF_REAL>(value)));
}

HPDF_Binary Pdf::binary(std::string_view bytes) const {
  std::vector<HPDF_BYTE> copy(as_bytes(bytes), as_bytes(bytes) + bytes.size());
  return made(HPDF_Binary_New(memory(), copy.data(), static_cast<HPDF_UINT>(copy.size())));
}

void Pdf::write(HPDF_Dict stream, std::string_view bytes) const {
  if (bytes.empty()) return;
  ok(HPDF_Stream_Write(stream->stream, as_bytes(bytes), static_cast<HPDF_UINT>(bytes.size())));
}

void Pdf::write_packed(HPDF_Dict stream, std::string_view bytes) const {
  stream->filter = HPDF_STREAM_FILTER_NONE;
  stream->write_fn = &name_filter;
  write(stream, deflated(bytes));
}

}  // namespace output
