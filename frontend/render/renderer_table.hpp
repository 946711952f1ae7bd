// The formats a document can be written in. A new format is one file here and one line in the table.
#pragma once
#include <string>
#include <vector>

#include "frontend/document/document.hpp"

namespace frontend {

enum class Layout { two_column, paragraph };  // of the proof

struct Renderer {
  const char* name;  // for --format
  std::string (*render)(const Document& document, Layout layout);
};

const std::vector<Renderer>& renderers();
const Renderer* renderer_named(const std::string& name);  // null when there is none

}  // namespace frontend
