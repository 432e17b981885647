// SPDX-License-Identifier: GPL-3.0-or-later
// A Modbus RTU server (MODBUS Application Protocol V1.1b3, from memory) whose holding registers show the
// reading made last and count the readings made. It cannot know what was read of it: each reading stands for
// at least `polls` answers.
#pragma once

#include <cstdint>
#include <deque>
#include <map>

#include "demo/photometer/talker.h"

namespace brimline::demo {

class ModbusTalker : public Talker {
 public:
  explicit ModbusTalker(Profile profile, int polls = 4) : profile_(std::move(profile)), polls_(polls) {}
  void put(const MethodRow& row, const LineReading& reading) override;
  std::vector<std::string> turn(std::string_view heard, Millis at) override;
  std::optional<Millis> wake() const override { return std::nullopt; }
  size_t waiting() const override { return waiting_.size() + (answers_ < polls_ && counter_ > 0 ? 1 : 0); }
  void restart(Millis at) override;
  FrameShape shape() const override {
    return {1, std::string(1, static_cast<char>(profile_.modbus.station)), ""};
  }

 private:
  struct Shown {
    int method = 0;
    float value = 0;
    int mark = 0;
    std::string sample;
  };
  std::optional<std::string> answer(std::string_view request);
  void show_next();
  void fill_registers(const Shown& shown);

  Profile profile_;
  int polls_;
  std::deque<Shown> waiting_;
  std::map<int, std::uint16_t> registers_;
  std::uint16_t counter_ = 0;
  int answers_ = 0;           // to requests since the reading is shown
  bool first_asked_ = false;  // the counter before any reading has been read: it is the baseline
  std::string heard_;
};

}  // namespace brimline::demo
