// Windows of one machine that hear each other, for the tests of the program: pages that can be opened,
// hidden, loaded again and closed.
#pragma once

#include <algorithm>
#include <memory>
#include <string>
#include <vector>

#include "tests/ui/test_host.h"
#include "ui/class_channel.h"

namespace slopewise::test {

class PageChannel;

// The browser: what one page says reaches every other that listens there.
struct Machine {
    std::vector<PageChannel*> pages;
    std::vector<std::string> said;  // everything, to be looked at
};

class PageChannel : public ClassChannel {
public:
    PageChannel(Machine& machine, std::string address_pair)
        : machine_(machine), address_pair_(std::move(address_pair)) {
        machine_.pages.push_back(this);
    }
    ~PageChannel() override { std::erase(machine_.pages, this); }
    PageChannel(const PageChannel&) = delete;
    PageChannel& operator=(const PageChannel&) = delete;

    bool there() const override { return true; }
    std::string pair_of_address() const override { return address_pair_; }
    std::string kept_pair() const override { return kept; }
    void keep_pair(std::string_view pair) override { kept = pair; }
    void join(std::string_view pair) override { pair_ = pair; }
    void post(std::string_view text) override { send(text, false); }
    void post_lobby(std::string_view text) override { send(text, true); }
    void say_at_leaving(std::string_view text) override { farewell_ = text; }
    bool take(ChannelText& next) override {
        if (waiting.empty()) return false;
        next = waiting.front();
        waiting.erase(waiting.begin());
        return true;
    }
    bool open_window(std::string_view pair) override {
        opened = pair;
        return allows_windows;
    }
    void close_this_window() override { closed = true; }

    void leave() { send(farewell_, false); }

    std::string kept, opened;
    bool allows_windows = true, closed = false;
    std::vector<ChannelText> waiting;

private:
    void send(std::string_view text, bool lobby) {
        machine_.said.emplace_back(text);
        for (PageChannel* page : machine_.pages)
            if (page != this && (lobby || (!pair_.empty() && page->pair_ == pair_)))
                page->waiting.push_back({lobby, std::string(text)});
    }

    Machine& machine_;
    std::string address_pair_, pair_, farewell_;
};

struct PageHost : TestHost {
    PageHost(Machine& machine, const std::string& pair) : channel(machine, pair) {
        static std::uint32_t pages = 0;  // each draws numbers of its own
        drawn = ++pages * 1000;
    }
    PageChannel channel;
    ClassChannel& class_channel() override { return channel; }
};

}  // namespace slopewise::test
