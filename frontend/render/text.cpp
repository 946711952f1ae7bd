#include "frontend/render/text.hpp"

#include <algorithm>

#include "frontend/render/prose.hpp"
#include "frontend/render/two_column.hpp"
#include "frontend/render/width.hpp"

namespace frontend {

namespace {

constexpr std::size_t column_gap = 3, narrowest = 16, narrowest_last = 24;

struct TextWriter {
  Layout layout;
  std::string out;

  void line(std::string_view text) {
    out += text;
    out += '\n';
  }
  // The first line with `first`, the others with as many spaces.
  void wrapped_line(std::string_view first, std::string_view text) {
    const std::size_t indent = display_width(first);
    bool is_first = true;
    for (const std::string& part : wrapped(text, page_width - indent)) {
      line((is_first ? std::string(first) : std::string(indent, ' ')) + part);
      is_first = false;
    }
  }

  void operator()(const Heading& heading) {
    line(heading.text);
    if (heading.level == 1) line(std::string(display_width(heading.text), '='));
  }
  void operator()(const Paragraph& paragraph) { wrapped_line("", paragraph.text); }
  void operator()(const Note& note) { wrapped_line("", note.text); }
  void operator()(const Items& items) {
    if (!items.one_below_the_other) {
      std::string text;
      for (const std::string& item : items.items) text += (text.empty() ? "" : "; ") + item;
      wrapped_line("", items.lead + ": " + text);
      return;
    }
    line(items.lead + ":");
    for (const std::string& item : items.items) wrapped_line("  ", item);
  }
  void operator()(const ProofLines& proof) {
    if (layout == Layout::paragraph) {
      wrapped_line("  ", prose(proof));
    } else {
      for (const std::string& row : two_column_lines(proof, page_width - 2)) line("  " + row);
    }
  }
  void operator()(const Table& table) {
    std::vector<std::vector<std::string>> rows = table.rows;
    if (!table.header.empty()) rows.insert(rows.begin(), table.header);
    std::vector<std::size_t> widths;
    for (const auto& row : rows) {
      widths.resize(std::max(widths.size(), row.size()));
      for (std::size_t i = 0; i < row.size(); ++i) widths[i] = std::max(widths[i], display_width(row[i]));
    }
    if (table.prose) fit(widths);
    const auto broken = [&](const std::string& cell, std::size_t width) {
      return table.prose ? wrapped(cell, width) : std::vector<std::string>{cell};
    };
    for (const auto& row : rows) {
      if (row.empty()) continue;
      std::size_t before = 2;
      for (std::size_t i = 0; i + 1 < row.size(); ++i) before += widths[i] + column_gap;
      const std::size_t room = before + narrowest_last < page_width ? page_width - before : narrowest_last;
      std::vector<std::vector<std::string>> cells;
      std::size_t height = 1;
      for (std::size_t i = 0; i < row.size(); ++i) {
        cells.push_back(i + 1 < row.size() ? broken(row[i], widths[i]) : wrapped(row[i], room));
        height = std::max(height, cells.back().size());
      }
      for (std::size_t k = 0; k < height; ++k) {
        std::string text = "  ";
        for (std::size_t i = 0; i < cells.size(); ++i) {
          const std::string part = k < cells[i].size() ? cells[i][k] : "";
          text += i + 1 < cells.size() ? padded(part, widths[i] + column_gap) : part;
        }
        line(text.substr(0, text.find_last_not_of(' ') + 1));
      }
    }
  }
  // Where the columns are too wide for the page, the widest gives way, but for the last, which takes what is left.
  static void fit(std::vector<std::size_t>& widths) {
    const auto taken = [&] {
      std::size_t sum = 2 + narrowest_last;
      for (std::size_t i = 0; i + 1 < widths.size(); ++i) sum += widths[i] + column_gap;
      return sum;
    };
    while (widths.size() > 1 && taken() > page_width) {
      const auto widest = std::max_element(widths.begin(), widths.end() - 1);
      if (*widest <= narrowest) return;
      --*widest;
    }
  }
};

}  // namespace

std::string render_text(const Document& document, Layout layout) {
  TextWriter writer{layout, {}};
  bool first = true;
  const Block* before = nullptr;
  for (const Block& block : document.blocks) {
    // Small print stands together; everything else is set off by an empty line.
    const bool together = before != nullptr && std::holds_alternative<Note>(*before) &&
                          std::holds_alternative<Note>(block);
    if (!first && !together) writer.line("");
    std::visit(writer, block);
    before = &block;
    first = false;
  }
  return writer.out;
}

}  // namespace frontend
