// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/staff_form.h"

#include <algorithm>

#include "qml/models/choices.h"
#include "qml/models/form_field.h"

namespace brimline {
namespace {

QString q(const std::string& text) {
  return QString::fromStdString(text);
}

QString fault_words(PinFault fault) {
  switch (fault) {
    case PinFault::too_short:
      return StaffForm::tr("Not kept: a PIN has at least 4 digits.");
    case PinFault::too_long:
      return StaffForm::tr("Not kept: a PIN has at most 12 digits.");
    case PinFault::not_digits:
      return StaffForm::tr("Not kept: a PIN is digits alone.");
    case PinFault::too_plain:
      return StaffForm::tr("Not kept: anybody would guess this PIN.");
  }
  return {};
}

}  // namespace

StaffForm::StaffForm(Counter& counter, LockDesk& lock, QObject* parent)
    : QObject(parent), counter_(counter), lock_(lock) {
  form_ = {{"staff_role", "keeper"}, {"staff_here", "yes"}};
}

StaffForm::~StaffForm() {
  pool_.wait();
}

QList<QVariantMap> StaffForm::fields() {
  QVariantList people{QVariantMap{{"key", ""}, {"word", tr("Somebody new")}}};
  for (const StaffMember& member : counter_.records().staff())
    people.append(QVariantMap{{"key", q(member.id)}, {"word", q(member.name)}});
  const auto field = [&](const char* key, const QString& label, QVariantList options = {}) {
    return form_field(key, label, form_.value(QString::fromLatin1(key)).toString(), std::move(options));
  };
  if (people.size() == 1)  // the first one: there is nothing to choose
    return {field("staff_name", tr("Name, as it signs")), field("pin", tr("PIN, 4 to 12 digits"))};
  return {field("staff", tr("Who"), people), field("staff_name", tr("Name, as it signs")),
          field("pin", form_.value("staff").toString().isEmpty() ? tr("PIN, 4 to 12 digits")
                                                                 : tr("New PIN; empty: the old one stays")),
          field("staff_role", tr("May"), choices_for("staff_role")),
          field("staff_here", tr("Works here"), choices_for("yes_no"))};
}

QList<QVariantMap> StaffForm::rows() {
  QList<QVariantMap> out;
  for (const StaffMember& member : counter_.records().staff())
    out.append({{"name", q(member.name)},
                {"detail",
                 member.gone ? tr("works here no longer")
                             : word_for("staff_role", member.role == StaffRole::keeper ? "keeper" : "clerk")},
                {"number", QString()}});
  return out;
}

bool StaffForm::set(const QString& key, const QString& text) {
  form_[key] = text;
  if (key != QLatin1String("staff"))
    return key == QLatin1String("staff_role") || key == QLatin1String("staff_here");
  form_ = {{"staff", text}, {"staff_role", "clerk"}, {"staff_here", "yes"}};
  for (const StaffMember& member : counter_.records().staff())
    if (q(member.id) == text)
      form_ = {{"staff", text},
               {"staff_name", q(member.name)},
               {"staff_role", member.role == StaffRole::keeper ? "keeper" : "clerk"},
               {"staff_here", member.gone ? "no" : "yes"}};
  return true;
}

bool StaffForm::blank() const {
  return form_.value("staff_name").toString().trimmed().isEmpty() &&
         form_.value("pin").toString().trimmed().isEmpty();
}

QString StaffForm::act_word() const {
  return tr("Keep");
}

QString StaffForm::act() {
  StaffMember member;
  const std::string id = form_.value("staff").toString().toStdString();
  for (const StaffMember& one : counter_.records().staff())
    if (one.id == id) member = one;
  const bool known = !member.id.empty();
  if (!known) member.id = counter_.new_id("S");
  member.name = form_.value("staff_name").toString().trimmed().toStdString();
  const bool first = counter_.records().staff().empty();
  member.role =
      first || form_.value("staff_role") == QLatin1String("keeper") ? StaffRole::keeper : StaffRole::clerk;
  member.gone = form_.value("staff_here") == QLatin1String("no");
  const std::string pin = form_.value("pin").toString().trimmed().toStdString();
  if (member.name.empty()) return tr("Not kept: the name is missing.");
  if (pin.empty() && known) {
    keep(member, member.pin_hash);
    return {};
  }
  if (const auto fault = pin_fault(pin)) return fault_words(*fault);
  pool_.start([this, member, pin] {
    auto hash = hash_of_pin(pin);
    QMetaObject::invokeMethod(
        this, [this, member, hash] { keep(member, hash); }, Qt::QueuedConnection);
  });
  return tr("One moment ...");
}

void StaffForm::keep(StaffMember member, const std::optional<std::string>& hash) {
  form_.remove("pin");
  if (!hash) {
    emit said(tr("Not kept: there is no memory for it."));
    return;
  }
  member.pin_hash = *hash;
  const auto done = counter_.records().keep_staff(member);
  if (done) {
    form_ = {{"staff_role", "clerk"}, {"staff_here", "yes"}};
    lock_.refresh();
  }
  if (done) emit kept();
  emit said(done ? tr("%1 is kept.").arg(q(member.name)) : tr("Not kept: %1").arg(q(done.error())));
}

}  // namespace brimline
