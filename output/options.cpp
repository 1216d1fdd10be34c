#include "output/options.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <map>
#include <utility>

#include "output/date.h"
#include "output/report_text.h"
#include "output/version.h"

namespace output {
namespace {

constexpr const char* about =
    "Specifies industrial inkjet print stations: reads requests, chooses printheads from your\n"
    "catalogue and issues one specification (PDF, parts list, figures) for each request.";

constexpr const char* footer =
    "Exit status: 0 every request got its document, 64 usage, 65 bad data, 66 input or catalogue\n"
    "not found, 70 a fault of the program, 73 output cannot be created or a reissue was refused,\n"
    "74 read or write failed, 130 interrupted. compare and verify: 0 same, 1 different.";

const std::map<std::string, DiagnosticsMode>& diagnostics_words() {
  static const std::map<std::string, DiagnosticsMode> words{{"human", DiagnosticsMode::human},
                                                            {"short", DiagnosticsMode::brief},
                                                            {"json", DiagnosticsMode::json}};
  return words;
}

/// A description broken into lines that fit the second column of the help.
std::string described(std::string_view text) {
  constexpr std::size_t width = terminal_width - 30;
  std::string lines = wrapped(text, 0, width);
  lines.pop_back();
  return lines;
}

/// The command line as CLI11 sees it, bound to the options it fills.
class Parser {
 public:
  Parser() {
    app_.set_version_flag("--version", "swathspec " + std::string(version),
                          "print the version and end");
    app_.set_help_flag("-h,--help", "print this help and end");
    app_.footer(footer);
    app_.require_subcommand(1);
    app_.get_formatter()->label("SUBCOMMAND", "COMMAND");
    add_build();
    add_check();
    add_explain();
    add_heads();
    add_fields();
    add_verify();
    add_index();
    add_compare();
  }

  ParsedOptions parse(std::vector<std::string> arguments) {
    const std::string first = arguments.empty() ? "" : arguments.front();
    std::reverse(arguments.begin(), arguments.end());  // the order CLI11 takes them in
    try {
      app_.parse(std::move(arguments));
    } catch (const CLI::CallForHelp&) {
      return {std::nullopt, Exit::success, app_.help(), ""};
    } catch (const CLI::CallForVersion& call) {
      return {std::nullopt, Exit::success, std::string(call.what()) + "\n", ""};
    } catch (const CLI::ExtrasError& error) {
      const std::vector<std::string> extras = app_.remaining(true);
      const auto option = std::find_if(extras.begin(), extras.end(),
                                       [](const std::string& e) { return e.starts_with('-'); });
      if (app_.get_subcommands().empty()) return without_command(first);
      return misused(option == extras.end() ? error.what() : "there is no option " + *option);
    } catch (const CLI::ParseError& error) {
      return app_.get_subcommands().empty() ? without_command(first) : misused(error.what());
    }
    if (options_.date && !is_date(*options_.date)) {
      return misused("--date: " + *options_.date + " is no date; write YYYY-MM-DD");
    }
    if (!part_.empty()) {
      options_.part = part_from(part_);
      if (!options_.part) return misused("--part: " + part_ + " is no part; write 1/4 to 4/4");
    }
    return {options_, Exit::success, "", ""};
  }

 private:
  CLI::App* command(const char* name, const char* description, Command which) {
    CLI::App* added = app_.add_subcommand(name, description)->group("Commands");
    added->callback([this, which] { options_.command = which; });
    added->add_option("--diagnostics", options_.diagnostics, "form of faults and warnings")
        ->transform(CLI::Transformer(diagnostics_words(), CLI::ignore_case).description(""))
        ->type_name("human|short|json");
    added->add_flag("--json", options_.json, "machine form on standard output");
    return added;
  }

  void add_catalogue(CLI::App* command) {
    command
        ->add_option("-c,--catalogue", options_.catalogue,
                     described("catalogue of heads; default: catalogue.xml beside the request, "
                               "then one folder up, then the file named in SWATHSPEC_CATALOGUE"))
        ->type_name("FILE");
    command
        ->add_option("--prices", options_.prices,
                     described("price list, CSV with the header part_number,unit_price,currency,"
                               "price_date; its prices stand in place of the catalogue's"))
        ->type_name("FILE");
  }

  void add_date(CLI::App* command) {
    command
        ->add_option("--date", options_.date,
                     described("date of issue; default: SOURCE_DATE_EPOCH, then the request's "
                               "own, then today (UTC)"))
        ->type_name("YYYY-MM-DD");
  }

