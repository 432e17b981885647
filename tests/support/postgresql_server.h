// SPDX-License-Identifier: GPL-3.0-or-later
// A PostgreSQL 15 server of the test's own, reached over loopback only; gone with the object.
#pragma once

#include <arpa/inet.h>
#include <netinet/in.h>
#include <sys/prctl.h>
#include <sys/socket.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <thread>
#include <vector>

namespace brimline::testing {

inline int free_port() {
  const int socket = ::socket(AF_INET, SOCK_STREAM, 0);
  sockaddr_in address{};
  address.sin_family = AF_INET;
  address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  socklen_t size = sizeof address;
  if (::bind(socket, reinterpret_cast<sockaddr*>(&address), sizeof address) != 0) return 0;
  ::getsockname(socket, reinterpret_cast<sockaddr*>(&address), &size);
  ::close(socket);
  return ntohs(address.sin_port);
}

class PostgresqlServer {
 public:
  // `folder` exists and is the test's own.
  explicit PostgresqlServer(const std::filesystem::path& folder)
      : home_(folder / "server"), port_(free_port()) {
    std::filesystem::create_directory(home_);
    std::filesystem::permissions(folder, std::filesystem::perms::all);
    // The server is left by the program that starts it: this process asks after it when it ends.
    ::prctl(PR_SET_CHILD_SUBREAPER, 1);
    if (::geteuid() == 0) shell("chown postgres " + home_.string());
    run("initdb -D " + data() + " -A trust -U postgres -E UTF8 --locale=C.UTF-8 --no-sync");
    start();
  }
  ~PostgresqlServer() {
    if (running_) run("pg_ctl -D " + data() + " -m immediate -w stop");
  }
  PostgresqlServer(const PostgresqlServer&) = delete;
  PostgresqlServer& operator=(const PostgresqlServer&) = delete;

  static std::filesystem::path programs() { return "/usr/lib/postgresql/15/bin"; }
  static bool installed() { return std::filesystem::exists(programs() / "postgres"); }
  bool running() const { return running_; }
  int port() const { return port_; }
  std::string log() const { return (home_ / "log").string(); }
  std::string url(const std::string& database, int port = 0) const {
    return "postgresql://postgres@127.0.0.1:" + std::to_string(port != 0 ? port : port_) + "/" + database;
  }
  bool make(const std::string& database) const {
    return run("createdb -h 127.0.0.1 -U postgres -p " + std::to_string(port_) + " " + database) == 0;
  }
  // Without fsync: a process that is killed takes nothing from the kernel's cache, and a start after it
  // need not sync every file of the server first.
  bool start() {
    running_ = run("pg_ctl -D " + data() + " -l " + log() + " -w -o '-p " + std::to_string(port_) +
                   " -c listen_addresses=127.0.0.1 -c fsync=off -c unix_socket_directories=' start") == 0;
    return running_;
  }
  // Every process of the server at once, as a power cut ends them; returns when all are gone.
  void kill_all() {
    std::ifstream file(home_ / "data" / "postmaster.pid");
    pid_t first = 0;
    if (!(file >> first) || first <= 1) return;
    std::vector<pid_t> all = {first};
    for (const auto& entry : std::filesystem::directory_iterator("/proc")) {
      const std::string name = entry.path().filename().string();
      if (name.find_first_not_of("0123456789") != std::string::npos) continue;
      std::ifstream status(entry.path() / "stat");
      std::string text;
      std::getline(status, text);
      const size_t end = text.rfind(')');
      if (end != std::string::npos && std::atoi(text.c_str() + end + 4) == first)
        all.push_back(std::atoi(name.c_str()));
    }
    for (const pid_t one : all) ::kill(one, SIGKILL);
    for (const pid_t one : all) ::waitpid(one, nullptr, 0);
    running_ = false;
  }
  // The server's programs refuse to be run by root.
  int run(const std::string& command) const {
    const std::string whole =
        programs().string() + "/" + command + " > " + (home_ / "said").string() + " 2>&1";
    if (::geteuid() != 0) return shell(whole);
    std::ofstream(home_ / "command") << whole;
    return shell("su postgres -s /bin/sh -c 'cd / && sh " + (home_ / "command").string() + "'");
  }

 private:
  static int shell(const std::string& command) {
    // NOLINTNEXTLINE(cert-env33-c): the server's own programs, named by the test
    return std::system(command.c_str());
  }
  std::string data() const { return (home_ / "data").string(); }
  std::filesystem::path home_;
  int port_;
  bool running_ = false;
};

}  // namespace brimline::testing
