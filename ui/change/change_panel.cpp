// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/change/change_panel.h"

#include <QComboBox>
#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/change/cause_section.h"
#include "ui/change/change_export.h"
#include "ui/change/difference_strip.h"
#include "ui/change/interval_bar.h"
#include "ui/change/section_parts.h"
#include "ui/change/trend_section.h"
#include "ui/help/next_steps.h"
#include "ui/outcome/elided_lines.h"
#include "ui/outcome/figure_grid.h"
#include "ui/parts.h"
#include "ui/preferences/appearance.h"
#include "ui/quantity_edit.h"
#include "ui/sheet_view.h"
#include "ui/tables/table_tools.h"

namespace ui {
namespace {

QLabel* plainText(const QString& text) {
  auto* label = new QLabel(text);
  label->setTextFormat(Qt::PlainText);
  return label;
}

constexpr int wide_px = 860;  ///< strip and table stand side by side
constexpr int low_px = 420;   ///< below this height most of a long verdict is in the page that scrolls
constexpr int lowLines = 2;
constexpr int highLines = 4;

QComboBox* checkPicker(const char* name, const QString& meaning) {
  auto* box = new QComboBox;
  box->setObjectName(name);
  box->setAccessibleName(meaning);
  box->setToolTip(meaning);
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->setMinimumContentsLength(10);
  box->setMaximumWidth(atTextSize(300));
  return box;
}

/// Checks `from` to `to` (exclusive) with their index as data.
void fillPicker(QComboBox* box, const core::Channel& channel, std::size_t from, std::size_t to,
                std::size_t current) {
  const QSignalBlocker quiet(box);
  box->clear();
  for (std::size_t k = from; k < to; ++k) {
    const core::Check& check = channel.checks[k];
    box->addItem(toQString(check.name) + (check.date.empty() ? QString() : "  " + toQString(check.date)),
                 static_cast<qulonglong>(k));
  }
  box->setCurrentIndex(static_cast<int>(current - from));
}

std::size_t checkIn(const QComboBox* box) { return box->currentData().toULongLong(); }

QLabel* small(QLabel* label) {
  QFont font = label->font();
  font.setPointSizeF(std::max(7.5, 0.9 * font.pointSizeF()));
  label->setFont(font);
  return label;
}

core::Table configurationTable(const ShownChange& shown) {
  const auto text = [](const QString& words) { return words.toStdString(); };
  core::Table table;
  table.columns = {{text(ChangePanel::tr("What differs"))},
                   {shown.before().name},
                   {shown.after().name},
                   {text(ChangePanel::tr("Readings"))}};
  for (const core::SetupDifference& one : shown.comparison.configuration)
    table.rows.push_back(
        {{one.what, one.before, one.after,
          text(one.onReadings ? ChangePanel::tr("▲ depend on it") : ChangePanel::tr("do not depend on it"))},
         {}});
  return table;
}

QString foldWords(const core::Comparison& comparison) {
  const auto all = static_cast<int>(comparison.configuration.size());
  if (all == 0) return ChangePanel::tr("Set-ups: nothing differs.");
  const auto onReadings =
      static_cast<int>(std::count_if(comparison.configuration.begin(), comparison.configuration.end(),
                                     [](const core::SetupDifference& one) { return one.onReadings; }));
  const QString differ = all == 1 ? ChangePanel::tr("Set-ups differ in one thing: %1.")
                                        .arg(toQString(comparison.configuration.front().what))
                                  : ChangePanel::tr("Set-ups differ in %n things.", nullptr, int(all));
  if (onReadings == 0) return differ + " " + ChangePanel::tr("Readings do not depend on it.");
  return differ + " " +
         (all == 1 ? ChangePanel::tr("Readings depend on it.")
                   : ChangePanel::tr("Readings depend on %1 of them.").arg(onReadings));
}

}  // namespace

ChangePanel::ChangePanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("changePanel");
  setAccessibleName(tr("Change between two checks"));
  m_missing = plainLabel("changeMissing");
  m_missing->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  m_head = head();
  m_scroll = new QScrollArea;
  m_scroll->setObjectName("changeScroll");
  m_scroll->setFrameShape(QFrame::NoFrame);
  m_scroll->setWidgetResizable(true);
  m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_scroll->setWidget(body());
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(2, 2, 2, 2);
  column->setSpacing(4);
  column->addWidget(m_missing);
  column->addWidget(new NextSteps(session, NextSteps::Need::SecondCheck));
  column->addWidget(m_head);
  column->addWidget(m_scroll, 1);
  column->addStretch(0);
  connect(&m_session, &Session::changed, this, [this] {
    if (isVisible()) follow();
  });
  connect(&m_runner, &ChangeCauseRunner::changed, this, &ChangePanel::showCause);
  m_head->hide();
  m_scroll->hide();
  colour();
}

