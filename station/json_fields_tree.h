// SPDX-License-Identifier: GPL-3.0-or-later
// What JsonFields reads in: the document as a tree that keeps its lines and who asked for what. Of JsonFields
// alone.
#pragma once

#include <deque>

#include "station/json_fields.h"

namespace brimline {

struct JsonFields::Node {
  enum class Kind { null, flag, number, text, list, object };
  struct Member;
  Kind kind = Kind::null;
  int line = 0;
  bool flag = false;
  double number = 0;
  std::string_view text;  // of the document, or of the form it was told of
  std::vector<Node> items;
  std::vector<Member> members;
  mutable bool opened = false;  // somebody reads this object
  mutable size_t last = 0;      // the member asked for last: forms are read in order

  const Member* member(std::string_view key) const;
  const char* kind_name() const {
    static constexpr const char* names[] = {"null", "true or false", "a number",
                                            "text", "a list",        "an object"};
    return names[static_cast<size_t>(kind)];
  }
};

struct JsonFields::Node::Member {
  std::string_view key;
  int line = 0;
  Node value;
  mutable bool asked = false;
};

struct JsonFields::Document {
  std::string file;
  Node root;
  std::vector<Fault> faults;
  std::deque<std::string> texts;  // what a parser read
  std::string_view keep(std::string text) { return texts.emplace_back(std::move(text)); }
};

// How faults quote a key.
std::string ticked(std::string_view key);
// What a fault quotes, whatever the file held: no control characters, and not much longer than a line.
std::string one_line(std::string text);

}  // namespace brimline
