// Where the taught numbers come from: what is said, in which document, and how sure we are of it.
#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <span>

#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"

namespace slopewise {
namespace {

constexpr float three_columns_from = 34;  // text sizes across the page

float line_px() { return line_height(TextSize::note); }

// Rows of as many choices as fit, all of one width; the one pressed, or none.
std::optional<int> topic_rows(Column& page, const SourcesView& sheet) {
    const std::size_t count = sheet.topics.size();
    float widest = 0;
    for (const std::string& topic : sheet.topics)
        widest = std::max(widest, text_extent(TextSize::text, topic, true).x);
    const auto most = static_cast<std::size_t>(std::max(1.0f, page.width / (widest + grid(1.5f))));
    const std::size_t rows = (count + most - 1) / most;
    const std::size_t in_row = (count + rows - 1) / rows;
    std::optional<int> wanted;
    for (std::size_t first = 0; first < count; first += in_row) {
        const std::size_t here = std::min(in_row, count - first);
        Column row = page;
        row.width = page.width * static_cast<float>(here) / static_cast<float>(in_row);
        const int offset = static_cast<int>(first);
        const int pressed = choice_row(row, sheet.topics[first].c_str(),
                                       std::span(sheet.topics).subspan(first, here), sheet.topic - offset);
        if (pressed >= 0) wanted = pressed + offset;
        page.y = row.y + grid(0.5f);
    }
    return wanted;
}

ImU32 ink_of(SourcesView::Trust trust) {
    const Palette& c = theme().colour;
    switch (trust) {
    case SourcesView::Trust::read: return c.good;
    case SourcesView::Trust::between: return c.ink_soft;
    case SourcesView::Trust::unconfirmed: return c.attention;
    }
    return c.ink_soft;
}

// The mark beside the words: a tick where the document was read, an open diamond where nobody has seen it.
void how_sure(Column& column, const SourcesView::Entry& entry) {
    const float size = grid(1.5f);
    const ImVec2 mark{column.left + size / 2, column.y + line_px() * 0.42f};
    const ImU32 ink = ink_of(entry.trust);
    if (entry.trust == SourcesView::Trust::read) mark_in(column.list, mark, size, ink);
    if (entry.trust == SourcesView::Trust::unconfirmed) mark_out(column.list, mark, size, ink);
    Column words{column.list, column.left + grid(2.5f), column.width - grid(2.5f), column.y};
    paragraph(words, TextSize::note, ink, entry.how_sure);
    column.y = words.y;
}

void said(Column& column, const SourcesView::Entry& entry) {
    paragraph(column, TextSize::note, theme().colour.ink, entry.says);
}

void place(Column& column, const SourcesView::Entry& entry) {
    if (!entry.place.empty()) paragraph(column, TextSize::note, theme().colour.ink_soft, entry.place);
}

void entry_row(Column& page, const SourcesView::Entry& entry, bool across) {
    gap(page, 0.5f);
    if (across) {
        const std::array<float, 3> shares{0.43f, 0.32f, 0.25f};
        std::vector<Column> columns = side_by_side(page, shares, 3);
        said(columns[0], entry);
        place(columns[1], entry);
        how_sure(columns[2], entry);
        join(page, columns);
    } else {
        said(page, entry);
        place(page, entry);
        how_sure(page, entry);
    }
    gap(page, 0.5f);
    rule(page);
}

}  // namespace

Actions draw_sources(const View& view, bool just_opened) {
    const SourcesView& sheet = view.sources;
    Actions actions;
    if (just_opened) ImGui::SetNextWindowScroll({0, 0});
    Column page = begin_sheet("sources");
    if (title_with_way_back(page, "Where the numbers come from",
                            {sheet.back.c_str(), Weight::primary, "Esc"}))
        actions.emplace_back(CloseSources{});
    paragraph(page, TextSize::note, theme().colour.ink_soft, sheet.count);
    gap(page, 1);
    if (const auto topic = topic_rows(page, sheet)) actions.emplace_back(ChooseSourceTopic{*topic});
    const bool across = measure(page) >= three_columns_from;
    for (const SourcesView::Group& group : sheet.groups) {
        gap(page, 1.5f);
        heading(page, group.title);
        rule(page);
        for (const SourcesView::Entry& entry : group.entries) entry_row(page, entry, across);
    }
    gap(page, 1.5f);
    for (const std::string& line : view.caution)
        paragraph(page, TextSize::note, theme().colour.ink_soft, line);
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
