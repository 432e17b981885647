// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/beside.h"

#include <QElapsedTimer>

namespace brimline {
namespace {

constexpr qint64 kBetweenWords = 200;  // ms

}  // namespace

Beside::Beside(Counter& counter) : counter_(counter), stopped_(std::make_shared<std::atomic<bool>>(false)) {}

Beside::~Beside() {
  *stopped_ = true;
  pool_.wait();
}

void Beside::stop() {
  if (!busy_) return;
  *stopped_ = true;
  busy_ = false;
  emit moved();
}

void Beside::run(Job job) {
  *stopped_ = true;
  stopped_ = std::make_shared<std::atomic<bool>>(false);
  busy_ = true;
  percent_ = 0;
  pool_.start([this, job = std::move(job), stopped = stopped_, url = counter_.records().shared_place()] {
    if (*stopped) return;
    QElapsedTimer since;
    since.start();
    const Progress progress = [&](double share) {
      if (since.elapsed() > kBetweenWords) {
        since.restart();
        QMetaObject::invokeMethod(
            this,
            [this, stopped, percent = qRound(share * 100)] {
              if (*stopped) return;
              percent_ = percent;
              emit moved();
            },
            Qt::QueuedConnection);
      }
      return !*stopped;
    };
    auto show = job(Store::open(url, Opening::existing), progress);
    QMetaObject::invokeMethod(
        this,
        [this, stopped, show = std::move(show)] {
          if (*stopped) return;
          busy_ = false;
          show();
          emit moved();
        },
        Qt::QueuedConnection);
  });
}

}  // namespace brimline
