// The program itself: its version, the cautions, what is kept and where, how to erase it, what it is made of.
#include <array>
#include <span>

#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/notes.h"

namespace slopewise {
namespace {

constexpr float two_columns_from = 32;  // text sizes across the page

using Wish = DoWithProgram::Wish;

void lines(Column& column, std::span<const std::string> words) {
    for (const std::string& line : words) paragraph(column, TextSize::note, theme().colour.ink_soft, line);
}

void what_it_is(Column& column, const View& view, Actions& actions) {
    constexpr ButtonWords licences{"Read the licences"};
    constexpr ButtonWords update{"Load the newer version", Weight::primary};
    heading(column, "Version");
    gap(column, 0.5f);
    paragraph(column, TextSize::text, theme().colour.ink, view.version);
    if (view.about.update_waits) {
        gap(column, 0.5f);
        if (button_row(column, std::span(&update, 1)) == 0)
            actions.emplace_back(DoWithProgram{Wish::take_update});
    }
    gap(column, 1);
    heading(column, "Cautions");
    gap(column, 0.5f);
    lines(column, view.caution);
    gap(column, 1);
    heading(column, "What it is made of");
    gap(column, 0.5f);
    lines(column, view.about.parts);
    gap(column, 0.5f);
    if (button_row(column, std::span(&licences, 1)) == 0)
        actions.emplace_back(DoWithProgram{Wish::show_licences});
}

void erasing(Column& column, const AboutView& about, Actions& actions) {
    constexpr ButtonWords ask{"Erase all of it"};
    constexpr std::array<ButtonWords, 2> sure{{{"Keep it", Weight::primary}, {"Erase it for good"}}};
    if (!about.asks_to_erase) {
        if (button_row(column, std::span(&ask, 1)) == 0) actions.emplace_back(DoWithProgram{Wish::erase_all});
        return;
    }
    attention_note(column, "Every attempt, lesson and setting on this device goes for good.");
    gap(column, 0.5f);
    const int pressed = button_row(column, sure);
    if (pressed == 0) actions.emplace_back(DoWithProgram{Wish::keep_all});
    if (pressed == 1) actions.emplace_back(DoWithProgram{Wish::erase_all});
}

void what_is_kept(Column& column, const AboutView& about, Actions& actions) {
    const Palette& c = theme().colour;
    constexpr ButtonWords logbook{"To the logbook"};
    heading(column, "What is kept, and where");
    gap(column, 0.5f);
    paragraph(column, TextSize::note, c.ink,
              "In " + about.where +
                  ", and nowhere else. Nothing is sent to anyone: no cookies, no counting of visitors, "
                  "nothing fetched from elsewhere.");
    gap(column, 0.5f);
    for (const AboutView::Kept& kept : about.kept) {
        fact_row(column, kept.what, kept.much);
        paragraph(column, TextSize::note, c.ink_soft, kept.about);
        gap(column, 0.25f);
    }
    gap(column, 0.5f);
    paragraph(column, TextSize::note, c.ink_soft,
              "Before you erase it, take along what is to be kept: each student's file from the logbook, the "
              "school's from \"School\", lessons and question sets from where they are written.");
    gap(column, 0.5f);
    if (button_row(column, std::span(&logbook, 1)) == 0) actions.emplace_back(OpenLogbook{});
    gap(column, 2);
    erasing(column, about, actions);
    if (about.news.empty()) return;
    gap(column, 0.5f);
    paragraph(column, TextSize::note, c.attention, about.news);
}

}  // namespace

Actions draw_about(const View& view) {
    Actions actions;
    Column page = begin_sheet("about");
    if (title_with_way_back(page, "About Slopewise", {"Done", Weight::primary, "Esc"}))
        actions.emplace_back(CloseAbout{});
    gap(page, 1);
    if (measure(page) >= two_columns_from) {
        const std::array<float, 2> shares{1, 1};
        std::vector<Column> columns = side_by_side(page, shares, 4);
        what_it_is(columns[0], view, actions);
        what_is_kept(columns[1], view.about, actions);
        join(page, columns);
    } else {
        what_it_is(page, view, actions);
        gap(page, 1.5f);
        what_is_kept(page, view.about, actions);
    }
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
