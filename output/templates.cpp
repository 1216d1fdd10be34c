/// The templates through ctemplate, which is included here and nowhere else.
#include "output/templates.h"

#include <ctemplate/template_cache.h>
#include <ctemplate/template_dictionary_interface.h>
#include <ctemplate/template_emitter.h>
#include <ctemplate/template_enums.h>
#include <ctemplate/template_string.h>

#include <memory>
#include <stdexcept>
#include <utility>
#include <vector>

#include "output/embedded.h"
#include "output/templates_scan.h"
#include "output/templates_style.h"
#include "output/templates_words.h"

namespace output {
namespace {

using ctemplate::TemplateString;

constexpr std::string_view folder = "templates/";
constexpr std::string_view style_file = "style.ini";
constexpr ctemplate::Strip strip = ctemplate::STRIP_BLANK_LINES;

std::string_view view(const TemplateString& text) { return {text.data(), text.size()}; }

/// Shows Values to ctemplate without copying them.
class Dictionary final : public ctemplate::TemplateDictionaryInterface {
 public:
  Dictionary(const Values& values, const Dictionary* outer) : values_(values), outer_(outer) {}

 private:
  class Repetitions final : public Iterator {
   public:
    Repetitions(const std::vector<std::unique_ptr<Values>>& list, const Dictionary* outer)
        : list_(list), outer_(outer) {}
    bool HasNext() const override { return next_ < list_.size(); }
    const TemplateDictionaryInterface& Next() override {
      current_ = std::make_unique<Dictionary>(*list_[next_++], outer_);
      return *current_;
    }

   private:
    const std::vector<std::unique_ptr<Values>>& list_;
    const Dictionary* outer_;
    std::size_t next_ = 0;
    std::unique_ptr<Dictionary> current_;
  };

  TemplateString GetValue(const TemplateString& variable) const override {
    for (const Dictionary* at = this; at != nullptr; at = at->outer_) {
      const auto& texts = at->values_.texts();
      if (const auto text = texts.find(view(variable)); text != texts.end()) return text->second;
      const auto& markups = at->values_.markups();
      if (const auto markup = markups.find(view(variable)); markup != markups.end()) {
        return markup->second;
      }
    }
    throw std::logic_error("a marker passed the check and has no value");
  }
  bool IsHiddenSection(const TemplateString& name) const override {
    return !values_.sections().contains(view(name));
  }
  bool IsUnhiddenSection(const TemplateString& name) const override {
    return !IsHiddenSection(name);
  }
  Iterator* CreateSectionIterator(const TemplateString& section) const override {
    // ctemplate takes the iterator over and deletes it.
    return std::make_unique<Repetitions>(values_.sections().find(view(section))->second, this)
        .release();
  }
  // The scan refuses {{>includes}}, so the three below are never asked for one.
  bool IsHiddenTemplate(const TemplateString&) const override { return true; }
  const char* GetIncludeTemplateName(const TemplateString&, int) const override { return ""; }
  Iterator* CreateTemplateIterator(const TemplateString&) const override {
    throw std::logic_error("templates include no other");
  }
  void DumpToString(std::string*, int) const override {}

  const Values& values_;
  const Dictionary* outer_;
};

}  // namespace

struct Templates::Impl {
  ctemplate::TemplateCache cache;
  std::map<std::string, TemplatePart, std::less<>> scans;
  std::map<std::string, Words, std::less<>> words;  ///< by language
  Style style;
  Digest digest{};

  void take(std::string_view name, std::string_view bytes);
  void take_template(const std::string& name, std::string_view bytes);
};

void Templates::Impl::take_template(const std::string& name, std::string_view bytes) {
  scans.emplace(name, scan_template(std::string(folder) + name, bytes));
  if (!cache.StringToTemplateCache(name, TemplateString(bytes.data(), bytes.size()), strip)) {
    throw std::runtime_error(std::string(folder) + name + ":1: the template does not parse");
  }
}

void Templates::Impl::take(std::string_view name, std::string_view bytes) {
  digest = digest_of(hex(digest).append(name).append(hex(digest_of(bytes))));
  if (name == style_file) {
    style = parse_style(std::string(folder) + std::string(name), bytes);
  } else if (name.ends_with(".tpl")) {
    take_template(std::string(name), bytes);
  } else if (name.ends_with(".txt") && name.find('/') != std::string_view::npos) {
    const std::string language(name.substr(0, name.find('/')));
    words[language].read(std::string(folder) + std::string(name), bytes);
  } else {
    throw std::runtime_error(std::string(folder) + std::string(name) +
                             ":1: neither style file, template nor words");
  }
}

Templates::Templates() : impl_(std::make_unique<Impl>()) {
  for (const EmbeddedFile& file : embedded_files()) {
    if (file.name.starts_with(folder)) impl_->take(file.name.substr(folder.size()), file.bytes);
  }
  impl_->cache.Freeze();
}

Templates::~Templates() = default;

std::string Templates::expand(const std::string& name, const Values& values) const {
  const auto scan = impl_->scans.find(name);
  if (scan == impl_->scans.end()) throw std::runtime_error("no template " + name);
  check_values(std::string(folder) + name, scan->second, values);
  std::string text;
  ctemplate::StringEmitter emitter(&text);
  const Dictionary dictionary(values, nullptr);
  if (!impl_->cache.ExpandNoLoad(name, strip, &dictionary, nullptr, &emitter)) {
    throw std::runtime_error(std::string(folder) + name + ":1: the template does not expand");
  }
  return text;
}

std::string Templates::words(std::string_view language, std::string_view key,
                             const Values& values) const {
  const auto found = impl_->words.find(language);
  if (found == impl_->words.end()) {
    throw std::out_of_range("no words in language " + std::string(language));
  }
  return found->second.fill(key, values);
}

bool Templates::has_words(std::string_view language, std::string_view key) const {
  const auto found = impl_->words.find(language);
  return found != impl_->words.end() && found->second.has(key);
}

bool Templates::has_language(std::string_view language) const {
  return impl_->words.contains(language);
}

std::vector<std::string> Templates::languages() const {
  std::vector<std::string> all;
  for (const auto& [language, words] : impl_->words) all.push_back(language);
  return all;
}

const std::string& Templates::wording(std::string_view language, std::string_view key) const {
  const auto found = impl_->words.find(language);
  if (found == impl_->words.end()) {
    throw std::out_of_range("no words in language " + std::string(language));
  }
  return found->second.text(key);
}
const Digest& Templates::digest() const { return impl_->digest; }

const PageStyle& Templates::style() const { return impl_->style.page; }

const std::string& Templates::setting(std::string_view key) const {
  const auto found = impl_->style.settings.find(key);
  if (found == impl_->style.settings.end()) {
    throw std::out_of_range("no setting " + std::string(key));
  }
  return found->second;
}

}  // namespace output
