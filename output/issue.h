/// One request in, one document out: no operating system, no globals.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "calc/specification.h"
#include "intake/read.h"
#include "output/fonts.h"
#include "output/json.h"
#include "output/matter.h"
#include "output/templates.h"

namespace output {

/// What a request is issued with.
struct Environment {
  const calc::Catalogue& catalogue;
  const Templates& templates;
  const Fonts& fonts;
  std::string source = {};    ///< name of the request's file in the figures; empty: its last part
  bool with_summary = false;  ///< page one as a file of its own too
  bool with_letter = false;   ///< the open questions as a letter too
  bool with_frames = false;   ///< the display list too
};

struct Issued {
  calc::Specification specification;
  std::string stem;  ///< <id>_r<revision>_<date>
  std::string pdf, bom_csv, json;
  IssuedJson facts;                               ///< what the JSON says
  std::string summary_pdf{}, letter{}, frames{};  ///< where the environment asks for them
  intake::Diagnostics findings;  ///< warnings of the calculation and the page, with their places
};

/// The whole way for one usable request and a date of issue.
Issued issue(const intake::ReadRequest& request, const Environment& environment,
             const std::string& date);

/// The first half of the way: the calculation, with the words of parts that no catalogue names.
calc::Specification specify(const intake::ReadRequest& request, const Environment& environment,
                            const std::string& date);
/// The JSON file of an issue.
struct IssuedText {
  std::string json, sha256;
};
/// The second half: the files of a specification that `specify` made of the same request. `earlier`
/// is the issue it replaces; one that is no JSON of ours counts as none.
Issued render(calc::Specification specification, const intake::ReadRequest& request,
              const Environment& environment, const std::optional<IssuedText>& earlier = {});
/// What the document shows beside the specification.
Matter matter_of(const calc::Specification& specification, const intake::ReadRequest& request,
                 const std::optional<IssuedText>& earlier = {});
/// Page one as a file of its own.
std::string render_summary(const calc::Specification& specification,
                           const intake::ReadRequest& request, const Environment& environment,
                           const Matter& matter);
/// A letter to the customer with the open questions, in plain text; empty without one.
std::string letter_of(const calc::Specification& specification, const intake::ReadRequest& request,
                      const Environment& environment, const Matter& matter);
/// The JSON of a specification that is not issued: without its files.
std::string figures_of(const calc::Specification& specification,
                       const intake::ReadRequest& request);
/// The warnings of the calculation in words, with their places.
intake::Diagnostics warnings_of(const calc::Specification& specification,
                                const intake::ReadRequest& request, const Templates& templates);
/// The same with those of the page, as a rendered issue has them.
intake::Diagnostics findings_of(const calc::Specification& specification,
                                const intake::ReadRequest& request, const Environment& environment);
/// What Archive::find compares: IssuedJson::content of the specification, issued with those
/// templates.
Digest content_of(const calc::Specification& specification,
                  const std::string& templates_sha256 = {});

}  // namespace output
