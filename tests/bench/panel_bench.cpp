// SPDX-License-Identifier: GPL-3.0-or-later
// How long `check` and `demand` take for one visit inside the process, from the visit's text to the answer's:
// build/bench/panel_bench. Judged by eye, never a test.
#include <algorithm>
#include <chrono>
#include <iomanip>
#include <iostream>
#include <string>
#include <vector>

#include "station/batch/visit_answers.h"
#include "station/visit_json.h"

namespace {

using namespace brimline;
using Clock = std::chrono::steady_clock;

constexpr int kVisits = 2000;

std::string reading(const char* analyte, double value) {
  return std::string(R"({"analyte":")") + analyte + R"(","value":)" + std::to_string(value) +
         R"(,"method":"photometer"})";
}

// A full panel, each visit a little different, with a demand test of eight bottles read at two times.
std::string visit_text(int i, int month) {
  const double drift = 0.01 * (i % 29);
  std::string bottles;
  for (const double dose : {0., 2., 5., 10., 15., 20., 30., 40.}) {
    const double demand = 3 + i % 20, left = std::max(0.0, dose - demand),
                 at_first = std::max(0.0, dose - demand / 2);
    bottles += (bottles.empty() ? "" : ",") + std::string(R"({"dose_mg_l":)") + std::to_string(dose) +
               R"(,"stock_share":0.01,"dilution":)" + (left > 5 ? "5" : "1") + R"(,"free_mg_l":)" +
               std::to_string(left) + R"(,"total_mg_l":)" + std::to_string(left + 0.1) +
               R"(,"later":[{"hours":1,"free_mg_l":)" + std::to_string(at_first) + "}]}";
  }
  const std::string date = "2026-0" + std::to_string(month) + "-14T0";
  return R"({"format":"brimline-visit/1","id":"V-)" + std::to_string(i) + R"(","bottle":"B-1","taken_at":")" +
         date + R"(8:10:00-05:00","tested_at":")" + date +
         R"(9:02:00-05:00","occasion":"routine","vessel":{"id":"W-1","kind":"pool","use":"household",)" +
         R"("volume_m3":56.8,"sanitizer":"chlorine","water_temperature_c":27},"sample_temperature_c":22,"readings":[)" +
         reading("free_chlorine", 0.1 + drift) + "," + reading("total_chlorine", 0.4 + drift) + "," +
         reading("ph", 7.4 + drift) + "," + reading("total_alkalinity", 90 + i % 41) + "," +
         reading("calcium_hardness", 250 + i % 97) + "," + reading("cyanuric_acid", 30 + i % 31) + "," +
         reading("iron", 0.02) + "," + reading("copper", 0.05) + "," + reading("salt", 900) + "," +
         reading("tds", 1600) + R"(],"demand_test":{"hours":24,"bottles":[)" + bottles + "]}}";
}

Visit read(const std::string& text) {
  auto visit = read_visit(text, "bench");
  if (visit) return *visit;
  std::cerr << visit.error().front().text() << "\n";
  std::exit(1);
}

template <class Answer>
void time(const char* name, Answer answer) {
  std::vector<double> milliseconds;
  size_t characters = 0;
  for (int i = 0; i < kVisits; ++i) {
    const std::string text = visit_text(i, 6), before = visit_text(i + 1, 5);
    const auto start = Clock::now();
    characters += answer(text, before).size();
    milliseconds.push_back(std::chrono::duration<double, std::milli>(Clock::now() - start).count());
  }
  std::sort(milliseconds.begin(), milliseconds.end());
  std::cout << std::left << std::setw(10) << name << std::fixed << std::setprecision(3) << "median "
            << milliseconds[kVisits / 2] << " ms, 99th " << milliseconds[kVisits * 99 / 100] << " ms, of "
            << kVisits << " visits; " << characters / kVisits << " characters an answer\n";
}

}  // namespace

int main() {
  const Instant now = *Instant::parse("2026-06-14T09:05:00-05:00");
  const Words words("en");
  time("check", [&](const std::string& text, const std::string& before) {
    return batch::check_answer(read(text), {read(before).bottle}, now, words);
  });
  time("demand",
       [&](const std::string& text, const std::string&) { return batch::demand_answer(read(text), words); });
}
