// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/batch/out_file.h"

#include "station/batch/unfinished_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <iostream>
#include <utility>

namespace brimline::batch {

namespace {

Fault fault(const std::string& path, const std::string& what) {
  return {path.empty() ? "standard output" : path, 1, what, "a file that can be written"};
}

// The file a link points at, so that the link stays; the path itself where there is nothing yet.
std::string resolved(const std::string& path) {
  char* real = ::realpath(path.c_str(), nullptr);
  std::string out = real ? real : path;
  std::free(real);
  return out;
}

bool sync_file(const std::string& path) {
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (file < 0) return false;
  const bool done = ::fsync(file) == 0;
  ::close(file);
  return done;
}

}  // namespace

tl::expected<OutFile, Fault> OutFile::open(const std::optional<std::string>& path) {
  OutFile out;
  if (!path || path->empty()) return out;
  out.path_ = resolved(*path);
  struct stat info {};
  const bool there = ::stat(out.path_.c_str(), &info) == 0;
  if (there && S_ISDIR(info.st_mode)) return tl::unexpected(fault(*path, "is a folder"));
  const bool plain = !there || S_ISREG(info.st_mode);
  if (plain) out.beside_ = out.path_ + "." + std::to_string(::getpid()) + ".part";
  const SignalsHeld held;
  out.file_.open(plain ? out.beside_ : out.path_, std::ios::binary | std::ios::trunc);
  if (plain && out.file_) note_unfinished(out.beside_);
  if (!out.file_) return tl::unexpected(fault(*path, std::string("cannot be made: ") + std::strerror(errno)));
  return out;
}

OutFile::OutFile(OutFile&& other) noexcept
    : path_(std::exchange(other.path_, {})),
      beside_(std::exchange(other.beside_, {})),
      file_(std::move(other.file_)) {}

OutFile::~OutFile() {
  if (beside_.empty()) return;
  std::remove(beside_.c_str());
  forget_unfinished();
}

std::ostream& OutFile::stream() {
  if (path_.empty()) return std::cout;
  return file_;
}

tl::expected<void, Fault> OutFile::commit() {
  stream().flush();
  bool good = stream().good();
  if (!path_.empty()) {
    file_.close();
    good = good && !file_.fail();
  }
  if (good && !beside_.empty()) good = sync_file(beside_) && std::rename(beside_.c_str(), path_.c_str()) == 0;
  if (!good)
    return tl::unexpected(fault(path_, "cannot be written: the disk may be full or the reader gone"));
  beside_.clear();
  forget_unfinished();
  return {};
}

}  // namespace brimline::batch
