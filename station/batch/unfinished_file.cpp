// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/batch/unfinished_file.h"

#include <unistd.h>

#include <climits>
#include <cstring>

namespace brimline::batch {
namespace {

constexpr int kEnding[] = {SIGHUP, SIGINT, SIGTERM};

// Signals have no other way to be told: what a handler may touch is this, unlink() and raise().
char unfinished[PATH_MAX];
volatile std::sig_atomic_t noted = 0;

// The handler is already reset: the signal raised again ends the program once this returns.
void on_signal(int number) {
  if (noted) ::unlink(unfinished);
  ::raise(number);
}

void handle(int number) {
  struct sigaction now {};
  if (::sigaction(number, nullptr, &now) != 0 || now.sa_handler != SIG_DFL) return;
  struct sigaction ours {};
  ours.sa_handler = on_signal;
  ours.sa_flags = static_cast<int>(SA_RESETHAND);
  ::sigfillset(&ours.sa_mask);
  ::sigaction(number, &ours, nullptr);
}

}  // namespace

SignalsHeld::SignalsHeld() {
  sigset_t ending;
  ::sigemptyset(&ending);
  for (const int number : kEnding) ::sigaddset(&ending, number);
  ::pthread_sigmask(SIG_BLOCK, &ending, &before_);
}

SignalsHeld::~SignalsHeld() {
  ::pthread_sigmask(SIG_SETMASK, &before_, nullptr);
}

void note_unfinished(const std::string& path) {
  noted = 0;
  if (path.size() >= sizeof unfinished) return;
  std::memcpy(unfinished, path.c_str(), path.size() + 1);
  noted = 1;
  for (const int number : kEnding) handle(number);
}

void forget_unfinished() {
  noted = 0;
}

}  // namespace brimline::batch
