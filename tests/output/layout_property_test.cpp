#include <doctest/doctest.h>

#include <random>

#include "layout_support.h"

namespace {

/// Documents out of a seeded generator: every block, in sizes from nothing to several pages.
class Author {
 public:
  explicit Author(unsigned number) : random_(number) {}

  std::string document() {
    std::string xml = "<document title='" + phrase(1, 12) + "' customer='" + phrase(0, 5) + "'>";
    if (chance(3)) xml += title_block();
    if (chance(2)) xml += "<front>" + blocks(1, 4) + "</front>";
    if (chance(2)) xml += "<contents title='Contents'/>";
    const int sections = within(1, 6);
    for (int i = 0; i < sections; ++i) xml += section(1);
    return xml + "</document>";
  }

 private:
  int within(int least, int most) {
    return least + static_cast<int>(random_() % static_cast<unsigned>(most - least + 1));
  }
  bool chance(int one_in) { return within(1, one_in) == 1; }

  std::string word() {
    static const std::string unbroken(90, 'm');  // wider than any column
    static const std::vector<std::string> stock{"a",
                                                "nozzle",
                                                "resolution",
                                                "12\u202F345.5\u00A0mm",
                                                "drop-watching",
                                                "\u03A3\u03C3",
                                                "cleaning",
                                                "of",
                                                "\u2264",
                                                "Ink",
                                                "0.5",
                                                "\u05D0",
                                                "frequency/resolution_along.motion",
                                                unbroken};
    return stock[random_() % (chance(12) ? stock.size() : stock.size() - 2)];
  }

  std::string phrase(int least, int most) {
    std::string text;
    const int count = within(least, most);
    for (int i = 0; i < count; ++i) text += (i > 0 ? " " : "") + word();
    return text;
  }

  std::string inlines(int least, int most) {
    static const std::vector<std::string> marks{"b", "i", "sub", "sup", "code"};
    std::string text = phrase(least, most);
    if (chance(3)) {
      const std::string& mark = marks[random_() % marks.size()];
      text += " <" + mark + ">" + phrase(1, 3) + "</" + mark + "> " + phrase(0, 6);
    }
    return text;
  }

  std::string keys() {
    if (!chance(3)) return "";
    std::string text = " key='";
    const int count = chance(15) ? within(20, 120) : within(1, 6);
    for (int i = 0; i < count; ++i) text += "T" + std::to_string(within(1, 400)) + " ";
    return text + "'";
  }

  std::string title_block() {
    return std::string(chance(2) ? "<titleblock note='" + phrase(1, 60) + "'>" : "<titleblock>") +
           "<cell name='owner'>" + phrase(1, 8) + "</cell><cell name='title'>" + phrase(1, 30) +
           "</cell><cell name='sheet'/></titleblock>";
  }

  std::string paragraph() {
    return "<p" + keys() + ">" + inlines(1, chance(8) ? 700 : 90) + "</p>";
  }

  std::string list(int depth) {
    std::string xml = chance(2) ? "<list>" : "<list ordered='yes'>";
    const int count = within(1, 7);
    for (int i = 0; i < count; ++i) {
      xml += "<item" + keys() + ">" + inlines(1, 40) +
             (depth < 3 && chance(5) ? list(depth + 1) : "") + "</item>";
    }
    return xml + "</list>";
  }

  std::string note() {
    static const std::vector<std::string> kinds{"info", "caution", "warning"};
    std::string xml =
        "<note kind='" + kinds[random_() % 3] + "' title='" + phrase(1, 5) + "'" + keys() + ">";
    const int count = within(1, chance(6) ? 14 : 3);
    for (int i = 0; i < count; ++i) xml += chance(3) ? list(1) : paragraph();
    return xml + "</note>";
  }

  std::string cells(const std::string& number) {
    return "<cell>" + inlines(0, chance(10) ? 60 : 8) + "</cell><cell>" + number + "</cell><cell>" +
           phrase(0, 4) + "</cell>";
  }

  std::string table() {
    std::string xml = chance(4) ? "<table wide='yes'" : "<table";
    if (chance(3)) xml += " caption='" + phrase(1, 15) + "'";
    xml += " columns='l:40 d:30 l:*'>";
    if (!chance(5)) xml += "<head>" + cells("Value") + "</head>";
    const int count = within(1, chance(5) ? 150 : 12);
    for (int i = 0; i < count; ++i) {
      xml += "<row" + keys() + ">" + cells(std::to_string(within(0, 99999)) + ".5 mm") + "</row>";
    }
    if (chance(2)) xml += "<row total='yes'>" + cells("1.25") + "</row>";
    return xml + "</table>";
  }

  std::string figure() {
    const std::string width = std::to_string(within(10, 250));
    const std::string height = std::to_string(within(6, 400));
    return "<figure caption='" + phrase(0, 25) + "'" + keys() + "><drawing width='" + width +
           "' height='" + height + "'><rect x='0' y='0' width='" + width + "' height='" + height +
           "'/><label x='5' y='5' anchor='middle'>" + phrase(1, 5) + "</label></drawing></figure>";
  }

  std::string block() {
    switch (within(0, 8)) {
      case 0:
        return list(1);
      case 1:
        return note();
      case 2:
        return table();
      case 3:
        return figure();
      case 4:
        return chance(3) ? "<newpage/>" + paragraph() : paragraph();
      default:
        return paragraph();
    }
  }

  std::string blocks(int least, int most) {
    std::string xml;
    const int count = within(least, most);
    for (int i = 0; i < count; ++i) xml += block();
    return xml;
  }

  std::string section(int level) {
    std::string xml = "<section title='" + phrase(1, chance(5) ? 20 : 5) + "'";
    if (chance(6)) xml += " wide='yes'";
    if (level == 1 && chance(6)) xml += " landscape='yes'";
    xml += ">";
    const int inner = level < 3 ? within(0, 2) : 0;
    xml += blocks(inner > 0 ? 0 : 1, 5);
    for (int i = 0; i < inner; ++i) xml += section(level + 1);
    return xml + "</section>";
  }

  std::mt19937 random_;
};

std::string without_breaks(std::string document) {
  const std::string pause = "<newpage/>";
  for (std::size_t at = 0; (at = document.find(pause, at)) != std::string::npos;) {
    document.erase(at, pause.size());
  }
  return document;
}

}  // namespace

TEST_CASE("layout: invariants hold on every page of 300 random documents") {
  std::size_t pages = 0;
  for (unsigned number = 1; number <= 300; ++number) {
    CAPTURE(number);
    std::vector<char32_t> unprintable;
    const std::string document = Author(number).document();
    const auto list =
        output::lay_out(output::parse_markup(document), layout_test::fonts(), {}, unprintable);
    CHECK(layout_test::faults(list) == "");
    // A page that was asked for may hold as little as its author likes.
    const auto unasked = output::lay_out(output::parse_markup(without_breaks(document)),
                                         layout_test::fonts(), {}, unprintable);
    CHECK(layout_test::nearly_empty(unasked) == "");
    pages += list.pages.size();
  }
  CHECK(pages > 1500);  // the generator reaches beyond single pages
}
