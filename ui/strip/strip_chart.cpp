// SPDX-License-Identifier: GPL-3.0-or-later
// What is on view, and where. Painting is in strip_chart_paint.cpp, mouse and keys in strip_chart_input.cpp.
#include "ui/strip/strip_chart.h"

#include <QScrollBar>
#include <algorithm>
#include <cmath>
#include <limits>

#include "ui/access/focus_ring.h"
#include "ui/quantity_edit.h"

namespace ui {
namespace {

constexpr int leastLane_px = 46;
constexpr int ring_px = FocusRing::thickness_px;  ///< above and below: nothing is drawn under the ring
constexpr std::size_t mostLooks = 400'000;        ///< samples looked at for a mean while dragging
constexpr double surroundings = 0.6;  ///< of a span shown with it, as a share of its length, each side
constexpr double leastSamples = 6;    ///< that the view shows

bool haveSameSpans(const StripLane& a, const StripLane& b) {
  return a.channel == b.channel && a.check == b.check && a.isClosed == b.isClosed &&
         std::equal(a.spans.begin(), a.spans.end(), b.spans.begin(), b.spans.end(),
                    [](const StripSpan& one, const StripSpan& two) {
                      return one.place == two.place && one.samples == two.samples;
                    });
}

}  // namespace

double quickMean(std::span<const double> values, core::SampleSpan samples) {
  const std::size_t stride = std::max<std::size_t>(1, samples.size() / mostLooks);
  double sum = 0;
  std::size_t count = 0;
  for (std::size_t k = samples.begin; k < samples.end; k += stride)
    if (!std::isnan(values[k])) sum += values[k], ++count;
  return count > 0 ? sum / static_cast<double>(count) : std::numeric_limits<double>::quiet_NaN();
}

StripChart::StripChart(SpanEditor& editor, QWidget* parent)
    : QWidget(parent), m_editor(editor), m_scroll(new QScrollBar(Qt::Vertical, this)) {
  setObjectName("stripChart");
  setAccessibleName(tr("Recording over time"));
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  m_scroll->setObjectName("stripLanes");
  m_scroll->setAccessibleName(tr("Further channels"));
  m_scroll->hide();
  connect(m_scroll, &QScrollBar::valueChanged, this, [this] { update(); });
}

void StripChart::setContents(std::shared_ptr<const OpenRecording> open, std::vector<StripLane> lanes,
                             std::optional<ComparedCurve> compared) {
  const bool isAnother = open != m_open;
  const auto chosen =
      std::find_if(lanes.begin(), lanes.end(), [](const StripLane& lane) { return lane.isChosen; });
  const std::size_t nextOwn = chosen == lanes.end() ? 0 : static_cast<std::size_t>(chosen - lanes.begin());
  const bool hasAnotherOwn = nextOwn != m_own || lanes.size() != m_lanes.size();
  const bool comparesAnother =
      m_compared.has_value() != compared.has_value() ||
      (compared && (compared->open != m_compared->open || compared->column != m_compared->column ||
                    compared->later_s != m_compared->later_s));
  // What is being dragged goes on while the same spans are there: choosing a step, or a recording's hash that
  // became known, comes here too.
  const bool isSame = !isAnother && lanes.empty() == m_lanes.empty() &&
                      (lanes.empty() || haveSameSpans(m_lanes[m_own], lanes[nextOwn]));
  m_open = std::move(open);
  m_lanes = std::move(lanes);
  m_own = nextOwn;
  m_compared = std::move(compared);
  if (isAnother || comparesAnother) m_pictures.clear();
  if (!isSame) dropPreview();
  if (m_chosen && (!own() || !own()->at(*m_chosen))) m_chosen.reset();
  if (isAnother) {
    m_cursor_s.reset();
    m_mouse_s.reset();
    if (canDraw()) showAll();
  }
  placeScrollBar();
  if (isAnother || hasAnotherOwn) scrollToOwn();
  update();
}

void StripChart::setChosen(std::optional<core::SpanPlace> place) {
  if (place && (!own() || !own()->at(*place))) place.reset();
  m_chosen = place;
  update();
}

const StripSpan* StripChart::chosenSpan() const { return m_chosen && own() ? own()->at(*m_chosen) : nullptr; }

void StripChart::bringIntoView() {
  const StripSpan* span = chosenSpan();
  if (!span || !canDraw()) return;
  const double begin_s = time()[span->samples.begin], end_s = time()[span->samples.end - 1];
  if (begin_s >= m_begin_s && end_s <= m_end_s) return;
  if (end_s - begin_s > m_end_s - m_begin_s) return showChosen();
  const double half_s = (m_end_s - m_begin_s) / 2, middle_s = (begin_s + end_s) / 2;
  showBetween(middle_s - half_s, middle_s + half_s);
}

std::span<const double> StripChart::values(const StripLane& lane) const {
  return m_open->recording.columns[*lane.column].values;
}

/// The view ends half a sample outside the first and last, so that both are seen.
double StripChart::wholeBegin_s() const { return time().front() - least_s() / (2 * leastSamples); }
double StripChart::wholeEnd_s() const { return time().back() + least_s() / (2 * leastSamples); }

double StripChart::least_s() const {
  const double whole_s = time().back() - time().front();
  const double mean_s = whole_s > 0 ? whole_s / static_cast<double>(time().size() - 1) : 1;
  return leastSamples * mean_s;
}

void StripChart::showBetween(double begin_s, double end_s) {
  if (!canDraw()) return;
  const double whole_s = wholeEnd_s() - wholeBegin_s();
  const double shown_s = std::clamp(end_s - begin_s, std::min(least_s(), whole_s), whole_s);
  const double middle_s = (begin_s + end_s) / 2;
  const double latest_s = std::max(wholeBegin_s(), wholeEnd_s() - shown_s);  // rounded, it may be before
  m_begin_s = std::clamp(middle_s - shown_s / 2, wholeBegin_s(), latest_s);
  m_end_s = m_begin_s + shown_s;
  update();
}

void StripChart::showAll() {
  if (canDraw()) showBetween(wholeBegin_s(), wholeEnd_s());
}

void StripChart::showChosen() {
  const StripSpan* span = chosenSpan();
  if (!span) return showAll();
  const double begin_s = time()[span->samples.begin], end_s = time()[span->samples.end - 1];
  const double beside_s = surroundings * std::max(end_s - begin_s, least_s() / 2);
  showBetween(begin_s - beside_s, end_s + beside_s);
}

void StripChart::zoom(double factor, double at_s) {
  if (!canDraw()) return;
  // At a limit nothing moves: the factor is what is left of it.
  const double shown_s = m_end_s - m_begin_s, whole_s = wholeEnd_s() - wholeBegin_s();
  const double next_s = std::clamp(shown_s * factor, std::min(least_s(), whole_s), whole_s);
  const double kept = next_s / shown_s;
  showBetween(at_s - (at_s - m_begin_s) * kept, at_s + (m_end_s - at_s) * kept);
}

void StripChart::zoomAboutCursor(double factor) {
  const auto at_s = m_mouse_s ? m_mouse_s : m_cursor_s;
  const bool isSeen = at_s && *at_s >= m_begin_s && *at_s <= m_end_s;
  zoom(factor, isSeen ? *at_s : (m_begin_s + m_end_s) / 2);
}

void StripChart::setScaledToView(bool scaled) {
  m_scaledToView = scaled;
  update();
}

QRect StripChart::plotRect() const {
  const QFontMetrics metrics = fontMetrics();
  const int names = std::min(width() / 8, metrics.horizontalAdvance("MMMM-99"));
  const int numbers = metrics.horizontalAdvance("−88 888.8") + 8;
  const int scroll = m_scroll->isHidden() ? 0 : m_scroll->sizeHint().width();
  const int times = metrics.height() + 4, overview = overviewRect().height();
  return QRect(names + numbers, ring_px, std::max(1, width() - names - numbers - scroll - 4),
               std::max(1, height() - times - overview - 3 - 2 * ring_px));
}

QRect StripChart::overviewRect() const {
  const int tall = std::clamp(height() / 9, 16, 44);
  const QFontMetrics metrics = fontMetrics();
  const int left = std::min(width() / 8, metrics.horizontalAdvance("MMMM-99")) +
                   metrics.horizontalAdvance("−88 888.8") + 8;
  const int scroll = m_scroll->isHidden() ? 0 : m_scroll->sizeHint().width();
  return QRect(left, height() - tall - 1 - ring_px, std::max(1, width() - left - scroll - 4), tall);
}

std::size_t StripChart::lanesShown() const {
  const int room = plotRect().height() / leastLane_px;
  return std::min(m_lanes.size(), static_cast<std::size_t>(std::max(1, room)));
}

/// All are of one height, so that none moves under the mouse when it becomes the chosen one.
QRect StripChart::laneRect(std::size_t lane) const {
  const std::size_t shown = lanesShown(), first = static_cast<std::size_t>(m_scroll->value());
  if (lane >= m_lanes.size() || lane < first || lane >= first + shown) return {};
  const QRect plot = plotRect();
  const int row = static_cast<int>(lane - first), rows = static_cast<int>(shown);
  const int top = row * plot.height() / rows, bottom = (row + 1) * plot.height() / rows;
  return QRect(plot.left(), plot.top() + top, plot.width(), bottom - top - 2);
}

void StripChart::placeScrollBar() {
  const int hidden = static_cast<int>(m_lanes.size() - std::min(m_lanes.size(), lanesShown()));
  m_scroll->setVisible(hidden > 0);
  m_scroll->setRange(0, hidden);
  m_scroll->setPageStep(static_cast<int>(lanesShown()));
  m_scroll->setGeometry(width() - m_scroll->sizeHint().width(), ring_px, m_scroll->sizeHint().width(),
                        plotRect().height());
}

void StripChart::scrollToOwn() {
  const int lane = static_cast<int>(m_own), shown = std::max(1, static_cast<int>(lanesShown()));
  m_scroll->setValue(std::clamp(m_scroll->value(), lane - shown + 1, lane));
}

void StripChart::resizeEvent(QResizeEvent*) {
  placeScrollBar();
  scrollToOwn();
}

double StripChart::xOf(double time_s) const {
  const QRect plot = plotRect();
  return plot.left() + (time_s - m_begin_s) / (m_end_s - m_begin_s) * plot.width();
}

double StripChart::timeAt(double x) const {
  const QRect plot = plotRect();
  return m_begin_s + (x - plot.left()) / plot.width() * (m_end_s - m_begin_s);
}

std::size_t StripChart::nearestSample(double time_s) const {
  const std::size_t k = std::min(time().indexAt(time_s), time().size() - 1);
  return k > 0 && time_s - time()[k - 1] < time()[k] - time_s ? k - 1 : k;
}

std::optional<std::size_t> StripChart::cursorSample() const {
  const auto at_s = m_mouse_s ? m_mouse_s : m_cursor_s;
  if (!at_s || !canDraw()) return std::nullopt;
  return nearestSample(*at_s);
}

void StripChart::setCursor_s(std::optional<double> time_s) {
  m_cursor_s = time_s;
  m_mouse_s.reset();
  update();
}

core::SampleSpan StripChart::visibleSamples() const {
  if (!canDraw()) return {};
  return {time().indexAt(m_begin_s), time().indexAt(m_end_s)};
}

void StripChart::dropPreview() {
  m_preview.reset();
  m_keyMoving = false;
  m_drag = {};
  update();
}

TwinTable StripChart::twin() const {
  if (!m_open) return {};
  TwinTable table{{tr("Channel"), tr("Span"), tr("Begins, s"), tr("Ends, s"), tr("Mean"), tr("Unit")}, {}};
  const auto& time = m_open->recording.time;
  for (const StripLane& lane : m_lanes)
    for (const StripSpan& span : lane.spans)
      table.rows << QStringList{lane.name,
                                span.name,
                                numberText(time[span.samples.begin], 6),
                                numberText(time[span.samples.end - 1], 6),
                                span.mean,
                                lane.unit};
  return table;
}

}  // namespace ui
