// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/back_paper.h"

namespace brimline {

SheetJob BackPaper::job(PaperKind kind, const std::string& language, bool print) const {
  SheetJob job;
  job.kind = kind;
  job.now = counter_.now();
  job.shop = settings_.shop;
  job.staff_language = counter_.words().language();
  job.language = language;
  job.paper = paper_named(settings_.paper.toStdString()).value_or(Paper::letter);
  job.print = print;
  job.printer = settings_.printer.toStdString();
  return job;
}

void BackPaper::make(const SheetJob& job) {
  pool_.start([this, job, sheet = services_.sheet] {
    const auto made = sheet(job);
    const QString sentence = QString::fromStdString(made ? made->text : made.error());
    const QString whole = made && made->job ? tr("Sent to the printer. %1").arg(sentence) : sentence;
    QMetaObject::invokeMethod(
        this, [this, whole] { emit said(whole); }, Qt::QueuedConnection);
  });
}

}  // namespace brimline
