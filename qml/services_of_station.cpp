// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/services_of_station.h"

#include <QDir>
#include <QFileInfo>
#include <QSaveFile>
#include <QThread>

#include "analysis/findings/targets.h"
#include "analysis/panel/analyte.h"
#include "printing/emergency_card.h"
#include "printing/labels.h"
#include "printing/pdf.h"
#include "printing/queue.h"
#include "printing/readings_table.h"
#include "printing/reminder.h"
#include "printing/slips.h"
#include "printing/week_sheet.h"
#include "qml/models/settings.h"
#include "station/plan/plan_service.h"
#include "station/plan/shop_targets.h"
#include "station/shelf/shop_shelf.h"

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

// What every plan of this counter rests on.
struct PlanGround {
  TargetSet targets;
  Shelf shelf;
  ShopSettings settings;
};

// Beside the settings: the shop's own shelf (station/shelf/shop_shelf.h).
std::string shelf_folder(const QString& settings_file) {
  return settings_file.isEmpty() ? std::string()
                                 : QFileInfo(settings_file).dir().filePath("shelf").toStdString();
}

// Beside the settings: the shop's own copy of the household targets (station/plan/shop_targets.h).
std::string targets_file(const QString& settings_file) {
  return settings_file.isEmpty() ? std::string()
                                 : QFileInfo(settings_file).dir().filePath("targets.toml").toStdString();
}

// Water that is open to others goes by the code the shop has chosen for it.
tl::expected<TargetSet, std::vector<Fault>> targets_of(const QString& settings_file, const Visit& visit) {
  const std::string code = load_settings(settings_file).code.toStdString();
  if (visit.vessel.use == VesselUse::public_use && !code.empty()) return targets_named(code);
  return shop_targets(targets_file(settings_file));
}

std::map<AnalyteId, Target> wanted_of(const QString& settings_file, const Visit& visit,
                                      std::optional<double> cyanuric_acid, std::optional<double> ph) {
  std::map<AnalyteId, Target> out;
  const auto targets = targets_of(settings_file, visit);
  if (!targets) return out;
  const TargetCase asked = case_of(visit.vessel, cyanuric_acid, ph);
  for (const AnalyteKind& kind : analyte_kinds())
    if (const auto aim = targets->find(kind.id, asked)) out[kind.id] = aim->range;
  return out;
}

tl::expected<PlanGround, std::string> ground_of(const QString& settings_file, const Visit& visit,
                                                const ShopDetails& shop, std::optional<Instant> overnight_due,
                                                const Supplies& supplies) {
  PlanGround out;
  auto targets = targets_of(settings_file, visit);
  if (!targets) return tl::unexpected(targets.error().front().text());
  out.targets = std::move(*targets);
  auto shelf = shop_shelf(shelf_folder(settings_file));
  if (!shelf) return tl::unexpected(shelf.error().front().text());
  out.shelf = std::move(*shelf);
  if (!shop.emergency.empty()) out.settings.emergency_number = shop.emergency.front().number;
  out.settings.overnight_due = overnight_due;
  out.settings.supplies = supplies;
  return out;
}

tl::expected<Plan, std::string> plan_for(const QString& settings_file, const Visit& visit,
                                         const std::vector<Visit>& earlier, const std::string& language,
                                         const ShopDetails& shop, std::optional<Instant> overnight_due,
                                         const Supplies& supplies) {
  const auto ground = ground_of(settings_file, visit, shop, overnight_due, supplies);
  if (!ground) return tl::unexpected(ground.error());
  return make_plan(visit, earlier, ground->shelf, ground->targets, Words(language), {}, ground->settings);
}