  void add_paths(CLI::App* command) {
    command
        ->add_option("PATH", options_.paths,
                     described("requests: files, folders searched for *.xml and *.ini, or - for "
                               "standard input"))
        ->required()
        ->type_name("");
  }

  void add_build() {
    CLI::App* build = command("build", "issue the specifications", Command::build);
    add_paths(build);
    build->add_option("-o,--output", options_.folder, "folder of the issued files")
        ->type_name("DIR")
        ->capture_default_str();
    add_catalogue(build);
    add_date(build);
    build
        ->add_option("-j,--jobs", options_.jobs,
                     "documents made at the same time; default: all cores")
        ->check(CLI::Range(1, 256).description(""))
        ->type_name("N");
    build
        ->add_option("--part", part_,
                     described("issue only this share of the requests, chosen by their ids; "
                               "index the folder when all parts are done"))
        ->type_name("K/N");
    build
        ->add_option("--templates", options_.templates,
                     described("folder of your own wording and house style, as a whole or file "
                               "by file; its files replace the shipped ones of their names"))
        ->type_name("DIR");
    build->add_flag("--summary", options_.summary,
                    described("page one as a file of its own too, <stem>.summary.pdf"));
    build->add_flag("--letters", options_.letters,
                    described("a letter to the customer with the open questions too, "
                              "<stem>.letter.txt"));
    build
        ->add_option("--dump-frames", options_.frames,
                     described("what stands where on each page of the documents issued, as JSON "
                               "lines"))
        ->type_name("FILE");
    build
        ->add_option("--previous", options_.previous,
                     described("folder of earlier issues, for the list of what changed; the "
                               "folder of -o is looked through too"))
        ->type_name("DIR");
    build->add_flag("--force", options_.force,
                    described("reissue changed content under an issued name; the old files move "
                              "to superseded/"));
  }

  void add_check() {
    CLI::App* check =
        command("check", "the verdict, every fault and every warning of an issue, nothing written",
                Command::check);
    add_paths(check);
    add_catalogue(check);
  }

  void add_explain() {
    CLI::App* explain =
        command("explain", "the whole calculation as text on the terminal", Command::explain);
    explain->add_option("REQUEST", options_.paths, "the request's file, or - for standard input")
        ->required()
        ->expected(1)
        ->type_name("");
    add_catalogue(explain);
    add_date(explain);
  }

  void add_heads() {
    add_catalogue(
        command("heads", "the catalogue as a table, with what is wrong in it", Command::heads));
  }

  void add_fields() {
    CLI::App* fields =
        command("fields", "reference of every field of requests and catalogues", Command::fields);
    fields
        ->add_option("NAME", options_.name,
                     described("only the fields this means: a part of their keys, or a key with "
                               "the section's own name, as in ink.black.family"))
        ->type_name("");
    fields->add_flag("--codes", options_.codes, "every code of findings, reasons and questions");
  }

  void add_folder(CLI::App* command) {
    command->add_option("DIR", options_.folder, "folder of issued files")
        ->required()
        ->type_name("");
  }

  void add_verify() {
    add_folder(command("verify", "which issued file was altered, is missing or is not listed",
                       Command::verify));
  }

  void add_index() {
    add_folder(command("index", "rebuild overview and SHA256SUMS from the issues in a folder",
                       Command::index));
  }

  void add_compare() {
    CLI::App* compare =
        command("compare", "what changed from one issue to another", Command::compare);
    compare->add_option("OLD.json NEW.json", options_.paths, "the figures of the two issues")
        ->required()
        ->expected(2)
        ->type_name("");
  }

  /// CLI11's own words where no command was recognized would speak of subcommands.
  ParsedOptions without_command(const std::string& first) const {
    const bool option = !first.empty() && first.front() == '-';
    return misused((first.empty() ? std::string()
                    : option      ? "there is no option " + first + " before a command; "
                                  : "there is no command " + first + "; ") +
                   "name one of build, check, explain, heads, fields, verify, index and compare");
  }

  ParsedOptions misused(const std::string& message) const {
    const auto commands = app_.get_subcommands();
    const std::string help = commands.empty()
                                 ? "swathspec --help"
                                 : "swathspec " + commands.front()->get_name() + " --help";
    return {std::nullopt, Exit::usage, "",
            program_message(message) + program_message("see " + help)};
  }

  CLI::App app_{about, "swathspec"};
  Options options_;
  std::string part_;  ///< as written
};

}  // namespace

ParsedOptions parse_options(std::vector<std::string> arguments) {
  Parser parser;
  return parser.parse(std::move(arguments));
}

}  // namespace output
