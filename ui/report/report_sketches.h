// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLocale>
#include <QSizeF>
#include <memory>
#include <optional>

#include "core/document/document.h"
#include "core/evaluate/evaluation.h"
#include "core/report/report.h"
#include "ui/bridge/bridge_picture.h"
#include "ui/report/sketch.h"

namespace ui {

class DeviationPlot;
class MeasuredPlot;

/// Draws the pictures of a report: bridge, wiring and outcome of a document, which must outlive this; in
/// light colours. The plots are made once and filled anew for each check. GUI thread only.
class ReportSketches {
 public:
  /// In the words and with the decimal mark of `language`, whatever the user's are.
  ReportSketches(const core::Document& document, std::shared_ptr<const core::Language> language);
  ~ReportSketches();
  Q_DISABLE_COPY_MOVE(ReportSketches)

  /// How large it stands on paper.
  QSizeF sizeOf(const core::Picture& picture);
  /// Some milliseconds.
  std::shared_ptr<const Sketch> draw(const core::Picture& picture);

 private:
  BridgePicture bridgeOf(const core::Picture& picture);
  std::shared_ptr<const Sketch> outcome(const core::Picture& picture);
  const core::ChannelEvaluation& evaluationOf(std::size_t channel);

  const core::Document& m_document;
  std::shared_ptr<const core::Language> m_language;
  QLocale m_locale;
  std::optional<std::size_t> m_evaluated;
  core::ChannelEvaluation m_evaluation;  ///< of channel m_evaluated
  std::unique_ptr<MeasuredPlot> m_measured;
  std::unique_ptr<DeviationPlot> m_bars;
};

}  // namespace ui
