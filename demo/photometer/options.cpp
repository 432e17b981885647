// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/photometer/options.h"

#include <charconv>
#include <map>

namespace brimline::demo {

const char* const kUsage =
    "usage: brimline-photometer --bottle FILE.toml --profile NAME|FILE --link PATH\n"
    "         [--seed N] [--speed X] [--pause SECONDS] [--rounds N] [--once|--wait]\n"
    "         [--fault KIND[:SHARE]]... [--replug SECONDS]\n"
    "An emulated photometer behind a pseudo-terminal at PATH. It measures the bottle when somebody\n"
    "listens and then waits for commands on standard input (--wait), or ends (--once):\n"
    "  bottle FILE | measure | fault KIND | unplug | replug | quit\n";

namespace {

std::string wrong(const std::string& flag, const std::string& text, const std::string& expected) {
  return flag + " " + text + " is wrong; expected " + expected;
}

bool read_number(const std::string& text, double low, double high, double& into) {
  double value = 0;
  const char* end = text.data() + text.size();
  if (std::from_chars(text.data(), end, value).ptr != end || !(value >= low && value <= high)) return false;
  into = value;
  return true;
}

std::string read_fault(const std::string& text, Options& into) {
  const size_t colon = text.find(':');
  const auto kind = fault_named(text.substr(0, colon));
  if (!kind) return wrong("--fault", text, "one of " + fault_names());
  double share = 0;
  if (colon == std::string::npos)
    into.next.push_back(*kind);
  else if (read_number(text.substr(colon + 1), 0, 1, share))
    into.rates.emplace_back(*kind, share);
  else
    return wrong("--fault", text, "a share of 0 to 1 after the colon");
  return {};
}

struct NumberFlag {
  double low, high;
  void (*put)(Options&, double);
};
const std::map<std::string, NumberFlag> kNumbers = {
    {"--seed", {0, 9e15, [](Options& o, double v) { o.seed = static_cast<unsigned long long>(v); }}},
    {"--speed", {0.01, 1e6, [](Options& o, double v) { o.speed = v; }}},
    {"--pause", {0, 3600, [](Options& o, double v) { o.pause_s = v; }}},
    {"--replug", {0, 3600, [](Options& o, double v) { o.replug_s = v; }}},
    {"--rounds", {0, 1e6, [](Options& o, double v) { o.rounds = static_cast<int>(v); }}}};

const std::map<std::string, std::string Options::*> kTexts = {
    {"--bottle", &Options::bottle}, {"--profile", &Options::profile}, {"--link", &Options::link}};

std::string take(const std::string& flag, const std::string& value, Options& into) {
  if (flag == "--fault") return read_fault(value, into);
  if (const auto text = kTexts.find(flag); text != kTexts.end()) {
    into.*text->second = value;
    return {};
  }
  const auto number = kNumbers.find(flag);
  if (number == kNumbers.end()) return "unknown option " + flag;
  double read = 0;
  if (!read_number(value, number->second.low, number->second.high, read))
    return wrong(flag, value, "a number in its range");
  number->second.put(into, read);
  return {};
}

}  // namespace

tl::expected<Options, std::string> parse_options(const std::vector<std::string>& words) {
  Options out;
  for (size_t i = 0; i < words.size(); ++i) {
    if (words[i] == "--once" || words[i] == "--wait") {
      out.once = words[i] == "--once";
      continue;
    }
    if (i + 1 == words.size()) return tl::unexpected("unknown option, or no value after it: " + words[i]);
    const std::string error = take(words[i], words[i + 1], out);
    if (!error.empty()) return tl::unexpected(error);
    ++i;
  }
  if (out.bottle.empty() || out.profile.empty() || out.link.empty())
    return tl::unexpected(std::string("expected --bottle, --profile and --link"));
  return out;
}

}  // namespace brimline::demo
