// The browser's channels behind the functions of class_link.js.
#include "web/class_channel_web.h"

#include <cstdlib>

extern "C" {
// class_link.js. Strings are UTF-8 and end with a zero; those returned are to be freed.
int slopewise_class_there();
char* slopewise_class_pair_of_address();
char* slopewise_class_kept_pair();
void slopewise_class_keep_pair(const char* pair);
void slopewise_class_watch_page();
void slopewise_class_join(const char* pair);  // empty: leaves it
void slopewise_class_post(const char* text);
void slopewise_class_post_lobby(const char* text);
void slopewise_class_say_at_leaving(const char* text);
char* slopewise_class_take();                       // 'l' or 'p', then the text; null: none came
int slopewise_class_open_window(const char* pair);  // 1: it is open
void slopewise_class_close_this_window();
}

namespace slopewise {
namespace {

std::string taken(char* text) {
    std::string own = text != nullptr ? text : "";
    std::free(text);
    return own;
}

class WebClassChannel : public ClassChannel {
public:
    WebClassChannel() { slopewise_class_watch_page(); }

    bool there() const override { return slopewise_class_there() != 0; }
    std::string pair_of_address() const override { return taken(slopewise_class_pair_of_address()); }
    std::string kept_pair() const override { return taken(slopewise_class_kept_pair()); }
    void keep_pair(std::string_view pair) override { slopewise_class_keep_pair(std::string(pair).c_str()); }
    void join(std::string_view pair) override { slopewise_class_join(std::string(pair).c_str()); }
    void post(std::string_view text) override { slopewise_class_post(std::string(text).c_str()); }
    void post_lobby(std::string_view text) override { slopewise_class_post_lobby(std::string(text).c_str()); }
    void say_at_leaving(std::string_view text) override {
        slopewise_class_say_at_leaving(std::string(text).c_str());
    }
    bool take(ChannelText& next) override {
        char* text = slopewise_class_take();
        if (text == nullptr) return false;
        next.lobby = *text == 'l';
        next.text = text + 1;
        std::free(text);
        return true;
    }
    bool open_window(std::string_view pair) override {
        return slopewise_class_open_window(std::string(pair).c_str()) != 0;
    }
    void close_this_window() override { slopewise_class_close_this_window(); }
};

}  // namespace

std::unique_ptr<ClassChannel> make_web_class_channel() { return std::make_unique<WebClassChannel>(); }

}  // namespace slopewise
