// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

#include "ui/session.h"

namespace ui {

/// An editor that offers choices in a list; the text typed or chosen goes to the model.
class ChoiceDelegate : public QStyledItemDelegate {
  Q_OBJECT

 public:
  /// `free`: other text than the choices may be typed.
  ChoiceDelegate(Session& session, bool free, QObject* parent = nullptr);
  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const override;
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;
  void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;

 protected:
  virtual QStringList choices(const core::Setup& setup) const = 0;

 private:
  Session& m_session;
  bool m_free;
};

/// The nodes of the chosen bridge.
class NodeDelegate : public ChoiceDelegate {
  Q_OBJECT

 public:
  explicit NodeDelegate(Session& session, QObject* parent = nullptr)
      : ChoiceDelegate(session, false, parent) {}

 protected:
  QStringList choices(const core::Setup& setup) const override;
};

/// The shunts of the chosen channel, one at a time; several may be typed with commas between.
class ClosedShuntsDelegate : public ChoiceDelegate {
  Q_OBJECT

 public:
  explicit ClosedShuntsDelegate(Session& session, QObject* parent = nullptr)
      : ChoiceDelegate(session, true, parent) {}

 protected:
  QStringList choices(const core::Setup& setup) const override;
};

}  // namespace ui
