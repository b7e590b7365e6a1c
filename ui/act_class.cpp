// What is asked for before a class.
#include "ui/act.h"

#include "ui/drive_class.h"

namespace slopewise {

void act(App& app, const OpenClassRoom&, Host& host) { open_class_room(app, host); }
void act(App& app, const CloseClassRoom&, Host& host) { close_class_room(app, host); }
void act(App& app, const ChooseClassPanel& wish, Host&) {
    app.room.panel = static_cast<ClassRoomView::Panel>(wish.panel);
}
void act(App& app, const ShowToClass& wish, Host&) {
    RoomShown& shown = app.room.shown;
    switch (wish.what) {
    case ShowToClass::What::black: shown.black = !shown.black; break;
    case ShowToClass::What::lights: shown.lights = !shown.lights; break;
    case ShowToClass::What::dials: shown.dials = !shown.dials; break;
    case ShowToClass::What::side_profile: shown.side_profile = !shown.side_profile; break;
    case ShowToClass::What::ghost: shown.ghost = !shown.ghost; break;
    case ShowToClass::What::names: shown.names = !shown.names; break;
    default: {
        const auto first = static_cast<std::size_t>(ShowToClass::What::airspeed);
        bool& lid = shown.covered.*instrument_names[static_cast<std::size_t>(wish.what) - first].which;
        lid = !lid;
    }
    }
}
void act(App& app, const PutPanelAway&, Host&) { app.room.alone = !app.room.alone; }
void act(App& app, const FreezeOrRun&, Host&) { freeze_or_run(app); }

}  // namespace slopewise
