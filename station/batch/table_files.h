// SPDX-License-Identifier: GPL-3.0-or-later
// Where tables come from and go to: blocks of whole lines in, a file that appears only once it is whole out.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include <sys/types.h>

#include <tl/expected.hpp>

namespace brimline::batch {

// Blocks of whole lines; the last one may lack its line end.
class BlockReader {
 public:
  // `path` absent: standard input. The error is a sentence.
  static tl::expected<BlockReader, std::string> open(const std::optional<std::string>& path);
  BlockReader(BlockReader&& other) noexcept;
  BlockReader& operator=(BlockReader&&) = delete;
  BlockReader(const BlockReader&) = delete;
  BlockReader& operator=(const BlockReader&) = delete;
  ~BlockReader();

  // False at the end or on an error, which error() then tells.
  bool next(std::string& block);
  bool ready() const;  // next() would not wait
  const std::optional<std::string>& error() const { return error_; }
  const std::string& name() const { return name_; }  // for messages

 private:
  BlockReader(int fd, std::string name) : fd_(fd), name_(std::move(name)) {}
  int fd_;
  std::string name_;
  std::string carry_;  // the start of a line whose end is still to come
  bool ended_ = false;
  std::optional<std::string> error_;
};

// A plain file is written beside itself and renamed by commit(), so that a failure leaves what was there.
// Devices and pipes, standard output among them, are written as they are and never replaced.
class OutputFile {
 public:
  static tl::expected<OutputFile, std::string> open(const std::optional<std::string>& path);
  OutputFile(OutputFile&& other) noexcept;
  OutputFile& operator=(OutputFile&&) = delete;
  OutputFile(const OutputFile&) = delete;
  OutputFile& operator=(const OutputFile&) = delete;
  ~OutputFile();  // what was not committed is removed

  tl::expected<void, std::string> write(std::string_view bytes);
  tl::expected<void, std::string> commit();
  bool plain() const { return !temporary_.empty(); }

 private:
  OutputFile(int fd, std::string name) : fd_(fd), name_(std::move(name)) {}
  static tl::expected<OutputFile, std::string> open_plain(const std::string& target, mode_t mode);
  std::string failed(const char* doing) const;
  int fd_;
  std::string name_;       // as it shall be called
  std::string temporary_;  // as it is called till then; empty if written directly
};

}  // namespace brimline::batch
