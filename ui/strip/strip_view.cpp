// SPDX-License-Identifier: GPL-3.0-or-later
// What the strip shows and says; its tools are in strip_view_tools.cpp.
#include "ui/strip/strip_view.h"

#include <QAccessible>
#include <QAction>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QProgressBar>
#include <QPushButton>
#include <QStackedLayout>
#include <QToolBar>
#include <QVBoxLayout>
#include <QtConcurrentRun>
#include <algorithm>

#include "core/levels/describe.h"
#include "ui/as_typed.h"
#include "ui/parts.h"
#include "ui/quantity_edit.h"
#include "ui/strip/span_editor.h"
#include "ui/strip/time_labels.h"
#include "ui/theme.h"

namespace ui {

LineLabel::LineLabel(const QString& name, QWidget* parent) : QWidget(parent) {
  setObjectName(name);
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
}

void LineLabel::setText(const QString& text) {
  if (m_text == text) return;
  m_text = text;
  setToolTip(asTyped(text));
  setAccessibleName(text);
  update();
}

QSize LineLabel::sizeHint() const { return {300, fontMetrics().height() + 4}; }
QSize LineLabel::minimumSizeHint() const { return {80, fontMetrics().height() + 4}; }

void LineLabel::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setPen(coloursFor(palette()).text);
  painter.drawText(rect(), Qt::AlignLeft | Qt::AlignVCenter,
                   fontMetrics().elidedText(m_text, Qt::ElideRight, width()));
}

StripView::StripView(Session& session, RecordingStore& store, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_store(store),
      m_editor(new SpanEditor(session, this)),
      m_chart(new StripChart(*m_editor)),
      m_tools(new QToolBar),
      m_line(new LineLabel("stripLine")),
      m_warning(plainLabel("stripWarning")) {
  setObjectName("stripView");
  buildTools();
  auto* row = new QHBoxLayout;
  row->setSpacing(10);
  row->addWidget(m_tools);
  row->addWidget(m_line, 1);
  auto* body = new QWidget;
  m_stack = new QStackedLayout(body);
  m_stack->addWidget(m_chart);
  m_stack->addWidget(buildMessage());
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(1);
  layout->addLayout(row);
  auto* warning = new QHBoxLayout;
  warning->addWidget(m_warning, 1);
  m_readAgain = new QPushButton(tr("Read it again"));
  m_readAgain->setObjectName("stripReadAgain");
  connect(m_readAgain, &QPushButton::clicked, this, &StripView::readAgain);
  warning->addWidget(m_readAgain, 0, Qt::AlignTop);
  layout->addLayout(warning);
  layout->addWidget(body, 1);

  connect(&session, &Session::changed, this, &StripView::refresh);
  connect(&store, &RecordingStore::changed, this, &StripView::refresh);
  connect(m_chart, &StripChart::spanChosen, this, &StripView::choose);
  connect(m_chart, &StripChart::spanMoved, m_editor, &SpanEditor::move);
  connect(m_chart, &StripChart::spanDrawn, m_editor, &SpanEditor::add);
  connect(m_chart, &StripChart::menuWanted, this, &StripView::showMenu);
  connect(m_chart, &StripChart::drawingRefused, m_editor, &SpanEditor::refuse);
  connect(m_editor, &SpanEditor::refused, this, &StripView::refused);
  connect(m_editor, &SpanEditor::said, this, [this](const QString& sentence) {
    m_said = sentence;
    refreshLine();
  });
  connect(m_editor, &SpanEditor::finished, this, [this](std::optional<core::SpanPlace> place) {
    m_chart->dropPreview();
    if (place) choose(m_chart->ownLane(), place);
  });
  connect(&m_describing, &QFutureWatcher<Described>::finished, this, [this] {
    m_described = m_describing.result();
    describeChosen();
    refreshLine();
  });
  refresh();
}

void StripView::showEvent(QShowEvent*) { refresh(); }

void StripView::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) refresh();
  QWidget::changeEvent(event);
}

/// What is hidden reads nothing.
void StripView::refresh() {
  if (!isVisible() || m_isChoosing) return;
  m_store.look();
  const core::Check* check = m_session.check();
  const auto& reference = check ? check->recording : std::nullopt;
  if (reference && m_store.state(*reference) == RecordingStore::State::Absent) {
    m_store.want(*reference);  // comes back here
    return;
  }
  const auto open = reference ? m_store.recording(*reference) : nullptr;
  showRecording(open);
  if (!open) refreshState();
  m_stack->setCurrentIndex(open ? 0 : 1);
  setFocusProxy(open ? m_chart : nullptr);  // Tab would end at a chart that is not on view
  refreshWarning();
}

void StripView::refreshWarning() {
  const core::Check* check = m_session.check();
  const QString warning = m_open ? m_store.warning(*check->recording) : QString();
  m_warning->setText(warning);
  m_warning->setVisible(!warning.isEmpty());
  setTextColour(m_warning, coloursFor(palette()).fail);
  m_readAgain->setVisible(m_open && m_store.isOutdated(*check->recording));
}

