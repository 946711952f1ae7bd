#include "frontend/drawing/svg.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace frontend {

namespace {

constexpr double line_width = 0.35, mark_width = 0.25, gap = 6, caption_height = 6, caption_size = 3.2;
constexpr const char* letters = "fill=\"#000\" stroke=\"none\" text-anchor=\"middle\" font-family=\"serif\"";

std::string escaped(const std::string& text) {
  std::string result;
  for (const char c : text) {
    if (c == '&') result += "&amp;";
    else if (c == '<') result += "&lt;";
    else if (c == '>') result += "&gt;";
    else if (c == '"') result += "&quot;";
    else result += c;
  }
  return result;
}

// Hundredths of a millimetre; the same bytes wherever it is written.
std::string mm(double value) {
  std::string text = fmt::format("{:.2f}", value);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text == "-0" ? "0" : text;
}

std::string style(Stroke::Weight weight, bool dashed) {
  std::string text = fmt::format(" stroke-width=\"{}\"", mm(weight == Stroke::Weight::line ? line_width : mark_width));
  if (dashed) text += " stroke-dasharray=\"1.6 1.1\"";
  return text;
}

void write(const Drawing& drawing, std::string& out) {
  for (const RoundStroke& round : drawing.rounds) {
    const std::string look = style(round.weight, false);
    if (round.to - round.from >= 360) {
      out += fmt::format("<circle cx=\"{}\" cy=\"{}\" r=\"{}\"{}/>\n", mm(round.centre.x), mm(round.centre.y), mm(round.radius), look);
      continue;
    }
    const std::vector<Spot> path = path_of(round);
    out += fmt::format("<path d=\"M{} {} A{} {} 0 {} 0 {} {}\"{}/>\n", mm(path.front().x), mm(path.front().y), mm(round.radius),
                       mm(round.radius), round.to - round.from > 180 ? 1 : 0, mm(path.back().x), mm(path.back().y), look);
  }
  for (const Stroke& stroke : drawing.strokes) {
    std::string path;
    for (const Spot& spot : stroke.path) path += fmt::format("{}{} {}", path.empty() ? "M" : " L", mm(spot.x), mm(spot.y));
    out += fmt::format("<path d=\"{}{}\"{}/>\n", path, stroke.closed ? " Z" : "", style(stroke.weight, stroke.dashed));
  }
  for (const Dot& dot : drawing.dots)
    out += fmt::format("<circle cx=\"{}\" cy=\"{}\" r=\"{}\" fill=\"#000\" stroke=\"none\"/>\n", mm(dot.at.x), mm(dot.at.y), mm(dot.radius));
  for (const Text& text : drawing.texts)
    // The baseline stands 0.35 of the size below the middle of capitals and digits.
    out += fmt::format("<text x=\"{}\" y=\"{}\" font-size=\"{}\"{} {}>{}</text>\n", mm(text.middle.x), mm(text.middle.y + 0.35 * text.size),
                       mm(text.size), text.italic ? " font-style=\"italic\"" : "", letters, escaped(text.text));
}

}  // namespace

std::string svg_of(const std::vector<Drawing>& drawings) {
  double width = 0, height = 0;
  bool captions = false;
  for (const Drawing& drawing : drawings) {
    width += std::max(drawing.width, text_width(drawing.caption, caption_size)) + (width > 0 ? gap : 0);
    height = std::max(height, drawing.height);
    captions |= !drawing.caption.empty();
  }
  const double full = height + (captions ? caption_height : 0);
  std::string title, description;
  for (const Drawing& drawing : drawings) {
    if (!drawing.caption.empty()) title += (title.empty() ? "" : "; ") + drawing.caption;
    if (description.find(drawing.description) == std::string::npos)  // the same marks in other figures are said once
      description += (description.empty() ? "" : " ") + drawing.description;
  }
  std::string out = fmt::format(
      "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0}mm\" height=\"{1}mm\" viewBox=\"0 0 {0} {1}\" role=\"img\" "
      "aria-labelledby=\"title description\">\n<title id=\"title\">{2}</title>\n<desc id=\"description\">{3}</desc>\n",
      mm(width), mm(full), escaped(title.empty() ? "Figure" : title), escaped(description));
  double left = 0;
  for (const Drawing& drawing : drawings) {
    const double room = std::max(drawing.width, text_width(drawing.caption, caption_size));
    const double x = left + (room - drawing.width) / 2, y = height - drawing.height;
    out += fmt::format("<g transform=\"translate({} {})\" fill=\"none\" stroke=\"#000\" stroke-linecap=\"round\" "
                       "stroke-linejoin=\"round\">\n",
                       mm(x), mm(y));
    write(drawing, out);
    out += "</g>\n";
    if (!drawing.caption.empty())
      out += fmt::format("<text x=\"{}\" y=\"{}\" font-size=\"{}\" {}>{}</text>\n", mm(left + room / 2),
                         mm(height + caption_height - 2), mm(caption_size), letters, escaped(drawing.caption));
    left += room + gap;
  }
  return out + "</svg>\n";
}

}  // namespace frontend
