#include "ui/platform/window.h"

#include <string_view>
#include <utility>

#include <GLFW/glfw3.h>
#include <imgui.h>
#include <imgui_impl_glfw.h>
#include <imgui_impl_opengl3.h>

#include "assets/embedded.h"
#include "ui/finger_mouse.h"
#include "ui/key_names.h"
#include "ui/keyboard.h"
#include "ui/platform/controllers.h"
#include "ui/platform/key_events.h"
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
    Keyboard keyboard;
    bool page_stays = false;
    bool lost = false;  // the browser took the picture away
    std::function<FingerAreas(const RawInput&)> draw;
    FingerMouse hand;
};
State state;  // GLFW and the browser's frame callback both need one place to find it

// Dear ImGui hears the keys from GLFW, to move the focus and to write; what flies is heard here, by place and
// by what the key gives, which GLFW does not tell in a browser.
#ifdef __EMSCRIPTEN__
// Keys that a browser would find words with or, sent by a clicker, load the page anew.
bool is_kept_from_browser(Key key) {
    if (ImGui::GetIO().WantTextInput) return false;
    if (key == Key::f5) return state.page_stays;
    return key == Key::slash || key == Key::apostrophe || key == Key::f2 || key == Key::f4 ||
           key == Key::f8 || key == Key::f9;
}

EM_BOOL hear_key(int type, const EmscriptenKeyboardEvent* event, void*) {
    const std::string_view gives = event->key;
    const Key place = place_of(event->code), key = key_of(place, gives);
    if (gives == "Meta") let_go(state.keyboard);  // some machines tell of no key that comes up with it
    if (type == EMSCRIPTEN_EVENT_KEYUP) {
        key_up(state.keyboard, place, key);
        return EM_FALSE;
    }
    const bool the_browsers = event->ctrlKey || event->altKey || event->metaKey;
    if (the_browsers && key != Key::other) return EM_FALSE;
    key_down(state.keyboard, place, key, character_of(gives), event->repeat);
    return is_kept_from_browser(key);
}

void hear_keys() {
    emscripten_set_keydown_callback(EMSCRIPTEN_EVENT_TARGET_WINDOW, nullptr, true, hear_key);
    emscripten_set_keyup_callback(EMSCRIPTEN_EVENT_TARGET_WINDOW, nullptr, true, hear_key);
    emscripten_set_blur_callback(EMSCRIPTEN_EVENT_TARGET_WINDOW, nullptr, false,
                                 [](int, const EmscriptenFocusEvent*, void*) {
                                     let_go(state.keyboard);
                                     return EM_FALSE;
                                 });
    emscripten_set_visibilitychange_callback(nullptr, false,
                                             [](int, const EmscriptenVisibilityChangeEvent*, void*) {
                                                 let_go(state.keyboard);
                                                 return EM_FALSE;
                                             });
}
#else
void hear_keys() {
    glfwSetKeyCallback(state.window, [](GLFWwindow* window, int number, int scancode, int action, int mods) {
        ImGui_ImplGlfw_KeyCallback(window, number, scancode, action, mods);
        const char* gives = glfwGetKeyName(number, scancode);
        const std::string_view given = gives == nullptr ? "" : gives;
        const Key place = place_of_glfw(number), key = key_of(place, given);
        const bool the_systems = (mods & (GLFW_MOD_CONTROL | GLFW_MOD_ALT | GLFW_MOD_SUPER)) != 0;
        if (action == GLFW_RELEASE) key_up(state.keyboard, place, key);
        else if (!the_systems || key == Key::other)
            key_down(state.keyboard, place, key, character_of(given), action == GLFW_REPEAT);
    });
    glfwSetWindowFocusCallback(state.window, [](GLFWwindow* window, int focused) {
        ImGui_ImplGlfw_WindowFocusCallback(window, focused);
        if (focused == GLFW_FALSE) let_go(state.keyboard);
    });
}
#endif

RawInput read_keys() {
    RawInput raw;
    raw.wall_s = glfwGetTime();
    read(state.keyboard, raw.wall_s, raw);
    raw.controllers = read_controllers_now();
    if (ImGui::GetIO().WantTextInput) raw.held = raw.pressed = {};  // a name is being written
    return raw;
}

