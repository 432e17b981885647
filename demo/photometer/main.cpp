// SPDX-License-Identifier: GPL-3.0-or-later
// brimline-photometer: an emulated photometer behind a pseudo-terminal, for the demo and the tests.
#include <atomic>
#include <csignal>
#include <filesystem>
#include <iostream>

#include <poll.h>
#include <unistd.h>

#include "demo/photometer/desk.h"

using namespace brimline;
using namespace brimline::demo;

namespace {

volatile std::sig_atomic_t ended = 0;
void on_signal(int) {
  ended = 1;
}

int print_faults(const std::vector<Fault>& faults) {
  for (const Fault& fault : faults) std::cerr << fault.text() << "\n";
  return 2;
}

// The commands that came whole; false when no more can come.
bool read_commands(std::string& waiting, PhotometerDesk& desk, Steady::time_point now) {
  char bytes[512];
  const auto count = ::read(STDIN_FILENO, bytes, sizeof bytes);
  if (count <= 0) return false;
  waiting.append(bytes, static_cast<size_t>(count));
  for (size_t end = waiting.find('\n'); end != std::string::npos; end = waiting.find('\n')) {
    desk.command(waiting.substr(0, end), now);
    waiting.erase(0, end + 1);
  }
  return true;
}

void work(PhotometerDesk& desk) {
  std::string waiting;
  bool listening = true;  // to standard input
  while (!ended && !desk.is_over()) {
    const auto due = desk.until_due(Steady::now()).count();
    const timespec wait{due / 1000000000, due % 1000000000};
    pollfd input{STDIN_FILENO, POLLIN, 0};
    const int ready = ::ppoll(&input, listening ? 1 : 0, &wait, nullptr);
    if (ready > 0) listening = read_commands(waiting, desk, Steady::now());
    desk.turn(Steady::now());
  }
}

}  // namespace

int main(int argc, char** argv) {
  const std::vector<std::string> words(argv + 1, argv + argc);
  if (words.size() == 1 && words[0] == "--help") {
    std::cout << kUsage;
    return 0;
  }
  auto options = parse_options(words);
  if (!options) {
    std::cerr << "brimline-photometer: " << options.error() << "\n" << kUsage;
    return 2;
  }
  auto profile = load_profile(options->profile);
  if (!profile) return print_faults(profile.error());
  auto bottle = read_bottle_file(options->bottle);
  if (!bottle) return print_faults(bottle.error());
  for (const int number : {SIGTERM, SIGINT, SIGHUP}) std::signal(number, on_signal);
  std::signal(SIGPIPE, SIG_IGN);
  options->link = std::filesystem::absolute(options->link).string();
  const std::string link = options->link;
  PhotometerDesk desk(std::move(*options), std::move(*profile), std::move(*bottle));
  if (!desk.plug()) {
    std::cerr << link << ": no pseudo-terminal can be linked here; expected a path that is free\n";
    return 2;
  }
  std::cout << "ready " << link << std::endl;
  work(desk);
  return 0;
}
