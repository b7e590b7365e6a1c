// The desktop host: kept texts and offered files are files in the user's own folders.
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <utility>

#include "ui/platform/devices.h"
#include "ui/platform/make_host.h"
#include "ui/platform/store_desktop.h"

namespace slopewise {
namespace {

namespace files = std::filesystem;

// The folder for kept texts, by the XDG base directory specification.
files::path data_folder() {
    if (const char* data = std::getenv("XDG_DATA_HOME"); data != nullptr && *data != '\0')
        return files::path(data) / "slopewise";
    const char* home = std::getenv("HOME");
    return files::path(home != nullptr ? home : ".") / ".local/share/slopewise";
}

class DesktopHost : public Host {
public:
    std::vector<HostEvent> take_events() override { return std::exchange(events_, {}); }

    std::string load(std::string_view key) override {
        std::ifstream file(data_folder() / key, std::ios::binary);
        return {std::istreambuf_iterator<char>(file), {}};
    }

    void save(std::string_view key, std::string_view text) override {
        std::error_code error;
        files::create_directories(data_folder(), error);
        if (!write_whole(data_folder() / key, text)) events_.push_back(HostEvent::storage_failed);
    }

    void offer_file(std::string_view name, std::string_view, std::string_view text) override {
        const files::path path = files::current_path() / name;
        if (write_whole(path, text)) std::printf("saved %s\n", path.c_str());
        else std::fprintf(stderr, "could not write %s\n", path.c_str());
    }

    LogbookStore& logbook() override { return *logbook_; }

    std::int64_t now_unix_ms() override {
        const auto now = std::chrono::system_clock::now().time_since_epoch();
        return std::chrono::duration_cast<std::chrono::milliseconds>(now).count();
    }

    std::int64_t ahead_of_utc_s() override {
        const std::time_t now = std::time(nullptr);
        std::tm local{};
        return localtime_r(&now, &local) != nullptr ? local.tm_gmtoff : 0;
    }

    std::uint32_t random() override { return std::random_device{}(); }

    void play(const SoundView& sound) override { slopewise::play(sound); }

    void show_mirror(std::string_view, std::string_view) override {}

private:
    std::vector<HostEvent> events_;
    std::unique_ptr<LogbookStore> logbook_ =
        make_desktop_store(data_folder() / "logbook", files::current_path());
};

}  // namespace

std::unique_ptr<Host> make_host() { return std::make_unique<DesktopHost>(); }

}  // namespace slopewise
