// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/records/tables_out.h"

#include <QDir>
#include <QFileInfo>
#include <QSaveFile>

#include <memory>

#include <nlohmann/json.hpp>

#include "analysis/panel/analyte.h"
#include "station/plan_json.h"
#include "station/records/csv.h"
#include "station/store/row.h"
#include "station/visit_json.h"
#include "station/visit_names.h"

namespace brimline {
namespace {

using nlohmann::ordered_json;

enum File { kCustomers, kVessels, kVisits, kReadings, kSteps, kFiles };

constexpr const char* kVisitHeaders[kFiles] = {
    nullptr, nullptr,
    "visit_id,bottle,taken_at,tested_at,home_at,sampled_at,occasion,customer_id,vessel_id,"
    "sample_temperature_c,signs,incident,demand_test,additions_since,at_home,plan_told,home_plan,why_not,"
    "targets,findings",
    "visit_id,customer_id,vessel_id,taken_at,position,water,analyte,value,unit,method,dilution,clipped,"
    "repeat_of,sd,instrument,lot",
    "visit_id,order,action,chemical,product,active_mol,amount,unit,from_home,household,portions,"
    "portion_gap_h,start_h,wait_h,fraction,for_findings,text,cautions"};

// The first two tables are the store's own, column by column.
std::string header_of(File file) {
  if (file != kCustomers && file != kVessels) return kVisitHeaders[file];
  const auto columns = file == kCustomers ? customer_columns() : vessel_columns().subspan(1);
  std::string out = file == kVessels ? "vessel_id,customer_id" : "";
  for (const Column& column : columns) out.append(out.empty() ? "" : ",").append(column.name);
  return out;
}

StoreError trouble(const std::string& text) {
  return {StoreTrouble::refused, text};
}

// The five files while they are written; none appears before `commit`.
class Files {
 public:
  static Stored<std::unique_ptr<Files>> open(const std::string& folder) {
    const QDir dir(QString::fromStdString(folder));
    if (!dir.mkpath(".")) return tl::unexpected(trouble(folder + " is no folder and cannot be made one"));
    auto out = std::make_unique<Files>();
    for (int i = 0; i < kFiles; ++i) {
      out->files_[i] = std::make_unique<QSaveFile>(
          dir.filePath(QString::fromStdString(table_files()[static_cast<size_t>(i)])));
      QSaveFile& file = *out->files_[i];
      if (!file.open(QIODevice::WriteOnly)) return tl::unexpected(out->failed(file));
      file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner);
      out->text(static_cast<File>(i)) = header_of(static_cast<File>(i)) + "\r\n";
    }
    return out;
  }

  std::string& text(File file) { return texts_[file]; }
  CsvRow row(File file) {
    ++rows_[file];
    return CsvRow(texts_[file]);
  }
  // To the disk what has gathered, or all of it.
  Stored<void> flush(bool all) {
    constexpr size_t kPiece = 1 << 20;
    for (int i = 0; i < kFiles; ++i) {
      if (!all && texts_[i].size() < kPiece) continue;
      const auto size = static_cast<qint64>(texts_[i].size());
      if (files_[i]->write(texts_[i].data(), size) != size) return tl::unexpected(failed(*files_[i]));
      texts_[i].clear();
    }
    return {};
  }
  Stored<std::map<std::string, std::int64_t>> commit(Tables existing) {
    std::map<std::string, std::int64_t> out;
    for (int i = 0; i < kFiles; ++i) {
      if (existing == Tables::keep_existing && QFileInfo::exists(files_[i]->fileName()))
        return tl::unexpected(trouble(files_[i]->fileName().toStdString() + " is there meanwhile"));
      if (!files_[i]->commit()) return tl::unexpected(failed(*files_[i]));
      out[table_files()[static_cast<size_t>(i)]] = rows_[i];
    }
    return out;
  }

 private:
  static StoreError failed(const QSaveFile& file) {
    return {file.error() == QFileDevice::ResourceError ? StoreTrouble::full : StoreTrouble::refused,
            file.fileName().toStdString() + ": " + file.errorString().toStdString()};
  }

