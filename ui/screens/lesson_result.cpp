#include "ui/screens/lesson_result.h"

#include <algorithm>
#include <cmath>

namespace slopewise {
namespace {

constexpr float beside_from = 36;  // text sizes across the page

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

void mark(const Column& page, float y, const LessonResultView::Row& row) {
    const ImVec2 centre{page.left + note_px() * 0.4f, y + note_px() * 0.55f};
    if (row.met) mark_in(page.list, centre, note_px() * 0.7f, theme().colour.good);
    if (row.missed) mark_out(page.list, centre, note_px() * 0.7f, theme().colour.attention);
}

// What was asked for on the left, what was flown on the right; on a narrow page one under the other.
void draw_row(Column& page, const LessonResultView::Row& row) {
    const Palette& c = theme().colour;
    const float indent = std::round(note_px() * 1.4f), width = page.width - indent;
    const bool beside = measure(page) >= beside_from;
    const float asked_width = beside ? std::round(0.55f * width) : width;
    mark(page, page.y, row);
    Column asked{page.list, page.left + indent, asked_width, page.y};
    paragraph(asked, TextSize::note, c.ink, row.asked);
    Column flown = asked;
    if (beside) flown = {page.list, asked.right() + grid(2), width - asked_width - grid(2), page.y};
    paragraph(flown, TextSize::note, row.missed ? c.attention : c.ink,
              row.verdict + (row.flown.empty() ? "" : ": " + row.flown), true);
    page.y = std::max(asked.y, flown.y) + grid(0.25f);
}

}  // namespace

void draw_lesson_result(Column& page, const LessonResultView& result) {
    const Palette& c = theme().colour;
    heading(page, result.title);
    for (const LessonResultView::Row& row : result.rows) draw_row(page, row);
    paragraph(page, TextSize::note, c.ink, result.runs, true);
    paragraph(page, TextSize::note, c.ink_soft, result.variation);
}

}  // namespace slopewise
