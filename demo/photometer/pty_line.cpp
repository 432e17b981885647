// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/photometer/pty_line.h"

#include <algorithm>
#include <cstdlib>

#include <fcntl.h>
#include <poll.h>
#include <stdlib.h>
#include <termios.h>
#include <unistd.h>

namespace brimline::demo {
namespace {

// A link that was left behind is replaced; anything else is not ours to remove.
bool make_link(const std::string& target, const std::string& link) {
  const std::string made = link + ".new";
  ::unlink(made.c_str());
  char old[1];
  const bool is_free = ::access(link.c_str(), F_OK) != 0 || ::readlink(link.c_str(), old, sizeof old) >= 0;
  return is_free && ::symlink(target.c_str(), made.c_str()) == 0 && ::rename(made.c_str(), link.c_str()) == 0;
}

// Opened and closed once: from then on the master tells whether anybody listens.
bool make_raw(const char* slave) {
  const int fd = ::open(slave, O_RDWR | O_NOCTTY | O_CLOEXEC);
  if (fd < 0) return false;
  termios settings{};
  ::tcgetattr(fd, &settings);
  ::cfmakeraw(&settings);
  ::tcsetattr(fd, TCSANOW, &settings);
  ::close(fd);
  return true;
}

}  // namespace

PtyLine::PtyLine(std::string link, const SerialSettings& serial, double speed)
    : link_(std::move(link)),
      byte_time_(static_cast<long long>(1e9 * bits_per_byte(serial) / serial.baud / speed)) {}

PtyLine::~PtyLine() {
  unplug();
}

bool PtyLine::plug() {
  if (is_plugged()) return true;
  const int fd = ::posix_openpt(O_RDWR | O_NOCTTY | O_NONBLOCK | O_CLOEXEC);
  if (fd < 0) return false;
  const char* slave = ::grantpt(fd) == 0 && ::unlockpt(fd) == 0 ? ::ptsname(fd) : nullptr;
  if (!slave || !make_raw(slave) || !make_link(slave, link_)) {
    ::close(fd);
    return false;
  }
  master_ = fd;
  return true;
}

void PtyLine::unplug() {
  if (!is_plugged()) return;
  ::unlink(link_.c_str());
  ::close(master_);
  master_ = -1;
  waiting_.clear();
}

bool PtyLine::has_listener() const {
  if (!is_plugged()) return false;
  pollfd state{master_, POLLIN, 0};
  return ::poll(&state, 1, 0) >= 0 && !(state.revents & POLLHUP);
}

void PtyLine::queue(const std::string& bytes, Steady::time_point now) {
  if (waiting_.empty()) next_due_ = std::max(next_due_, now) + byte_time_;
  waiting_ += bytes;
}

std::string PtyLine::turn(Steady::time_point now) {
  if (!is_plugged()) return {};
  size_t due = 0;
  while (due < waiting_.size() && next_due_ <= now) {
    next_due_ += byte_time_;
    ++due;
  }
  if (due > 0) waiting_.erase(0, has_listener() ? write(due) : due);
  return has_listener() ? receive() : std::string();
}

// A reader that does not keep up holds the line up, as hardware handshake would.
size_t PtyLine::write(size_t count) {
  const auto written = ::write(master_, waiting_.data(), count);
  return written > 0 ? static_cast<size_t>(written) : 0;
}

std::string PtyLine::receive() {
  char bytes[512];
  const auto count = ::read(master_, bytes, sizeof bytes);
  return count > 0 ? std::string(bytes, static_cast<size_t>(count)) : std::string();
}

std::chrono::nanoseconds PtyLine::until_due(Steady::time_point now) const {
  if (waiting_.empty()) return std::chrono::hours(1);
  return std::max(std::chrono::nanoseconds(0), std::chrono::nanoseconds(next_due_ - now));
}

}  // namespace brimline::demo