ChangePanel::~ChangePanel() {
  delete m_stepTable;
  delete m_configuration;
}

QWidget* ChangePanel::head() {
  auto* inside = new QWidget;
  m_earlier = checkPicker("changeEarlier", tr("Earlier check"));
  m_later = checkPicker("changeLater", tr("Later check"));
  auto* line = new QHBoxLayout;
  line->setSpacing(4);
  line->addWidget(plainText(tr("From")));
  line->addWidget(m_earlier, 1);
  line->addWidget(plainText(tr("to")));
  line->addWidget(m_later, 1);
  line->addStretch(0);
  m_fold = toolButton("changeFold", {}, tr("Shows and hides what differs in the two set-ups"));
  m_fold->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  m_fold->setAutoRaise(true);
  m_fold->setFocusPolicy(Qt::StrongFocus);
  m_fold->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  m_verdict = embolden(plainLabel("changeVerdict"));
  auto* column = new QVBoxLayout(inside);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(3);
  column->addLayout(line);
  column->addWidget(m_fold);
  column->addWidget(m_verdict);
  connect(m_earlier, &QComboBox::activated, this, [this] { choosePair(false); });
  connect(m_later, &QComboBox::activated, this, [this] { choosePair(true); });
  connect(m_fold, &QToolButton::clicked, this, [this] {
    m_unfolded = !m_unfolded;
    foldConfiguration();
  });
  return inside;
}

QWidget* ChangePanel::body() {
  auto* inside = new QWidget;
  auto* column = new QVBoxLayout(inside);
  column->setContentsMargins(4, 4, 4, 4);  // beyond the ring around what has the keyboard
  column->setSpacing(8);
  m_configuration =
      sectionTable("changeConfiguration", tr("What differs in the two set-ups"), &m_configurationModel);
  sortByHeader(*m_configuration);
  m_reason = plainLabel("changeReason");
  m_cause = new CauseSection;
  m_trend = new TrendSection;
  column->addWidget(m_configuration);
  column->addWidget(m_reason);
  column->addWidget(steps(), 1);
  column->addWidget(bars());
  column->addWidget(m_cause);
  column->addWidget(m_trend);
  connect(m_trend, &TrendSection::checkChosen, this, &ChangePanel::chooseCheck);
  return inside;
}

QWidget* ChangePanel::steps() {
  auto* inside = new QWidget;
  m_strip = new DifferenceStrip;
  m_stepTable = sectionTable("changeSteps", tr("Change of each step as a table"), &m_stepModel);
  m_stepWords = plainLabel("changeStepWords");
  m_stepLayout = new QBoxLayout(QBoxLayout::TopToBottom);
  m_stepLayout->setSpacing(6);
  m_stepLayout->addWidget(m_strip, 4);
  m_stepLayout->addWidget(m_stepTable, 5, Qt::AlignTop);
  auto* column = new QVBoxLayout(inside);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addLayout(m_stepLayout, 1);
  column->addWidget(m_stepWords);
  connect(m_strip, &DifferenceStrip::stepClicked, this,
          [this](std::size_t step) { m_session.selectStep(step); });
  connect(m_strip, &DifferenceStrip::stepWalked, this, &ChangePanel::walk);
  connect(m_stepTable->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
          [this](const QModelIndex& row) {
            if (row.isValid()) m_session.selectStep(static_cast<std::size_t>(row.row()));
          });
  return inside;
}

QWidget* ChangePanel::bars() {
  auto* inside = new QWidget;
  m_barLayout = new QBoxLayout(QBoxLayout::TopToBottom);
  m_barLayout->setSpacing(8);
  m_gain = addBar("changeGain", tr("Gain"));
  m_zero = addBar("changeZero", tr("Zero"));
  m_together = small(plainLabel("changeTogether"));
  auto* column = new QVBoxLayout(inside);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addLayout(m_barLayout);
  column->addWidget(m_together);
  return inside;
}

