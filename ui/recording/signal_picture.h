// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QWidget>

#include "ui/access/twin.h"
#include "ui/recording/findings.h"
#include "ui/recording/recording_store.h"

namespace ui {

/// A column of a recording over all its time, small, with the levels found in it: each a band with the
/// numbers of its steps, dashed where it is no step's. A click chooses the level; the table beside it does
/// the same by keyboard.
class SignalPicture : public QWidget, public Twin {
  Q_OBJECT

 public:
  explicit SignalPicture(QWidget* parent = nullptr);

  /// The levels of `finding`; none shows nothing.
  void showFinding(const Finding* finding);
  /// The curve behind them, once its envelopes are there; none takes it away.
  void setRecording(std::shared_ptr<const OpenRecording> recording);
  void chooseLevel(std::optional<std::size_t> level);

  std::optional<std::size_t> levelAt(double x) const;
  /// "1, 2" by step, counted from 1; empty for a level that is no step's.
  QString stepsOf(std::size_t level) const;
  /// From left to right edge of a level's band.
  QRectF bandOf(std::size_t level) const;
  bool hasCurve() const;
  TwinTable twin() const override;

  QSize sizeHint() const override;

 signals:
  void levelClicked(std::size_t level);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  bool event(QEvent* event) override;

 private:
  std::size_t levels() const;
  double xOf(double time_s) const;
  QRectF frame() const;
  void drawSignal(QPainter& painter);
  void drawBand(QPainter& painter, std::size_t level) const;

  Finding m_finding;
  std::vector<QString> m_steps;  ///< one a level
  std::shared_ptr<const OpenRecording> m_recording;
  std::optional<std::size_t> m_chosen;
  double m_begin_s = 0, m_end_s = 1;
  QImage m_curve;
};

}  // namespace ui
