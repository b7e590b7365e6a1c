#include "ui/drive_class_link.h"

#include <array>
#include <utility>

#include "ui/app.h"
#include "ui/class_talk.h"
#include "ui/class_views.h"
#include "ui/follow_class.h"
#include "ui/lead_class.h"

namespace slopewise {
namespace {

// What is pressed in the class window, by the words that go over.
struct Passed {
    std::string_view words;
    ClassWish wish;
};
const std::array<Passed, 4>& passed() {
    static const std::array<Passed, 4> all{
        {{"freeze or run", FreezeOrRun{}},
         {"black", ShowToClass{ShowToClass::What::black}},
         {"next", DoWithQuestions{DoWithQuestions::Wish::next, 0, ""}},
         {"previous", DoWithQuestions{DoWithQuestions::Wish::previous, 0, ""}}}};
    return all;
}

void hear(App& app, const ChannelText& text, double wall_s, Host& host) {
    ClassLink& link = app.room.link;
    if (text.text.empty()) {
        if (link.follows) miss_something(app);
        else link.leading.told = false;
        return;
    }
    const Result<LinkMessage> message = read_link_message(text.text);
    if (!message.ok() || message.value->from == link.me) return;
    if (link.follows) hear_instructor(app, *message.value, text.lobby, wall_s, host);
    else hear_class_window(app, *message.value, text.lobby, wall_s, host);
}

void hidden_text(bool shown, std::string_view what, std::string& text) {
    if (!shown) text.append(what).append(" hidden.\n");
}

}  // namespace

void begin_class_link(App& app, Host& host) {
    ClassChannel& channel = host.class_channel();
    ClassLink& link = app.room.link;
    link.there = channel.there();
    if (!link.there) return;
    link.me = drawn_name(host);
    if (const std::string pair = channel.pair_of_address(); is_pair_name(pair)) {
        link.follows = true;
        app.screen = Screen::class_window;
        join_pair(app, pair, host);
    } else if (const std::string kept = channel.kept_pair(); is_pair_name(kept)) {
        go_on_after_reload(app, kept, host);
    }
}

void hear_other_window(App& app, double wall_s, Host& host) {
    if (!app.room.link.there) return;
    ChannelText text;
    while (host.class_channel().take(text)) hear(app, text, wall_s, host);
    if (app.room.link.follows) follow_instructor(app, wall_s, host);
}

void tell_class_window(App& app, double wall_s, Host& host) {
    if (app.room.link.there && !app.room.link.follows) lead_class_window(app, wall_s, host);
}

std::string passed_words(const ClassWish& wish) {
    for (const Passed& one : passed()) {
        if (one.wish.index() != wish.index()) continue;
        const auto* show = std::get_if<ShowToClass>(&wish);
        if (show != nullptr && show->what != std::get<ShowToClass>(one.wish).what) continue;
        const auto* ask = std::get_if<DoWithQuestions>(&wish);
        if (ask != nullptr && ask->wish != std::get<DoWithQuestions>(one.wish).wish) continue;
        return std::string(one.words);
    }
    return {};
}

std::optional<ClassWish> passed_wish(std::string_view words) {
    for (const Passed& one : passed())
        if (one.words == words) return one.wish;
    return std::nullopt;
}

void class_link_view(const App& app, View& view) {
    ClassLinkView& shown = view.class_room.link;
    const LeadingLink& link = app.room.link.leading;
    shown.open = is_followed(app, app.hands.last_wall_s);
    shown.offer.clear();
    if (!link.trouble.empty()) shown.standing = link.trouble;
    else if (shown.open) shown.standing = "Class window: follows";
    else if (link.led_by_other) shown.standing = "The class window follows another instructor's page";
    else shown.standing = "No class window";
    if (!link.offers.empty()) shown.offer = "A class window still shows a run: " + link.offers.front().words;
}

void class_link_text(const View& view, std::string& text) {
    const ClassLinkView& link = view.class_room.link;
    text += link.standing + "\n";
    if (!link.offer.empty()) text += link.offer + "\n";
}

void class_window_view(const App& app, View& view) {
    std::string& waiting = view.class_picture.waiting;
    const std::string& trouble = app.room.link.following.trouble;
    waiting.clear();
    if (app.flight) return;
    waiting =
        trouble.empty() ? "Waiting for the instructor's window." : "This run cannot be shown: " + trouble;
}

void class_window_text(const View& view, std::string& text) {
    text += "Class window.\n";
    if (view.class_picture.waiting.empty()) {
        const RoomShown& shown = view.class_picture.shown;
        text += view.flight.paused ? "Frozen.\n" : "Running.\n";
        hidden_text(shown.lights, "Slope lights", text);
        hidden_text(shown.dials, "Dials", text);
        hidden_text(shown.names, "Words over the picture", text);
        if (shown.names) text += view.flight.setup + "\n";
        for (const InstrumentName& one : instrument_names)
            hidden_text(!(shown.covered.*one.which), one.title, text);
    }
    class_picture_text(view, text);
}

}  // namespace slopewise
