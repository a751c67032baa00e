// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QWidget>
#include <memory>
#include <optional>
#include <vector>

#include "ui/access/twin.h"
#include "ui/strip/curve.h"
#include "ui/strip/span_editor.h"
#include "ui/strip/strip_lanes.h"
#include "ui/theme.h"

class QPainter;
class QScrollBar;

namespace ui {

/// Lanes of curves over one time axis with the spans on them, and the whole recording small below. Zooms,
/// pans and chooses; what is dragged is shown and becomes an edit when it is let go.
class StripChart : public QWidget, public Twin {
  Q_OBJECT

 public:
  explicit StripChart(SpanEditor& editor, QWidget* parent = nullptr);

  /// Another recording is shown as a whole, the same one stays where it is. `compared` is drawn with the
  /// chosen lane's curve.
  void setContents(std::shared_ptr<const OpenRecording> open, std::vector<StripLane> lanes,
                   std::optional<ComparedCurve> compared = std::nullopt);
  const std::vector<StripLane>& lanes() const { return m_lanes; }

  /// Index of the chosen channel's lane; 0 without lanes.
  std::size_t ownLane() const { return m_own; }
  /// The chosen channel's lane, null without lanes.
  const StripLane* own() const { return m_lanes.empty() ? nullptr : &m_lanes[m_own]; }
  const std::optional<ComparedCurve>& compared() const { return m_compared; }

  /// The chosen span, of the chosen channel's lane.
  void setChosen(std::optional<core::SpanPlace> place);
  std::optional<core::SpanPlace> chosen() const { return m_chosen; }
  const StripSpan* chosenSpan() const;
  /// Pans, and zooms out where it must, until the chosen span is in view.
  void bringIntoView();

  double begin_s() const { return m_begin_s; }  ///< the first time on view
  double end_s() const { return m_end_s; }
  void showBetween(double begin_s, double end_s);
  void showAll();
  /// The chosen span with a part of its surroundings.
  void showChosen();
  /// `factor` below 1 shows less; the time at_s stays where it is.
  void zoom(double factor, double at_s);
  void zoomAboutCursor(double factor);
  /// Whether values fill a lane's height as far as they are on view, or with all of the recording's.
  void setScaledToView(bool scaled);
  bool isScaledToView() const { return m_scaledToView; }
  TwinTable twin() const override;

  double xOf(double time_s) const;
  double timeAt(double x) const;
  QRect laneRect(std::size_t lane) const;  ///< empty when the lane has no room
  QRect overviewRect() const;
  std::size_t lanesShown() const;

  /// The sample under the mouse while it is over the lanes, else that of the cursor, which a click or keys
  /// put.
  std::optional<std::size_t> cursorSample() const;
  void setCursor_s(std::optional<double> time_s);
  core::SampleSpan visibleSamples() const;

  /// The span that is being dragged or drawn.
  struct Preview {
    std::optional<core::SpanPlace> place;  ///< none for a new one
    core::SampleSpan samples;
    double mean = 0;
  };
  const std::optional<Preview>& preview() const { return m_preview; }
  void dropPreview();
  /// Puts the begin or the end of the chosen span to the cursor, as an edit.
  void moveEndToCursor(bool begin);
  /// The span after (or before) the chosen one, else after (before) the cursor or the edge of the view.
  void chooseNext(int direction);

  QSize sizeHint() const override { return {600, 130}; }
  QSize minimumSizeHint() const override { return {160, 84}; }

 signals:
  void spanChosen(std::size_t lane, std::optional<core::SpanPlace> place);
  void spanMoved(core::SpanPlace place, core::SampleSpan samples);
  void spanDrawn(core::SampleSpan samples);
  void drawingRefused(const QString& reason);
  void menuWanted(const QPoint& globalPosition);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void keyReleaseEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  enum class Grip { None, Begin, End, Whole, Pan, Draw, OverviewWhole, OverviewBegin, OverviewEnd };
  /// What is under a point.
  struct Hit {
    std::optional<std::size_t> lane;
    const StripSpan* span = nullptr;
    Grip grip = Grip::None;
  };
  struct Drag {
    Grip grip = Grip::None;
    QPointF from;
    double begin_s = 0, end_s = 1;  ///< on view when it began
    std::optional<core::SpanPlace> place;
    core::SampleSpan samples;  ///< of the span when it began
    core::SampleSpan room;
    bool isMoving = false;
  };
  /// A drawn curve and what it was drawn of.
  struct Picture {
    std::size_t column = 0;
    CurveFrame frame;
    QSize size;
    QRgb colour = 0;
    bool isScaledToView = true;
    bool isChosen = false;
    QImage image;
  };

