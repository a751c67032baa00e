// SPDX-License-Identifier: GPL-3.0-or-later
// Mouse and keys of the strip. A drag, or a held key, shows where the span would lie; letting go makes it an
// edit.
#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "ui/strip/strip_chart.h"

namespace ui {
namespace {

constexpr double edge_px = 5;       ///< so near to an edge it is taken hold of
constexpr double threshold_px = 4;  ///< a shorter way of the mouse is a click
constexpr double zoomOfANotch = 0.8, zoomOfAKey = 0.6;
constexpr int notch = 120;  ///< QWheelEvent's unit
constexpr double panOfAKey = 0.1, panOfANotch = 0.15;

}  // namespace

StripChart::Hit StripChart::hitAt(const QPointF& position) const {
  Hit hit;
  if (!canDraw()) return hit;
  for (std::size_t lane = 0; lane < m_lanes.size(); ++lane)
    if (laneRect(lane).contains(position.toPoint())) hit.lane = lane;
  if (!hit.lane) return hit;
  hit.grip = Grip::Pan;
  double nearest = edge_px;
  for (const StripSpan& span : m_lanes[*hit.lane].spans) {
    const double left = xOf(time()[span.samples.begin]), right = xOf(time()[span.samples.end - 1]);
    const double reach = std::min(edge_px, (right - left) / 3);
    const double toLeft = std::abs(position.x() - left), toRight = std::abs(position.x() - right);
    const bool isWithin = position.x() >= left && position.x() <= right;
    if (isWithin) hit.span = &span, hit.grip = Grip::Whole;
    // Edges of the chosen span go before those of its neighbours.
    const double favour = m_chosen == span.place && *hit.lane == m_own ? 1.5 : 1;
    const double distance = std::min(toLeft, toRight) / favour;
    if (distance > (isWithin ? std::max(1.5, reach) : edge_px / 2) || distance > nearest) continue;
    nearest = distance;
    hit.span = &span;
    hit.grip = toLeft < toRight ? Grip::Begin : Grip::End;
    if (isWithin && distance <= reach) return hit;
  }
  return hit;
}

StripChart::Hit StripChart::overviewHitAt(const QPointF& position) const {
  Hit hit;
  const QRect rect = overviewRect();
  if (!canDraw() || !rect.contains(position.toPoint())) return hit;
  const auto x = [&](double time_s) {
    return rect.left() + (time_s - wholeBegin_s()) / (wholeEnd_s() - wholeBegin_s()) * rect.width();
  };
  hit.grip = Grip::OverviewWhole;
  const double left = x(m_begin_s), right = x(m_end_s);
  if (right - left < 4 * edge_px) return hit;  // too narrow to take hold of its edges
  if (std::abs(position.x() - left) <= edge_px) hit.grip = Grip::OverviewBegin;
  if (std::abs(position.x() - right) <= edge_px) hit.grip = Grip::OverviewEnd;
  return hit;
}

void StripChart::mousePressEvent(QMouseEvent* event) {
  if (!canDraw() || (event->button() != Qt::LeftButton && event->button() != Qt::MiddleButton)) return;
  const Hit below = overviewHitAt(event->position());
  if (below.grip != Grip::None) return beginDrag(below, event);
  Hit hit = hitAt(event->position());
  if (!hit.lane) return;
  setCursor_s(timeAt(event->position().x()));
  m_cursorLane = *hit.lane;
  if (event->button() == Qt::MiddleButton) hit.grip = Grip::Pan;
  const bool draws = event->button() == Qt::LeftButton && event->modifiers() & Qt::ShiftModifier;
  const bool isEdge = hit.grip == Grip::Begin || hit.grip == Grip::End;
  if ((draws || isEdge) && *hit.lane != m_own) {
    // The row becomes the chosen one where it is, and the drag goes on in it.
    emit spanChosen(*hit.lane, hit.span && !draws ? std::optional(hit.span->place) : std::nullopt);
    hit = hitAt(event->position());
    if (hit.lane != m_own) return;
  }
  if (draws) hit.grip = Grip::Draw;
  // What is not chosen yet is chosen by a click; dragging across it pans, so that nothing moves unawares.
  const bool isChosen = hit.span && *hit.lane == m_own && m_chosen == hit.span->place;
  if (hit.grip == Grip::Whole && !isChosen) hit.grip = Grip::Pan;
  beginDrag(hit, event);
}

void StripChart::beginDrag(const Hit& hit, QMouseEvent* event) {
  m_drag = Drag{hit.grip, event->position(), m_begin_s, m_end_s, {}, {}, {}, false};
  if (hit.span && hit.lane == m_own) m_drag.place = hit.span->place, m_drag.samples = hit.span->samples;
  if (hit.grip != Grip::OverviewWhole) return;
  // A click beside the window brings it there, and it can be dragged on.
  const QRect rect = overviewRect();
  const double at_s =
      wholeBegin_s() + (event->position().x() - rect.left()) / rect.width() * (wholeEnd_s() - wholeBegin_s());
  const double half_s = (m_end_s - m_begin_s) / 2;
  if (at_s < m_begin_s || at_s > m_end_s) showBetween(at_s - half_s, at_s + half_s);
  m_drag.begin_s = m_begin_s, m_drag.end_s = m_end_s;
  m_drag.isMoving = true;
}

/// Whether the drag that passed the threshold may go on.
bool StripChart::startMoving() {
  m_drag.isMoving = true;
  const bool edits = m_drag.grip == Grip::Begin || m_drag.grip == Grip::End || m_drag.grip == Grip::Whole ||
                     m_drag.grip == Grip::Draw;
  if (!edits) return true;
  const Drag drag = m_drag;  // a refusal ends the drag
  if (!m_editor.mayEdit()) {
    m_drag = {};
    return false;
  }
  if (drag.grip == Grip::Draw) {
    const std::size_t from = nearestSample(timeAt(drag.from.x()));
    m_drag.samples = {from, from + 1};
    m_drag.room = m_editor.roomAround(m_drag.samples, std::nullopt);
    if (from >= m_drag.room.begin && from < m_drag.room.end) return true;
    m_drag = {};
    emit drawingRefused(
        tr("There is a span already where the drawing began. Begin beside it, or drag its edges."));
    return false;
  }
  m_drag.room = m_editor.roomAround(drag.samples, drag.place);
  if (m_chosen != drag.place) emit spanChosen(m_own, drag.place);
  m_drag.isMoving = true;
  return true;
}

core::SampleSpan StripChart::shifted(core::SampleSpan samples, Grip grip, double moved_s,
                                     core::SampleSpan room) const {
  const auto sampleAt = [&](std::size_t k) { return nearestSample(time()[k] + moved_s); };
  if (grip == Grip::Begin)
    return {std::clamp(sampleAt(samples.begin), room.begin, samples.end - 1), samples.end};
  if (grip == Grip::End)
    return {samples.begin, std::clamp(sampleAt(samples.end - 1) + 1, samples.begin + 1, room.end)};
  const std::size_t latest = room.end - std::min(room.end, samples.size());
  const std::size_t begin = std::clamp(sampleAt(samples.begin), room.begin, std::max(room.begin, latest));
  return {begin, begin + samples.size()};
}

void StripChart::setPreview(std::optional<core::SpanPlace> place, core::SampleSpan samples) {
  if (m_preview && m_preview->place == place && m_preview->samples == samples) return;
  m_preview = Preview{place, samples, quickMean(values(m_lanes[m_own]), samples)};
  update();
}

void StripChart::dragTo(const QPointF& position) {
  const double perPixel_s = (m_drag.end_s - m_drag.begin_s) / plotRect().width();
  const double moved_s = (position.x() - m_drag.from.x()) * perPixel_s;
  switch (m_drag.grip) {
    case Grip::Pan:
      return showBetween(m_drag.begin_s - moved_s, m_drag.end_s - moved_s);
    case Grip::Begin:
    case Grip::End:
    case Grip::Whole:
      return setPreview(m_drag.place, shifted(m_drag.samples, m_drag.grip, moved_s, m_drag.room));
    case Grip::Draw: {
      const std::size_t from = m_drag.samples.begin;
      const std::size_t to =
          std::clamp(nearestSample(timeAt(position.x())), m_drag.room.begin, m_drag.room.end - 1);
      return setPreview(std::nullopt, {std::min(from, to), std::max(from, to) + 1});
    }
    default:
      return dragOverview((position.x() - m_drag.from.x()) / overviewRect().width() *
                          (wholeEnd_s() - wholeBegin_s()));
  }
}

void StripChart::dragOverview(double moved_s) {
  if (m_drag.grip == Grip::OverviewWhole)
    return showBetween(m_drag.begin_s + moved_s, m_drag.end_s + moved_s);
  const double begin_s = m_drag.begin_s + (m_drag.grip == Grip::OverviewBegin ? moved_s : 0);
  const double end_s = m_drag.end_s + (m_drag.grip == Grip::OverviewEnd ? moved_s : 0);
  if (end_s - begin_s >= least_s())
    showBetween(std::max(begin_s, wholeBegin_s()), std::min(end_s, wholeEnd_s()));
}

void StripChart::mouseMoveEvent(QMouseEvent* event) {
  if (!canDraw()) return;
  if (m_drag.grip != Grip::None) {
    const bool isFar = (event->position() - m_drag.from).manhattanLength() >= threshold_px;
    if (!m_drag.isMoving && (!isFar || !startMoving())) return;
    if (!overviewRect().contains(m_drag.from.toPoint())) m_mouse_s = timeAt(event->position().x());
    return dragTo(event->position());
  }
  const Hit hit = hitAt(event->position()), below = overviewHitAt(event->position());
  if (hit.lane) {
    m_cursorLane = *hit.lane;
    m_mouse_s = timeAt(event->position().x());
    update();
  }
  const bool isChosen = hit.span && hit.lane == m_own && m_chosen == hit.span->place;
  const bool isEdge = hit.lane && (hit.grip == Grip::Begin || hit.grip == Grip::End);
  const bool overviewEdge = below.grip == Grip::OverviewBegin || below.grip == Grip::OverviewEnd;
  setCursor(isEdge || overviewEdge                 ? Qt::SplitHCursor
            : hit.grip == Grip::Whole && isChosen  ? Qt::SizeAllCursor
            : hit.span || below.grip != Grip::None ? Qt::PointingHandCursor
                                                   : Qt::ArrowCursor);
}

void StripChart::mouseReleaseEvent(QMouseEvent* event) {
  if (m_drag.grip == Grip::None || (event->button() != Qt::LeftButton && event->button() != Qt::MiddleButton))
    return;
  if (m_drag.isMoving) return endDrag();
  m_drag = {};
  const Hit hit = hitAt(event->position());
  if (hit.lane && event->button() == Qt::LeftButton)
    emit spanChosen(*hit.lane, hit.span ? std::optional(hit.span->place) : std::nullopt);
}

void StripChart::endDrag() {
  const Drag drag = std::exchange(m_drag, {});
  if (!m_preview) return;
  // The preview stays until the edit is there, or is refused.
  const Preview preview = *m_preview;
  if (preview.samples == drag.samples && preview.place) return dropPreview();
  if (preview.place) return emit spanMoved(*preview.place, preview.samples);
  preview.samples.size() > 1 ? emit spanDrawn(preview.samples) : dropPreview();
}

void StripChart::mouseDoubleClickEvent(QMouseEvent* event) {
  const Hit hit = hitAt(event->position());
  if (!hit.span || event->button() != Qt::LeftButton) return mousePressEvent(event);
  emit spanChosen(*hit.lane, hit.span->place);
  showChosen();
}

void StripChart::contextMenuEvent(QContextMenuEvent* event) {
  if (event->reason() == QContextMenuEvent::Mouse) {
    const Hit hit = hitAt(event->pos());
    if (!hit.lane) return;
    setCursor_s(timeAt(event->pos().x()));
    emit spanChosen(*hit.lane, hit.span ? std::optional(hit.span->place) : std::nullopt);
  }
  emit menuWanted(event->reason() == QContextMenuEvent::Mouse ? event->globalPos()
                                                              : mapToGlobal(rect().center()));
}

/// On the way to a tool the mouse crosses other times: the cursor is where the last click was.
void StripChart::leaveEvent(QEvent*) {
  m_mouse_s.reset();
  m_cursorLane = m_own;
  update();
}

void StripChart::wheelEvent(QWheelEvent* event) {
  if (!canDraw()) return;
  event->accept();
  const QPoint turned = event->angleDelta();
  const bool sideways = std::abs(turned.x()) > std::abs(turned.y()) || event->modifiers() & Qt::ShiftModifier;
  if (sideways) return panBy(-panOfANotch * (turned.x() != 0 ? turned.x() : turned.y()) / notch);
  zoom(std::pow(zoomOfANotch, static_cast<double>(turned.y()) / notch), timeAt(event->position().x()));
}

void StripChart::panBy(double share) {
  const double moved_s = share * (m_end_s - m_begin_s);
  showBetween(m_begin_s + moved_s, m_end_s + moved_s);
}

void StripChart::moveCursor(int pixels) {
  const auto from_s = m_mouse_s ? m_mouse_s : m_cursor_s;
  const double at_s = from_s ? *from_s : (m_begin_s + m_end_s) / 2;
  const double next_s = at_s + pixels * (m_end_s - m_begin_s) / plotRect().width();
  setCursor_s(std::clamp(next_s, m_begin_s, m_end_s));
}

void StripChart::chooseNext(int direction) {
  if (!canDraw() || m_lanes[m_own].spans.empty()) return;
  const std::vector<StripSpan>& spans = m_lanes[m_own].spans;
  std::size_t next = direction > 0 ? 0 : spans.size() - 1;
  if (const StripSpan* span = chosenSpan()) {
    const auto at = static_cast<std::size_t>(span - spans.data());
    if ((direction > 0 && at + 1 == spans.size()) || (direction < 0 && at == 0)) return;
    next = direction > 0 ? at + 1 : at - 1;
  }
  emit spanChosen(m_own, spans[next].place);
  bringIntoView();
}

void StripChart::moveByKey(int direction, bool byPixel) {
  const StripSpan* span = chosenSpan();
  if (!span || !m_editor.mayEdit()) return;
  const core::SampleSpan now = m_preview ? m_preview->samples : span->samples;
  const core::SampleSpan room = m_editor.roomAround(span->samples, span->place);
  const std::size_t at = m_keyGrip == Grip::End ? now.end - 1 : now.begin;
  const std::size_t next =
      direction > 0 ? std::min(at + 1, time().size() - 1) : at - std::min<std::size_t>(at, 1);
  const double sample_s = time()[next] - time()[at];
  const double pixel_s = direction * (m_end_s - m_begin_s) / plotRect().width();
  setPreview(
      span->place,
      shifted(now, m_keyGrip, byPixel && std::abs(pixel_s) > std::abs(sample_s) ? pixel_s : sample_s, room));
  m_keyMoving = true;
}

void StripChart::moveEndToCursor(bool begin) {
  const StripSpan* span = chosenSpan();
  const auto at = cursorSample();
  if (!span || !at || !m_editor.mayEdit()) return;
  const core::SampleSpan room = m_editor.roomAround(span->samples, span->place);
  const core::SampleSpan next =
      begin ? core::SampleSpan{std::clamp(*at, room.begin, span->samples.end - 1), span->samples.end}
            : core::SampleSpan{span->samples.begin, std::clamp(*at + 1, span->samples.begin + 1, room.end)};
  if (next != span->samples) emit spanMoved(span->place, next);
}

bool StripChart::handleKey(QKeyEvent* event) {
  const auto modifiers = event->modifiers() & ~Qt::KeypadModifier;
  const int direction = event->key() == Qt::Key_Left ? -1 : event->key() == Qt::Key_Right ? 1 : 0;
  if (direction != 0 && modifiers == Qt::NoModifier) return panBy(panOfAKey * direction), true;
  if (direction != 0 && modifiers == Qt::ShiftModifier) return moveCursor(direction), true;
  if (direction != 0 && modifiers & Qt::ControlModifier)
    return moveByKey(direction, modifiers & Qt::ShiftModifier), true;
  if (event->key() == Qt::Key_PageDown || event->key() == Qt::Key_PageUp)
    return chooseNext(event->key() == Qt::Key_PageDown ? 1 : -1), true;
  if (event->text() == "+" || event->text() == "=") return zoomAboutCursor(zoomOfAKey), true;
  if (event->text() == "-") return zoomAboutCursor(1 / zoomOfAKey), true;
  if (event->key() == Qt::Key_Space) {
    m_keyGrip = m_keyGrip == Grip::Begin ? Grip::End : m_keyGrip == Grip::End ? Grip::Whole : Grip::Begin;
    update();
    return true;
  }
  if (event->key() != Qt::Key_Escape) return false;
  if (m_drag.isMoving && m_drag.grip == Grip::Pan) showBetween(m_drag.begin_s, m_drag.end_s);
  if (m_preview || m_drag.grip != Grip::None) return dropPreview(), true;
  if (m_chosen) emit spanChosen(m_own, std::nullopt);
  return true;
}

void StripChart::keyPressEvent(QKeyEvent* event) {
  if (!canDraw() || !handleKey(event)) QWidget::keyPressEvent(event);
}

/// What held keys have moved becomes an edit when the key, or the one that it was pressed with, is let go.
void StripChart::keyReleaseEvent(QKeyEvent* event) {
  const bool ends =
      event->key() == Qt::Key_Left || event->key() == Qt::Key_Right || event->key() == Qt::Key_Control;
  if (event->isAutoRepeat() || !m_keyMoving || !ends) return QWidget::keyReleaseEvent(event);
  m_keyMoving = false;
  const StripSpan* span = chosenSpan();
  if (!m_preview || !m_preview->place || !span) return;
  if (m_preview->samples == span->samples) return dropPreview();
  emit spanMoved(*m_preview->place, m_preview->samples);
}

void StripChart::focusInEvent(QFocusEvent*) { update(); }

/// Keys that are let go elsewhere are not seen here.
void StripChart::focusOutEvent(QFocusEvent*) {
  if (m_keyMoving) dropPreview();
  update();
}

}  // namespace ui
