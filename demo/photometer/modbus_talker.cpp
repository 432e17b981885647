// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/photometer/modbus_talker.h"

#include <bit>
#include <cstdlib>

#include "devices/modbus_decoder.h"

namespace brimline::demo {
namespace {

constexpr int kReadHolding = 3, kIllegalFunction = 1, kIllegalAddress = 2;
constexpr size_t kRequestBytes = 8;

int byte_of(std::string_view bytes, size_t at) {
  return static_cast<unsigned char>(bytes[at]);
}
int word_of(std::string_view bytes, size_t at) {
  return byte_of(bytes, at) << 8 | byte_of(bytes, at + 1);
}
void append_word(std::string& out, int word) {
  out += static_cast<char>(word >> 8 & 0xff);
  out += static_cast<char>(word & 0xff);
}

}  // namespace

void ModbusTalker::put(const MethodRow& row, const LineReading& reading) {
  const int mark = !reading.clipped ? 0 : *reading.clipped == Clip::above ? 1 : 2;
  waiting_.push_back({static_cast<int>(std::strtol(row.code.c_str(), nullptr, 10)),
                      static_cast<float>(reading.value), mark, reading.sample});
}

void ModbusTalker::fill_registers(const Shown& shown) {
  const ModbusForm& form = profile_.modbus;
  const auto bits = std::bit_cast<std::uint32_t>(shown.value);
  registers_[form.counter_at] = counter_;
  registers_[form.method_at] = static_cast<std::uint16_t>(shown.method);
  registers_[form.value_at] = static_cast<std::uint16_t>(bits >> 16);
  registers_[form.value_at + 1] = static_cast<std::uint16_t>(bits & 0xffff);
  registers_[form.mark_at] = static_cast<std::uint16_t>(shown.mark);
  if (!form.sample_at) return;
  std::string sample = shown.sample;
  sample.resize(2 * static_cast<size_t>(form.sample_words), '\0');
  for (int i = 0; i < form.sample_words; ++i)
    registers_[*form.sample_at + i] = static_cast<std::uint16_t>(word_of(sample, 2 * static_cast<size_t>(i)));
}

void ModbusTalker::show_next() {
  ++counter_;
  answers_ = 0;
  fill_registers(waiting_.front());
  waiting_.pop_front();
}

std::optional<std::string> ModbusTalker::answer(std::string_view request) {
  const bool sound = modbus_frame(std::string(request.substr(0, kRequestBytes - 2))) == request;
  if (!sound || byte_of(request, 0) != profile_.modbus.station) return std::nullopt;
  const auto refuse = [&](int code) {
    return modbus_frame({request[0], static_cast<char>(request[1] | 0x80), static_cast<char>(code)});
  };
  if (byte_of(request, 1) != kReadHolding) return refuse(kIllegalFunction);
  const int first = word_of(request, 2), count = word_of(request, 4);
  if (count < 1 || count > 125) return refuse(kIllegalAddress);
  std::string out{request[0], request[1], static_cast<char>(2 * count)};
  for (int i = 0; i < count; ++i) {
    const auto found = registers_.find(first + i);
    append_word(out, found == registers_.end() ? 0 : found->second);
  }
  ++answers_;
  return modbus_frame(out);
}

// A request stands alone on the line: the silence around it frames it, here its length does.
std::vector<std::string> ModbusTalker::turn(std::string_view heard, Millis) {
  std::vector<std::string> out;
  heard_ += heard;
  while (heard_.size() >= kRequestBytes) {
    if ((answers_ >= polls_ || counter_ == 0) && !waiting_.empty() && first_asked_) show_next();
    auto bytes = answer(std::string_view(heard_).substr(0, kRequestBytes));
    heard_.erase(0, bytes ? kRequestBytes : 1);
    if (bytes) {
      first_asked_ = true;
      out.push_back(std::move(*bytes));
    }
  }
  return out;
}

void ModbusTalker::restart(Millis) {
  counter_ = 0;
  answers_ = 0;
  registers_.clear();
  heard_.clear();
  first_asked_ = false;
}

}  // namespace brimline::demo