void StripView::readAgain() {
  if (m_session.check() && m_session.check()->recording) m_store.readAgain(*m_session.check()->recording);
}

void StripView::showRecording(std::shared_ptr<const OpenRecording> open) {
  std::vector<StripLane> lanes;
  if (open) lanes = stripLanes(m_session, *open, m_all->isChecked());
  m_open = open;
  std::optional<ComparedCurve> compared;
  if (open) {
    if (const auto index = m_session.selection().compared;
        index && m_session.channel()->checks[*index].recording)
      m_store.want(*m_session.channel()->checks[*index].recording);  // comes back to refresh
    compared = comparedCurve(m_session, m_store, *open);
  }
  m_chart->setContents(std::move(open), std::move(lanes), std::move(compared));
  m_editor->setSubject(m_open, m_chart->own() ? std::optional(*m_chart->own()) : std::nullopt);
  followStep();
  describeChosen();
  enableTools();
  refreshLine();
}

/// The step chosen elsewhere is chosen here and brought into view. Another level that is chosen here stays so
/// until a step is chosen.
void StripView::followStep() {
  const auto step = m_session.selection().step;
  if (step)
    m_chart->setChosen(core::SpanPlace{core::SpanPlace::Kind::Step, *step});
  else if (const auto chosen = m_chart->chosen(); chosen && chosen->kind == core::SpanPlace::Kind::Step)
    m_chart->setChosen(std::nullopt);
  if (step != m_shownStep) {
    m_shownStep = step;
    m_said.clear();
    m_chart->bringIntoView();
  }
}

void StripView::choose(std::size_t lane, std::optional<core::SpanPlace> place) {
  if (lane >= m_chart->lanes().size()) return;
  const std::size_t channel = m_chart->lanes()[lane].channel, check = m_chart->lanes()[lane].check;
  const bool isStep = place && place->kind == core::SpanPlace::Kind::Step;
  m_said.clear();
  if (lane != m_chart->ownLane()) {
    m_isChoosing = true;
    m_session.selectChannel(channel);
    m_session.selectCheck(check);
    m_isChoosing = false;
    refresh();
  }
  m_chart->setChosen(place);
  // What was clicked is in view, as far as it was wanted to be.
  if (isStep) m_shownStep = place->index;
  // A step without a span stays chosen while free background is clicked: a new span is for it.
  const bool keepsStep = !place && m_session.selection().step && !chosenStepHasSpan();
  if (isStep || !keepsStep) m_session.selectStep(isStep ? std::optional(place->index) : std::nullopt);
  m_chart->setChosen(place);
  describeChosen();
  enableTools();
  refreshLine();
}

bool StripView::chosenStepHasSpan() const {
  const auto step = m_session.selection().step;
  return step && m_chart->own() && m_chart->own()->at({core::SpanPlace::Kind::Step, *step}) != nullptr;
}

void StripView::refreshState() {
  const core::Check* check = m_session.check();
  const bool hasRecording = check && check->recording;
  const auto state = hasRecording ? m_store.state(*check->recording) : RecordingStore::State::Absent;
  const bool isReading = state == RecordingStore::State::Reading;
  using Obstacle = RecordingStore::Obstacle;
  std::optional<Obstacle> obstacle;
  if (hasRecording) obstacle = m_store.obstacle(*check->recording);
  m_progress->setVisible(isReading);
  m_cancel->setVisible(isReading);
  m_find->setVisible(obstacle && obstacle != Obstacle::Cancelled);
  m_readIt->setVisible(obstacle.has_value());
  m_readIt->setText(obstacle == Obstacle::Missing   ? tr("Look again")
                    : obstacle == Obstacle::Outside ? tr("Read it")
                    : obstacle == Obstacle::Changed ? tr("Read it anyway")
                                                    : tr("Read it again"));
  if (!hasRecording)
    return m_message->setText(
        check ? tr("The readings of this check were not taken from a recording. Ctrl+R takes readings from "
                   "one.")
        : m_session.channel() ? tr("No check is chosen. Ctrl+R takes readings from a recording.")
                              : tr("Add a channel first. Its readings can then be taken from a recording."));
  if (isReading) {
    const double share = m_store.progress(*check->recording);
    m_progress->setValue(static_cast<int>(100 * share));
    return m_message->setText(tr("Reading %1 … %2 %")
                                  .arg(QFileInfo(m_store.pathOf(*check->recording)).fileName())
                                  .arg(static_cast<int>(100 * share)));
  }
  if (const auto error = m_store.error(*check->recording)) m_message->setText(toText(*error));
}

void StripView::findFile() {
  const core::Check* check = m_session.check();
  if (!check || !check->recording) return;
  const QString path = QFileDialog::getOpenFileName(this, tr("Find the recording"),
                                                    QFileInfo(m_store.pathOf(*check->recording)).path());
  if (!path.isEmpty()) useFile(path);
}

