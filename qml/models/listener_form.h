// SPDX-License-Identifier: GPL-3.0-or-later
// The Back room's listener: what an unknown instrument sends, which profile understands it, and a draft of a
// new one.
#pragma once

#include <QObject>
#include <QVariantMap>

#include <memory>

#include "devices/profile_trial.h"
#include "qml/models/settings.h"

namespace brimline {

class ListenerForm : public QObject {
  Q_OBJECT

 public:
  // `folder`: of the shop's own profiles, where drafts go too.
  ListenerForm(Settings& settings, QString folder, QObject* parent = nullptr);

  QList<QVariantMap> fields(int line) const;
  QList<QVariantMap> rows() const;  // the profiles tried, then what was heard
  QString act_word() const;
  bool set(const QString& key, const QString& text, int line);  // true: the fields are to be shown anew
  // Begins, stops, uses or drafts; what is said of it. `applied`: the line's profile has changed.
  QString act(int line, bool& applied);
  bool running() const { return trial_ && trial_->running(); }
  QString progress() const;
  void stop();

 signals:
  void began();  // the port is wanted: nobody else may listen
  void moved();
  void ended();
  void heard(const brimline::InstrumentReading& reading, const QString& profile);  // of the one that fits

 private:
  QString draft() const;
  QString use(int line, bool& applied) const;

  Settings& settings_;
  QString folder_;
  QString want_ = QStringLiteral("listen");
  std::unique_ptr<ProfileTrial> trial_;
};

}  // namespace brimline
