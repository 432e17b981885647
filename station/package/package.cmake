# Where everything goes on a machine, and the Debian packages: `cmake --build build --target package`.
#   brimline             the counter, its headless twin, and the kiosk session
#   brimline-photometer  the emulated instrument, for trying things out
set(CMAKE_SKIP_INSTALL_ALL_DEPENDENCY ON)  # packs what is built; building is asked for by itself
set(BRIMLINE_PACKAGE_VERSION ${PROJECT_VERSION} CACHE STRING "Version of the Debian packages")
set(here ${CMAKE_SOURCE_DIR}/station/package)

install(TARGETS brimline brimline-batch RUNTIME DESTINATION bin COMPONENT counter)
install(TARGETS brimline-photometer RUNTIME DESTINATION bin COMPONENT emulator)
install(FILES ${here}/brimline-kiosk.service ${here}/brimline-backup.service ${here}/brimline-backup.timer
        DESTINATION lib/systemd/system COMPONENT counter)
install(PROGRAMS ${here}/nightly-backup DESTINATION lib/brimline COMPONENT counter)
install(FILES ${here}/60-brimline-instruments.rules DESTINATION lib/udev/rules.d COMPONENT counter)
install(FILES ${here}/brimline.default DESTINATION /etc/default RENAME brimline COMPONENT counter)
install(FILES ${here}/org.brimline.Brimline.desktop DESTINATION share/applications COMPONENT counter)
install(FILES ${here}/org.brimline.Brimline.metainfo.xml DESTINATION share/metainfo COMPONENT counter)
install(FILES ${here}/org.brimline.Brimline.svg DESTINATION share/icons/hicolor/scalable/apps COMPONENT counter)
install(FILES demo/shop/settings.ini DESTINATION share/doc/brimline/examples COMPONENT counter)
install(FILES ${here}/copyright DESTINATION share/doc/brimline COMPONENT counter)
install(FILES ${here}/copyright DESTINATION share/doc/brimline-photometer COMPONENT emulator)
install(DIRECTORY demo/bottles demo/visits DESTINATION share/brimline COMPONENT emulator)

# Manual pages are packed as Debian wants them.
foreach(page brimline.1 brimline-batch.1 brimline-photometer.1)
  set(packed ${CMAKE_BINARY_DIR}/man/${page}.gz)
  add_custom_command(OUTPUT ${packed} DEPENDS ${here}/man/${page}
                     COMMAND gzip -9nc ${here}/man/${page} > ${packed})
  list(APPEND packed_pages ${packed})
  set(component counter)
  if(page MATCHES photometer)
    set(component emulator)
  endif()
  install(FILES ${packed} DESTINATION share/man/man1 COMPONENT ${component})
endforeach()
file(MAKE_DIRECTORY ${CMAKE_BINARY_DIR}/man)
add_custom_target(manual_pages ALL DEPENDS ${packed_pages})

# The [run] section of .ci/packages is the one list; what only a screenless machine needs stays out.
file(STRINGS .ci/packages lines)
set(section "")
foreach(line IN LISTS lines)
  if(line MATCHES "^\\[")
    set(section ${line})
  elseif(section STREQUAL "[run]" AND line MATCHES "^(qml6-module-|libqt6sql6-|qt6-qpa-plugins|qt6-wayland|qt6-virtualkeyboard-plugin|qt6-translations-l10n|fonts-noto-core)")
    list(APPEND needed ${line})
  endif()
endforeach()
list(JOIN needed ", " needed)

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME brimline)
set(CPACK_PACKAGE_VERSION ${BRIMLINE_PACKAGE_VERSION})
set(CPACK_PACKAGE_CONTACT "The Brimline authors <authors@brimline.invalid>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY ${PROJECT_DESCRIPTION})
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_DEB_COMPONENT_INSTALL ON)
set(CPACK_COMPONENTS_ALL counter emulator)
set(CPACK_COMPONENTS_GROUPING IGNORE)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_ENABLE_COMPONENT_DEPENDS OFF)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_COUNTER_PACKAGE_NAME brimline)
set(CPACK_DEBIAN_COUNTER_PACKAGE_DEPENDS "adduser, fontconfig, libcups2, ${needed}")
set(CPACK_DEBIAN_COUNTER_PACKAGE_RECOMMENDS "alsa-utils, cage, xwayland, cups, libgl1-mesa-dri")
set(CPACK_DEBIAN_COUNTER_PACKAGE_SUGGESTS "brimline-photometer, postgresql")
set(CPACK_COMPONENT_COUNTER_DESCRIPTION
    "The water-testing counter of a pool-and-spa shop\nA bottle of water comes over the counter: whose it is, what was read, what can be believed, what the water is doing, and a printed sheet that says what to add, when, and what is dangerous.\n.\nIt runs full screen under the kiosk compositor cage (brimline-kiosk.service) or in a window.")
set(CPACK_DEBIAN_COUNTER_PACKAGE_CONTROL_EXTRA
    "${here}/deb/postinst;${here}/deb/prerm;${here}/deb/postrm;${here}/deb/conffiles")
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
set(CPACK_DEBIAN_EMULATOR_PACKAGE_NAME brimline-photometer)
set(CPACK_COMPONENT_EMULATOR_DESCRIPTION
    "An emulated photometer for Brimline\nStands behind a pseudo-terminal and sends the readings of an invented bottle, with line faults on request.")
include(CPack)
