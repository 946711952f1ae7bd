#include "frontend/render/markdown.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "frontend/document/references.hpp"
#include "frontend/render/prose.hpp"

namespace frontend {

namespace {

std::string escaped(std::string_view text) {
  std::string result;
  for (const char c : text) {
    if (std::string_view("\\`*_{}[]<>#|~").find(c) != std::string_view::npos) result += '\\';
    result += c;
  }
  return result;
}

struct MarkdownWriter {
  Layout layout;
  std::string out;

  void row(const std::vector<std::string>& cells) {  // cells are already escaped
    out += '|';
    for (const std::string& cell : cells) out += ' ' + cell + " |";
    out += '\n';
  }
  void rule(std::size_t cells) {
    out += '|';
    for (std::size_t i = 0; i < cells; ++i) out += "---|";
    out += '\n';
  }

  void operator()(const Heading& heading) {
    out += std::string(static_cast<std::size_t>(heading.level), '#') + ' ' + escaped(heading.text) + '\n';
  }
  void operator()(const Paragraph& paragraph) { out += escaped(paragraph.text) + '\n'; }
  void operator()(const Note& note) { out += fmt::format("*{}*\n", escaped(note.text)); }
  void operator()(const Items& items) {
    out += "**" + escaped(items.lead) + ":**";
    if (items.one_below_the_other) {
      out += "\n\n";
      for (const std::string& item : items.items) out += "- " + escaped(item) + '\n';
      return;
    }
    std::string separator = " ";
    for (const std::string& item : items.items) {
      out += separator + escaped(item);
      separator = "; ";
    }
    out += '\n';
  }
  void operator()(const ProofLines& proof) {
    if (layout == Layout::paragraph) {
      out += escaped(prose(proof)) + '\n';
      return;
    }
    const References references = references_of(proof);
    row(references.any ? std::vector<std::string>{"", "Claim", "Reason"}
                       : std::vector<std::string>{"Claim", "Reason"});
    rule(references.any ? 3 : 2);
    for (std::size_t i = 0; i < proof.lines.size(); ++i) {
      const ProofLine& line = proof.lines[i];
      std::string claim;
      for (const std::string& claim_row : rows_of_claim(line)) claim += (claim.empty() ? "" : "<br>") + escaped(claim_row);
      std::vector<std::string> cells = {claim, escaped(with_references(line.reason, references.named[i]))};
      if (references.any) {
        cells.insert(cells.begin(), references.numbered[i] ? fmt::format("({})", line.number) : "");
      }
      row(cells);
    }
  }
  void operator()(const Table& table) {
    std::size_t cells = table.header.size();
    for (const auto& line : table.rows) cells = std::max(cells, line.size());
    std::vector<std::string> header = table.header;
    header.resize(cells);
    for (std::string& cell : header) cell = escaped(cell);
    row(header);
    rule(cells);
    for (std::vector<std::string> line : table.rows) {
      line.resize(cells);
      for (std::string& cell : line) cell = escaped(cell);
      row(line);
    }
  }
};

}  // namespace

std::string render_markdown(const Document& document, Layout layout) {
  MarkdownWriter writer{layout, {}};
  bool first = true;
  for (const Block& block : document.blocks) {
    if (!first) writer.out += '\n';
    std::visit(writer, block);
    first = false;
  }
  return writer.out;
}

}  // namespace frontend
