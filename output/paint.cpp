#include "output/paint.h"

#include <map>
#include <stdexcept>
#include <string>
#include <variant>
#include <vector>

#include "output/embedded.h"
#include "output/paint_check.h"
#include "output/paint_fonts.h"
#include "output/paint_page.h"
#include "output/paint_pdf.h"
#include "output/pdfa.h"

namespace output {
namespace {

/// The fonts of all faces in use as the one dictionary that every page shares.
HPDF_Dict embed_fonts(const Pdf& pdf, const Fonts& fonts, const UsedCharacters& used) {
  HPDF_Dict all = pdf.registered(pdf.dictionary());
  for (std::size_t face = 0; face < used.size(); ++face) {
    if (used.at(face).empty()) continue;
    const auto own = static_cast<Face>(face);
    pdf.add(all, font_name(own).c_str(), embed_font(pdf, fonts, own, used.at(face)));
  }
  return all;
}

/// The pages painted, and the places on them.
class Document {
 public:
  Document(const Pdf& pdf, const DisplayList& list) : pdf_(pdf), list_(list) {
    for (const Anchor& anchor : list.anchors) anchors_.emplace(anchor.name, &anchor);
  }

  void add_pages(HPDF_Dict fonts) {
    for (const Page& page : list_.pages) {
      HPDF_Page made = pdf_.made(HPDF_AddPage(pdf_.doc()));
      pdf_.ok(HPDF_Page_SetWidth(made, static_cast<HPDF_REAL>(page.width)));
      pdf_.ok(HPDF_Page_SetHeight(made, static_cast<HPDF_REAL>(page.height)));
      add_resource(made, "Font", fonts);
      PageWriter writer(pdf_, made, page.height);
      for (const Item& item : page.items) std::visit(writer, item);
      writer.finish();
      pages_.push_back(made);
    }
  }

  void add_links() {
    no_border_ = pdf_.registered(pdf_.array());
    for (int i = 0; i < 3; ++i) pdf_.append_number(no_border_, 0);
    for (std::size_t i = 0; i < pages_.size(); ++i) {
      HPDF_Array annotations = nullptr;
      for (const Item& item : list_.pages[i].items) {
        const auto* link = std::get_if<Link>(&item);
        if (link == nullptr) continue;
        if (annotations == nullptr) {
          annotations = pdf_.array();
          pdf_.add(pages_[i], "Annots", annotations);
        }
        pdf_.append(annotations, annotation(*link, list_.pages[i].height));
      }
    }
  }

  void add_bookmarks() {
    std::vector<HPDF_Outline> open;  // the last bookmark of each level
    for (const Bookmark& bookmark : list_.bookmarks) {
      open.resize(static_cast<std::size_t>(bookmark.level) - 1);
      HPDF_Outline parent = open.empty() ? nullptr : open.back();
      HPDF_Outline made = pdf_.made(HPDF_CreateOutline(pdf_.doc(), parent, "-", nullptr));
      // The title goes in afterwards: libharu's own encoding loses what is above U+FFFF.
      pdf_.add_text(made, "Title", bookmark.title);
      pdf_.add(made, "Dest", destination(bookmark.anchor));
      pdf_.ok(HPDF_Outline_SetOpened(made, bookmark.level == 1 ? HPDF_TRUE : HPDF_FALSE));
      open.push_back(made);
    }
    if (!list_.bookmarks.empty()) {
      pdf_.ok(HPDF_SetPageMode(pdf_.doc(), HPDF_PAGE_MODE_USE_OUTLINE));
    }
  }

 private:
  /// [page /XYZ left top zoom], a direct array; zoom 0 keeps the reader's.
  HPDF_Array destination(const std::string& name) const {
    const Anchor& anchor = *anchors_.at(name);
    const auto page = static_cast<std::size_t>(anchor.page);
    HPDF_Array place = pdf_.array();
    pdf_.append(place, pages_[page]);
    pdf_.ok(HPDF_Array_AddName(place, "XYZ"));
    pdf_.append_number(place, 0);
    pdf_.append_real(place, list_.pages[page].height - anchor.y);
    pdf_.append_number(place, 0);
    return place;
  }

  void add_resource(HPDF_Page page, const char* key, void* resource) const {
    auto* resources = HPDF_Dict_GetItem(page, "Resources", HPDF_OCLASS_DICT);
    pdf_.add(static_cast<HPDF_Dict>(pdf_.made(resources)), key, resource);
  }

  /// The place of an anchor as an object that all links to it share.
  HPDF_Array shared_destination(const std::string& name) {
    HPDF_Array& place = places_[name];
    if (place == nullptr) place = pdf_.registered(destination(name));
    return place;
  }

  HPDF_Dict annotation(const Link& link, double height) {
    constexpr int printed = 4;  // the one flag PDF/A demands of an annotation
    HPDF_Dict made = pdf_.registered(pdf_.dictionary());
    pdf_.add_name(made, "Type", "Annot");
    pdf_.add_name(made, "Subtype", "Link");
    const HPDF_Box box = {
        static_cast<HPDF_REAL>(link.x), static_cast<HPDF_REAL>(height - link.y - link.height),
        static_cast<HPDF_REAL>(link.x + link.width), static_cast<HPDF_REAL>(height - link.y)};
    pdf_.add(made, "Rect", pdf_.made(HPDF_Box_Array_New(pdf_.memory(), box)));
    pdf_.add(made, "Border", no_border_);
    pdf_.add_number(made, "F", printed);
    pdf_.add(made, "Dest", shared_destination(link.anchor));
    return made;
  }

  const Pdf& pdf_;
  const DisplayList& list_;
  std::map<std::string, const Anchor*, std::less<>> anchors_;
  std::map<std::string, HPDF_Array, std::less<>> places_;
  HPDF_Array no_border_ = nullptr;
  std::vector<HPDF_Page> pages_;
};

std::string saved(const Pdf& pdf) {
  pdf.ok(HPDF_SaveToStream(pdf.doc()));
  HPDF_UINT32 size = HPDF_GetStreamSize(pdf.doc());
  std::string file(size, '\0');
  const HPDF_STATUS status = HPDF_ReadFromStream(
      pdf.doc(), static_cast<HPDF_BYTE*>(static_cast<void*>(file.data())), &size);
  if (status != HPDF_STREAM_EOF) pdf.ok(status);
  if (size != file.size()) throw std::runtime_error("libharu gave back part of the file only");
  return file;
}

}  // namespace

std::string paint(const DisplayList& list, const Fonts& fonts) {
  const UsedCharacters used = check_list(list, fonts);
  const Pdf pdf;
  // All other streams are packed by the painter.
  pdf.ok(HPDF_SetCompressionMode(pdf.doc(), HPDF_COMP_IMAGE));
  HPDF_Dict fonts_of_pages = embed_fonts(pdf, fonts, used);
  Document document(pdf, list);
  document.add_pages(fonts_of_pages);
  document.add_links();
  document.add_bookmarks();
  add_archive_data(pdf, list.info, embedded("srgb.icc"));
  add_identifier(pdf);
  // Last, because viewer preferences and the like raise it.
  pdf.doc()->pdf_version = HPDF_VER_14;
  std::string file = saved(pdf);
  seal(file);
  return file;
}

}  // namespace output
