// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>

#include "core/plan/prediction.h"
#include "ui/access/twin.h"

namespace ui {

struct Colours;

/// The bridge's output as a bar from a zero in the middle, to the right when positive, with sign, number and
/// word. The scale is the largest step of the plan, or a round number above what is shown.
class OutputBar : public QWidget, public Twin {
  Q_OBJECT

 public:
  explicit OutputBar(QWidget* parent = nullptr);

  /// None: not known. `largest` is the greatest magnitude that the plan has. As long as that stays, as it
  /// does while something is dragged, the scale grows and never shrinks.
  void show(std::optional<core::Output> output, core::Polarity polarity, core::Output largest);
  /// "change −0.5005 mV/V, negative", against all shunts open; also the accessible description.
  QString text() const { return m_text; }
  TwinTable twin() const override;
  /// What the bar's ends stand for.
  core::Output scale() const { return core::Output(m_scale); }

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  QRectF track() const;
  double textWidth() const;
  void paintScale(QPainter& painter, const QRectF& track, const Colours& colours) const;
  void paintOutput(QPainter& painter, const QRectF& track, const Colours& colours) const;

  std::optional<core::Output> m_output;
  core::Polarity m_polarity = core::Polarity::None;
  core::Output m_largest{0};
  double m_scale = 1e-3;  ///< V/V
  QString m_text;
};

}  // namespace ui
