// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/desk.h"

#include "qml/models/clock_face.h"
#include "qml/models/emergency.h"
#include "qml/models/overnight_rows.h"

namespace brimline {
namespace {

QString q(const std::string& text) {
  return QString::fromStdString(text);
}

// Where customers see the screen, the first letter of each word.
QString shown_name(const Customer& customer, bool hidden) {
  QString name = q(customer.name.value_or(""));
  if (!hidden) return name;
  QStringList letters;
  for (const QString& word : name.split(' ', Qt::SkipEmptyParts)) letters.append(word.left(1) + '.');
  return letters.join(' ');
}

// One, many or none of something; none says nothing.
QString some(qsizetype n, const QString& one, const QString& many) {
  return n == 0 ? QString() : n == 1 ? one : many.arg(n);
}

}  // namespace

Desk::Desk(Counter& counter, Setup setup, QObject* parent)
    : QObject(parent),
      counter_(counter),
      settings_(std::move(setup.settings)),
      places_({"key", "title", "line"}),
      arrivals_({"visitId", "code", "who", "vessel", "taken", "standing", "here"}),
      overnights_({"visitId", "code", "who", "due", "calls", "phone", "result"}),
      lock_(counter, settings_),
      ticket_(counter, settings_),
      bench_(counter),
      overnight_(counter, settings_, setup.services),
      plan_(counter, settings_, setup.services),
      hand_(counter, settings_, setup.services, plan_),
      then_(counter, setup.services),
      back_(settings_, std::move(setup.settings_file), std::move(setup.out_dir), counter, lock_,
            setup.services),
      first_start_(back_),
      charts_(counter),
      screen_keyboard_(setup.screen_keyboard) {
  connect(&counter_, &Counter::waitingChanged, this, &Desk::refreshArrivals);
  connect(&counter_, &Counter::changed, this, &Desk::refreshArrivals);
  connect(&bench_, &BenchDesk::changed, this, &Desk::refreshPlaces);
  connect(&plan_, &PlanDesk::changed, this, &Desk::refreshPlaces);
  connect(&then_, &ThenDesk::changed, this, &Desk::refreshPlaces);
  connect(&charts_, &ChartDesk::changed, this, &Desk::refreshPlaces);
  connect(&back_, &BackDesk::applied, this, &Desk::shopChanged);
  clock_.setInterval(5000);
  connect(&clock_, &QTimer::timeout, this, &Desk::clockChanged);
  connect(&clock_, &QTimer::timeout, this, &Desk::refreshOvernights);
  connect(&clock_, &QTimer::timeout, &overnight_, &OvernightDesk::refresh);
  clock_.start();
  house_.setInterval(600000);
  connect(&house_, &QTimer::timeout, this, &Desk::keepHouse);
  house_.start();
  scan_ends_.setSingleShot(true);
  connect(&scan_ends_, &QTimer::timeout, this, [this] { setScanning({}); });
  connect(&ticket_, &Ticket::labelRead, this, &Desk::scan);
  QTimer::singleShot(60000, this, &Desk::keepHouse);  // not while the counter opens
  refreshArrivals();
}

QString Desk::shop() const {
  return q(settings_.shop.name);
}
QString Desk::clockLine() const {
  return date_line(counter_.now());
}
QVariantList Desk::emergencyCards() const {
  return emergency_cards(make_emergency_card(settings_.shop, counter_.words()));
}
QVariantList Desk::emergencyNumbers() const {
  return emergency_numbers(make_emergency_card(settings_.shop, counter_.words()));
}

void Desk::retell() {
  back_.refresh();
  overnight_.refresh();
  refreshArrivals();
  emit shopChanged();
  emit clockChanged();
}

void Desk::setPlace(int place) {
  if (place < Arrivals || place > BackRoom || place == place_) return;
  place_ = place;
  emit placeChanged();
}

void Desk::refreshArrivals() {
  QList<QVariantMap> rows;
  for (const Visit& visit : counter_.waiting()) {
    const bool here = counter_.open() && counter_.visit().id == visit.id;
    const auto& taken = visit.bottle.taken_at;
    const size_t read = visit.bottle.readings.size();
    rows.append(
        {{"visitId", q(visit.id)},
         {"code", q(visit.bottle.code)},
         {"who", visit.customer ? shown_name(*visit.customer, settings_.hide_names) : tr("Not said whose")},
         {"vessel", vessel_words_of(counter_.words(), visit)},
         {"taken", taken ? tr("taken %1").arg(when_words(counter_.now(), *taken)) : QString()},
         {"standing", read == 0
                          ? tr("nothing read yet")
                          : some(static_cast<qsizetype>(read), tr("1 reading kept"), tr("%1 readings kept"))},
         {"here", here}});
  }
  arrivals_.replace(rows);
  refreshOvernights();
}

void Desk::refreshOvernights() {
  overnights_.replace(overnight_rows(counter_));
  refreshPlaces();
}

void Desk::refreshPlaces() {
  const bool open = counter_.open();
  const int waiting = arrivals_.count();
  const auto row = [](const char* key, const QString& title, const QString& line) {
    return QVariantMap{{"key", QString::fromLatin1(key)}, {"title", title}, {"line", line}};
  };
  int called = 0;
  for (int i = 0; i < overnights_.count(); ++i) called += overnights_.row(i).value("calls").toBool() ? 1 : 0;
  QStringList arrivals{some(waiting, tr("1 waiting"), tr("%1 waiting")),
                       some(called, tr("1 test due"), tr("%1 tests due"))};
  arrivals.removeAll(QString());
  const int steps = plan_.steps()->count();
  const bool no_home = plan_.plan() && !plan_.plan()->home_plan;
  places_.replace({
      row("arrivals", tr("Arrivals"), arrivals.join(QStringLiteral(", "))),
      row("bottle", tr("Bottle"),
          open ? (ticket_.customer().isEmpty() ? tr("whose?") : ticket_.customer()) : QString()),
      row("bench", tr("Bench"), open ? bench_.waitingLine() : QString()),
      row("findings", tr("Findings"), some(plan_.findings()->count(), tr("1 to know"), tr("%1 to know"))),
      row("take_home", tr("Take-home"),
          no_home ? tr("no home plan") : some(steps, tr("1 step"), tr("%1 steps"))),
      row("then_now", tr("Then and now"),
          open ? some(static_cast<qsizetype>(counter_.earlier().size()), tr("1 earlier"), tr("%1 earlier"))
               : QString()),
      row("back_room", tr("Back room"), some(charts_.waiting(), tr("1 check due"), tr("%1 checks due"))),
  });
}

void Desk::settle(const Records::Kept& kept, int next) {
  says_ = kept ? QString() : q(kept.error());
  emit saysChanged();
  if (kept) setPlace(next);
}

QString Desk::away() const {
  return q(counter_.records().away());
}

QString Desk::choiceAsked() const {
  const auto refused = counter_.records().refused();
  if (refused.empty()) return {};
  return tr("Another counter changed the same meanwhile. %1. Which is right?")
      .arg(q(refused.front().refusal.value_or("")));
}

void Desk::chooseOurs(bool ours) {
  const auto refused = counter_.records().refused();
  if (refused.empty()) return;
  const auto settled = counter_.records().settle_refused(refused.front().id, ours);
  says_ = settled ? QString() : q(settled.error());
  emit saysChanged();
  refreshRecords();
}

void Desk::refreshRecords() {
  counter_.reload();
  emit recordsChanged();
}

void Desk::keepHouse() {
  back_.backups().make_if_due();
  if (settings_.keep_months <= 0) return;
  const Instant now = counter_.now();
  const Instant day{now.utc - std::chrono::hours(24 * 365 * settings_.keep_months / 12), now.offset};
  for (const std::string& id : counter_.records().people_unseen_since(day))
    (void)counter_.records().erase_customer(
        id, tr("not seen for %1 months").arg(settings_.keep_months).toStdString());
}

void Desk::tell(const QString& sentence) {
  says_ = sentence;
  emit saysChanged();
}

void Desk::startBottle() {
  settle(counter_.begin({}), Bottle);
}

void Desk::openVisit(const QString& id) {
  const auto kept = counter_.open(id.toStdString());
  settle(kept, kept && counter_.visit().customer ? Bench : Bottle);
}

void Desk::openOvernight(const QString& visit) {
  const auto kept = counter_.open(visit.toStdString());
  if (kept) overnight_.setShown(true);
  settle(kept, Bench);
}

void Desk::onHappened(const Happening& heard) {
  const auto told = absorbances_.pass(heard, counter_);
  if (!told) return;
  const Happening& happening = *told;
  const auto* reading = std::get_if<InstrumentReading>(&happening.what);
  if (reading && charts_.take(*reading, happening.instrument)) return;
  if (!reading || !overnight_.take(*reading, happening.instrument)) bench_.onHappened(happening);
}

void Desk::scan(const QString& label) {
  const std::string code = label.trimmed().toStdString();
  if (code.empty()) return;
  if (place_ == BackRoom && back_.scan(label)) return;
  for (const Overnight& overnight : counter_.overnights())
    if (code.starts_with(overnight.visit.bottle.code + "/")) {
      openOvernight(q(overnight.visit.id));
      return overnight_.markLabel(q(code));
    }
  for (const Visit& visit : counter_.waiting())
    if (visit.bottle.code == code) return openVisit(q(visit.id));
  settle(counter_.begin(code), Bottle);
}

void Desk::setScanning(const QString& text) {
  scanning_ = text;
  emit scanningChanged();
}

bool Desk::typeAtBench(const QString& text, int key) {
  const auto press = [&](const QString& pad_key) {
    overnight_.shown() ? overnight_.press(pad_key) : bench_.press(pad_key);
    return true;
  };
  if (key == Qt::Key_Return || key == Qt::Key_Enter) {
    overnight_.shown() ? overnight_.keep() : bench_.keep();
    return true;
  }
  if (key == Qt::Key_Backspace) return press(QStringLiteral("back"));
  if (text == QLatin1String(".") || text == QLatin1String(",")) return press(QStringLiteral("point"));
  return text.size() == 1 && text[0] >= u'0' && text[0] <= u'9' && press(text);
}

// A scanner's keys follow each other faster than fingers do; what comes slower is no label.
bool Desk::typeKey(const QString& text, int key) {
  constexpr qint64 kBetweenKeys = 120;  // ms
  constexpr int kShortestLabel = 3;
  if (!scanning_.isEmpty() && since_key_.elapsed() > kBetweenKeys) setScanning({});
  if (scanning_.isEmpty() && place_ == Bench && typeAtBench(text, key)) return true;
  if (key == Qt::Key_Return || key == Qt::Key_Enter) {
    const QString label = scanning_;
    setScanning({});
    if (label.size() < kShortestLabel) return false;
    scan(label);
    return true;
  }
  if (text.size() != 1 || !text[0].isPrint() || text[0].isSpace()) return false;
  setScanning(scanning_ + text);
  since_key_.start();
  scan_ends_.start(4 * kBetweenKeys);
  return true;
}

}  // namespace brimline