  std::unique_ptr<QSaveFile> files_[kFiles];
  std::string texts_[kFiles];
  std::int64_t rows_[kFiles] = {};
};

// A row of the store, cell by cell as its columns are.
void add_stored(CsvRow row, const QVariantList& values, std::span<const Column> columns, qsizetype first) {
  for (size_t i = 0; i < columns.size(); ++i) {
    const QVariant& value = values[first + static_cast<qsizetype>(i)];
    if (value.isNull())
      row.word({});
    else if (columns[i].kind == Column::Kind::flag)
      row.flag(value.toInt() != 0);
    else if (columns[i].kind == Column::Kind::number)
      row.number(value.toDouble());
    else
      row.text(Connection::text(value));
  }
  row.end();
}

template <class E>
CsvRow& put(CsvRow& row, const std::optional<E>& choice) {
  return row.word(choice ? name_of(*choice) : std::string_view());
}

CsvRow& put(CsvRow& row, const std::optional<Instant>& at) {
  return row.word(at ? at->text() : std::string());
}

std::string joined(const std::vector<std::string>& parts, const char* between) {
  std::string out;
  for (const std::string& part : parts) out += (out.empty() ? "" : between) + part;
  return out;
}

// A part of the visit that is no table: its JSON form.
std::string json_of(const ordered_json& visit, const char* key) {
  const auto found = visit.find(key);
  return found == visit.end() ? std::string() : found->dump();
}

void add_visit(CsvRow row, const Visit& visit) {
  const Bottle& bottle = visit.bottle;
  const ordered_json form = visit_to_json(visit);
  row.text(visit.id).text(bottle.code);
  put(put(put(row, bottle.taken_at), bottle.tested_at), visit.home_at);
  put(put(row, bottle.sampled_at), bottle.occasion);
  row.text(visit.customer ? visit.customer->id : std::string()).text(visit.vessel.id);
  row.number_if(bottle.sample_temperature ? std::optional(bottle.sample_temperature->celsius())
                                          : std::nullopt);
  std::vector<std::string> signs, findings;
  for (const Sign sign : bottle.signs) signs.emplace_back(name_of(sign));
  put(row.word(joined(signs, " ")), bottle.incident);
  for (const char* key : {"demand_test", "additions_since", "at_home"}) row.text(json_of(form, key));
  const auto& plan = visit.plan_as_told;
  row.flag(plan.has_value()).word(!plan ? "" : plan->home_plan ? "yes" : "no");
  row.text_if(plan ? plan->why_not : std::nullopt).text(plan ? plan->basis.targets : std::string());
  if (plan)
    for (const Finding& finding : plan->findings) findings.push_back(finding.id);
  row.word(joined(findings, " ")).end();
}

void add_readings(Files& files, const Visit& visit, const std::vector<Reading>& readings, const char* water) {
  for (size_t i = 0; i < readings.size(); ++i) {
    const Reading& reading = readings[i];
    const AnalyteKind* kind = find_analyte(reading.analyte);
    CsvRow row = files.row(kReadings);
    row.text(visit.id).text(visit.customer ? visit.customer->id : std::string()).text(visit.vessel.id);
    put(row, visit.bottle.taken_at ? visit.bottle.taken_at : visit.bottle.tested_at);
    row.whole(static_cast<std::int64_t>(i)).word(water).word(reading.analyte).number(reading.value);
    put(row.word(kind ? kind->unit : std::string()), reading.method).number(reading.dilution);
    put(row, reading.clipped);
    row.word(reading.repeat_of ? std::to_string(*reading.repeat_of) : std::string()).number_if(reading.sd);
    row.text_if(reading.instrument).text_if(reading.lot).end();
  }
}

void add_steps(Files& files, const std::string& visit, const Plan& plan) {
  for (const Step& step : plan.steps) {
    CsvRow row = files.row(kSteps);
    row.text(visit).whole(step.order).word(name_of(step.action)).text_if(step.chemical).text_if(step.product);
    row.number_if(step.active_mol).number_if(step.amount ? std::optional(step.amount->value) : std::nullopt);
    row.word(step.amount ? step.amount->unit : std::string()).flag(step.from_home);
    row.text_if(step.amount_household).whole(step.portions).number(step.portion_gap_h).number(step.start_h);
    row.number(step.wait_h).number_if(step.fraction).word(joined(step.for_findings, " "));
    row.text(step.text).text(joined(step.cautions, " ")).end();
  }
}

Stored<void> add_visits(Store& store, Files& files, const Progress& progress) {
  const auto ids = store.visit_ids();
  if (!ids) return tl::unexpected(ids.error());
  for (size_t i = 0; i < ids->size(); ++i) {
    if (!goes_on(progress, static_cast<double>(i) / static_cast<double>(ids->size())))
      return tl::unexpected(trouble("stopped: nothing was written"));
    const auto visit = store.visit((*ids)[i]);
    if (!visit) return tl::unexpected(visit.error());
    if (!*visit) continue;
    add_visit(files.row(kVisits), **visit);
    add_readings(files, **visit, (*visit)->bottle.readings, "vessel");
    if ((*visit)->bottle.fill_water) add_readings(files, **visit, *(*visit)->bottle.fill_water, "fill");
    if ((*visit)->plan_as_told) add_steps(files, (*visit)->id, *(*visit)->plan_as_told);
    if (auto done = files.flush(false); !done) return done;
  }
  return {};
}

void add_people(Connection& c, Files& files) {
  c.each("SELECT " + column_list(customer_columns()) + " FROM customers ORDER BY id",
         [&](const QVariantList& row) { add_stored(files.row(kCustomers), row, customer_columns(), 0); });
  const auto columns = vessel_columns();
  c.each("SELECT id, customer_id, " + column_list(columns.subspan(1)) + " FROM vessels ORDER BY id",
         [&](const QVariantList& row) {
           CsvRow out = files.row(kVessels);
           out.text(Connection::text(row[0])).text(Connection::text(row[1]));
           add_stored(out, row, columns.subspan(1), 2);
         });
}

}  // namespace

const std::vector<std::string>& table_files() {
  static const std::vector<std::string> names = {"customers.csv", "vessels.csv", "visits.csv", "readings.csv",
                                                 "steps.csv"};
  return names;
}

std::vector<std::string> tables_there(const std::string& folder) {
  const QDir dir(QString::fromStdString(folder));
  std::vector<std::string> out;
  for (const std::string& name : table_files())
    if (QFileInfo(dir.filePath(QString::fromStdString(name))).exists()) out.push_back(name);
  return out;
}

Stored<std::map<std::string, std::int64_t>> write_tables(Store& store, const std::string& folder,
                                                         Tables existing, const Progress& progress) {
  const auto there = tables_there(folder);
  if (existing == Tables::keep_existing && !there.empty())
    return tl::unexpected(trouble(folder + " holds " + joined(there, ", ") + " already"));
  auto files = Files::open(folder);
  if (!files) return tl::unexpected(files.error());
  Connection& c = store.connection();
  const auto done = c.transact(Access::read, [&] {
    add_people(c, **files);
    if (c.failed()) return;
    if (auto added = add_visits(store, **files, progress); !added) c.fail(added.error());
  });
  if (!done) return tl::unexpected(done.error());
  if (auto rest = (*files)->flush(true); !rest) return tl::unexpected(rest.error());
  return (*files)->commit(existing);
}

}  // namespace brimline
