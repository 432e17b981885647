// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/tap_walk.h"

namespace brimline::test {
namespace {

// What is on each place and nowhere else.
struct Landmark {
  const char* place;
  const char* item;
};
constexpr Landmark kLandmarks[] = {{"arrivals", "new_bottle"},  {"bottle", "to_bench"},
                                   {"bench", "pad_7"},          {"findings", "findings_title"},
                                   {"take_home", "plan_title"}, {"then_now", "then_title"},
                                   {"back_room", "back_title"}};

struct Person {
  const char *typed, *id, *name;
};
// Of the demo's customers: one vessel each, here twice before.
constexpr Person kPeople[] = {{"quil", "D-C-1", "Ada Quill"},
                              {"bruno f", "D-C-2", "Bruno Ferreira"},
                              {"marcha", "D-C-3", "Chloé Marchand"},
                              {"hale", "D-C-6", "Farouk Hale"}};

QString label_of(int round) {
  return QStringLiteral("T-%1").arg(round);
}

}  // namespace

void TapWalk::go(const char* key) {
  for (const Landmark& mark : kLandmarks)
    if (std::string_view(mark.place) == key)
      clock_.tap("place", QStringLiteral("place_%1").arg(QLatin1String(key)),
                 [&] { return clock_.hand().find(mark.item) != nullptr; });
}

void TapWalk::option(const QString& name) {
  clock_.tap("option", name, [&, name] {
    const QQuickItem* item = clock_.hand().find(name);
    return item && item->property("chosen").toBool();
  });
}

// Its label is scanned key by key; the bottle after it waits already, and both instruments go on to that one
// once this one is read.
void TapWalk::next_bottle(int round) {
  if (desk_.place() == Desk::Arrivals) go("bottle");
  go("arrivals");
  TapClock::within([&] {
    desk_.scan(label_of(round + 1));
    desk_.setPlace(Desk::Arrivals);
  });
  shop_.measure(0, label_of(round));
  shop_.measure(1, label_of(round + 1));
  const auto field = [&] { return clock_.hand().find("label_field"); };
  clock_.tap("field", "label_field", [&] { return field() && field()->hasActiveFocus(); });
  QString typed;
  for (const QChar letter : label_of(round)) {
    typed += letter;
    clock_.letter("letter of a label", letter,
                  [&, typed] { return clock_.hand().text_of("label_field") == typed; });
  }
  clock_.enter("label entered", [&] {
    return clock_.hand().text_of("bottle_code") == label_of(round) && clock_.hand().find("to_bench");
  });
}

void TapWalk::whose(int round) {
  const Person& person = kPeople[static_cast<size_t>(round) % std::size(kPeople)];
  // A label that nobody has carried yet leaves the keyboard in the search already.
  const auto typing = [&] {
    const QQuickItem* field = clock_.hand().find("customer_search");
    return field && field->hasActiveFocus();
  };
  if (!typing()) clock_.tap("field", "customer_search", typing);
  QString typed;
  for (const QChar letter : QString::fromUtf8(person.typed)) {
    typed += letter;
    clock_.letter("letter of a search", letter, [&, typed] {
      return clock_.hand().text_of("customer_search") == typed && clock_.hand().find("customer_0");
    });
  }
  RowModel* found = desk_.ticket()->customers();
  int row = 0;
  while (row + 1 < found->count() && found->row(row).value("customerId").toString() != person.id) ++row;
  clock_.tap("customer found", QStringLiteral("customer_%1").arg(row),
             [&] { return clock_.hand().text_of("bottle_who") == QString::fromUtf8(person.name); });
}

void TapWalk::how_it_came() {
  for (const char* name : {"taken_now", "sampled_at_elbow_deep", "signs_cloudy", "signs_scale"}) option(name);
  const auto field = [&] { return clock_.hand().find("water_temperature"); };
  clock_.tap("field", "water_temperature", [&] { return field() && field()->hasActiveFocus(); });
  clock_.tap("place", "to_bench", [&] { return clock_.hand().find("pad_7") != nullptr; });
}

void TapWalk::type_reading(const QString& analyte, const QString& number) {
  const QString row = "reading_" + analyte;
  const auto chosen = [&] {
    const QQuickItem* item = clock_.hand().find(row);
    return item && item->property("chosen").toBool();
  };
  // The pad goes to what is due by itself; no instrument measures salt here.
  if (chosen()) TapClock::within([&] { desk_.bench()->choose("salt"); });
  clock_.tap("row of the panel", row, chosen);
  const QVariantList methods = desk_.bench()->methods();
  if (methods.size() > 1) option("method_" + methods.last().toMap().value("key").toString());
  QString typed;
  for (const QChar digit : number) {
    typed += digit;
    clock_.tap("key of the number pad", digit == '.' ? "pad_point" : "pad_" + QString(digit),
               [&, typed] { return clock_.hand().text_of("pad_typed") == typed; });
  }
  const auto count = [&] {
    const auto& readings = shop_.kiosk().counter().visit().bottle.readings;
    return std::count_if(readings.begin(), readings.end(), [&](const Reading& one) {
      return one.analyte == analyte.toStdString() && !one.instrument;
    });
  };
  const auto before = count();
  if (!clock_.tap("number kept", "pad_enter", [&] { return count() > before; }))
    clock_.fault(analyte.toStdString() + ": " + desk_.bench()->says().toStdString() + "; typed " +
                 desk_.bench()->typed().toStdString() + " for " + desk_.bench()->analyteName().toStdString());
}

void TapWalk::at_the_bench() {
  const auto& readings = shop_.kiosk().counter().visit().bottle.readings;
  clock_.wait("seven readings by themselves", [&] { return readings.size() >= 7; });
  type_reading("calcium_hardness", "318");
  type_reading("cyanuric_acid", "45");
  clock_.tap("place", "to_findings", [&] { return clock_.hand().find("findings_title") != nullptr; });
}

void TapWalk::findings() {
  const auto listed = [&] { return clock_.hand().find("number_list") != nullptr; };
  clock_.tap("numbers behind it", "numbers_behind", listed);
  clock_.tap("numbers behind it", "numbers_behind", [&] { return !listed(); });
  clock_.wait("plan ready", [&] { return desk_.plan()->ready(); });
  clock_.tap("place", "to_take_home", [&] { return clock_.hand().find("plan_title") != nullptr; });
}

void TapWalk::by_hand() {
  HandDesk& hand = *desk_.hand();
  const auto settled = [&] { return clock_.wait("what-if answered", [&] { return !hand.busy(); }); };
  if (!clock_.tap("what-if opened or left", "change_step_1",
                  [&] { return clock_.hand().find("hand_page") != nullptr; }))
    return;
  settled();
  const auto chosen = [&](const QString& name) {
    const QQuickItem* item = clock_.hand().find(name);
    return item && item->property("chosen").toBool();
  };
  clock_.tap("what-if switch", "hand_step_leave", [&] { return chosen("hand_step_leave"); });
  settled();
  clock_.tap("what-if switch", "hand_step_keep", [&] { return chosen("hand_step_keep"); });
  settled();
  clock_.tap("what-if opened or left", "hand_close",
             [&] { return clock_.hand().find("hand_page") == nullptr; });
}

void TapWalk::take_home() {
  PlanDesk& plan = *desk_.plan();
  clock_.wait("plan ready", [&] { return plan.ready(); });
  by_hand();
  for (const char* name : {"home_at_evening", "paper_a4", "print_size_large", "language_es"}) {
    option(name);
    clock_.wait("plan ready", [&] { return plan.ready(); });
  }
  const QString before = plan.sheetSays();
  clock_.tap("sheet made", "make_pdf", [&] { return plan.busy() || plan.sheetSays() != before; });
  clock_.wait("sheet on file", [&] { return !plan.busy(); });
}

void TapWalk::then_and_now() {
  go("then_now");
  clock_.wait("then beside now", [&] { return desk_.then()->changes()->count() > 0; });
  const QVariantList visits = desk_.then()->earlierVisits();
  if (visits.size() > 1) option("earlier_" + visits.last().toMap().value("key").toString());
  for (const QVariant& reading : desk_.then()->year()->readings()) {
    const QString key = reading.toMap().value("key").toString();
    if (key == desk_.then()->year()->reading()) continue;
    option("year_" + key);
    break;
  }
}

void TapWalk::back_room() {
  go("back_room");
  for (const QVariant& shelf : desk_.back()->shelves()) {
    const QString key = shelf.toMap().value("key").toString();
    const QString group = shelf.toMap().value("group").toString();
    if (group != desk_.back()->group())
      clock_.tap("pages of the Back room", "group_" + group, [&] { return desk_.back()->group() == group; });
    if (key == desk_.back()->shelf()) continue;
    clock_.tap("page of the Back room", "shelf_" + key, [&] { return desk_.back()->shelf() == key; });
    if (key == QLatin1String("week"))
      for (const char* name : {"set_week_which_1", "set_week_which_0"}) option(name);
  }
}

void TapWalk::emergency() {
  const auto open = [&] { return clock_.hand().find("emergency_close") != nullptr; };
  clock_.tap("emergency card", "emergency", open);
  clock_.tap("emergency card", "emergency_close", [&] { return !open(); });
}

void TapWalk::walk(int round) {
  const QQuickWindow* window = shop_.kiosk().window();
  clock_.wait("window in sight", [&] {
    return window->isExposed() && window->isActive() && clock_.hand().find("place_arrivals");
  });
  next_bottle(round);
  whose(round);
  how_it_came();
  at_the_bench();
  shop_.measure(0, label_of(round + 1));
  findings();
  take_home();
  then_and_now();
  back_room();
  emergency();
}

}  // namespace brimline::test
