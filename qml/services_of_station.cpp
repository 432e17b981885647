// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/services_of_station.h"

#include <QDir>
#include <QFileInfo>

#include "analysis/findings/targets.h"
#include "printing/pdf.h"
#include "station/plan/plan_service.h"
#include "station/shelf/shelf.h"

namespace brimline {
namespace {

// CODE.pdf, and CODE-2.pdf where that is taken: a sheet that was handed out is never replaced.
QString free_file(const QString& folder, QString code) {
  if (code.isEmpty()) code = QStringLiteral("sheet");
  code.replace('/', '_');
  QString file = QStringLiteral("%1/%2.pdf").arg(folder, code);
  for (int n = 2; QFileInfo::exists(file); ++n)
    file = QStringLiteral("%1/%2-%3.pdf").arg(folder, code).arg(n);
  return file;
}

tl::expected<Plan, std::string> plan_for(const Visit& visit, const std::vector<Visit>& earlier,
                                         const std::string& language, const ShopDetails& shop) {
  const TargetSet* targets = find_targets("household");
  if (!targets) return tl::unexpected(std::string("the target set `household` is not built in"));
  ShopSettings settings;
  if (!shop.emergency.empty()) settings.emergency_number = shop.emergency.front().number;
  return make_plan(visit, earlier, built_in_shelf(), *targets, Words(language), {}, settings);
}

}  // namespace

Services services_of_station(const QString& out_dir) {
  Services services;
  services.plan = plan_for;
  services.compare = [](const std::vector<Visit>& visits, const std::string& language) {
    return compare(visits, Words(language));
  };
  services.sheet = [out_dir](const SheetJob& job) -> tl::expected<std::string, std::string> {
    if (!QDir().mkpath(out_dir)) return tl::unexpected(out_dir.toStdString() + " cannot be made");
    const Sheet sheet =
        make_sheet(job.visit, job.earlier ? &*job.earlier : nullptr, job.shop, Words(job.language));
    const QString file = free_file(out_dir, QString::fromStdString(job.visit.bottle.code));
    if (const auto written = write_pdf(sheet, file.toStdString(), Edition{job.paper, job.large}); !written)
      return tl::unexpected(written.error().text);
    return file.toStdString();
  };
  return services;
}

}  // namespace brimline
