/// Single lines of JSON for other programs: findings, outcomes, fields.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "intake/diagnostic.h"
#include "intake/field.h"
#include "output/batch_outcome.h"

namespace output {

/// {file,line,column,severity,code,message,notes[],hint,field}
std::string finding_json(const intake::Diagnostic& finding);
/// {file,index,id,revision,date,status,verdict,stem,files{pdf,bom_csv,json},diagnostics[]}; what
/// there is not (no id read, no files issued) is null.
std::string outcome_json(const Outcome& outcome);
/// The same with what only the log of a run says: seconds, catalogue{file,sha256}.
std::string log_json(const Outcome& outcome);
/// One field with everything the table says of it.
std::string field_json(const intake::FieldInfo& field, std::string_view table);
std::string code_json(std::string_view kind, const intake::CodeInfo& code);
/// {head,mode,...,findings} of a row of `heads` is built by its own command from these.
std::string object_json(const std::vector<std::pair<std::string, std::string>>& members);
/// A text, a number and a list as JSON values, for object_json.
std::string text_json(std::string_view text);
std::string number_json(double value);
std::string array_json(const std::vector<std::string>& values);

}  // namespace output
