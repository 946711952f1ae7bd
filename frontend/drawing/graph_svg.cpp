#include "frontend/drawing/graph_svg.hpp"

#include <graphviz/gvc.h>

#include <memory>

namespace frontend {

std::string svg_of_dot(const std::string& dot) {
  const std::unique_ptr<GVC_t, int (*)(GVC_t*)> context(gvContext(), gvFreeContext);
  const std::unique_ptr<Agraph_t, int (*)(Agraph_t*)> graph(agmemread(dot.c_str()), agclose);
  if (!context || !graph || gvLayout(context.get(), graph.get(), "dot") != 0) return {};
  char* data = nullptr;
  unsigned int length = 0;
  std::string svg;
  if (gvRenderData(context.get(), graph.get(), "svg", &data, &length) == 0 && data != nullptr) svg.assign(data, length);
  if (data != nullptr) gvFreeRenderData(data);
  gvFreeLayout(context.get(), graph.get());
  return svg;
}

}  // namespace frontend
