// SPDX-License-Identifier: GPL-3.0-or-later
// Decoder of protocol "lis": the receiver of a CLSI LIS1-A link (ASTM E1381) that carries LIS2-A
// records (ASTM E1394). Frame layout, numbering and checksum as an analyser's interface manual prints
// them; record fields from memory.
//
// Each sound frame is acknowledged, a broken one refused so that it is sent again. A result counts once
// for its bottle, code and time, however often its message comes.
#pragma once

#include <memory>

#include "devices/decoder.h"

namespace brimline {

class LisDecoder : public Decoder {
 public:
  explicit LisDecoder(Profile profile) : profile_(std::move(profile)) {}
  Heard opened(Millis at) override;
  Heard received(std::string_view bytes, Millis at) override;
  Heard waited(Millis at) override;
  std::optional<Millis> wake() const override;

 private:
  void take(char byte, Heard& heard);
  void start_session(Heard& heard);
  void end_session(Heard& heard);
  void take_frame_byte(char byte, Heard& heard);
  void finish_frame(Heard& heard);
  void refuse(Heard& heard, const std::string& why);
  void take_text(std::string_view text, Heard& heard);
  void take_record(const std::string& record, Heard& heard);
  void take_header(const std::string& record, Heard& heard);
  void take_result(const std::vector<std::string_view>& fields, Heard& heard);
  std::string component_of(const std::vector<std::string_view>& fields, size_t field, size_t index) const;
  std::string plain(const std::string& text) const;  // escapes undone

  Profile profile_;
  bool in_session_ = false;
  bool in_frame_ = false;
  std::string frame_;               // from STX on
  std::optional<size_t> text_end_;  // place of ETX or ETB in frame_
  int expected_ = 1;                // number of the next new frame, 0 to 7
  bool accepted_ = false;           // a frame of this session
  std::string text_;                // of a record not yet ended
  char field_ = '|', repeat_ = '\\', component_ = '^', escape_ = '&';
  std::string message_time_, sample_;
  Millis last_{0};
};

void read_lis_form(Fields& file, Profile& into);
std::unique_ptr<Decoder> make_lis_decoder(const Profile& profile);

// One frame of the link, for emulators and tests; `number` 0 to 7.
std::string lis_frame(int number, std::string_view text, bool last);

}  // namespace brimline
