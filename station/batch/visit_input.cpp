// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/batch/visit_input.h"

#include <cerrno>
#include <cstring>
#include <fstream>
#include <iostream>
#include <sstream>

#include "station/batch/commands.h"
#include "station/visit_json.h"

namespace brimline::batch {

tl::expected<std::string, Fault> read_text(const std::string& path) {
  std::ostringstream text;
  if (path == "-") {
    text << std::cin.rdbuf();
    return text.str();
  }
  errno = 0;
  std::ifstream file(path, std::ios::binary);
  // A folder opens but cannot be read.
  if (file && file.peek() != std::ifstream::traits_type::eof()) text << file.rdbuf();
  if (!file.is_open() || file.bad() || errno == EISDIR)
    return tl::unexpected(Fault{path, 1, std::string("cannot be read: ") + std::strerror(errno), "a file"});
  return text.str();
}

tl::expected<Visit, std::vector<Fault>> read_visit_file(const std::string& path) {
  const auto text = read_text(path);
  if (!text) return tl::unexpected(std::vector{text.error()});
  return read_visit(*text, path == "-" ? "standard input" : path);
}

tl::expected<std::vector<Visit>, std::vector<Fault>> read_visit_files(const std::vector<std::string>& paths) {
  std::vector<Visit> visits;
  std::vector<Fault> faults;
  for (const std::string& path : paths) {
    auto visit = read_visit_file(path);
    if (visit)
      visits.push_back(std::move(*visit));
    else
      faults.insert(faults.end(), visit.error().begin(), visit.error().end());
  }
  if (!faults.empty()) return tl::unexpected(std::move(faults));
  return visits;
}

int bad_input(const std::vector<Fault>& faults) {
  constexpr size_t kMost = 50;
  for (size_t i = 0; i < faults.size() && i < kMost; ++i) std::cerr << faults[i].text() << "\n";
  if (faults.size() > kMost) std::cerr << "and " << faults.size() - kMost << " faults more\n";
  return kBadInput;
}

}  // namespace brimline::batch
