#include "output/pdfa.h"

#include <stdexcept>

#include "output/date.h"
#include "output/digest.h"
#include "output/paint_pdf.h"
#include "output/paint_text.h"

namespace output {
namespace {

constexpr std::size_t identifier_size = 16;

std::string escaped(std::string_view text) {
  std::string result;
  for (const char c : text) {
    switch (c) {
      case '&':
        result += "&amp;";
        break;
      case '<':
        result += "&lt;";
        break;
      case '>':
        result += "&gt;";
        break;
      case '"':
        result += "&quot;";
        break;
      default:
        result += c;
    }
  }
  return result;
}

/// One property of the packet; nothing when the text is empty, as in the dictionary.
std::string property(std::string_view before, std::string_view text, std::string_view after) {
  if (text.empty()) return {};
  text_string(text);  // its check: what the dictionary refuses, the packet refuses
  return std::string(before) + escaped(text) + std::string(after);
}

void add_info(const Pdf& pdf, const Info& info) {
  HPDF_Dict dictionary = pdf.doc()->info;
  const auto add = [&](const char* key, const std::string& text) {
    if (!text.empty()) pdf.add_text(dictionary, key, text);
  };
  add("Title", info.title);
  add("Author", info.author);
  add("Subject", info.subject);
  add("Keywords", info.keywords);
  add("Creator", info.creator);
  add("CreationDate", pdf_date(info.date));
  add("ModDate", pdf_date(info.date));
}

void add_metadata(const Pdf& pdf, const Info& info) {
  const std::string producer = HPDF_GetInfoAttr(pdf.doc(), HPDF_INFO_PRODUCER);
  // Not compressed: an archive's tools read the packet without reading PDF.
  HPDF_Dict metadata = pdf.stream(xmp_packet(info, producer), false);
  pdf.add_name(metadata, "Type", "Metadata");
  pdf.add_name(metadata, "Subtype", "XML");
  pdf.add(pdf.doc()->catalog, "Metadata", metadata);
}

void add_output_intent(const Pdf& pdf, std::string_view icc) {
  HPDF_Dict profile = pdf.stream(icc, true);
  pdf.add_number(profile, "N", 3);
  HPDF_Dict intent = pdf.dictionary();
  pdf.add_name(intent, "Type", "OutputIntent");
  pdf.add_name(intent, "S", "GTS_PDFA1");
  pdf.add_text(intent, "OutputConditionIdentifier", "sRGB IEC61966-2.1");
  pdf.add_text(intent, "Info", "sRGB IEC61966-2.1");
  pdf.add(intent, "DestOutputProfile", profile);
  HPDF_Array intents = pdf.array();
  pdf.append(intents, intent);
  pdf.add(pdf.doc()->catalog, "OutputIntents", intents);
}

void add_viewer_preferences(const Pdf& pdf) {
  HPDF_Dict preferences = pdf.dictionary();
  pdf.ok(HPDF_Dict_AddBoolean(preferences, "DisplayDocTitle", HPDF_TRUE));
  pdf.add(pdf.doc()->catalog, "ViewerPreferences", preferences);
}

/// Pages are labelled with the numbers of the sheets, as the title block has them.
void add_page_labels(const Pdf& pdf) {
  HPDF_Dict range = pdf.dictionary();
  pdf.add_name(range, "S", "D");
  HPDF_Array numbers = pdf.array();
  pdf.append_number(numbers, 0);
  pdf.append(numbers, range);
  HPDF_Dict labels = pdf.dictionary();
  pdf.add(labels, "Nums", numbers);
  pdf.add(pdf.doc()->catalog, "PageLabels", labels);
}

}  // namespace

std::string pdf_date(std::string_view date) {
  if (!is_date(date)) throw std::invalid_argument("date of a document is not YYYY-MM-DD");
  return "D:" + std::string(date.substr(0, 4)) + std::string(date.substr(5, 2)) +
         std::string(date.substr(8, 2)) + "000000+00'00'";
}

std::string xmp_packet(const Info& info, std::string_view producer) {
  if (!is_date(info.date)) throw std::invalid_argument("date of a document is not YYYY-MM-DD");
  const std::string moment = info.date + "T00:00:00+00:00";
  std::string packet =
      "<?xpacket begin=\"\xEF\xBB\xBF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
      "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
      "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
      "<rdf:Description rdf:about=\"\" xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\">"
      "<pdfaid:part>1</pdfaid:part><pdfaid:conformance>B</pdfaid:conformance>"
      "</rdf:Description>\n"
      "<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\">"
      "<dc:format>application/pdf</dc:format>";
  packet += property("<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">", info.title,
                     "</rdf:li></rdf:Alt></dc:title>");
  packet +=
      property("<dc:creator><rdf:Seq><rdf:li>", info.author, "</rdf:li></rdf:Seq></dc:creator>");
  packet += property("<dc:description><rdf:Alt><rdf:li xml:lang=\"x-default\">", info.subject,
                     "</rdf:li></rdf:Alt></dc:description>");
  packet +=
      "</rdf:Description>\n"
      "<rdf:Description rdf:about=\"\" xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\">";
  packet += property("<xmp:CreatorTool>", info.creator, "</xmp:CreatorTool>");
  packet += "<xmp:CreateDate>" + moment + "</xmp:CreateDate><xmp:ModifyDate>" + moment +
            "</xmp:ModifyDate></rdf:Description>\n"
            "<rdf:Description rdf:about=\"\" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\">";
  packet += property("<pdf:Keywords>", info.keywords, "</pdf:Keywords>");
  packet += property("<pdf:Producer>", producer, "</pdf:Producer>");
  packet += "</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>";
  return packet;
}

void add_archive_data(const Pdf& pdf, const Info& info, std::string_view icc) {
  add_info(pdf, info);
  add_metadata(pdf, info);
  add_output_intent(pdf, icc);
  add_viewer_preferences(pdf);
  add_page_labels(pdf);
  if (!info.language.empty()) pdf.add_text(pdf.doc()->catalog, "Lang", info.language);
}

void add_identifier(const Pdf& pdf) {
  const std::string zeros(identifier_size, '\0');
  HPDF_Array pair = pdf.array();
  pdf.append(pair, pdf.binary(zeros));
  pdf.append(pair, pdf.binary(zeros));
  pdf.add(pdf.doc()->trailer, "ID", pair);
}

void seal(std::string& file) {
  const std::string zeros(2 * identifier_size, '0');
  const std::size_t trailer = file.rfind("\ntrailer");
  if (trailer == std::string::npos) throw std::runtime_error("the PDF has no trailer");
  const std::size_t first = file.find('<' + zeros + '>', trailer);
  const std::size_t second = file.find('<' + zeros + '>', first + 1);
  if (first == std::string::npos || second == std::string::npos) {
    throw std::runtime_error("the PDF has no identifier to fill");
  }
  const std::string identifier = sha256(file).substr(0, zeros.size());
  file.replace(first + 1, zeros.size(), identifier);
  file.replace(second + 1, zeros.size(), identifier);
}

}  // namespace output