#ifdef __EMSCRIPTEN__
// By the backend's own way in, so that it takes the finger for a mouse that is over the window.
void move_mouse_with(MouseEvent event, double x, double y) {
    if (event == MouseEvent::none) return;
    ImGui_ImplGlfw_CursorEnterCallback(state.window, GLFW_TRUE);
    ImGui_ImplGlfw_CursorPosCallback(state.window, x, y);
    if (event == MouseEvent::move) return;
    ImGui_ImplGlfw_MouseButtonCallback(state.window, GLFW_MOUSE_BUTTON_LEFT,
                                       event == MouseEvent::press ? GLFW_PRESS : GLFW_RELEASE, 0);
}
#endif

// GLFW's own handling of fingers knows only one, and loses taps: boot.js keeps them from it.
void listen_for_fingers() {
#ifdef __EMSCRIPTEN__
    const auto listen = [](int kind, const EmscriptenTouchEvent* event, void*) {
        const FingerEvent what = kind == EMSCRIPTEN_EVENT_TOUCHSTART  ? FingerEvent::down
                                 : kind == EMSCRIPTEN_EVENT_TOUCHMOVE ? FingerEvent::move
                                 : kind == EMSCRIPTEN_EVENT_TOUCHEND  ? FingerEvent::up
                                                                      : FingerEvent::lost;
        for (int i = 0; i < event->numTouches; ++i) {
            const EmscriptenTouchPoint& finger = event->touches[i];
            if (!finger.isChanged) continue;
            const auto x = static_cast<double>(finger.targetX), y = static_cast<double>(finger.targetY);
            move_mouse_with(take(state.hand, what, finger.identifier, x, y), x, y);
        }
        return what == FingerEvent::lost ? EM_FALSE
                                         : EM_TRUE;  // what the browser takes away is not ours to stop
    };
    emscripten_set_touchstart_callback("#stage", nullptr, true, listen);
    emscripten_set_touchmove_callback("#stage", nullptr, true, listen);
    emscripten_set_touchend_callback("#stage", nullptr, true, listen);
    emscripten_set_touchcancel_callback("#stage", nullptr, true, listen);
#endif
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
    if (wanted_width <= 0 || wanted_height <= 0) return;
    if (wanted_width == now_width && wanted_height == now_height) return;
    glfwSetWindowSize(state.window, wanted_width, wanted_height);
    turn_page(state.hand);
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

// A browser takes the picture away when the graphics driver fails or others need it, and may give it back;
// all that was made in it is gone then. The program goes on meanwhile and draws nowhere.
void follow_picture() {
#ifdef __EMSCRIPTEN__
    emscripten_set_webglcontextlost_callback("#canvas", nullptr, false, [](int, const void*, void*) {
        state.lost = true;
        return EM_TRUE;
    });
    emscripten_set_webglcontextrestored_callback("#canvas", nullptr, false, [](int, const void*, void*) {
        ImGui_ImplOpenGL3_DestroyDeviceObjects();  // what they are called is forgotten with them
        ImGui_ImplOpenGL3_CreateDeviceObjects();   // the letters' texture is among them
        state.lost = false;
        return EM_TRUE;
    });
#endif
}

void draw_one_frame() {
    glfwPollEvents();
    follow_page();
    if (!state.lost) {
        follow_pixel_ratio();
        ImGui_ImplOpenGL3_NewFrame();
    }
    ImGui_ImplGlfw_NewFrame();
    ImGui::NewFrame();
    const ImVec2 size = ImGui::GetIO().DisplaySize;
    if (size.x > 0.0f && size.y > 0.0f) {
        fit_theme(size.x, size.y);
        RawInput raw = read_keys();
        raw.fingers = fingers_now(state.hand);
        state.hand.areas = state.draw(raw);
    }
    ImGui::Render();
    if (state.lost) return;
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
    hear_keys();
    listen_for_fingers();
    follow_picture();
    follow_page();
    follow_pixel_ratio();
    return {};
}

void keep_page(bool stays) { state.page_stays = stays; }

bool picture_lost() { return state.lost; }

void run_frames(std::function<FingerAreas(const RawInput&)> draw) {
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
