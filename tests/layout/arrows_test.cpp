// SPDX-License-Identifier: GPL-3.0-or-later
// The arrows of the layout: which room may include which, and how much of Qt each may see.
//   analysis <- devices;  analysis <- station <- printing <- qml;  demo -> devices, station
// Main files (station/batch, demo/visit and qml/main.cpp) may see every room; the libraries are judged.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

namespace fs = std::filesystem;

namespace {

const char* const kRooms[] = {"analysis", "devices", "station", "printing", "qml", "demo"};

const std::regex kGui{R"(Q(Gui|Quick|Qml|QQml|Painter|Pdf|Printer|Page|Window|Font|Image|Widget|Screen).*)"};
const std::regex kSql{R"(QSql.*)"};
const std::regex kSerial{R"(Q(Serial|Modbus).*)"};

std::set<std::string> rooms_below(const std::string& room) {
  static const std::map<std::string, std::set<std::string>> below = {
      {"analysis", {}},
      {"devices", {"analysis"}},
      {"station", {"analysis"}},
      {"printing", {"analysis", "station"}},
      {"qml", {"analysis", "devices", "station", "printing"}},
      {"demo", {"analysis", "devices", "station"}}};
  return below.at(room);
}

// What is wrong with one include of one file, or nothing.
std::string broken_arrow(const std::string& room, const std::string& include) {
  const std::string first = include.substr(0, include.find('/'));
  const bool is_room = std::find(std::begin(kRooms), std::end(kRooms), first) != std::end(kRooms);
  if (is_room && include.find('/') != std::string::npos && first != room &&
      !rooms_below(room).contains(first))
    return room + " may not include " + first;
  const bool is_qt =
      include.size() > 1 && include[0] == 'Q' && std::isupper(static_cast<unsigned char>(include[1]));
  if (!is_qt) return "";
  if (room == "analysis") return "analysis is pure C++ and may not see Qt";
  if (std::regex_match(include, kGui) && (room == "devices" || room == "station"))
    return room + " may not see Qt Gui";
  if (std::regex_match(include, kSql) && room != "station") return room + " may not see Qt Sql";
  if (std::regex_match(include, kSerial) && room != "devices" && room != "demo")
    return room + " may not see the serial port";
  return "";
}

bool is_main_file(const std::string& path) {
  return path.starts_with("station/batch/") || path.starts_with("demo/visit/") || path == "qml/main.cpp";
}

std::vector<std::string> includes_of(const fs::path& file) {
  static const std::regex include{R"(^\s*#\s*include\s*[<"]([^>"]+)[>"])"};
  std::vector<std::string> out;
  std::ifstream in(file);
  std::smatch match;
  for (std::string line; std::getline(in, line);)
    if (std::regex_search(line, match, include)) out.push_back(match[1]);
  return out;
}

TEST(Arrows, PointOneWay) {
  const fs::path top = BRIMLINE_SOURCE_DIR;
  size_t files = 0;
  for (const char* room : kRooms)
    for (const auto& entry : fs::recursive_directory_iterator(top / room)) {
      const auto extension = entry.path().extension();
      if (extension != ".h" && extension != ".cpp") continue;
      const std::string path = fs::relative(entry.path(), top).string();
      if (is_main_file(path)) continue;
      ++files;
      for (const std::string& include : includes_of(entry.path()))
        EXPECT_EQ(broken_arrow(room, include), "") << path << " includes " << include;
    }
  EXPECT_GT(files, 10u);
}

// The judge itself must be able to say no.
TEST(Arrows, TheJudgeSaysNo) {
  EXPECT_NE(broken_arrow("analysis", "station/visit.h"), "");
  EXPECT_NE(broken_arrow("analysis", "QString"), "");
  EXPECT_NE(broken_arrow("station", "QPainter"), "");
  EXPECT_NE(broken_arrow("station", "devices/bench.h"), "");
  EXPECT_NE(broken_arrow("printing", "qml/models/desk.h"), "");
  EXPECT_NE(broken_arrow("devices", "QSqlQuery"), "");
  EXPECT_EQ(broken_arrow("station", "QSqlQuery"), "");
  EXPECT_EQ(broken_arrow("printing", "station/visit.h"), "");
}

TEST(Layout, TopLevelHoldsOnlyWhatItMay) {
  const std::set<std::string> allowed = {
      "CMakeLists.txt", "CMakePresets.json", "README.md", "DEVELOPERS.md", "LICENSE", "station",
      "analysis",       "devices",           "qml",       "printing",      "tests",   "demo",
      "build"};
  for (const auto& entry : fs::directory_iterator(BRIMLINE_SOURCE_DIR)) {
    const std::string name = entry.path().filename().string();
    if (name[0] == '.') continue;
    EXPECT_TRUE(allowed.contains(name) || name.starts_with("build-")) << name;
  }
}

}  // namespace
