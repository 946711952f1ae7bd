#include "frontend/render/width.hpp"

#include <utf8proc.h>

#include <algorithm>

namespace frontend {

std::size_t display_width(std::string_view text) {
  std::size_t width = 0;
  const auto* at = reinterpret_cast<const utf8proc_uint8_t*>(text.data());
  auto left = static_cast<utf8proc_ssize_t>(text.size());
  while (left > 0) {
    utf8proc_int32_t code_point = 0;
    utf8proc_ssize_t used = utf8proc_iterate(at, left, &code_point);
    if (used <= 0) {  // a stray byte: terminals show one replacement sign
      used = 1;
      width += 1;
    } else {
      width += static_cast<std::size_t>(std::max(0, utf8proc_charwidth(code_point)));
    }
    at += used;
    left -= used;
  }
  return width;
}

std::string padded(std::string_view text, std::size_t width) {
  std::string result(text);
  const std::size_t now = display_width(text);
  if (now < width) result.append(width - now, ' ');
  return result;
}

std::vector<std::string> wrapped(std::string_view text, std::size_t width) {
  std::vector<std::string> lines(1);
  std::size_t line_width = 0;
  while (!text.empty()) {
    const std::size_t space = text.find(' ');
    const std::string_view word = text.substr(0, space);
    text.remove_prefix(space == std::string_view::npos ? text.size() : space + 1);
    if (word.empty()) continue;
    const std::size_t word_width = display_width(word);
    if (line_width > 0 && line_width + 1 + word_width > width) {
      lines.emplace_back();
      line_width = 0;
    }
    if (line_width > 0) {
      lines.back() += ' ';
      ++line_width;
    }
    lines.back() += word;
    line_width += word_width;
  }
  return lines;
}

std::vector<std::string> wrapped_at_commas(std::string_view text, std::size_t width) {
  std::vector<std::string> lines(1);
  while (!text.empty()) {
    const std::size_t comma = text.find(", ");
    const std::string_view piece = text.substr(0, comma == std::string_view::npos ? comma : comma + 1);
    text.remove_prefix(comma == std::string_view::npos ? text.size() : comma + 2);
    const std::size_t now = display_width(lines.back());
    if (now == 0 || now + 1 + display_width(piece) <= width) {
      lines.back() += (now == 0 ? "" : " ") + std::string(piece);
    } else {
      lines.emplace_back(piece);
    }
    if (display_width(lines.back()) > width) {  // a piece that is too long by itself
      const std::vector<std::string> broken = wrapped(lines.back(), width);
      lines.pop_back();
      lines.insert(lines.end(), broken.begin(), broken.end());
    }
  }
  return lines;
}

}  // namespace frontend
