// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/back_desk.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>

#include <algorithm>

#include "qml/models/back_rows.h"
#include "qml/models/back_shelves.h"
#include "qml/models/settings_fields.h"

namespace brimline {
BackDesk::BackDesk(Settings& settings, QString file, QString out_dir, Counter& counter, LockDesk& lock,
                   Services services, QObject* parent)
    : QObject(parent),
      settings_(settings),
      file_(std::move(file)),
      counter_(counter),
      product_form_(QFileInfo(file_).dir().filePath("shelf").toStdString()),
      target_form_(QFileInfo(file_).dir().filePath("targets.toml").toStdString()),
      lock_(lock),
      staff_form_(counter, lock),
      backup_form_(counter, settings),
      people_form_(counter, settings, out_dir),
      trail_form_(counter),
      tables_form_(counter, out_dir),
      due_form_(counter, settings, services, out_dir),
      week_form_(counter, settings, std::move(services), std::move(out_dir)),
      twins_form_(counter),
      profiles_(QFileInfo(file_).dir().filePath("profiles")),
      listener_(settings_, profiles_),
      fields_({"key", "label", "value", "options"}),
      rows_({"name", "detail", "number"}) {
  connect(&listener_, &ListenerForm::moved, this, [this] {
    if (shelf_ != QLatin1String("listener")) return;
    says_ = listener_.progress();
    refreshRows();
    emit changed();
    emit saysChanged();
  });
  connect(&staff_form_, &StaffForm::said, this, &BackDesk::say);
  connect(&backup_form_, &BackupForm::said, this, &BackDesk::say);
  // What a page says later is for who is still there.
  const auto hear = [this](auto& page, auto said) {
    connect(&page, said, this, [this, &page](const QString& sentence) {
      if (form() == &page) say(sentence);
    });
  };
  hear(tables_form_, &TablesForm::said);
  hear(due_form_, &DueForm::said);
  hear(week_form_, &WeekForm::said);
  connect(&due_form_, &DueForm::moved, this, [this] { followed(&due_form_); });
  connect(&week_form_, &WeekForm::moved, this, [this] { followed(&week_form_); });
  connect(&twins_form_, &TwinsForm::moved, this, [this] { followed(&twins_form_); });
  connect(&tables_form_, &TablesForm::brought_in, &counter_, &Counter::changed);
}

void BackDesk::say(const QString& sentence) {
  says_ = sentence;
  refresh();
  emit saysChanged();
}

// Nothing is made anew that has not changed: a finger may be on it.
void BackDesk::followed(const BackForm* page) {
  BackForm* here = form();
  if (here != page) return;
  fields_.replace(here->fields());
  refreshRows();
  emit changed();
}

BackForm* BackDesk::form() const {
  auto* self = const_cast<BackDesk*>(this);
  const std::pair<const char*, BackForm*> forms[] = {
      {"staff", &self->staff_form_},   {"backups", &self->backup_form_}, {"people", &self->people_form_},
      {"trail", &self->trail_form_},   {"due", &self->due_form_},        {"week", &self->week_form_},
      {"tables", &self->tables_form_}, {"twins", &self->twins_form_}};
  for (const auto& [key, page] : forms)
    if (shelf_ == QLatin1String(key)) return page;
  return nullptr;
}

// Reagents, checks and the listener are the clerk's own work; so is a look.
bool BackDesk::may_change() const {
  static constexpr const char* kClerks[] = {"reagents", "checks", "charts", "listener",
                                            "trail",    "screen", "due"};
  return lock_.keeper() || std::any_of(std::begin(kClerks), std::end(kClerks),
                                       [&](const char* key) { return shelf_ == QLatin1String(key); });
}

bool BackDesk::scan(const QString& code) {
  if (shelf_ != QLatin1String("products")) return false;
  if (!product_form_.show_barcode(code)) product_form_.set("product_barcode", code);
  refresh();
  return true;
}

QVariantList BackDesk::shelves() const {
  QVariantList out;
  for (const ShelfRow& row : back_shelves())
    out.append(QVariantMap{{"key", QString::fromLatin1(row.key)},
                           {"word", QCoreApplication::translate("back", row.word)},
                           {"group", QString::fromLatin1(row.group)}});
  return out;
}

QVariantList BackDesk::groups() const {
  QVariantList out;
  for (const GroupRow& row : back_groups())
    out.append(QVariantMap{{"key", QString::fromLatin1(row.key)},
                           {"word", QCoreApplication::translate("back", row.word)}});
  return out;
}

QString BackDesk::group() const {
  for (const ShelfRow& row : back_shelves())
    if (shelf_ == QLatin1String(row.key)) return QString::fromLatin1(row.group);
  return {};
}

void BackDesk::setGroup(const QString& key) {
  if (key == group()) return;
  for (const ShelfRow& row : back_shelves())
    if (key == QLatin1String(row.group)) return setShelf(QString::fromLatin1(row.key));
}

QString BackDesk::title() const {
  for (const ShelfRow& row : back_shelves())
    if (shelf_ == QLatin1String(row.key)) return QCoreApplication::translate("back", row.word);
  return {};
}

void BackDesk::setShelf(const QString& key) {
  if (key == shelf_) return;
  listener_.stop();
  if (BackForm* page = form()) page->left();
  shelf_ = key;
  says_.clear();
  before_.forget();
  as_before_.reset();
  untouched_.reset();
  if (BackForm* page = form()) page->shown();
  refresh();
  emit saysChanged();
}

QString BackDesk::intro() const {
  for (const ShelfRow& row : back_shelves())
    if (shelf_ == QLatin1String(row.key)) return QCoreApplication::translate("back", row.intro);
  return {};
}

QString BackDesk::actWord() const {
  if (const BackForm* page = form()) return page->act_word();
  if (SupplyForm::is_ours(shelf_)) return supply_form_.act_word(shelf_);
  if (shelf_ == QLatin1String("listener")) return listener_.act_word();
  return shelf_ == QLatin1String("instrument") ? tr("Listen here") : tr("Keep");
}

RowModel* BackDesk::fields() {
  ask();
  return &fields_;
}

RowModel* BackDesk::rows() {
  ask();
  return &rows_;
}

void BackDesk::ask() {
  if (asked_) return;
  asked_ = true;
  refresh();
}

void BackDesk::refresh() {
  if (!asked_) return emit changed();
  QList<QVariantMap> fields = settings_fields(shelf_, settings_);
  if (shelf_ == QLatin1String("instrument")) fields = instrument_fields(settings_, line_, profiles_);
  if (SupplyForm::is_ours(shelf_)) fields = supply_form_.fields(shelf_);
  if (shelf_ == QLatin1String("products")) fields = product_form_.fields();
  if (shelf_ == QLatin1String("targets")) fields = target_form_.fields();
  if (shelf_ == QLatin1String("listener")) fields = listener_.fields(line_);
  if (BackForm* page = form()) fields = page->fields();
  fields_.replace({});
  fields_.replace(fields);
  refreshRows();
  emit changed();
}

void BackDesk::refreshRows() {
  QList<QVariantMap> rows;
  if (shelf_ == QLatin1String("instrument"))
    rows = instrument_rows(settings_.lines[line_].profile, profiles_, counter_.words());
  if (shelf_ == QLatin1String("products")) rows = product_form_.rows();
  if (shelf_ == QLatin1String("targets")) rows = target_form_.rows();
  if (shelf_ == QLatin1String("listener")) rows = listener_.rows();
  if (shelf_ == QLatin1String("methods")) rows = method_rows();
  if (shelf_ == QLatin1String("reagents")) rows = lot_rows(counter_);
  if (shelf_ == QLatin1String("checks")) rows = check_rows(counter_);
  if (shelf_ == QLatin1String("records"))
    rows = {{{"name", tr("Database")},
             {"detail", QString::fromStdString(counter_.records().place())},
             {"number", QString()}},
            {{"name", tr("Settings")}, {"detail", file_}, {"number", QString()}}};
  if (BackForm* page = form()) rows = page->rows();
  rows_.replace(rows);
}

void BackDesk::setValue(const QString& key, const QString& text) {
  if (!untouched_) untouched_ = settings_;
  if (BackForm* page = form()) {
    if (page->set(key, text)) refresh();
    return;
  }
  if (SupplyForm::is_ours(shelf_)) {
    if (supply_form_.set(key, text, counter_)) refresh();
    return;
  }
  if (shelf_ == QLatin1String("products")) {
    if (product_form_.set(key, text)) refresh();
    return;
  }
  if (shelf_ == QLatin1String("targets")) {
    if (target_form_.set(key, text)) refresh();
    return;
  }
  if (shelf_ == QLatin1String("listener")) {
    if (listener_.set(key, text, line_)) refresh();
    return;
  }
  if (shelf_ == QLatin1String("instrument")) {
    InstrumentLine& line = settings_.lines[line_];
    if (key == QLatin1String("line")) line_ = std::clamp(text.toInt(), 1, kMostInstruments) - 1;
    if (key == QLatin1String("port")) line.port = text.trimmed();
    if (key == QLatin1String("profile")) line.profile = text;
    if (key != QLatin1String("port")) refresh();
    return;
  }
  if (set_field(key, text, settings_)) refresh();
}

void BackDesk::apply() {
  if (!may_change()) return say(tr("Only a keeper may change this."));
  if (BackForm* page = form()) {
    const QString said = page->act();
    const bool kept = save_settings(settings_, file_);
    say(kept ? said : tr("The settings’ file cannot be written: %1").arg(file_));
    return;
  }
  if (shelf_ == QLatin1String("products") || shelf_ == QLatin1String("targets")) return keep_files();
  const Settings before = untouched_.value_or(settings_);  // the listener's act changes them
  if (shelf_ == QLatin1String("listener")) {
    bool uses = false;
    says_ = listener_.act(line_, uses);
    refresh();
    emit saysChanged();
    if (!uses) return;
  } else if (SupplyForm::is_ours(shelf_)) {
    says_ = supply_form_.keep(shelf_, counter_);
    refresh();
    emit saysChanged();
    return;
  } else {
    says_ = tr("Kept.");
  }
  as_before_ = before == settings_ ? std::nullopt : std::optional(before);  // nothing to undo
  keep_settings();
}

void BackDesk::keep_settings() {
  untouched_.reset();
  if (!save_settings(settings_, file_)) says_ = tr("The settings’ file cannot be written: %1").arg(file_);
  (void)counter_.records().note(
      {"settings", shelf_.toStdString(), std::nullopt, std::nullopt, std::nullopt, std::nullopt});
  lock_.refresh();
  emit saysChanged();
  emit applied();
}

void BackDesk::keep_files() {
  const QDir folder = QFileInfo(file_).dir();
  before_.remember({folder.filePath("shelf"), folder.filePath("targets.toml")});
  const Words& words = counter_.words();
  says_ = shelf_ == QLatin1String("products") ? product_form_.keep(words) : target_form_.keep(words);
  before_.settle();
  refresh();
  emit saysChanged();
  emit counter_.changed();  // the plan on the counter may now choose otherwise
}

void BackDesk::undo() {
  if (!canUndo()) return;
  if (!may_change()) return say(tr("Only a keeper may change this."));
  if (before_.changed()) {
    says_ = before_.put_back() ? tr("As it was before.") : tr("A file cannot be written; look at the list.");
    product_form_.again();
    target_form_.again();
    refresh();
    emit saysChanged();
    emit counter_.changed();
    return;
  }
  settings_ = *as_before_;
  as_before_.reset();
  says_ = tr("As it was before.");
  refresh();
  keep_settings();
}

}  // namespace brimline
