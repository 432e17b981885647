// SPDX-License-Identifier: GPL-3.0-or-later
// What the tests of the store share: a folder of their own, Qt's application object, and the program.
#pragma once

#include <sys/wait.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <random>
#include <sstream>
#include <string>

#include <gmock/gmock.h>
#include <QCoreApplication>
#include <nlohmann/json.hpp>

#include "station/store/store.h"
#include "station/visit_json.h"
#include "tests/station/whole_visit.h"

namespace brimline::tests {

// Qt finds its database drivers through the application object.
inline QCoreApplication& application() {
  static int count = 1;
  static char name[] = "store-test";
  static char* words[] = {name, nullptr};
  static QCoreApplication one(count, words);
  return one;
}

inline std::string contents_of(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

inline void write_file(const std::filesystem::path& path, const std::string& text) {
  std::ofstream(path, std::ios::binary) << text;
}

struct StoreRun {
  int code = -1;  // 128 + signal where one ended it
  std::string out, err;
};

class StoreTest : public testing::Test {
 protected:
  StoreTest() {
    application();
    std::string pattern = (std::filesystem::temp_directory_path() / "brimline-store-XXXXXX").string();
    folder = ::mkdtemp(pattern.data());
  }
  ~StoreTest() override {
    std::error_code ignored;
    std::filesystem::remove_all(folder, ignored);
  }
  std::string path(const std::string& name) const { return (folder / name).string(); }
  std::string url(const std::string& name = "shop.db") const { return "sqlite:" + path(name); }

  // Runs the headless program through the shell; `before` goes in front of it ("ulimit -f 40;").
  StoreRun batch(const std::string& arguments, const std::string& input = "",
                 const std::string& before = "") const {
    write_file(folder / "in", input);
    const std::string command = before + " \"" BRIMLINE_BIN_DIR "/brimline-batch\" " + arguments + " < " +
                                path("in") + " > " + path("out") + " 2> " + path("err");
    // NOLINTNEXTLINE(cert-env33-c): a program of this build, named by the test
    const int status = std::system(("exec 2>/dev/null; " + command).c_str());
    const int code = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    return {code, contents_of(folder / "out"), contents_of(folder / "err")};
  }

  std::filesystem::path folder;
};

inline Visit whole_visit(const std::string& id = "V-1") {
  Visit visit = read_visit(kWholeVisit, "whole.json").value();
  visit.id = id;
  return visit;
}

inline std::string line_of(const Visit& visit) {
  return visit_to_json(visit).dump() + "\n";
}

inline Customer customer_named(const std::string& id, const std::string& name) {
  Customer customer;
  customer.id = id;
  customer.name = name;
  return customer;
}

inline std::string text_of(const Rows& rows) {
  return rows.empty() ? "" : rows[0][0].toString().toStdString();
}

}  // namespace brimline::tests
