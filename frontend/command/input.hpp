// Reading what the user names: a file or standard input ("-"). Everything that can be wrong with it becomes one
// sentence for people; nothing throws.
#pragma once
#include <cstddef>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

namespace frontend {

inline constexpr std::size_t largest_text = 1'000'000;  // bytes; a problem has a few hundred

struct Input {
  std::optional<std::string> text;
  std::string mistake;  // when there is no text: what is wrong, and a way out
};

Input read_text(const std::string& path, std::stop_token stop);

// What is wrong with a text before anybody tries to read it as sentences; empty when nothing.
std::string not_a_text(const std::string& text);

// All files below a folder whose names end in `suffix`, sorted by path, with paths relative to the folder.
struct FolderListing {
  std::vector<std::string> names;
  std::string mistake;
};
FolderListing files_below(const std::string& folder, const std::string& suffix);

// Lines of a stream, one at a time and of bounded length, so that a stream without end can be answered as it
// comes. Waiting for input ends when a stop is asked for.
class LineReader {
 public:
  LineReader(int descriptor, std::size_t longest, std::stop_token stop);

  struct Line {
    std::string text;       // without the line end
    std::size_t number = 0; // from 1
    bool too_long = false;  // then `text` holds the beginning
  };
  std::optional<Line> next();
  const std::string& mistake() const { return mistake_; }  // reading failed; not set at the plain end

 private:
  bool fill();  // false at the end

  int descriptor_;
  std::size_t longest_;
  std::stop_token stop_;
  std::string buffer_;
  std::size_t at_ = 0;
  std::size_t number_ = 0;
  std::string mistake_;
};

// A descriptor for the path, standard input for "-"; -1 with the reason in `mistake`.
int open_for_reading(const std::string& path, std::string& mistake);

}  // namespace frontend
