// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet on its way to the printer, asked after until it is printed, cancelled or given up. It is sent once;
// what the printer does not print by itself is offered again, never sent again.
#pragma once

#include <QObject>
#include <QTimer>

#include <optional>

#include "qml/models/back_pool.h"
#include "qml/models/services.h"

namespace brimline {

class PrintWatch : public QObject {
  Q_OBJECT

 public:
  explicit PrintWatch(const Services& services, QObject* parent = nullptr);
  ~PrintWatch() override;

  // `bottle` is said before every sentence: the next bottle may be on the counter by then.
  void follow(const PrintJob& job, const std::string& bottle, const std::string& language);
  bool waits() const { return job_.has_value(); }  // it may still come out
  QString text() const { return text_; }
  void take_back();
  void forget();  // says nothing more of a job that is over

 signals:
  void changed();

 private:
  void ask();
  void hear(int job, const JobReport& report);
  void say(const QString& sentence);

  decltype(Services::report) report_;
  decltype(Services::take_back) take_back_;
  std::optional<PrintJob> job_;
  QString bottle_, text_;
  std::string language_;
  bool asking_ = false;
  QTimer timer_;
  BackPool pool_;
};

}  // namespace brimline
