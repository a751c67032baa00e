// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractListModel>
#include <QListView>

#include "ui/session.h"

class QLineEdit;

namespace ui {

/// The channels of the document: name, and what is known of each in plain words. What is on view is worked
/// out aside; only the chosen channel, which all views show, is known at once.
class ChannelListModel : public QAbstractListModel {
  Q_OBJECT

 public:
  enum Role { StatusRole = Qt::UserRole + 1, VerdictRole };

  explicit ChannelListModel(Session& session, QObject* parent = nullptr);
  int rowCount(const QModelIndex& parent = {}) const final;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

  /// Leaves out channels whose name and group lack `text`; empty shows all.
  void setFilter(const QString& text);
  std::size_t channelAt(int row) const { return m_shown[static_cast<std::size_t>(row)]; }
  /// Where a channel stands; not valid when it is left out.
  QModelIndex indexOf(std::size_t channel) const;

 private:
  void refresh();
  std::vector<std::size_t> wanted() const;
  QString status(std::size_t channel) const;
  core::Verdict verdict(std::size_t channel) const;

  Session& m_session;
  QString m_filter;
  std::vector<std::shared_ptr<const core::Channel>> m_channels;  ///< that the rows were made of
  std::vector<std::size_t> m_shown;                              ///< the channel of each row
};

/// The narrow list at the left; its current row is the chosen channel. F2 renames. Where there are many
/// channels a field above the list leaves out those whose name and group lack what is typed.
class ChannelList : public QWidget {
  Q_OBJECT

 public:
  explicit ChannelList(Session& session, QWidget* parent = nullptr);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void followSession();

  Session& m_session;
  ChannelListModel m_model;
  QLineEdit* m_filter;
  QListView* m_list;
};

}  // namespace ui
