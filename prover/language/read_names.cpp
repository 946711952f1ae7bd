// Points, lines, angles and circles: how they are called.
#include <utf8proc.h>

#include <algorithm>
#include <cstdlib>

#include "prover/language/reader.hpp"

namespace prover {

std::string canonical_name(std::string_view written) {
  const bool plain = std::all_of(written.begin(), written.end(),
                                 [](char c) { return static_cast<unsigned char>(c) < 0x80U; });
  if (plain) return std::string(written);
  const std::string source(written);
  utf8proc_uint8_t* normal = nullptr;
  const auto length = utf8proc_map(
      reinterpret_cast<const utf8proc_uint8_t*>(source.data()), static_cast<utf8proc_ssize_t>(source.size()),
      &normal, static_cast<utf8proc_option_t>(UTF8PROC_DECOMPOSE | UTF8PROC_COMPAT | UTF8PROC_STABLE));
  if (length < 0) return source;
  std::string name(reinterpret_cast<const char*>(normal), static_cast<std::size_t>(length));
  std::free(normal);
  for (const auto& [from, to] : {std::pair<std::string, std::string>{"\u0302", ""}, {"\u2032", "'"}}) {
    for (std::size_t at = name.find(from); at != std::string::npos; at = name.find(from))
      name.replace(at, from.size(), to);
  }
  return name;
}

std::string Reader::words(const Node& node) const {
  std::string word = source(node.span);
  for (char& c : word) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return word;
}

Placed Reader::point(const Node& node) {
  return {draft_.point(canonical_name(source(node.span))), node.span};
}

std::vector<Placed> Reader::letters(const Node& node) {
  std::vector<Placed> row;
  for (const Node& child : node.children) {
    if (child.part == Part::point) row.push_back(point(child));
    if (child.part == Part::letters || child.part == Part::subject) {
      for (const Node& letter : child.children) row.push_back(point(letter));
    }
  }
  return row;
}

std::vector<Placed> Reader::points(const Node& node) {
  if (node.part == Part::point) return {point(node)};
  if (node.part == Part::line || node.part == Part::lettered_line) {
    const Line read = line(node);
    return {read.a, read.b};
  }
  if (node.part == Part::angle || node.part == Part::exterior || node.part == Part::angle_between)
    return arms_of(angle(node), node.span);
  std::vector<Placed> row;
  for (const Node& child : node.children) {
    for (const Placed& one : points(child)) row.push_back(one);
  }
  return row;
}

Line Reader::line(const Node& node) {
  if (node.part == Part::lettered_line) {
    const Node* letter = node.child(Part::letter);
    const std::size_t which = draft_.lettered_line(canonical_name(source(letter->span)), node.span);
    return {{stand_in::lettered(which, 0), node.span}, {stand_in::lettered(which, 1), node.span}};
  }
  const std::vector<Placed> ends = letters(node);
  if (ends[0].id == ends[1].id) {
    draft_.error(node.span,
                 "a line or segment has two different ends; \"" + draft_.letters(ends) + "\" has one",
                 "name two points, for example \"" + draft_.names.of(ends[0].id) +
                     (draft_.names.of(ends[0].id) == "B" ? "C\"" : "B\""));
  } else {
    draft_.name_segment(ends[0].id, ends[1].id);
  }
  return {ends[0], ends[1]};
}

const Node* Reader::line_node(const Node& node, std::size_t which) const {
  for (const Node& child : node.children) {
    if (child.part != Part::line && child.part != Part::lettered_line) continue;
    if (which == 0) return &child;
    --which;
  }
  return nullptr;
}

std::vector<Line> Reader::lines(const Node& node) {
  std::vector<Line> row;
  for (const Node& child : node.children) {
    if (child.part == Part::line || child.part == Part::lettered_line) row.push_back(line(child));
  }
  return row;
}

// The interior angle of a named polygon at one of its corners.
Angle Reader::corner_of(const std::vector<Placed>& polygon, Placed corner, Span span) {
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    if (polygon[i].id != corner.id) continue;
    const std::size_t n = polygon.size();
    return {polygon[(i + n - 1) % n].id, corner.id, polygon[(i + 1) % n].id};
  }
  draft_.error(span, draft_.names.of(corner.id) + " is not a corner of " + draft_.letters(polygon),
               "name the angle by three letters");
  return {{}, corner.id, {}};
}

