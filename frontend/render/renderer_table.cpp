#include "frontend/render/renderer_table.hpp"

#include "frontend/render/markdown.hpp"
#include "frontend/render/text.hpp"

namespace frontend {

const std::vector<Renderer>& renderers() {
  static const std::vector<Renderer> table = {
      {"text", render_text},
      {"markdown", render_markdown},
  };
  return table;
}

const Renderer* renderer_named(const std::string& name) {
  for (const Renderer& renderer : renderers()) {
    if (name == renderer.name) return &renderer;
  }
  return nullptr;
}

}  // namespace frontend
