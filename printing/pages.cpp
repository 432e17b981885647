// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/pages.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <array>
#include <span>

#include "printing/slab.h"

namespace brimline {
namespace {

constexpr double kPointsPerMm = 72 / 25.4;
// Large print: a body of 15.6 points, or down to 14 where that saves a page (14 is the usual floor of
// large-print guidelines, from memory).
constexpr std::array<double, 4> kLarge{1.5, 1.45, 1.4, 1.35};
constexpr double kMostBlank = 0.36;  // of a page, left empty rather than part what belongs together
constexpr std::array<double, 5> kScales{1.0, 0.97, 0.94, 0.91, 0.875};
constexpr double kSmallest = 0.85;        // rather than a third page
constexpr double kSmallestForOne = 0.93;  // below it letters shrink for the second page's sake only

struct Margins {
  double left, top, right, bottom;
};

Margins margins_of(Paper paper) {
  if (paper == Paper::roll80) return {11, 10, 11, 14};
  return {42, 38, 42, 44};
}

Frame frame_of(const Edition& edition, double paper_width, double scale, bool tight) {
  const Margins m = margins_of(edition.paper);
  Frame frame;
  frame.width = paper_width - m.left - m.right;
  frame.scale = scale;
  frame.large = edition.large;
  frame.tight = tight;
  if (edition.paper == Paper::roll80) {
    frame.scale = scale * 0.9;
  } else if (!edition.large) {
    frame.side = 96;
    frame.gutter = 30;
    frame.cautions = 180;
  }
  return frame;
}

// Index one past the slabs that belong together from `first`.
size_t group_end(const std::vector<Slab>& slabs, size_t first) {
  size_t end = first;
  while (end < slabs.size() && slabs[end].with_next) ++end;
  return std::min(end + 1, slabs.size());
}

// One past what is not parted from `first`: the rest of its paragraph and, after a heading, the next one.
size_t unit_end(const std::vector<Slab>& slabs, size_t first, size_t end) {
  const auto paragraph_end = [&](size_t from) {
    size_t out = from + 1;
    while (out < end && slabs[out - 1].goes_on) ++out;
    return out;
  };
  size_t out = paragraph_end(first);
  while (out < end && slabs[out - 1].heads) out = paragraph_end(out);
  return out;
}

double height_of(const std::vector<Slab>& slabs, size_t first, size_t end, bool at_top) {
  double out = 0;
  for (size_t i = first; i < end; ++i)
    out += slabs[i].height + (at_top && i == first ? 0 : slabs[i].space_before);
  return out;
}

// Slabs on pages `room` high (0: one page without end); y from the page's top edge.
std::vector<Page> place(const std::vector<Slab>& slabs, const Margins& margins, double room, double& used) {
  std::vector<Page> pages(1);
  double y = 0;
  const auto put = [&](const Slab& slab) {
    if (y > 0) y += slab.space_before;
    add_moved(pages.back().items, slab.items, margins.left, margins.top + y);
    y += slab.height;
  };
  const auto new_page = [&] {
    pages.emplace_back();
    y = 0;
  };
  for (size_t i = 0; i < slabs.size();) {
    const size_t end = group_end(slabs, i);
    const double needed = height_of(slabs, i, end, y == 0);
    const bool fits_a_page = height_of(slabs, i, end, true) <= room;
    if (room > 0 && y > 0 && y + needed > room && fits_a_page && room - y < kMostBlank * room) new_page();
    while (i < end) {
      const size_t after = unit_end(slabs, i, end);
      const bool fits_one = height_of(slabs, i, after, true) <= room;
      if (y > 0 && fits_one && y + height_of(slabs, i, after, false) > room) new_page();
      for (; i < after; ++i) {
        if (room > 0 && y > 0 && y + slabs[i].space_before + slabs[i].height > room) new_page();
        put(slabs[i]);
      }
    }
  }
  used = y;
  return pages;
}

std::string filled(std::string text, int page, int of) {
  const auto replace = [&](const char* mark, int value) {
    if (const size_t at = text.find(mark); at != std::string::npos)
      text.replace(at, 2, std::to_string(value));
  };
  replace("%1", page);
  replace("%2", of);
  return text;
}

void add_footers(Pages& pages, const Body& body, const Margins& margins, double scale) {
  const Type type{8 * std::clamp(scale, 0.95, 1.2), false, Ink::quiet};
  const double baseline = pages.height - margins.bottom * 0.5;
  const int count = static_cast<int>(pages.pages.size());
  for (int i = 0; i < count; ++i) {
    const QString number = QString::fromStdString(filled(body.page, i + 1, count));
    auto& items = pages.pages[static_cast<size_t>(i)].items;
    const TextItem right = text_ending_at(pages.width - margins.right, baseline, number, type);
    const double room = right.x - margins.left - 12;
    const QString whole = QString::fromStdString(body.footer);
    QString left = whole;
    if (width_of(left, type) > room) left = QString::fromStdString(body.short_footer);
    items.push_back(text_at(margins.left, baseline, left, type));
    items.push_back(right);
  }
}

Pages lay_out_at(const Body& body, const Edition& edition, double scale, bool tight = false) {
  const PaperSize paper = size_of(edition.paper);
  const Margins margins = margins_of(edition.paper);
  Pages out;
  out.width = paper.width_mm * kPointsPerMm;
  out.height = paper.height_mm * kPointsPerMm;
  const bool endless = paper.height_mm <= 0;
  const double room = endless ? 0 : out.height - margins.top - margins.bottom;
  double used = 0;
  out.pages = place(body.slabs(frame_of(edition, out.width, scale, tight)), margins, room, used);
  if (endless) out.height = margins.top + used + margins.bottom + 16;
  add_footers(out, body, margins, scale);
  return out;
}

struct ItemPainter {
  QPainter& painter;

