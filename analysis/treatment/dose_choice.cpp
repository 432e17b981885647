// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/treatment/dose_choice.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "analysis/findings/edge.h"
#include "analysis/treatment/dose_program.h"
#include "analysis/treatment/errors.h"
#include "analysis/water/doses.h"

namespace brimline {

namespace {

// Money a cubic metre, not of the whole vessel: the same water in a larger vessel gets the same plan.
constexpr double kStepCost = 0.08;        // a step more is worth this much product
constexpr double kAirCost = 0.3;          // a day of air
constexpr double kHomeShare = 0.02;       // what stands at home has been paid for
constexpr double kSaltCost = 0.01;        // a mmol/kgw of chloride or sulfate left behind
constexpr double kOutside = 30;           // a target's width outside it
constexpr double kOutsideSaturation = 8;  // readings come before the index they make
constexpr double kUnwanted = 0.25;        // the same inside it but off its middle
constexpr double kRisky = 3;              // where errors would take it outside
constexpr int kMostRounds = 8;
constexpr double kEnough = 0.004;      // pH or saturation: the linear program agrees with the model
constexpr double kSeemsOutside = 1.0;  // an objective that product and steps alone hardly reach
constexpr double kPhMargin = 0.03;     // a plan ends inside, not on the edge
constexpr double kPhWithMetals = 7.4;  // common practice, no source: 7.2 to 7.4 while metals are dissolved
constexpr const char* kMetals[] = {"iron", "copper", "manganese"};
constexpr double kSmallVessel = 3;  // cubic metres: grains of chlorine for it are too few to weigh at home
constexpr double kAirStep = 0.3;    // mmol/kgw a day
constexpr double kDeviates = 2.4;   // 1 % of a normal error lies beyond

enum class Kind { linear, ph, saturation };

struct Goal {
  AnalyteId analyte;
  Kind kind = Kind::linear;
  std::vector<std::pair<double Totals::*, double>> terms;  // value = sum of factor * total
  double start = 0;
  ProgramRow row;
};

struct Source {
  ChosenDose dose;
  Totals per_mmol;
  ProgramColumn column;
};

struct Limits {
  const char* id;
  double most;  // mmol/kgw: more is no household dose
};
constexpr Limits kBalance[] = {{"hydrochloric_acid", 6},
                               {"sodium_bisulfate", 6},
                               {"sodium_bicarbonate", 4},
                               {"sodium_carbonate", 2},
                               {"sodium_sesquicarbonate", 2}};

double to_mg_l(std::string_view analyte) {
  if (analyte == "total_alkalinity") return 1e3 * weight::kAlkalinity;
  if (analyte == "calcium_hardness") return 1e3 * weight::kCaCO3;
  if (analyte == "cyanuric_acid") return 1e3 * weight::kCyanuricAcid;
  if (analyte == "free_chlorine") return 1e3 * weight::kChlorine;
  if (analyte == "total_bromine") return 1e3 * weight::kBromine;
  if (analyte == "borate") return 1e3 * weight::kBoron;
  return 1e3 * weight::kSalt;
}

double Totals::*total_of(std::string_view analyte) {
  if (analyte == "total_alkalinity") return &Totals::alkalinity;
  if (analyte == "calcium_hardness") return &Totals::calcium;
  if (analyte == "cyanuric_acid") return &Totals::cyanurate;
  if (analyte == "free_chlorine") return &Totals::chlorine;
  if (analyte == "total_bromine") return &Totals::bromine;
  if (analyte == "borate") return &Totals::borate;
  return &Totals::chloride;
}

Target shrunk(const Target& t, double by) {
  Target out = t;
  if (out.low) *out.low += by;
  if (out.high) *out.high -= by;
  if (out.low && out.high && *out.low > *out.high) return t;
  return out;
}

// Half of the range around its aim.
Target middle(const Target& t, double aim) {
  Target out;
  if (t.low) out.low = (*t.low + aim) / 2;
  if (t.high) out.high = (*t.high + aim) / 2;
  return out;
}

class Chooser {
 public:
  Chooser(const Draft& d, const ChlorineGoal& chlorine, bool stabilizer, bool salt)
      : d_(d), chlorine_(chlorine), stabilizer_(stabilizer), salt_(salt) {}

