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

#include <GLFW/glfw3.h>

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
    explicit DesktopHost(std::string lesson_link) {
        if (!lesson_link.empty()) texts_.push_back({HostText::Kind::link, "", std::move(lesson_link)});
    }

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

    // Like the logbook's files: what lies in a folder is taken in, the first by name.
    void choose_text_file() override {
        const files::path folder = data_folder() / "take-in-lesson";
        std::error_code error;
        files::create_directories(folder, error);
        files::path first;
        for (const files::directory_entry& entry : files::directory_iterator(folder, error))
            if (entry.is_regular_file(error) && (first.empty() || entry.path() < first)) first = entry.path();
        const std::string name = first.filename().string();
        if (first.empty()) {
            texts_.push_back({HostText::Kind::unread_file, folder.string(),
                              "is empty: put the file there, then ask again"});
        } else if (files::file_size(first, error) > most_file_bytes) {
            texts_.push_back({HostText::Kind::unread_file, name, "is longer than 1 MB"});
        } else {
            std::ifstream file(first, std::ios::binary);
            texts_.push_back({HostText::Kind::file, name, {std::istreambuf_iterator<char>(file), {}}});
        }
    }

    std::vector<HostText> take_texts() override { return std::exchange(texts_, {}); }

    void copy_text(std::string_view words) override {
        glfwSetClipboardString(nullptr, std::string(words).c_str());
        std::printf("copied %s\n", std::string(words).c_str());
    }

    std::string kept_where() override { return "the folder " + data_folder().string(); }
    void erase_all() override {
        std::error_code error;
        files::remove_all(data_folder(), error);
        if (error) std::fprintf(stderr, "could not erase %s\n", data_folder().c_str());
    }

    void play(const SoundView& sound) override { slopewise::play(sound); }

    void show_mirror(std::string_view, std::string_view) override {}

private:
    std::vector<HostEvent> events_;
    std::vector<HostText> texts_;
    std::unique_ptr<LogbookStore> logbook_ =
        make_desktop_store(data_folder() / "logbook", files::current_path());
};

}  // namespace

std::unique_ptr<Host> make_host(std::string lesson_link) {
    return std::make_unique<DesktopHost>(std::move(lesson_link));
}

}  // namespace slopewise
