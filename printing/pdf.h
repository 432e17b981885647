// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet as a PDF file (PDF/A-1b, ISO 19005-1): fonts embedded, no transparency.
#pragma once

#include <string>

#include <QByteArray>
#include <tl/expected.hpp>

#include "printing/pages.h"
#include "printing/print_error.h"

namespace brimline {

// The bytes of pages laid out by any sheet of ours; `title` and the program's name go into the metadata.
tl::expected<QByteArray, PrintError> pdf_bytes(const Pages& pages, const std::string& title);
// The take-home sheet's.
tl::expected<QByteArray, PrintError> pdf_bytes(const Sheet& sheet, const Edition& edition);

// Written beside the target and renamed over it, so that a full disk leaves no half sheet; a device
// or pipe is written to as it is. Needs a QGuiApplication.
tl::expected<void, PrintError> write_pdf(const QByteArray& pdf, const std::string& path);
tl::expected<void, PrintError> write_pdf(const Sheet& sheet, const std::string& path, const Edition& edition);

}  // namespace brimline