  DoseChoice choose() {
    collect_goals();
    if (goals_.empty() || met()) return std::move(out_);
    collect_sources();
    if (sources_.empty()) return std::move(out_);
    refine();
    return std::move(out_);
  }

 private:
  void collect_goals() {
    balance_ = d_.modelled && may_balance(d_);
    const double sd_volume = d_.s.vessel.volume_relative_sd.value_or(0.1);
    if (balance_) {
      ph_goal();
      linear("total_alkalinity", 2);
    }
    linear("calcium_hardness", 2);
    linear("borate", 0.5);
    linear("cyanuric_acid", 0.5);
    if (salt_) linear("salt", 10);
    if (!d_.s.chlorine()) linear("total_bromine", 0.02, sd_volume);
    chlorine_goal(sd_volume);
    if (balance_ && d_.s.fresh("calcium_hardness")) saturation_goal();
  }

  void add_goal(Goal g, const Target& range, const Target& wanted, double weight) {
    g.row.start = g.start;
    g.row.range = range;
    g.row.wanted = wanted;
    g.row.weight = weight;
    g.row.soft_weight = kUnwanted;
    g.row.width = range.low && range.high
                      ? std::max(1e-6, *range.high - *range.low)
                      : std::max(1.0, std::abs(range.high.value_or(range.low.value_or(1))));
    goals_.push_back(std::move(g));
  }

  void ph_goal() {
    const auto aim = d_.aim("ph");
    const auto now = d_.ph_with(judged(d_.totals));
    if (!aim || !now) return;
    Target wanted = middle(aim->range, aim->aim);
    if (wanted.high) *wanted.high -= 0.06;  // soda ash may not lead beyond 7.6
    Target range = shrunk(aim->range, kPhMargin);
    if (metals()) {
      if (range.high) range.high = std::min(*range.high, kPhWithMetals);
      wanted.high = range.high;
      wanted.low = range.low;
    }
    add_goal({"ph", Kind::ph, {}, *now, {}}, range, wanted, kOutside);
  }

  // Dissolved metals come out as stains where pH rises: it is held low until they are gone.
  bool metals() const {
    return std::any_of(std::begin(kMetals), std::end(kMetals), [&](const char* metal) {
      const Known* k = d_.s.usable(metal);
      const auto aim = d_.aim(metal);
      return k && aim && standing(k->measured(), aim->range) == Standing::above;
    });
  }

  void saturation_goal() {
    const auto aim = d_.aim("si_calcite");
    const auto now = saturation(judged(d_.totals));
    if (!aim || !now) return;
    add_goal({"si_calcite", Kind::saturation, {}, *now, {}}, shrunk(aim->range, 0.04),
             shrunk(aim->range, 0.1), kOutsideSaturation);
  }

  // A reading that is a total. What no dose takes away keeps its upper limit only while below it.
  void linear(const char* analyte, double margin, double relative_error = 0) {
    const auto aim = d_.aim(analyte);
    if (!aim || !d_.s.fresh(analyte)) return;
    double now = d_.amount(analyte);
    std::vector<std::pair<double Totals::*, double>> terms = {{total_of(analyte), to_mg_l(analyte)}};
    if (chlorine_.exactly && std::string_view(analyte) == "total_alkalinity") {
      terms.emplace_back(&Totals::chlorine, -to_mg_l(analyte));
      now -= (d_.totals.chlorine - residual()) * to_mg_l(analyte);
    }
    Target range = shrunk(aim->range, margin), wanted = middle(aim->range, aim->aim);
    const bool falls = std::string_view(analyte) == "total_alkalinity";
    if (!stabilizer_ && std::string_view(analyte) == "cyanuric_acid") range.low = wanted.low = std::nullopt;
    if (!falls && range.high && now > *range.high) range.high = wanted.high = now;
    if (wanted.high) wanted.high = std::max(*wanted.high, range.low.value_or(*wanted.high));
    if (relative_error > 0 && range.high && range.low)
      wanted.high =
          std::max(*range.low, *range.high - kDeviates * relative_error * std::max(0.0, aim->aim - now));
    add_goal({analyte, Kind::linear, std::move(terms), now, {}}, range, wanted, kOutside);
  }

