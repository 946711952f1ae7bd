// A graph in the DOT language laid out by Graphviz ("dot": layers from top to bottom) and written as SVG.
#pragma once
#include <string>

namespace frontend {

std::string svg_of_dot(const std::string& dot);  // empty when Graphviz cannot read or lay out the graph

}  // namespace frontend
