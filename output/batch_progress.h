/// One line on the terminal that says how far a run is.
#pragma once

#include <deque>
#include <string>
#include <utility>

#include "output/os.h"

namespace output {

/// What may be written to standard error beside plain text.
struct TerminalStyle {
  bool moves = false;    ///< a line can be written over: a terminal that TERM does not call dumb
  bool colours = false;  ///< the same, and NO_COLOR is not set
};
TerminalStyle terminal_style(Os& os);

/// The text in the colour of faults where colours are wanted.
std::string marked(const std::string& text, TerminalStyle style);

/// Nothing at all when standard error is no terminal that can be written over. Between `clear` and
/// the next `show` other text may go to the terminal.
class Progress {
 public:
  explicit Progress(Os& os);

  /// Requests there will be, as far as is known by now.
  void expect(std::size_t total) { total_ = total; }
  /// One more is done; `at_fault` when it got no document.
  void count(bool at_fault);
  /// Draws the line anew when the last drawing is old enough.
  void show();
  /// Takes the line away.
  void clear();

 private:
  double rate(double now);
  std::string line(double now);

  Os& os_;
  TerminalStyle style_;
  std::size_t columns_ = 0, total_ = 0, done_ = 0, faults_ = 0;
  double drawn_at_ = 0;
  bool drawn_ = false;
  std::deque<std::pair<double, std::size_t>> past_;  ///< what was done when, of the last seconds
};

}  // namespace output
