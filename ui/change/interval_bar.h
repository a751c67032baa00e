// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>

#include "core/compare/difference.h"
#include "ui/access/twin.h"
#include "ui/change/change_words.h"

namespace ui {

/// One difference lying down: its mark with the intervals of probability 0.90 and 0.95 over the margin.
/// Nothing but the words "not compared" without one.
class IntervalBar : public QWidget, public Twin {
  Q_OBJECT

 public:
  explicit IntervalBar(const QString& objectName, QWidget* parent = nullptr);

  void showDifference(const std::optional<core::Difference>& difference, const ShownUnit& in);
  const std::optional<core::Difference>& difference() const { return m_difference; }
  TwinTable twin() const override;
  void paintInto(QPainter& painter, const QRectF& target, const Colours& colours) const;

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent*) override;

 private:
  std::optional<core::Difference> m_difference;
  ShownUnit m_in;
};

}  // namespace ui
