// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/photometer/line_faults.h"

#include <algorithm>
#include <array>
#include <vector>

namespace brimline::demo {
namespace {

struct FaultName {
  std::string_view name;
  FaultKind kind;
};
constexpr FaultName kFaults[] = {{"none", FaultKind::none},
                                 {"silent", FaultKind::silent},
                                 {"garbled", FaultKind::garbled},
                                 {"noise", FaultKind::noise},
                                 {"lost", FaultKind::lost},
                                 {"lost_byte", FaultKind::lost_byte},
                                 {"doubled", FaultKind::doubled},
                                 {"doubled_byte", FaultKind::doubled_byte},
                                 {"bad_checksum", FaultKind::bad_checksum},
                                 {"half_frame", FaultKind::half_frame},
                                 {"wrong_rate", FaultKind::wrong_rate},
                                 {"unplug", FaultKind::unplug},
                                 {"stuck", FaultKind::stuck},
                                 {"out_of_range", FaultKind::out_of_range},
                                 {"over_range", FaultKind::over_range},
                                 {"reset", FaultKind::reset},
                                 {"clock_jump", FaultKind::clock_jump},
                                 {"flood", FaultKind::flood},
                                 {"unknown_method", FaultKind::unknown_method}};

constexpr size_t kFloodBytes = 20000;
constexpr size_t kMostNoise = 8;
constexpr std::array kWrongRates = {2.0, 0.5, 0.75};

class Dice {
 public:
  explicit Dice(std::mt19937_64& random) : random_(random) {}
  size_t below(size_t end) { return std::uniform_int_distribution<size_t>(0, end - 1)(random_); }
  char byte(int low, int high) {
    return static_cast<char>(std::uniform_int_distribution<int>(low, high)(random_));
  }

 private:
  std::mt19937_64& random_;
};

std::string flood(const FrameShape& shape, Dice& dice) {
  std::string noise(kFloodBytes, ' ');
  for (char& byte : noise) byte = dice.byte(0x21, 0x7e);
  std::erase_if(noise, [&](char byte) { return shape.start.find(byte) != std::string::npos; });
  return noise + (shape.start.empty() ? shape.end : "");
}

}  // namespace

std::optional<FaultKind> fault_named(std::string_view name) {
  for (const FaultName& row : kFaults)
    if (row.name == name) return row.kind;
  return std::nullopt;
}

std::string_view name_of(FaultKind kind) {
  for (const FaultName& row : kFaults)
    if (row.kind == kind) return row.name;
  return "";
}

std::string fault_names() {
  std::string out;
  for (const FaultName& row : kFaults) {
    if (!out.empty()) out += ", ";
    out += row.name;
  }
  return out;
}

std::string heard_at_rate(std::string_view bytes, double ratio) {
  std::vector<bool> line;
  for (const char byte : bytes) {
    line.push_back(false);
    for (int bit = 0; bit < 8; ++bit) line.push_back((byte >> bit & 1) != 0);
    line.push_back(true);
  }
  const auto level = [&](double bit) {
    const auto at = static_cast<size_t>(bit);
    return at >= line.size() || line[at];
  };
  std::string out;
  const double step = 1 / ratio;
  const auto length = static_cast<double>(line.size());
  for (double at = 0; at < length;) {
    if (level(at)) {
      at += 0.25;
      continue;
    }
    int byte = 0;
    for (int bit = 0; bit < 8; ++bit) byte |= static_cast<int>(level(at + (1.5 + bit) * step)) << bit;
    out += static_cast<char>(byte);
    at += 9.5 * step;
  }
  return out;
}

std::string damaged(std::string frame, FaultKind fault, const FrameShape& shape, std::mt19937_64& random) {
  Dice dice(random);
  if (frame.empty()) return frame;
  switch (fault) {
    case FaultKind::half_frame:
    case FaultKind::reset:
      return frame.substr(0, frame.size() / 2);
    case FaultKind::doubled:
      return frame + frame;
    case FaultKind::lost:
    case FaultKind::silent:
    case FaultKind::unplug:
      return {};
    case FaultKind::bad_checksum: {
      char& byte = frame[frame.size() - std::min(frame.size(), shape.check_from_end)];
      byte = byte == '0' ? '1' : '0';
      return frame;
    }
    case FaultKind::garbled: {
      char& byte = frame[dice.below(frame.size())];
      byte = static_cast<char>(byte ^ dice.byte(1, 255));
      return frame;
    }
    case FaultKind::noise: {
      std::string noise(1 + dice.below(kMostNoise), ' ');
      for (char& byte : noise) byte = dice.byte(0, 255);
      return frame.insert(dice.below(frame.size() + 1), noise);
    }
    case FaultKind::lost_byte:
      return frame.erase(dice.below(frame.size()), 1);
    case FaultKind::doubled_byte: {
      const size_t at = dice.below(frame.size());
      return frame.insert(at, 1, frame[at]);
    }
    case FaultKind::wrong_rate:
      return heard_at_rate(frame, kWrongRates[dice.below(kWrongRates.size())]);
    case FaultKind::flood:
      return flood(shape, dice) + frame;
    case FaultKind::none:
    case FaultKind::stuck:
    case FaultKind::out_of_range:
    case FaultKind::over_range:
    case FaultKind::clock_jump:
    case FaultKind::unknown_method:
      break;
  }
  return frame;
}

}  // namespace brimline::demo
