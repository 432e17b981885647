// SPDX-License-Identifier: GPL-3.0-or-later
// CUPS, loaded when it is first asked: with what it brings along (TLS, Kerberos, service discovery) it would
// take a good part of the program's start, and most of a day nothing is printed. The names are CUPS's own;
// without the library every call gives what "nothing there" gives: 0 or null.
#pragma once

#include <cups/cups.h>

#include <QLibrary>

namespace brimline::late_cups {

inline QLibrary& library() {
  static QLibrary cups(QStringLiteral("cups"), 2);
  return cups;
}

template <class Function>
class Call;

template <class Out, class... In>
class Call<Out(In...)> {
 public:
  explicit constexpr Call(const char* name) : name_(name) {}
  Out operator()(In... in) const {
    const auto function = reinterpret_cast<Out (*)(In...)>(library().resolve(name_));
    return function ? function(in...) : Out();
  }

 private:
  const char* name_;
};

#define BRIMLINE_LATE(function)                          \
  inline constexpr Call<decltype(::function)> function { \
#function                                            \
  }
BRIMLINE_LATE(cupsCancelJob);
BRIMLINE_LATE(cupsCreateJob);
BRIMLINE_LATE(cupsDoRequest);
BRIMLINE_LATE(cupsFinishDocument);
BRIMLINE_LATE(cupsFreeDests);
BRIMLINE_LATE(cupsGetDest);
BRIMLINE_LATE(cupsGetDests);
BRIMLINE_LATE(cupsGetOption);
BRIMLINE_LATE(cupsLastErrorString);
BRIMLINE_LATE(cupsStartDocument);
BRIMLINE_LATE(cupsUser);
BRIMLINE_LATE(cupsWriteRequestData);
BRIMLINE_LATE(ippAddString);
BRIMLINE_LATE(ippDelete);
BRIMLINE_LATE(ippFindAttribute);
BRIMLINE_LATE(ippGetInteger);
BRIMLINE_LATE(ippGetString);
BRIMLINE_LATE(ippNewRequest);
#undef BRIMLINE_LATE

}  // namespace brimline::late_cups
