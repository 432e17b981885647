// SPDX-License-Identifier: GPL-3.0-or-later
// print: a visit as the sheet the customer takes home.
#include <QFileInfo>
#include <QGuiApplication>
#include <QStandardPaths>
#include <algorithm>
#include <iostream>

#include "printing/pdf.h"
#include "printing/readings_table.h"
#include "printing/slips.h"
#include "station/batch/commands.h"
#include "station/batch/usage.h"
#include "station/batch/visit_input.h"
#include "station/plan/plan_service.h"
#include "station/plan/shop_targets.h"
#include "station/store/visit_rows.h"
#include "station/wording/shop_details.h"

namespace brimline::batch {
namespace {

struct PrintJob {
  std::string visit, out;
  std::optional<std::string> language, shelf, settings;
  std::vector<std::string> earlier;
  std::string targets;
  Edition edition;
  std::string sheet = "take_home";
};

tl::expected<PrintJob, std::string> job_of(const Parsed& parsed) {
  PrintJob job;
  if (parsed.positional.size() != 1) return tl::unexpected(std::string("expected one visit file"));
  job.visit = parsed.positional.front();
  const auto out = parsed.value("--out");
  if (!out) return tl::unexpected(std::string("--out is missing; expected the name of a PDF file"));
  job.out = *out;
  if (const auto name = parsed.value("--paper")) {
    const auto paper = paper_named(*name);
    if (!paper) return tl::unexpected("--paper is " + *name + "; expected letter, a4 or roll80");
    job.edition.paper = *paper;
  }
  const auto language = language_in(parsed, "en");
  if (!language) return tl::unexpected(language.error());
  if (parsed.value("--language")) job.language = *language;
  job.targets = parsed.value("--targets").value_or("household");
  job.shelf = parsed.value("--shelf");
  job.settings = parsed.value("--settings");
  if (job.settings && !QFileInfo(QString::fromStdString(*job.settings)).isFile())
    return tl::unexpected("--settings " + *job.settings + " cannot be read; expected the shop's INI file");
  job.edition.large = parsed.has("--large");
  job.sheet = parsed.value("--sheet").value_or(job.sheet);
  if (job.sheet != "take_home" && job.sheet != "shelf" && job.sheet != "staff" && job.sheet != "label")
    return tl::unexpected("--sheet is " + job.sheet + "; expected take_home, shelf, staff or label");
  if (const auto earlier = parsed.values.find("--earlier"); earlier != parsed.values.end())
    job.earlier = earlier->second;
  return job;
}

// The settings named, else the counter's own on this machine.
std::string settings_of(const PrintJob& job) {
  const QString usual = QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation);
  return job.settings.value_or(usual.toStdString() + "/brimline/shop.ini");
}

// With no number set, the emergency number is the one the plan's words use.
ShopDetails shop_of(const PrintJob& job) {
  ShopDetails shop = read_shop_details(settings_of(job));
  if (shop.emergency.empty()) shop.emergency = {{"Emergency", ShopSettings{}.emergency_number}};
  return shop;
}

struct Printed {
  Visit visit;
  std::vector<Visit> earlier;
  const Shelf* shelf = nullptr;
  const TargetSet* targets = nullptr;
  ShopDetails shop;
};

tl::expected<QByteArray, PrintError> drawn(const Printed& what, const PrintJob& job, const Words& words) {
  const Paper paper = job.edition.paper;
  if (job.sheet == "shelf")
    return pdf_bytes(
        lay_out(make_shelf_slip(what.visit, *what.shelf, read_till_codes(settings_of(job)), what.shop, words),
                paper),
        "Shelf " + what.visit.bottle.code);
  if (job.sheet == "staff")
    return pdf_bytes(lay_out(make_staff_copy(what.visit, what.shop, words), paper),
                     "Staff " + what.visit.bottle.code);
  if (job.sheet == "label")
    return pdf_bytes(lay_out(std::vector<BottleLabel>{label_of(what.visit, what.shop, words)}, paper),
                     "Label " + what.visit.bottle.code);
  SheetOptions options;
  options.history = what.earlier;
  options.targets = regime_targets(what.visit, what.targets);
  const Visit* last = what.earlier.empty() ? nullptr : &what.earlier.back();
  return pdf_bytes(make_sheet(what.visit, last, what.shop, words, options), job.edition);
}

// Fonts need a QGuiApplication, but no display: letters are measured and drawn in memory.
int draw(const Printed& what, const PrintJob& job, const Words& words) {
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  // What Qt would like to say of the machine is no fault of the input.
  qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
  char name[] = "brimline-batch";
  char* arguments[] = {name, nullptr};
  int count = 1;
  QGuiApplication application(count, arguments);
  const auto bytes = drawn(what, job, words);
  const auto written = bytes ? write_pdf(*bytes, job.out) : tl::unexpected(bytes.error());
  if (written) return kDone;
  std::cerr << written.error().text << "\n";
  return kBadInput;
}

}  // namespace

int print_command(const Arguments& arguments) {
  const auto parsed =
      parse(arguments,
            {"--out", "--paper", "--language", "--earlier", "--shelf", "--targets", "--settings", "--sheet"},
            {"--large"});
  if (!parsed) return bad_usage("print", parsed.error());
  const auto job = job_of(*parsed);
  if (!job) return bad_usage("print", job.error());
  auto visit = read_visit_file(job->visit);
  if (!visit) return bad_input(visit.error());
  auto earlier = read_visit_files(job->earlier);
  if (!earlier) return bad_input(earlier.error());
  std::stable_sort(earlier->begin(), earlier->end(), [](const Visit& one, const Visit& other) {
    return moment_of(one) < moment_of(other);  // what is not known first
  });
  const auto told = visit->customer ? visit->customer->language : std::nullopt;
  const Words words(job->language.value_or(told.value_or("en")));
  const auto shelf =
      job->shelf ? read_shelf(*job->shelf) : tl::expected<Shelf, std::vector<Fault>>(built_in_shelf());
  if (!shelf) return bad_input(shelf.error());
  const auto targets = targets_named(job->targets);
  if (!targets) return bad_input(targets.error());
  if (!visit->plan_as_told) visit->plan_as_told = make_plan(*visit, *earlier, *shelf, *targets, words);
  return draw({std::move(*visit), *earlier, &*shelf, &*targets, shop_of(*job)}, *job, words);
}

}  // namespace brimline::batch