  void chlorine_goal(double sd_volume) {
    const Known* read = d_.s.fresh("free_chlorine");
    const auto aim = chlorine_aim();
    if (!d_.s.chlorine() || !read || !aim || !chlorine_.dosed) return;
    const double now = d_.amount("free_chlorine");
    const Goal g{"free_chlorine", Kind::linear, {{&Totals::chlorine, to_mg_l("free_chlorine")}}, now, {}};
    if (chlorine_.exactly) {
      const Target exact{*chlorine_.exactly, *chlorine_.exactly};
      return add_goal(g, exact, exact, 10 * kOutside);
    }
    if (aim->range.high && now > *aim->range.high) return;
    const double high = std::min(aim->range.high.value_or(4), re_entry_mg_l(d_.s));
    clamped_ = aim->row->low_per_cyanuric &&
               *aim->row->low_per_cyanuric * d_.amount("cyanuric_acid") > aim->range.low.value_or(0) + 1e-9;
    const double low = (clamped_ ? aim->range.low : aim->row->low).value_or(0);
    const double dose = std::max(0.0, std::max(aim->aim, aim->range.low.value_or(0)) - now);
    const double sure = high - kDeviates * std::hypot(read->sd, sd_volume * dose);
    add_goal(g, {low + 0.03, high - 0.02}, {std::min((low + aim->aim) / 2, sure), std::max(low, sure)},
             kOutside);
    goals_.back().row.soft_weight = kRisky;
    if (!aim->row->low_per_cyanuric || clamped_) return;
    // Free chlorine at least a share of cyanuric acid, as both will be.
    const double share = *aim->row->low_per_cyanuric;
    Goal ratio{"free_chlorine",
               Kind::linear,
               {{&Totals::chlorine, to_mg_l("free_chlorine")},
                {&Totals::cyanurate, -share * to_mg_l("cyanuric_acid")}},
               now - share * d_.amount("cyanuric_acid"),
               {}};
    add_goal(std::move(ratio), {0.02, std::nullopt}, {}, kOutside);
  }

  // What a shock leaves once it is used up, mol/kgw.
  double residual() const {
    const auto aim = d_.aim("free_chlorine");
    return (aim ? aim->aim : 3) / to_mg_l("free_chlorine");
  }
  Totals judged(const Totals& t) const {
    return chlorine_.exactly ? spend_chlorine(t, std::max(0.0, t.chlorine - residual())) : t;
  }

  // For the water as it will be, where stabilizer is to be raised.
  std::optional<Aim> chlorine_aim() const {
    TargetCase later = d_.s.where;
    later.cyanuric_acid = d_.amount("cyanuric_acid");
    if (const auto cyanuric = d_.aim("cyanuric_acid"); stabilizer_ && cyanuric && d_.s.fresh("cyanuric_acid"))
      later.cyanuric_acid = std::max(*later.cyanuric_acid, cyanuric->range.low.value_or(0));
    return d_.targets.find("free_chlorine", later);
  }

  std::optional<double> saturation(const Totals& t) const {
    const auto w = solve(t, d_.s.bottle_temperature);
    const auto warm = w ? at_temperature(*w, d_.s.vessel_temperature) : w;
    return warm ? warm->si_calcite() : std::nullopt;
  }

  // Nothing calls for a dose. Before the first one a reading that is outside by no more than its error does
  // not; once water is treated anyway, what is at the edge comes along.
  bool met() const {
    const bool untouched = std::none_of(d_.steps.begin(), d_.steps.end(), [](const DraftStep& s) {
      return !s.change.chemical.empty() || s.change.drained > 0;
    });
    return std::all_of(goals_.begin(), goals_.end(), [&](const Goal& g) {
      // Against the target itself, not what is shrunk for the solver's sake.
      Target t = g.row.range;
      const bool ratio = g.analyte == "free_chlorine" && g.terms.size() == 2;
      if (!ratio) {
        const auto aim = g.analyte == "free_chlorine" ? chlorine_aim() : d_.aim(g.analyte);
        if (aim && !(chlorine_.exactly && g.analyte == "free_chlorine")) {
          if (t.low) t.low = g.analyte == "free_chlorine" && !clamped_ ? aim->row->low : aim->range.low;
          t.high = aim->range.high;
        }
      }
      if (ratio) t = {0.0, std::nullopt};
      const Standing stands = standing({g.start, sd_of(g)}, t);
      if (untouched && !ratio && g.analyte != "free_chlorine" && g.analyte != "total_bromine" &&
          stands != Standing::below && stands != Standing::above)
        return true;
      const bool falls = g.kind != Kind::linear || g.analyte == "total_alkalinity";
      return (!t.low || g.start >= *t.low - 1e-9) && (!falls || !t.high || g.start <= *t.high + 1e-9);
    });
  }

