// SPDX-License-Identifier: GPL-3.0-or-later
// Who is at the counter, what is taken back, backups brought back, people forgotten, a server that is away:
// through the real window and its desks.
#include <QDir>

#include "tests/qml/counter_fixture.h"
#include "tests/support/cut_proxy.h"
#include "tests/support/postgresql_server.h"
#include "tests/support/run_program.h"

namespace brimline::test {
namespace {

class CareAtTheCounter : public CounterTest {
 protected:
  BackDesk& back() const { return *kiosk_->desk().back(); }
  LockDesk& lock() const { return *kiosk_->desk().lock(); }
  void SetUp() override { open_counter("2026-06-14T09:00:00-05:00"); }

  void act(const QString& shelf, const QList<std::pair<QString, QString>>& values) const {
    back().setShelf(shelf);
    for (const auto& [key, value] : values) back().setValue(key, value);
    back().apply();
  }
  bool said(const QString& part) const {
    return Hand::wait_for([&] { return back().says().contains(part); }, 10000);
  }
  // What is read beside the screen is there.
  bool first_row(const QString& name) const {
    return Hand::wait_for(
        [&] { return back().rows()->count() > 0 && back().rows()->row(0).value("name").toString() == name; },
        10000);
  }
  void write_down(const QString& name, const QString& pin, const QString& role) const {
    act("staff", {{"staff", ""}, {"staff_name", name}, {"pin", pin}, {"staff_role", role}});
    ASSERT_TRUE(said(name + " is kept.")) << back().says().toStdString();
  }
  void type_pin(const QString& pin) {
    for (const QChar digit : pin) ASSERT_TRUE(hand_->touch("pad_" + QString(digit)));
    ASSERT_TRUE(hand_->touch("lock_enter"));
    ASSERT_TRUE(Hand::wait_for([&] { return !lock().busy(); }, 10000));
  }
  void begin_customer(const std::string& name) const {
    kiosk_->desk().startBottle();
    ASSERT_TRUE(kiosk_->counter().change([&](Visit& v) {
      Customer customer;
      customer.id = "C-" + name;
      customer.name = name;
      v.customer = customer;
      v.vessel.id = "W-" + name;
    }));
  }
  Records::Kept read(const std::string& analyte, double value) const {
    Reading reading;
    reading.analyte = analyte;
    reading.value = value;
    reading.method = Method::photometer;
    return kiosk_->counter().add_reading(reading);
  }
};

TEST_F(CareAtTheCounter, OpensToAPinAndSignsWhatIsDone) {
  EXPECT_FALSE(lock().locked());
  act("staff", {{"staff_name", "Ana"}, {"pin", "1234"}, {"staff_role", "keeper"}});
  EXPECT_TRUE(back().says().contains("guess")) << back().says().toStdString();
  write_down("Ana", "2468", "keeper");
  EXPECT_FALSE(lock().locked());  // who writes the first one down is not shut out
  write_down("Ben", "1357", "clerk");
  lock().lock();
  ASSERT_TRUE(hand_->find("lock_page"));
  EXPECT_TRUE(small_targets(kiosk_->window()).isEmpty())
      << small_targets(kiosk_->window()).join(", ").toStdString();
  ASSERT_TRUE(hand_->touch("lock_person_1"));  // Ben
  type_pin("1111");
  EXPECT_TRUE(lock().locked());
  EXPECT_TRUE(lock().says().contains("not the PIN"));
  type_pin("1357");
  EXPECT_FALSE(lock().locked()) << lock().says().toStdString();
  EXPECT_EQ(lock().who(), "Ben");
  // A clerk tests and writes reagents down, and changes nothing the shop is set to.
  act("shop", {{"name", "Another shop"}});
  EXPECT_TRUE(back().says().contains("Only a keeper")) << back().says().toStdString();
  begin_customer("Invented");
  ASSERT_TRUE(read("ph", 7.9));
  ASSERT_TRUE(read("total_alkalinity", 90));
  kiosk_->desk().setPlace(Desk::Bench);
  ASSERT_TRUE(hand_->touch("take_back"));
  EXPECT_EQ(kiosk_->counter().visit().bottle.readings.size(), 1u);
  const auto trail = kiosk_->counter().records().audit_trail(1, 0);
  ASSERT_EQ(trail.size(), 1u);
  EXPECT_EQ(trail[0].by.who, "Ben");
  EXPECT_EQ(trail[0].note.field, "total_alkalinity");
  EXPECT_EQ(trail[0].note.after, std::nullopt);
  back().setShelf("trail");
  ASSERT_GT(back().rows()->count(), 0);
  EXPECT_EQ(back().rows()->row(0).value("name").toString(), "Total alkalinity");
  EXPECT_TRUE(back().rows()->row(0).value("number").toString().startsWith("Ben"));
  // Closed again, by hand and after a restart; the emergency page is one touch away all the same.
  ASSERT_TRUE(hand_->touch("lock_now"));
  EXPECT_TRUE(lock().locked());
  ASSERT_TRUE(hand_->touch("lock_emergency"));
  EXPECT_TRUE(hand_->find("emergency_close"));
  close_counter();
  open_counter("2026-06-14T09:10:00-05:00");
  EXPECT_TRUE(lock().locked());
  // By the keyboard, too. Ana is a keeper.
  lock().choose(lock().people().front().toMap().value("key").toString());
  hand_->type("2468");
  hand_->key(Qt::Key_Return);
  ASSERT_TRUE(Hand::wait_for([&] { return !lock().locked(); }, 10000));
  act("shop", {{"name", "Another shop"}});
  EXPECT_EQ(kiosk_->desk().shop(), "Another shop");
}

TEST_F(CareAtTheCounter, KnowsWhoIsDueAndWritesToThem) {
  begin_customer("Invented");
  ASSERT_TRUE(kiosk_->counter().change([](Visit& v) {
    v.bottle.taken_at = Instant::parse("2026-05-10T09:00:00-05:00");
    v.customer->street = "1 Invented Lane";
  }));
  ASSERT_TRUE(read("ph", 7.4));
  const std::string id = kiosk_->counter().visit().id;
  Plan plan;
  plan.home_plan = true;
  ASSERT_TRUE(kiosk_->counter().records().tell(id, plan));
  kiosk_->desk().setPlace(Desk::BackRoom);
  back().setShelf("due");
  ASSERT_TRUE(first_row("Invented"));
  ASSERT_EQ(back().rows()->count(), 1);
  EXPECT_EQ(back().rows()->row(0).value("number").toString(), "overdue, days: 5");
  EXPECT_EQ(back().actWord(), "");
  back().setValue("due_span", "week");
  EXPECT_TRUE(first_row("Nobody"));
  back().setValue("due_span", "overdue");
  ASSERT_TRUE(first_row("Invented"));
  back().setValue("due_one", QString::fromStdString(id));
  back().setValue("due_act", "file");
  back().apply();
  ASSERT_TRUE(said("PDF: ")) << back().says().toStdString();
  QProcess reader;
  reader.start("pdftotext", {back().says().mid(5), "-"});
  ASSERT_TRUE(reader.waitForFinished());
  const QString text = QString::fromUtf8(reader.readAllStandardOutput()).simplified();
  EXPECT_TRUE(text.contains("was due on Tuesday 9 June")) << text.toStdString();
  EXPECT_TRUE(text.contains("1 Invented Lane"));
  back().setValue("due_act", "calendar");
  back().apply();
  EXPECT_TRUE(said("-reminder.ics")) << back().says().toStdString();
}

TEST_F(CareAtTheCounter, ACardIsEditedAndTakenBack) {
  begin_customer("Invented");
  kiosk_->desk().setPlace(Desk::Bottle);
  ASSERT_TRUE(Hand::wait_for([&] { return hand_->touch("edit_customer"); }, 3000));
  auto* phone = hand_->find("new_phone");
  ASSERT_TRUE(phone);
  ASSERT_TRUE(hand_->touch("new_phone"));
  hand_->type("555-0199");
  ASSERT_TRUE(hand_->touch("save_customer"));
  Counter& counter = kiosk_->counter();
  const std::string id = counter.visit().customer->id;
  EXPECT_EQ(counter.visit().customer->phone, "555-0199");
  ASSERT_EQ(counter.records().customers("555-0199").size(), 1u);
  // Another counter writes another number in between: nothing is overwritten unseen.
  Ticket& ticket = *kiosk_->desk().ticket();
  QVariantMap card = ticket.beginEdit();
  Customer theirs = *counter.visit().customer, seen = theirs;
  theirs.phone = "555-0111";
  ASSERT_FALSE(counter.records().edit_customer(seen, theirs).value());
  card["phone"] = "555-0122";
  EXPECT_FALSE(ticket.editCustomer(card));
  EXPECT_TRUE(ticket.says().contains("555-0111")) << ticket.says().toStdString();
  ASSERT_EQ(counter.records().customers("555-0111").size(), 1u);
  EXPECT_TRUE(ticket.editCustomer(card));  // meant, now that it was seen
  EXPECT_EQ(counter.visit().customer->phone, "555-0122");
  ticket.takeBack();
  EXPECT_EQ(counter.visit().customer->phone, "555-0111");
  EXPECT_EQ(counter.visit().customer->id, id);
  EXPECT_FALSE(ticket.edited());
}

TEST_F(CareAtTheCounter, TwoCardsOfOnePersonAreJoinedAndTakenApart) {
  begin_customer("First");
  Counter& counter = kiosk_->counter();
  const auto phone = [](Visit& v) { v.customer->phone = "555-0101"; };
  ASSERT_TRUE(counter.change(phone));
  begin_customer("Second");
  ASSERT_TRUE(counter.change(phone));
  ASSERT_TRUE(counter.change([](Visit& v) { v.customer->street = "1 Invented Lane"; }));
  kiosk_->desk().setPlace(Desk::Bottle);
  ASSERT_TRUE(Hand::wait_for([&] { return hand_->text_of("twin_line").contains("First, 555-0101"); }, 5000));
  EXPECT_TRUE(hand_->text_of("twin_line").contains("same phone"));
  ASSERT_TRUE(hand_->touch("twin_join"));
  EXPECT_EQ(counter.records().customers("555-0101").size(), 1u);
  EXPECT_EQ(counter.records().vessels_of("C-Second").size(), 2u);
  EXPECT_TRUE(hand_->text_of("twin_joined").contains("First, 555-0101"));
  EXPECT_EQ(kiosk_->desk().ticket()->twin()->line(), "");
  ASSERT_TRUE(hand_->touch("twin_apart"));
  EXPECT_EQ(counter.records().customers("555-0101").size(), 2u);
  ASSERT_TRUE(Hand::wait_for([&] { return hand_->touch("twin_leave"); }, 3000));
  EXPECT_EQ(kiosk_->desk().ticket()->twin()->line(), "");
  // In the Back room all of them, one after another.
  begin_customer("Third");
  ASSERT_TRUE(counter.change(phone));
  act("twins", {});
  ASSERT_TRUE(Hand::wait_for([&] { return back().actWord() == "Join the cards"; }, 10000));
  ASSERT_EQ(back().rows()->count(), 2);
  back().setValue("twins_act", "first");
  back().apply();
  EXPECT_TRUE(back().says().contains("Joined")) << back().says().toStdString();
  EXPECT_EQ(counter.records().customers("555-0101").size(), 2u);
  back().setValue("twins_act", "apart");
  back().apply();
  EXPECT_TRUE(back().says().contains("Taken apart")) << back().says().toStdString();
  EXPECT_EQ(counter.records().customers("555-0101").size(), 3u);
}

TEST_F(CareAtTheCounter, ShowsTheWeekPrintsItAndWritesItAsATable) {
  begin_customer("Invented");
  ASSERT_TRUE(read("ph", 7.4));
  const std::string id = kiosk_->counter().visit().id;
  Plan plan;
  plan.home_plan = true;
  ASSERT_TRUE(kiosk_->counter().records().tell(id, plan));
  kiosk_->desk().setPlace(Desk::BackRoom);
  back().setShelf("week");
  EXPECT_EQ(back().actWord(), "Stop");  // it is counted beside the screen
  ASSERT_TRUE(first_row("Bottles tested"));
  ASSERT_GE(back().rows()->count(), 3);
  EXPECT_EQ(back().rows()->row(0).value("number").toString(), "1");
  back().setValue("week_act", "table");
  back().apply();
  ASSERT_TRUE(said("week-2026-06-08.csv")) << back().says().toStdString();
  back().setValue("week_act", "file");
  back().apply();
  ASSERT_TRUE(said("PDF: ")) << back().says().toStdString();
  QProcess reader;
  reader.start("pdftotext", {"-layout", back().says().mid(5), "-"});
  ASSERT_TRUE(reader.waitForFinished());
  const QString text = QString::fromUtf8(reader.readAllStandardOutput()).simplified();
  EXPECT_TRUE(text.contains("Bottles tested 1")) << text.toStdString();
  EXPECT_FALSE(text.contains("Invented,")) << text.toStdString();
  back().setValue("week_which", "1");
  back().apply();  // stops it
  EXPECT_EQ(back().rows()->row(0).value("name").toString(), "Not counted");
  EXPECT_EQ(back().actWord(), "Count it");
  back().apply();
  ASSERT_TRUE(first_row("Bottles tested"));
  EXPECT_EQ(back().rows()->row(0).value("number").toString(), "0");
}

TEST_F(CareAtTheCounter, WritesTablesAndBringsThemIn) {
  begin_customer("Invented");
  ASSERT_TRUE(read("ph", 7.9));
  act("tables", {{"tables_wish", "out"}, {"tables_folder", path("stick")}});
  ASSERT_TRUE(said("Written to")) << back().says().toStdString();
  const QDir folder(path("stick/tables-2026-06-14"));
  EXPECT_EQ(folder.entryList({"*.csv"}, QDir::Files).size(), 5);
  // Again: into a folder of its own.
  back().apply();
  ASSERT_TRUE(said("tables-2026-06-14-2")) << back().says().toStdString();
  // Its own tables bring nothing new; a line that cannot be taken is told with its place.
  act("tables", {{"tables_wish", "in"}, {"tables_customers", folder.filePath("customers.csv")}});
  ASSERT_TRUE(said("nothing is kept yet")) << back().says().toStdString();
  EXPECT_EQ(back().rows()->row(0).value("number").toString(), "0 new");
  QFile table(path("others.csv"));
  ASSERT_TRUE(table.open(QIODevice::WriteOnly));
  table.write("name,phone,language\nInvented Two,555-0102,en\nInvented Three,555-0103,xx\n");
  table.close();
  act("tables", {{"tables_customers", path("others.csv")}});
  ASSERT_TRUE(said("cannot be taken: 1")) << back().says().toStdString();
  EXPECT_EQ(back().rows()->row(0).value("number").toString(), "1 new");
  EXPECT_TRUE(back().rows()->row(4).value("detail").toString().contains("others.csv, line 3"));
  EXPECT_EQ(kiosk_->counter().records().customers("Two").size(), 0u);
  EXPECT_EQ(back().actWord(), "Keep the sound lines");
  back().apply();
  ASSERT_TRUE(said("Kept: 1 customers")) << back().says().toStdString();
  EXPECT_EQ(kiosk_->counter().records().customers("Two").size(), 1u);
  act("tables", {{"tables_customers", path("nowhere.csv")}});
  ASSERT_TRUE(said("cannot be taken: 1")) << back().says().toStdString();
}

TEST_F(CareAtTheCounter, WrongPinsCostTimeAlsoAfterARestart) {
  write_down("Ana", "2468", "keeper");
  lock().lock();
  const QString ana = lock().people().front().toMap().value("key").toString();
  for (int i = 0; i < 3; ++i) {
    lock().choose(ana);
    type_pin("9753");
  }
  close_counter();
  open_counter("2026-06-14T09:00:00-05:00");
  lock().choose(ana);
  type_pin("2468");
  EXPECT_TRUE(lock().locked());
  EXPECT_TRUE(lock().says().contains("wait")) << lock().says().toStdString();
}

TEST_F(CareAtTheCounter, ABackupIsLookedIntoAndBroughtBack) {
  begin_customer("Before");
  ASSERT_TRUE(read("ph", 7.4));
  act("backups", {});
  ASSERT_TRUE(said("Backed up")) << back().says().toStdString();
  begin_customer("After");
  back().setShelf("shop");
  back().setShelf("backups");
  const QString file =
      back().fields()->row(1).value("options").toList().last().toMap().value("key").toString();
  ASSERT_TRUE(QFileInfo::exists(file)) << file.toStdString();
  back().setValue("backup_file", file);
  EXPECT_TRUE(back().rows()->row(0).value("number").toString().contains("1 visits, 1 customers"));
  EXPECT_TRUE(back().rows()->row(1).value("number").toString().contains("2 visits, 2 customers"));
  back().apply();
  ASSERT_EQ(kiosk_->to_restore(), file);
  hand_.reset();
  auto again = Kiosk::restored(std::move(kiosk_));
  ASSERT_TRUE(again) << again.error();
  kiosk_ = std::move(*again);
  EXPECT_EQ(kiosk_->counter().waiting().size(), 1u);
  EXPECT_TRUE(kiosk_->desk().says().contains("set aside")) << kiosk_->desk().says().toStdString();
  EXPECT_TRUE(QFileInfo::exists(path("counter.db.replaced")));
}

TEST_F(CareAtTheCounter, ACustomerIsHandedTheirFileAndForgotten) {
  begin_customer("Forgetme");
  ASSERT_TRUE(read("ph", 7.4));
  back().setShelf("people");
  back().setValue("person_search", "forgetme");
  back().apply();
  back().setValue("person", "C-Forgetme");
  back().apply();
  EXPECT_TRUE(back().says().contains("customer-C-Forgetme.json")) << back().says().toStdString();
  QFile file(path("sheets/customer-C-Forgetme.json"));
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  EXPECT_TRUE(file.readAll().contains("\"ph\""));
  EXPECT_EQ(file.permissions() & (QFileDevice::ReadOther | QFileDevice::ReadGroup),
            QFileDevice::Permissions());
  back().setValue("person_act", "forget");
  back().apply();
  EXPECT_TRUE(back().says().contains("say why"));
  back().setValue("person_reason", "asked for it");
  back().apply();
  EXPECT_TRUE(back().says().contains("Forgotten")) << back().says().toStdString();
  EXPECT_TRUE(kiosk_->counter().records().customers("forgetme").empty());
}

// A file that is no store any more: set aside, and the newest sound backup offered.
TEST_F(CareAtTheCounter, DamagedRecordsAreSetAsideAndABackupOffered) {
  begin_customer("Before");
  act("backups", {});
  ASSERT_TRUE(said("Backed up"));
  close_counter();
  for (const char* end : {"-wal", "-shm"}) QFile::remove(path("counter.db") + end);
  QFile file(path("counter.db"));
  ASSERT_TRUE(file.open(QIODevice::ReadWrite));
  const QByteArray broken(40000, 'x');
  file.write(broken);
  file.close();
  open_counter("2026-06-14T09:10:00-05:00");
  ASSERT_TRUE(hand_->find("rescue_why"));
  ASSERT_TRUE(hand_->touch("rescue_bring"));
  ASSERT_TRUE(Hand::wait_for([&] { return kiosk_->to_reopen(); }, 5000));
  hand_.reset();
  auto again = Kiosk::restored(std::move(kiosk_));
  ASSERT_TRUE(again) << again.error();
  kiosk_ = std::move(*again);
  EXPECT_EQ(kiosk_->counter().waiting().size(), 1u);
  QFile aside(path("counter.db.replaced"));
  ASSERT_TRUE(aside.open(QIODevice::ReadOnly));
  EXPECT_EQ(aside.read(broken.size()), broken);
}

// A name that would lead elsewhere stays in its folder.
TEST_F(CareAtTheCounter, PathTricksLeadNowhere) {
  kiosk_->desk().scan("../../../tmp/evil");
  ASSERT_TRUE(kiosk_->counter().change([](Visit& v) {
    Customer customer;
    customer.id = "../../evil";
    customer.name = "../../evil'; DROP TABLE visits; --";
    v.customer = customer;
    v.vessel.id = "W-evil";
  }));
  back().setShelf("people");
  back().setValue("person_search", "evil");
  back().setValue("person", "../../evil");
  back().apply();
  EXPECT_FALSE(QFileInfo::exists(path("../evil.json")));
  EXPECT_EQ(QDir(path("sheets")).entryList(QDir::Files).size(), 1) << back().says().toStdString();
  EXPECT_EQ(kiosk_->counter().waiting().size(), 1u);
}

class CareOnAServer : public CareAtTheCounter {
 protected:
  void SetUp() override {
    ASSERT_TRUE(brimline::testing::PostgresqlServer::installed()) << "PostgreSQL 15 is not installed";
    CounterTest::SetUpTestSuite();
    server_ = std::make_unique<brimline::testing::PostgresqlServer>(scratch_ / "");
    auto base = Connection::open(server_->url("postgres"), Opening::existing).value();
    base->run("CREATE DATABASE shop");
    wire_ = std::make_unique<brimline::testing::CutProxy>(server_->port());
    KioskOptions options;
    options.database = QString::fromStdString(server_->url("shop", wire_->port()));
    options.settings = path("shop.ini");
    options.out_dir = path("sheets");
    options.windowed = true;
    options.clock = Instant::parse("2026-06-14T09:00:00-05:00");
    auto started = Kiosk::start(options);
    ASSERT_TRUE(started) << started.error();
    kiosk_ = std::move(*started);
    hand_ = std::make_unique<Hand>(kiosk_->window());
  }
  brimline::testing::ScratchFolder scratch_;
  std::unique_ptr<brimline::testing::PostgresqlServer> server_;
  std::unique_ptr<brimline::testing::CutProxy> wire_;
};

TEST_F(CareOnAServer, TheCounterGoesOnWhileItIsAway) {
  begin_customer("Shared");
  ASSERT_TRUE(read("ph", 7.4));
  Store shared = Store::open(server_->url("shop")).value();
  ASSERT_TRUE(Hand::wait_for([&] { return shared.open_bottles()->size() == 1; }, 10000));
  EXPECT_EQ(kiosk_->counter().visit().bottle.code, "B-0001");
  wire_->cut();
  ASSERT_TRUE(read("total_alkalinity", 80));
  ASSERT_TRUE(Hand::wait_for([&] { return !kiosk_->desk().away().isEmpty(); }, 15000));
  kiosk_->desk().setPlace(Desk::Arrivals);
  EXPECT_TRUE(Hand::wait_for([&] { return hand_->text_of("records_text").contains("joined later"); }, 5000));
  begin_customer("Alone");  // a whole new bottle without the server
  ASSERT_TRUE(read("ph", 7.9));
  EXPECT_EQ(kiosk_->counter().waiting().size(), 2u);
  wire_->mend();
  ASSERT_TRUE(Hand::wait_for([&] { return shared.open_bottles()->size() == 2; }, 20000));
  ASSERT_TRUE(Hand::wait_for([&] { return kiosk_->desk().away().isEmpty(); }, 10000));
  // What another counter does comes in.
  Reading reading;
  reading.analyte = "calcium_hardness";
  reading.value = 250;
  const std::string id = kiosk_->counter().visit().id;
  ASSERT_TRUE(shared.add_reading(id, reading));
  ASSERT_TRUE(Hand::wait_for([&] { return kiosk_->counter().visit().bottle.readings.size() == 2; }, 15000));
}

TEST_F(CareOnAServer, TheWeekIsOfAllCounters) {
  Store shared = Store::open(server_->url("shop")).value();
  Visit theirs;
  theirs.id = "V-theirs";
  theirs.bottle.taken_at = Instant::parse("2026-06-13T09:00:00-05:00");
  theirs.vessel.id = "W-theirs";
  theirs.plan_as_told = Plan{};
  ASSERT_TRUE(shared.keep(theirs));
  back().setShelf("week");
  ASSERT_TRUE(Hand::wait_for([&] { return back().rows()->row(0).value("name") == "Bottles tested"; }, 10000));
  EXPECT_EQ(back().rows()->row(0).value("number").toString(), "1");
}

}  // namespace
}  // namespace brimline::test
