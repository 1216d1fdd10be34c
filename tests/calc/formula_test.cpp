#include "tests/calc/support/formula.h"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/calc/support/check.h"

using support::evaluate;
using support::FormulaError;
using support::identity;

namespace {

constexpr const char* rule = "grammar of the trace";
constexpr const char* closed = "closed form, computed independently";

}  // namespace

TEST_CASE("formulas follow the usual order of operations") {
  support::check_all({
      {"sum before product", evaluate("2 + 3 * 4", {}), 14, 0, rule},
      {"left to right", evaluate("20 - 5 - 3", {}), 12, 0, rule},
      {"division left to right", evaluate("100 / 5 / 2", {}), 10, 0, rule},
      {"power right to left", evaluate("2 ^ 3 ^ 2", {}), 512, 0, rule},
      {"minus below power", evaluate("-2 ^ 2", {}), -4, 0, rule},
      {"minus in the exponent", evaluate("2 ^ -2", {}), 0.25, 0, rule},
      {"power before product", evaluate("3 * 2 ^ 2", {}), 12, 0, rule},
      {"brackets", evaluate("(2 + 3) * (4 - 1)", {}), 15, 0, rule},
      {"two signs", evaluate("5 - -2", {}), 7, 0, rule},
      {"exponent in a number", evaluate("1.5e-3 * 2E+3", {}), 3, identity, rule},
      {"no spaces", evaluate("1+2*3", {}), 7, 0, rule},
  });
}

TEST_CASE("formulas take names with dots and underscores from their inputs") {
  const std::map<std::string, double> inputs{
      {"R_m", 600}, {"line.speed", 2}, {"v1", 3}, {"e", 7}, {"pi", 3.25}};
  support::check_all({
      {"underscore and dot", evaluate("line.speed * R_m", inputs), 1200, 0, rule},
      {"digit", evaluate("v1^2", inputs), 9, 0, rule},
      {"no built-in constants", evaluate("pi + e", inputs), 10.25, 0, rule},
      {"a name like a function", evaluate("min * 2", {{"min", 4}}), 8, 0, rule},
  });
}

TEST_CASE("formulas know every function of the grammar") {
  support::check_all({
      {"sqrt", evaluate("sqrt(2)", {}), 1.4142135623730951, identity, closed},
      {"exp", evaluate("exp(1)", {}), 2.718281828459045, identity, closed},
      {"ln", evaluate("ln(10)", {}), 2.302585092994046, identity, closed},
      {"log10", evaluate("log10(1000)", {}), 3, identity, closed},
      {"log2", evaluate("log2(8)", {}), 3, identity, closed},
      {"sin", evaluate("sin(0.5)", {}), 0.479425538604203, identity, closed},
      {"cos", evaluate("cos(0.5)", {}), 0.8775825618903728, identity, closed},
      {"tan", evaluate("tan(0.5)", {}), 0.5463024898437905, identity, closed},
      {"asin", evaluate("asin(0.5)", {}), 0.5235987755982989, identity, closed},
      {"acos", evaluate("acos(0.5)", {}), 1.0471975511965979, identity, closed},
      {"atan", evaluate("atan(1)", {}), 0.7853981633974483, identity, closed},
      {"abs", evaluate("abs(-3)", {}), 3, 0, closed},
      {"round half away", evaluate("round(2.5) + round(-2.5)", {}), 0, 0, closed},
      {"round", evaluate("round(7.8)", {}), 8, 0, closed},
      {"min of three", evaluate("min(3, 1, 2)", {}), 1, 0, closed},
      {"max of three", evaluate("max(3, 1+4, 2)", {}), 5, 0, closed},
      {"sum of four", evaluate("sum(1, 2, 3, 4)", {}), 10, 0, closed},
      {"sum of one", evaluate("sum(5)", {}), 5, 0, closed},
      {"nested", evaluate("max(1, ceil(sqrt(17)))", {}), 5, 0, closed},
      {"ceil", evaluate("ceil(2.1)", {}), 3, 0, closed},
      {"ceil keeps a whole", evaluate("ceil(a / b)", {{"a", 0.3}, {"b", 0.1}}), 3, 0, rule},
      {"ceil takes a last bit for whole", evaluate("ceil(3.0000000001)", {}), 3, 0, rule},
      {"floor takes a last bit for whole", evaluate("floor(2.9999999999)", {}), 3, 0, rule},
      {"floor", evaluate("floor(2.9)", {}), 2, 0, closed},
  });
}

TEST_CASE("formulas integrate, also where the slope has no bound at an end") {
  support::check_all({
      {"polynomial", evaluate("integral(x^2,x,0,3)", {}), 9, identity, closed},
      {"root", evaluate("2*integral(sqrt(v),v,a,b)", {{"a", 0}, {"b", 4}}), 32.0 / 3, identity,
       closed},
      {"brackets and commas inside", evaluate("integral(max(x, min(1, x)),x,0,1)", {}), 0.5,
       identity, closed},
      {"backwards", evaluate("integral(1/x,x,2,1)", {}), -std::log(2.0), identity, closed},
      {"a limit that is a formula", evaluate("integral(exp(-x),x,0,ln(2))", {}), 0.5, identity,
       closed},
  });
}

TEST_CASE("formulas that are wrong are refused") {
  const std::map<std::string, double> inputs{{"x", 1}};
  for (const char* wrong :
       {"",      "x +",   "x x", "2 x", "y",    "(x", "x)",  "f(x)", "sqrt(x, x)", "sqrt()",
        "min()", "x % 2", "x ^", "* x", "1..2", "+x", "x,1", "sqrt", "_x",         "x; 1"}) {
    CAPTURE(wrong);
    CHECK_THROWS_AS(evaluate(wrong, inputs), FormulaError);
  }
}

TEST_CASE("a refused formula says what and where") {
  try {
    evaluate("1 + speed * 2", {});
    FAIL("an unknown name was accepted");
  } catch (const FormulaError& error) {
    CHECK(error.offset() == 4);
    CHECK(std::string(error.what()) == "unknown name speed at 4");
  }
}
