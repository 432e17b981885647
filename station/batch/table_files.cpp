// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/batch/table_files.h"

#include "station/batch/unfinished_file.h"

#include <fcntl.h>
#include <poll.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <climits>
#include <cstdlib>
#include <cstring>
#include <utility>

namespace brimline::batch {
namespace {

constexpr size_t kBlock = 1 << 16;
constexpr size_t kLongestLine = 1 << 20;

std::string reason() {
  return std::strerror(errno);
}

}  // namespace

tl::expected<BlockReader, std::string> BlockReader::open(const std::optional<std::string>& path) {
  if (!path) return BlockReader(STDIN_FILENO, "standard input");
  const int fd = ::open(path->c_str(), O_RDONLY | O_CLOEXEC);
  if (fd < 0) return tl::unexpected(*path + ": cannot be read (" + reason() + "); expected a table");
  return BlockReader(fd, *path);
}

BlockReader::BlockReader(BlockReader&& other) noexcept
    : fd_(std::exchange(other.fd_, -1)),
      name_(std::move(other.name_)),
      carry_(std::move(other.carry_)),
      ended_(other.ended_),
      error_(std::move(other.error_)) {}

BlockReader::~BlockReader() {
  if (fd_ > STDIN_FILENO) ::close(fd_);
}

bool BlockReader::ready() const {
  pollfd p{fd_, POLLIN, 0};
  return ended_ || ::poll(&p, 1, 0) != 0;
}

bool BlockReader::next(std::string& block) {
  block.swap(carry_);
  carry_.clear();
  while (!ended_ && !error_) {
    const size_t had = block.size();
    block.resize(had + kBlock);
    const ssize_t got = ::read(fd_, block.data() + had, kBlock);
    block.resize(had + static_cast<size_t>(got > 0 ? got : 0));
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) error_ = name_ + ": cannot be read (" + reason() + "); expected a table";
    if (got == 0) ended_ = true;
    if (got <= 0) break;
    const auto* const last =
        static_cast<const char*>(::memrchr(block.data() + had, '\n', static_cast<size_t>(got)));
    if (last) {
      carry_.assign(block, static_cast<size_t>(last + 1 - block.data()));
      block.resize(static_cast<size_t>(last + 1 - block.data()));
      return true;
    }
    if (block.size() > kLongestLine) error_ = name_ + ": a line of over 1,000,000 bytes; expected a table";
  }
  return !error_ && !block.empty();
}

std::string OutputFile::failed(const char* doing) const {
  return name_ + ": cannot be " + doing + " (" + reason() + "); expected a file to write to";
}

tl::expected<OutputFile, std::string> OutputFile::open(const std::optional<std::string>& path) {
  if (!path) return OutputFile(STDOUT_FILENO, "standard output");
  struct stat info {};
  if (::stat(path->c_str(), &info) != 0) {
    if (errno != ENOENT || ::lstat(path->c_str(), &info) == 0)
      return tl::unexpected(*path + ": cannot be written (" + reason() + "); expected a file to write to");
    const mode_t mask = ::umask(0);
    ::umask(mask);
    return open_plain(*path, 0666 & ~mask);
  }
  if (S_ISREG(info.st_mode)) {
    char resolved[PATH_MAX];  // through links, so that the link stays and its file is replaced
    if (!::realpath(path->c_str(), resolved)) return tl::unexpected(*path + ": " + reason());
    return open_plain(resolved, info.st_mode & 07777);
  }
  const int fd = S_ISDIR(info.st_mode) ? -1 : ::open(path->c_str(), O_WRONLY | O_CLOEXEC);
  if (S_ISDIR(info.st_mode)) errno = EISDIR;
  OutputFile out(fd, *path);
  if (fd < 0) return tl::unexpected(out.failed("written"));
  return out;
}

tl::expected<OutputFile, std::string> OutputFile::open_plain(const std::string& target, mode_t mode) {
  const size_t slash = target.rfind('/');
  const std::string folder = slash == std::string::npos ? "" : target.substr(0, slash + 1);
  std::string temporary = folder + ".brimline-XXXXXX";
  const SignalsHeld held;
  std::signal(SIGXFSZ, SIG_IGN);  // a file that may not grow is a fault to tell
  const int fd = ::mkostemp(temporary.data(), O_CLOEXEC);
  OutputFile out(fd, target);
  if (fd < 0) return tl::unexpected(out.failed("written"));
  out.temporary_ = temporary;
  note_unfinished(temporary);
  if (::fchmod(fd, mode) != 0) return tl::unexpected(out.failed("given its mode"));
  return out;
}

OutputFile::OutputFile(OutputFile&& other) noexcept
    : fd_(std::exchange(other.fd_, -1)),
      name_(std::move(other.name_)),
      temporary_(std::exchange(other.temporary_, {})) {}

OutputFile::~OutputFile() {
  if (fd_ > STDERR_FILENO) ::close(fd_);
  if (temporary_.empty()) return;
  ::unlink(temporary_.c_str());
  forget_unfinished();
}

tl::expected<void, std::string> OutputFile::write(std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t put = ::write(fd_, bytes.data(), bytes.size());
    if (put < 0 && errno == EINTR) continue;
    if (put < 0) return tl::unexpected(failed("written"));
    bytes.remove_prefix(static_cast<size_t>(put));
  }
  return {};
}

tl::expected<void, std::string> OutputFile::commit() {
  if (temporary_.empty()) return {};
  if (::fsync(fd_) != 0) return tl::unexpected(failed("kept"));
  if (::rename(temporary_.c_str(), name_.c_str()) != 0) return tl::unexpected(failed("named"));
  temporary_.clear();
  forget_unfinished();
  return {};
}

}  // namespace brimline::batch
