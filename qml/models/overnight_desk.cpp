// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/overnight_desk.h"

#include <algorithm>

#include "qml/models/overnight_choices.h"
#include "station/overnight/overnight_result.h"
#include "station/wording/overnight_words.h"

namespace brimline {
namespace {

QString q(const std::string& text) {
  return QString::fromStdString(text);
}

QStringList list_of(const std::vector<std::string>& lines) {
  QStringList out;
  for (const std::string& line : lines) out.append(q(line));
  return out;
}

std::vector<Bottle> bottles_of(const std::vector<Visit>& visits) {
  std::vector<Bottle> out;
  out.reserve(visits.size());
  for (const Visit& visit : visits) out.push_back(visit.bottle);
  return out;
}

}  // namespace

OvernightDesk::OvernightDesk(Counter& counter, const Settings& settings, Services services, QObject* parent)
    : QObject(parent),
      counter_(counter),
      settings_(settings),
      services_(std::move(services)),
      bottles_({"code", "dose", "stock", "hourFree", "hourTotal", "dayFree", "dayTotal", "marked", "word"}) {
  connect(&counter_, &Counter::changed, this, &OvernightDesk::refresh);
  connect(&counter_, &Counter::waitingChanged, this, &OvernightDesk::refresh);
}

OvernightDesk::~OvernightDesk() {
  labels_.wait();
}

void OvernightDesk::refresh() {
  if (counter_.open() && counter_.visit().id != of_) {
    of_ = counter_.visit().id;
    says_.clear();
    shown_ = false;
  }
  const OvernightTest* test = this->test();
  if (test && reads() && !pads_.contains(of_)) {
    pad().cell.due = due_for(*test, counter_.now());
    markNext();
  }
  bottles_.replace(test ? bottle_rows(counter_.words(), *test, counter_.visit(),
                                      reads() ? pad().cell : OvernightCell{-1, {}, {}})
                        : QList<QVariantMap>());
  emit changed();
}

OvernightDesk::Pad& OvernightDesk::pad() {
  return pads_[of_];
}
const OvernightDesk::Pad* OvernightDesk::pad() const {
  const auto found = pads_.find(of_);
  return found == pads_.end() ? nullptr : &found->second;
}

bool OvernightDesk::reads() const {
  return test() && test()->stage == OvernightStage::running;
}

void OvernightDesk::setShown(bool shown) {
  shown_ = shown && counter_.open() && (mayTest() || test());
  // A night may have passed since something was marked.
  if (shown_ && reads() && typed().isEmpty() && pad().cell.due != due_for(*test(), counter_.now()))
    markNext();
  refresh();
}

bool OvernightDesk::mayTest() const {
  return counter_.open() && may_test_demand(counter_.visit().vessel);
}

QString OvernightDesk::openWord() const {
  if (!test()) return tr("Overnight test");
  return tr("Overnight test: %1").arg(dueLine());
}

QString OvernightDesk::offer() const {
  if (!counter_.open() || test() || counter_.visit().bottle.demand_test) return {};
  const auto sign =
      demand_sign(counter_.visit().bottle, counter_.visit().vessel, bottles_of(counter_.earlier()));
  return sign ? q(demand_sign_words(counter_.words(), *sign)) : QString();
}

QString OvernightDesk::stage() const {
  return test() ? q(std::string(name_of(test()->stage))) : QString();
}

QString OvernightDesk::title() const {
  if (!test()) return tr("An overnight test of this water");
  switch (test()->stage) {
    case OvernightStage::bottles:
      return tr("Overnight test: the bottles");
    case OvernightStage::stock:
      return tr("Overnight test: the stock");
    case OvernightStage::pour:
      return tr("Overnight test: labels, then chlorine");
    case OvernightStage::running:
      return tr("Overnight test: the readings");
    case OvernightStage::result:
    case OvernightStage::closed:
      break;
  }
  return tr("Overnight test: the result");
}

QString OvernightDesk::dueLine() const {
  return test() ? q(overnight_due_words(counter_.words(), *test(), counter_.now())) : QString();
}

QStringList OvernightDesk::steps() const {
  if (!test()) return {};
  std::optional<double> ph;
  for (const Reading& reading : counter_.visit().bottle.readings)
    if (reading.analyte == "ph") ph = reading.value;
  return list_of(overnight_steps(counter_.words(), *test(), ph));
}

QStringList OvernightDesk::cautions() const {
  return test() ? list_of(overnight_cautions(counter_.words(), test()->stage)) : QStringList();
}

QVariantMap OvernightDesk::choices() const {
  return test() ? overnight_choices(*test()) : QVariantMap();
}

QVariantList OvernightDesk::options(const QString& fact) const {
  return overnight_options(counter_.words(), fact);
}

void OvernightDesk::choose(const QString& fact, const QString& key) {
  sayKept(edit([&](OvernightTest& test) { set_overnight_choice(test, fact, key); }));
}

QString OvernightDesk::reason() const {
  if (!counter_.open()) return {};
  return q(reach_reason_words(counter_.words(),
                              advise_reach(counter_.visit().bottle, known_above_of(counter_.visit()))));
}

QString OvernightDesk::arithmetic() const {
  return test() && test()->bleach ? q(bleach_words(counter_.words(), *test()->bleach)) : QString();
}

QString OvernightDesk::checkLine() const {
  return test() ? q(check_words(counter_.words(), *test())) : QString();
}

QStringList OvernightDesk::result() const {
  const OvernightTest* test = this->test();
  if (!test || !test->started_at) return {};
  if (!complete(*test, OvernightDue::day) && test->stage == OvernightStage::running) return {};
  return list_of(demand_lines(counter_.words(), result_of(demand_test_of(*test), counter_.visit())));
}

QString OvernightDesk::phone() const {
  if (!counter_.open() || !counter_.visit().customer) return {};
  return q(counter_.visit().customer->phone.value_or(""));
}

bool OvernightDesk::canGoOn() const {
  if (!test()) return mayTest();
  switch (test()->stage) {
    case OvernightStage::bottles:
      return true;
    case OvernightStage::stock:
      return test()->bleach && test()->check_mg_l && is_sound_stock(stock_strength(*test()));
    case OvernightStage::pour:
      return may_start(*test());
    case OvernightStage::running:
      return complete(*test(), OvernightDue::day);
    case OvernightStage::result:
    case OvernightStage::closed:
      break;
  }
  return true;
}

QString OvernightDesk::goOnWord() const {
  if (!test()) return tr("Set one up");
  switch (test()->stage) {
    case OvernightStage::bottles:
      return tr("To the stock");
    case OvernightStage::stock:
      return tr("To the labels");
    case OvernightStage::pour:
      return tr("All dosed: start the clock");
    case OvernightStage::running:
      return tr("Put the result into the plan");
    case OvernightStage::result:
    case OvernightStage::closed:
      break;
  }
  return tr("Take-home");
}

bool OvernightDesk::canUndo() const {
  if (!test()) return false;
  const auto& readings = test()->readings;
  return reads() && std::any_of(readings.begin(), readings.end(), [](const auto& r) { return !r.withdrawn; });
}

void OvernightDesk::say(const QString& sentence) {
  says_ = sentence;
  refresh();
}

void OvernightDesk::sayKept(const Records::Kept& kept) {
  say(kept ? QString() : tr("Not kept: %1").arg(q(kept.error())));
}

Records::Kept OvernightDesk::edit(const std::function<void(OvernightTest&)>& change) {
  if (!test()) return {};
  return counter_.change_overnight(counter_.visit().id, change);
}

void OvernightDesk::begin() {
  if (!mayTest() || test()) return;
  pads_.erase(of_);
  const auto advice = advise_reach(counter_.visit().bottle, known_above_of(counter_.visit()));
  const auto kept = counter_.begin_overnight(advice.reach);
  if (kept) shown_ = true;
  sayKept(kept);
}

void OvernightDesk::goOn() {
  if (!test()) return begin();
  if (!canGoOn() || test()->stage == OvernightStage::result) return;
  if (reads()) return finish();
  const Instant now = counter_.now();
  const auto kept = edit([&](OvernightTest& test) {
    if (test.stage == OvernightStage::pour)
      start(test, now);
    else
      test.stage = test.stage == OvernightStage::bottles ? OvernightStage::stock : OvernightStage::pour;
  });
  pads_.erase(of_);
  sayKept(kept);
}

// The result becomes the visit's before the test says that it has one: killed in between, it is put again.
void OvernightDesk::finish() {
  const DemandTest found = demand_test_of(*test());
  auto kept = counter_.change([&](Visit& visit) { visit.bottle.demand_test = found; });
  if (kept) kept = edit([](OvernightTest& test) { test.stage = OvernightStage::result; });
  sayKept(kept);
}

void OvernightDesk::goBack() {
  if (!test()) return;
  Records::Kept kept;
  if (test()->stage == OvernightStage::result)
    kept = counter_.change([](Visit& visit) { visit.bottle.demand_test.reset(); });
  if (kept)
    kept = edit([](OvernightTest& test) {
      if (test.stage == OvernightStage::stock) test.stage = OvernightStage::bottles;
      if (test.stage == OvernightStage::pour) test.stage = OvernightStage::stock;
      if (test.stage == OvernightStage::result) test.stage = OvernightStage::running;
    });
  pads_.erase(of_);
  sayKept(kept);
}

// The page stays, so that it can be taken up again where it was put away.
void OvernightDesk::giveUp() {
  if (!test()) return;
  const OvernightTest before = *test();
  const auto kept = edit([](OvernightTest& test) {
    test.given_up = test.stage != OvernightStage::result;
    test.stage = OvernightStage::closed;
  });
  if (!kept) return sayKept(kept);
  put_away_ = before;
  pads_.erase(of_);
  say(before.stage == OvernightStage::result
          ? tr("Put away: the customer was told.")
          : tr("The test is given up. What was read of it stays on record."));
}

bool OvernightDesk::canTakeUp() const {
  return put_away_ && counter_.open() && !test() && counter_.visit().id == put_away_->visit;
}

void OvernightDesk::takeUp() {
  if (!canTakeUp()) return;
  bool another = false;
  const auto kept = counter_.change_overnight(put_away_->visit, [&](OvernightTest& last) {
    another = last.number != put_away_->number;
    // Another counter may have begun one since, or taken this up.
    if (another || last.stage != OvernightStage::closed) return;
    last.stage = put_away_->stage;
    last.given_up = put_away_->given_up;
  });
  if (kept) put_away_.reset();
  if (kept && another) return say(tr("Another test of this bottle was begun meanwhile."));
  sayKept(kept);
}

void OvernightDesk::makeLabels(bool print) {
  if (!test() || busy_) return;
  LabelJob job{*test(),        counter_.visit(),
               counter_.now(), paper_named(settings_.paper.toStdString()).value_or(Paper::letter),
               print,          settings_.printer.toStdString()};
  busy_ = true;
  say(tr("Making the labels …"));
  labels_.start([this, job = std::move(job), labels = services_.labels] {
    auto made = labels(job);
    QMetaObject::invokeMethod(this, [this, made = std::move(made)] {
      busy_ = false;
      say(made ? q(*made) : tr("The labels are not on paper: %1").arg(q(made.error())));
      if (made) emit labelsMade(q(*made));
    });
  });
}

}  // namespace brimline
