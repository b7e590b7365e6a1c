#include "ui/platform/key_events.h"

#include <string>
#include <utility>

#include <GLFW/glfw3.h>

#include "ui/key_names.h"

namespace slopewise {
namespace {

constexpr std::pair<int, Key> places[] = {{GLFW_KEY_SPACE, Key::space},
                                          {GLFW_KEY_APOSTROPHE, Key::apostrophe},
                                          {GLFW_KEY_COMMA, Key::comma},
                                          {GLFW_KEY_MINUS, Key::minus},
                                          {GLFW_KEY_PERIOD, Key::period},
                                          {GLFW_KEY_SLASH, Key::slash},
                                          {GLFW_KEY_SEMICOLON, Key::semicolon},
                                          {GLFW_KEY_EQUAL, Key::equals},
                                          {GLFW_KEY_LEFT_BRACKET, Key::left_bracket},
                                          {GLFW_KEY_BACKSLASH, Key::backslash},
                                          {GLFW_KEY_RIGHT_BRACKET, Key::right_bracket},
                                          {GLFW_KEY_GRAVE_ACCENT, Key::grave},
                                          {GLFW_KEY_WORLD_1, Key::beside_left_shift},
                                          {GLFW_KEY_WORLD_2, Key::beside_right_shift},
                                          {GLFW_KEY_ESCAPE, Key::escape},
                                          {GLFW_KEY_ENTER, Key::enter},
                                          {GLFW_KEY_KP_ENTER, Key::enter},
                                          {GLFW_KEY_TAB, Key::tab},
                                          {GLFW_KEY_BACKSPACE, Key::backspace},
                                          {GLFW_KEY_INSERT, Key::insert},
                                          {GLFW_KEY_DELETE, Key::delete_forward},
                                          {GLFW_KEY_RIGHT, Key::right},
                                          {GLFW_KEY_LEFT, Key::left},
                                          {GLFW_KEY_DOWN, Key::down},
                                          {GLFW_KEY_UP, Key::up},
                                          {GLFW_KEY_PAGE_UP, Key::page_up},
                                          {GLFW_KEY_PAGE_DOWN, Key::page_down},
                                          {GLFW_KEY_HOME, Key::home},
                                          {GLFW_KEY_END, Key::end},
                                          {GLFW_KEY_F2, Key::f2},
                                          {GLFW_KEY_F4, Key::f4},
                                          {GLFW_KEY_F5, Key::f5},
                                          {GLFW_KEY_F8, Key::f8},
                                          {GLFW_KEY_F9, Key::f9},
                                          {GLFW_KEY_KP_DECIMAL, Key::pad_decimal},
                                          {GLFW_KEY_KP_DIVIDE, Key::pad_divide},
                                          {GLFW_KEY_KP_MULTIPLY, Key::pad_multiply},
                                          {GLFW_KEY_KP_SUBTRACT, Key::pad_subtract},
                                          {GLFW_KEY_KP_ADD, Key::pad_add},
                                          {GLFW_KEY_KP_EQUAL, Key::pad_equal}};

Key counted(const char* name, int from, int key) {
    return place_of(std::string(name) + static_cast<char>(from + key));
}

}  // namespace

Key place_of_glfw(int key) {
    if (key >= GLFW_KEY_A && key <= GLFW_KEY_Z) return counted("Key", 'A', key - GLFW_KEY_A);
    if (key >= GLFW_KEY_0 && key <= GLFW_KEY_9) return counted("Digit", '0', key - GLFW_KEY_0);
    if (key >= GLFW_KEY_KP_0 && key <= GLFW_KEY_KP_9) return counted("Numpad", '0', key - GLFW_KEY_KP_0);
    for (const auto& [number, place] : places)
        if (number == key) return place;
    return Key::other;
}

}  // namespace slopewise