  // strip_chart.cpp
  const core::TimeAxis& time() const { return m_open->recording.time; }
  std::span<const double> values(const StripLane& lane) const;
  bool canDraw() const { return m_open && !m_lanes.empty() && !time().empty(); }
  std::size_t nearestSample(double time_s) const;
  QRect plotRect() const;
  void placeScrollBar();
  void scrollToOwn();
  double wholeBegin_s() const;
  double wholeEnd_s() const;
  double least_s() const;
  // strip_chart_paint.cpp
  void paintLane(QPainter& painter, std::size_t lane, const Colours& colours);
  void paintSpan(QPainter& painter, const StripLane& lane, const StripSpan& span, const QRect& rect,
                 const Colours& colours, bool isChosen);
  void paintMean(QPainter& painter, const StripLane& lane, const StripSpan& span, const QRect& rect,
                 const CurveFrame& frame, const Colours& colours);
  void paintPreview(QPainter& painter, const QRect& rect, const CurveFrame& frame, const Colours& colours);
  void paintScale(QPainter& painter, const StripLane& lane, const QRect& rect, const CurveFrame& frame,
                  const Colours& colours);
  void paintTimes(QPainter& painter, const Colours& colours);
  void paintCursor(QPainter& painter, const Colours& colours);
  void paintOverview(QPainter& painter, const Colours& colours);
  void paintCompared(QPainter& painter, const QRect& curve, const CurveFrame& frame, const QColor& colour);
  CurveParts comparedParts(int width) const;
  CurveFrame frameOf(const StripLane& lane, const CurveParts& parts, int width) const;
  const Picture& pictureOf(std::size_t slot, const StripLane& lane, const QRect& rect, const QColor& colour);
  QRect curveRect(const QRect& lane) const;
  // strip_chart_input.cpp
  Hit hitAt(const QPointF& position) const;
  Hit overviewHitAt(const QPointF& position) const;
  void beginDrag(const Hit& hit, QMouseEvent* event);
  bool startMoving();
  void dragTo(const QPointF& position);
  void endDrag();
  void dragOverview(double moved_s);
  core::SampleSpan shifted(core::SampleSpan samples, Grip grip, double moved_s, core::SampleSpan room) const;
  void setPreview(std::optional<core::SpanPlace> place, core::SampleSpan samples);
  void moveByKey(int direction, bool byPixel);
  void moveCursor(int pixels);
  void panBy(double share);
  bool handleKey(QKeyEvent* event);

  SpanEditor& m_editor;
  std::shared_ptr<const OpenRecording> m_open;
  std::vector<StripLane> m_lanes;
  std::size_t m_own = 0;  ///< of the lanes, the chosen channel's
  std::optional<ComparedCurve> m_compared;
  QImage m_comparedImage;
  std::optional<core::SpanPlace> m_chosen;
  double m_begin_s = 0, m_end_s = 1;
  bool m_scaledToView = true;
  std::optional<double> m_cursor_s;
  std::optional<double> m_mouse_s;  ///< goes before the cursor
  std::size_t m_cursorLane = 0;
  Grip m_keyGrip = Grip::End;  ///< what keys move
  bool m_keyMoving = false;
  Drag m_drag;
  std::optional<Preview> m_preview;
  std::vector<Picture> m_pictures;  ///< that of the overview, then one a shown lane
  QScrollBar* m_scroll = nullptr;
};

/// What stands over a span: its step, name, mean and unit as far as they fit in `width` pixels; the step
/// alone where its mean has no room.
QString spanLabel(const StripSpan& span, const QString& unit, const QFontMetrics& metrics, int width);
/// How far right the name of a span that is drawn from `left` to `right` may stand, if others are drawn from
/// `begins` on: it is not written into that of one that lies over it.
double nameEnd(double left, double right, std::span<const double> begins);

/// The mean of the numbers among the samples, NaN when there is none; of very many every so-manieth is looked
/// at, which is what a drag can wait for.
double quickMean(std::span<const double> values, core::SampleSpan samples);

}  // namespace ui
