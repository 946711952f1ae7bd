// Writing the answer. Standard output may be a pipe whose reader has gone, or a full disk: then the program says
// so and ends with the status of a mistake, whatever the verdict was.
#pragma once
#include <filesystem>
#include <string_view>

namespace frontend {

void ignore_broken_pipes();          // so that writing fails instead of ending the program
bool write_answer(std::string_view); // to standard output, at once; false with a message when it failed
// First beside its place, then moved there: a reader sees the old file or the new one, never half of it. False with a
// message when it failed.
bool write_file(const std::filesystem::path& path, std::string_view text);
void write_message(std::string_view text);  // "anglewright: …" to standard error

}  // namespace frontend
