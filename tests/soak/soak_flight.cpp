#include "tests/soak/soak_flight.h"

#include <malloc.h>
#include <unistd.h>

#include <cstdio>
#include <set>

#include "tests/scene/no_window.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"

namespace slopewise::test {
namespace {

constexpr std::size_t kept_attempts = 3;

// Forgets the oldest attempts; their rows stay in the program's list.
struct ForgetfulStore : MemoryStore {
    int taken = 0;

    void keep(const std::string& id, const std::string& row, const std::string& attempt) override {
        MemoryStore::keep(id, row, attempt);
        ++taken;
        while (attempts.size() > kept_attempts) attempts.erase(attempts.begin());
        while (rows.size() > kept_attempts) rows.erase(rows.begin());
    }
};

struct SoakHost : TestHost {
    ForgetfulStore forgetful;
    long words_spoken = 0;

    LogbookStore& logbook() override { return forgetful; }
    void speak(std::string_view words) override { words_spoken += static_cast<long>(words.size()); }
};

std::int64_t resident() {
    long long pages = 0, resident_pages = 0;
    if (std::FILE* file = std::fopen("/proc/self/statm", "r")) {
        if (std::fscanf(file, "%lld %lld", &pages, &resident_pages) != 2) resident_pages = 0;
        std::fclose(file);
    }
    return resident_pages * sysconf(_SC_PAGESIZE);
}

std::int64_t bytes_of(const std::string& text) { return static_cast<std::int64_t>(text.capacity()); }

class Soak {
public:
    Soak() : app_(make_app(shipped(), host_)) {
        app_.settings.up_key_pushes = true;
        app_.settings.student = "Kestrel 7";
        app_.settings.display.side_profile = true;
        app_.settings.display.call_outs = true;
        app_.screen = Screen::choices;
        app_.home = Screen::choices;
        ImGui::EndFrame();  // the one that the window without a window began
    }
    ~Soak() { ImGui::NewFrame(); }

    SoakResult run(double hours, double sample_each_h) {
        sample();
        double next_h = sample_each_h;
        std::set<std::string> lessons;
        for (std::size_t i = 0; flown_h() < hours; ++i) {
            const std::string lesson = app_.catalog.lessons[i % app_.catalog.lessons.size()].id;
            fly(lesson, i);
            lessons.insert(lesson);
            look_at_logbook();
            drill(app_.catalog.drills[i % app_.catalog.drills.size()].id);
            want(OpenLessons{});
            frames(2);
            if (flown_h() < next_h && flown_h() < hours) continue;
            sample();
            next_h += sample_each_h;
        }
        result_.lessons = static_cast<int>(lessons.size());
        result_.kept = host_.forgetful.taken;
        return result_;
    }

private:
    double flown_h() const { return static_cast<double>(ticks_) / (120.0 * 3600.0); }

    template <class Wish>
    void want(Wish wish) {
        apply(app_, wish, host_);
    }

    void frames(int count) {
        for (int i = 0; i < count; ++i) {
            const std::int64_t before = app_.flight ? app_.flight->attempt.tick : 0;
            raw_.wall_s += soak_frame_s;
            ImGui::NewFrame();
            frame(app_, raw_, host_);
            ImGui::Render();
            ++result_.frames;
            result_.most_vertices =
                std::max(result_.most_vertices, std::int64_t{ImGui::GetDrawData()->TotalVtxCount});
            if (app_.flight && app_.flight->attempt.tick > before)
                ticks_ += app_.flight->attempt.tick - before;
        }
    }
    void frames_of(Screen screen, double most_s) {
        for (double left_s = most_s; left_s > 0.0 && app_.screen == screen; left_s -= soak_frame_s) frames(1);
    }