ReadAngle Reader::angle(const Node& node) {
  ReadAngle read;
  if (node.part == Part::angle_between) {
    const std::vector<Line> arms = lines(node);
    for (const auto& [a, b] : {std::pair{arms[0].a, arms[0].b}, {arms[0].b, arms[0].a}}) {
      for (const auto& [c, d] : {std::pair{arms[1].a, arms[1].b}, {arms[1].b, arms[1].a}}) {
        if (a.id != c.id) continue;
        read.letters = {b, a, d};
        read.angle = {b.id, a.id, d.id};
        return read;
      }
    }
    draft_.error(node.span,
                 "these lines have no letter in common, so the angle between them has no corner here",
                 "name the angle by three letters, with the corner in the middle");
    return read;
  }
  std::vector<std::vector<Placed>> rows;
  for (const Node& child : node.children) {
    if (child.part == Part::letters) {
      const std::string written = canonical_name(source(child.span));
      if (const Angle* known = draft_.find_called(written)) {  // K₁, K₂
        read.angle = *known;
        read.letters = {{known->arm1, child.span}, {known->vertex, child.span}, {known->arm2, child.span}};
        return read;
      }
      rows.push_back(letters(child));
    }
  }
  const bool exterior = node.part == Part::exterior;
  // "the exterior angle of triangle KLM at M" names the triangle first.
  if (exterior && rows.size() == 2 && rows[0].size() > 1) std::swap(rows[0], rows[1]);
  const std::vector<Placed>& row = rows.front();
  const Span span = row.empty() ? node.span : Span{row.front().span.begin, row.back().span.end};
  const bool reflex = node.child(Part::reflex) != nullptr;
  if (row.size() == 3) {
    if (row[0].id == row[1].id || row[1].id == row[2].id || row[0].id == row[2].id) {
      draft_.error(span, "angle " + draft_.letters(row) + " repeats a letter",
                   "an angle has three different letters, with the corner in the middle");
      return read;
    }
    read.letters = row;
    read.angle = {row[0].id, row[1].id, row[2].id, reflex};
    draft_.name_segment(row[1].id, row[0].id);
    draft_.name_segment(row[1].id, row[2].id);
    return read;
  }
  if (row.size() != 1) {
    const std::string written = source(span);
    draft_.error(span,
                 "an angle has three letters, or its corner alone; \"" + written + "\" has " +
                     std::to_string(row.size()),
                 "write three letters with the corner in the middle");
    return read;
  }
  read.angle = {{}, row[0].id, {}, reflex, exterior};
  if (rows.size() == 2) {
    draft_.name_polygon(rows[1]);
    const Angle inside = corner_of(rows[1], row[0], span);
    read.angle.arm1 = inside.arm1;
    read.angle.arm2 = inside.arm2;
  }
  read.letters = {{read.angle.arm1, span}, row[0], {read.angle.arm2, span}};
  return read;
}

// The letters of an angle whose arms are meant. An exterior angle named by its corner has an arm without a letter.
std::vector<Placed> Reader::arms_of(const ReadAngle& angle, Span span) {
  if (!angle.angle.exterior) return angle.letters;
  const std::string corner = draft_.names.of(angle.angle.vertex);
  draft_.error(span, "the arms of the exterior angle at " + corner + " have no letters yet",
               "produce a side beyond " + corner + " to a new point and name the angle with three letters");
  return {};
}

ReadCircle Reader::circle(const Node& node) {
  ReadCircle read;
  for (const Node& child : node.children) {
    if (child.part == Part::centre) read.centre = point(child.children.front());
    if (child.part == Part::through) read.points = letters(child);
    if (child.part == Part::letters) {
      const std::vector<Placed> row = letters(child);
      if (row.size() == 1) {
        read.centre = row.front();
      } else {
        read.points = row;
      }
    }
  }
  if (!read.centre.id.valid() && read.points.empty()) read.centre = {stand_in::the_circle, node.span};
  if (!read.points.empty() && read.points.size() < 3 && !read.centre.id.valid()) {
    draft_.error(node.span, "a circle is named by its centre or by three points on it",
                 "write \"circle O\" or \"circle KLM\"");
  }
  if (read.centre.id != stand_in::the_circle) draft_.name_circle(read.centre.id, read.points);
  return read;
}

}  // namespace prover
