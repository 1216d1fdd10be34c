#include "output/templates_scan.h"

#include <algorithm>
#include <cstddef>
#include <stdexcept>
#include <utility>

namespace output {
namespace {

constexpr std::string_view markup_suffix = ":none";
constexpr std::string_view separator_suffix = "_separator";

[[noreturn]] void fail(std::string_view file, int line, const std::string& message) {
  throw std::runtime_error(std::string(file) + ":" + std::to_string(line) + ": " + message);
}

bool is_name(std::string_view text) {
  return !text.empty() && std::all_of(text.begin(), text.end(), [](char c) {
    return (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
  });
}

bool is_section_name(std::string_view text) {
  if (text.ends_with(separator_suffix)) text.remove_suffix(separator_suffix.size());
  return is_name(text);
}

class Scanner {
 public:
  Scanner(std::string_view file, std::string_view text) : file_(file), text_(text) {
    open_.emplace_back();
  }

  TemplatePart scan() {
    const std::string_view first = file_.ends_with(page_suffix) ? page_line : autoescape_line;
    if (text_.substr(0, text_.find('\n')) != first) {
      fail(file_, 1, "the first line is not " + std::string(first));
    }
    std::size_t at = first.size();
    for (std::size_t next = text_.find("{{", at); next != std::string_view::npos;
         next = text_.find("{{", at)) {
      line_ +=
          static_cast<int>(std::count(text_.begin() + static_cast<std::ptrdiff_t>(at),
                                      text_.begin() + static_cast<std::ptrdiff_t>(next), '\n'));
      const std::size_t end = text_.find("}}", next);
      if (end == std::string_view::npos) fail(file_, line_, "marker without }}");
      const std::string_view inside = text_.substr(next + 2, end - next - 2);
      take(inside);
      line_ += static_cast<int>(std::count(inside.begin(), inside.end(), '\n'));
      at = end + 2;
    }
    if (open_.size() > 1) fail(file_, open_.back().line, "section is not closed");
    return std::move(open_.back());
  }

 private:
  void take(std::string_view inside) {
    if (inside.starts_with('!')) return;
    if (inside.starts_with('#')) {
      open_section(inside.substr(1));
    } else if (inside.starts_with('/')) {
      close_section(inside.substr(1));
    } else {
      take_marker(inside);
    }
  }

  void open_section(std::string_view name) {
    if (!is_section_name(name)) fail(file_, line_, "bad section name " + std::string(name));
    open_.push_back({std::string(name), line_, {}, {}});
  }

  void close_section(std::string_view name) {
    if (open_.size() == 1 || open_.back().name != name) {
      fail(file_, line_, "{{/" + std::string(name) + "}} closes no open section of that name");
    }
    TemplatePart done = std::move(open_.back());
    open_.pop_back();
    open_.back().parts.push_back(std::move(done));
  }

  void take_marker(std::string_view inside) {
    const bool markup = inside.ends_with(markup_suffix);
    if (markup) inside.remove_suffix(markup_suffix.size());
    if (!is_name(inside)) fail(file_, line_, "bad marker {{" + std::string(inside) + "}}");
    open_.back().markers.push_back({std::string(inside), line_, markup});
  }

  std::string_view file_, text_;
  int line_ = 1;
  std::vector<TemplatePart> open_;
};

/// Values with those around them, which a section inherits.
struct Scope {
  const Values* values;
  const Scope* outer;
};

void check_marker(std::string_view file, const Marker& marker, const Scope& scope) {
  for (const Scope* at = &scope; at != nullptr; at = at->outer) {
    const bool text = at->values->texts().contains(marker.name);
    const bool markup = at->values->markups().contains(marker.name);
    if (marker.markup ? markup : text) return;
    if (text) fail(file, marker.line, "{{" + marker.name + ":none}} is set to text");
    if (markup) fail(file, marker.line, "{{" + marker.name + "}} is set to markup, write :none");
  }
  fail(file, marker.line, "marker {{" + marker.name + "}} is not set");
}

void check_part(std::string_view file, const TemplatePart& part, const Scope& scope) {
  for (const Marker& marker : part.markers) check_marker(file, marker, scope);
  for (const TemplatePart& inner : part.parts) {
    const auto shown = scope.values->sections().find(inner.name);
    if (shown == scope.values->sections().end()) continue;
    for (const auto& repetition : shown->second) {
      const Scope own{repetition.get(), &scope};
      check_part(file, inner, own);
    }
  }
}

}  // namespace

TemplatePart scan_template(std::string_view file, std::string_view text) {
  return Scanner(file, text).scan();
}

void check_values(std::string_view file, const TemplatePart& root, const Values& values) {
  check_part(file, root, {&values, nullptr});
}

}  // namespace output
