// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/journal/work.h"

#include <nlohmann/json.hpp>

#include "station/journal/merge.h"
#include "station/overnight/overnight_json.h"
#include "station/plan_json.h"
#include "station/visit_json.h"

namespace brimline {

using nlohmann::ordered_json;

namespace {

ordered_json circumstances_of(const Visit& visit) {
  ordered_json out = visit_to_json(visit);
  out.erase("readings");
  out.erase("plan_as_told");
  return out;
}

ordered_json readings_of(const std::vector<Reading>& readings) {
  ordered_json out = ordered_json::array();
  for (const Reading& one : readings) out.push_back(reading_to_json(one));
  return out;
}

WaitingWork made(const char* kind, const std::string& subject, const ordered_json& content) {
  WaitingWork out;
  out.kind = kind;
  out.subject = subject;
  out.content = content.dump();
  return out;
}

StoreError broken(const std::string& what) {
  return {StoreTrouble::damaged, "work in the journal cannot be read: " + what};
}

StoreError clash_error(const Clash& clash) {
  const auto text = [](const ordered_json& value) {
    return value.is_null() ? std::string("-") : value.is_string() ? value.get<std::string>() : value.dump();
  };
  return {StoreTrouble::conflicting,
          clash.field + ": ours " + text(clash.ours) + ", theirs " + text(clash.theirs)};
}

// The visit as it stands, or why there is none.
Stored<Visit> standing(Store& store, const std::string& id) {
  auto visit = store.visit(id);
  if (!visit) return tl::unexpected(visit.error());
  if (!*visit) return tl::unexpected(StoreError{StoreTrouble::refused, "there is no visit " + id});
  return std::move(**visit);
}

template <class T>
Stored<void> done(const Stored<T>& stored) {
  if (!stored) return tl::unexpected(stored.error());
  return {};
}

struct Doing {
  Store& store;
  const std::string& subject;
  const ordered_json& content;
  bool ours_win;

  Stored<void> begin() {
    const auto visit = visit_from(content.at("visit"), "journal");
    if (!visit) return tl::unexpected(broken(visit.error().front().what));
    return store.begin_visit(*visit);
  }

  Stored<void> update() {
    const auto there = standing(store, subject);
    if (!there) return tl::unexpected(there.error());
    const ordered_json theirs = circumstances_of(*there);
    auto joint = joined(content.at("before"), content.at("after"), theirs, ours_win);
    if (!joint) return tl::unexpected(clash_error(joint.error()));
    if (*joint == theirs) return {};
    (*joint)["readings"] = readings_of(there->bottle.readings);
    auto visit = visit_from(*joint, "journal");
    if (!visit) return tl::unexpected(broken(visit.error().front().what));
    if (!there->plan_as_told) return store.update_visit(*visit);
    visit->plan_as_told = there->plan_as_told;  // told already: a new revision
    return done(store.keep(*visit));
  }

  // A reading of what is there already is a repeat of it, whoever read it first.
  static void number(Visit& visit, Reading& reading) {
    reading.repeat_of.reset();
    for (size_t i = 0; i < visit.bottle.readings.size() && !reading.repeat_of; ++i)
      if (visit.bottle.readings[i].analyte == reading.analyte && !visit.bottle.readings[i].repeat_of)
        reading.repeat_of = static_cast<int>(i);
  }

  Stored<void> reading() {
    auto there = standing(store, subject);
    if (!there) return tl::unexpected(there.error());
    auto one = reading_from(content.at("reading"), "journal");
    if (!one) return tl::unexpected(broken(one.error().front().what));
    number(*there, *one);
    if (!there->plan_as_told) return store.add_reading(subject, *one);
    there->bottle.readings.push_back(*one);
    return done(store.keep(*there));
  }

