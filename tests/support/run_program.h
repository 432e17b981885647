// SPDX-License-Identifier: GPL-3.0-or-later
// Runs a program to its end and gives back what it said: for tests of whole programs.
#pragma once

#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace brimline::testing {

struct Ran {
  int exit_code = -1;
  std::string out, err;
};

inline std::string slurp(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  std::ostringstream all;
  all << in.rdbuf();
  return all.str();
}

// A folder of its own, gone with the object.
class ScratchFolder {
 public:
  ScratchFolder() {
    std::string name = (std::filesystem::temp_directory_path() / "brimline-test.XXXXXX").string();
    path_ = ::mkdtemp(name.data());
  }
  ~ScratchFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  ScratchFolder(const ScratchFolder&) = delete;
  ScratchFolder& operator=(const ScratchFolder&) = delete;
  std::filesystem::path operator/(const std::string& name) const { return path_ / name; }

 private:
  std::filesystem::path path_;
};

inline std::string shell_quoted(const std::string& word) {
  std::string out = "'";
  for (char c : word) out += c == '\'' ? std::string("'\\''") : std::string(1, c);
  return out + "'";
}

// `program` is a name in build/bin; `input` becomes its standard input.
inline Ran run_program(const std::string& program, const std::vector<std::string>& arguments,
                       const std::string& input = "") {
  ScratchFolder scratch;
  std::ofstream(scratch / "in", std::ios::binary) << input;
  std::string command = shell_quoted(std::string(BRIMLINE_BIN_DIR) + "/" + program);
  for (const std::string& argument : arguments) command += " " + shell_quoted(argument);
  command += " <" + (scratch / "in").string() + " >" + (scratch / "out").string() + " 2>" +
             (scratch / "err").string();
  const int status = std::system(command.c_str());
  return {WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status), slurp(scratch / "out"),
          slurp(scratch / "err")};
}

}  // namespace brimline::testing
