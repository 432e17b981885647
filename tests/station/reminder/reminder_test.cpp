// SPDX-License-Identifier: GPL-3.0-or-later
// When the next bottle is due, and the entry for a calendar as an independent reader sees it.
#include <gmock/gmock.h>

#include <QProcess>

#include "station/reminder/calendar.h"
#include "tests/station/store/workshop.h"

namespace brimline::tests {
namespace {

using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;

Instant at(const std::string& text) {
  return Instant::parse(text).value();
}

Visit plain_visit() {
  Visit visit = whole_visit("R-1");
  visit.plan_as_told.reset();
  visit.home_at.reset();
  visit.bottle.tested_at.reset();
  visit.bottle.taken_at = at("2026-06-14T08:10:00-05:00");
  visit.vessel.sanitizer = Sanitizer::chlorine;
  return visit;
}

TEST(Due, IsAMonthAfterABottleWithoutAPlan) {
  EXPECT_EQ(due_of(plain_visit())->text(), "2026-07-14T08:30:00-05:00");
  Visit unknown = plain_visit();
  unknown.bottle.taken_at.reset();
  EXPECT_FALSE(due_of(unknown));
  EXPECT_THAT(due_analytes(plain_visit()), Contains("cyanuric_acid"));
  Visit bromine = plain_visit();
  bromine.vessel.sanitizer = Sanitizer::bromine;
  EXPECT_THAT(due_analytes(bromine), Not(Contains("cyanuric_acid")));
}

// The last step ends after its wait; nobody comes between ten at night and seven.
TEST(Due, IsWhenThePlanSays) {
  Visit visit = plain_visit();
  Plan plan;
  plan.home_plan = true;
  plan.steps.resize(1);
  plan.steps[0].start_h = 2;
  plan.steps[0].wait_h = 4;
  plan.retest = Retest{24, {"free_chlorine", "ph"}};
  visit.plan_as_told = plan;
  visit.home_at = at("2026-06-14T10:00:00-05:00");
  EXPECT_EQ(due_of(visit)->text(), "2026-06-15T16:00:00-05:00");
  visit.home_at = at("2026-06-14T19:00:00-05:00");
  EXPECT_EQ(due_of(visit)->text(), "2026-06-16T07:00:00-05:00");
  EXPECT_EQ(analyte_list(Words("en"), due_analytes(visit)), "free chlorine, pH");
  visit.plan_as_told->home_plan = false;  // somebody else decides: ask the next day
  EXPECT_EQ(due_of(visit)->text(), "2026-06-15T19:00:00-05:00");
}

// python3-icalendar reads what libical wrote: RFC 5545.
TEST(CalendarEntry, IsReadByAnotherProgram) {
  Visit visit = plain_visit();
  visit.customer->name = "Inès Ørsted";
  visit.customer->street = "1 Invented Lane";
  ShopDetails shop;
  shop.name = "The Invented Pool Shop, by the river; and the long bridge over it, second door on the left";
  shop.phone = "555-0100";
  const DueVisit due{visit, *due_of(visit)};
  const std::string text = calendar_entry(due, shop, Words("en"), at("2026-06-20T09:00:00-05:00"));
  EXPECT_THAT(text, Not(HasSubstr("rsted")));
  EXPECT_THAT(text, Not(HasSubstr("Invented Lane")));
  EXPECT_EQ(text, calendar_entry(due, shop, Words("en"), at("2026-06-20T09:00:00-05:00")));
  for (size_t from = 0; from < text.size();) {
    const size_t end = text.find("\r\n", from);
    ASSERT_NE(end, std::string::npos) << "lines end with CRLF (RFC 5545, 3.1)";
    EXPECT_LE(end - from, 75u) << "octets of a line (RFC 5545, 3.1)";
    from = end + 2;
  }
  QProcess reader;
  reader.start("/usr/bin/python3",  // Debian's, which has the package
               {"-c",
                "import sys, icalendar\n"
                "c = icalendar.Calendar.from_ical(sys.stdin.buffer.read())\n"
                "e = [x for x in c.walk() if x.name == 'VEVENT']\n"
                "a = [x for x in c.walk() if x.name == 'VALARM']\n"
                "print(len(e), len(a), c['VERSION'], e[0]['DTSTART'].dt, e[0]['DTSTAMP'].dt)\n"
                "print(a[0]['TRIGGER'].dt, a[0]['ACTION'])\n"
                "print(e[0]['SUMMARY'])\nprint(e[0]['DESCRIPTION'])\nprint(e[0]['UID'])\n"});
  reader.write(QByteArray::fromStdString(text));
  reader.closeWriteChannel();
  ASSERT_TRUE(reader.waitForFinished());
  ASSERT_EQ(reader.exitCode(), 0) << reader.readAllStandardError().toStdString();
  const std::string out = reader.readAllStandardOutput().toStdString();
  EXPECT_THAT(out, HasSubstr("1 1 2.0 2026-07-14 2026-06-20 14:00:00+00:00"));
  EXPECT_THAT(out, HasSubstr("-1 day, 18:00:00 DISPLAY"));
  EXPECT_THAT(out, HasSubstr("Take a bottle of the water to " + shop.name));
  EXPECT_THAT(out, HasSubstr("calcium hardness"));
  EXPECT_THAT(out, HasSubstr("555-0100"));
}

}  // namespace
}  // namespace brimline::tests
