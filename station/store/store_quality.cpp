// SPDX-License-Identifier: GPL-3.0-or-later
// Check standards, what was measured with them, and who cleared what.
#include <cmath>

#include <nlohmann/json.hpp>

#include "station/store/store.h"

namespace brimline {

namespace {

QVariant moment(const Instant& at) {
  return Connection::value(at.text());
}
QVariant seconds(const Instant& at) {
  return static_cast<qlonglong>(at.utc.time_since_epoch().count());
}

// A moment that cannot be read fails the transaction.
Instant moment_of(Connection& c, const QVariant& value) {
  const auto at = Instant::parse(Connection::text(value));
  if (!at) c.fail({StoreTrouble::damaged, "a moment cannot be read: " + Connection::text(value)});
  return at.value_or(Instant{});
}

std::string points_text(const std::vector<CalibrationPoint>& points) {
  nlohmann::json out = nlohmann::json::array();
  for (const CalibrationPoint& p : points) out.push_back({p.amount, p.signal});
  return out.dump();
}

std::vector<CalibrationPoint> points_of(Connection& c, const std::string& text) {
  std::vector<CalibrationPoint> out;
  const auto json = nlohmann::json::parse(text, nullptr, false);
  bool sound = json.is_array();
  for (size_t i = 0; sound && i < json.size(); ++i) {
    sound = json[i].is_array() && json[i].size() == 2 && json[i][0].is_number() && json[i][1].is_number();
    if (sound) out.push_back({json[i][0].get<double>(), json[i][1].get<double>()});
  }
  if (!sound) c.fail({StoreTrouble::damaged, "the standards of a calibration curve cannot be read"});
  return out;
}

void read_checks(Connection& c, QualityBook& book) {
  for (const auto& r : c.ask("SELECT id, instrument, analyte, name, value, sd, every_days, since FROM "
                             "check_standards ORDER BY instrument, analyte, id"))
    book.standards.push_back({Connection::text(r[0]), Connection::text(r[1]), Connection::text(r[2]),
                              Connection::text(r[3]), r[4].toDouble(), r[5].toDouble(), r[6].toDouble(),
                              moment_of(c, r[7])});
  for (const auto& r : c.ask("SELECT id, standard, measured_at, value, typed, lot FROM check_measurements "
                             "ORDER BY at_s, id"))
    book.measurements.push_back({Connection::text(r[0]), Connection::text(r[1]), moment_of(c, r[2]),
                                 r[3].toDouble(), r[4].toInt() != 0, Connection::text(r[5])});
  for (const auto& r : c.ask("SELECT id, instrument, analyte, cleared_at, cleared_by, reason FROM "
                             "check_clearances ORDER BY at_s, id"))
    book.clearances.push_back({Connection::text(r[0]), Connection::text(r[1]), Connection::text(r[2]),
                               moment_of(c, r[3]), Connection::text(r[4]), Connection::text(r[5])});
  for (const auto& r :
       c.ask("SELECT id, lot, wavelength_nm, measured_at, points FROM lot_curves ORDER BY at_s, id"))
    book.curves.push_back({Connection::text(r[0]), Connection::text(r[1]), r[2].toDouble(),
                           moment_of(c, r[3]), points_of(c, Connection::text(r[4]))});
}

void refuse(Connection& c, const char* why) {
  c.fail({StoreTrouble::refused, why});
}

bool blank(const std::string& text) {
  return text.find_first_not_of(" \t\n") == std::string::npos;
}

}  // namespace

Stored<QualityBook> Store::quality_book() {
  Connection& c = *connection_;
  return c.transact(Access::read, [&] {
    QualityBook book;
    read_checks(c, book);
    return book;
  });
}

Stored<void> Store::add_standard(const CheckStandard& s) {
  Connection& c = *connection_;
  return c.transact(Access::write, [&] {
    if (!(s.sd > 0) || !(s.every_days > 0) || !std::isfinite(s.value) || !std::isfinite(s.sd) ||
        !std::isfinite(s.every_days))
      return refuse(c, "a check standard needs its value, a spread and days above zero");
    if (blank(s.id) || blank(s.instrument)) return refuse(c, "a check standard needs its instrument");
    c.tell("INSERT INTO instruments (id) VALUES (?) ON CONFLICT (id) DO NOTHING",
           {Connection::value(s.instrument)});
    c.tell(
        "INSERT INTO check_standards (id, instrument, analyte, name, value, sd, every_days, since) VALUES "
        "(?, ?, ?, ?, ?, ?, ?, ?)",
        {Connection::value(s.id), Connection::value(s.instrument), Connection::value(s.analyte),
         Connection::value(s.name), s.value, s.sd, s.every_days, moment(s.since)});
  });
}

Stored<void> Store::add_measurement(const CheckMeasurement& m) {
  Connection& c = *connection_;
  return c.transact(Access::write, [&] {
    if (!std::isfinite(m.value)) return refuse(c, "a measurement is not a number");
    c.tell(
        "INSERT INTO check_measurements (id, standard, at_s, measured_at, value, typed, lot) VALUES (?, "
        "?, ?, ?, ?, ?, ?)",
        {Connection::value(m.id), Connection::value(m.standard), seconds(m.at), moment(m.at), m.value,
         m.typed ? 1 : 0, Connection::value(m.lot)});
  });
}

Stored<void> Store::add_clearance(const Clearance& clearance) {
  Connection& c = *connection_;
  return c.transact(Access::write, [&] {
    if (blank(clearance.by)) return refuse(c, "who clears it is not named");
    if (blank(clearance.reason)) return refuse(c, "the reason for clearing it is not told");
    c.tell(
        "INSERT INTO check_clearances (id, instrument, analyte, at_s, cleared_at, cleared_by, reason) "
        "VALUES (?, ?, ?, ?, ?, ?, ?)",
        {Connection::value(clearance.id), Connection::value(clearance.instrument),
         Connection::value(clearance.analyte), seconds(clearance.at), moment(clearance.at),
         Connection::value(clearance.by), Connection::value(clearance.reason)});
  });
}

Stored<void> Store::add_curve(const LotCurve& curve) {
  Connection& c = *connection_;
  return c.transact(Access::write, [&] {
    for (const CalibrationPoint& p : curve.points)
      if (!std::isfinite(p.amount) || !std::isfinite(p.signal))
        return refuse(c, "a standard of the curve is not a number");
    c.tell(
        "INSERT INTO lot_curves (id, lot, wavelength_nm, at_s, measured_at, points) VALUES (?, ?, ?, "
        "?, ?, ?)",
        {Connection::value(curve.id), Connection::value(curve.lot), curve.wavelength_nm, seconds(curve.at),
         moment(curve.at), Connection::value(points_text(curve.points))});
  });
}

}  // namespace brimline
