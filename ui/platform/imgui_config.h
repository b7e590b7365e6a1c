// What we ask of Dear ImGui; its headers include this file before anything else.
#pragma once

// WebGL 2 cannot offset a draw's vertices, so one draw list must be able to count past 65,535.
#define ImDrawIdx unsigned int

// Not wanted: names of older versions, the demo and debug windows, and any touching of files.
#define IMGUI_DISABLE_OBSOLETE_FUNCTIONS
#define IMGUI_DISABLE_OBSOLETE_KEYIO
#define IMGUI_DISABLE_DEMO_WINDOWS
#define IMGUI_DISABLE_DEBUG_TOOLS
#define IMGUI_DISABLE_FILE_FUNCTIONS
