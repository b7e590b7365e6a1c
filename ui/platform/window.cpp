#include "ui/platform/window.h"

#include <string_view>
#include <utility>

#include <GLFW/glfw3.h>
#include <imgui.h>
#include <imgui_impl_glfw.h>
#include <imgui_impl_opengl3.h>

#include "assets/embedded.h"
#include "ui/platform/devices.h"
#include "ui/theme.h"

#ifdef __EMSCRIPTEN__
#include <emscripten.h>
#include <emscripten/html5.h>
#endif

namespace slopewise {
namespace {

struct State {
    GLFWwindow* window = nullptr;
    float pixel_ratio = 0;  // that the fonts are drawn for
    std::function<void(const RawInput&)> draw;
};
State state;  // GLFW and the browser's frame callback both need one place to find it

constexpr std::pair<ImGuiKey, Key> keys[] = {
    {ImGuiKey_UpArrow, Key::up},    {ImGuiKey_DownArrow, Key::down},
    {ImGuiKey_E, Key::e},           {ImGuiKey_D, Key::d},
    {ImGuiKey_R, Key::r},           {ImGuiKey_F, Key::f},
    {ImGuiKey_U, Key::u},           {ImGuiKey_J, Key::j},
    {ImGuiKey_G, Key::g},           {ImGuiKey_X, Key::x},
    {ImGuiKey_P, Key::p},           {ImGuiKey_S, Key::s},
    {ImGuiKey_N, Key::n},           {ImGuiKey_M, Key::m},
    {ImGuiKey_C, Key::c},           {ImGuiKey_O, Key::o},
    {ImGuiKey_1, Key::one},         {ImGuiKey_2, Key::two},
    {ImGuiKey_3, Key::three},       {ImGuiKey_Space, Key::space},
    {ImGuiKey_Escape, Key::escape}, {ImGuiKey_H, Key::h},
    {ImGuiKey_V, Key::v},           {ImGuiKey_W, Key::w},
    {ImGuiKey_T, Key::t},           {ImGuiKey_L, Key::l},
    {ImGuiKey_Comma, Key::comma},   {ImGuiKey_Period, Key::period},
    {ImGuiKey_Home, Key::home},     {ImGuiKey_End, Key::end},
    {ImGuiKey_I, Key::i},           {ImGuiKey_A, Key::a},
    {ImGuiKey_Q, Key::q},           {ImGuiKey_K, Key::k},
    {ImGuiKey_4, Key::four},        {ImGuiKey_5, Key::five},
    {ImGuiKey_6, Key::six},         {ImGuiKey_7, Key::seven},
    {ImGuiKey_8, Key::eight},       {ImGuiKey_B, Key::b},
    {ImGuiKey_Y, Key::y},           {ImGuiKey_Z, Key::z},
};
constexpr std::pair<ImGuiKey, Key> replay_keys[] = {
    {ImGuiKey_LeftArrow, Key::left},      {ImGuiKey_RightArrow, Key::right},
    {ImGuiKey_PageUp, Key::page_up},      {ImGuiKey_PageDown, Key::page_down},
    {ImGuiKey_Backspace, Key::backspace},
};

// Held down, these step on.
bool repeats(Key key) {
    return key == Key::left || key == Key::right || key == Key::comma || key == Key::period;
}

RawInput read_keys() {
    RawInput raw;
    raw.wall_s = glfwGetTime();
    if (ImGui::GetIO().WantTextInput) return raw;  // a name is being written
    const auto read = [&raw](ImGuiKey imgui_key, Key key) {
        raw.held[static_cast<std::size_t>(key)] = ImGui::IsKeyDown(imgui_key);
        raw.pressed[static_cast<std::size_t>(key)] = ImGui::IsKeyPressed(imgui_key, repeats(key));
    };
    for (const auto& [imgui_key, key] : keys) read(imgui_key, key);
    for (const auto& [imgui_key, key] : replay_keys) read(imgui_key, key);
    raw.controller_stick = controller_stick();
    return raw;
}

std::string_view font_bytes(std::string_view name) {
    for (const EmbeddedFile& file : embedded_files()) {
        if (file.name == name) return file.bytes;
    }
    return {};
}

// Pixels of the picture per layout pixel.
float pixel_ratio() {
#ifdef __EMSCRIPTEN__
    return static_cast<float>(emscripten_get_device_pixel_ratio());
#else
    int layout_width = 0, layout_height = 0, width = 0, height = 0;
    glfwGetWindowSize(state.window, &layout_width, &layout_height);
    glfwGetFramebufferSize(state.window, &width, &height);
    return layout_width > 0 ? static_cast<float>(width) / static_cast<float>(layout_width) : 1.0f;
#endif
}

// A page that is zoomed, or a window moved to a denser screen, asks for other letters.
void follow_pixel_ratio() {
    const float ratio = pixel_ratio();
    if (ratio == state.pixel_ratio || ratio <= 0) return;
    const bool again = state.pixel_ratio > 0;
    state.pixel_ratio = ratio;
    if (again) ImGui_ImplOpenGL3_DestroyFontsTexture();
    load_fonts(font_bytes("fonts/regular"), font_bytes("fonts/bold"), ratio);
    if (again) ImGui_ImplOpenGL3_CreateFontsTexture();
}

// In a browser the canvas fills the page; follow it when the page changes size.
void follow_page() {
#ifdef __EMSCRIPTEN__
    double width = 0.0, height = 0.0;
    emscripten_get_element_css_size("#stage", &width, &height);
    int now_width = 0, now_height = 0;
    glfwGetWindowSize(state.window, &now_width, &now_height);
    const int wanted_width = static_cast<int>(width), wanted_height = static_cast<int>(height);
    if (wanted_width > 0 && wanted_height > 0 && (wanted_width != now_width || wanted_height != now_height))
        glfwSetWindowSize(state.window, wanted_width, wanted_height);
#endif
}

// Dear ImGui listens for the wheel on the document, where browsers let nobody stop the page from scrolling
// and complain of the try; on the canvas they do.
void move_wheel_to_canvas() {
#ifdef __EMSCRIPTEN__
    emscripten_set_wheel_callback(EMSCRIPTEN_EVENT_TARGET_DOCUMENT, nullptr, false, nullptr);
    emscripten_set_wheel_callback(
        "#canvas", nullptr, false, [](int, const EmscriptenWheelEvent* event, void*) {
            const double steps_per_unit = event->deltaMode == DOM_DELTA_PIXEL ? 1.0 / 100.0 : 1.0 / 3.0;
            ImGui::GetIO().AddMouseWheelEvent(static_cast<float>(-event->deltaX * steps_per_unit),
                                              static_cast<float>(-event->deltaY * steps_per_unit));
            return EM_TRUE;
        });
#endif
}

void draw_one_frame() {
    glfwPollEvents();
    follow_page();
    follow_pixel_ratio();
    ImGui_ImplOpenGL3_NewFrame();
    ImGui_ImplGlfw_NewFrame();
    ImGui::NewFrame();
    const ImVec2 size = ImGui::GetIO().DisplaySize;
    if (size.x > 0.0f && size.y > 0.0f) {
        fit_theme(size.x, size.y);
        state.draw(read_keys());
    }
    ImGui::Render();
    int width = 0, height = 0;
    glfwGetFramebufferSize(state.window, &width, &height);
    glViewport(0, 0, width, height);
    ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
    glfwSwapBuffers(state.window);
}

}  // namespace

std::string open_window(const char* title, int width, int height) {
    if (!glfwInit()) return "the window system could not be started";
#ifdef __EMSCRIPTEN__
    const char* shader_version = "#version 300 es";
    glfwWindowHint(GLFW_SCALE_TO_MONITOR, GLFW_TRUE);  // sharp on dense screens
#else
    const char* shader_version = "#version 130";
    glfwWindowHint(GLFW_CONTEXT_VERSION_MAJOR, 3);
    glfwWindowHint(GLFW_CONTEXT_VERSION_MINOR, 0);
#endif
    state.window = glfwCreateWindow(width, height, title, nullptr, nullptr);
    if (state.window == nullptr) return "no OpenGL 3 (in a browser: WebGL 2) picture could be opened";
    glfwMakeContextCurrent(state.window);
    glfwSwapInterval(1);

    IMGUI_CHECKVERSION();
    ImGui::CreateContext();
    ImGuiIO& io = ImGui::GetIO();
    io.IniFilename = nullptr;  // the program keeps what it keeps through its host
    io.ConfigFlags |= ImGuiConfigFlags_NavEnableKeyboard;
    ImGui_ImplGlfw_InitForOpenGL(state.window, true);
#ifdef __EMSCRIPTEN__
    ImGui_ImplGlfw_InstallEmscriptenCanvasResizeCallback("#canvas");
#endif
    ImGui_ImplOpenGL3_Init(shader_version);
    move_wheel_to_canvas();
    follow_page();
    follow_pixel_ratio();
    return {};
}

void run_frames(std::function<void(const RawInput&)> draw) {
    state.draw = std::move(draw);
#ifdef __EMSCRIPTEN__
    emscripten_set_main_loop(draw_one_frame, 0, false);
#else
    while (!glfwWindowShouldClose(state.window)) draw_one_frame();
#endif
}

void close_window() {
    ImGui_ImplOpenGL3_Shutdown();
    ImGui_ImplGlfw_Shutdown();
    ImGui::DestroyContext();
    glfwDestroyWindow(state.window);
    glfwTerminate();
}

}  // namespace slopewise
