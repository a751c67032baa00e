// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/whatif/trial_list.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QToolButton>
#include <algorithm>

#include "ui/parts.h"
#include "ui/preferences/appearance.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

using enum core::AlterationKind;

/// Of a small page.
constexpr int mostRows = 4;

bool samePlace(const core::Alteration& a, const core::Alteration& b) {
  return a.kind == b.kind && a.index == b.index && a.other == b.other;
}

}  // namespace

TrialList::TrialList(QWidget* parent) : QScrollArea(parent) {
  setObjectName("trialList");
  setAccessibleName(tr("What is tried out"));
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Maximum);
  setFocusPolicy(Qt::NoFocus);
}

void TrialList::show(const std::vector<core::Alteration>& alterations, const core::TriedOut& tried) {
  const bool same =
      std::equal(alterations.begin(), alterations.end(), m_shown.begin(), m_shown.end(), samePlace);
  m_shown = alterations;
  if (!same || !widget()) makeRows(alterations);
  for (std::size_t trial = 0; trial < m_rows.size(); ++trial) {
    const Row& row = m_rows[trial];
    const auto& why = tried.refused[trial];
    const QString name =
        toQString(row.field ? core::alterationName(tried.setup, alterations[trial]) : tried.texts[trial]);
    row.name->setText(name);
    if (row.field) row.field->setValue(alterations[trial].value);
    row.reason->setText(why ? tr("left out: %1").arg(toText({{}, why->what, why->mend})) : QString());
    row.reason->setVisible(why.has_value());
  }
  colour();
  updateGeometry();
}

void TrialList::openLast() {
  if (m_rows.empty()) return;
  widget()->layout()->activate();
  ensureWidgetVisible(m_rows.back().name);
  if (QuantityEdit* field = m_rows.back().field) {
    field->setFocus();
    field->selectAll();
  }
}

void TrialList::makeRows(const std::vector<core::Alteration>& alterations) {
  // A button of the old rows may be the one that asked for this: it must outlive its own click.
  if (QWidget* old = takeWidget()) {
    old->hide();
    old->deleteLater();
  }
  m_rows.clear();
  auto* rows = new QWidget;
  auto* grid = new QGridLayout(rows);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setVerticalSpacing(2);
  grid->setColumnStretch(0, 1);
  for (std::size_t trial = 0; trial < alterations.size(); ++trial) makeRow(grid, trial, alterations[trial]);
  setWidget(rows);
}

void TrialList::makeRow(QGridLayout* grid, std::size_t trial, const core::Alteration& alteration) {
  const int at = 2 * static_cast<int>(trial);
  const QString number = QString::number(trial);
  Row row;
  row.name = plainLabel(("trialName" + number).toLatin1().constData());
  row.reason = plainLabel(("trialReason" + number).toLatin1().constData());
  row.field = core::alterationValueFamily(alteration.kind) ? makeField(trial, alteration) : nullptr;
  auto* remove = toolButton("removeTrial" + number, tr("Remove"), tr("Stops trying this out"));
  remove->setAutoRaise(true);
  connect(remove, &QToolButton::clicked, this, [this, trial] { emit removed(trial); });
  grid->addWidget(row.name, at, 0);
  if (row.field) {
    grid->addWidget(row.field, at, 1);
    row.name->setBuddy(row.field);
  }
  grid->addWidget(remove, at, 2);
  grid->addWidget(row.reason, at + 1, 0, 1, 3);
  m_rows.push_back(row);
}

QuantityEdit* TrialList::makeField(std::size_t trial, const core::Alteration& alteration) {
  const core::AlterationKind kind = alteration.kind;
  auto* field = new QuantityEdit(*core::alterationValueFamily(kind));
  field->setObjectName("trialValue" + QString::number(trial));
  field->setUnit(toQString(core::alterationValueUnit(kind)));
  const bool warming = kind == LeadWarming || kind == GaugeWarming;
  if (!warming) field->setLeast(0, kind == LeadResistance);
  field->setMaximumWidth(atTextSize(110));
  connect(field, &QuantityEdit::valueEdited, this,
          [this, trial](double value) { emit valueEdited(trial, value); });
  connect(field, &QuantityEdit::refused, this, &TrialList::refused);
  return field;
}

void TrialList::colour() {
  const Colours colours = coloursFor(palette());
  for (std::size_t trial = 0; trial < m_rows.size(); ++trial) {
    const Row& row = m_rows[trial];
    setTextColour(row.reason, colours.fail);
    setTextColour(row.name, row.reason->text().isEmpty() ? colours.text : colours.quiet);
    if (row.field) row.field->setAccessibleName(row.name->text());
    if (auto* remove = widget()->findChild<QToolButton*>("removeTrial" + QString::number(trial)))
      remove->setAccessibleName(tr("Remove: %1").arg(row.name->text()));
  }
}

void TrialList::changeEvent(QEvent* event) {
  QScrollArea::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && widget()) colour();
}

QSize TrialList::sizeHint() const {
  if (!widget() || m_rows.empty()) return {200, 0};
  const int width = std::max(200, this->width());
  const int wanted = widget()->layout()->hasHeightForWidth() ? widget()->layout()->totalHeightForWidth(width)
                                                             : widget()->sizeHint().height();
  const int row = fontMetrics().height() + 14;
  // A tall page has room for more rows, and the table still for most of it.
  const int most = std::max(mostRows * row, parentWidget() ? parentWidget()->height() / 4 : 0);
  return {200, std::min(wanted, most)};
}

QSize TrialList::minimumSizeHint() const {
  return {160, std::min(sizeHint().height(), 2 * (fontMetrics().height() + 14))};
}

}  // namespace ui
