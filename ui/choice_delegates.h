// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

#include "ui/session.h"

namespace ui {

/// The plain editor of a cell; for a number with the echo and the arrow keys of the fields
/// (attachCellNumber). Closed with nothing typed it says nothing to the model.
class TypedDelegate : public QStyledItemDelegate {
  Q_OBJECT

 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const override;
  void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;
};

/// An editor that offers choices in a list; the text typed or chosen goes to the model when it is another
/// one than before. What is no choice the model takes or refuses, as it does when it is pasted.
class ChoiceDelegate : public QStyledItemDelegate {
  Q_OBJECT

 public:
  explicit ChoiceDelegate(Session& session, QObject* parent = nullptr);
  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const override;
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;
  void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;
  /// Over the neighbouring cell where the words need it.
  void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                            const QModelIndex& index) const override;

 protected:
  virtual QStringList choices(const core::Setup& setup) const = 0;

 private:
  Session& m_session;
};

/// The nodes of the chosen bridge.
class NodeDelegate : public ChoiceDelegate {
  Q_OBJECT

 public:
  explicit NodeDelegate(Session& session, QObject* parent = nullptr) : ChoiceDelegate(session, parent) {}

 protected:
  QStringList choices(const core::Setup& setup) const override;
};

/// The shunts of the chosen channel, one at a time; several may be typed with commas between.
class ClosedShuntsDelegate : public ChoiceDelegate {
  Q_OBJECT

 public:
  explicit ClosedShuntsDelegate(Session& session, QObject* parent = nullptr)
      : ChoiceDelegate(session, parent) {}

 protected:
  QStringList choices(const core::Setup& setup) const override;
};

/// A fixed list of words.
class WordDelegate : public ChoiceDelegate {
  Q_OBJECT

 public:
  WordDelegate(Session& session, QStringList words, QObject* parent = nullptr)
      : ChoiceDelegate(session, parent), m_words(std::move(words)) {}

 protected:
  QStringList choices(const core::Setup&) const override { return m_words; }

 private:
  QStringList m_words;
};

/// The groups of correlated inputs that there are; another may be typed.
class GroupDelegate : public ChoiceDelegate {
  Q_OBJECT

 public:
  explicit GroupDelegate(Session& session, QObject* parent = nullptr) : ChoiceDelegate(session, parent) {}

 protected:
  QStringList choices(const core::Setup& setup) const override;
};

}  // namespace ui
