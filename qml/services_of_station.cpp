// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/services_of_station.h"

#include <QDir>
#include <QFileInfo>
#include <QSaveFile>
#include <QThread>

#include "analysis/findings/targets.h"
#include "printing/labels.h"
#include "printing/pdf.h"
#include "printing/queue.h"
#include "station/plan/plan_service.h"
#include "station/shelf/shelf.h"

namespace brimline {
namespace {

// CODE.pdf, and CODE-2.pdf where that is taken: a sheet that was handed out is never replaced.
QString free_file(const QString& folder, QString code) {
  if (code.isEmpty()) code = QStringLiteral("sheet");
  code.replace('/', '_');
  QString file = QStringLiteral("%1/%2.pdf").arg(folder, code);
  for (int n = 2; QFileInfo::exists(file); ++n)
    file = QStringLiteral("%1/%2-%3.pdf").arg(folder, code).arg(n);
  return file;
}

tl::expected<Plan, std::string> plan_for(const Visit& visit, const std::vector<Visit>& earlier,
                                         const std::string& language, const ShopDetails& shop,
                                         std::optional<Instant> overnight_due, const Supplies& supplies) {
  const TargetSet* targets = find_targets("household");
  if (!targets) return tl::unexpected(std::string("the target set `household` is not built in"));
  ShopSettings settings;
  if (!shop.emergency.empty()) settings.emergency_number = shop.emergency.front().number;
  settings.overnight_due = overnight_due;
  settings.supplies = supplies;
  return make_plan(visit, earlier, built_in_shelf(), *targets, Words(language), {}, settings);
}

// The queue named, else the machine's usual one.
std::string queue_for(const std::string& printer) {
  if (!printer.empty()) return printer;
  const std::vector<PrintQueue> queues = print_queues();
  return queues.empty() ? std::string() : queues.front().name;
}

// What becomes of the job: until it is printed, or has stood still for two seconds, or ten are over. A
// stopped sheet stays with the print service, which prints it, once, when the printer is ready again.
std::string told_of(const PrintJob& job, const Words& words) {
  JobReport report = job_report(job, words);
  int stopped = 0;
  for (int i = 0; i < 100 && !is_over(report.state) && stopped < 20; ++i) {
    QThread::msleep(100);
    report = job_report(job, words);
    stopped = report.state == JobState::stopped ? stopped + 1 : 0;
  }
  if (report.state == JobState::stopped || report.state == JobState::waiting)
    report.text +=
        " " + words.say("printer", phrase("printer",
                                          "The sheet comes out by itself once that is mended: do not "
                                          "print it again."));
  return report.text;
}

// Written to `file`, and sent to the printer where that is wanted; where it went, as a sentence.
tl::expected<std::string, std::string> put_out(const QByteArray& bytes, const QString& file,
                                               const std::string& title, bool print,
                                               const std::string& printer) {
  QSaveFile out(file);
  if (!out.open(QIODevice::WriteOnly) || out.write(bytes) != bytes.size() || !out.commit())
    return tl::unexpected(file.toStdString() + ": " + out.errorString().toStdString());
  if (!print) return "PDF: " + file.toStdString();
  const Words staff("en");
  const auto sent = send_to_queue(queue_for(printer), bytes, title, staff);
  if (!sent) return tl::unexpected(sent.error().text + " (PDF: " + file.toStdString() + ")");
  return told_of(*sent, staff) + " (PDF: " + file.toStdString() + ")";
}

tl::expected<std::string, std::string> make_labels(const LabelJob& job, const QString& out_dir) {
  if (!QDir().mkpath(out_dir)) return tl::unexpected(out_dir.toStdString() + " cannot be made");
  const Words words("en");
  const Pages pages = lay_out_labels(overnight_labels(job.test, job.visit, job.now, words), job.paper);
  const std::string title = words.say("label", phrase("label", "Labels")) + " " + job.visit.bottle.code;
  const auto bytes = pdf_bytes(pages, title);
  if (!bytes) return tl::unexpected(bytes.error().text);
  const QString file = free_file(out_dir, QString::fromStdString(job.visit.bottle.code) + "-labels");
  return put_out(*bytes, file, title, job.print, job.printer);
}

tl::expected<std::string, std::string> make_paper(const SheetJob& job, const QString& out_dir) {
  if (!QDir().mkpath(out_dir)) return tl::unexpected(out_dir.toStdString() + " cannot be made");
  SheetOptions options;
  options.history = job.earlier;
  const Visit* last = job.earlier.empty() ? nullptr : &job.earlier.back();
  const Sheet sheet = make_sheet(job.visit, last, job.shop, Words(job.language), options);
  const QString file = free_file(out_dir, QString::fromStdString(job.visit.bottle.code));
  const auto bytes = pdf_bytes(sheet, Edition{job.paper, job.large});
  if (!bytes) return tl::unexpected(bytes.error().text);
  return put_out(*bytes, file, sheet.titles.sheet, job.print, job.printer);
}

}  // namespace

Services services_of_station(const QString& out_dir) {
  Services services;
  services.plan = plan_for;
  services.compare = [](const std::vector<Visit>& visits, const std::string& language) {
    return compare(visits, Words(language));
  };
  services.sheet = [out_dir](const SheetJob& job) { return make_paper(job, out_dir); };
  services.labels = [out_dir](const LabelJob& job) { return make_labels(job, out_dir); };
  return services;
}

}  // namespace brimline
