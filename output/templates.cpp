/// The templates through ctemplate, which is included here and nowhere else.
#include "output/templates.h"

#include <ctemplate/template_cache.h>
#include <ctemplate/template_dictionary_interface.h>
#include <ctemplate/template_emitter.h>
#include <ctemplate/template_enums.h>
#include <ctemplate/template_string.h>

#include <memory>
#include <set>
#include <stdexcept>
#include <utility>
#include <vector>

#include "output/digest.h"
#include "output/embedded.h"
#include "output/raster.h"
#include "output/templates_check.h"
#include "output/templates_scan.h"
#include "output/templates_style.h"
#include "output/templates_words.h"

namespace output {
namespace {

using ctemplate::TemplateString;

constexpr std::string_view folder = "templates/";
constexpr std::string_view style_file = "style.ini";
constexpr std::string_view base_language = "en";
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

/// Scans and words of one language.
struct Language {
  std::map<std::string, TemplatePart, std::less<>> scans;  ///< by the file's own name
  Words words;
};

/// "en/front.tpl" parted; no folder for a file at the top.
std::pair<std::string, std::string> parted(const std::string& name) {
  const std::size_t slash = name.find('/');
  if (slash == std::string::npos) return {{}, name};
  return {name.substr(0, slash), name.substr(slash + 1)};
}

/// The shipped file of that name, or empty.
std::string_view shipped_bytes(const std::string& name) {
  for (const EmbeddedFile& file : embedded_files()) {
    if (file.name.starts_with(folder) && file.name.substr(folder.size()) == name) return file.bytes;
  }
  return {};
}

/// The shipped language that all others are held against.
Language shipped_english() {
  Language english;
  for (const EmbeddedFile& file : embedded_files()) {
    if (!file.name.starts_with(folder)) continue;
    const auto [language, name] = parted(std::string(file.name.substr(folder.size())));
    if (language != base_language) continue;
    if (name.ends_with(".tpl")) {
      english.scans.emplace(name, scan_template(file.name, file.bytes));
    } else {
      english.words.read(std::string(file.name), file.bytes);
    }
  }
  return english;
}

}  // namespace

struct Templates::Impl {
  ctemplate::TemplateCache cache;
  std::map<std::string, Language, std::less<>> languages;
  Style style;
  OwnTemplates own;
  Digest digest{};
  std::string own_digest;

