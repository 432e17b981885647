// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/visit/headless_visit.h"

#include <QEventLoop>
#include <QProcess>
#include <QTimer>

#include <fstream>
#include <nlohmann/json.hpp>
#include <ostream>
#include <sstream>

#include "analysis/panel/analyte.h"
#include "demo/bottle_file.h"
#include "devices/bench.h"
#include "printing/pdf.h"
#include "printing/sheet.h"
#include "station/plan/plan_service.h"
#include "station/store/store.h"
#include "station/visit_json.h"

namespace brimline::demo {
namespace {

namespace fs = std::filesystem;

constexpr int kLongestVisitMs = 30000;  // the whole headless visit ends within 40 s
constexpr auto kProfile = "bench_lines";
constexpr const char* kPause = "0.2";  // seconds between two measurements of the emulated photometer

using Text = tl::expected<std::string, std::string>;

Text whole_file(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  if (!in) return tl::unexpected(file.string() + ":1: cannot be read; expected a file");
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

std::string first_of(const std::vector<Fault>& faults) {
  return faults.front().text();
}

// The visit of the bottle as it comes over the counter: nothing read yet.
tl::expected<Visit, std::string> unread_visit(const BottleFile& bottle, const fs::path& file) {
  if (!bottle.visit) return tl::unexpected(file.string() + ":1: names no visit; expected `visit`");
  const fs::path path = (file.parent_path() / *bottle.visit).lexically_normal();
  const Text text = whole_file(path);
  if (!text) return tl::unexpected(text.error());
  auto visit = read_visit(*text, path.string());
  if (!visit) return tl::unexpected(first_of(visit.error()));
  visit->bottle.readings.clear();
  visit->plan_as_told.reset();
  visit->bottle.sample_temperature = Temperature::celsius(bottle.temperature_c);
  return *visit;
}

// Keeps the months before; gives back those of `vessel`, oldest first.
tl::expected<std::vector<Visit>, std::string> keep_earlier(Store& store, const fs::path& file,
                                                           const std::string& vessel) {
  const Text text = whole_file(file);
  if (!text) return tl::unexpected(text.error());
  std::istringstream lines(*text);
  int number = 0;
  for (std::string line; std::getline(lines, line);) {
    const auto visit = read_visit(line, file.string(), ++number);
    if (!visit) return tl::unexpected(first_of(visit.error()));
    if (const auto kept = store.keep(*visit); !kept) return tl::unexpected(kept.error().text);
  }
  const auto of_vessel = store.visits_of_vessel(vessel);
  if (!of_vessel) return tl::unexpected(of_vessel.error().text);
  return *of_vessel;
}

// The bench with the emulated photometer on its line, until every reading has come.
class Listening {
 public:
  Listening(Store& store, Visit& visit, std::ostream& out) : store_(store), visit_(visit), out_(out) {}

  // Nothing, or why the readings did not come.
  std::string run(const HeadlessTask& task, const BottleFile& bottle) {
    const fs::path link = task.work / "photometer";
    QProcess photometer;
    photometer.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    photometer.start(QString::fromStdString(task.photometer.string()),
                     {"--bottle", QString::fromStdString(task.bottle.string()), "--profile", kProfile,
                      "--link", QString::fromStdString(link.string()), "--pause", kPause, "--seed", "1"});
    if (!photometer.waitForStarted()) return task.photometer.string() + " could not be started";
    const auto profile = load_profile(kProfile);
    if (!profile) return first_of(profile.error());
    Bench bench([] { return now(); });
    QObject::connect(&bench, &Bench::happened, [&](const Happening& happening) { take(happening, bottle); });
    bench.listen(*profile, QString::fromStdString(link.string()));
    QTimer::singleShot(kLongestVisitMs, &loop_, [this] { loop_.exit(1); });
    const bool complete = loop_.exec() == 0;
    photometer.kill();
    photometer.waitForFinished();
    if (!failure_.empty()) return failure_;
    return complete
               ? ""
               : "the photometer sent only " + std::to_string(visit_.bottle.readings.size()) + " readings";
  }

  // Kept first, then told. False: `failure_` says why.
  bool accept(const Reading& reading) {
    if (const auto kept = store_.add_reading(visit_.id, reading); !kept) {
      failure_ = kept.error().text;
      return false;
    }
    visit_.bottle.readings.push_back(reading);
    const AnalyteKind& kind = *find_analyte(reading.analyte);
    out_ << "reading " << reading.analyte << " " << format_value(kind, reading.value) << " "
         << (kind.unit.empty() ? "pH" : kind.unit) << std::endl;
    return true;
  }
  const std::string& failure() const { return failure_; }

 private:
  static Instant now() {
    return {std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now()),
            std::chrono::minutes{0}};
  }

  void take(const Happening& happening, const BottleFile& bottle) {
    const auto* told = std::get_if<InstrumentReading>(&happening.what);
    if (told && told->absorbance) return;
    if (!told) return;
    Reading reading;
    reading.analyte = told->analyte;
    reading.value = told->value;
    reading.method = Method::photometer;
    reading.clipped = told->clipped;
    reading.sd = told->sd;
    reading.instrument = happening.instrument;
    if (!accept(reading)) return loop_.exit(1);
    if (visit_.bottle.readings.size() == bottle.measure.size()) loop_.exit(0);
  }

  Store& store_;
  Visit& visit_;
  std::ostream& out_;
  QEventLoop loop_;
  std::string failure_;
};

// Plans, stores the plan as told, says its steps, and makes the sheet; the PDF's path.
Text tell_and_print(Store& store, Visit& visit, const std::vector<Visit>& earlier, const fs::path& work,
                    std::ostream& out) {
  const Words words(visit.customer && visit.customer->language ? *visit.customer->language : "en");
  visit.plan_as_told = make_plan(visit, earlier, built_in_shelf(), *find_targets("household"), words);
  if (const auto told = store.tell_plan(visit.id, *visit.plan_as_told); !told)
    return tl::unexpected(told.error().text);
  for (const Step& step : visit.plan_as_told->steps) out << "step " << step.text << std::endl;
  const fs::path pdf = fs::absolute(work / (visit.bottle.code + ".pdf"));
  // As demo/shop/settings.ini has it for the kiosk.
  ShopDetails shop;
  shop.name = "The Invented Pool Shop";
  shop.emergency = {{"Emergency", "911"}, {"Poison line", "1-800-222-1222"}};
  SheetOptions options;
  options.history = earlier;
  const Sheet sheet = make_sheet(visit, earlier.empty() ? nullptr : &earlier.back(), shop, words, options);
  if (const auto written = write_pdf(sheet, pdf.string(), Edition{}); !written)
    return tl::unexpected(written.error().text);
  return pdf.string();
}

Text whole_visit(const HeadlessTask& task, std::ostream& out) {
  const auto bottle = read_bottle_file(task.bottle.string());
  if (!bottle) return tl::unexpected(first_of(bottle.error()));
  auto visit = unread_visit(*bottle, task.bottle);
  if (!visit) return tl::unexpected(visit.error());
  const fs::path database = task.work / "shop.db";
  fs::remove(database);
  auto store = Store::open("sqlite:" + database.string());
  if (!store) return tl::unexpected(store.error().text);
  const auto earlier = keep_earlier(*store, task.earlier, visit->vessel.id);
  if (!earlier) return tl::unexpected(earlier.error());
  if (const auto begun = store->begin_visit(*visit); !begun) return tl::unexpected(begun.error().text);

  Listening listening(*store, *visit, out);
  if (const std::string why = listening.run(task, *bottle); !why.empty()) return tl::unexpected(why);
  for (const auto& [analyte, value] : bottle->typed) {
    Reading reading;
    reading.analyte = analyte;
    reading.value = value;
    if (!listening.accept(reading)) return tl::unexpected(listening.failure());
  }
  return tell_and_print(*store, *visit, *earlier, task.work, out);
}

}  // namespace

int write_unread(const fs::path& bottle, std::ostream& out, std::ostream& err) {
  const auto file = read_bottle_file(bottle.string());
  const auto visit = file ? unread_visit(*file, bottle) : tl::unexpected(first_of(file.error()));
  if (!visit) {
    err << "brimline-demo: " << visit.error() << "\n";
    return 2;
  }
  out << visit_to_json(*visit).dump() << std::endl;
  return 0;
}

int run_headless(const HeadlessTask& task, std::ostream& out, std::ostream& err) {
  const Text pdf = whole_visit(task, out);
  if (!pdf) {
    err << "brimline-demo: " << pdf.error() << "\n";
    return 2;
  }
  out << *pdf << std::endl;
  return 0;
}

}  // namespace brimline::demo
