// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QList>
#include <QPointF>
#include <QString>

#include "core/line/line.h"
#include "ui/outcome/plot_marks.h"
#include "ui/theme.h"

namespace ui {

/// How far a fitted line may be from the true one, or one new reading from the line, with 95 % probability.
struct LineBand {
  enum class Kind { Confidence, Prediction };
  Kind kind = Kind::Confidence;
  QList<QPointF> halves;  ///< x rising, half width at it; empty when the line does not give it
  QString words;          ///< "95 % confidence band ±0.31 µm/m", at its widest

  double widest() const;
};

/// What the half widths are drawn in: the readings' unit times `factor` is `name`.
struct DrawnUnit {
  QString name;
  double factor = 1;
};

/// Over the x from `low` to `high`. `uNew` is the standard uncertainty of one new reading by itself, in the
/// readings' unit; only a prediction band looks at it.
LineBand lineBand(LineBand::Kind kind, const core::Line& line, double low, double high, double uNew,
                  const DrawnUnit& unit);

/// `band` about `centre`, a path with rising x, beyond whose ends it does not go.
PlotBand bandAbout(const LineBand& band, const QList<QPointF>& centre, const Colours& colours);

/// How the bands look: confidence dashed at its edges, prediction dotted.
QColor fillOf(LineBand::Kind kind, const Colours& colours);

}  // namespace ui
