// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/treatment/substance.h"

#include <algorithm>

#include "analysis/embedded.h"

namespace brimline {

namespace embedded {
std::span<const Text> substances();
}

namespace {

template <class Value>
using Names = std::initializer_list<std::pair<const char*, Value>>;

template <class Value>
std::vector<Value> choices(Fields& f, const char* key, Names<Value> names) {
  std::vector<Value> out;
  for (const std::string& text : f.texts_if(key).value_or(std::vector<std::string>{})) {
    const auto found =
        std::find_if(names.begin(), names.end(), [&](const auto& n) { return text == n.first; });
    if (found == names.end())
      f.fault(key, "`" + text + "` is not known", "a word of the visit's form");
    else
      out.push_back(found->second);
  }
  return out;
}

std::vector<Conflict> read_conflicts(Fields& f) {
  std::vector<Conflict> out;
  for (Fields& c : f.tables_if("conflict")) {
    Conflict one{c.text("with"), c.number_if("gap_h"), c.number_if("gap_spa_h"), c.text("why"),
                 c.text("source")};
    if (one.gap_h.has_value() != one.gap_spa_h.has_value())
      c.fault("with", "only one of `gap_h` and `gap_spa_h` is there", "both, or neither for never");
    out.push_back(std::move(one));
  }
  return out;
}

StepCap read_cap(Fields& f) {
  StepCap out;
  auto c = f.table_if("cap");
  if (!c) return out;
  out.mmol_per_litre = c->number_if("mmol_per_litre");
  out.ph_min = c->number_if("ph_min");
  out.ph_max = c->number_if("ph_max");
  out.total_alkalinity = c->number_if("total_alkalinity");
  out.calcium_hardness = c->number_if("calcium_hardness");
  out.free_chlorine = c->number_if("free_chlorine");
  out.share = c->number_if("share");
  out.source = c->text("source");
  return out;
}

void read_waits(Fields& f, Substance& s) {
  s.wait_h = f.number_if("wait_h").value_or(s.wait_h);
  s.wait_spa_h = f.number_if("wait_spa_h").value_or(s.wait_spa_h);
  s.waits_turnover = f.flag_if("waits_turnover").value_or(false);
  s.swim_wait_h = f.number_if("swim_wait_h").value_or(s.swim_wait_h);
  s.portions = f.whole_if("portions").value_or(1);
  s.portion_gap_h = f.number_if("portion_gap_h").value_or(0);
  if (s.portions < 1) f.fault("portions", "`portions` is below 1", "1 or more");
}

std::vector<Substance> read_all(std::vector<Fault>& faults) {
  std::vector<Substance> out;
  for (const embedded::Text& file : embedded::substances()) {
    auto one = read_substance(file.text, file.name);
    if (one)
      out.push_back(std::move(*one));
    else
      faults.insert(faults.end(), one.error().begin(), one.error().end());
  }
  std::sort(out.begin(), out.end(), [](const Substance& a, const Substance& b) { return a.id < b.id; });
  return out;
}

}  // namespace

tl::expected<Substance, std::vector<Fault>> read_substance(std::string_view text, std::string_view file) {
  auto f = Fields::parse(text, file);
  if (!f) return tl::unexpected(std::vector<Fault>{f.error()});
  Substance s;
  s.id = f->text("id");
  s.name = f->text("name");
  s.formula = f->text("formula");
  s.molar_mass = f->number_if("molar_mass");
  s.dosed = f->flag_if("dosed").value_or(true);
  s.families = f->texts("families");
  s.conflicts = read_conflicts(*f);
  s.cap = read_cap(*f);
  read_waits(*f, s);
  s.barred_sanitizers = choices<Sanitizer>(*f, "barred_sanitizers",
                                           {{"chlorine", Sanitizer::chlorine},
                                            {"salt_chlorine", Sanitizer::salt_chlorine},
                                            {"bromine", Sanitizer::bromine},
                                            {"biguanide", Sanitizer::biguanide}});
  s.barred_kinds = choices<VesselKind>(*f, "barred_kinds",
                                       {{"pool", VesselKind::pool},
                                        {"spa", VesselKind::spa},
                                        {"swim_spa", VesselKind::swim_spa},
                                        {"plunge", VesselKind::plunge}});
  s.barred_places =
      choices<Place>(*f, "barred_places", {{"outdoor", Place::outdoor}, {"indoor", Place::indoor}});
  s.hazards = f->texts("hazards");
  s.cautions = f->texts("cautions");
  s.source = f->text("source");
  std::vector<Fault> faults = f->finish();
  if (!faults.empty()) return tl::unexpected(std::move(faults));
  return s;
}

bool Substance::is(std::string_view family) const {
  return id == family || std::find(families.begin(), families.end(), family) != families.end();
}

bool Substance::barred_in(const Vessel& v) const {
  const auto holds = [](const auto& list, const auto& value) {
    return value && std::find(list.begin(), list.end(), *value) != list.end();
  };
  return !dosed || holds(barred_sanitizers, v.sanitizer) || holds(barred_places, v.place) ||
         holds(barred_kinds, std::optional(kind_of(v)));
}

std::span<const Substance> substances() {
  static const std::vector<Substance> all = [] {
    std::vector<Fault> ignored;
    return read_all(ignored);
  }();
  return all;
}

std::vector<Fault> substance_faults() {
  std::vector<Fault> faults;
  read_all(faults);
  return faults;
}

const Substance* find_substance(std::string_view id) {
  const auto all = substances();
  const auto found = std::lower_bound(all.begin(), all.end(), id,
                                      [](const Substance& s, std::string_view i) { return s.id < i; });
  return found != all.end() && found->id == id ? &*found : nullptr;
}

const Conflict* conflict_between(const Substance& a, const Substance& b) {
  if (a.id == b.id) return nullptr;
  for (const Conflict& c : a.conflicts)
    if (b.is(c.family)) return &c;
  for (const Conflict& c : b.conflicts)
    if (a.is(c.family)) return &c;
  return nullptr;
}

}  // namespace brimline
