// SPDX-License-Identifier: GPL-3.0-or-later
// Whom the tables of an import speak of: cards and vessels from the files, and those in the records.
#pragma once

#include <map>
#include <set>

#include "station/records/import.h"

namespace brimline {

// An id made of what is known: the same parts, the same id. "C-" and 64 bits of their SHA-256.
std::string stable_id(const char* prefix, const std::vector<std::string>& parts);
// A person as they are told apart: the name without case and accents.
std::string folded_name(const std::string& name);

class ImportPeople {
 public:
  explicit ImportPeople(Store& store) : store_(store) {}
  Stored<void> begin();

  // The customers' table, row by row.
  void read(ImportTable& table, Import& out);
  // What of the cards and vessels read is new.
  Stored<void> settle(Import& out);

  // Of a row of readings: the customer and vessel it names; nothing, with a fault at the row, where there are
  // none or several.
  struct Owner {
    std::string customer, vessel;
  };
  std::optional<Owner> owner_of(ImportTable& row);
  const Customer* card(const std::string& id);
  Vessel vessel(const std::string& id);
  bool erased(const std::string& id) const { return erased_.contains(id); }

  static std::span<const ImportColumn> columns();
  const std::optional<StoreError>& trouble() const { return trouble_; }

 private:
  struct OwnedVessel {
    Vessel vessel;
    std::string customer;
    bool from_file = false;
  };
  struct Card {
    Customer customer;
    bool from_file = false;
    bool stored = false;  // in the records
    bool gained = false;  // the file fills something in
  };
  Card* find(const std::string& id);
  OwnedVessel* find_vessel(const std::string& id);
  std::vector<std::string> vessels_of(const std::string& customer);
  void take_card(ImportTable& row, const Customer& said, Import& out);
  void take_vessel(ImportTable& row, const Vessel& said, const std::string& customer, Import& out);
  std::optional<std::string> customer_named(ImportTable& row, const std::string& name);
  template <class T>
  std::optional<T> or_trouble(Stored<T> stored) {
    if (stored) return std::move(*stored);
    trouble_ = stored.error();
    return std::nullopt;
  }

  Store& store_;
  std::set<std::string> erased_;
  std::map<std::string, Card> cards_;
  std::vector<std::string> order_, vessel_order_;  // those of the files
  std::map<std::string, OwnedVessel> vessels_;
  std::set<std::string> looked_for_, vessels_known_;  // customers asked for; whose vessels were
  std::map<std::string, std::set<std::string>> by_name_, by_customer_;
  std::optional<StoreError> trouble_;
};

}  // namespace brimline
