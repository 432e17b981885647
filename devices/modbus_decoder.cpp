// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/modbus_decoder.h"

#include <algorithm>
#include <bit>

#include "devices/values.h"

namespace brimline {
namespace {

constexpr int kReadHolding = 3;
constexpr int kExceptionBit = 0x80;
constexpr int kDeviceBusy = 6;
constexpr int kMostRegisters = 125;
constexpr size_t kExceptionBytes = 5;

int byte_at(std::string_view bytes, size_t at) {
  return static_cast<unsigned char>(bytes[at]);
}

std::string word_bytes(int word) {
  return {static_cast<char>((word >> 8) & 0xff), static_cast<char>(word & 0xff)};
}

}  // namespace

std::string modbus_frame(std::string frame) {
  const std::uint16_t crc = crc16_of(frame);
  frame += static_cast<char>(crc & 0xff);
  frame += static_cast<char>(crc >> 8);
  return frame;
}

ModbusDecoder::ModbusDecoder(Profile profile) : profile_(std::move(profile)) {
  const ModbusForm& form = profile_.modbus;
  const int sample_at = form.sample_at.value_or(form.counter_at);
  first_ = std::min({form.counter_at, form.method_at, form.value_at, form.mark_at, sample_at});
  const int end = std::max({form.counter_at + 1, form.method_at + 1, form.value_at + 2, form.mark_at + 1,
                            sample_at + (form.sample_at ? form.sample_words : 0)});
  count_ = end - first_;
}

Heard ModbusDecoder::opened(Millis at) {
  buffer_.clear();
  awaiting_ = false;
  wake_ = at;
  return {};
}

std::string ModbusDecoder::request() const {
  const std::string head{static_cast<char>(profile_.modbus.station), static_cast<char>(kReadHolding)};
  return modbus_frame(head + word_bytes(first_) + word_bytes(count_));
}

Heard ModbusDecoder::received(std::string_view bytes, Millis at) {
  Heard heard;
  if (!awaiting_) return heard;  // an answer that came too late: what it says is asked for again
  buffer_ += bytes.substr(0, 256);
  take_answer(at, heard);
  return heard;
}

Heard ModbusDecoder::waited(Millis at) {
  Heard heard;
  if (!wake_ || at < *wake_) return heard;
  if (awaiting_) {  // no answer, or half of one
    if (!buffer_.empty()) heard.trouble(TroubleKind::garbled, "An answer of the instrument broke off.");
    end_turn(at);
    return heard;
  }
  heard.answer = request();
  buffer_.clear();
  awaiting_ = true;
  asked_ = at;
  wake_ = at + profile_.modbus.answer_timeout;
  return heard;
}

void ModbusDecoder::end_turn(Millis at) {
  awaiting_ = false;
  buffer_.clear();
  wake_ = std::max(at, asked_ + profile_.modbus.poll_every);
}

void ModbusDecoder::take_answer(Millis at, Heard& heard) {
  if (buffer_.size() < kExceptionBytes) return;
  const bool exception = byte_at(buffer_, 1) == (kReadHolding | kExceptionBit);
  const size_t size = exception ? kExceptionBytes : 5 + 2 * static_cast<size_t>(count_);
  if (buffer_.size() < size) return;
  const bool sound = buffer_.size() == size && modbus_frame(buffer_.substr(0, size - 2)) == buffer_ &&
                     byte_at(buffer_, 0) == profile_.modbus.station;
  if (!sound) {
    heard.trouble(TroubleKind::garbled, "An answer of the instrument could not be read whole.");
  } else if (exception) {
    const int code = byte_at(buffer_, 2);
    heard.alive = true;
    heard.trouble(code == kDeviceBusy ? TroubleKind::busy : TroubleKind::garbled,
                  "The instrument refused to answer, exception " + std::to_string(code) + ".");
  } else if (byte_at(buffer_, 1) != kReadHolding || byte_at(buffer_, 2) != 2 * count_) {
    heard.trouble(TroubleKind::garbled, "The instrument answered something else than was asked.");
  } else {
    take_registers(heard);
  }
  end_turn(at);
}

std::uint16_t ModbusDecoder::word(int register_at) const {
  const size_t at = 3 + 2 * static_cast<size_t>(register_at - first_);
  return static_cast<std::uint16_t>(byte_at(buffer_, at) << 8 | byte_at(buffer_, at + 1));
}

void ModbusDecoder::take_registers(Heard& heard) {
  heard.alive = true;
  const std::uint16_t counter = word(profile_.modbus.counter_at);
  const auto before = std::exchange(counter_, counter);
  if (!before || *before == counter) return;
  const int moved = static_cast<std::uint16_t>(counter - *before);
  if (moved > 1)
    heard.trouble(TroubleKind::garbled, "The instrument's counter went from " + std::to_string(*before) +
                                            " to " + std::to_string(counter) +
                                            ": readings between were not seen.");
  take_reading(heard);
}

std::optional<std::string> ModbusDecoder::sample() const {
  std::string out;
  if (!profile_.modbus.sample_at) return out;
  for (int i = 0; i < profile_.modbus.sample_words; ++i)
    out += word_bytes(word(*profile_.modbus.sample_at + i));
  out.erase(out.find_last_not_of(std::string_view(" \0", 2)) + 1);
  if (!is_printable(out)) return std::nullopt;
  return out;
}

void ModbusDecoder::take_reading(Heard& heard) {
  const ModbusForm& form = profile_.modbus;
  const std::string code = std::to_string(word(form.method_at));
  const MethodRow* row = profile_.method(code);
  if (!row)
    return heard.trouble(TroubleKind::unknown_method,
                         "The instrument sent method \"" + code + "\", which its profile does not have.");
  const std::uint16_t mark = word(form.mark_at);
  const auto bottle = sample();
  if (mark > 2 || !bottle)
    return heard.trouble(TroubleKind::garbled, "The instrument's mark or sample is not known.");
  std::optional<Clip> clipped;
  if (mark > 0) clipped = mark == 1 ? Clip::above : Clip::below;
  const auto bits = static_cast<std::uint32_t>(word(form.value_at)) << 16 | word(form.value_at + 1);
  const double value = std::bit_cast<float>(bits);
  tell_value(heard, *row, value, clipped, bottle->empty() ? std::nullopt : bottle, std::to_string(*counter_),
             "");
}

namespace {

int register_of(Fields& table, std::string_view key) {
  const int out = table.whole(key);
  if (out < 0 || out > 65000) table.fault(key, "`" + std::string(key) + "` is no register", "0 to 65000");
  return out;
}

Millis millis_of(Fields& table, std::string_view key, int low) {
  const int out = table.whole(key);
  if (out < low || out > 60000)
    table.fault(key, "`" + std::string(key) + "` is out of range", std::to_string(low) + " to 60000");
  return Millis(out);
}

}  // namespace

void read_modbus_form(Fields& file, Profile& into) {
  Fields table = file.table("modbus");
  ModbusForm& form = into.modbus;
  form.station = table.whole("station");
  if (form.station < 1 || form.station > 247) table.fault("station", "`station` is out of range", "1 to 247");
  form.counter_at = register_of(table, "counter_at");
  form.method_at = register_of(table, "method_at");
  form.value_at = register_of(table, "value_at");
  form.mark_at = register_of(table, "mark_at");
  if (table.has("sample_at")) {
    form.sample_at = register_of(table, "sample_at");
    form.sample_words = table.whole("sample_words");
    if (form.sample_words < 1 || form.sample_words > 32)
      table.fault("sample_words", "`sample_words` is out of range", "1 to 32");
  }
  form.poll_every = millis_of(table, "poll_every_ms", 50);
  form.answer_timeout = millis_of(table, "answer_timeout_ms", 20);
  const auto places = {form.counter_at, form.method_at, form.value_at + 1, form.mark_at,
                       form.sample_at.value_or(form.counter_at) + form.sample_words};
  if (std::max(places) - std::min({form.counter_at, form.method_at, form.value_at, form.mark_at,
                                   form.sample_at.value_or(form.counter_at)}) >=
      kMostRegisters)
    table.fault("counter_at", "the registers lie too far apart", "all within 125");
}

std::unique_ptr<Decoder> make_modbus_decoder(const Profile& profile) {
  return std::make_unique<ModbusDecoder>(profile);
}

}  // namespace brimline
