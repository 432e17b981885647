// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/shelf/shop_shelf.h"

#include <QDir>
#include <QSaveFile>

#include "analysis/toml_text.h"

namespace brimline {

namespace {

QStringList product_files(const QDir& dir) {
  return dir.entryList({"*.toml"}, QDir::Files, QDir::Name);
}

const char* name_of(Strength strength) {
  switch (strength) {
    case Strength::trade:
      return "trade";
    case Strength::available_chlorine:
      return "available_chlorine";
    case Strength::weight:
      break;
  }
  return "weight";
}

using Done = tl::expected<void, std::vector<Fault>>;

Done failed(const QString& path, const QString& why) {
  return tl::unexpected(
      std::vector<Fault>{{path.toStdString(), 1, why.toStdString(), "a file that can be written"}});
}

Done write(const QDir& dir, const Product& product) {
  const QString path = dir.filePath(QString::fromStdString(product.id) + ".toml");
  const std::string text = product_to_toml(product);
  if (auto judged = read_product(text, path.toStdString()); !judged) return tl::unexpected(judged.error());
  QSaveFile file(path);
  const auto size = static_cast<qint64>(text.size());
  if (!file.open(QIODevice::WriteOnly) || file.write(text.data(), size) != size || !file.commit())
    return failed(path, file.errorString());
  return {};
}

// The folder with a list in it.
Done begun(const QDir& dir) {
  if (!dir.mkpath(".")) return failed(dir.path(), "cannot be made");
  if (!product_files(dir).isEmpty()) return {};
  for (const Product& product : built_in_shelf().products)
    if (auto written = write(dir, product); !written) return written;
  return {};
}

bool is_file_name(const std::string& id) {
  return !id.empty() && id.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789_") == std::string::npos;
}

Done no_id(const std::string& id) {
  return tl::unexpected(
      std::vector<Fault>{{id, 1, "`id` is no name for a product", "small letters, digits and _"}});
}

}  // namespace

tl::expected<Shelf, std::vector<Fault>> shop_shelf(const std::string& folder) {
  const QDir dir(QString::fromStdString(folder));
  if (folder.empty() || !dir.exists() || product_files(dir).isEmpty()) return built_in_shelf();
  return read_shelf(folder);
}

std::string product_to_toml(const Product& p) {
  std::string out = "id = " + toml_string(p.id) + "\nname = " + toml_string(p.name) +
                    "\nsubstance = " + toml_string(p.substance) +
                    "\nliquid = " + (p.liquid ? "true" : "false") + (p.tablets ? "\ntablets = true" : "") +
                    "\npercent = " + toml_number(p.assay.percent) +
                    "\nstrength = " + toml_string(name_of(p.assay.strength));
  if (p.density) out += "\ndensity = " + toml_number(*p.density);
  if (p.label_dose) out += "\nlabel_dose = " + toml_number(*p.label_dose);
  out += "\nprice = " + toml_number(p.price);
  if (!p.packs.empty()) {
    out += "\npacks = [";
    for (size_t i = 0; i < p.packs.size(); ++i) out += (i ? ", " : "") + toml_number(p.packs[i]);
    out += "]";
  }
  if (p.barcode) out += "\nbarcode = " + toml_string(*p.barcode);
  if (!p.cautions.empty()) {
    out += "\ncautions = [";
    for (size_t i = 0; i < p.cautions.size(); ++i) out += (i ? ", " : "") + toml_string(p.cautions[i]);
    out += "]";
  }
  return out + "\nsource = " + toml_string(p.source) + "\n";
}

std::string new_product_id(const Shelf& shelf, const std::string& name) {
  std::string base;
  for (const char c : name) {
    const bool letter = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    const bool capital = c >= 'A' && c <= 'Z';
    if (letter || capital)
      base += capital ? static_cast<char>(c - 'A' + 'a') : c;
    else if (!base.empty() && base.back() != '_')
      base += '_';
  }
  while (!base.empty() && base.back() == '_') base.pop_back();
  if (base.empty()) base = "product";
  std::string id = base;
  for (int n = 2; shelf.find(id); ++n) id = base + "_" + std::to_string(n);
  return id;
}

Done keep_product(const std::string& folder, const Product& product) {
  if (!is_file_name(product.id)) return no_id(product.id);
  const QDir dir(QString::fromStdString(folder));
  // Judged before anything is written.
  if (auto judged = read_product(product_to_toml(product), product.id + ".toml"); !judged)
    return tl::unexpected(judged.error());
  if (auto ready = begun(dir); !ready) return ready;
  return write(dir, product);
}

Done remove_product(const std::string& folder, const std::string& id) {
  if (!is_file_name(id)) return no_id(id);
  const QDir dir(QString::fromStdString(folder));
  if (auto ready = begun(dir); !ready) return ready;
  const auto shelf = read_shelf(folder);
  if (!shelf) return tl::unexpected(shelf.error());
  if (shelf->products.size() < 2)
    return tl::unexpected(
        std::vector<Fault>{{id, 1, "it is the last product", "a shelf with something on it"}});
  const QString path = dir.filePath(QString::fromStdString(id) + ".toml");
  if (!QFile::remove(path)) return failed(path, "is not there or cannot be removed");
  return {};
}

}  // namespace brimline