  double sd_of(const Goal& g) const {
    if (g.kind == Kind::saturation) return saturation_of(d_.s).value_or(Measured{}).sd;
    const Known* read = d_.s.fresh(g.analyte);
    return read ? read->sd : 0;
  }

  bool wants(const char* analyte) const {
    return std::any_of(goals_.begin(), goals_.end(), [&](const Goal& g) { return g.analyte == analyte; });
  }

  void source(const char* id, double most, int side = 0) {
    const Substance* sub = find_substance(id);
    const auto vector = dose_vector(id);
    if (!sub || !vector || sub->barred_in(d_.s.vessel)) return;
    for (const Goal& g : goals_) most = std::min(most, room(g, *vector));
    const std::vector<int> found = d_.best_supplies(id);
    if (found.empty()) out_.no_product.emplace_back(id);
    for (const int index : found) {
      const Supply& supply = d_.supplies()[index];
      const double left = supply.stock_mol ? *supply.stock_mol * 1e3 / d_.kilograms() : most;
      if (left <= 1e-4) continue;
      const double salts = std::max(0.0, vector->chloride) + std::max(0.0, vector->sulfate);
      Source s{{index, id, 0}, *vector * 1e-3, {}};
      s.column = {supply.price_a_mol() * (supply.at_home ? kHomeShare : 1) + kSaltCost * salts, kStepCost,
                  step_most(*sub, *vector, most), std::min(most, left), side};
      sources_.push_back(std::move(s));
    }
  }

  // What this goal's upper end leaves room for; no limit where other doses can bring the value down again.
  double room(const Goal& g, const Totals& vector) const {
    const bool falls = g.kind != Kind::linear || g.analyte == "total_alkalinity" || g.terms.size() > 1;
    if (falls || !g.row.range.high) return std::numeric_limits<double>::infinity();
    const double a_mmol = vector.*g.terms.front().first * g.terms.front().second * 1e-3;
    if (a_mmol <= 0) return std::numeric_limits<double>::infinity();
    return std::max(1e-4, 1.05 * (*g.row.range.high - g.start) / a_mmol);
  }

  double step_most(const Substance& sub, const Totals& v, double most) const {
    double out = most;
    if (sub.cap.mmol_per_litre) out = std::min(out, *sub.cap.mmol_per_litre);
    if (sub.cap.total_alkalinity && v.alkalinity > 0)
      out = std::min(out, *sub.cap.total_alkalinity / weight::kAlkalinity / v.alkalinity);
    if (sub.cap.calcium_hardness && v.calcium > 0)
      out = std::min(out, *sub.cap.calcium_hardness / weight::kCaCO3 / v.calcium);
    if (sub.cap.free_chlorine && v.chlorine > 0 && !chlorine_.exactly)
      out = std::min(out, *sub.cap.free_chlorine / weight::kChlorine / v.chlorine);
    return out;
  }

  void collect_sources() {
    if (balance_)
      for (const Limits& l : kBalance) source(l.id, l.most);
    if (wants("calcium_hardness")) source("calcium_chloride", 5);
    if (stabilizer_ && wants("cyanuric_acid")) source("cyanuric_acid", 1);
    if (wants("salt")) source("sodium_chloride", 80);
    if (wants("total_bromine")) source("bcdmh", 0.05);
    if (wants("borate")) source("boric_acid", 6);
    if (wants("free_chlorine")) {
      source("sodium_hypochlorite", 0.5, 1);
      // Undissolved grains bleach a liner, and a plunge wants too few to weigh.
      const bool liquid = d_.s.vessel.surface == Surface::vinyl || d_.kilograms() < 1000 * kSmallVessel;
      if (!liquid || d_.best_supplies("sodium_hypochlorite").empty()) source("calcium_hypochlorite", 0.25, 1);
      // Dichlor brings stabilizer: only where that may be; never for a shock. Trichlor dissolves over days:
      // upkeep, not a dose.
      if (!chlorine_.exactly && wants("cyanuric_acid")) source("dichlor", 0.1, 2);
    }
    if (balance_) {
      Source air{{-1, "", 0}, Totals{.carbon = -1e-3}, {}};
      air.column = {0.01, kAirCost, kAirStep, 3, 0};
      sources_.push_back(air);
    }
  }

