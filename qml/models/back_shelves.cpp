// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/back_shelves.h"

#include <QCoreApplication>

namespace brimline {
namespace {

constexpr ShelfRow kShelves[] = {
    {"due", "day", QT_TRANSLATE_NOOP("back", "Due for a test"),
     QT_TRANSLATE_NOOP("back",
                       "Whose next bottle is due: by the plan told, or else a month after the last one.")},
    {"week", "day", QT_TRANSLATE_NOOP("back", "The week"),
     QT_TRANSLATE_NOOP("back",
                       "What came to the counter, whether the plans of before worked, and what was used up "
                       "for it. No names stand in it.")},
    {"reagents", "day", QT_TRANSLATE_NOOP("back", "Reagents"),
     QT_TRANSLATE_NOOP(
         "back",
         "Lots and their days: new every season, kept cool and away from chlorine. A reading of a "
         "spoilt lot is asked for again.")},
    {"checks", "day", QT_TRANSLATE_NOOP("back", "Instrument checks"),
     QT_TRANSLATE_NOOP(
         "back",
         "Each instrument against its standards, every month. What failed is not believed until it "
         "is right again.")},
    {"charts", "day", QT_TRANSLATE_NOOP("back", "Control charts"),
     QT_TRANSLATE_NOOP("back",
                       "Standards of known value, measured again and again. Each mark is one measurement, in "
                       "standard deviations (sd) from what it should be.")},
    {"instrument", "tools", QT_TRANSLATE_NOOP("back", "Instrument"),
     QT_TRANSLATE_NOOP(
         "back", "The photometer’s line: where it is plugged in, and which profile speaks its language.")},
    {"listener", "tools", QT_TRANSLATE_NOOP("back", "Listener"),
     QT_TRANSLATE_NOOP("back",
                       "For an instrument nobody knows yet: what it sends, and which profile understands it. "
                       "Let it measure while it is listened to.")},
    {"methods", "tools", QT_TRANSLATE_NOOP("back", "Methods"),
     QT_TRANSLATE_NOOP("back", "How each reading may be taken: the range, and the spread of one reading.")},
    {"shop", "shop", QT_TRANSLATE_NOOP("back", "The shop"),
     QT_TRANSLATE_NOOP(
         "back", "What every sheet is signed with. The numbers stand on the Emergency page and on paper.")},
    {"screen", "shop", QT_TRANSLATE_NOOP("back", "This screen"),
     QT_TRANSLATE_NOOP("back", "What the screen of this counter looks like. Paper is not changed by it.")},
    {"products", "shop", QT_TRANSLATE_NOOP("back", "Shelf list"),
     QT_TRANSLATE_NOOP("back", "What the shop sells. A plan names only what stands here.")},
    {"targets", "shop", QT_TRANSLATE_NOOP("back", "Targets"),
     QT_TRANSLATE_NOOP("back",
                       "What a reading should be at home. The shop may set its own; what could harm is "
                       "refused in every plan all the same.")},
    {"staff", "shop", QT_TRANSLATE_NOOP("back", "Staff"),
     QT_TRANSLATE_NOOP(
         "back",
         "With nobody written down the counter is open to all. The first one must be able to let "
         "others in.")},
    {"records", "records", QT_TRANSLATE_NOOP("back", "Records"),
     QT_TRANSLATE_NOOP(
         "back", "Where visits are kept. A reading is shown as kept only once it is safe on the disk.")},
    {"backups", "records", QT_TRANSLATE_NOOP("back", "Backups"),
     QT_TRANSLATE_NOOP(
         "back",
         "One a day, opened and counted before it counts; of the old ones seven days, four weeks and "
         "twelve months are kept. Best on a stick that is not always plugged in.")},
    {"tables", "records", QT_TRANSLATE_NOOP("back", "Tables"),
     QT_TRANSLATE_NOOP(
         "back",
         "Everything in the records for other programs, and what other programs wrote brought in. Tables "
         "hold people’s addresses: keep them as you keep the records.")},
    {"people", "records", QT_TRANSLATE_NOOP("back", "People"),
     QT_TRANSLATE_NOOP("back",
                       "What is known of one customer, as a file for them, or forgotten when they ask.")},
    {"twins", "records", QT_TRANSLATE_NOOP("back", "Double cards"),
     QT_TRANSLATE_NOOP("back",
                       "Cards that may be one person’s. Joined, their vessels and visits stand under one "
                       "card; it can be taken apart again.")},
    {"trail", "records", QT_TRANSLATE_NOOP("back", "Audit trail"),
     QT_TRANSLATE_NOOP("back", "Who changed what, when, and why. Nothing here is ever changed or removed.")},
};

constexpr GroupRow kGroups[] = {{"day", QT_TRANSLATE_NOOP("back", "Each day")},
                                {"tools", QT_TRANSLATE_NOOP("back", "Instruments")},
                                {"shop", QT_TRANSLATE_NOOP("back", "Shop and staff")},
                                {"records", QT_TRANSLATE_NOOP("back", "Records")}};

}  // namespace

std::span<const ShelfRow> back_shelves() {
  return kShelves;
}

std::span<const GroupRow> back_groups() {
  return kGroups;
}

}  // namespace brimline
