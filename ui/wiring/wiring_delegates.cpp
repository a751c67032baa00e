// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/wiring_delegates.h"

#include <QComboBox>

#include "ui/wiring/wiring_words.h"

namespace ui {
namespace {

/// Or closing the list unused would choose its first entry.
void offerPresent(QWidget* editor, const QModelIndex& index) {
  auto* box = static_cast<QComboBox*>(editor);
  const QString present = index.data(Qt::EditRole).toString();
  if (box->findText(present) < 0) box->insertItem(0, present);
}

}  // namespace

void PinUseDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  offerPresent(editor, index);
  ChoiceDelegate::setEditorData(editor, index);
}

QStringList PinUseDelegate::choices(const core::Setup& setup) const { return pinUseChoices(setup); }

void PinNameDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  offerPresent(editor, index);
  ChoiceDelegate::setEditorData(editor, index);
}

QStringList PinNameDelegate::choices(const core::Setup& setup) const { return pinTexts(setup.wiring); }

}  // namespace ui
