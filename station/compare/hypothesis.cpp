// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/compare/hypothesis.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include <Eigen/Dense>

#include "analysis/panel/told.h"
#include "station/compare/expectation.h"

namespace brimline {

namespace {

constexpr int kLatents = 5;  // evaporation, splash, daily feed, and the amounts of up to two causes
using Vector = Eigen::Matrix<double, kLatents, 1>;
using Square = Eigen::Matrix<double, kLatents, kLatents>;

// A cause as a direction in the readings, with how likely and how large it is before anything is read.
struct Term {
  Cause cause;
  double chance;
  double mean, sd;
  std::vector<double> load;  // a reading
};

// A cause that is a chemical nobody told of; its size in mg/L of what it is measured by. How often and how
// much: common practice, no source.
struct Chemical {
  Cause cause;
  const char* chemical;
  const char* measured_by;
  double chance;
  double mean, sd;
};
// Tablets and calcium hypochlorite: 1 to 3 mg/L of chlorine a day for a month, half to all of it.
constexpr Chemical kChemicals[] = {
    {Cause::acid, "hydrochloric_acid", "total_alkalinity", 0.05, 30, 20},
    {Cause::acid, "sodium_bisulfate", "total_alkalinity", 0.04, 30, 20},
    {Cause::tablets, "trichlor", "cyanuric_acid", 0.06, 25, 15},
    {Cause::tablets, "dichlor", "cyanuric_acid", 0.03, 25, 15},
    {Cause::calcium_hypochlorite, "calcium_hypochlorite", "calcium_hardness", 0.1, 45, 30},
    {Cause::stabilizer_eaten, "cyanuric_acid", "cyanuric_acid", 0.05, 25, 15},
    {Cause::alkali, "sodium_bicarbonate", "total_alkalinity", 0.04, 35, 20},
    {Cause::salt_added, "sodium_chloride", "salt", 0.03, 600, 400}};

double per_unit(const char* chemical, std::string_view analyte, const char* measured_by) {
  const Addition mole{chemical, 1.0, std::nullopt};
  const Volume one = Volume::cubic_metres(1);
  const auto moved = told_change(mole, analyte, one), measure = told_change(mole, measured_by, one);
  // an acid's change of alkalinity is negative: the size stands for how far, whichever the direction
  return moved && measure ? *moved / std::abs(*measure) : 0;
}

bool unlikely(const Chemical& row, const Leg& leg) {
  const bool feeds = row.cause == Cause::tablets || row.cause == Cause::calcium_hypochlorite;
  return feeds && (!leg.chlorine || leg.salt_cell);
}

std::vector<Term> terms_of(const Leg& leg) {
  std::vector<Term> out;
  const size_t n = leg.readings.size();
  Term topped{Cause::evaporation, leg.indoor ? 0.01 : 0.04, 0.25, 0.12, std::vector<double>(n)};
  Term lowered{Cause::evaporation, leg.indoor ? 0.01 : 0.03, 0.15, 0.08, std::vector<double>(n)};
  for (size_t i = 0; i < n; ++i) {
    topped.load[i] = leg.readings[i].fill.value;
    lowered.load[i] = leg.readings[i].before.value;  // nothing was filled in: all that is dissolved stays
  }
  out.push_back(std::move(topped));
  out.push_back(std::move(lowered));
  for (const Chemical& row : kChemicals) {
    double chance = unlikely(row, leg) ? 0.01 : row.chance;
    if (row.cause == Cause::tablets && leg.tablets_in_use) chance = 0.3;
    Term term{row.cause, chance, row.mean, row.sd, std::vector<double>(n)};
    const double sign = row.cause == Cause::stabilizer_eaten ? -1 : 1;
    for (size_t i = 0; i < n; ++i)
      term.load[i] = sign * per_unit(row.chemical, leg.readings[i].analyte, row.measured_by);
    out.push_back(std::move(term));
  }
  return out;
}

double log_above_zero(double mean, double sd) {
  return std::log(std::max(1e-300, 0.5 * std::erfc(-mean / sd / std::numbers::sqrt2)));
}

struct Share {
  double fraction, log_prior;
  bool rain;
};

// Shares replaced that are tried: a told drain was likely done as told.
std::vector<Share> shares_of(const Leg& leg, Detail detail) {
  std::vector<Share> out;
  const int steps = detail == Detail::fine ? 33 : 14;
  const double drain_sd = std::max(0.04, 0.15 * leg.told_drain);
  double sum = 0;
  std::vector<double> weights;
  for (int i = 0; i < steps; ++i) {
    const double f = (i + 0.5) / steps;
    double weight = 1.0 / steps;
    if (leg.told_drain > 0)
      weight = 0.1 / steps + 0.9 * std::exp(-0.5 * std::pow((f - leg.told_drain) / drain_sd, 2));
    else if (f < 0.04)
      weight *= 0.2;  // splash, below
    weights.push_back(weight);
    sum += weight;
  }
  const double rain = leg.indoor ? 0.01 : leg.after_storm ? 0.6 : 0.15;
  for (int i = 0; i < steps; ++i) {
    const double f = (i + 0.5) / steps, prior = std::log(weights[i] / sum);
    out.push_back({f, prior + std::log(1 - rain), false});
    if (f < 0.75) out.push_back({f, prior + std::log(rain), true});
  }
  return out;
}

double chance_replaced(const Leg& leg) {
  if (leg.told_drain > 0) return 0.8;
  if (leg.after_storm) return 0.4;
  return leg.small_and_warm ? 0.3 : 0.2;
}

// The integral over the latents for one f, V and pair of causes.
class Weigher {
 public:
  Weigher(const Leg& leg, double inverse_volume, bool want_truth)
      : leg_(leg), inverse_volume_(inverse_volume), want_truth_(want_truth), truth_(leg.readings.size()) {
    known_.resize(leg.readings.size());
    noise_.resize(leg.readings.size());
    load_.resize(leg.readings.size());
  }