  void operator()(const TextItem& item) const {
    painter.setFont(font_of(item.type));
    painter.setPen(colour_of(item.type.ink));
    painter.drawText(QPointF(item.x, item.baseline) * kUnitsPerPoint, item.text);
  }
  void operator()(const LineItem& item) const {
    painter.setPen(QPen(colour_of(item.ink), item.thickness * kUnitsPerPoint, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(item.x1, item.y1) * kUnitsPerPoint, QPointF(item.x2, item.y2) * kUnitsPerPoint);
  }
  void operator()(const BoxItem& item) const {
    const QRectF box(item.box.topLeft() * kUnitsPerPoint, item.box.size() * kUnitsPerPoint);
    if (item.filled) {
      painter.fillRect(box, Qt::black);
      return;
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(
        QPen(QColor(Qt::black), item.thickness * kUnitsPerPoint, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.drawRect(box);
  }
  void operator()(const MarkItem& item) const {
    painter.setBrush(item.filled ? Qt::black : Qt::white);
    painter.setPen(QPen(QColor(Qt::black), 0.7 * kUnitsPerPoint));
    const double radius = item.radius * kUnitsPerPoint;
    painter.drawEllipse(QPointF(item.x, item.y) * kUnitsPerPoint, radius, radius);
  }
  void operator()(const CellsItem& item) const {
    QPainterPath path;
    for (const QRectF& cell : item.cells)
      path.addRect(QRectF(cell.topLeft() * kUnitsPerPoint, cell.size() * kUnitsPerPoint));
    path.setFillRule(Qt::WindingFill);
    painter.fillPath(path, Qt::black);
  }
};

}  // namespace

Pages lay_out(const Body& body, const Edition& edition) {
  if (edition.paper == Paper::roll80) return lay_out_at(body, edition, edition.large ? kLarge.front() : 1);
  const auto scales = edition.large ? std::span<const double>(kLarge) : std::span<const double>(kScales);
  Pages best = lay_out_at(body, edition, scales.front());
  if (best.pages.size() == 1) return best;
  // Smaller letters only for what they save: one page instead of two where little is over, two for three.
  for (const double scale : scales.subspan(1)) {
    Pages pages = lay_out_at(body, edition, scale);
    if (pages.pages.size() < best.pages.size()) best = std::move(pages);
    if (best.pages.size() <= 2 && scale < kSmallestForOne) break;
  }
  if (best.pages.size() <= 2) return best;
  for (const double scale : scales) {
    Pages pages = lay_out_at(body, edition, scale, true);
    if (pages.pages.size() < best.pages.size()) best = std::move(pages);
    if (best.pages.size() <= 2) return best;
  }
  if (edition.large) return best;
  Pages smallest = lay_out_at(body, edition, kSmallest, true);
  return smallest.pages.size() < best.pages.size() ? smallest : best;
}

Pages lay_out(const Sheet& sheet, const Edition& edition) {
  return lay_out(Body{[&](const Frame& frame) { return slabs_of(sheet, frame); }, sheet.footer, sheet.code,
                      sheet.titles.page},
                 edition);
}

void paint(const Page& page, QPainter& painter) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.scale(1.0 / kUnitsPerPoint, 1.0 / kUnitsPerPoint);
  for (const Item& item : page.items) std::visit(ItemPainter{painter}, item);
  painter.restore();
}

}  // namespace brimline
