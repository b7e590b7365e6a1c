// The browser's database behind the functions of logbook_library.js and files_library.js.
#include "web/store_web.h"

#include <array>
#include <cstdlib>

extern "C" {
// logbook_library.js, files_library.js. Strings are UTF-8 and end with a zero.
void slopewise_store_open();
void slopewise_store_keep(const char* id, const char* row, const char* attempt);
void slopewise_store_keep_row(const char* id, const char* row);
void slopewise_store_load(const char* id);
void slopewise_store_erase(const char* id);
void slopewise_store_begin_journal(const char* id, const char* head);
void slopewise_store_extend_journal(const char* id, const char* piece);
void slopewise_store_drop_journal(const char* id);
void slopewise_store_export(const char* name, const char* head, const char* ids);  // ids: a line each
void slopewise_store_choose_import();
void slopewise_store_next_import_line();
void slopewise_store_choose_files(int folder);
void slopewise_store_next_file_lines();
char* slopewise_store_take();  // to be freed; null: nothing happened
}

namespace slopewise {
namespace {

constexpr std::array<std::string_view, 18> kinds{
    "opened",   "refused",    "kept",         "not_kept",    "loaded",        "not_loaded",
    "changed",  "journal",    "import_began", "import_line", "import_failed", "import_ended",
    "exported", "file_began", "file_lines",   "file_failed", "file_ended",    "files_ended"};

std::string take_part(std::string_view& rest) {
    const std::size_t end = rest.find('\x1f');
    std::string part(rest.substr(0, end));
    rest.remove_prefix(end == std::string_view::npos ? rest.size() : end + 1);
    return part;
}

StoreEvent event_of(std::string_view text) {
    StoreEvent event;
    const std::string kind = take_part(text);
    for (std::size_t i = 0; i < kinds.size(); ++i)
        if (kinds[i] == kind) event.kind = static_cast<StoreEvent::Kind>(i);
    event.id = take_part(text);
    event.words = take_part(text);
    while (!text.empty()) event.texts.push_back(take_part(text));
    return event;
}

class WebStore : public LogbookStore {
public:
    void open() override { slopewise_store_open(); }
    void keep(const std::string& id, const std::string& row, const std::string& attempt) override {
        slopewise_store_keep(id.c_str(), row.c_str(), attempt.c_str());
    }
    void keep_row(const std::string& id, const std::string& row) override {
        slopewise_store_keep_row(id.c_str(), row.c_str());
    }
    void load(const std::string& id) override { slopewise_store_load(id.c_str()); }
    void erase(const std::string& id) override { slopewise_store_erase(id.c_str()); }
    void begin_journal(const std::string& id, const std::string& head) override {
        slopewise_store_begin_journal(id.c_str(), head.c_str());
    }
    void extend_journal(const std::string& id, const std::string& piece) override {
        slopewise_store_extend_journal(id.c_str(), piece.c_str());
    }
    void drop_journal(const std::string& id) override { slopewise_store_drop_journal(id.c_str()); }
    void export_file(const std::string& name, const std::string& head,
                     const std::vector<std::string>& ids) override {
        std::string lines;
        for (const std::string& id : ids) lines += id + '\n';
        slopewise_store_export(name.c_str(), head.c_str(), lines.c_str());
    }
    void choose_import() override { slopewise_store_choose_import(); }
    void next_import_line() override { slopewise_store_next_import_line(); }
    void choose_files(bool folder) override { slopewise_store_choose_files(folder ? 1 : 0); }
    void next_file_lines() override { slopewise_store_next_file_lines(); }

    void take_events(std::vector<StoreEvent>& events) override {
        events.clear();
        while (char* text = slopewise_store_take()) {
            events.push_back(event_of(text));
            std::free(text);
        }
    }
};

}  // namespace

std::unique_ptr<LogbookStore> make_web_store() { return std::make_unique<WebStore>(); }

}  // namespace slopewise
