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

inline constexpr Call<decltype(::cupsCancelJob)> cupsCancelJob{"cupsCancelJob"};
inline constexpr Call<decltype(::cupsCreateJob)> cupsCreateJob{"cupsCreateJob"};
inline constexpr Call<decltype(::cupsDoRequest)> cupsDoRequest{"cupsDoRequest"};
inline constexpr Call<decltype(::cupsFinishDocument)> cupsFinishDocument{"cupsFinishDocument"};
inline constexpr Call<decltype(::cupsFreeDests)> cupsFreeDests{"cupsFreeDests"};
inline constexpr Call<decltype(::cupsGetDest)> cupsGetDest{"cupsGetDest"};
inline constexpr Call<decltype(::cupsGetDests)> cupsGetDests{"cupsGetDests"};
inline constexpr Call<decltype(::cupsGetOption)> cupsGetOption{"cupsGetOption"};
inline constexpr Call<decltype(::cupsLastErrorString)> cupsLastErrorString{"cupsLastErrorString"};
inline constexpr Call<decltype(::cupsStartDocument)> cupsStartDocument{"cupsStartDocument"};
inline constexpr Call<decltype(::cupsUser)> cupsUser{"cupsUser"};
inline constexpr Call<decltype(::cupsWriteRequestData)> cupsWriteRequestData{"cupsWriteRequestData"};
inline constexpr Call<decltype(::ippAddString)> ippAddString{"ippAddString"};
inline constexpr Call<decltype(::ippDelete)> ippDelete{"ippDelete"};
inline constexpr Call<decltype(::ippFindAttribute)> ippFindAttribute{"ippFindAttribute"};
inline constexpr Call<decltype(::ippGetInteger)> ippGetInteger{"ippGetInteger"};
inline constexpr Call<decltype(::ippGetString)> ippGetString{"ippGetString"};
inline constexpr Call<decltype(::ippNewRequest)> ippNewRequest{"ippNewRequest"};

}  // namespace brimline::late_cups
