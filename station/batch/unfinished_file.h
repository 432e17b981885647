// SPDX-License-Identifier: GPL-3.0-or-later
// A file still being written under a name of its own, which a signal that ends the program takes along.
#pragma once

#include <csignal>
#include <string>

namespace brimline::batch {

// Holds SIGHUP, SIGINT and SIGTERM back while it lives, so that none falls between making a file and noting
// it.
class SignalsHeld {
 public:
  SignalsHeld();
  ~SignalsHeld();
  SignalsHeld(const SignalsHeld&) = delete;
  SignalsHeld& operator=(const SignalsHeld&) = delete;

 private:
  sigset_t before_;
};

// Notes the one unfinished file: from now on those signals, unless ignored or handled elsewhere, remove it
// and then end the program as they would have. A path too long to be one is not noted.
void note_unfinished(const std::string& path);
// It is finished or removed.
void forget_unfinished();

}  // namespace brimline::batch
