// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stock/part_delegate.h"

#include <QComboBox>
#include <QCompleter>

#include "core/stock/stock.h"
#include "ui/quantity_edit.h"
#include "ui/stock/stock_sheet.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString withDue(const QString& words, const std::optional<core::Date>& due, core::Date today) {
  return due ? words + ", " + dueText(due, today) : words;
}

}  // namespace

QString partWords(const core::Resistor& resistor, core::Date today) {
  const QString value = quantityText(core::valueOf(resistor).base(), core::UnitFamily::Resistance);
  const QString tolerance = quantityText(core::toleranceOf(resistor), core::UnitFamily::Percent, {}, 2);
  return withDue(QString("%1: %2 ±%3").arg(toQString(resistor.id), value, tolerance), resistor.due, today);
}

QString partWords(const core::DecadeBox& box, core::Date today) {
  const QString most = quantityText(core::greatestSetting(box).base(), core::UnitFamily::Resistance);
  return withDue(PartDelegate::tr("%1: box up to %2").arg(toQString(box.id), most), box.due, today);
}

QWidget* PartDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                                    const QModelIndex& index) const {
  auto* box = static_cast<QComboBox*>(ChoiceDelegate::createEditor(parent, option, index));
  const core::Stock& stock = *m_session.document().stock;
  const core::Date today = m_session.today();
  for (const core::Resistor& resistor : stock.resistors)
    box->addItem(partWords(resistor, today), toQString(resistor.id));
  for (const core::DecadeBox& decades : stock.boxes)
    box->addItem(partWords(decades, today), toQString(decades.id));
  auto* completer = new QCompleter(box->model(), box);
  completer->setCaseSensitivity(Qt::CaseInsensitive);
  box->setCompleter(completer);
  box->setCurrentIndex(-1);
  return box;
}

/// What stands in the field is an entry of the list, or an id that was typed. Choosing the present part again
/// takes it anew, as the stock may have changed since.
void PartDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
  const auto* box = static_cast<QComboBox*>(editor);
  const QString text = box->currentText();
  const int entry = box->findText(text, Qt::MatchExactly | Qt::MatchCaseSensitive);
  if (entry >= 0)
    model->setData(index, box->itemData(entry));
  else if (text.trimmed() != index.data(Qt::EditRole).toString())
    model->setData(index, text);
}

}  // namespace ui