  /// The file as messages name it.
  std::string shown(const std::string& name) const {
    return own.files.contains(name) ? own.folder + "/" + name : std::string(folder) + name;
  }
  void take(const std::string& name, std::string_view bytes);
  void take_template(const std::string& name, std::string_view bytes);
  void check_own() const;
  void load_logo();
};

void Templates::Impl::take_template(const std::string& name, std::string_view bytes) {
  const auto [language, file] = parted(name);
  languages[language].scans.emplace(file, scan_template(shown(name), bytes));
  if (!cache.StringToTemplateCache(name, TemplateString(bytes.data(), bytes.size()), strip)) {
    throw std::runtime_error(shown(name) + ":1: the template does not parse");
  }
}

void Templates::Impl::take(const std::string& name, std::string_view bytes) {
  const auto [language, file] = parted(name);
  digest = digest_of(hex(digest).append(name).append(hex(digest_of(bytes))));
  if (name == style_file) {
    style = parse_style(shown(name), bytes);
  } else if (!language.empty() && file.ends_with(".tpl")) {
    take_template(name, bytes);
  } else if (!language.empty() && file.ends_with(".txt")) {
    languages[language].words.read(shown(name), bytes);
  } else if (!language.empty() || !name.ends_with(".png")) {
    throw std::runtime_error(shown(name) + ":1: neither style file, template, words nor logo");
  }
}

/// A file under a name nothing asks for would be left out in silence.
void Templates::Impl::check_own() const {
  for (const auto& [name, bytes] : own.files) {
    const auto [language, file] = parted(name);
    if (language.empty()) continue;
    if (shipped_bytes(std::string(base_language) + "/" + file).empty()) {
      throw std::runtime_error(shown(name) + ":1: there is no template of that name");
    }
  }
}

/// The picture the style names, out of the user's own files.
void Templates::Impl::load_logo() {
  const auto setting = style.settings.find("house.logo");
  if (setting == style.settings.end() || setting->second.empty()) return;
  const std::string& name = setting->second;
  const auto file = own.files.find(name);
  const std::string place = shown(std::string(style_file)) + ":1: logo " + name;
  if (file == own.files.end()) throw std::runtime_error(place + " is not in the folder");
  try {
    style.page.logo = std::make_shared<const Raster>(read_png(file->second));
  } catch (const std::runtime_error& fault) {
    throw std::runtime_error(place + ": " + fault.what());
  }
}

Templates::Templates(const OwnTemplates& own) : impl_(std::make_unique<Impl>()) {
  impl_->own = own;
  impl_->check_own();
  for (const EmbeddedFile& file : embedded_files()) {
    if (!file.name.starts_with(folder)) continue;
    const std::string name(file.name.substr(folder.size()));
    if (!own.files.contains(name)) impl_->take(name, file.bytes);
  }
  std::string all;
  for (const auto& [name, bytes] : impl_->own.files) {
    impl_->take(name, bytes);
    all += name + "=" + sha256(bytes) + "\n";
  }
  if (!all.empty()) impl_->own_digest = sha256(all);
  impl_->load_logo();
  impl_->cache.Freeze();
  std::set<std::string> touched;
  for (const auto& [name, bytes] : own.files) touched.insert(parted(name).first);
  touched.erase("");
  for (const std::string& language : touched) check_language(language);
}

void Templates::check_language(std::string_view language) const {
  const Language english = shipped_english();
  const auto found = impl_->languages.find(language);
  const std::string name(language);
  if (found == impl_->languages.end()) throw std::out_of_range("no language " + name);
  const std::string shown_folder =
      (impl_->own.folder.empty() ? std::string("templates") : impl_->own.folder) + "/" + name;
  for (const auto& [file, scan] : english.scans) {
    // Pages over all documents of a folder are in one language.
    const bool is_page = file.ends_with(page_suffix);
    if (is_page && language != base_language) continue;
    const auto own = found->second.scans.find(file);
    if (own == found->second.scans.end()) {
      std::string place = shown_folder;
      place.append("/").append(file);
      throw std::runtime_error(place.append(":1: the template is missing"));
    }
    std::string path = name;
    check_against(impl_->shown(path.append("/").append(file)), own->second, scan);
  }
  check_against(found->second.words, english.words, shown_folder);
}

Templates::~Templates() = default;

std::string Templates::expand(const std::string& name, const Values& values) const {
  const auto [language, file] = parted(name);
  const auto known = impl_->languages.find(language);
  if (known == impl_->languages.end() || !known->second.scans.contains(file)) {
    throw std::runtime_error("no template " + name);
  }
  check_values(impl_->shown(name), known->second.scans.find(file)->second, values);
  std::string text;
  ctemplate::StringEmitter emitter(&text);
  const Dictionary dictionary(values, nullptr);
  if (!impl_->cache.ExpandNoLoad(name, strip, &dictionary, nullptr, &emitter)) {
    throw std::runtime_error(impl_->shown(name) + ":1: the template does not expand");
  }
  return text;
}

std::string Templates::words(std::string_view language, std::string_view key,
                             const Values& values) const {
  const auto found = impl_->languages.find(language);
  if (found == impl_->languages.end()) {
    throw std::out_of_range("no words in language " + std::string(language));
  }
  return found->second.words.fill(key, values);
}

bool Templates::has_words(std::string_view language, std::string_view key) const {
  const auto found = impl_->languages.find(language);
  return found != impl_->languages.end() && found->second.words.has(key);
}

std::vector<std::string> Templates::keys(std::string_view language, std::string_view prefix) const {
  const auto found = impl_->languages.find(language);
  return found == impl_->languages.end() ? std::vector<std::string>()
                                         : found->second.words.keys(prefix);
}

bool Templates::has_language(std::string_view language) const {
  return impl_->languages.contains(language);
}

std::vector<std::string> Templates::languages() const {
  std::vector<std::string> names;
  for (const auto& [name, language] : impl_->languages) names.push_back(name);
  return names;
}

const std::string& Templates::own_digest() const { return impl_->own_digest; }

const std::string& Templates::wording(std::string_view language, std::string_view key) const {
  const auto found = impl_->languages.find(language);
  if (found == impl_->languages.end()) {
    throw std::out_of_range("no words in language " + std::string(language));
  }
  return found->second.words.text(key);
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

const std::string& Templates::setting(std::string_view key, std::string_view language) const {
  const auto found = impl_->style.settings.find(std::string(key) + "." + std::string(language));
  return found == impl_->style.settings.end() ? setting(key) : found->second;
}

}  // namespace output
