#include "ui/platform/store_desktop.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <algorithm>
#include <fstream>
#include <functional>
#include <iterator>
#include <map>
#include <optional>
#include <utility>

namespace slopewise {
namespace {

namespace files = std::filesystem;
using Kind = StoreEvent::Kind;

constexpr const char* row_ending = ".row";
constexpr const char* attempt_ending = ".attempt";
constexpr const char* journal_ending = ".journal";
constexpr char piece_end = '\f';  // no piece holds one

std::optional<std::string> read_whole(const files::path& path) {
    std::ifstream file(path, std::ios::binary);
    if (!file) return std::nullopt;
    return std::string{std::istreambuf_iterator<char>(file), {}};
}

// What is written of a journal at once; a piece without its end was cut off.
std::vector<std::string> pieces_of(std::string_view text) {
    std::vector<std::string> pieces;
    for (std::size_t end = text.find(piece_end); end != std::string_view::npos; end = text.find(piece_end)) {
        pieces.emplace_back(text.substr(0, end));
        text.remove_prefix(end + 1);
    }
    return pieces;
}

// A journal being written, locked for as long: another window sees that it is not cut off.
class JournalFile {
public:
    explicit JournalFile(const files::path& path)
        : file_(::open(path.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_APPEND | O_CLOEXEC, 0644)) {
        if (file_ >= 0) ::flock(file_, LOCK_EX | LOCK_NB);
    }
    JournalFile(JournalFile&& other) noexcept : file_(std::exchange(other.file_, -1)) {}
    JournalFile& operator=(JournalFile&& other) noexcept {
        std::swap(file_, other.file_);
        return *this;
    }
    ~JournalFile() {
        if (file_ >= 0) ::close(file_);
    }

    bool add(std::string_view piece) {
        return file_ >= 0 && write(piece) && write(std::string_view(&piece_end, 1));
    }

private:
    bool write(std::string_view text) const {
        return ::write(file_, text.data(), text.size()) == static_cast<ssize_t>(text.size());
    }

    int file_ = -1;
};

bool is_being_written(const files::path& journal) {
    const int file = ::open(journal.c_str(), O_RDONLY | O_CLOEXEC);
    if (file < 0) return false;
    const bool held = ::flock(file, LOCK_SH | LOCK_NB) != 0;
    ::close(file);
    return held;
}

class DesktopStore : public LogbookStore {
public:
    DesktopStore(files::path folder, files::path hand_over)
        : folder_(std::move(folder)), hand_over_(std::move(hand_over)) {}

    void open() override {
        std::error_code error;
        files::create_directories(folder_, error);
        if (error)
            return tell({Kind::refused, "", "The folder " + folder_.string() + " cannot be made.", {}});
        StoreEvent opened{Kind::opened, "", "", {}};
        for (const files::path& path : paths(row_ending))
            if (const auto row = read_whole(path)) opened.texts.push_back(path.stem().string() + "\n" + *row);
        tell(std::move(opened));
        for (const files::path& path : paths(journal_ending)) {
            if (is_being_written(path)) continue;
            if (const auto text = read_whole(path))
                tell({Kind::journal, path.stem().string(), "", pieces_of(*text)});
        }
    }

    void keep(const std::string& id, const std::string& row, const std::string& attempt) override {
        if (!write_whole(path_of(id, attempt_ending), attempt)) return tell_not_kept(id);
        keep_row(id, row);
        drop_journal(id);
    }

    void keep_row(const std::string& id, const std::string& row) override {
        if (!write_whole(path_of(id, row_ending), row)) return tell_not_kept(id);
        tell({Kind::kept, id, "", {}});
    }

    void load(const std::string& id) override {
        if (auto text = read_whole(path_of(id, attempt_ending))) return tell({Kind::loaded, id, "", {*text}});
        tell({Kind::not_loaded, id, path_of(id, attempt_ending).string() + " cannot be read.", {}});
    }

    void erase(const std::string& id) override {
        std::error_code ignored;
        files::remove(path_of(id, row_ending), ignored);
        files::remove(path_of(id, attempt_ending), ignored);
    }

    void begin_journal(const std::string& id, const std::string& head) override {
        journals_.insert_or_assign(id, JournalFile(path_of(id, journal_ending)));
        extend_journal(id, head);
    }

    void extend_journal(const std::string& id, const std::string& piece) override {
        const auto journal = journals_.find(id);
        if (journal != journals_.end() && !journal->second.add(piece)) tell_not_kept(id);
    }

    void drop_journal(const std::string& id) override {
        journals_.erase(id);
        std::error_code ignored;
        files::remove(path_of(id, journal_ending), ignored);
    }

