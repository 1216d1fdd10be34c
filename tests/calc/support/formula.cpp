#include "tests/calc/support/formula.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <numeric>
#include <system_error>
#include <vector>

#include "calc/compare.h"

namespace support {

namespace {

using Unary = double (*)(double);
struct NamedUnary {
  std::string_view name;
  Unary apply;
};
constexpr std::array<NamedUnary, 14> unary_functions{{
    {"sqrt", [](double x) { return std::sqrt(x); }},
    {"exp", [](double x) { return std::exp(x); }},
    {"ln", [](double x) { return std::log(x); }},
    {"log10", [](double x) { return std::log10(x); }},
    {"log2", [](double x) { return std::log2(x); }},
    {"sin", [](double x) { return std::sin(x); }},
    {"cos", [](double x) { return std::cos(x); }},
    {"tan", [](double x) { return std::tan(x); }},
    {"asin", [](double x) { return std::asin(x); }},
    {"acos", [](double x) { return std::acos(x); }},
    {"atan", [](double x) { return std::atan(x); }},
    {"abs", [](double x) { return std::abs(x); }},
    {"ceil", [](double x) { return calc::ceil_tolerant(x); }},
    {"floor", [](double x) { return calc::floor_tolerant(x); }},
}};

bool letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
bool digit(char c) { return c >= '0' && c <= '9'; }

/// Recursive descent over one formula, a function a rule of the grammar.
class Parser {
 public:
  Parser(std::string_view text, const std::map<std::string, double>& inputs)
      : text_(text), inputs_(&inputs) {}

  double whole() {
    const double value = sum();
    if (peek() != '\0') fail("unexpected text");
    return value;
  }

 private:
  double sum() {
    double value = product();
    for (;;) {
      if (take('+')) {
        value += product();
      } else if (take('-')) {
        value -= product();
      } else {
        return value;
      }
    }
  }

  double product() {
    double value = signed_power();
    for (;;) {
      if (take('*')) {
        value *= signed_power();
      } else if (take('/')) {
        value /= signed_power();
      } else {
        return value;
      }
    }
  }

  double signed_power() {
    if (take('-')) return -signed_power();
    const double base = primary();
    return take('^') ? std::pow(base, signed_power()) : base;
  }

  double primary() {
    if (take('(')) {
      const double value = sum();
      expect(')');
      return value;
    }
    const char c = peek();
    if (letter(c)) return name_or_call();
    if (digit(c) || c == '.') return number();
    fail(c == '\0' ? "formula ends too early" : "unexpected character");
  }

  double number() {
    double value = 0;
    const char* begin = text_.data() + at_;
    const auto [end, error] = std::from_chars(begin, text_.data() + text_.size(), value);
    if (error != std::errc{}) fail("bad number");
    at_ += static_cast<std::size_t>(end - begin);
    return value;
  }

  double name_or_call() {
    const std::size_t start = at_;
    while (at_ < text_.size() &&
           (letter(text_[at_]) || digit(text_[at_]) || text_[at_] == '_' || text_[at_] == '.')) {
      ++at_;
    }
    const std::string name(text_.substr(start, at_ - start));
    if (take('(')) return call(name, start);
    const auto input = inputs_->find(name);
    if (input == inputs_->end()) throw FormulaError("unknown name " + name, start);
    return input->second;
  }

  double call(const std::string& name, std::size_t start) {
    if (name == "integral") return integral();
    std::vector<double> arguments{sum()};
    while (take(',')) arguments.push_back(sum());
    expect(')');
    if (name == "min") return *std::min_element(arguments.begin(), arguments.end());
    if (name == "max") return *std::max_element(arguments.begin(), arguments.end());
    if (name == "sum") return std::accumulate(arguments.begin(), arguments.end(), 0.0);
    if (arguments.size() != 1) throw FormulaError(name + " takes one argument", start);
    if (name == "round") return std::round(arguments.front());
    for (const NamedUnary& function : unary_functions) {
      if (function.name == name) return function.apply(arguments.front());
    }
    throw FormulaError("unknown function " + name, start);
  }

  /// integral(expression, variable, from, to), by the tanh-sinh rule, which bears an end where the
  /// expression has no derivative.
  double integral() {
    const std::string_view body = argument();
    expect(',');
    const std::string variable(argument());
    expect(',');
    const double from = sum();
    expect(',');
    const double to = sum();
    expect(')');
    std::map<std::string, double> inputs = *inputs_;
    const double half = (to - from) / 2;
    constexpr double step = 1.0 / 32;
    constexpr double pi_half = 1.57079632679489661923;
    double total = 0;
    for (int k = -140; k <= 140; ++k) {
      const double u = pi_half * std::sinh(k * step);
      const double weight = pi_half * std::cosh(k * step) / (std::cosh(u) * std::cosh(u));
      // From the nearer end, so that nothing is lost beside it.
      const double rest = half * std::exp(-std::abs(u)) / std::cosh(u);
      inputs[variable] = u < 0 ? from + rest : to - rest;
      total += weight * Parser(body, inputs).whole();
    }
    return total * half * step;
  }

  /// Text up to the next comma outside brackets.
  std::string_view argument() {
    const std::size_t start = at_;
    int depth = 0;
    while (at_ < text_.size() && (depth > 0 || text_[at_] != ',')) {
      if (text_[at_] == '(') ++depth;
      if (text_[at_] == ')') --depth;
      ++at_;
    }
    return text_.substr(start, at_ - start);
  }

  /// Next character that is no space, without taking it; '\0' at the end.
  char peek() {
    while (at_ < text_.size() && text_[at_] == ' ') ++at_;
    return at_ < text_.size() ? text_[at_] : '\0';
  }
  bool take(char c) {
    if (peek() != c) return false;
    ++at_;
    return true;
  }
  void expect(char c) {
    if (!take(c)) fail(std::string("expected ") + c);
  }
  [[noreturn]] void fail(const std::string& what) const { throw FormulaError(what, at_); }

  std::string_view text_;
  const std::map<std::string, double>* inputs_;
  std::size_t at_ = 0;
};

}  // namespace

double evaluate(std::string_view formula, const std::map<std::string, double>& inputs) {
  return Parser(formula, inputs).whole();
}

}  // namespace support
