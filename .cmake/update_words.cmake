# cmake -DTOP=… -DOUT=… -DLUPDATE=… [-DINTO=DIR] -P update_words.cmake: gathers every sentence of screen
# and sheet into qml/i18n/kiosk_*.ts (or into copies in INTO). Names that stand in data files (readings,
# products) are gathered through a made-up source, since lupdate reads no TOML.
cmake_minimum_required(VERSION 3.25)

set(rows "analyte\;analysis/readings/*.toml" "product\;station/shelf/catalogue/*.toml"
    "substance\;analysis/substances/*.toml")
set(code "// made by update_words; do not edit\n")
foreach(row IN LISTS rows)
  list(GET row 0 context)
  list(GET row 1 glob)
  file(GLOB files ${TOP}/${glob})
  list(SORT files)
  foreach(file IN LISTS files)
    file(STRINGS ${file} line REGEX "^name = " LIMIT_COUNT 1)
    string(REGEX REPLACE "^name = (\"[^\"]*\").*$" "\\1" name "${line}")
    string(APPEND code "QT_TRANSLATE_NOOP(\"${context}\", ${name});\n")
  endforeach()
endforeach()
file(MAKE_DIRECTORY ${OUT})
file(WRITE ${OUT}/data_words.cpp "${code}")

file(GLOB_RECURSE sources ${TOP}/analysis/*.cpp ${TOP}/station/*.cpp ${TOP}/printing/*.cpp ${TOP}/devices/*.cpp ${TOP}/qml/*.h
     ${TOP}/qml/*.cpp ${TOP}/qml/*.qml)
list(SORT sources)
list(APPEND sources ${OUT}/data_words.cpp)
string(JOIN "\n" list ${sources})
file(WRITE ${OUT}/sources.lst "${list}\n")

file(GLOB languages ${TOP}/qml/i18n/kiosk_*.ts)
if(INTO)
  file(COPY ${languages} DESTINATION ${INTO})
  file(GLOB languages ${INTO}/kiosk_*.ts)
endif()
execute_process(COMMAND ${LUPDATE} -silent -no-obsolete -locations none -source-language en -I ${TOP}
                        -tr-function-alias QT_TRANSLATE_NOOP+=phrase @${OUT}/sources.lst -ts ${languages}
                COMMAND_ERROR_IS_FATAL ANY)
