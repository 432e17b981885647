// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/shelf/shelf.h"

#include <algorithm>

#include <QDir>
#include <QFile>

#include "analysis/embedded.h"

namespace brimline {

namespace embedded {
std::span<const Text> catalogue();
}

namespace {

struct Loaded {
  Shelf shelf;
  std::vector<Fault> faults;
  void take(std::string_view text, const std::string& file) {
    auto product = read_product(text, file);
    if (!product) {
      faults.insert(faults.end(), product.error().begin(), product.error().end());
    } else if (shelf.find(product->id)) {
      faults.push_back({file, 1, "`" + product->id + "` is on the shelf twice", "an id of its own"});
    } else {
      shelf.products.push_back(std::move(*product));
    }
  }
};

Loaded load_built_in() {
  Loaded out;
  out.shelf.id = "built_in";
  for (const embedded::Text& file : embedded::catalogue()) out.take(file.text, std::string(file.name));
  return out;
}

void judge(Fields& f, const Product& p) {
  const Substance* s = find_substance(p.substance);
  if (!s) return f.fault("substance", "`" + p.substance + "` is not known", "a chemical's id");
  if (s->is("label_only") && !p.label_dose)
    f.fault("substance", "`label_dose` is missing", "mL or g a cubic metre");
  if (s->molar_mass && !moles_per_unit(p))
    f.fault("percent", "the strength does not fit the chemical",
            "weight, or a chlorine strength of a chlorine");
  if (p.assay.percent <= 0 || p.assay.percent > 100)
    f.fault("percent", "`percent` is no percent", "above 0, at most 100");
  if (std::any_of(p.packs.begin(), p.packs.end(), [](double pack) { return pack <= 0; }))
    f.fault("packs", "a pack holds nothing", "litres or kilograms above 0");
  if (p.name.empty()) f.fault("name", "`name` is empty", "the product's name");
  if (p.price < 0) f.fault("price", "`price` is negative", "0 or more");
}

}  // namespace

const Product* Shelf::find(std::string_view product_id) const {
  const auto found =
      std::find_if(products.begin(), products.end(), [&](const Product& p) { return p.id == product_id; });
  return found == products.end() ? nullptr : &*found;
}

tl::expected<Product, std::vector<Fault>> read_product(std::string_view text, std::string_view file) {
  auto f = Fields::parse(text, file);
  if (!f) return tl::unexpected(std::vector<Fault>{f.error()});
  Product p;
  p.id = f->text("id");
  p.name = f->text("name");
  p.substance = f->text("substance");
  p.liquid = f->flag("liquid");
  p.tablets = f->has("tablets") && f->flag("tablets");
  p.assay.percent = f->number_if("percent").value_or(100);
  const std::string strength = f->text_if("strength").value_or("weight");
  if (strength == "trade")
    p.assay.strength = Strength::trade;
  else if (strength == "available_chlorine")
    p.assay.strength = Strength::available_chlorine;
  else if (strength != "weight")
    f->fault("strength", "`" + strength + "` is not known", "weight, trade or available_chlorine");
  p.density = f->number_if("density");
  p.label_dose = f->number_if("label_dose");
  p.price = f->number("price");
  if (f->has("packs")) p.packs = f->numbers("packs");
  p.barcode = f->text_if("barcode");
  p.cautions = f->texts_if("cautions").value_or(std::vector<std::string>{});
  p.source = f->text("source");
  judge(*f, p);
  std::vector<Fault> faults = f->finish();
  if (!faults.empty()) return tl::unexpected(std::move(faults));
  return p;
}

const Shelf& built_in_shelf() {
  static const Shelf shelf = load_built_in().shelf;
  return shelf;
}

std::vector<Fault> shelf_faults() {
  return load_built_in().faults;
}

tl::expected<Shelf, std::vector<Fault>> read_shelf(const std::string& folder) {
  const QDir dir(QString::fromStdString(folder));
  const QStringList names = dir.entryList({"*.toml"}, QDir::Files, QDir::Name);
  if (!dir.exists() || names.isEmpty())
    return tl::unexpected(std::vector<Fault>{{folder, 0, "no product there", "a folder of *.toml files"}});
  Loaded out;
  out.shelf.id = dir.dirName().toStdString();
  for (const QString& name : names) {
    const QString path = dir.filePath(name);
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
      out.faults.push_back(
          {path.toStdString(), 0, file.errorString().toStdString(), "a file that can be read"});
      continue;
    }
    out.take(file.readAll().toStdString(), path.toStdString());
  }
  if (!out.faults.empty()) return tl::unexpected(std::move(out.faults));
  return std::move(out.shelf);
}

}  // namespace brimline
