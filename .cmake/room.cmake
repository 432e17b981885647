# brimline_room(NAME): a static library of one folder; its sources are named by
# target_sources in the folder and its subfolders. Headers are included by their
# path from the top: #include "analysis/quantities.h".
# -Wno-restrict: GCC 12 warns of `"text" + std::string` without cause (GCC bug 105651).
function(brimline_warnings target)
  target_compile_options(${target} PRIVATE -Wall -Wextra -Wpedantic -Wshadow
                         -Wnon-virtual-dtor -Wconversion -Wno-sign-conversion -Wno-restrict -Werror=return-type)
endfunction()

function(brimline_room name)
  add_library(${name} STATIC)
  target_include_directories(${name} PUBLIC ${CMAKE_SOURCE_DIR})
  brimline_warnings(${name})
endfunction()

# brimline_program(NAME SOURCES... ): an executable in build/bin.
function(brimline_program name)
  add_executable(${name} ${ARGN})
  target_include_directories(${name} PRIVATE ${CMAKE_SOURCE_DIR})
  brimline_warnings(${name})
endfunction()

# brimline_test(NAME SOURCES file... LINK library...): a GoogleTest program, each
# of its cases a test of CTest, run with no display and in the C.UTF-8 locale.
function(brimline_test name)
  cmake_parse_arguments(arg "QT" "" "SOURCES;LINK" ${ARGN})
  brimline_program(${name} ${arg_SOURCES})
  set_target_properties(${name} PROPERTIES RUNTIME_OUTPUT_DIRECTORY ${CMAKE_BINARY_DIR}/tests)
  target_link_libraries(${name} PRIVATE ${arg_LINK} GTest::gmock GTest::gtest_main)
  target_compile_definitions(${name} PRIVATE
    BRIMLINE_SOURCE_DIR="${CMAKE_SOURCE_DIR}" BRIMLINE_BIN_DIR="${CMAKE_BINARY_DIR}/bin")
  gtest_discover_tests(${name} DISCOVERY_TIMEOUT 60
    PROPERTIES TIMEOUT 300 ENVIRONMENT "QT_QPA_PLATFORM=offscreen;LC_ALL=C.UTF-8;TZ=UTC")
endfunction()
