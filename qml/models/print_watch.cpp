// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/print_watch.h"

namespace brimline {

PrintWatch::PrintWatch(const Services& services, QObject* parent)
    : QObject(parent), report_(services.report), take_back_(services.take_back) {
  timer_.setInterval(400);
  connect(&timer_, &QTimer::timeout, this, &PrintWatch::ask);
}

PrintWatch::~PrintWatch() {
  pool_.wait();
}

void PrintWatch::say(const QString& sentence) {
  const QString next = bottle_.isEmpty() ? sentence : bottle_ + QStringLiteral(": ") + sentence;
  if (next == text_) return;
  text_ = next;
  emit changed();
}

void PrintWatch::follow(const PrintJob& job, const std::string& bottle, const std::string& language) {
  job_ = job;
  bottle_ = QString::fromStdString(bottle);
  language_ = language;
  asking_ = false;
  say(tr("sent to the printer"));
  timer_.start();
  ask();
}

void PrintWatch::ask() {
  if (!job_ || asking_) return;
  asking_ = true;
  pool_.start([this, job = *job_, language = language_, report = report_] {
    JobReport heard = report(job, language);
    QMetaObject::invokeMethod(this, [this, id = job.id, heard = std::move(heard)] { hear(id, heard); });
  });
}

void PrintWatch::hear(int job, const JobReport& report) {
  if (!job_ || job_->id != job) return;  // of one that is followed no more
  asking_ = false;
  QString sentence = QString::fromStdString(report.text);
  const bool over = is_over(report.state);
  if (report.state == JobState::stopped || report.state == JobState::waiting)
    sentence += " " + tr("It comes out by itself once that is mended: do not print it again.");
  if (over) {
    job_.reset();
    timer_.stop();
    emit changed();
  }
  say(sentence);
}

void PrintWatch::take_back() {
  if (!job_) return;
  pool_.start([this, job = *job_, take_back = take_back_] {
    const bool taken = take_back(job);
    QMetaObject::invokeMethod(this, [this, id = job.id, taken] {
      if (taken || !job_ || job_->id != id) return;  // what the print service says of it next is heard
      job_.reset();
      timer_.stop();
      say(tr("The print service does not let it be taken back: look at the printer before printing again."));
      emit changed();
    });
  });
}

void PrintWatch::forget() {
  if (job_ || text_.isEmpty()) return;
  text_.clear();
  emit changed();
}

}  // namespace brimline
