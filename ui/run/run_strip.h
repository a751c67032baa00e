// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "core/assess/assessment.h"
#include "ui/access/twin.h"

namespace ui {

/// All steps of a run in a row of fields: number, and the sign of the verdict once there is a reading. A long
/// sequence shows the two rows around the present step. A field tells its step when the mouse rests on it,
/// and goes there when it is clicked.
class RunStrip : public QWidget, public Twin {
  Q_OBJECT

 public:
  struct Field {
    QString name;  ///< of the step, foreign text
    bool read = false;
    core::Verdict verdict = core::Verdict::NotJudged;
  };

  explicit RunStrip(QWidget* parent = nullptr);

  void showSteps(std::vector<Field> fields, std::optional<std::size_t> current);
  /// "Step 3, R1: pass"; what a field tells.
  QString wordsOf(std::size_t step) const;
  /// Empty when the field is scrolled away.
  QRect fieldOf(std::size_t step) const;
  TwinTable twin() const override;

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 signals:
  void stepChosen(std::size_t step);

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  struct Grid {
    int columns = 1, width = 1, height = 1, firstRow = 0, rows = 1;
  };
  Grid grid() const;
  std::optional<std::size_t> stepAt(const QPoint& position) const;

  std::vector<Field> m_fields;
  std::optional<std::size_t> m_current;
};

}  // namespace ui
