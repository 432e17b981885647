// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/first_start.h"

#include <QCoreApplication>

#include <array>

namespace brimline {
namespace {

struct StartPage {
  const char* shelf;
  const char* title;
};

constexpr std::array kPages = {
    StartPage{"screen", QT_TRANSLATE_NOOP("first_start", "Which language do you read?")},
    StartPage{"shop", QT_TRANSLATE_NOOP("first_start", "Whose counter is this?")},
    StartPage{"instrument", QT_TRANSLATE_NOOP("first_start", "What measures here?")},
    StartPage{"staff", QT_TRANSLATE_NOOP("first_start", "Who may change what is set here?")}};

}  // namespace

FirstStart::FirstStart(BackDesk& back, QObject* parent) : QObject(parent), back_(back) {
  connect(&back.staff(), &StaffForm::kept, this, [this] {
    if (shown() && last()) leave();
  });
}

bool FirstStart::last() const {
  return step_ + 1 == static_cast<int>(kPages.size());
}

QString FirstStart::title() const {
  if (!shown()) return {};
  return QCoreApplication::translate("first_start", kPages[static_cast<size_t>(step_)].title);
}

QString FirstStart::progress() const {
  return tr("%1 of %2").arg(step_ + 1).arg(kPages.size());
}

void FirstStart::go(int step) {
  step_ = step;
  back_.setShelf(QString::fromLatin1(shown() ? kPages[static_cast<size_t>(step_)].shelf : "instrument"));
  emit changed();
}

void FirstStart::begin() {
  go(0);
}

void FirstStart::next() {
  // The PIN is worked into a hash beside the screen: the page is left when that is kept.
  if (last() && !back_.staff().blank()) return back_.apply();
  if (!last()) back_.apply();
  go(last() ? -1 : step_ + 1);
}

void FirstStart::back() {
  if (step_ > 0) go(step_ - 1);
}

void FirstStart::leave() {
  go(-1);
}

}  // namespace brimline
