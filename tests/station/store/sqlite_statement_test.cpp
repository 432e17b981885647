// SPDX-License-Identifier: GPL-3.0-or-later
// What is bound comes back, of every kind that SQLite stores (sqlite.org/datatype3.html).
#include "station/store/sqlite_statement.h"

#include <gtest/gtest.h>
#include <sqlite3.h>

#include <limits>

namespace brimline {
namespace {

class SqliteStatementTest : public testing::Test {
 protected:
  void SetUp() override { ASSERT_EQ(sqlite3_open(":memory:", &database), SQLITE_OK); }
  void TearDown() override { EXPECT_EQ(sqlite3_close(database), SQLITE_OK) << "a statement was left behind"; }
  std::vector<QVariantList> ask(const std::string& sql, const QVariantList& values = {}) {
    wrong = QSqlError();
    const auto statement = SqliteStatement::prepare(database, sql, wrong);
    return statement ? statement->run(values, wrong) : std::vector<QVariantList>{};
  }
  sqlite3* database = nullptr;
  QSqlError wrong;
};

TEST_F(SqliteStatementTest, WhatIsBoundComesBack) {
  const QVariantList bound{QVariant(QMetaType::fromType<QString>()),
                           QString(),
                           QStringLiteral(""),
                           QStringLiteral("Åsa \U0001F3CA"),
                           QString::fromLatin1("a\0b", 3),
                           QByteArray("\x00\xff", 2),
                           std::numeric_limits<qlonglong>::min(),
                           std::numeric_limits<qlonglong>::max(),
                           true,
                           0.1,
                           std::numeric_limits<double>::denorm_min()};
  const auto rows = ask("SELECT ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?", bound);
  ASSERT_FALSE(wrong.isValid()) << wrong.databaseText().toStdString();
  ASSERT_EQ(rows.size(), 1u);
  EXPECT_FALSE(rows[0][0].isValid());
  EXPECT_FALSE(rows[0][1].isValid());  // a text that is none, as by QtSql
  EXPECT_EQ(rows[0][2], QString(""));
  for (const int i : {3, 4, 5, 6, 7, 9, 10}) EXPECT_EQ(rows[0][i], bound[i]) << i;
  EXPECT_EQ(rows[0][8], 1);
}

TEST_F(SqliteStatementTest, AStatementRunsAgainWithOtherValues) {
  ask("CREATE TABLE words (word TEXT PRIMARY KEY)");
  const auto put = SqliteStatement::prepare(database, "INSERT INTO words VALUES (?)", wrong);
  ASSERT_TRUE(put);
  put->run({"one"}, wrong);
  put->run({"two"}, wrong);
  ASSERT_FALSE(wrong.isValid());
  put->run({"two"}, wrong);
  EXPECT_EQ(wrong.nativeErrorCode().toInt() & 0xff, SQLITE_CONSTRAINT);
  wrong = QSqlError();
  put->run({"three"}, wrong);
  EXPECT_FALSE(wrong.isValid()) << "a failure is of its run alone";
  EXPECT_EQ(ask("SELECT word FROM words").size(), 3u);
}

TEST_F(SqliteStatementTest, WhatCannotRunSaysWhy) {
  EXPECT_TRUE(ask("SELECT word FROM nowhere").empty());
  EXPECT_EQ(wrong.databaseText().toStdString(), "no such table: nowhere");
  EXPECT_TRUE(ask("SELECT ?, ?", {1}).empty()) << "one value for two marks";
  EXPECT_TRUE(wrong.isValid());
}

}  // namespace
}  // namespace brimline
