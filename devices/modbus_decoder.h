// SPDX-License-Identifier: GPL-3.0-or-later
// Decoder of protocol "modbus_rtu": polls an instrument's holding registers (function 3) and tells
// a reading whenever its counter of readings has moved. Frames as MODBUS Application Protocol V1.1b3 and
// MODBUS over Serial Line V1.02 have them; from memory.
#pragma once

#include <cstdint>
#include <memory>

#include "devices/decoder.h"

namespace brimline {

class ModbusDecoder : public Decoder {
 public:
  explicit ModbusDecoder(Profile profile);
  // The counter known before holds: what was measured meanwhile is told when the line is back.
  Heard opened(Millis at) override;
  Heard received(std::string_view bytes, Millis at) override;
  Heard waited(Millis at) override;
  std::optional<Millis> wake() const override { return wake_; }

 private:
  std::string request() const;
  void take_answer(Millis at, Heard& heard);
  void take_registers(Heard& heard);
  void take_reading(Heard& heard);
  void end_turn(Millis at);
  std::uint16_t word(int register_at) const;
  std::optional<std::string> sample() const;  // "" where none is sent; nothing: not printable

  Profile profile_;
  int first_ = 0, count_ = 0;  // the block of registers that is read at once
  std::string buffer_;
  bool awaiting_ = false;
  std::optional<Millis> wake_;
  Millis asked_{0};
  std::optional<std::uint16_t> counter_;  // nothing: the first one seen is the baseline
};

void read_modbus_form(Fields& file, Profile& into);
std::unique_ptr<Decoder> make_modbus_decoder(const Profile& profile);

// `frame` with its check: CRC-16, low byte first.
std::string modbus_frame(std::string frame);

}  // namespace brimline
