// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/panel/statement.h"

#include <algorithm>
#include <cctype>

#include "analysis/panel/analyte.h"

namespace brimline {

namespace {

struct MethodWord {
  Method method;
  const char* text;
};
constexpr MethodWord kMethods[] = {{Method::photometer, phrase("method", "photometer")},
                                   {Method::strip, phrase("method", "strip")},
                                   {Method::drop_titration, phrase("method", "drop titration")},
                                   {Method::comparator, phrase("method", "comparator")},
                                   {Method::probe, phrase("method", "probe")},
                                   {Method::turbidity_tube, phrase("method", "turbidity tube")}};

constexpr const char* kAnyMethod = phrase("method", "method");

// "Free chlorine" -> "free chlorine"; "pH" and "TDS" stay.
std::string within(std::string name) {
  if (name.size() > 1 && !std::isupper(static_cast<unsigned char>(name[1])))
    name[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(name[0])));
  return name;
}

// Speaks one term.
struct Voice {
  const Speaker& speaker;

  std::string operator()(const std::string& text) const { return text; }
  std::string operator()(const NumberTerm& t) const { return speaker.number(t.value, t.decimals); }
  std::string operator()(const AmountTerm& t) const {
    const AnalyteKind* kind = find_analyte(t.analyte);
    const std::string number = speaker.number(t.value, kind ? kind->decimals : 2);
    return !kind || kind->unit.empty() ? number : number + " " + kind->unit;
  }
  std::string operator()(const MeasuredTerm& t) const {
    const int decimals = decimals_for(t.measured.sd);
    return speaker.number(t.measured.value, decimals) + " +/- " + speaker.number(t.measured.sd, decimals);
  }
  std::string operator()(const NameTerm& t) const {
    const AnalyteKind* kind = find_analyte(t.analyte);
    if (!kind) return t.analyte;
    const std::string name = speaker.word("analyte", kind->name.c_str());
    return t.begins ? name : within(name);
  }
  std::string operator()(const MethodTerm& t) const {
    for (const MethodWord& row : kMethods)
      if (t.method == row.method) return speaker.word("method", row.text);
    return speaker.word("method", kAnyMethod);
  }
  std::string operator()(const PhraseTerm& t) const { return speaker.word(t.context, t.text); }
  template <class T>
  std::string operator()(const std::vector<T>& terms) const {
    std::string out;
    for (size_t i = 0; i < terms.size(); ++i) {
      if (i > 0) out += i + 1 == terms.size() ? speaker.word("list", phrase("list", " and ")) : ", ";
      out += (*this)(terms[i]);
    }
    return out;
  }
};

}  // namespace

std::string Speaker::word(const char* /*context*/, const char* text) const {
  return text;
}

std::string Speaker::number(double value, int decimals) const {
  AnalyteKind shape;
  shape.decimals = decimals;
  return format_value(shape, value);
}

std::string spoken(const Statement& statement, const Speaker& speaker) {
  const std::string pattern = speaker.word(statement.context, statement.pattern);
  std::string out;
  for (size_t i = 0; i < pattern.size(); ++i) {
    const size_t n =
        i + 1 < pattern.size() ? static_cast<size_t>(pattern[i + 1] - '1') : statement.terms.size();
    if (pattern[i] == '%' && n < statement.terms.size()) {
      out += std::visit(Voice{speaker}, statement.terms[n]);
      ++i;
    } else {
      out += pattern[i];
    }
  }
  return out;
}

std::string Statement::text() const {
  return spoken(*this, Speaker{});
}

StatementTerm amount(std::string_view analyte, double value) {
  return AmountTerm{AnalyteId(analyte), value};
}
StatementTerm number(double value, int decimals) {
  return NumberTerm{value, decimals};
}
StatementTerm name_of_analyte(std::string_view analyte) {
  return NameTerm{AnalyteId(analyte), false};
}
StatementTerm name_at_beginning(std::string_view analyte) {
  return NameTerm{AnalyteId(analyte), true};
}
StatementTerm names_of(const std::vector<AnalyteId>& analytes) {
  std::vector<NameTerm> names;
  names.reserve(analytes.size());
  for (const AnalyteId& analyte : analytes) names.push_back({analyte, false});
  return names;
}
StatementTerm method_name(std::optional<Method> method) {
  return MethodTerm{method};
}

}  // namespace brimline
