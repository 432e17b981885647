// SPDX-License-Identifier: GPL-3.0-or-later
// A paper of the Back room, made and printed beside the screen.
#pragma once

#include <QObject>

#include "qml/models/back_pool.h"
#include "qml/models/counter.h"
#include "qml/models/services.h"
#include "qml/models/settings.h"

namespace brimline {

class BackPaper : public QObject {
  Q_OBJECT

 public:
  BackPaper(Counter& counter, Settings& settings, Services services)
      : counter_(counter), settings_(settings), services_(std::move(services)) {}
  ~BackPaper() override { pool_.wait(); }

  // To be filled with what it is of; `print`: it goes to the shop's printer, and not into a file alone.
  SheetJob job(PaperKind kind, const std::string& language, bool print) const;
  void make(const SheetJob& job);

 signals:
  void said(const QString& sentence);  // once it is made, or why it is not

 private:
  Counter& counter_;
  Settings& settings_;
  Services services_;
  BackPool pool_;
};

}  // namespace brimline
