// Plain text for a terminal or a printed page, lines of at most `page_width` columns.
#pragma once
#include <string>

#include "frontend/render/renderer_table.hpp"

namespace frontend {

std::string render_text(const Document& document, Layout layout);

}  // namespace frontend