  Stored<void> tell() {
    auto there = standing(store, subject);
    if (!there) return tl::unexpected(there.error());
    ordered_json form = circumstances_of(*there);
    form["readings"] = readings_of(there->bottle.readings);
    form["plan_as_told"] = content.at("plan");
    const auto told = visit_from(form, "journal");
    if (!told) return tl::unexpected(broken(told.error().front().what));
    if (there->plan_as_told) return done(store.keep(*told));
    if (auto stored = store.tell_plan(subject, *told->plan_as_told); !stored) return stored;
    return store.finish(subject);
  }

  Stored<void> correct() {
    auto there = standing(store, subject);
    if (!there) return tl::unexpected(there.error());
    const auto joint =
        joined(content.at("before"), content.at("after"), readings_of(there->bottle.readings), ours_win);
    if (!joint) return tl::unexpected(clash_error(joint.error()));
    std::vector<Reading> readings;
    for (const ordered_json& form : *joint) {
      const auto one = reading_from(form, "journal");
      if (!one) return tl::unexpected(broken(one.error().front().what));
      readings.push_back(*one);
    }
    return store.correct_readings(subject, readings, content.value("reason", ""));
  }

  Stored<void> overnight() {
    const ordered_json& after = content.at("after");
    auto test = read_overnight(after.dump(), "journal");
    if (!test) return tl::unexpected(broken(test.error().front().what));
    if (!content.contains("before")) return done(store.begin_overnight(*test));
    std::optional<StoreError> wrong;
    const auto edit = [&](OvernightTest& there) {
      const auto joint = joined(content.at("before"), after, overnight_to_json(there), ours_win);
      if (!joint) {
        wrong = clash_error(joint.error());
        return;
      }
      auto read = read_overnight(joint->dump(), "journal");
      if (read)
        there = std::move(*read);
      else
        wrong = broken(read.error().front().what);
    };
    // Of that test, though another counter has begun one after it.
    const auto changed = store.change_overnight(subject, edit, test->number);
    if (wrong) return tl::unexpected(*wrong);
    return done(changed);
  }

  Stored<void> orphan() {
    const auto at = Instant::parse(content.value("heard_at", ""));
    const auto reading = reading_from(content.at("reading"), "journal");
    if (!at || !reading) return tl::unexpected(broken("a reading of no bottle"));
    OrphanReading out{subject, *at, std::nullopt, *reading};
    if (content.contains("sample")) out.sample = content.at("sample").get<std::string>();
    return store.keep_orphan(out);
  }

  Stored<void> settle() {
    auto as = reading_from(content.at("reading"), "journal");
    if (!as) return tl::unexpected(broken(as.error().front().what));
    std::optional<std::string> visit;
    if (content.contains("visit")) {
      visit = content.at("visit").get<std::string>();
      auto there = standing(store, *visit);
      if (!there) return tl::unexpected(there.error());
      number(*there, *as);
    }
    return store.settle_orphan(content.value("orphan", ""), visit, *as);
  }

  Stored<void> customer() {
    auto seen = customer_from(content.at("before"), "journal");
    const auto now = customer_from(content.at("after"), "journal");
    if (!seen || !now) return tl::unexpected(broken("a customer's card"));
    const auto there = store.customer(subject);
    if (!there) return tl::unexpected(there.error());
    const auto joint = joined(content.at("before"), content.at("after"),
                              *there ? customer_to_json(**there) : content.at("before"), ours_win);
    if (!joint) return tl::unexpected(clash_error(joint.error()));
    const auto card = customer_from(*joint, "journal");
    if (!card) return tl::unexpected(broken(card.error().front().what));
    return done(store.edit_customer(there->value_or(*seen), *card));
  }