    void export_file(const std::string& name, const std::string& head,
                     const std::vector<std::string>& ids) override {
        const files::path path = hand_over_ / name;
        std::ofstream file(path, std::ios::binary);
        file << head;
        for (const std::string& id : ids)
            if (const auto text = read_whole(path_of(id, attempt_ending))) file << *text << '\n';
        file.close();
        if (file.fail()) tell({Kind::not_loaded, "", path.string() + " cannot be written.", {}});
        else tell({Kind::exported, "", path.string(), {}});
    }

    void choose_import() override {
        const files::path folder = folder_ / "take-in";
        std::error_code error;
        files::create_directories(folder, error);
        const files::directory_iterator entries(folder, error);
        for (const files::directory_entry& entry : entries) {
            if (!entry.is_regular_file(error)) continue;
            importing_.open(entry.path(), std::ios::binary);
            tell({Kind::import_began, "", entry.path().filename().string(), {}});
            return next_import_line();
        }
        tell({Kind::import_began, "", folder.string(), {}});
        tell({Kind::import_failed, "", "is empty: put the file there, then ask again", {}});
    }

    void next_import_line() override {
        if (!importing_.is_open()) return;
        if (std::string line; std::getline(importing_, line)) {
            tell({Kind::import_line, "", "", {std::move(line)}});
            return;
        }
        importing_.close();
        importing_.clear();
        tell({Kind::import_ended, "", "", {}});
    }

    // The desktop has no window to choose files in: they lie in a folder of their own.
    void choose_files(bool) override {
        const files::path folder = folder_ / "class";
        std::error_code error;
        files::create_directories(folder, error);
        looking_.clear();
        for (const files::directory_entry& entry : files::recursive_directory_iterator(folder, error))
            if (entry.path().extension() == ".jsonl") looking_.push_back(entry.path());
        std::ranges::sort(looking_, std::greater<>());  // taken from the end
        if (looking_.empty())
            return tell({Kind::files_ended,
                         "",
                         "Put your students' files into " + folder.string() + ", then ask again.",
                         {}});
        next_file();
    }

    void next_file_lines() override {
        constexpr std::size_t batch_bytes = std::size_t{1} << 20;
        if (!looked_at_.is_open()) return;
        StoreEvent event{Kind::file_lines, "", "", {}};
        std::string line;
        for (std::size_t bytes = 0; bytes < batch_bytes && std::getline(looked_at_, line);
             bytes += line.size())
            event.texts.push_back(line);
        if (!event.texts.empty()) return tell(std::move(event));
        looked_at_.close();
        looked_at_.clear();
        tell({Kind::file_ended, "", "", {}});
        next_file();
    }

    void take_events(std::vector<StoreEvent>& events) override {
        events.clear();
        events.swap(events_);
    }

private:
    void tell(StoreEvent event) { events_.push_back(std::move(event)); }
    void next_file() {
        while (!looking_.empty()) {
            const files::path path = std::move(looking_.back());
            looking_.pop_back();
            tell({Kind::file_began, "", path.filename().string(), {}});
            looked_at_.open(path, std::ios::binary);
            if (looked_at_.is_open()) return next_file_lines();
            looked_at_.clear();
            tell({Kind::file_failed, "", "cannot be read", {}});
        }
        tell({Kind::files_ended, "", "", {}});
    }
    void tell_not_kept(const std::string& id) {
        tell({Kind::not_kept, id, "The folder " + folder_.string() + " cannot be written.", {}});
    }
    files::path path_of(const std::string& id, const char* ending) const { return folder_ / (id + ending); }

    std::vector<files::path> paths(const char* ending) const {
        std::vector<files::path> found;
        std::error_code error;
        for (const files::directory_entry& entry : files::directory_iterator(folder_, error))
            if (entry.path().extension() == ending) found.push_back(entry.path());
        std::ranges::sort(found);
        return found;
    }

    files::path folder_, hand_over_;
    std::map<std::string, JournalFile> journals_;
    std::ifstream importing_, looked_at_;
    std::vector<files::path> looking_;  // still to be looked at, the next at the end
    std::vector<StoreEvent> events_;
};

}  // namespace

bool write_whole(const files::path& path, std::string_view text) {
    const files::path beside = path.string() + ".new";
    std::ofstream file(beside, std::ios::binary);
    file.write(text.data(), static_cast<std::streamsize>(text.size()));
    file.close();
    if (file.fail()) return false;
    std::error_code error;
    files::rename(beside, path, error);
    return !error;
}

std::unique_ptr<LogbookStore> make_desktop_store(files::path folder, files::path hand_over) {
    return std::make_unique<DesktopStore>(std::move(folder), std::move(hand_over));
}

}  // namespace slopewise
