// Markdown with tables. A proof in two columns is a table; signs that Markdown would read are escaped.
#pragma once
#include <string>

#include "frontend/render/renderer_table.hpp"

namespace frontend {

std::string render_markdown(const Document& document, Layout layout);

}  // namespace frontend
