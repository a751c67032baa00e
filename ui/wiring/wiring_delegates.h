// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/choice_delegates.h"

namespace ui {

/// What a pin can lead to. What it leads to now is offered too, although the channel may have lost it.
class PinUseDelegate : public ChoiceDelegate {
  Q_OBJECT

 public:
  explicit PinUseDelegate(Session& session, QObject* parent = nullptr) : ChoiceDelegate(session, parent) {}
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;

 protected:
  QStringList choices(const core::Setup& setup) const override;
};

/// The pins of the channel; that of the cell is offered too, although the list may have lost it.
class PinNameDelegate : public ChoiceDelegate {
  Q_OBJECT

 public:
  explicit PinNameDelegate(Session& session, QObject* parent = nullptr) : ChoiceDelegate(session, parent) {}
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;

 protected:
  QStringList choices(const core::Setup& setup) const override;
};

}  // namespace ui
