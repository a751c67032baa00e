// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>
#include <QWidget>
#include <optional>

#include "ui/access/twin.h"
#include "ui/polarity/polarity_layout.h"
#include "ui/polarity/polarity_shown.h"
#include "ui/theme.h"

namespace ui {

/// What the words above and below the picture say.
struct PolarityLegend {
  QString what, points, plus, minus;
  bool signsBelow = false;  ///< plus and minus
};

/// The map on the diamond. Over each arm a band in the colour of its sign with sign and size on a chip; what
/// the terminals give on arcs outside. A point that is picked (pointer on it, click, or the keyboard) spreads
/// out its row of the matrix: a line to each other point, and there the chip. So all pairs can be read
/// without lying on top of each other.
///
/// Keys as in the matrix: up and down choose the row's point, left and right the other one, Enter places.
class PolarityPicture : public QWidget, public Twin {
  Q_OBJECT

 public:
  explicit PolarityPicture(const PolarityShown& shown, QWidget* parent = nullptr);

  /// `shown` is another.
  void follow();
  void setCurrent(std::optional<PolarityPair> pair);

  /// What is drawn now.
  PolarityLayout layoutNow() const;
  std::vector<PolarityChip> chipsNow() const;
  /// The point whose pairs are spread out.
  std::optional<std::size_t> pickedNow() const;
  PolarityLegend legend() const;
  TwinTable twin() const override;

  QSize sizeHint() const override { return {420, 360}; }
  QSize minimumSizeHint() const override { return {260, 180}; }

 signals:
  /// The pointer is on a pair, or no longer.
  void pointedAt(std::optional<ui::PolarityPair> pair);
  void currentChanged(ui::PolarityPair pair);
  void activated(ui::PolarityPair pair);

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  QFont chipFont() const;
  QFont nameFont() const;
  QFontMetricsF metrics() const { return QFontMetricsF(chipFont()); }
  bool isUsual(PolarityPair pair) const;
  std::optional<std::size_t> spotAt(QPointF place) const;
  std::optional<PolarityPair> pairAt(QPointF place) const;
  void point(QPointF place);
  void step(std::size_t PolarityPair::*end, int direction);

  void paintBridge(QPainter& painter, const PolarityLayout& layout) const;
  void paintPairs(QPainter& painter, const PolarityLayout& layout,
                  const std::vector<PolarityChip>& chips) const;
  void paintChip(QPainter& painter, const PolarityChip& chip) const;
  void paintLegend(QPainter& painter) const;
  bool isCurrent(PolarityPair pair) const;
  bool isPresent(PolarityPair pair) const;

  const PolarityShown& m_shown;
  Colours m_colours;
  std::optional<PolarityPair> m_current;
  std::optional<std::size_t> m_picked;   ///< by a click
  std::optional<std::size_t> m_hovered;  ///< point under the pointer
  std::optional<PolarityPair> m_pointed;
  QTimer m_forget;  ///< the row of a point that was hovered stays long enough to reach its chips
};

}  // namespace ui
