// SPDX-License-Identifier: GPL-3.0-or-later
#include <QSettings>
#include <algorithm>
#include <array>
#include <cmath>

#include "printing/readings_table.h"
#include "printing/slips.h"
#include "station/wording/clock_words.h"
#include "station/wording/hand_words.h"
#include "station/wording/plan_words.h"
#include "station/wording/sheet_words.h"
#include "station/wording/visit_code.h"

namespace brimline {
namespace {

constexpr const char* kContext = "slip";

// As the screen calls them.
constexpr std::array kMethods{phrase("choices", "photometer"), phrase("choices", "strip"),
                              phrase("choices", "drop test"),  phrase("choices", "comparator"),
                              phrase("choices", "probe"),      phrase("choices", "view tube")};

constexpr double kNearlyAll = 0.995;  // a gallon is sold as 3.78 L and dosed as 3.785

std::string page_words(const Words& words) {
  return words.say("sheet", phrase("sheet", "page %1 of %2"));
}

// The packs that hold `amount` (litres or kilograms): the smallest that holds it all, or as many of the
// largest as it takes.
std::string packs_words(const Product& product, double amount, Units units, const Words& words) {
  if (product.packs.empty()) return {};
  std::vector<double> packs = product.packs;
  std::sort(packs.begin(), packs.end());
  const auto enough =
      std::find_if(packs.begin(), packs.end(), [&](double pack) { return pack >= amount * kNearlyAll; });
  const double pack = enough == packs.end() ? packs.back() : *enough;
  const double many = enough == packs.end() ? std::ceil(amount * kNearlyAll / pack) : 1;
  const std::string size = household_amount(words, {pack, product.liquid ? "L" : "kg"}, units);
  if (many <= 1) return words.say(kContext, phrase("slip", "1 pack of %1"), {size});
  return words.say(kContext, phrase("slip", "%1 packs of %2"), {words.number(many, 0), size});
}

// Litres or kilograms of a step's product, all portions.
double in_base(const ProductAmount& amount) {
  return amount.unit == "mL" || amount.unit == "g" ? amount.value / 1000 : amount.value;
}

std::string when_of(const Step& step, const std::optional<Instant>& home_at, const Words& words) {
  return home_at ? clock_words(words, *home_at, later(*home_at, step.start_h))
                 : span_words(words, step.start_h);
}

StaffCopy::Reading reading_of(const Reading& reading, const Words& words) {
  StaffCopy::Reading out;
  out.name = analyte_name(words, reading.analyte);
  if (reading.repeat_of) out.name = words.say("sheet", phrase("sheet", "%1, again"), {out.name});
  out.value = value_words(words, reading.analyte, reading.value, true);
  if (reading.clipped)
    out.value = words.say(
        "sheet",
        *reading.clipped == Clip::above ? phrase("sheet", "more than %1") : phrase("sheet", "less than %1"),
        {out.value});
  if (reading.method) out.method = words.say("choices", kMethods.at(static_cast<size_t>(*reading.method)));
  if (reading.dilution > 1)
    out.method += (out.method.empty() ? "" : ", ") + words.say(kContext, phrase("slip", "diluted %1 times"),
                                                               {words.number(reading.dilution, 0)});
  out.instrument = reading.instrument.value_or("");
  out.lot = reading.lot.value_or("");
  return out;
}

void add_basis(StaffCopy& copy, const Plan& plan, const Words& words) {
  const auto row = [&](const char* label, std::string value) {
    if (!value.empty()) copy.basis.push_back({words.say(kContext, label), std::move(value)});
  };
  if (plan.proof)
    row(phrase("slip", "Proof"),
        words.say(kContext,
                  phrase("slip",
                         "Of %2 waters that these readings may mean, %1 % end inside every target; in %3 % a "
                         "step could do harm."),
                  {words.number(plan.proof->in_target * 100, 0), std::to_string(plan.proof->draws),
                   words.number(plan.proof->harm * 100, 1)}));
  for (const HandChange& change : plan.changes)
    row(phrase("slip", "Changed by hand"), hand_change_line(words, change));
  row(phrase("slip", "Targets"), plan.basis.targets);
  row(phrase("slip", "Shelf"), plan.basis.shelf == built_in_shelf().id
                                   ? words.say(kContext, phrase("slip", "the program's own list"))
                                   : plan.basis.shelf);
  row(phrase("slip", "Program"), plan.basis.program);
}

}  // namespace

TillCodes read_till_codes(const std::string& settings_file) {
  QSettings ini(QString::fromStdString(settings_file), QSettings::IniFormat);
  ini.beginGroup("till");
  TillCodes out;
  for (const QString& product : ini.childKeys())
    if (const QString code = ini.value(product).toString().simplified(); !code.isEmpty())
      out[product.toStdString()] = code.toStdString();
  return out;
}

ShelfSlip make_shelf_slip(const Visit& visit, const Shelf& shelf, const TillCodes& codes,
                          const ShopDetails& shop, const Words& words) {
  ShelfSlip slip;
  slip.title = words.say(kContext, phrase("slip", "From the shelf"));
  slip.note = words.say(kContext, phrase("slip", "What the plan needs in all."));
  slip.nothing = words.say(kContext, phrase("slip", "This plan needs nothing from the shelf."));
  slip.shop = shop.name;
  slip.page = page_words(words);
  slip.footer = visit.bottle.code;
  slip.who = visit.customer ? visit.customer->name.value_or("") : "";
  if (!visit.bottle.code.empty()) slip.who += (slip.who.empty() ? "" : " · ") + visit.bottle.code;
  const Units units = visit.customer ? visit.customer->units.value_or(Units::us) : Units::us;
  std::vector<std::pair<const Product*, ProductAmount>> totals;
  if (visit.plan_as_told && visit.plan_as_told->home_plan)
    for (const Step& step : visit.plan_as_told->steps) {
      if (step.action != Action::add || !step.amount || !step.product) continue;
      const Product* product = shelf.find(*step.product);
      if (!product) continue;  // from what the customer has at home
      const auto same =
          std::find_if(totals.begin(), totals.end(), [&](const auto& t) { return t.first == product; });
      if (same != totals.end())
        same->second.value += in_base(*step.amount);
      else
        totals.emplace_back(product, ProductAmount{in_base(*step.amount), product->liquid ? "L" : "kg"});
    }
  for (const auto& [product, amount] : totals) {
    const auto code = codes.find(product->id);
    slip.lines.push_back({words.say("product", product->name.c_str()), household_amount(words, amount, units),
                          packs_words(*product, amount.value, units, words),
                          code == codes.end() ? product->barcode.value_or("") : code->second});
  }
  if (std::any_of(slip.lines.begin(), slip.lines.end(), [](const auto& line) { return line.packs.empty(); }))
    slip.note += " " + words.say(kContext, phrase("slip", "Take packs that hold at least as much."));
  return slip;
}

BottleLabel label_of(const Visit& visit, const ShopDetails& shop, const Words& words) {
  BottleLabel label{visit.bottle.code, "", shop.name};
  if (visit.bottle.taken_at)
    label.line =
        words.say("sheet", phrase("sheet", "taken %1"), {date_and_time_words(words, *visit.bottle.taken_at)});
  return label;
}

StaffCopy make_staff_copy(const Visit& visit, const ShopDetails& shop, const Words& staff_words) {
  const Words words =
      staff_words.with_clock(clock_for(staff_words, visit.customer ? visit.customer->units : std::nullopt));
  StaffCopy copy;
  const auto say = [&](const char* text) { return words.say(kContext, text); };
  copy.title = say(phrase("slip", "Staff copy"));
  copy.readings_title = words.say("sheet", phrase("sheet", "All readings"));
  copy.steps_title = words.say("sheet", phrase("sheet", "What to do, and when"));
  copy.signed_by = say(phrase("slip", "Handed over by"));
  copy.columns = {words.say("sheet", phrase("sheet", "Reading")),
                  words.say("sheet", phrase("sheet", "This bottle")), say(phrase("slip", "Method")),
                  say(phrase("slip", "Instrument")), say(phrase("slip", "Lot"))};
  copy.shop = shop.name;
  copy.page = page_words(words);
  copy.code = visit_code(visit.id);
  copy.footer = visit.bottle.code + " · " + copy.code;
  const auto row = [&](const char* label, std::string value) {
    if (!value.empty()) copy.who.push_back({words.say("sheet", label), std::move(value)});
  };
  std::optional<Units> units;
  if (visit.customer) {
    const Customer& c = *visit.customer;
    units = c.units;
    std::string who = c.name.value_or("");
    for (const auto* more : {&c.phone, &c.street, &c.email})
      if (*more) who += (who.empty() ? "" : ", ") + **more;
    row(phrase("sheet", "For"), who);
  }
  row(phrase("sheet", "Water"), vessel_words(words, visit.vessel, units));
  std::string bottle = visit.bottle.code;
  if (visit.bottle.tested_at)
    bottle += "; " + words.say("sheet", phrase("sheet", "tested %1"),
                               {date_and_time_words(words, *visit.bottle.tested_at)});
  row(phrase("sheet", "Bottle"), bottle);
  for (const Reading& reading : visit.bottle.readings) copy.readings.push_back(reading_of(reading, words));
  if (!visit.plan_as_told) return copy;
  const Plan& plan = *visit.plan_as_told;
  copy.answer = words.say("sheet", phrase("sheet", "May we swim?")) + " " +
                swim_answer(words, plan, visit.home_at, visit.vessel);
  if (!plan.home_plan) copy.answer += " " + plan.why_not.value_or("");
  for (const Step& step : plan.steps)
    if (plan.home_plan || step.action != Action::add)
      copy.steps.push_back({std::to_string(step.order), when_of(step, visit.home_at, words), step.text,
                            step.action == Action::add ? portion_words(words, step) : ""});
  add_basis(copy, plan, words);
  return copy;
}

}  // namespace brimline