ChangePanel::Bar ChangePanel::addBar(const char* name, const QString& title) {
  const QString base = QString::fromLatin1(name);
  Bar bar{sectionTitle((base + "Title").toLatin1().constData(), title), new IntervalBar(base),
          plainLabel((base + "Words").toLatin1().constData())};
  bar.bar->setAccessibleName(title);
  auto* column = new QVBoxLayout;
  column->setSpacing(2);
  for (QWidget* part : std::initializer_list<QWidget*>{bar.title, bar.bar, bar.words})
    column->addWidget(part);
  m_barLayout->addLayout(column, 1);
  return bar;
}

/// Takes the pair from the session; what is on view already stays as it is.
void ChangePanel::follow() {
  const QString missing = whatIsMissingToCompare(m_session);
  m_missing->setText(missing);
  m_missing->setVisible(!missing.isEmpty());
  m_head->setVisible(missing.isEmpty());
  m_scroll->setVisible(missing.isEmpty());
  if (!missing.isEmpty()) {
    m_shown.reset();
    m_words = missing;
    setAccessibleDescription(missing);
    m_runner.show(std::nullopt);
    emit shownChanged();
    return;
  }
  const auto& channel = m_session.document().channels[*m_session.selection().channel];
  const ChangePair pair = *changePairOf(m_session);
  if (!m_shown || m_shown->channel != channel || m_shown->pair != pair) {
    m_shown = std::make_shared<const ShownChange>(shownChange(channel, *m_session.evaluation(), pair));
    refresh();
    m_runner.show(ChangeCauseRunner::Subject{channel, pair});
    emit shownChanged();
  }
  followStep();
}

void ChangePanel::refresh() {
  const core::Comparison& comparison = m_shown->comparison;
  m_words = toQString(comparison.reason);
  const std::size_t checks = m_shown->channel->checks.size();
  fillPicker(m_earlier, *m_shown->channel, 0, checks - 1, m_shown->pair.before);
  fillPicker(m_later, *m_shown->channel, m_shown->pair.before + 1, checks, m_shown->pair.after);
  showConfiguration();
  showSteps();
  showBars();
  m_trend->showTrend(*m_shown);
  showCause();
  arrange();
  colour();
  setAccessibleDescription(changeWord(comparison.change) + ". " + m_words);
}

void ChangePanel::showConfiguration() {
  m_configurationModel.setTable(configurationTable(*m_shown));
  const QString words = foldWords(m_shown->comparison);
  m_fold->setText(words);
  m_fold->setAccessibleName(words);
  m_fold->setEnabled(!m_shown->comparison.configuration.empty());
  foldConfiguration();
}

void ChangePanel::foldConfiguration() {
  const bool some = m_shown && !m_shown->comparison.configuration.empty();
  m_fold->setArrowType(!some ? Qt::NoArrow : m_unfolded ? Qt::DownArrow : Qt::RightArrow);
  m_configuration->setVisible(some && m_unfolded);
  if (some) fitToRows(m_configuration, 12);
}

void ChangePanel::showSteps() {
  QList<StripStep> steps = stripSteps(*m_shown);
  {
    const QSignalBlocker quiet(m_stepTable->selectionModel());
    m_stepModel.show(m_shown);
  }
  const bool any = !steps.isEmpty();
  m_strip->setVisible(any);
  m_stepTable->setVisible(any);
  m_stepWords->setVisible(any);
  m_strip->showSteps(std::move(steps), toQString(m_shown->unit), m_session.selection().step);
}

void ChangePanel::showBar(const Bar& bar, const std::optional<core::Difference>& difference,
                          const ShownUnit& in) {
  bar.bar->showDifference(difference, in);
  bar.words->setText(difference ? changeSign(difference->change) + " " +
                                      withWholeUnits(differenceSentence(*difference, in))
                                : changeText(core::Change::NotCompared));
}

void ChangePanel::showBars() {
  const core::Comparison& comparison = m_shown->comparison;
  const QString unit = toQString(m_shown->unit);
  m_gain.title->setText(tr("Gain change, %"));
  m_zero.title->setText(withWholeUnits(tr("Zero change, %1").arg(unit)));
  showBar(m_gain, comparison.gain, {100, "%"});
  showBar(m_zero, comparison.zero, {1, unit});
  m_together->setVisible(comparison.jointProbability.has_value());
  if (comparison.jointProbability)
    m_together->setText(
        tr("All steps together: readings so far apart would have a probability of %1 if nothing "
           "but the zero had changed.")
            .arg(probabilityText(*comparison.jointProbability)));
}

