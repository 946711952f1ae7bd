# The rule files and course files, compiled into prover_rule. Included by the root CMakeLists.txt right after room(prover/rule …).
file(GLOB_RECURSE rule_files CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/rules/*.rule
     ${PROJECT_SOURCE_DIR}/rules/*.course ${PROJECT_SOURCE_DIR}/rules/mistakes/*.mistake ${PROJECT_SOURCE_DIR}/rules/ideas.table
     ${PROJECT_SOURCE_DIR}/rules/schemes/*.scheme)
set(embed_script ${PROJECT_SOURCE_DIR}/prover/rule/embed_rules.cmake)
set(embedded_rules ${PROJECT_BINARY_DIR}/generated/prover/rule/embedded_rules.cpp)
add_custom_command(
  OUTPUT ${embedded_rules}
  COMMAND ${CMAKE_COMMAND} -D folder=${PROJECT_SOURCE_DIR}/rules -D output=${embedded_rules} -P ${embed_script}
  DEPENDS ${rule_files} ${embed_script}
  COMMENT "Compiling the rule files into the program"
  VERBATIM)
target_sources(prover_rule PRIVATE ${embedded_rules})
