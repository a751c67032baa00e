// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/budget/trial_panel.h"

#include <QCheckBox>
#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>

#include "ui/budget/budget_words.h"
#include "ui/budget/histogram_plot.h"
#include "ui/fields/count_edit.h"
#include "ui/outcome/figure_grid.h"
#include "ui/preferences/appearance.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr quint64 greatestTrialSeed = 999'999'999'999'999'999;

QLabel* figureLabel() {
  auto* label = new QLabel;
  label->setTextFormat(Qt::PlainText);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

}  // namespace

TrialPanel::TrialPanel(TrialRunner& runner, QWidget* parent) : QWidget(parent), m_runner(runner) {
  setObjectName("trialPanel");
  setAccessibleName(tr("Trials"));
  m_sentence = new QLabel;
  m_sentence->setObjectName("trialSentence");
  m_sentence->setTextFormat(Qt::PlainText);
  m_sentence->setWordWrap(true);
  m_sentence->setTextInteractionFlags(Qt::TextSelectableByMouse);
  m_plot = new HistogramPlot;
  m_plot->setObjectName("histogram");
  m_plot->setAccessibleName(tr("Histogram of the trials"));
  connect(m_plot, &PlotFrame::stepWalked, this, &TrialPanel::stepWalked);
  m_figures = new QWidget;
  m_figures->setObjectName("trialFigures");
  m_rows = new QGridLayout(m_figures);
  m_rows->setContentsMargins(0, 0, 4, 0);
  m_rows->setVerticalSpacing(2);
  auto* body = new QHBoxLayout;
  body->addWidget(m_plot, 1);
  body->addWidget(m_figures, 0, Qt::AlignTop);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addLayout(controls());
  column->addWidget(m_sentence);
  column->addLayout(body, 1);
  connect(&m_runner, &TrialRunner::changed, this, &TrialPanel::showControls);
  connect(&m_runner, &TrialRunner::progressed, m_progress, &QProgressBar::setValue);
  showNothing();
}

QLayout* TrialPanel::controls() {
  m_run = new QPushButton(tr("Run trials"));
  m_run->setObjectName("runTrials");
  m_run->setToolTip(tr(
      "Draws every input from its distribution and solves the whole network each time, nothing linearised, "
      "until the result has settled"));
  m_cancel = new QPushButton(tr("Cancel"));
  m_cancel->setObjectName("cancelTrials");
  m_progress = new QProgressBar;
  m_progress->setObjectName("trialProgress");
  m_progress->setAccessibleName(tr("Progress of the trials"));
  m_progress->setRange(0, 1000);
  m_progress->setMaximumWidth(atTextSize(120));
  m_progress->setTextVisible(false);
  QSizePolicy keepsRoom = m_progress->sizePolicy();
  keepsRoom.setRetainSizeWhenHidden(true);
  m_progress->setSizePolicy(keepsRoom);
  connect(m_run, &QPushButton::clicked, &m_runner, &TrialRunner::run);
  connect(m_cancel, &QPushButton::clicked, &m_runner, &TrialRunner::cancel);
  auto* line = new QHBoxLayout;
  line->addWidget(m_run);
  line->addWidget(m_cancel);
  line->addWidget(m_progress, 1);
  line->addStretch();
  addOptions(line);
  return line;
}

void TrialPanel::addOptions(QBoxLayout* line) {
  m_live = new QCheckBox(tr("Keep running after edits"));
  m_live->setObjectName("liveTrials");
  m_live->setToolTip(tr("Replaces the trials by themselves shortly after each change"));
  m_seedField = new CountEdit;
  m_seedField->setObjectName("trialSeed");
  m_seedField->setAccessibleName(tr("Seed"));
  m_seedField->setToolTip(tr("The same seed gives the same trials, on every machine"));
  m_seedField->setMaximumWidth(150);
  m_seedField->setRange(0, greatestTrialSeed);
  m_seedField->setValue(m_seed);
  auto* seedName = new QLabel(tr("Seed"));
  seedName->setBuddy(m_seedField);
  connect(m_live, &QCheckBox::toggled, &m_runner, &TrialRunner::setLive);
  connect(m_seedField, &CountEdit::valueChanged, this, &TrialPanel::takeSeed);
  line->addWidget(m_live);
  line->addWidget(seedName);
  line->addWidget(m_seedField);
}

void TrialPanel::takeSeed(quint64 seed) {
  if (seed == m_seed) return;
  m_seed = seed;
  emit seedChanged();
}

void TrialPanel::showControls() {
  const bool running = m_runner.isRunning();
  // The keyboard stays with the button that can be pressed next, not with whatever comes after it.
  const bool keyboard = m_run->hasFocus() || m_cancel->hasFocus();
  m_cancel->setEnabled(running || m_cancel->hasFocus());
  if (keyboard && running) m_cancel->setFocus();
  m_run->setEnabled(m_runner.canRun() && !running);
  if (keyboard && m_run->isEnabled()) m_run->setFocus();
  m_cancel->setEnabled(running);
  if (!running) m_progress->setValue(0);
  m_progress->setVisible(running);
}

void TrialPanel::show(const TrialView& view) {
  showControls();
  HistogramContents contents;
  contents.linear = view.linear;
  contents.quantity = scopeQuantity(view.setup, view.scope);
  contents.unit = toQString(core::scopeUnitText(view.setup, view.scope));
  contents.step = view.step;
  std::vector<core::Entry> figures;
  if (m_runner.outcome() && *m_runner.outcome()) {
    const core::ChannelTrials& trials = **m_runner.outcome();
    if (const core::TrialOutput* output = outputOf(trials, view.step)) {
      contents.trials = *output;
      contents.count = trials.result.trials;
      figures = trialFigures(trials, view, *output);
    }
  }
  m_plot->setVisible(HistogramPlot::canShow(contents));
  if (HistogramPlot::canShow(contents)) m_plot->showContents(contents);
  say(trialSentence(m_runner, view), figures);
}

void TrialPanel::showNothing() {
  showControls();
  m_plot->hide();
  say({}, {});
}

void TrialPanel::say(const QString& sentence, const std::vector<core::Entry>& figures) {
  m_sentence->setText(withWholeUnits(sentence));
  m_sentence->setAccessibleName(sentence);
  while (m_labels.size() < figures.size()) {
    const int row = static_cast<int>(m_labels.size());
    m_labels.emplace_back(figureLabel(), figureLabel());
    m_rows->addWidget(m_labels.back().first, row, 0);
    m_rows->addWidget(m_labels.back().second, row, 1);
    colour();
  }
  QString words;
  for (std::size_t k = 0; k < figures.size(); ++k) {
    const QString name = toQString(figures[k].name), value = toQString(figures[k].value);
    m_labels[k].first->setText(name);
    m_labels[k].second->setText(value);
    m_labels[k].second->setAccessibleName(name + ": " + value);
    words += " " + name + ": " + value + ".";
  }
  m_figures->setVisible(!figures.empty());
  // The picture's numbers in words, for those who cannot see it.
  m_plot->setAccessibleDescription(sentence + words);
  setAccessibleDescription(sentence + words);
}

void TrialPanel::colour() {
  QPalette quiet = palette();
  quiet.setColor(QPalette::WindowText, coloursFor(palette()).quiet);
  for (const auto& [name, value] : m_labels) name->setPalette(quiet);
}

void TrialPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) colour();
}

}  // namespace ui
