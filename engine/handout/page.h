// What the printed pages have in common: their elements, their sources, their look.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace slopewise {

// A table's cells are markup already: numbers, or texts through html_text.
using HtmlRow = std::vector<std::string>;
std::string html_table(const HtmlRow& heads, const std::vector<HtmlRow>& rows);

std::string html_list(const std::vector<std::string>& items);  // numbered; items are markup

// Numbers the sources that a page names, each once.
class SourceMarks {
public:
    // "[2]", or "[2, 3]" for several, of entries of engine/sources.
    std::string mark(std::initializer_list<std::string_view> ids);
    // "1 Document, section (how sure we are). 2 ...": all that were marked.
    std::string list() const;

private:
    std::vector<std::string_view> ids_;
};

// The whole page around its body: self-contained, no script, nothing loaded; prints to one A4 or Letter page.
// `title` is a plain text, the rest markup.
std::string html_page(std::string_view title, const std::string& body, const std::string& footer);

}  // namespace slopewise
