// The browser host: local storage, downloads, the page's text mirror and visibility, through the
// functions of host_library.js.
#include <cstdlib>

#include "ui/platform/devices.h"
#include "ui/platform/make_host.h"
#include "ui/platform/window.h"
#include "web/class_channel_web.h"
#include "web/store_web.h"

extern "C" {
// host_library.js. Strings are UTF-8; slopewise_load returns memory to be freed, or null.
char* slopewise_load(const char* key);
int slopewise_save(const char* key, const char* text);  // 1: kept, 0: refused
void slopewise_offer_file(const char* name, const char* media_type, const char* text);
void slopewise_show_mirror(const char* screen, const char* instruments);
void slopewise_speak(const char* words);
int slopewise_take_hidden();  // 1: the page was hidden since the last call
void slopewise_watch_page();
int slopewise_prefers_reduced_motion();  // 1: the browser says so
int slopewise_can_fill_screen();
void slopewise_toggle_full_screen();
int slopewise_writes_by_finger();
char* slopewise_ask_text(const char* question);  // to be freed; null: the user wants none
double slopewise_now_unix_ms();
double slopewise_ahead_of_utc_s();
void slopewise_choose_text_file();
char* slopewise_take_text();     // kind, name and text between unit separators; to be freed; null: none came
char* slopewise_page_address();  // to be freed
void slopewise_copy_text(const char* words);
void slopewise_erase_all();
double slopewise_random();  // a whole number, 0 to 2^32 - 1
// update_library.js
void slopewise_watch_updates();
int slopewise_take_update_waits();  // 1: a newer build waits, told once
void slopewise_take_update();
char* slopewise_build_id();  // to be freed
void slopewise_open_licences();
}

namespace slopewise {
namespace {

std::string taken(char* text) {
    std::string own = text != nullptr ? text : "";
    std::free(text);
    return own;
}

HostText text_of(std::string_view whole) {
    const std::size_t first = whole.find('\x1f'), second = whole.find('\x1f', first + 1);
    const std::string_view kind = whole.substr(0, first);
    HostText text;
    if (kind == "file") text.kind = HostText::Kind::file;
    if (kind == "unread_file") text.kind = HostText::Kind::unread_file;
    text.name = whole.substr(first + 1, second - first - 1);
    text.text = whole.substr(second + 1);
    return text;
}

class WebHost : public Host {
public:
    WebHost() {
        slopewise_watch_page();
        slopewise_watch_updates();
    }

    std::vector<HostEvent> take_events() override {
        std::vector<HostEvent> events;
        if (slopewise_take_hidden() != 0) events.push_back(HostEvent::hidden);
        if (slopewise_take_update_waits() != 0) events.push_back(HostEvent::update_waits);
        if (picture_lost() && !lost_) events.push_back(HostEvent::picture_lost);
        lost_ = picture_lost();
        if (refused_) events.push_back(HostEvent::storage_failed);
        refused_ = false;
        return events;
    }

    std::string load(std::string_view key) override {
        return taken(slopewise_load(std::string(key).c_str()));
    }

    void save(std::string_view key, std::string_view text) override {
        if (slopewise_save(std::string(key).c_str(), std::string(text).c_str()) == 0) refused_ = true;
    }

    bool prefers_reduced_motion() override { return slopewise_prefers_reduced_motion() != 0; }

    bool can_fill_screen() override { return slopewise_can_fill_screen() != 0; }
    void toggle_full_screen() override { slopewise_toggle_full_screen(); }

    LogbookStore& logbook() override { return *logbook_; }
    ClassChannel& class_channel() override { return *class_channel_; }

    bool writes_by_finger() override { return slopewise_writes_by_finger() != 0; }
    std::optional<std::string> ask_text(std::string_view question) override {
        char* written = slopewise_ask_text(std::string(question).c_str());
        if (written == nullptr) return std::nullopt;
        std::string text = written;
        std::free(written);
        return text;
    }

    std::int64_t now_unix_ms() override { return static_cast<std::int64_t>(slopewise_now_unix_ms()); }
    std::int64_t ahead_of_utc_s() override { return static_cast<std::int64_t>(slopewise_ahead_of_utc_s()); }
    std::uint32_t random() override { return static_cast<std::uint32_t>(slopewise_random()); }

    void offer_file(std::string_view name, std::string_view media_type, std::string_view text) override {
        slopewise_offer_file(std::string(name).c_str(), std::string(media_type).c_str(),
                             std::string(text).c_str());
    }

    void choose_text_file() override { slopewise_choose_text_file(); }

    std::vector<HostText> take_texts() override {
        std::vector<HostText> texts;
        while (char* text = slopewise_take_text()) texts.push_back(text_of(taken(text)));
        return texts;
    }

    std::string page_address() override { return taken(slopewise_page_address()); }

    void copy_text(std::string_view words) override { slopewise_copy_text(std::string(words).c_str()); }

    std::string build_id() override { return taken(slopewise_build_id()); }
    void take_update() override { slopewise_take_update(); }
    std::string kept_where() override { return "this browser, on this device"; }
    void erase_all() override { slopewise_erase_all(); }
    bool open_licences() override {
        slopewise_open_licences();
        return true;
    }

    void play(const SoundView& sound) override { slopewise::play(sound); }

    void speak(std::string_view words) override { slopewise_speak(std::string(words).c_str()); }

    void show_mirror(std::string_view screen, std::string_view instruments) override {
        slopewise_show_mirror(std::string(screen).c_str(), std::string(instruments).c_str());
    }

private:
    bool refused_ = false;
    bool lost_ = false;  // the picture
    std::unique_ptr<LogbookStore> logbook_ = make_web_store();
    std::unique_ptr<ClassChannel> class_channel_ = make_web_class_channel();
};

}  // namespace

std::unique_ptr<Host> make_host(std::string) { return std::make_unique<WebHost>(); }

}  // namespace slopewise
