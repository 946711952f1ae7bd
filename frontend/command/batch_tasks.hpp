// Where a batch takes its problems from, one at a time: the lines of a stream, or the problem files of a folder.
#pragma once
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "frontend/command/answer_json.hpp"

namespace frontend {

// One problem, or why there is none: then `mistake` says what is wrong with the line or file, `way_out` how it should be.
struct BatchTask {
  Json id;  // null when the line had none
  std::string text;
  std::string work;  // a pupil's lines, where the line has them
  std::string mistake, way_out;
};

class BatchTasks {
 public:
  virtual ~BatchTasks() = default;
  virtual std::optional<BatchTask> next() = 0;                 // nothing at the end
  virtual const std::string& mistake() const = 0;              // reading failed; empty at the plain end
};

// The lines of a file, "-" for standard input, or, where `path` is a folder, the files below it whose names end in ".aw",
// each with its name as id, in the order in which people count ("7" before "10"). Null with `mistake` when it cannot be read.
std::unique_ptr<BatchTasks> batch_tasks(const std::string& path, std::stop_token stop, std::string& mistake);
bool is_folder(const std::string& path);
void sort_as_people_count(std::vector<std::string>& names);  // "7" before "10"

}  // namespace frontend
