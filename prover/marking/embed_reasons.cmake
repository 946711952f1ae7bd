# Writes the tables of rules/reasons as one C++ source, so that the program carries them. Run at build time:
#   cmake -D folder=<rules/reasons> -D tables=<names> -D output=<file.cpp> -P embed_reasons.cmake
set(source "// Written by prover/marking/embed_reasons.cmake from rules/reasons; do not edit.\n")
string(APPEND source "#include \"prover/marking/reason_tables.hpp\"\n\nnamespace prover {\n\n")
string(APPEND source "const ReasonTables& builtin_reason_tables() {\n  static const ReasonTables tables = {\n")
foreach(name IN LISTS tables)
  file(READ "${folder}/${name}.table" text)
  string(APPEND source "      .${name} = R\"table_file(${text})table_file\",\n")
endforeach()
string(APPEND source "  };\n  return tables;\n}\n\n}  // namespace prover\n")
file(WRITE "${output}" "${source}")