    void fly(const std::string& lesson, std::size_t number) {
        want(OpenLessons{});
        frames(2);
        want(OpenLesson{lesson});
        frames(2);
        want(FlyLesson{lesson});
        frames(2);
        want(StartFlight{});
        frames(1);
        if (waits_for_answer(*app_.flight)) want(ExchangeControls{});  // takes the part that is offered,
        want(ExchangeControls{});                                      // and gives up everything
        if (number % 5 == 0) {
            want(TogglePause{});
            frames(4);
            want(TogglePause{});
        }
        if (number % 7 == 6) want_after(20.0);
        frames_of(Screen::flight, 15 * 60.0);
        if (app_.screen != Screen::estimate) return;  // came to nothing: left as it is
        ++result_.scored;
        frames(24);  // the blank seconds
        for (int question = 0; question < 3; ++question) {
            want(AnswerEstimate{-1, static_cast<int>(number % 2)});
            frames(2);
        }
        want(OpenSummary{});
        frames(2);
        want(ShowDetail{});
        want(OpenTakeAway{});
        frames(1);
        want(TakeAway{static_cast<int>(number % 3)});
        want(CloseTakeAway{});
        if (number % 3 == 0) fly_on();
        replay();
    }

    void want_after(double seconds) {
        frames_of(Screen::flight, seconds);
        if (app_.screen == Screen::flight) want(GoAround{});
    }

    void fly_on() {
        want(FlyOn{});
        frames_of(Screen::flight, 120.0);
        want(OpenSummary{});
        frames(1);
    }

    void replay() {
        want(OpenReplay{});
        want(DriveReplay{DriveReplay::Wish::start});
        want(DriveReplay{DriveReplay::Wish::play_or_pause});
        frames(20);
        want(DriveReplay{DriveReplay::Wish::change_view});
        frames(4);
        want(DriveReplay{DriveReplay::Wish::end});
        frames(2);
        want(CloseReplay{});
        frames(1);
    }

    void look_at_logbook() {
        want(OpenLogbook{});
        frames(3);
        if (!host_.forgetful.attempts.empty()) {
            want(OpenAttempt{host_.forgetful.attempts.rbegin()->first});
            frames(3);
            want(OpenLogbook{});
        }
        want(OpenProgress{});
        frames(2);
        want(CloseProgress{});
        want(CloseLogbook{});
        frames(1);
    }

    void drill(const std::string& id) {
        want(OpenDrills{});
        frames(1);
        want(OpenDrill{id});
        frames(1);
        want(BeginDrill{});
        for (int i = 0; i < 12 && app_.drills.cards; ++i) {
            frames(24);
            want(MovePlaceMark{20.0, false});
            want(DoWithDrill{DoWithDrill::Wish::mark_moment});
            want(AnswerCard{i % 3});
            frames(2);
            want(DoWithDrill{DoWithDrill::Wish::go_on});
        }
        for (int i = 0; i < 400 && app_.drills.flown; ++i) frames(1);
        want(DoWithDrill{DoWithDrill::Wish::leave});
        frames(1);
        ++drills_;
    }

    void sample() {
        SoakSample now;
        now.flown_h = flown_h();
        const struct mallinfo2 heap = mallinfo2();
        now.held_bytes = static_cast<std::int64_t>(heap.uordblks + heap.hblkhd);
        now.resident_bytes = resident();
        for (const IndexRow& row : app_.logbook.rows)
            now.logbook_bytes += static_cast<std::int64_t>(sizeof row) + bytes_of(row.id) +
                                 bytes_of(row.student) + bytes_of(row.row.lesson) +
                                 bytes_of(row.row.priority_fault);
        for (const KeptDrillResult& one : app_.drills.kept)
            now.logbook_bytes += static_cast<std::int64_t>(drill_log_text({&one, 1}).size());
        now.attempts = static_cast<int>(app_.logbook.rows.size());
        now.drills = drills_;
        result_.samples.push_back(now);
    }

    NoWindow window_;
    SoakHost host_;
    App app_;
    RawInput raw_;
    SoakResult result_;
    std::int64_t ticks_ = 0;
    int drills_ = 0;
};

}  // namespace

SoakResult soak(double hours, double sample_each_h) { return Soak().run(hours, sample_each_h); }

std::int64_t growth_bytes(const SoakResult& result, double from_h) {
    const SoakSample& end = result.samples.back();
    for (const SoakSample& one : result.samples)
        if (one.flown_h >= from_h)
            return (end.held_bytes - end.logbook_bytes) - (one.held_bytes - one.logbook_bytes);
    return most_growth_bytes + 1;  // never came so far: nothing is shown
}

}  // namespace slopewise::test
