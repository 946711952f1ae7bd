# Writes the rule and course files and the table of ideas as one C++ source, so that the program carries them. Run at
# build time:
#   cmake -D folder=<rules> -D output=<file.cpp> -P embed_rules.cmake
# Raw strings keep the text as it is; files are sorted by name, so the same rules give the same bytes.
file(GLOB_RECURSE names RELATIVE ${folder} ${folder}/*.rule ${folder}/*.course)
list(SORT names)
set(source "// Written by prover/rule/embed_rules.cmake from the rule files; do not edit.\n")
string(APPEND source "#include \"prover/rule/ideas.hpp\"\n\nnamespace prover {\n\n")
string(APPEND source "const std::vector<RuleFile>& builtin_rule_files() {\n")
string(APPEND source "  static const std::vector<RuleFile> files = {\n")
foreach(name IN LISTS names)
  file(READ "${folder}/${name}" text)
  string(APPEND source "      {\"${name}\", R\"rule_file(${text})rule_file\"},\n")
endforeach()
string(APPEND source "  };\n  return files;\n}\n\n")
file(READ "${folder}/ideas.table" text)
string(APPEND source "std::string_view builtin_idea_text() {\n  return R\"rule_file(${text})rule_file\";\n}\n\n}  // namespace prover\n")
file(WRITE "${output}" "${source}")
