// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/part_editor.h"

#include <QApplication>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QToolButton>
#include <algorithm>

#include "ui/quantity_edit.h"

namespace ui {
namespace {

constexpr int fieldWidth = 130, inset = 6, gap = 6;

QLabel* plainLabel(const QString& text) {
  auto* label = new QLabel(text);
  label->setTextFormat(Qt::PlainText);
  return label;
}

}  // namespace

PartEditor::PartEditor(const core::Channel& channel, std::vector<PartField> fields, const QString& heading,
                       QWidget* parent)
    : QFrame(parent), m_grid(new QGridLayout(this)) {
  setObjectName("partEditor");
  setAccessibleName(tr("Values of %1").arg(heading));
  setFrameStyle(QFrame::Box | QFrame::Plain);
  setAutoFillBackground(true);
  m_grid->setContentsMargins(inset, inset / 2, inset, inset);
  m_grid->setVerticalSpacing(2);
  QLabel* above = plainLabel(fontMetrics().elidedText(heading, Qt::ElideRight, 2 * fieldWidth));
  above->setObjectName("partHeading");
  m_grid->addWidget(above, 0, 0, 1, 2);
  for (std::size_t k = 0; k < fields.size(); ++k) addField(channel, fields[k], k);
  // One number needs no second label: the heading says whose it is.
  if (fields.size() == 1) m_grid->itemAtPosition(1, 0)->widget()->hide();
  connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { leaveIfOutside(now); });
}

void PartEditor::addField(const core::Channel& channel, const PartField& field, std::size_t index) {
  auto* edit = new QuantityEdit(field.family, this);
  edit->setObjectName(field.name);
  edit->setAccessibleName(field.label);
  edit->setUnit(field.unit);
  edit->setLeast(field.least, field.leastAllowed);
  if (field.greatest) edit->setGreatest(*field.greatest);
  if (!field.none.isEmpty()) edit->setOptional(field.none);
  edit->setShownDigits(field.digits);
  edit->setMinimumWidth(fieldWidth);
  if (agrees(channel, field))
    edit->setValue(field.values.front().get(channel));
  else
    edit->setPlaceholderText(tr("not all alike"));
  edit->installEventFilter(this);
  connect(edit, &QuantityEdit::valueEdited, this, [this, index](double value) { m_values[index] = value; });
  connect(edit, &QuantityEdit::cleared, this, [this, index] { m_values[index] = std::nullopt; });
  const int row = static_cast<int>(index) + 1;
  auto* label = plainLabel(field.label);
  label->setBuddy(edit);
  m_grid->addWidget(label, row, 0);
  m_grid->addWidget(edit, row, 1);
  m_edits.push_back(edit);
}

void PartEditor::offerWire() {
  auto* wire = new QToolButton;
  wire->setObjectName("partWire");
  wire->setText(tr("Wire…"));
  wire->setAccessibleName(tr("From length and size of a wire"));
  wire->setToolTip(tr("Work the resistance out from length and size of a copper wire"));
  connect(wire, &QToolButton::clicked, this, [this] {
    m_done = true;
    emit wireWanted();
  });
  m_grid->addWidget(wire, 1, 2);
}

void PartEditor::showBeside(const QRect& part) {
  m_place = part;
  placeItself();
  show();
  raise();
  m_edits.front()->setFocus(Qt::OtherFocusReason);
  m_edits.front()->selectAll();
}

void PartEditor::placeItself() {
  m_grid->activate();
  adjustSize();
  const QRect room = parentWidget()->rect();
  const QSize size(std::min(width(), room.width()), height());
  const QPoint across((m_place.width() + size.width()) / 2 + gap, 0),
      down(0, (m_place.height() + size.height()) / 2 + gap);
  QRect best;
  int least = -1;
  for (const QPoint& way : {across, -across, down, -down}) {
    QRect at(QPoint(), size);
    at.moveCenter(m_place.center() + way);
    at.moveLeft(std::clamp(at.left(), 0, std::max(0, room.width() - at.width())));
    at.moveTop(std::clamp(at.top(), 0, std::max(0, room.height() - at.height())));
    const QRect covered = at & m_place;
    const int area = covered.isEmpty() ? 0 : covered.width() * covered.height();
    if (least >= 0 && area >= least) continue;
    least = area;
    best = at;
  }
  setGeometry(best);
}

void PartEditor::keep() {
  if (m_done) return;
  for (QuantityEdit* edit : m_edits) edit->commit();
  for (QuantityEdit* edit : m_edits)
    if (edit->isRefused()) return edit->setFocus(Qt::OtherFocusReason);
  m_done = true;
  emit kept(m_values);
}

void PartEditor::drop() {
  if (m_done) return;
  m_done = true;
  emit dropped();
}

/// Keeps what is legal; a refused text stays to be mended. The whole window losing the keyboard is no
/// leaving.
void PartEditor::leaveIfOutside(QWidget* now) {
  if (m_done || !now || now == this || isAncestorOf(now)) return;
  for (QuantityEdit* edit : m_edits) edit->commit();
  const bool refused =
      std::any_of(m_edits.begin(), m_edits.end(), [](QuantityEdit* edit) { return edit->isRefused(); });
  if (!refused) keep();
}

bool PartEditor::eventFilter(QObject* watched, QEvent* event) {
  const bool key = event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride;
  if (!key) return QFrame::eventFilter(watched, event);
  const int pressed = static_cast<QKeyEvent*>(event)->key();
  const bool enter = pressed == Qt::Key_Return || pressed == Qt::Key_Enter;
  if (!enter && pressed != Qt::Key_Escape) return QFrame::eventFilter(watched, event);
  // Nobody else may take them for a shortcut.
  if (event->type() == QEvent::ShortcutOverride)
    event->accept();
  else if (enter)
    keep();
  else
    drop();
  return true;
}

}  // namespace ui
