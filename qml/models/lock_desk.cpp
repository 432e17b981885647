// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/lock_desk.h"

#include <QEvent>

namespace brimline {

LockDesk::LockDesk(Counter& counter, const Settings& settings, QObject* parent)
    : QObject(parent), counter_(counter), settings_(settings) {
  idle_.setSingleShot(true);
  connect(&idle_, &QTimer::timeout, this, &LockDesk::lock);
  counter_.sign_as([this] { return here_ ? here_->name : std::string(); });
  refresh();
}

LockDesk::~LockDesk() {
  pool_.wait();
}

void LockDesk::refresh() {
  staff_ = counter_.records().staff();
  const bool was_open = known_ && people_.isEmpty();
  people_.clear();
  for (const StaffMember& member : staff_)
    if (!member.gone)
      people_.append(QVariantMap{{"key", QString::fromStdString(member.id)},
                                 {"word", QString::fromStdString(member.name)}});
  if (here_) {
    const std::string id = here_->id;
    here_.reset();
    for (const StaffMember& member : staff_)
      if (member.id == id && !member.gone) here_ = member;
  }
  // Who writes the first one down is taken for them: nobody else could have.
  if (was_open && !here_)
    for (const StaffMember& member : staff_)
      if (!member.gone && member.role == StaffRole::keeper) here_ = member;
  // At the start, and when the one who is here was let go; who writes the first staff down is not shut out.
  if (!known_ || (locked_ && !staffed())) locked_ = staffed() && !here_;
  known_ = true;
  rest();
  emit changed();
}

QString LockDesk::who() const {
  return here_ ? QString::fromStdString(here_->name) : QString();
}

bool LockDesk::keeper() const {
  return !staffed() || (here_ && here_->role == StaffRole::keeper) || !known_;
}

void LockDesk::say(const QString& sentence) {
  says_ = sentence;
  emit changed();
}

void LockDesk::choose(const QString& id) {
  chosen_ = id;
  pin_.clear();
  say({});
}

void LockDesk::press(const QString& key) {
  if (busy_) return;
  const bool digit = key.size() == 1 && key[0] >= u'0' && key[0] <= u'9';
  if (key == QLatin1String("back"))
    pin_.chop(1);
  else if (digit && chosen_.isEmpty())
    return say(tr("Choose a name first."));
  else if (digit && pin_.size() < 12)
    pin_ += key;
  say({});
}

void LockDesk::enter() {
  if (busy_ || chosen_.isEmpty() || pin_.isEmpty()) return;
  const auto begun = counter_.records().begin_pin_try(chosen_.toStdString());
  const std::string pin = pin_.toStdString();
  pin_.clear();
  if (!begun) return say(QString::fromStdString(begun.error()));
  if (begun->wait_s > 0) return say(tr("Too many wrong PINs: wait %1 seconds.").arg(begun->wait_s));
  busy_ = true;
  emit changed();
  pool_.start([this, pin, id = chosen_.toStdString(), hash = begun->hash] {
    const bool right = is_pin_of(pin, hash);
    QMetaObject::invokeMethod(
        this, [this, id, right] { tried(id, right); }, Qt::QueuedConnection);
  });
}

void LockDesk::tried(const std::string& id, bool right) {
  busy_ = false;
  (void)counter_.records().end_pin_try(id, right);
  if (!right) return say(tr("That is not the PIN."));
  for (const StaffMember& member : staff_)
    if (member.id == id && !member.gone) here_ = member;
  locked_ = !here_;
  says_.clear();
  rest();
  emit changed();
}

void LockDesk::lock() {
  if (!staffed()) return;
  here_.reset();
  locked_ = true;
  pin_.clear();
  chosen_.clear();
  if (people_.size() == 1) chosen_ = people_.front().toMap().value("key").toString();
  says_.clear();
  idle_.stop();
  emit changed();
}

void LockDesk::rest() {
  if (settings_.idle_minutes > 0 && staffed() && !locked_)
    idle_.start(settings_.idle_minutes * 60000);
  else
    idle_.stop();
}

bool LockDesk::eventFilter(QObject* watched, QEvent* event) {
  switch (event->type()) {
    case QEvent::KeyPress:
    case QEvent::MouseButtonPress:
    case QEvent::MouseMove:
    case QEvent::TouchBegin:
    case QEvent::Wheel:
      rest();
      break;
    default:
      break;
  }
  return QObject::eventFilter(watched, event);
}

}  // namespace brimline
