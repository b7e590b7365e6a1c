#include "ui/gate_chimes.h"

#include "flight/dynamics.h"
#include "lesson/gates.h"
#include "ui/format.h"

namespace slopewise {
namespace {

constexpr auto shown_ticks = static_cast<std::int64_t>(2.0 / tick_s + 0.5);  // read with one look
constexpr int count = static_cast<int>(gate_heights_ft.size()) - 1;          // those that are heard

double height_m(int gate) { return m_from_ft(gate_heights_ft[static_cast<std::size_t>(gate)]); }

}  // namespace

GateChimes begin_gates(double wheel_height_m) {
    GateChimes gates;
    while (gates.next < count && wheel_height_m <= height_m(gates.next)) ++gates.next;
    return gates;
}

void advance_gates(GateChimes& gates, double wheel_height_m) {
    if (gates.ticks > 0) --gates.ticks;
    if (gates.next >= count || wheel_height_m > height_m(gates.next)) return;
    ++gates.next;
    if (!gates.height_shown) return;
    ++gates.chimes;
    gates.ticks = shown_ticks;
}

void gate_caption(const GateChimes& gates, std::string& words) {
    if (gates.ticks == 0 || !gates.height_shown) return;
    words = number_words(gate_heights_ft[static_cast<std::size_t>(gates.next - 1)]);
    words.append(" ft");
}

}  // namespace slopewise
