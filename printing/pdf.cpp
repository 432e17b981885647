// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/pdf.h"

#include <QBuffer>
#include <QFile>
#include <QFileInfo>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

namespace brimline {
namespace {

tl::unexpected<PrintError> cannot_write(const std::string& path, const QString& why) {
  return tl::unexpected(PrintError{
      PrintError::Kind::cannot_write,
      path + ":1: cannot be written: " + why.toStdString() + "; expected a folder with room for the sheet"});
}

template <class File>
bool put(File& file, const QByteArray& bytes) {
  return file.write(bytes) == bytes.size() && file.flush();
}

}  // namespace

tl::expected<QByteArray, PrintError> pdf_bytes(const Pages& pages, const std::string& title) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  {
    QPdfWriter writer(&buffer);
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setResolution(kUnitsPerInch);
    writer.setTitle(QString::fromStdString(title));
    writer.setCreator(QStringLiteral("Brimline"));
    const QPageSize size(QSizeF(pages.width, pages.height), QPageSize::Point, {}, QPageSize::ExactMatch);
    writer.setPageLayout(QPageLayout(size, QPageLayout::Portrait, QMarginsF(0, 0, 0, 0)));
    QPainter painter;
    if (!painter.begin(&writer))
      return tl::unexpected(PrintError{PrintError::Kind::cannot_draw, "the sheet cannot be drawn as PDF"});
    painter.scale(kUnitsPerPoint, kUnitsPerPoint);
    for (size_t i = 0; i < pages.pages.size(); ++i) {
      if (i > 0) writer.newPage();
      paint(pages.pages[i], painter);
    }
    painter.end();
  }
  return buffer.data();
}

tl::expected<QByteArray, PrintError> pdf_bytes(const Sheet& sheet, const Edition& edition) {
  return pdf_bytes(lay_out(sheet, edition), sheet.titles.sheet + " " + sheet.code);
}

tl::expected<void, PrintError> write_pdf(const Sheet& sheet, const std::string& path,
                                         const Edition& edition) {
  const auto bytes = pdf_bytes(sheet, edition);
  if (!bytes) return tl::unexpected(bytes.error());
  return write_pdf(*bytes, path);
}

tl::expected<void, PrintError> write_pdf(const QByteArray& pdf, const std::string& path) {
  const QString name = QString::fromStdString(path);
  const QFileInfo info(name);
  if (info.exists() && !info.isFile()) {
    QFile device(name);
    if (info.isDir()) return cannot_write(path, QStringLiteral("it is a folder"));
    if (!device.open(QIODevice::WriteOnly) || !put(device, pdf))
      return cannot_write(path, device.errorString());
    return {};
  }
  QSaveFile file(name);
  if (!file.open(QIODevice::WriteOnly) || !put(file, pdf) || !file.commit())
    return cannot_write(path, file.errorString());
  return {};
}

}  // namespace brimline
