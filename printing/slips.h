// SPDX-License-Identifier: GPL-3.0-or-later
// The counter's other papers: what is taken from the shelf to the till, the staff's copy, labels for bottles.
// Words first (slip_words.cpp), as with the take-home sheet; then laid out on the same papers.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "printing/pages.h"
#include "station/shelf/shelf.h"

namespace brimline {

// What the shop's till knows a product by: an EAN or a number of its own, by product id. A product without
// one goes by the bar code of its file, or has none.
using TillCodes = std::map<std::string, std::string>;
// The [till] part of the counter's settings file: product id = code.
TillCodes read_till_codes(const std::string& settings_file);

struct ShelfSlip {
  struct Line {
    std::string product, amount;  // all that the plan needs of it
    std::string packs;            // "2 packs of 5 L"; empty where the shelf does not say how it is sold
    std::string code;             // for the till; empty: it is typed in
  };
  std::string title, who, note, shop, footer, page;
  std::vector<Line> lines;
  std::string nothing;  // said where the plan needs nothing from the shelf
};
ShelfSlip make_shelf_slip(const Visit& visit, const Shelf& shelf, const TillCodes& codes,
                          const ShopDetails& shop, const Words& words);

struct StaffCopy {
  struct Reading {
    std::string name, value, method, instrument, lot;
  };
  struct Step {
    std::string order, when, text, amount;
  };
  std::string title, shop, answer, code, footer, page;
  std::vector<Labelled> who, basis;
  std::string readings_title, steps_title;
  std::vector<std::string> columns;  // as the members of Reading
  std::vector<Reading> readings;
  std::vector<Step> steps;
  std::string signed_by;  // beside a line to sign on
};
StaffCopy make_staff_copy(const Visit& visit, const ShopDetails& shop, const Words& words);

struct BottleLabel {
  std::string code;        // printed large and as Code 128: "B-1012"
  std::string line, shop;  // beneath it; empty lines are left out
};

// Bottle, day and shop; no name, for bottles stand where people see them.
BottleLabel label_of(const Visit& visit, const ShopDetails& shop, const Words& words);

Pages lay_out(const ShelfSlip& slip, Paper paper);
Pages lay_out(const StaffCopy& copy, Paper paper);
// Two labels a row on a sheet, with hairlines to cut along; one below the other on a roll.
Pages lay_out(const std::vector<BottleLabel>& labels, Paper paper);

}  // namespace brimline
