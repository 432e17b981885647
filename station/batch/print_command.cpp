// SPDX-License-Identifier: GPL-3.0-or-later
// print: a visit as the sheet the customer takes home.
#include <QGuiApplication>
#include <iostream>

#include "printing/pdf.h"
#include "station/batch/commands.h"
#include "station/batch/usage.h"
#include "station/batch/visit_input.h"
#include "station/plan/plan_service.h"

namespace brimline::batch {
namespace {

struct PrintJob {
  std::string visit, out;
  std::optional<std::string> language, shelf;
  std::vector<std::string> earlier;
  const TargetSet* targets = nullptr;
  Edition edition;
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
  if (const auto language = parsed.value("--language")) {
    if (*language != "en" && *language != "es" && *language != "fr")
      return tl::unexpected("--language is " + *language + "; expected en, es or fr");
    job.language = language;
  }
  const std::string targets = parsed.value("--targets").value_or("household");
  job.targets = find_targets(targets);
  if (!job.targets) return tl::unexpected("unknown targets " + targets);
  job.shelf = parsed.value("--shelf");
  job.edition.large = parsed.has("--large");
  if (const auto earlier = parsed.values.find("--earlier"); earlier != parsed.values.end())
    job.earlier = earlier->second;
  return job;
}

// Fonts need a QGuiApplication, but no display: letters are measured and drawn in memory.
int draw(const Sheet& sheet, const PrintJob& job) {
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  // What Qt would like to say of the machine is no fault of the input.
  qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
  char name[] = "brimline-batch";
  char* arguments[] = {name, nullptr};
  int count = 1;
  QGuiApplication application(count, arguments);
  const auto written = write_pdf(sheet, job.out, job.edition);
  if (written) return kDone;
  std::cerr << written.error().text << "\n";
  return kBadInput;
}

}  // namespace

int print_command(const Arguments& arguments) {
  const auto parsed =
      parse(arguments, {"--out", "--paper", "--language", "--earlier", "--shelf", "--targets"}, {"--large"});
  if (!parsed) return bad_usage("print", parsed.error());
  const auto job = job_of(*parsed);
  if (!job) return bad_usage("print", job.error());
  auto visit = read_visit_file(job->visit);
  if (!visit) return bad_input(visit.error());
  const auto earlier = read_visit_files(job->earlier);
  if (!earlier) return bad_input(earlier.error());
  const auto told = visit->customer ? visit->customer->language : std::nullopt;
  const Words words(job->language.value_or(told.value_or("en")));
  if (!visit->plan_as_told) {
    const auto shelf =
        job->shelf ? read_shelf(*job->shelf) : tl::expected<Shelf, std::vector<Fault>>(built_in_shelf());
    if (!shelf) return bad_input(shelf.error());
    visit->plan_as_told = make_plan(*visit, *earlier, *shelf, *job->targets, words);
  }
  const Visit* last = earlier->empty() ? nullptr : &earlier->back();
  ShopDetails shop;  // no shop is named here; the emergency number is the one the plan's words use
  shop.emergency = {{words.say("sheet", phrase("sheet", "Emergency")), ShopSettings{}.emergency_number}};
  return draw(make_sheet(*visit, last, shop, words), *job);
}

}  // namespace brimline::batch
