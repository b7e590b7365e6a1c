// Before a class: the picture as it sees it, and beside it one panel of several.
#include <algorithm>
#include <array>
#include <cmath>
#include <span>
#include <string>
#include <vector>

#include "ui/key_meanings.h"
#include "ui/screens/ask_board.h"
#include "ui/screens/ask_panel.h"
#include "ui/screens/boards_panel.h"
#include "ui/screens/class_picture.h"
#include "ui/screens/screens.h"
#include "ui/screens/station_panel.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/notes.h"

namespace slopewise {
namespace {

using What = ShowToClass::What;
using Panel = ClassRoomView::Panel;

constexpr float two_columns_from = 30;   // text sizes across the page
constexpr float picture_share = 0.62f;   // of the page's width
constexpr float upright_height = 0.75f;  // of the picture to its width

void add(Actions& actions, const Actions& more) { actions.insert(actions.end(), more.begin(), more.end()); }

// What an instructor needs whatever panel is open.
void at_hand(Column& column, const View& view, Actions& actions) {
    const ClassRoomView& room = view.class_room;
    const RoomShown& shown = view.class_picture.shown;
    const std::string pause_key = key_meaning::key_for(view.flight.keys, key_meaning::pause, "P");
    const std::array<ButtonWords, 3> buttons{
        {{room.paused ? "Run" : "Freeze", Weight::plain, pause_key.c_str()},
         {shown.black ? "Picture" : "Black", Weight::plain, "B"},
         {"Leave", Weight::quiet, "Bksp"}}};
    const int pressed = button_row(column, buttons);
    if (pressed == 0) actions.emplace_back(FreezeOrRun{});
    if (pressed == 1) actions.emplace_back(ShowToClass{What::black});
    if (pressed == 2) actions.emplace_back(CloseClassRoom{});
}

// All that can be kept from the class, each by itself. Pressed, a thing goes from one list to the other.
struct Shown {
    const char* name;
    What what;
    bool on;
    const char* key = "";
};

void list_of(Column& column, const char* name, std::span<const Shown> all, bool on, Actions& actions) {
    std::vector<ButtonWords> buttons;
    std::vector<What> what;
    for (const Shown& one : all) {
        if (one.on != on) continue;
        buttons.push_back({one.name, on ? Weight::plain : Weight::quiet, one.key});
        what.push_back(one.what);
    }
    paragraph(column, TextSize::note, theme().colour.ink_soft, buttons.empty() ? "" : name);
    const int pressed = button_row(column, buttons);
    if (pressed >= 0) actions.emplace_back(ShowToClass{what[static_cast<std::size_t>(pressed)]});
    gap(column, 0.5f);
}

void what_is_shown(Column& column, const View& view, Actions& actions) {
    const RoomShown& s = view.class_picture.shown;
    std::vector<Shown> all{{"Slope lights", What::lights, s.lights, "L"},
                           {"Dials", What::dials, s.dials},
                           {"Path from the side", What::side_profile, s.side_profile, "I"},
                           {"Calm air beside it", What::ghost, s.ghost},
                           {"Words over the picture", What::names, s.names}};
    for (std::size_t i = 0; i < instrument_names.size(); ++i)
        all.push_back({instrument_names[i].title.data(),
                       static_cast<What>(static_cast<std::size_t>(What::airspeed) + i),
                       !(s.covered.*instrument_names[i].which)});
    heading(column, "What the class sees");
    list_of(column, "Shown: press to hide", all, true, actions);
    list_of(column, "Hidden: press to show", all, false, actions);
}

void class_window(Column& column, const ClassLinkView& link, Actions& actions) {
    using Wish = DoWithClassWindow::Wish;
    heading(column, "Class window");
    if (!link.standing.empty()) paragraph(column, TextSize::note, theme().colour.ink_soft, link.standing);
    const std::array<ButtonWords, 2> one{
        {{link.open ? "Close the class window" : "Open a class window", Weight::plain, link.open ? "" : "W"},
         {"Picture alone, in this window", Weight::quiet, "Z"}}};
    const int pressed = button_row(column, one);
    if (pressed == 0) actions.emplace_back(DoWithClassWindow{link.open ? Wish::close : Wish::open});
    if (pressed == 1) actions.emplace_back(PutPanelAway{});
    if (link.offer.empty()) return;
    attention_note(column, link.offer);
    const std::array<ButtonWords, 1> on{{{"Go on with it", Weight::primary, "O"}}};
    if (button_row(column, on) == 0) actions.emplace_back(DoWithClassWindow{Wish::go_on_with});
}

void prints(Column& column, Actions& actions) {
    using Wish = DoWithClassTable::Wish;
    heading(column, "To be printed");
    constexpr std::array<ButtonWords, 2> both{{{"Handout"}, {"Lesson plan"}}};
    const int pressed = button_row(column, both);
    if (pressed == 0) actions.emplace_back(DoWithClassTable{Wish::hand_out, 0});
    if (pressed == 1) actions.emplace_back(DoWithClassTable{Wish::lesson_plan, 0});
}

void panel(Column& column, const View& view, UiState& ui, Actions& actions) {
    static const std::array<std::string, 3> names{"Ask", "Station", "Show"};
    const ClassRoomView& room = view.class_room;
    at_hand(column, view, actions);
    gap(column, 0.5f);
    const int chosen = static_cast<int>(room.panel), pressed = choice_row(column, "panel", names, chosen);
    if (pressed >= 0 && pressed != chosen) actions.emplace_back(ChooseClassPanel{pressed});
    gap(column, 0.5f);
    paragraph(column, TextSize::note, theme().colour.ink, room.state, true);
    paragraph(column, TextSize::note, theme().colour.ink_soft, room.truth);
    gap(column, 0.5f);
    if (!view.notice.empty()) attention_note(column, view.notice);
    switch (room.panel) {
    case Panel::ask: draw_ask_panel(column, view, ui, actions); break;
    case Panel::station: draw_station_panel(column, view, actions); break;
    case Panel::show:
        class_window(column, room.link, actions);
        draw_boards_panel(column, view, actions);
        what_is_shown(column, view, actions);
        prints(column, actions);
        break;
    }
}

}  // namespace

Actions draw_class_room(const View& view, UiState& ui) {
    Actions actions;
    if (!view.class_room.paused) keep_arrows_from_focus();  // they are the stick
    Column page = begin_sheet("class room");
    const ImVec2 window = ImGui::GetIO().DisplaySize;
    const float scrolled = ImGui::GetScrollY();
    if (view.class_room.alone) {
        add(actions, draw_class_picture(page.list, {0, 0}, window, view, true));
        end_sheet(page);
        return actions;
    }
    if (measure(page) >= two_columns_from) {
        const std::array<float, 2> shares{picture_share, 1 - picture_share};
        std::vector<Column> columns = side_by_side(page, shares, 2);
        const ImVec2 min{0, 0}, max{std::round(columns[0].right()), window.y};  // it stays where it is
        panel(columns[1], view, ui, actions);
        add(actions, draw_class_picture(page.list, min, max, view, true));
        join(page, columns);
    } else {
        const float top = page.y + scrolled;
        const float asked = ask_board_height(page.width, view.class_picture.shown.ask);
        const ImVec2 max{page.right(), std::round(top + upright_height * page.width + asked)};
        page.y = max.y - scrolled + grid(1);
        panel(page, view, ui, actions);
        add(actions, draw_class_picture(page.list, {page.left, top - scrolled}, {max.x, max.y - scrolled},
                                        view, true));
    }
    end_sheet(page, false);  // a clicker's keys are the questions'
    return actions;
}

}  // namespace slopewise
