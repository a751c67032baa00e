// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/figures_page.h"

#include <QCoreApplication>
#include <QEvent>
#include <QGridLayout>
#include <QLabel>

#include "core/report/figures.h"
#include "ui/outcome/figure_grid.h"
#include "ui/parts.h"
#include "ui/preferences/appearance.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int nameWidth_px = 140;

QString tr(const char* text) { return QCoreApplication::translate("ui::FiguresPage", text); }

QString capital(QString text) {
  if (!text.isEmpty()) text[0] = text[0].toUpper();
  return text;
}

/// What figuresOf says in short is said by the merits in full.
bool isMerit(const std::string& name, const std::vector<core::Merit>& merits) {
  for (const core::Merit& merit : merits)
    if (capital(toQString(core::meritKindName(merit.kind))) == toQString(name)) return true;
  return false;
}

void addMerits(std::vector<FigureLine>& lines, const std::vector<core::Merit>& merits) {
  for (const core::Merit& merit : merits) {
    FigureLine line{capital(toQString(core::meritKindName(merit.kind))), toQString(merit.reason), {}};
    line.is = merit.verdict;
    // Without a limit there is nothing to judge, and "not judged" would look like a fault.
    if (merit.limit) line.verdict = toQString(core::verdictWord(merit.verdict));
    lines.push_back(std::move(line));
  }
}

void addEntries(std::vector<FigureLine>& lines, const std::vector<core::Entry>& entries,
                const std::vector<core::Merit>& merits) {
  for (const core::Entry& entry : entries)
    if (!isMerit(entry.name, merits)) lines.push_back({toQString(entry.name), toQString(entry.value), {}});
}

FigureLine headingLine(const QString& text) {
  FigureLine line{text, {}, {}};
  line.heading = true;
  return line;
}

}  // namespace

std::vector<FigureLine> figureLines(const ShownOutcome& outcome) {
  std::vector<FigureLine> lines;
  const core::Channel& channel = *outcome.channel;
  const core::ChannelEvaluation& evaluation = *outcome.evaluation;
  if (outcome.pair) {
    lines.push_back(headingLine(tr("Both checks")));
    addEntries(lines,
               core::figuresOf(channel, evaluation, outcome.pair->comparison, outcome.pair->before,
                               outcome.pair->after),
               {});
  }
  for (const std::size_t check : outcome.checks()) {
    const core::CheckAssessment& assessment = evaluation.checks[check].assessment;
    FigureLine verdict{toQString(channel.checks[check].name), toQString(assessment.reason),
                       toQString(core::verdictWord(assessment.verdict))};
    verdict.is = assessment.verdict;
    verdict.heading = true;
    lines.push_back(std::move(verdict));
    addEntries(lines, core::figuresOf(channel, evaluation, check), assessment.merits);
    addMerits(lines, assessment.merits);
  }
  if (!lines.empty()) lines.push_back({tr("Scope"), toQString(core::chainScopeStatement()), {}});
  return lines;
}

FiguresPage::FiguresPage(QWidget* parent) : QScrollArea(parent) {
  auto* sheet = new QWidget;
  auto* column = new QVBoxLayout(sheet);
  m_layout = new QGridLayout;
  m_layout->setHorizontalSpacing(14);
  m_layout->setVerticalSpacing(6);
  m_layout->setColumnStretch(2, 1);
  column->addLayout(m_layout);
  column->addStretch(1);
  setWidget(sheet);
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::StrongFocus);
  setObjectName("outcomeFiguresPage");
  setAccessibleName(tr("Figures in words"));
}

void FiguresPage::showFigures(std::vector<FigureLine> lines) {
  m_lines = std::move(lines);
  while (m_rows.size() < m_lines.size()) {
    const Row row{plainLabel("figureName"), plainLabel("figureVerdict"), plainLabel("figureValue")};
    const int at = static_cast<int>(m_rows.size());
    row.name->setFixedWidth(atTextSize(nameWidth_px));
    m_layout->addWidget(row.name, at, 0, Qt::AlignTop);
    m_layout->addWidget(row.verdict, at, 1, Qt::AlignTop);
    m_layout->addWidget(row.value, at, 2, Qt::AlignTop);
    m_rows.push_back(row);
  }
  QString words;
  for (std::size_t k = 0; k < m_rows.size(); ++k) {
    const bool used = k < m_lines.size();
    for (QLabel* label : {m_rows[k].name, m_rows[k].verdict, m_rows[k].value}) label->setVisible(used);
    if (!used) continue;
    fill(m_rows[k], m_lines[k]);
    words += m_lines[k].name + ": " + m_lines[k].value + " ";
  }
  setAccessibleDescription(words);
  colour();
}

void FiguresPage::fill(const Row& row, const FigureLine& line) {
  row.name->setText(line.name);
  row.verdict->setText(line.verdict);
  row.value->setText(withWholeUnits(line.value));
  row.value->setAccessibleName(line.name + ": " + line.value);
  QFont font = this->font();
  font.setBold(line.heading);
  row.name->setFont(font);
  font.setBold(true);
  row.verdict->setFont(font);
}

void FiguresPage::colour() {
  const Colours colours = coloursFor(palette());
  for (std::size_t k = 0; k < m_lines.size(); ++k) {
    setTextColour(m_rows[k].name, m_lines[k].heading ? colours.text : colours.quiet);
    setTextColour(m_rows[k].verdict, colourOf(colours, m_lines[k].is));
  }
}

void FiguresPage::changeEvent(QEvent* event) {
  QScrollArea::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) colour();
}

}  // namespace ui
