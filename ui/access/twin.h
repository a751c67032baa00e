// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QString>
#include <QStringList>

namespace ui {

/// What a drawing shows, as a table of texts for whoever cannot see it.
struct TwinTable {
  QStringList columns;
  QList<QStringList> rows;  ///< each as long as `columns`
};

/// A widget that paints what it shows. Assistive tools are told that it is a picture, and "Pictures as
/// tables" lists it under its accessible name, which must not be empty.
class Twin {
 public:
  virtual ~Twin() = default;

  /// Of what is drawn now, with nothing left out but lines that help the eye. Without rows nothing is drawn.
  virtual TwinTable twin() const = 0;
};

}  // namespace ui
