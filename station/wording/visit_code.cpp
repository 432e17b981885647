// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/wording/visit_code.h"

#include <QCryptographicHash>

namespace brimline {

std::string visit_code(std::string_view visit_id) {
  const QByteArray id(visit_id.data(), static_cast<qsizetype>(visit_id.size()));
  return std::string("bl:") +
         QCryptographicHash::hash(id, QCryptographicHash::Sha256).toHex().left(16).toStdString();
}

}  // namespace brimline
