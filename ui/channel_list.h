// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractListModel>
#include <QListView>

#include "ui/session.h"

namespace ui {

/// The channels of the document: name, and what is known of each in plain words.
class ChannelListModel : public QAbstractListModel {
  Q_OBJECT

 public:
  enum Role { StatusRole = Qt::UserRole + 1, VerdictRole };

  explicit ChannelListModel(Session& session, QObject* parent = nullptr);
  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

 private:
  void refresh();

  Session& m_session;
  int m_rows = 0;
};

/// The narrow list at the left; its current row is the chosen channel. F2 renames.
class ChannelList : public QListView {
  Q_OBJECT

 public:
  explicit ChannelList(Session& session, QWidget* parent = nullptr);

 private:
  void followSession();

  Session& m_session;
  ChannelListModel m_model;
};

}  // namespace ui
