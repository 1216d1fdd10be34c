/// Collects the findings of one text with their places.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "calc/value.h"
#include "intake/diagnostic.h"
#include "intake/text.h"

namespace intake {

/// Collects findings about `text`, at most 200, so that hostile text cannot make a flood. Codes
/// that start with W are warnings.
class Sink {
 public:
  explicit Sink(const SourceText& text) : text_(&text) {}

  /// The new finding, for its hint, notes and field to be set at once; the reference is good until
  /// the next call.
  Diagnostic& add(std::string_view code, Place where, std::string message);
  /// The same at a value's origin. Pre: the origin is of this text.
  Diagnostic& add(std::string_view code, const calc::Origin& origin, std::string message);

  /// Whether no further finding is kept: costly advice need not be computed any more.
  bool full() const;
  const SourceText& text() const { return *text_; }
  /// All findings in order of line and column; leaves the sink empty.
  Diagnostics take();

 private:
  const SourceText* text_;
  Diagnostics findings_;
  Diagnostic overflow_;
};

/// `file:line:column` of an origin.
std::string place_text(const calc::Origin& origin);

}  // namespace intake