  Totals with(const std::vector<double>& doses) const {
    Totals t = d_.totals;
    for (size_t j = 0; j < sources_.size(); ++j) t += sources_[j].per_mmol * doses[j];
    return oxidise_bromide(t);
  }

  std::optional<std::pair<double, double>> ph_and_saturation(const Totals& totals) const {
    const auto w = solve(judged(totals), d_.s.bottle_temperature);
    if (!w) return std::nullopt;
    const auto warm = at_temperature(*w, d_.s.vessel_temperature);
    return std::pair(w->ph, warm ? warm->si_calcite().value_or(0) : 0);
  }

  // Slopes of every goal around `doses`; false where no water is there.
  bool linearise(const std::vector<double>& doses) {
    const Totals here = with(doses);
    const auto now = balance_ ? ph_and_saturation(here) : std::pair(0.0, 0.0);
    if (!now) return false;
    for (Goal& g : goals_) g.row.slopes.assign(sources_.size(), 0);
    for (size_t j = 0; j < sources_.size(); ++j) {
      std::pair<double, double> slope{0, 0};
      if (balance_) {
        const double step = 0.01 * std::min(1.0, sources_[j].column.most);
        const auto up = ph_and_saturation(oxidise_bromide(here + sources_[j].per_mmol * step));
        if (!up) return false;
        slope = {(up->first - now->first) / step, (up->second - now->second) / step};
      }
      for (Goal& g : goals_) {
        if (g.kind == Kind::ph) g.row.slopes[j] = slope.first;
        if (g.kind == Kind::saturation) g.row.slopes[j] = slope.second;
        for (const auto& [member, factor] : g.terms) g.row.slopes[j] += sources_[j].per_mmol.*member * factor;
      }
    }
    for (Goal& g : goals_) {
      g.row.start = g.start;
      if (g.kind == Kind::linear) continue;
      g.row.start = g.kind == Kind::ph ? now->first : now->second;
      for (size_t j = 0; j < doses.size(); ++j) g.row.start -= g.row.slopes[j] * doses[j];
    }
    return true;
  }

  std::vector<double> true_values(const std::vector<double>& doses) const {
    const Totals t = with(doses);
    const auto now = balance_ ? ph_and_saturation(t) : std::nullopt;
    std::vector<double> out;
    for (const Goal& g : goals_) {
      double v = g.start;
      for (size_t j = 0; j < doses.size() && g.kind == Kind::linear; ++j) v += g.row.slopes[j] * doses[j];
      if (g.kind != Kind::linear) v = !now ? 99 : g.kind == Kind::ph ? now->first : now->second;
      out.push_back(v);
    }
    return out;
  }

  // A water of the aimed pH and alkalinity as near as acid, soda ash and bicarbonate come to it: where the
  // first linear picture is drawn.
  std::vector<double> first_guess() const {
    std::vector<double> x(sources_.size(), 0.0);
    if (!balance_) return x;
    const auto aim = d_.aim("total_alkalinity");
    const auto index = [&](std::string_view id) {
      for (size_t j = 0; j < sources_.size(); ++j)
        if (sources_[j].dose.substance == id) return static_cast<int>(j);
      return -1;
    };
    const int bicarbonate = index("sodium_bicarbonate");
    if (bicarbonate >= 0 && aim)
      x[bicarbonate] = std::clamp((aim->aim - d_.amount("total_alkalinity")) / weight::kAlkalinity, 0.0, 2.0);
    const double target = d_.aim("ph")->aim;
    const auto start = ph_and_saturation(with(x));
    if (!start) return x;
    int lever = start->first > target ? index("hydrochloric_acid") : index("sodium_carbonate");
    if (lever < 0) lever = start->first > target ? index("sodium_bisulfate") : -1;
    if (lever < 0) return x;
    double low = 0, high = sources_[lever].column.most;
    for (int i = 0; i < 16; ++i) {
      x[lever] = (low + high) / 2;
      const auto p = ph_and_saturation(with(x));
      const bool past = !p || (p->first > target) != (start->first > target);
      (past ? high : low) = x[lever];
    }
    return x;
  }

