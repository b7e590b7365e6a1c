# The compiler to WebAssembly that web/toolchain/install has made ready.
include(${CMAKE_CURRENT_LIST_DIR}/deps_folder.cmake)
include(${SLOPEWISE_DEPS}/emscripten/root/cmake/Modules/Platform/Emscripten.cmake)
