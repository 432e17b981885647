// SPDX-License-Identifier: GPL-3.0-or-later
// Puts slabs together: paragraphs, titles beside or above them, rules.
#pragma once

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "printing/paragraph.h"
#include "printing/slab.h"

namespace brimline {

class SlabBuilder {
 public:
  explicit SlabBuilder(const Frame& frame) : frame_(frame) {}

  const Frame& frame() const { return frame_; }

  // The next slab starts `points` (before scaling) lower.
  void space(double points) { pending_ = std::max(pending_, points * frame_.scale); }
  // A rule over the whole width, kept with what follows.
  void rule(double thickness, Ink ink = Ink::black);
  // A title: in the side column at the first line that follows, or above it where there is none.
  void title(const std::string& text);
  // Lines at `indent` from the text's left edge, kept together.
  void paragraph(const std::vector<TextLine>& lines, const Type& type, double indent = 0,
                 bool with_next = false);
  // The same from the left margin on.
  void wide_paragraph(const std::vector<TextLine>& lines, const Type& type, bool with_next = false) {
    paragraph(lines, type, -frame_.text_x(), with_next);
  }
  void add(Slab slab);
  // Strips made with narrower frames, side by side from their x on, as one slab that no page's end parts.
  struct Column {
    double x = 0;
    std::vector<Slab> slabs;
  };
  void add_beside(const std::vector<Column>& columns);
  // Keeps every slab from index `first` on together with the one after it, but for the last.
  void keep_from(size_t first);

  size_t size() const { return slabs_.size(); }
  Slab& at(size_t index) { return slabs_[index]; }
  std::vector<Slab> take() { return std::move(slabs_); }

 private:
  Frame frame_;
  double pending_ = 0;
  std::string side_title_;
  std::vector<Slab> slabs_;
};

// The sheet's parts, each in a file of its own.
void add_steps(SlabBuilder& out, const Sheet& sheet);
void add_table(SlabBuilder& out, const Sheet& sheet);
void add_last_plan(SlabBuilder& out, const Sheet& sheet);
void add_charts(SlabBuilder& out, const Sheet& sheet);

}  // namespace brimline
