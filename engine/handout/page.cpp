#include "handout/page.h"

#include <algorithm>
#include <cassert>

#include "debrief/html_text.h"
#include "debrief/sheet_style.h"
#include "review/track_csv.h"
#include "sources/sources.h"

namespace slopewise {
namespace {

constexpr const char* page_style = R"(
.two { display: grid; grid-template-columns: 1fr 1fr; gap: 0 7mm; } .who { display: flex; gap: 6mm; margin: 1.5mm 0; }
.who span { flex: 1; border-bottom: .2mm solid #555; } ol { margin: 0; padding-left: 5mm; } li { margin: 0 0 .4mm; }
td { white-space: nowrap; } header > p { white-space: normal; flex: none; max-width: 75mm; overflow-wrap: anywhere; } .plan { font-size: 9.2pt; } .plan td { white-space: normal; vertical-align: top; text-align: left; padding: .7mm 1.5mm; } .plan th { text-align: left; } .plan td:first-child { white-space: nowrap; }
kbd { font: inherit; font-weight: 600; border: .2mm solid #555; border-radius: .6mm; padding: 0 .8mm; }
b.press { font-weight: 700; } sup { font-size: 6.5pt; line-height: 0; } .notes { min-height: 24mm; }
)";

}  // namespace

std::string html_table(const HtmlRow& heads, const std::vector<HtmlRow>& rows) {
    std::string text = "<table><tr>";
    for (const std::string& head : heads) text += "<th>" + head + "</th>";
    text += "</tr>";
    for (const HtmlRow& row : rows) {
        text += "<tr>";
        for (const std::string& cell : row) text += "<td>" + cell + "</td>";
        text += "</tr>";
    }
    return text + "</table>";
}

std::string html_list(const std::vector<std::string>& items) {
    std::string text = "<ol>";
    for (const std::string& item : items) text += "<li>" + item + "</li>";
    return text + "</ol>";
}

std::string SourceMarks::mark(std::initializer_list<std::string_view> ids) {
    std::string numbers;
    for (const std::string_view id : ids) {
        assert(find_taught_number(id) != nullptr);
        auto found = std::ranges::find(ids_, id);
        if (found == ids_.end()) found = ids_.insert(ids_.end(), id);
        numbers += (numbers.empty() ? "" : ", ") + std::to_string(found - ids_.begin() + 1);
    }
    return "<sup>[" + numbers + "]</sup>";
}

std::string SourceMarks::list() const {
    std::string text;
    for (std::size_t i = 0; i < ids_.size(); ++i) {
        const TaughtNumber& number = *find_taught_number(ids_[i]);
        std::string where(number.document);
        if (!number.section.empty()) where += ", " + std::string(number.section);
        // What is common practice has no document: its words say so alone.
        where +=
            where.empty() ? words_of(number.sureness) : " (" + std::string(words_of(number.sureness)) + ")";
        text += (i == 0 ? "<b>" : " <b>") + std::to_string(i + 1) + "</b> " + html_text(where) + ".";
    }
    return text;
}

std::string html_page(std::string_view title, const std::string& body, const std::string& footer) {
    return "<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>" + html_text(title) +
           "</title><meta name=\"viewport\" content=\"width=device-width\"><style>" + sheet_style +
           page_style + "</style></head><body>" + body + "<footer>" + html_text(file_caution) +
           " Not for use in flight; the flight manual, the instructor and local rules come first.<br>" +
           footer + "</footer></body></html>\n";
}

}  // namespace slopewise
