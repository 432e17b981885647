// SPDX-License-Identifier: GPL-3.0-or-later
// The facts of a visit as a clerk sets them: a chosen key, or typed text. One row a fact.
#pragma once

#include <QString>
#include <QVariantMap>

#include <optional>

#include "station/visit.h"

namespace brimline {

// `usual`: what is measured in where the customer has not said, or is not known yet.

// Every fact that is known, by name: a key, a list of keys for `signs`, or text in the customer's units.
QVariantMap facts_of(const Visit& visit, Units usual);

// Sets the fact, or clears it where the same key is chosen again or the text is empty.
// Returns a sentence where `text` cannot be that fact; the visit is then as it was.
std::optional<QString> set_fact(Visit& visit, const QString& fact, const QString& text, Units usual);

// The question a typed fact answers, its unit in the customer's units; empty for other facts.
QString typed_question(const Visit& visit, const QString& fact, Units usual);

// The customer's own, else the usual ones.
Units units_of(const Visit& visit, Units usual = Units::metric);

}  // namespace brimline
