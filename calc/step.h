/// One step of the calculation, as the reader of the document follows it.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace calc {

enum class StepKind { formula, table, solve, least, choice, again, last };
/// How the source was seen: printed, library, transcribed table, computed, memory, common practice.
enum class SourceTag { printed, library, table, computed, memory, practice };

struct StepInput {
  std::string symbol;
  double value = 0;  ///< in `unit`, exactly what the formula is evaluated with
  std::string unit;
  std::string origin;  ///< given, derived, assumed, catalogue, step, constant, choice, parts
  std::string ref;  ///< request key, catalogue key, step id, or empty for the last three; of heads
                    ///< of another choice their row of the catalogue
};

/// A step. `formula` is written in the grammar of the method's trace section over the inputs'
/// symbols and evaluates to `value` in `unit` (kind formula); `least` steps name a condition true
/// at value and false at value - 1 through `formula` yielding > = 0 ; `choice` steps list the
/// candidates as inputs and `value` is min(...) or max(...) of them; `table` steps name the table
/// in `formula`: their first input selects among the others, `f_3` being the row for 3, or all of
/// them go into a rule of whole numbers that no formula of the grammar states. `again` steps name
/// in `formula` the step of the station chosen whose working, and all before it, was gone through
/// once more with the inputs in place of what stands there; `last` steps name there the gate that
/// the value still passes, `recommended` for the choice itself, and the first input is the value
/// asked.
class Step {
 public:
  /// Every field, so that a result without source, unit and range of validity does not compile.
  Step(std::string id_of, StepKind kind_of, std::string symbol_of, std::string formula_of,
       std::vector<StepInput> inputs_of, double value_of, std::string unit_of,
       std::string source_of, SourceTag tag_of, std::string validity_of,
       std::vector<std::string> assumptions_of)
      : id(std::move(id_of)),
        kind(kind_of),
        symbol(std::move(symbol_of)),
        formula(std::move(formula_of)),
        inputs(std::move(inputs_of)),
        value(value_of),
        unit(std::move(unit_of)),
        source(std::move(source_of)),
        tag(tag_of),
        validity(std::move(validity_of)),
        assumptions(std::move(assumptions_of)) {}

  std::string id;
  StepKind kind;
  std::string symbol;
  std::string formula;
  std::vector<StepInput> inputs;
  double value;
  std::string unit;
  std::string source;
  SourceTag tag;
  std::string validity;
  std::vector<std::string> assumptions;
};

}  // namespace calc
