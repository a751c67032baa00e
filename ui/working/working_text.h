// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTextEdit>
#include <vector>

#include "core/working/working.h"

class QTextTable;

namespace ui {

/// What the letters in the formulas of `part` stand for, where its lines do not say so; empty when all do.
QString lettersOf(const core::WorkingPart& part);

/// The parts of a working as text to be read and selected: in columns where there is room, else below one
/// another. Whatever stands in it is plain text, and plain text is what is copied from it.
class WorkingText : public QTextEdit {
  Q_OBJECT

 public:
  explicit WorkingText(QWidget* parent = nullptr);

  /// Shows `parts` at the place that is scrolled to now.
  void show(std::vector<core::WorkingPart> parts);
  bool inColumns() const { return m_columns; }

 signals:
  void stepWalked(int direction);  ///< with the arrow keys: -1 the step before, +1 the step after

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  QMimeData* createMimeDataFromSelection() const override;

 private:
  enum class Look { Plain, Quiet, Strong, Heading };

  void write();
  void writeLines(const core::WorkingPart& part);
  void writeContrasts(const core::WorkingPart& part);
  void writeInColumns(QTextTable* grid, int row, const core::WorkingContrast& one, bool shaded);
  void writeStacked(QTextTable* grid, int row, const core::WorkingContrast& one, const QStringList& names);
  QTextTable* table(int rows, const std::vector<int>& shares_percent);
  void put(QTextTable* table, int row, int column, const QString& text, Look look, bool shaded);
  QTextCharFormat formatOf(Look look) const;

  std::vector<core::WorkingPart> m_parts;
  bool m_columns = true;
};

}  // namespace ui