  // From two first pictures, as the steps chosen depend on where it is drawn.
  void refine() {
    std::vector<ProgramColumn> columns;
    for (const Source& s : sources_) columns.push_back(s.column);
    std::vector<double> best;
    double best_weighed = std::numeric_limits<double>::infinity();
    const std::vector<double> guess = first_guess();
    refine_from(guess, columns, best, best_weighed);
    if (!best.empty() && balance_) refine_from(middle_of(guess, best), columns, best, best_weighed);
    // Something stays outside: perhaps only so, and another product leads elsewhere.
    if (balance_ && !best.empty() && best_weighed > kSeemsOutside) {
      const std::vector<double> first = best;
      for (size_t j = 0; j < columns.size(); ++j) {
        if (first[j] <= 1e-5) continue;
        std::vector<ProgramColumn> others = columns;
        others[j].most = 0;
        refine_from(guess, others, best, best_weighed);
      }
    }
    if (best.empty()) return;
    out_.weighed = best_weighed;
    for (size_t j = 0; j < sources_.size(); ++j)
      if (best[j] > 1e-5) {
        out_.doses.push_back(sources_[j].dose);
        out_.doses.back().mmol = best[j];
      }
  }

  static std::vector<double> middle_of(std::vector<double> a, const std::vector<double>& b) {
    for (size_t j = 0; j < a.size(); ++j) a[j] = (a[j] + b[j]) / 2;
    return a;
  }

  void refine_from(std::vector<double> around, const std::vector<ProgramColumn>& columns,
                   std::vector<double>& best, double& best_weighed) {
    for (int round = 0; round < kMostRounds; ++round) {
      if (!linearise(around)) return;
      std::vector<ProgramRow> rows;
      for (const Goal& g : goals_) rows.push_back(g.row);
      const auto answer = solve_program(columns, rows);
      if (!answer) return;
      const std::vector<double> values = true_values(answer->doses);
      const double weighed = weigh(columns, rows, answer->doses, values);
      if (weighed < best_weighed) {
        best_weighed = weighed;
        best = answer->doses;
      }
      if (agrees(rows, answer->doses, values)) return;
      around = round < 2 ? answer->doses : middle_of(std::move(around), answer->doses);
    }
  }

  bool agrees(const std::vector<ProgramRow>& rows, const std::vector<double>& doses,
              const std::vector<double>& values) const {
    for (size_t i = 0; i < rows.size(); ++i) {
      double v = rows[i].start;
      for (size_t j = 0; j < doses.size(); ++j) v += rows[i].slopes[j] * doses[j];
      if (goals_[i].kind != Kind::linear && std::abs(v - values[i]) > kEnough) return false;
    }
    return true;
  }

  const Draft& d_;
  const ChlorineGoal& chlorine_;
  const bool stabilizer_, salt_;
  bool balance_ = false;
  bool clamped_ = false;  // its share of the stabilizer would be more free chlorine than may be swum in
  std::vector<Goal> goals_;
  std::vector<Source> sources_;
  DoseChoice out_;
};

}  // namespace

bool may_balance(const Draft& d) {
  const auto cyanuric = d.s.known.find("cyanuric_acid");
  // A stabilizer beyond the range hides the buffer.
  if (cyanuric != d.s.known.end() && (!cyanuric->second.usable || cyanuric->second.doubtful)) return false;
  return d.s.fresh("ph") && d.s.fresh("total_alkalinity");
}

DoseChoice choose_doses(const Draft& d, const ChlorineGoal& chlorine, bool stabilizer, bool salt) {
  return Chooser(d, chlorine, stabilizer, salt).choose();
}

}  // namespace brimline
