#include "ui/screens/paused_sheet.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "ui/key_meanings.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/figures.h"
#include "ui/widgets/paper.h"

namespace slopewise {
namespace {

constexpr float beside_from =
    27;  // text sizes across the window from which the keys stand beside the buttons

enum class Wish { fly_on, same_again, mirror_start, summary, choices, look, screen_and_help };

struct Choice {
    ButtonWords words;
    Wish wish;
};

// The keys that do the same, as they are bound.
struct PausedKeys {
    std::string fly_on, again, mirror, help;
};

PausedKeys paused_keys(const FlightView& flight) {
    using namespace key_meaning;
    return {key_for(flight.keys, pause, "P"), key_for(flight.keys, again, "N"),
            key_for(flight.keys, again, "M", true), key_for(flight.keys, pause, "H", true)};
}

std::vector<Choice> choices(const FlightView& flight, const PausedKeys& keys) {
    std::vector<Choice> all{{{"Fly on", Weight::primary, keys.fly_on.c_str()}, Wish::fly_on},
                            {{"Same again", Weight::plain, keys.again.c_str()}, Wish::same_again}};
    if (flight.can_mirror)
        all.push_back({{"Mirror start", Weight::plain, keys.mirror.c_str()}, Wish::mirror_start});
    if (!flight.scored) all.push_back({{"Summary", Weight::plain}, Wish::summary});
    all.push_back(
        {{flight.drill.there() ? "Leave the drill" : "Back to choices", Weight::plain}, Wish::choices});
    all.push_back({{"Look at the picture", Weight::plain}, Wish::look});
    all.push_back({{"Screen and help", Weight::plain, keys.help.c_str()}, Wish::screen_and_help});
    return all;
}

// Buttons under one another, all as wide as the widest. Returns the one pressed, or -1.
int button_stack(Column& column, const std::vector<Choice>& all) {
    int pressed = -1;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (i > 0) gap(column, 1);
        const ImVec2 min{std::round(column.left), std::round(column.y)};
        if (button(column.list, min, {column.width, press_height()}, all[i].words))
            pressed = static_cast<int>(i);
        column.y += press_height();
    }
    return pressed;
}

float stack_height(std::size_t count) {
    const auto n = static_cast<float>(count);
    return n * press_height() + (n - 1) * grid(1);
}

}  // namespace

Actions draw_paused_sheet(const FlightView& flight, UiState& ui) {
    const PausedKeys names = paused_keys(flight);
    const std::vector<Choice> all = choices(flight, names);
    const float text = theme().size[static_cast<std::size_t>(TextSize::text)];
    float stack_width = 0;
    for (const Choice& choice : all) stack_width = std::max(stack_width, button_width(choice.words));
    const bool beside = ImGui::GetIO().DisplaySize.x >= beside_from * text;
    const float width = slip_width(beside ? stack_width + grid(4) + key_rows_width(flight.keys)
                                          : std::max(stack_width, key_rows_width(flight.keys)));
    const float keys_width = beside ? width - stack_width - grid(4) : width;
    const float keys_height = key_rows_height(keys_width, flight.keys);
    const float title = line_height(TextSize::title) + grid(1.5f);
    const float why =
        flight.caption.empty() ? 0.0f : paragraph_height(TextSize::note, flight.caption, width) + grid(1.5f);
    const float height = why + (beside ? title + std::max(stack_height(all.size()), keys_height)
                                       : title + stack_height(all.size()) + grid(2) + keys_height);

    Column page = begin_slip("paused", {width, height});
    paragraph(page, TextSize::title, theme().colour.ink, "Paused", true);
    gap(page, 1.5f);
    if (why > 0) {
        paragraph(page, TextSize::note, theme().colour.attention, flight.caption);
        gap(page, 1.5f);
    }
    Column buttons{page.list, page.left, beside ? stack_width : width, page.y};
    const int pressed = button_stack(buttons, all);
    Column keys{page.list, page.right() - keys_width, keys_width, beside ? page.y : buttons.y + grid(2)};
    key_rows(keys, flight.keys);
    const std::array<Column, 2> columns{buttons, keys};
    join(page, columns);
    end_slip(page);

    if (pressed < 0) return {};
    switch (all[static_cast<std::size_t>(pressed)].wish) {
    case Wish::fly_on: return {TogglePause{}};
    case Wish::same_again: return {RestartSame{}};
    case Wish::mirror_start: return {RestartMirrored{}};
    case Wish::summary: return {OpenSummary{}};
    case Wish::choices: return {GoToChoices{}};
    case Wish::screen_and_help: return {OpenScreenAndHelp{}};
    case Wish::look: ui.looking = true; break;
    }
    return {};
}

}  // namespace slopewise
