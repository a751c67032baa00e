// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <array>
#include <utility>
#include <vector>

#include "core/report/report.h"

class QGridLayout;
class QLabel;

namespace ui {

/// `text` for a label, where a line must not break within "µm/m" or "mV/V".
QString withWholeUnits(QString text);

/// Figures in words: a quiet name over its value, in as many columns as the width takes.
class FigureGrid : public QWidget {
  Q_OBJECT

 public:
  explicit FigureGrid(QWidget* parent = nullptr);

  void setFigures(const std::vector<core::Entry>& figures);
  /// Shows only as many rows, from the top, as fit in `height` pixels; otherwise all.
  void setRoom(int height);

  /// For a single column whatever the present number of them: the grid arranges itself by its width.
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void place();
  void hideWhatDoesNotFit();
  void colour();

  QGridLayout* m_layout;
  std::vector<std::pair<QLabel*, QLabel*>> m_labels;  ///< name and value; grows, never shrinks
  std::size_t m_count = 0;
  int m_columns = 0;
  int m_room = QWIDGETSIZE_MAX;
  std::array<int, 3>
      m_fitted{};  ///< width, columns and room that the rows were fitted to; all 0: texts are new
};

}  // namespace ui
