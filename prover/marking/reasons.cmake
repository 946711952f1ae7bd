# The tables of rules/reasons, compiled into prover_marking. Included by the root CMakeLists.txt right after room(prover/marking …).
set(reason_tables words said refused converses)
set(reason_files ${reason_tables})
list(TRANSFORM reason_files REPLACE "(.+)" "${PROJECT_SOURCE_DIR}/rules/reasons/\\1.table")
set(embed_reasons ${PROJECT_SOURCE_DIR}/prover/marking/embed_reasons.cmake)
set(embedded_reasons ${PROJECT_BINARY_DIR}/generated/prover/marking/embedded_reasons.cpp)
add_custom_command(
  OUTPUT ${embedded_reasons}
  COMMAND ${CMAKE_COMMAND} -D folder=${PROJECT_SOURCE_DIR}/rules/reasons -D "tables=${reason_tables}" -D output=${embedded_reasons}
          -P ${embed_reasons}
  DEPENDS ${reason_files} ${embed_reasons}
  COMMENT "Compiling the tables of reasons into the program"
  VERBATIM)
target_sources(prover_marking PRIVATE ${embedded_reasons})
