// SPDX-License-Identifier: GPL-3.0-or-later
// A wire between a client and a server on loopback that can be cut, or go silent, and be mended.
#pragma once

#include <arpa/inet.h>
#include <netinet/in.h>
#include <poll.h>
#include <sys/socket.h>
#include <unistd.h>

#include <array>
#include <atomic>
#include <mutex>
#include <thread>
#include <vector>

namespace brimline::testing {

class CutProxy {
 public:
  explicit CutProxy(int server_port) : server_port_(server_port) {
    listener_ = ::socket(AF_INET, SOCK_STREAM, 0);
    sockaddr_in address = loopback(0);
    socklen_t size = sizeof address;
    ::bind(listener_, reinterpret_cast<sockaddr*>(&address), sizeof address);
    ::listen(listener_, 64);
    ::getsockname(listener_, reinterpret_cast<sockaddr*>(&address), &size);
    port_ = ntohs(address.sin_port);
    accepting_ = std::thread([this] { accept_all(); });
  }
  ~CutProxy() {
    stop_ = true;
    accepting_.join();
    for (std::thread& wire : wires_) wire.join();
    ::close(listener_);
  }
  CutProxy(const CutProxy&) = delete;
  CutProxy& operator=(const CutProxy&) = delete;

  int port() const { return port_; }
  void cut() { ++cuts_, open_ = false; }       // what is on the wire is lost, both ends are told
  void silence() { ++cuts_, silent_ = true; }  // nobody is told
  void mend() { silent_ = false, open_ = true; }
  int cuts() const { return cuts_; }

 private:
  static sockaddr_in loopback(int port) {
    sockaddr_in out{};
    out.sin_family = AF_INET;
    out.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    out.sin_port = htons(static_cast<std::uint16_t>(port));
    return out;
  }
  static void hang_up(int one) {
    const linger now{1, 0};  // a reset, not a farewell
    ::setsockopt(one, SOL_SOCKET, SO_LINGER, &now, sizeof now);
    ::close(one);
  }
  void accept_all() {
    while (!stop_) {
      pollfd waits{listener_, POLLIN, 0};
      if (::poll(&waits, 1, 20) <= 0) continue;
      const int client = ::accept(listener_, nullptr, nullptr);
      if (client < 0) continue;
      const int server = ::socket(AF_INET, SOCK_STREAM, 0);
      const sockaddr_in address = loopback(server_port_);
      if (!open_ || ::connect(server, reinterpret_cast<const sockaddr*>(&address), sizeof address) != 0) {
        hang_up(client);
        ::close(server);
        continue;
      }
      wires_.emplace_back([this, client, server] { carry(client, server); });
    }
  }
  void carry(int client, int server) {
    std::array<char, 65536> bytes{};
    while (!stop_ && open_) {
      if (silent_) {
        ::usleep(5000);
        continue;
      }
      std::array<pollfd, 2> waits{{{client, POLLIN, 0}, {server, POLLIN, 0}}};
      if (::poll(waits.data(), 2, 10) <= 0) continue;
      bool ended = false;
      for (int side = 0; side < 2 && !ended; ++side) {
        if (waits[static_cast<size_t>(side)].revents == 0) continue;
        const ssize_t count = ::read(side == 0 ? client : server, bytes.data(), bytes.size());
        ended = count <= 0 || !open_ ||
                ::send(side == 0 ? server : client, bytes.data(), static_cast<size_t>(count), MSG_NOSIGNAL) !=
                    count;
      }
      if (ended) break;
    }
    hang_up(client);
    hang_up(server);
  }

  int server_port_, port_ = 0, listener_ = -1;
  std::atomic<bool> open_{true}, silent_{false}, stop_{false};
  std::atomic<int> cuts_{0};
  std::thread accepting_;
  std::vector<std::thread> wires_;  // touched by the accepting thread until it has ended
};

}  // namespace brimline::testing
