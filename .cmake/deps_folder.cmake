# Where web/toolchain/install has put what it keeps: SLOPEWISE_DEPS.
include_guard(DIRECTORY)

if(DEFINED ENV{SLOPEWISE_DEPS})
    set(SLOPEWISE_DEPS $ENV{SLOPEWISE_DEPS})
elseif(DEFINED ENV{XDG_CACHE_HOME})
    set(SLOPEWISE_DEPS $ENV{XDG_CACHE_HOME}/slopewise)
else()
    set(SLOPEWISE_DEPS $ENV{HOME}/.cache/slopewise)
endif()
if(NOT EXISTS ${SLOPEWISE_DEPS}/env.sh)
    message(FATAL_ERROR "Some of what Slopewise is built with is missing. Run:  web/toolchain/install build")
endif()
