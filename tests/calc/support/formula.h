/// Evaluator of printed formulas, independent of calc/ but for its tolerance, so that a trace step
/// can be computed a second time from what is printed.
#pragma once

#include <map>
#include <stdexcept>
#include <string>
#include <string_view>

namespace support {

/// What was wrong with a formula, and where (0-based offset).
class FormulaError : public std::runtime_error {
 public:
  FormulaError(const std::string& what, std::size_t offset)
      : std::runtime_error(what + " at " + std::to_string(offset)), offset_(offset) {}
  std::size_t offset() const { return offset_; }

 private:
  std::size_t offset_;
};

/// Value of a formula over named inputs. Grammar: numbers; names (ASCII letters, digits, `_` and
/// `.`, a letter first); + - * / ^ (right to left, above unary minus); ( ); sqrt exp ln log10 log2
/// sin cos tan asin acos atan abs ceil floor round of one value, min max sum of one or more.
/// ceil and floor with the tolerance of calc/compare.h, round halves away from zero. Angles in
/// radians. Constants are inputs: none is built in.
/// Throws FormulaError on any other text, an unknown name or a wrong number of arguments.
double evaluate(std::string_view formula, const std::map<std::string, double>& inputs);

}  // namespace support
