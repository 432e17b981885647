// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/hand_desk.h"

#include <algorithm>
#include <cmath>

#include "printing/readings_table.h"
#include "qml/models/choices.h"
#include "station/wording/plan_words.h"

namespace brimline {
namespace {

QString q(const std::string& text) {
  return QString::fromStdString(text);
}

const Step* step_of(const Plan& plan, int order) {
  for (const Step& step : plan.steps)
    if (step.order == order) return &step;
  return nullptr;
}

}  // namespace

HandDesk::HandDesk(Counter& counter, const Settings& settings, Services services, PlanDesk& plan,
                   QObject* parent)
    : QObject(parent),
      counter_(counter),
      settings_(settings),
      services_(std::move(services)),
      plan_(plan),
      predicted_({"name", "told", "tried"}) {
  // A plan made anew has other steps.
  connect(&plan_, &PlanDesk::changed, this, [this] {
    if (step_ > 0 && plan_.plan() != told_) close();
  });
}

HandDesk::~HandDesk() {
  pool_.wait();
}

void HandDesk::open(int step) {
  if (!counter_.open() || !plan_.ready() || !plan_.plan()->home_plan) return;
  const Step* told = step_of(*plan_.plan(), step);
  if (!told) return;
  told_ = plan_.plan();
  step_ = step;
  dose_ = told->action == Action::add && told->active_mol;
  title_ = q(told->text);
  share_ = volume_ = 1;
  left_out_ = false;
  allowed_ = false;
  says_.clear();
  reason_.clear();
  product_ = product_told_ = told->product ? q(*told->product) : QString();
  products_.clear();
  if (dose_)
    for (const Product& product : services_.shelf().products)
      if (can_stand_for(product.substance, *told->chemical))
        products_.append(QVariantMap{{"key", q(product.id)},
                                     {"word", q(counter_.words().say("product", product.name.c_str()))}});
  products_ = by_word(products_);
  made_ = asked_;
  list_predicted(nullptr);
  emit changed();
}

void HandDesk::close() {
  if (step_ == 0) return;
  ++asked_;
  made_ = asked_;
  step_ = 0;
  told_.reset();
  emit changed();
}

QString HandDesk::shareWord() const {
  return tr("%1 % of what was told").arg(std::lround(share_ * 100));
}

QString HandDesk::volumeWord() const {
  if (!counter_.open() || !counter_.visit().vessel.volume) return {};
  const auto& customer = counter_.visit().customer;
  const bool us = !customer || customer->units.value_or(Units::us) == Units::us;
  const double cubic_metres = counter_.visit().vessel.volume->cubic_metres() * volume_;
  if (!us) return tr("%1 m³").arg(q(counter_.words().number(cubic_metres, cubic_metres < 3 ? 2 : 1)));
  const double gallons = Volume::cubic_metres(cubic_metres).us_gallons();
  const long step = gallons < 1000 ? 1 : 50;
  return tr("%1 US gal").arg(std::lround(gallons / static_cast<double>(step)) * step);
}

void HandDesk::setShare(double share) {
  if (share == share_) return;
  share_ = share;
  ask();
}
void HandDesk::setVolume(double volume) {
  if (volume == volume_) return;
  volume_ = volume;
  ask();
}
void HandDesk::setProduct(const QString& id) {
  product_ = id;
  ask();
}
void HandDesk::setLeftOut(bool out) {
  left_out_ = out;
  ask();
}
void HandDesk::setStaff(const QString& name) {
  staff_ = name;
  emit changed();
}
void HandDesk::setReason(const QString& reason) {
  reason_ = reason;
  emit changed();
}

bool HandDesk::is_changed() const {
  return left_out_ || share_ != 1 || product_ != product_told_;
}

bool HandDesk::mayUse() const {
  return step_ > 0 && !busy() && allowed_ && is_changed() && volume_ == 1 && !staff_.trimmed().isEmpty() &&
         !reason_.trimmed().isEmpty();
}

// Orders name steps as drafted; what was left out before is not among those shown.
int HandDesk::drafted_step() const {
  std::vector<int> out;
  for (const HandOrder& order : plan_.orders())
    if (order.what == HandOrder::What::leave_out) out.push_back(order.step);
  std::sort(out.begin(), out.end());
  int drafted = step_;
  for (const int left : out)
    if (left <= drafted) ++drafted;
  return drafted;
}

std::vector<HandOrder> HandDesk::orders(const std::string& staff, const std::string& reason) const {
  std::vector<HandOrder> out = plan_.orders();
  const int step = drafted_step();
  double before = 1;
  for (const HandOrder& order : out)
    if (order.step == step && order.what == HandOrder::What::dose) before = order.share;
  const auto same = [&](HandOrder::What what) {
    return [step, what](const HandOrder& order) { return order.step == step && order.what == what; };
  };
  using What = HandOrder::What;
  if (left_out_) {
    std::erase_if(out, [step](const HandOrder& order) { return order.step == step; });
    out.push_back({step, What::leave_out, 1, "", staff, reason});
    return out;
  }
  if (product_ != product_told_) {
    std::erase_if(out, same(What::product));
    out.push_back({step, What::product, 1, product_.toStdString(), staff, reason});
  }
  if (share_ != 1) {
    std::erase_if(out, same(What::dose));
    out.push_back({step, What::dose, before * share_, "", staff, reason});
  }
  return out;
}

void HandDesk::ask() {
  if (step_ == 0) return;
  allowed_ = false;
  const int request = ++asked_;
  emit changed();
  Visit visit = plan_.visit_to_tell();
  if (visit.vessel.volume)
    visit.vessel.volume = Volume::cubic_metres(visit.vessel.volume->cubic_metres() * volume_);
  pool_.clear();  // what has not begun is of a slider that has moved on
  pool_.start([this, request, visit = std::move(visit), earlier = counter_.earlier(), shop = settings_.shop,
               overnight = plan_.overnightDue(), supplies = counter_.supplies(), orders = orders("?", "?"),
               language = counter_.words().language(), change = services_.change] {
    auto made = change(visit, earlier, language, shop, overnight, supplies, orders);
    QMetaObject::invokeMethod(this, [this, request, made = std::move(made)] { show(request, made); });
  });
}

void HandDesk::show(int request, const tl::expected<Plan, std::string>& plan) {
  if (request != asked_ || step_ == 0) return;
  made_ = request;
  allowed_ = plan.has_value();
  says_ = plan ? QString() : q(plan.error());
  if (plan && !left_out_ && dose_)
    if (const Step* tried = step_of(*plan, step_); tried && tried->amount_household)
      says_ = tr("A portion would be %1.").arg(q(*tried->amount_household));
  if (plan && plan->proof && told_ && told_->proof)
    says_ += (says_.isEmpty() ? "" : " ") + tr("In range: %1 % of the draws, %2 % as told.")
                                                .arg(std::lround(plan->proof->in_target * 100))
                                                .arg(std::lround(told_->proof->in_target * 100));
  list_predicted(plan ? &*plan : nullptr);
  emit changed();
}

void HandDesk::list_predicted(const Plan* tried) {
  QList<QVariantMap> rows;
  const Words& words = counter_.words();
  for (const auto& [analyte, told] : told_->predicted) {
    QString now;
    if (tried)
      if (const auto found = tried->predicted.find(analyte); found != tried->predicted.end())
        now = q(value_words(words, analyte, found->second.value, false));
    rows.append({{"name", q(analyte_name(words, analyte))},
                 {"told", q(value_words(words, analyte, told.value, false))},
                 {"tried", now}});
  }
  predicted_.replace(rows);
}

void HandDesk::use() {
  if (!mayUse()) return;
  std::vector<HandOrder> next = orders(staff_.trimmed().toStdString(), reason_.trimmed().toStdString());
  close();
  plan_.order(std::move(next));
}

void HandDesk::asDrafted() {
  close();
  plan_.order({});
}

}  // namespace brimline
