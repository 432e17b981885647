// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/slab_builder.h"

#include <algorithm>

namespace brimline {

namespace {
constexpr double kTitleSize = 9.6;
}

void SlabBuilder::rule(double thickness, Ink ink) {
  Slab slab;
  slab.height = thickness;
  slab.with_next = slab.heads = true;
  slab.items.push_back(LineItem{0, thickness / 2, frame_.width, thickness / 2, thickness, ink});
  add(std::move(slab));
}

void SlabBuilder::title(const std::string& text) {
  if (!frame_.stacked()) {
    side_title_ = text;
    return;
  }
  const Type type = frame_.type(kTitleSize + 0.6, true, Ink::accent);
  paragraph(break_lines(text, frame_.width, type), type, 0, true);
}

void SlabBuilder::paragraph(const std::vector<TextLine>& lines, const Type& type, double indent,
                            bool with_next) {
  for (size_t i = 0; i < lines.size(); ++i) {
    Slab slab;
    slab.height = leading_of(type);
    slab.goes_on = i + 1 < lines.size();
    slab.with_next = slab.goes_on || with_next;
    slab.heads = !slab.goes_on && with_next;
    add_moved(slab.items, lines[i].items, frame_.text_x() + indent, ascent_of(type));
    add(std::move(slab));
  }
}

void SlabBuilder::add(Slab slab) {
  slab.space_before += std::exchange(pending_, 0);
  const bool has_text = std::any_of(slab.items.begin(), slab.items.end(),
                                    [](const Item& item) { return std::holds_alternative<TextItem>(item); });
  if (has_text && !side_title_.empty()) {
    const Type type = frame_.type(kTitleSize, true, Ink::accent);
    double baseline = ascent_of(type);
    for (const Item& item : slab.items)
      if (const auto* text = std::get_if<TextItem>(&item)) {
        baseline = text->baseline;
        break;
      }
    const auto lines = break_lines(std::exchange(side_title_, {}), frame_.side, type);
    std::vector<Item> items;
    for (size_t i = 0; i < lines.size(); ++i)
      add_moved(items, lines[i].items, 0, baseline + static_cast<double>(i) * leading_of(type));
    slab.items.insert(slab.items.begin(), items.begin(), items.end());
  }
  slabs_.push_back(std::move(slab));
}

void SlabBuilder::add_beside(const std::vector<Column>& columns) {
  Slab whole;
  for (const Column& column : columns) {
    double y = 0;
    for (const Slab& slab : column.slabs) {
      if (y > 0) y += slab.space_before;
      add_moved(whole.items, slab.items, column.x, y);
      y += slab.height;
    }
    whole.height = std::max(whole.height, y);
  }
  add(std::move(whole));
}

void SlabBuilder::keep_from(size_t first) {
  for (size_t i = first; i + 1 < slabs_.size(); ++i) slabs_[i].with_next = true;
}

}  // namespace brimline
