// SPDX-License-Identifier: GPL-3.0-or-later
// Decoder of protocol "ascii_lines": one reading a line, delimited fields.
//
// A line counts only whole: from its start (the start character; where there is none, the end of the
// line before, or a pause) to its end, with every field in its place, its checksum right where the
// profile has one, the unit of its method, and exactly the method's decimals. All else is garbled. An
// instrument that is asked may be asked again: then a line counts when three answers running are the same.
#pragma once

#include <memory>

#include "devices/decoder.h"
#include "devices/line_form.h"

namespace brimline {

class LineDecoder : public Decoder {
 public:
  explicit LineDecoder(Profile profile) : profile_(std::move(profile)) {}
  Heard opened(Millis at) override;
  Heard received(std::string_view bytes, Millis at) override;
  Heard waited(Millis at) override;
  std::optional<Millis> wake() const override;

 private:
  void take(char byte, Heard& heard);
  void drop_if_late(Millis at, Heard& heard);
  void finish_line(Heard& heard);
  struct Parts;
  static Parts parts_of(const LineForm& form, const std::vector<std::string_view>& texts);
  static void split_mark(const LineForm& form, Parts& parts);
  void parse(std::string_view body, Heard& heard);
  void take_parts(const Parts& parts, Heard& heard) const;
  // Whether a line that lacks its beginning could be told from a whole one.
  bool can_tell() const { return !profile_.line.start.empty() || !profile_.line.checksum.empty(); }
  bool fits_checksum(std::string_view body) const;
  bool confirmed(std::string_view body);

  Profile profile_;
  std::string buffer_;      // of the line begun, start character included
  bool noise_ = false;      // bytes outside a line were told of
  bool skip_line_ = false;  // the rest up to the line's end is not to be trusted
  bool joined_ = true;      // no byte since opening: it is not known whether the next starts a line
  Millis last_{0};          // last byte, or the opening
  std::optional<Millis> ask_at_;
  // Where lines are confirmed: the one last heard, how many times running, and the one last counted.
  std::string before_, counted_;
  int times_ = 0;
};

std::unique_ptr<Decoder> make_line_decoder(const Profile& profile);

}  // namespace brimline
