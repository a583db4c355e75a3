# SPDX-License-Identifier: GPL-3.0-or-later
# What `cmake --install` puts where, and the Debian package that CPack makes of it.
include(GNUInstallDirs)
set(packaging ${PROJECT_SOURCE_DIR}/resources/packaging)
set(app_id org.trueunit.Trueunit)

install(TARGETS trueunit RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
install(FILES ${packaging}/${app_id}.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES ${packaging}/${app_id}.metainfo.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
install(FILES ${packaging}/trueunit-scenario.xml RENAME trueunit.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages)
install(FILES ${packaging}/trueunit.bash-completion RENAME trueunit
        DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions)
install(FILES ${packaging}/icons/trueunit.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
foreach(size 16 24 32 48 64 128 256)
  install(FILES ${packaging}/icons/trueunit-${size}.png RENAME trueunit.png
          DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/${size}x${size}/apps)
endforeach()
# Named so that the desktop knows them for scenarios.
file(GLOB scenario_files CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/scenarios/*.json)
foreach(file ${scenario_files})
  cmake_path(GET file STEM stem)
  install(FILES ${file} RENAME ${stem}.scenario.json DESTINATION ${CMAKE_INSTALL_DATADIR}/trueunit/scenarios)
endforeach()

# Debian wants these squeezed without a time stamp.
set(squeezed ${PROJECT_BINARY_DIR}/packaging)
file(MAKE_DIRECTORY ${squeezed})
foreach(name trueunit.1 changelog)
  add_custom_command(OUTPUT ${squeezed}/${name}.gz COMMAND gzip -9nc ${packaging}/${name} > ${squeezed}/${name}.gz
                     DEPENDS ${packaging}/${name} VERBATIM)
endforeach()
add_custom_target(trueunit_squeezed ALL DEPENDS ${squeezed}/trueunit.1.gz ${squeezed}/changelog.gz)
add_dependencies(trueunit trueunit_squeezed)
install(FILES ${squeezed}/trueunit.1.gz DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)
install(FILES ${squeezed}/changelog.gz ${packaging}/copyright DESTINATION ${CMAKE_INSTALL_DATADIR}/doc/trueunit)

set(CPACK_GENERATOR DEB)
set(CPACK_STRIP_FILES ON)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS
    OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
set(CPACK_PACKAGE_CONTACT "The Trueunit developers <trueunit@example.org>")
set(CPACK_PACKAGE_VENDOR Trueunit)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION electronics)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# Loaded while running, so that the linker does not know them: drawings of the help, the logbook's store, fonts.
set(CPACK_DEBIAN_PACKAGE_DEPENDS "libqt6svg6, libqt6sql6-sqlite, fonts-inter | fonts-dejavu-core")
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "fonts-inter, fonts-droid-fallback, libasound2-plugins")
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
"Trueunit listens to the signal loop of a tape reader or keyboard through a
sound card, shows each character on the grid of ideal unit intervals, says
in percent of a unit what is wrong and which part of the machine makes it so,
follows the adjustment while it is made, and leaves a report that proves the
repair. A demonstration plays without any machine.")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "bench instrument for truing start-stop telegraph senders")
include(CPack)
