// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>

#include "core/plan/prediction.h"

namespace ui {

/// The bridge's output as a bar from a zero in the middle, to the right when positive, with sign, number and
/// word. The scale is the largest step of the plan, or a round number above what is shown.
class OutputBar : public QWidget {
  Q_OBJECT

 public:
  explicit OutputBar(QWidget* parent = nullptr);

  /// None: not known. `largest` is the greatest magnitude that the plan has.
  void show(std::optional<core::Output> output, core::Polarity polarity, core::Output largest);
  QString text() const { return m_text; }

  QSize sizeHint() const override { return {320, 34}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  std::optional<core::Output> m_output;
  core::Polarity m_polarity = core::Polarity::None;
  core::Output m_largest{0};
  QString m_text;
};

}  // namespace ui
