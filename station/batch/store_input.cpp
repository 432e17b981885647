// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/batch/store_input.h"

#include <clocale>
#include <csignal>

#include <QCoreApplication>

namespace brimline::batch {

class QCoreApplicationHolder {
 public:
  QCoreApplicationHolder() : application_(count_, words_) {}

 private:
  int count_ = 1;
  char name_[15] = "brimline-batch";
  char* words_[2] = {name_, nullptr};
  QCoreApplication application_;
};

DatabaseProgram::DatabaseProgram() : application_(std::make_unique<QCoreApplicationHolder>()) {
  std::setlocale(LC_NUMERIC, "C");
  std::signal(SIGXFSZ, SIG_IGN);
}
DatabaseProgram::~DatabaseProgram() = default;

int store_failed(std::string_view command, const StoreError& error) {
  return bad_usage(command, error.text);
}

int with_store(std::string_view command, const Parsed& parsed, Opening opening,
               const std::function<int(Store&)>& work) {
  const auto url = parsed.value("--database");
  if (!url)
    return bad_usage(command, "no store is named; expected --database sqlite:FILE or postgresql://...");
  const DatabaseProgram program;
  auto store = Store::open(*url, opening);
  if (!store) return store_failed(command, store.error());
  return work(*store);
}

}  // namespace brimline::batch
