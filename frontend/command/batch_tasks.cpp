#include "frontend/command/batch_tasks.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <vector>

#include "frontend/command/input.hpp"

namespace frontend {

namespace {

constexpr const char* shape = "{\"id\": \"17\", \"problem\": \"triangle: KLM\\n…\\nfind: angle KLM\"}";

bool can_be_id(const Json& id) { return id.is_string() || id.is_number_integer(); }

BatchTask task_of(const LineReader::Line& line) {
  BatchTask task;
  const std::string where = fmt::format("line {} of the input ", line.number);
  const Json object = Json::parse(line.text, nullptr, false);
  if (object.is_object() && object.contains("id") && can_be_id(object["id"])) task.id = object["id"];
  if (line.too_long) {
    task.mistake = where + "is longer than a megabyte";
    task.way_out = "send large problems on their own";
  } else if (!object.is_object()) {
    task.mistake = where + "is not a JSON object";
    task.way_out = shape;
  } else if (task.id.is_null()) {
    task.mistake = where + "has no \"id\" that is a text or a whole number";
    task.way_out = shape;
  } else if (!object.contains("problem") || !object["problem"].is_string()) {
    task.mistake = where + "has no \"problem\" that is a text";
    task.way_out = shape;
  } else if (object.contains("work") && !object["work"].is_string()) {
    task.mistake = where + "has a \"work\" that is no text";
    task.way_out = "{\"id\": \"17\", \"problem\": \"…\", \"work\": \"∠KLM = 70° (alternate angles, KL ∥ MN)\\n…\"}";
  } else {
    if (object.contains("work")) task.work = object["work"].get<std::string>();
    task.text = object["problem"].get<std::string>();
    const std::string wrong = not_a_text(task.text);
    if (!wrong.empty()) task.mistake = "the problem " + wrong;
  }
  return task;
}

class Lines : public BatchTasks {
 public:
  Lines(int descriptor, std::stop_token stop) : descriptor_(descriptor), reader_(descriptor, largest_text, std::move(stop)) {}
  ~Lines() override {
    if (descriptor_ != STDIN_FILENO) close(descriptor_);
  }
  Lines(const Lines&) = delete;
  Lines& operator=(const Lines&) = delete;
  std::optional<BatchTask> next() override {
    while (auto line = reader_.next())
      if (line->too_long || line->text.find_first_not_of(" \t") != std::string::npos) return task_of(*line);
    return std::nullopt;
  }
  const std::string& mistake() const override { return reader_.mistake(); }

 private:
  int descriptor_;
  LineReader reader_;
};

bool digit(char c) { return std::isdigit(static_cast<unsigned char>(c)) != 0; }

// Runs of digits are compared as numbers.
bool counts_before(const std::string& a, const std::string& b) {
  std::size_t i = 0, j = 0;
  while (i < a.size() && j < b.size()) {
    if (!digit(a[i]) || !digit(b[j])) {
      if (a[i] != b[j]) return a[i] < b[j];
      ++i, ++j;
      continue;
    }
    const auto run = [](const std::string& text, std::size_t& at) {
      while (at + 1 < text.size() && text[at] == '0' && digit(text[at + 1])) ++at;
      const std::size_t begin = at;
      while (at < text.size() && digit(text[at])) ++at;
      return text.substr(begin, at - begin);
    };
    const std::string m = run(a, i), n = run(b, j);
    if (m.size() != n.size()) return m.size() < n.size();
    if (m != n) return m < n;
  }
  return a.size() - i < b.size() - j;
}

class Folder : public BatchTasks {
 public:
  Folder(std::string folder, std::vector<std::string> names, std::stop_token stop)
      : folder_(std::move(folder)), names_(std::move(names)), stop_(std::move(stop)) {
    sort_as_people_count(names_);
  }
  std::optional<BatchTask> next() override {
    if (at_ == names_.size() || stop_.stop_requested()) return std::nullopt;
    const std::string& name = names_[at_++];
    BatchTask task;
    task.id = std::filesystem::path(name).replace_extension().string();
    const Input input = read_text((std::filesystem::path(folder_) / name).string(), stop_);
    if (input.text)
      task.text = *input.text;
    else
      task.mistake = input.mistake;
    return task;
  }
  const std::string& mistake() const override { return none_; }

 private:
  std::string folder_;
  std::vector<std::string> names_;
  std::stop_token stop_;
  std::size_t at_ = 0;
  std::string none_;
};

}  // namespace

void sort_as_people_count(std::vector<std::string>& names) { std::stable_sort(names.begin(), names.end(), counts_before); }

bool is_folder(const std::string& path) {
  std::error_code ignored;
  return path != "-" && std::filesystem::is_directory(path, ignored);
}

std::unique_ptr<BatchTasks> batch_tasks(const std::string& path, std::stop_token stop, std::string& mistake) {
  if (is_folder(path)) {
    FolderListing listing = files_below(path, ".aw");
    mistake = listing.mistake;
    if (mistake.empty() && listing.names.empty())
      mistake = fmt::format("there is no problem in {}: a problem is a file whose name ends in .aw", path);
    if (!mistake.empty()) return nullptr;
    return std::make_unique<Folder>(path, std::move(listing.names), std::move(stop));
  }
  const int descriptor = open_for_reading(path, mistake);
  if (descriptor < 0) return nullptr;
  return std::make_unique<Lines>(descriptor, std::move(stop));
}

}  // namespace frontend
