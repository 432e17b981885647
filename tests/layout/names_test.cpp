// SPDX-License-Identifier: GPL-3.0-or-later
// One name, one type: two types of the same name in the same namespace break the one-definition rule
// (ISO/IEC 14882:2020, [basic.def.odr]) without a word from compiler or linker, when they meet in one
// program.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace fs = std::filesystem;

namespace {

using Places = std::map<std::string, std::set<std::string>>;

// Adds the types that `lines` define at namespace scope, by full name. What an unnamed namespace holds is its
// file's own and is passed over; so is a mere declaration.
void note_types(std::istream& lines, const std::string& file, Places& places) {
  static const std::regex opens{R"(^(inline )?namespace ?([A-Za-z_:]*) ?\{$)"};
  static const std::regex closes{R"(^\}  // (inline )?namespace.*)"};
  static const std::regex defines{
      R"(^(struct|class|enum class|enum) ([A-Za-z_]+)( final)?( :.*|: .*)?( \{.*)?$)"};
  std::vector<std::string> inside;
  std::smatch found;
  for (std::string line; std::getline(lines, line);) {
    if (std::regex_match(line, found, opens)) {
      inside.push_back(found[2]);
    } else if (std::regex_match(line, closes) && !inside.empty()) {
      inside.pop_back();
    } else if (!line.empty() && line.back() != ';' && std::regex_match(line, found, defines)) {
      std::string name;
      bool own = false;
      for (const auto& space : inside) {
        own = own || space.empty();
        name += space + "::";
      }
      if (!own && !inside.empty()) places[name + found[2].str()].insert(file);
    }
  }
}

Places types_of_tree(const fs::path& top) {
  Places places;
  for (const char* room : {"analysis", "devices", "station", "printing", "qml", "demo", "tests"})
    for (const auto& entry : fs::recursive_directory_iterator(top / room))
      if (entry.path().extension() == ".h" || entry.path().extension() == ".cpp") {
        std::ifstream lines{entry.path()};
        note_types(lines, fs::relative(entry.path(), top).string(), places);
      }
  return places;
}

TEST(Names, NoTwoTypesShareOne) {
  const Places places = types_of_tree(BRIMLINE_SOURCE_DIR);
  EXPECT_GT(places.size(), 100U);
  for (const auto& [name, files] : places) {
    std::string list;
    for (const auto& file : files) list += "\n  " + file;
    EXPECT_EQ(files.size(), 1U) << name << " is defined in" << list;
  }
}

TEST(Names, ASecondTypeIsSeen) {
  Places places;
  std::istringstream one{
      "namespace brimline {\nstruct Lot {\n};\nstruct Cup;\nnamespace {\nclass Pad {\n};\n}  // namespace\n"
      "}  // namespace brimline\n"};
  note_types(one, "one.h", places);
  std::istringstream two{
      "namespace brimline {\nclass Lot final : public Cup {\n};\nstruct Cup {\n};\n"
      "namespace {\nclass Pad {\n};\n}  // namespace\n}  // namespace brimline\n"};
  note_types(two, "two.h", places);
  EXPECT_EQ(places["brimline::Lot"].size(), 2U);
  EXPECT_EQ(places["brimline::Cup"].size(), 1U);
  EXPECT_FALSE(places.contains("brimline::Pad"));
}

}  // namespace
