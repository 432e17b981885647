// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/plan_desk.h"

#include "qml/models/choices.h"
#include "qml/models/clock_face.h"
#include "qml/models/plan_numbers.h"
#include "qml/models/sheet_rows.h"
#include "station/wording/hand_words.h"

namespace brimline {
namespace {

QString q(const std::string& text) {
  return QString::fromStdString(text);
}

const Visit* last_of(const std::vector<Visit>& visits) {
  return visits.empty() ? nullptr : &visits.back();
}

}  // namespace

PlanDesk::PlanDesk(Counter& counter, const Settings& settings, Services services, QObject* parent)
    : QObject(parent),
      counter_(counter),
      settings_(settings),
      services_(std::move(services)),
      findings_({"words", "markBefore", "line", "concern", "first"}),
      steps_({"day", "clock", "text", "amount", "after", "cautions"}),
      watch_(services_) {
  connect(&watch_, &PrintWatch::changed, this, &PlanDesk::changed);
  connect(&counter_, &Counter::changed, this, &PlanDesk::ask);
  connect(&counter_, &Counter::waitingChanged, this, [this] {
    if (overnightDue() != overnight_) ask();
  });
}

PlanDesk::~PlanDesk() {
  plans_.wait();
  sheets_.wait();
}

QVariantMap PlanDesk::choices() const {
  QVariantMap out = choices_;
  if (!out.contains("paper")) out["paper"] = settings_.paper;
  if (!out.contains("print_size")) out["print_size"] = QStringLiteral("usual");
  if (!out.contains("language") && counter_.open() && counter_.visit().customer)
    out["language"] = q(counter_.visit().customer->language.value_or("en"));
  return out;
}

QVariantList PlanDesk::options(const QString& fact) const {
  return choices_for(fact);
}

QString PlanDesk::question(const QString& fact) const {
  if (fact == QLatin1String("home_at") && counter_.open() && counter_.visit().home_at)
    return tr("They get home %1").arg(when_words(counter_.now(), *counter_.visit().home_at));
  return question_for(fact);
}

void PlanDesk::choose(const QString& fact, const QString& key) {
  choices_[fact] = key;
  if (fact == QLatin1String("language")) return ask();
  emit changed();
  if (fact == QLatin1String("home_at")) {
    const Instant at = home_moment(key, counter_.now());
    sheet_says_.clear();
    if (const auto kept = counter_.change([&](Visit& v) { v.home_at = at; }); !kept)
      sheet_says_ = tr("Not kept: %1").arg(q(kept.error()));
    emit changed();
  }
}

void PlanDesk::clear() {
  plan_.reset();
  told_.reset();
  findings_.replace({});
  steps_.replace({});
  cautions_.clear();
  still_open_.clear();
  for (QString* line : {&title_, &swim_line_, &why_not_, &come_back_, &failed_}) line->clear();
}

// The visit as it would be told now: where nobody said when they get home, in an hour.
Visit PlanDesk::visit_to_tell() const {
  Visit visit = counter_.visit();
  if (!visit.home_at) visit.home_at = home_moment("hour", counter_.now());
  return visit;
}

std::optional<Instant> PlanDesk::overnightDue() const {
  const OvernightTest* test = counter_.overnight();
  if (!test || !test->started_at || test->stage != OvernightStage::running) return std::nullopt;
  return due_at(*test->started_at, OvernightDue::day);
}

void PlanDesk::ask() {
  const int request = ++asked_;
  if (counter_.open() && counter_.visit().id != of_) {
    of_ = counter_.visit().id;
    choices_.clear();
    sheet_says_.clear();
    orders_.clear();
    watch_.forget();
    clear();
  }
  if (!counter_.open() || counter_.visit().bottle.readings.empty()) {
    clear();
    emit changed();
    return;
  }
  drop_stale_orders();
  emit changed();
  overnight_ = overnightDue();
  const auto work = [this, request, visit = visit_to_tell(), earlier = counter_.earlier(),
                     shop = settings_.shop, overnight = overnight_, supplies = counter_.supplies(),
                     plan = services_.plan, change = services_.change, orders = orders_,
                     screen = counter_.words().language(), sheet = sheet_language()] {
    const auto in = [&](const std::string& language) {
      return orders.empty() ? plan(visit, earlier, language, shop, overnight, supplies)
                            : change(visit, earlier, language, shop, overnight, supplies, orders);
    };
    Told made{in(screen), std::nullopt};
    // The same plan in the customer's words: it is told, kept and printed so.
    if (made.shown && sheet != screen)
      if (auto told = in(sheet)) made.told = std::move(*told);
    QMetaObject::invokeMethod(this, [this, request, made = std::move(made)] { show(request, made); });
  };
  plans_.clear();  // plans not yet begun are of a bottle that has changed since
  plans_.start(work);
}

std::string PlanDesk::sheet_language() const {
  return choices().value("language", "en").toString().toStdString();
}

void PlanDesk::show(int request, const Told& made) {
  if (request != asked_) return;
  made_ = request;
  const tl::expected<Plan, std::string>& plan = made.shown;
  if (!plan) {
    clear();
    failed_ = q(plan.error());
    emit changed();
    return;
  }
  Visit visit = visit_to_tell();
  visit.plan_as_told = *plan;
  plan_ = *plan;
  told_ = made.told ? made.told : plan_;
  failed_.clear();
  const Words& words = counter_.words();
  const Visit* earlier = last_of(counter_.earlier());
  const Sheet sheet = make_sheet(visit, earlier, settings_.shop, words);
  findings_.replace(finding_rows(*plan, visit, earlier, words));
  steps_.replace(step_rows(sheet, *plan, words));
  cautions_.clear();
  for (const std::string& line : sheet.before) cautions_.append(q(line));
  still_open_.clear();
  for (const std::string& line : sheet.still_open) still_open_.append(q(line));
  title_ = q(sheet.titles.steps);
  swim_line_ = q(sheet.question + " " + sheet.answer);
  why_not_ = sheet.why_not ? q(*sheet.why_not) : QString();
  come_back_ = q(sheet.come_back);
  emit changed();
}

QString PlanDesk::findingsTitle() const {
  if (!failed_.isEmpty()) return failed_;
  if (!counter_.open()) return tr("No bottle is on the counter");
  if (counter_.visit().bottle.readings.empty()) return tr("Nothing has been read yet");
  if (!plan_) return tr("Working it out");
  if (findings_.count() == 0) return tr("This water is in order");
  return tr("What this water says");
}

// Steps are numbered in the plan as drafted: with other readings or another vessel they are other steps.
void PlanDesk::drop_stale_orders() {
  const Visit& visit = counter_.visit();
  if (orders_.empty() || (visit.bottle.readings == orders_read_ && visit.vessel == orders_vessel_)) return;
  orders_.clear();
  sheet_says_ = tr("The bottle has changed: what was changed by hand is dropped.");
}

void PlanDesk::order(std::vector<HandOrder> orders) {
  if (!counter_.open()) return;
  orders_ = std::move(orders);
  orders_read_ = counter_.visit().bottle.readings;
  orders_vessel_ = counter_.visit().vessel;
  ask();
}

QVariantList PlanDesk::doseNumbers() const {
  if (!plan_ || !counter_.open()) return {};
  return plan_number_rows(counter_.words(), counter_.visit(), *plan_);
}

QStringList PlanDesk::changeLines() const {
  QStringList out;
  if (plan_)
    for (const HandChange& change : plan_->changes) out.append(q(hand_change_line(counter_.words(), change)));
  return out;
}

// The visit is kept with the plan as told, before paper is touched; false: it could not be kept.
bool PlanDesk::tell() {
  const Visit told_as = visit_to_tell();
  const auto home = counter_.change([&](Visit& v) { v.home_at = told_as.home_at; });
  const auto kept = home ? counter_.tell(*told_) : home;
  if (kept) return true;
  sheet_says_ = tr("No sheet was made, for the visit could not be kept: %1").arg(q(kept.error()));
  emit changed();
  return false;
}

void PlanDesk::makeSheet(bool print) {
  make(PaperKind::sheet, print);
}

void PlanDesk::printPaper(const QString& kind) {
  if (kind == QLatin1String("shelf_list")) make(PaperKind::shelf_list, true);
  if (kind == QLatin1String("staff_copy")) make(PaperKind::staff_copy, true);
  if (kind == QLatin1String("emergency_card")) {
    SheetJob card;  // no bottle is needed, and none is told
    card.kind = PaperKind::emergency_card;
    card.print = true;
    if (!busy_ && !printWaits()) send(std::move(card));
  }
  if (kind == QLatin1String("bottle_label")) make(PaperKind::bottle_label, true);
}

void PlanDesk::make(PaperKind kind, bool print) {
  if (busy_ || (print && printWaits()) || !counter_.open()) return;
  if (kind != PaperKind::bottle_label && (!ready() || !tell())) return;
  SheetJob job;
  job.kind = kind;
  job.visit = counter_.visit();
  job.earlier = counter_.earlier();
  job.print = print;
  send(std::move(job));
}

void PlanDesk::printAgain(const QString& visit_id) {
  if (busy_ || printWaits() || !counter_.open()) return;
  SheetJob job;
  job.print = true;
  for (const Visit& visit : counter_.earlier()) {
    if (q(visit.id) == visit_id) {
      job.visit = visit;
      return send(std::move(job));
    }
    job.earlier.push_back(visit);
  }
}

void PlanDesk::takeBack() {
  watch_.take_back();
}

void PlanDesk::send(SheetJob job) {
  const QVariantMap how = choices();
  const bool told_now = counter_.open() && job.visit.id == counter_.visit().id;
  const auto& customer = job.visit.customer;
  job.shop = settings_.shop;
  job.staff_language = counter_.words().language();
  job.language = job.staff_language;
  if (job.kind == PaperKind::sheet)
    job.language = told_now ? how.value("language", "en").toString().toStdString()
                            : (customer ? customer->language.value_or("en") : std::string("en"));
  job.paper = paper_named(how.value("paper").toString().toStdString()).value_or(Paper::letter);
  job.large = job.kind == PaperKind::sheet && how.value("print_size").toString() == QLatin1String("large");
  job.printer = settings_.printer.toStdString();
  busy_ = true;
  const bool of_visit = job.kind != PaperKind::emergency_card;
  (of_visit ? sheet_says_ : card_says_) =
      of_visit ? tr("The visit is kept; making the sheet …") : tr("Making the card …");
  emit changed();
  sheets_.start([this, job = std::move(job), sheet = services_.sheet] {
    auto made = sheet(job);
    QMetaObject::invokeMethod(this,
                              [this, code = job.visit.bottle.code, kind = job.kind, made = std::move(made)] {
                                if (kind == PaperKind::emergency_card) return onCard(made);
                                onSheet(code, made);
                              });
  });
}

void PlanDesk::onCard(const tl::expected<PaperOut, std::string>& made) {
  busy_ = false;
  card_says_ = q(made ? made->text : made.error());
  if (made && made->job)
    watch_.follow(*made->job, tr("Emergency card").toStdString(), counter_.words().language());
  emit changed();
}

void PlanDesk::onSheet(const std::string& bottle, const tl::expected<PaperOut, std::string>& made) {
  busy_ = false;
  sheet_says_ =
      made ? q(made->text) : tr("The visit is kept, but the sheet is not on paper: %1").arg(q(made.error()));
  if (made && made->job) watch_.follow(*made->job, bottle, counter_.words().language());
  emit changed();
  if (made) emit sheetMade(q(made->text));
}

}  // namespace brimline
