// Writing the answer. Standard output may be a pipe whose reader has gone, or a full disk: then the program says
// so and ends with the status of a mistake, whatever the verdict was.
#pragma once
#include <string_view>

namespace frontend {

void ignore_broken_pipes();          // so that writing fails instead of ending the program
bool write_answer(std::string_view); // to standard output, at once; false with a message when it failed
void write_message(std::string_view text);  // "anglewright: …" to standard error

}  // namespace frontend
