#include "output/batch_progress.h"

#include <algorithm>
#include <cmath>

#include "output/plain_number.h"

namespace output {
namespace {

constexpr double interval_s = 0.1;  ///< between two drawings
constexpr double window_s = 10;     ///< over which the rate is taken
constexpr std::string_view clear_line = "\r\x1B[K";

std::string time_text(double seconds) {
  const auto whole = static_cast<long>(std::ceil(seconds));
  constexpr long minute = 60, hour = 3600;
  if (whole < minute) return std::to_string(whole) + " s";
  if (whole < hour) {
    return std::to_string(whole / minute) + " min " + std::to_string(whole % minute) + " s";
  }
  return std::to_string(whole / hour) + " h " + std::to_string(whole % hour / minute) + " min";
}

}  // namespace

TerminalStyle terminal_style(Os& os) {
  TerminalStyle style;
  style.moves = os.columns(Stream::error) && os.environment("TERM").value_or("dumb") != "dumb";
  style.colours = style.moves && os.environment("NO_COLOR").value_or("").empty();
  return style;
}

std::string marked(const std::string& text, TerminalStyle style) {
  return style.colours ? "\x1B[1;31m" + text + "\x1B[0m" : text;
}

Progress::Progress(Os& os)
    : os_(os), style_(terminal_style(os)), columns_(os.columns(Stream::error).value_or(0)) {
  if (style_.moves) past_.emplace_back(os_.stopwatch(), 0);
}

void Progress::count(bool at_fault) {
  ++done_;
  if (at_fault) ++faults_;
}

double Progress::rate(double now) {
  past_.emplace_back(now, done_);
  while (past_.size() > 2 && past_.front().first < now - window_s) past_.pop_front();
  const auto& [begin, done_then] = past_.front();
  return now > begin ? static_cast<double>(done_ - done_then) / (now - begin) : 0;
}

std::string Progress::line(double now) {
  const double speed = rate(now);
  std::string text = std::to_string(done_) + " of " + std::to_string(total_) + " requests";
  if (speed > 0) {
    text += ", " + plain(speed, 3) + " a second";
    const auto left = static_cast<double>(total_ - std::min(done_, total_));
    if (left > 0) text += ", " + time_text(left / speed) + " left";
  }
  const std::string faults = ", " + std::to_string(faults_) + " at fault";
  if (text.size() + faults.size() >= columns_) return text.substr(0, columns_ - 1);
  return text + (faults_ == 0 ? faults : marked(faults, style_));
}

void Progress::show() {
  if (!style_.moves) return;
  const double now = os_.stopwatch();
  if (now - drawn_at_ < interval_s) return;
  os_.write_error(std::string(clear_line) + line(now));
  drawn_at_ = now;
  drawn_ = true;
}

void Progress::clear() {
  if (drawn_) os_.write_error(clear_line);
  drawn_ = false;
}

}  // namespace output
