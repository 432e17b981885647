// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/reminder/calendar.h"

#include <libical/ical.h>

#include "station/wording/visit_code.h"

namespace brimline {
namespace {

constexpr const char* kContext = "reminder";

icaltimetype utc_of(const Instant& at) {
  return icaltime_from_timet_with_zone(static_cast<time_t>(at.utc.time_since_epoch().count()), 0,
                                       icaltimezone_get_utc_timezone());
}

// The day on the customer's own clock, without an hour.
icaltimetype day_of(const Instant& at) {
  const auto local = std::chrono::floor<std::chrono::days>(at.local());
  const std::chrono::year_month_day date{local};
  icaltimetype out = icaltime_null_date();
  out.year = static_cast<int>(date.year());
  out.month = static_cast<int>(static_cast<unsigned>(date.month()));
  out.day = static_cast<int>(static_cast<unsigned>(date.day()));
  return out;
}

}  // namespace

std::string calendar_entry(const DueVisit& due, const ShopDetails& shop, const Words& words,
                           const Instant& now) {
  const std::string title =
      words.say(kContext, phrase("reminder", "Take a bottle of the water to %1"), {shop.name});
  std::string text = words.say(kContext, phrase("reminder", "We will read: %1."),
                               {analyte_list(words, due_analytes(due.visit))});
  for (const auto* line : {&shop.street, &shop.phone})
    if (*line) text += "\n" + **line;
  const std::string code = visit_code(due.visit.id);

  icalcomponent* alarm = icalcomponent_new(ICAL_VALARM_COMPONENT);
  icalcomponent_add_property(alarm, icalproperty_new_action(ICAL_ACTION_DISPLAY));
  icalcomponent_add_property(alarm, icalproperty_new_description(title.c_str()));
  icaltriggertype before{};
  before.time = icaltime_null_time();
  before.duration = icaldurationtype_from_int(-6 * 3600);
  icalcomponent_add_property(alarm, icalproperty_new_trigger(before));

  icalcomponent* event = icalcomponent_new(ICAL_VEVENT_COMPONENT);
  icalcomponent_add_property(event, icalproperty_new_uid((code + "@brimline.invalid").c_str()));
  icalcomponent_add_property(event, icalproperty_new_dtstamp(utc_of(now)));
  icalcomponent_add_property(event, icalproperty_new_dtstart(day_of(due.due)));
  icalcomponent_add_property(event, icalproperty_new_summary(title.c_str()));
  icalcomponent_add_property(event, icalproperty_new_description(text.c_str()));
  icalcomponent_add_property(event, icalproperty_new_transp(ICAL_TRANSP_TRANSPARENT));
  icalcomponent_add_component(event, alarm);

  icalcomponent* calendar = icalcomponent_new(ICAL_VCALENDAR_COMPONENT);
  icalcomponent_add_property(calendar, icalproperty_new_version("2.0"));
  icalcomponent_add_property(calendar, icalproperty_new_prodid("-//Brimline//Reminder//EN"));
  icalcomponent_add_component(calendar, event);
  char* written = icalcomponent_as_ical_string_r(calendar);
  std::string out = written ? written : "";
  icalmemory_free_buffer(written);
  icalcomponent_free(calendar);
  return out;
}

}  // namespace brimline