  Stored<void> vessel() {
    const std::string owner = content.value("customer", "");
    const auto all = store.vessels_of(owner);
    if (!all) return tl::unexpected(all.error());
    ordered_json theirs = content.at("before");
    for (const Vessel& one : *all)
      if (one.id == subject) theirs = vessel_to_json(one);
    const auto joint = joined(content.at("before"), content.at("after"), theirs, ours_win);
    if (!joint) return tl::unexpected(clash_error(joint.error()));
    const auto vessel = vessel_from(*joint, "journal");
    if (!vessel) return tl::unexpected(broken(vessel.error().front().what));
    return store.save_vessel(*vessel, owner);
  }
};

struct Kind {
  const char* name;
  Stored<void> (Doing::*does)();
};
constexpr Kind kKinds[] = {{"begin", &Doing::begin},       {"update", &Doing::update},
                           {"reading", &Doing::reading},   {"tell", &Doing::tell},
                           {"correct", &Doing::correct},   {"overnight", &Doing::overnight},
                           {"orphan", &Doing::orphan},     {"settle", &Doing::settle},
                           {"customer", &Doing::customer}, {"vessel", &Doing::vessel}};

}  // namespace

namespace work {

WaitingWork begin(const Visit& visit) {
  return made("begin", visit.id, {{"visit", visit_to_json(visit)}});
}

WaitingWork update(const Visit& before, const Visit& after) {
  return made("update", after.id, {{"before", circumstances_of(before)}, {"after", circumstances_of(after)}});
}

WaitingWork reading(const std::string& visit, const Reading& reading) {
  return made("reading", visit, {{"reading", reading_to_json(reading)}});
}

WaitingWork tell(const std::string& visit, const Plan& plan) {
  return made("tell", visit, {{"plan", plan_to_json(plan)}});
}

WaitingWork correct(const std::string& visit, const std::vector<Reading>& before,
                    const std::vector<Reading>& after, const std::string& reason) {
  return made("correct", visit,
              {{"before", readings_of(before)}, {"after", readings_of(after)}, {"reason", reason}});
}

WaitingWork overnight(const std::optional<OvernightTest>& before, const OvernightTest& after) {
  ordered_json content{{"after", overnight_to_json(after)}};
  if (before) content["before"] = overnight_to_json(*before);
  return made("overnight", after.visit, content);
}

WaitingWork orphan(const OrphanReading& orphan) {
  ordered_json content{{"heard_at", orphan.heard_at.text()}, {"reading", reading_to_json(orphan.reading)}};
  if (orphan.sample) content["sample"] = *orphan.sample;
  return made("orphan", orphan.id, content);
}

WaitingWork settle(const std::string& orphan, const std::optional<std::string>& visit, const Reading& as) {
  ordered_json content{{"orphan", orphan}, {"reading", reading_to_json(as)}};
  if (visit) content["visit"] = *visit;
  return made("settle", visit.value_or(orphan), content);
}

WaitingWork customer(const Customer& seen, const Customer& now) {
  return made("customer", now.id, {{"before", customer_to_json(seen)}, {"after", customer_to_json(now)}});
}

WaitingWork vessel(const Vessel& before, const Vessel& after, const std::string& customer) {
  return made("vessel", after.id,
              {{"before", vessel_to_json(before)}, {"after", vessel_to_json(after)}, {"customer", customer}});
}

WaitingWork insisted(WaitingWork work) {
  ordered_json content = ordered_json::parse(work.content, nullptr, false);
  if (content.is_object()) content["insist"] = true;
  work.content = content.dump();
  work.refusal.reset();
  return work;
}

}  // namespace work

Stored<void> do_work(Store& store, const WaitingWork& work) {
  const ordered_json content = ordered_json::parse(work.content, nullptr, false);
  if (!content.is_object()) return tl::unexpected(broken("it is no JSON object"));
  try {
    for (const Kind& kind : kKinds)
      if (work.kind == kind.name)
        return (Doing{store, work.subject, content, content.value("insist", false)}.*kind.does)();
  } catch (const ordered_json::exception& wrong) {  // the library's only way to say that a field is missing
    return tl::unexpected(broken(wrong.what()));
  }
  return tl::unexpected(broken("\"" + work.kind + "\" is not known"));
}

}  // namespace brimline