tl::expected<Plan, std::string> changed_plan_for(const QString& settings_file, const Visit& visit,
                                                 const std::vector<Visit>& earlier,
                                                 const std::string& language, const ShopDetails& shop,
                                                 std::optional<Instant> overnight_due,
                                                 const Supplies& supplies,
                                                 const std::vector<HandOrder>& orders) {
  const auto ground = ground_of(settings_file, visit, shop, overnight_due, supplies);
  if (!ground) return tl::unexpected(ground.error());
  return make_changed_plan(visit, earlier, ground->shelf, ground->targets, orders, Words(language), {},
                           ground->settings);
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

// Written to `file`, and sent to the printer where that is wanted.
tl::expected<PaperOut, std::string> put_out(const QByteArray& bytes, const QString& file,
                                            const std::string& title, bool print, const std::string& printer,
                                            const Words& staff) {
  QSaveFile out(file);
  if (!out.open(QIODevice::WriteOnly) || out.write(bytes) != bytes.size() || !out.commit())
    return tl::unexpected(file.toStdString() + ": " + out.errorString().toStdString());
  const std::string where = "PDF: " + file.toStdString();
  if (!print) return PaperOut{where, std::nullopt};
  const auto sent = send_to_queue(queue_for(printer), bytes, title, staff);
  if (!sent) return tl::unexpected(sent.error().text + " (" + where + ")");
  return PaperOut{where, *sent};
}

tl::expected<std::string, std::string> make_labels(const LabelJob& job, const QString& out_dir) {
  if (!QDir().mkpath(out_dir)) return tl::unexpected(out_dir.toStdString() + " cannot be made");
  const Words words("en");
  const Pages pages = lay_out_labels(overnight_labels(job.test, job.visit, job.now, words), job.paper);
  const std::string title = words.say("label", phrase("label", "Labels")) + " " + job.visit.bottle.code;
  const auto bytes = pdf_bytes(pages, title);
  if (!bytes) return tl::unexpected(bytes.error().text);
  const QString file = free_file(out_dir, QString::fromStdString(job.visit.bottle.code) + "-labels");
  const auto out = put_out(*bytes, file, title, job.print, job.printer, words);
  if (!out) return tl::unexpected(out.error());
  return out->job ? told_of(*out->job, words) + " (" + out->text + ")" : out->text;
}

// A paper drawn: its bytes, its title, and what its file's name ends with.
struct Drawn {
  tl::expected<QByteArray, PrintError> bytes;
  std::string title, ending;
};

Drawn drawn_of(const SheetJob& job, const QString& settings_file) {
  const Words words(job.language);
  switch (job.kind) {
    case PaperKind::shelf_list: {
      const Shelf shelf = shop_shelf(shelf_folder(settings_file)).value_or(built_in_shelf());
      TillCodes codes = read_till_codes(settings_file.toStdString());
      for (const Product& product : shelf.products)
        if (product.barcode) codes.emplace(product.id, *product.barcode);
      const ShelfSlip slip = make_shelf_slip(job.visit, shelf, codes, job.shop, words);
      return {pdf_bytes(lay_out(slip, job.paper), slip.title), slip.title, "-shelf"};
    }
    case PaperKind::staff_copy: {
      const StaffCopy copy = make_staff_copy(job.visit, job.shop, words);
      return {pdf_bytes(lay_out(copy, job.paper), copy.title), copy.title, "-staff"};
    }
    case PaperKind::bottle_label: {
      const std::string title = words.say("label", phrase("label", "Labels"));
      return {pdf_bytes(lay_out({label_of(job.visit, job.shop, words)}, job.paper), title), title, "-label"};
    }
    case PaperKind::emergency_card: {
      const EmergencyCard card = make_emergency_card(job.shop, words);
      return {pdf_bytes(lay_out(card, job.paper), card.title), card.title, "emergency"};
    }
    case PaperKind::reminder: {
      const DueVisit due{job.visit, due_of(job.visit).value_or(job.now)};
      const Reminder reminder = make_reminder(due, job.shop, words, job.now);
      return {pdf_bytes(lay_out(reminder, job.paper), reminder.title), reminder.title, "-reminder"};
    }
    case PaperKind::week: {
      const WeekSheet sheet = make_week_sheet(job.week.value_or(OwnersWeek{}), job.shop, words);
      return {pdf_bytes(lay_out(sheet, job.paper), sheet.title), sheet.title, "week"};
    }
    case PaperKind::sheet:
      break;
  }
  SheetOptions options;
  options.history = job.earlier;
  if (const auto targets = targets_of(settings_file, job.visit))
    options.targets = regime_targets(job.visit, &*targets);
  const Visit* last = job.earlier.empty() ? nullptr : &job.earlier.back();
  const Sheet sheet = make_sheet(job.visit, last, job.shop, words, options);
  return {pdf_bytes(sheet, Edition{job.paper, job.large}), sheet.titles.sheet, ""};
}

tl::expected<PaperOut, std::string> make_paper(const SheetJob& job, const QString& out_dir,
                                               const QString& settings_file) {
  if (!QDir().mkpath(out_dir)) return tl::unexpected(out_dir.toStdString() + " cannot be made");
  const Drawn drawn = drawn_of(job, settings_file);
  if (!drawn.bytes) return tl::unexpected(drawn.bytes.error().text);
  const std::string bottle =
      job.kind == PaperKind::emergency_card || job.week ? std::string() : job.visit.bottle.code;
  const QString file = free_file(out_dir, QString::fromStdString(bottle + drawn.ending));
  return put_out(*drawn.bytes, file, bottle.empty() ? drawn.title : drawn.title + " " + bottle, job.print,
                 job.printer, Words(job.staff_language));
}

}  // namespace

Services services_of_station(const QString& out_dir, const QString& settings_file) {
  Services services;
  services.plan = [settings_file](const auto&... of) { return plan_for(settings_file, of...); };
  services.change = [settings_file](const auto&... of) { return changed_plan_for(settings_file, of...); };
  services.shelf = [settings_file] {
    return shop_shelf(shelf_folder(settings_file)).value_or(built_in_shelf());
  };
  services.compare = [](const std::vector<Visit>& visits, const std::string& language) {
    return compare(visits, Words(language));
  };
  services.sheet = [out_dir, settings_file](const SheetJob& job) {
    return make_paper(job, out_dir, settings_file);
  };
  services.targets = [settings_file](const auto&... of) { return wanted_of(settings_file, of...); };
  services.report = [](const PrintJob& job, const std::string& language) {
    return job_report(job, Words(language));
  };
  services.take_back = cancel_job;
  services.labels = [out_dir](const LabelJob& job) { return make_labels(job, out_dir); };
  return services;
}

}  // namespace brimline