void ChangePanel::showCause() {
  if (m_shown) m_cause->showCause(*m_shown, m_runner.outcome());
}

void ChangePanel::followStep() {
  const auto step = m_session.selection().step;
  const QSignalBlocker quiet(m_stepTable->selectionModel());
  const bool shown = step && *step < m_shown->comparison.steps.size();
  shown ? m_stepTable->selectRow(static_cast<int>(*step)) : m_stepTable->clearSelection();
  if (!shown) m_stepTable->setCurrentIndex({});
  m_stepTable->viewport()->update();
  m_strip->showSteps(m_strip->steps(), toQString(m_shown->unit), step);
  m_stepWords->setText(withWholeUnits(
      shown ? stepSentence(*m_shown, *step)
            : tr("Click a mark or a row, or walk the steps with ← and →, to read what is said of it.")));
}

/// The later check is always one that was made after the earlier one.
void ChangePanel::choosePair(bool laterChosen) {
  if (!m_shown) return;
  ChangePair pair{checkIn(m_earlier), checkIn(m_later)};
  if (!laterChosen && pair.after <= pair.before) pair.after = pair.before + 1;
  comparePair(m_session, pair);
}

/// Makes it one of the pair: the earlier one when it was made before that, else the later one.
void ChangePanel::chooseCheck(std::size_t check) {
  if (!m_shown || check == m_shown->pair.before || check == m_shown->pair.after) return;
  ChangePair pair = m_shown->pair;
  (check < pair.before ? pair.before : pair.after) = check;
  comparePair(m_session, pair);
}

void ChangePanel::walk(int direction) {
  const std::size_t count = m_session.channel() ? m_session.channel()->setup.sequence.size() : 0;
  if (count == 0) return;
  const auto step = m_session.selection().step;
  if (!step) return m_session.selectStep(direction > 0 ? 0 : count - 1);
  if (direction < 0 ? *step > 0 : *step + 1 < count)
    m_session.selectStep(direction < 0 ? *step - 1 : *step + 1);
}

void ChangePanel::fitWords() {
  if (!m_shown) return;
  const QString whole = withWholeUnits(changeSign(m_shown->comparison.change) + " " + m_words);
  const int lines = height() < low_px ? lowLines : highLines;
  const QString fitting = elidedToLines(whole, m_verdict->font(), width() - 8, lines);
  const bool fits = QString(fitting).replace('\n', ' ') == whole;
  // Not twice: what has no room above stands below, and as a whole.
  m_verdict->setText(fits ? fitting : changeText(m_shown->comparison.change));
  m_verdict->setAccessibleName(m_words);
  m_verdict->setToolTip("<span>" + m_words.toHtmlEscaped() + "</span>");
  m_reason->setText(withWholeUnits(m_words));
  m_reason->setVisible(!fits);
}

void ChangePanel::arrange() {
  const bool wide = width() >= wide_px;
  m_stepLayout->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
  m_barLayout->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
  m_cause->setWide(wide);
  m_trend->setWide(wide);
  fitWords();
  if (m_shown) fitToRows(m_stepTable, 40);
}

void ChangePanel::colour() {
  const Colours colours = coloursFor(palette());
  setTextColour(m_missing, colours.quiet);
  setTextColour(m_together, colours.quiet);
  // Without anything to unfold it is still to be read.
  QPalette quiet = m_fold->palette();
  quiet.setColor(QPalette::Disabled, QPalette::ButtonText, colours.quiet);
  m_fold->setPalette(quiet);
  setTextColour(m_stepWords, colours.text);
  if (!m_shown) return;
  const core::Comparison& comparison = m_shown->comparison;
  setTextColour(m_verdict, comparison.verdict == core::Verdict::Fail ? colours.fail
                                                                     : colourOf(colours, comparison.change));
  for (const auto& [bar, difference] : {std::pair(m_gain, comparison.gain), {m_zero, comparison.zero}})
    setTextColour(bar.words, colourOf(colours, difference ? difference->change : core::Change::NotCompared));
}

void ChangePanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  follow();
  arrange();
  m_runner.setWatched(true);
}

void ChangePanel::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  m_runner.setWatched(false);
}

void ChangePanel::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

/// Words of core are in the language of the moment when they were made.
void ChangePanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) colour();
  if (event->type() != QEvent::LanguageChange) return;
  m_shown.reset();
  if (isVisible()) follow();
}

}  // namespace ui