  // Sets what does not depend on the causes.
  void place(double f, bool rain, bool replaced) {
    const double months = std::clamp(leg_.months, 0.1, 6.0);
    mean_.setZero();
    sd_.setConstant(1e-6);
    mean_[0] = (leg_.indoor ? kEvaporatedIndoor : kEvaporatedOutdoor) * months;
    sd_[0] = (leg_.indoor ? 0.02 : 0.03) * months;
    // 200 US gallons a week splashed or backwashed from 15,000 are 5.7 % a month (computed)
    if (!replaced) mean_[1] = sd_[1] = 0.02 * months;
    // liquid chlorine fed and not told, mg/L of chlorine
    if (leg_.chlorine && !leg_.salt_cell) mean_[2] = 10 * months, sd_[2] = 20 * months;
    for (size_t i = 0; i < leg_.readings.size(); ++i) {
      const LegReading& r = leg_.readings[i];
      const double fill = rain ? 0 : r.fill.value;
      const double told = r.told_per_inverse * inverse_volume_;
      known_[i] = r.before.value * (1 - f) + fill * f + told * (1 - f / 2);
      // doses are measured out at home to some 3 %, and went in before or after the water was replaced
      const double dose = told * std::hypot(0.03, f / std::sqrt(12.0));
      noise_[i] = std::pow((1 - f) * r.before.sd, 2) + std::pow((f + mean_[0]) * r.fill.sd, 2) + dose * dose +
                  r.drift_sd * r.drift_sd;
      load_[i].setZero();
      load_[i][0] = r.fill.value;
      load_[i][1] = -(r.before.value - r.fill.value);
      load_[i][2] = r.analyte == "salt" ? 1.65 : 0;
    }
    causes_ = replaced ? bit(Cause::replaced) : 0;
    fraction_ = f;
  }

