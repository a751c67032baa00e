// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QString>

#include "core/document/document.h"

namespace ui {

/// A place of the document that holds text.
struct DocumentPlace {
  enum class Kind { Channel, Step, Shunt, Pin, Check, Remark, Resistor, Box };
  Kind kind = Kind::Channel;
  std::size_t channel = 0;  ///< not for the stock
  std::size_t check = 0;    ///< of a check and its remarks
  std::size_t row = 0;      ///< step, shunt, pin, remark, resistor or box
};

struct DocumentMatch {
  DocumentPlace place;
  QString where;  ///< "TP-01, step 3"
};

/// Everything whose names, notes, remarks, steps, resistors or pins hold `words`, whatever their case, in the
/// order of the document; at most `most`, of one place once.
QList<DocumentMatch> findInDocument(const core::Document& document, const QString& words, int most);

}  // namespace ui