void StripView::useFile(const QString& path) {
  const core::Check* check = m_session.check();
  if (!check || !check->recording) return;
  core::RecordingReference found = *check->recording;
  found.path = m_store.referenceTo(path).toStdString();
  m_store.forget(found);
  m_store.want(found, true);
  m_session.edit(tr("Find recording"),
                 core::withRecordingFoundAt(m_session.document(), *check->recording, found.path));
  refresh();
}

/// Quality needs all spans of the check described; on a worker, since a recording may be long.
void StripView::describeChosen() {
  if (!m_chart->chosenSpan() || !m_chart->own() || !m_chart->own()->column) return;
  Described wanted{m_open, *m_chart->own()->column, {}, {}};
  std::size_t end = 0;
  for (const StripSpan& span : m_chart->own()->spans) {
    if (span.samples.begin < end) continue;  // overlapping, by hand in a file
    wanted.spans.push_back(span.samples);
    end = span.samples.end;
  }
  const bool isKnown = m_described.open == wanted.open && m_described.column == wanted.column &&
                       m_described.spans == wanted.spans;
  if (isKnown || m_describing.isRunning()) return;
  m_describing.setFuture(QtConcurrent::run([wanted = std::move(wanted)]() mutable {
    wanted.levels = core::describeLevels(wanted.open->recording.time,
                                         wanted.open->recording.columns[wanted.column].values, wanted.spans);
    return std::move(wanted);
  }));
}

QString StripView::wordsOf(const StripSpan& span) const {
  const StripLane& lane = *m_chart->own();
  const core::Check& check = m_session.document().channels[lane.channel]->checks[lane.check];
  const core::Measured& measured = core::spanAt(check, span.place);
  const auto& time = m_open->recording.time;
  const double greatest_s = std::max(std::abs(time.front()), std::abs(time.back()));
  const double step_s = time.usualSpacing_s() > 0 ? time.usualSpacing_s() : 1;
  QString text = span.isOther() ? tr("Span of no step:") : tr("Step %1:").arg(span.name);
  text += " ";
  text += fixedNumberText(measured.mean.base(), lane.decimals);
  if (measured.uncertainty) text += " ± " + numberText(measured.uncertainty->base(), 2);
  text += " " + lane.unit;
  for (std::size_t k = 0; k < m_described.levels.size(); ++k)
    if (m_described.open == m_open && m_described.column == lane.column &&
        m_described.levels[k].span == span.samples) {
      const core::Level& level = m_described.levels[k];
      text += ", " + tr(std::string(core::qualityWord(level.quality)).c_str());
      if (!level.reason.empty()) text += " (" + toQString(level.reason) + ")";
    }
  text +=
      "  ·  " + tr("%1 to %2 %3, %4 samples")
                    .arg(timeText(time[span.samples.begin], step_s, greatest_s),
                         timeText(time[span.samples.end - 1], step_s, greatest_s), timeUnitText(greatest_s),
                         QLocale().toString(static_cast<qulonglong>(span.samples.size())));
  if (lane.isClosed) text += "  ·  " + tr("closed check, not to be changed");
  if (!measured.note.empty()) text += "  ·  " + toQString(measured.note);
  return text;
}

void StripView::refreshLine() {
  QString text;
  if (const StripSpan* span = m_chart->chosenSpan()) {
    text = wordsOf(*span);
  } else if (m_chart->own()) {
    const auto& spans = m_chart->own()->spans;
    const auto others = std::count_if(spans.begin(), spans.end(), [](const auto& s) { return s.isOther(); });
    const auto ofSteps = static_cast<qlonglong>(spans.size()) - others;
    QStringList counts;
    if (ofSteps > 0) counts << tr("%n span(s) of steps", nullptr, int(ofSteps));
    if (others > 0) counts << tr("%n span(s) of no step", nullptr, int(others));
    if (counts.isEmpty()) counts << tr("No spans yet");
    text = counts.join(", ") + ". ";
    text +=
        m_chart->own()->isClosed ? tr("Closed check, not to be changed.") : tr("Shift and drag draws one.");
    if (m_chart->compared()) text += " " + tr("Dashed: the check %1.").arg(m_chart->compared()->name);
    const auto index = m_session.selection().compared;
    const core::Check* other = index ? &m_session.channel()->checks[*index] : nullptr;
    if (other && other->recording && m_store.state(*other->recording) == RecordingStore::State::Failed)
      text += " " + tr("The recording of the check %1 could not be read: choose that check to see why.")
                        .arg(toQString(other->name));
  }
  if (!m_said.isEmpty()) text = m_said;
  if (m_line->text() == text) return;
  m_line->setText(text);
  m_chart->setAccessibleDescription(text);
  QAccessibleEvent told(m_chart, QAccessible::DescriptionChanged);
  QAccessible::updateAccessibility(&told);
}

}  // namespace ui