  Weighed weigh(double log_prior, const Term* first, const Term* second) {
    Weighed out{causes_, fraction_, log_prior, nullptr};
    int at = 3;
    mean_[3] = mean_[4] = 0;
    sd_[3] = sd_[4] = 1e-6;
    for (const Term* term : {first, second}) {
      if (term) {
        mean_[at] = term->mean;
        sd_[at] = term->sd;
        out.causes |= bit(term->cause);
        out.log_weight -= log_above_zero(term->mean, term->sd);
      }
      for (size_t i = 0; i < load_.size(); ++i) load_[i][at] = term ? term->load[i] : 0;
      ++at;
    }
    integrate(out, first, second);
    return out;
  }

 private:
  void integrate(Weighed& out, const Term* first, const Term* second) {
    Square precision = Square::Zero();
    precision.diagonal() = sd_.array().square().inverse();
    Vector pull = Vector::Zero();
    double log_sds = sd_.array().log().sum();
    for (size_t i = 0; i < load_.size(); ++i) {
      const Measured& now = leg_.readings[i].now;
      const double variance = noise_[i] + now.sd * now.sd;
      const double rest = now.value - known_[i] - load_[i].dot(mean_);
      precision.noalias() += load_[i] * load_[i].transpose() / variance;
      pull += load_[i] * (rest / variance);
      out.log_weight -= 0.5 * (std::log(variance) + rest * rest / variance);
    }
    const Eigen::LLT<Square> root(precision);
    const Vector shift = root.solve(pull);
    const double log_det = root.matrixLLT().diagonal().array().log().sum();
    out.log_weight += 0.5 * pull.dot(shift) - log_sds - log_det;
    if (first || want_truth_) {
      const Square spread = root.solve(Square::Identity());
      if (first) out.log_weight += log_above_zero(mean_[3] + shift[3], std::sqrt(spread(3, 3)));
      if (second) out.log_weight += log_above_zero(mean_[4] + shift[4], std::sqrt(spread(4, 4)));
      if (want_truth_) find_truth(mean_ + shift, spread), out.truth = &truth_;
    }
  }

  // A true value lies between its reading and what the latents predict of it.
  void find_truth(const Vector& latents, const Square& spread) {
    for (size_t i = 0; i < load_.size(); ++i) {
      const Measured& now = leg_.readings[i].now;
      const double reading = now.sd * now.sd, model = std::max(noise_[i], 1e-12);
      const double towards = reading / (reading + model);
      const double predicted = known_[i] + load_[i].dot(latents);
      truth_[i].value = (1 - towards) * now.value + towards * predicted;
      truth_[i].sd = std::sqrt(model * towards + towards * towards * load_[i].dot(spread * load_[i]));
    }
  }

  const Leg& leg_;
  double inverse_volume_;
  bool want_truth_;
  std::vector<Measured> truth_;
  std::vector<double> known_, noise_;
  std::vector<Vector> load_;
  Vector mean_, sd_;
  CauseSet causes_ = 0;
  double fraction_ = 0;
};

double log_odds(double chance) {
  return std::log(chance / (1 - chance));
}

}  // namespace

void weigh(const Leg& leg, double inverse_volume, Detail detail, bool want_truth,
           const std::function<void(const Weighed&)>& take) {
  const std::vector<Term> terms = terms_of(leg);
  Weigher weigher(leg, inverse_volume, want_truth);
  weigher.place(0, false, false);
  take(weigher.weigh(0, nullptr, nullptr));
  for (size_t a = 0; a < terms.size(); ++a) {
    take(weigher.weigh(log_odds(terms[a].chance), &terms[a], nullptr));
    for (size_t b = a + 1; b < terms.size(); ++b)
      if (terms[a].cause != terms[b].cause)
        take(weigher.weigh(log_odds(terms[a].chance) + log_odds(terms[b].chance), &terms[a], &terms[b]));
  }
  const double replaced = log_odds(chance_replaced(leg));
  for (const Share& share : shares_of(leg, detail)) {
    weigher.place(share.fraction, share.rain, true);
    take(weigher.weigh(replaced + share.log_prior, nullptr, nullptr));
    for (const Term& term : terms)
      take(weigher.weigh(replaced + share.log_prior + log_odds(term.chance), &term, nullptr));
  }
}

}  // namespace brimline
