// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QHash>

#include "ui/campaign/overview_lines.h"
#include "ui/session.h"
#include "ui/tables/block_taker.h"

namespace ui {

/// The overview's grid: a row a channel, or the heading of a group in the first column of its row. Name,
/// group and note can be edited in place, each edit one undo step. Follows session and results only while
/// `follow` is on.
class OverviewModel : public QAbstractTableModel, public BlockTaker {
  Q_OBJECT

 public:
  enum Role {
    ShareRole = Qt::UserRole + 1,  ///< of the limit, where the cell shows one
    VerdictRole                    ///< of the row's channel
  };

  explicit OverviewModel(Session& session, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
  core::Result<void> putCells(const QList<CellText>& cells, const QString& label) override;
  core::Result<void> clearCells(const QModelIndexList& cells) override;
  QString whyFixed(int column) const override;
  /// The column decides; among equals the one before it, and so on.
  void sort(int column, Qt::SortOrder order) override;

  const OverviewLayout& layout() const { return m_layout; }
  void setFilter(const core::OverviewFilter& filter);
  void setGrouping(Grouping grouping);
  void toggleGroup(int row);
  bool isHeading(int row) const { return !lineAt(row).channel; }
  bool isCollapsed(int row) const;

  /// None for a heading.
  std::optional<std::size_t> channelAt(int row) const { return lineAt(row).channel; }
  /// -1 when it is not shown.
  int rowOf(std::size_t channel) const;
  std::size_t shownChannels() const { return m_shown; }

  /// Of all channels, those shown or not; rows that are not known yet count as channels only.
  core::OverviewTally tally() const;
  /// Rows of cells as a spreadsheet takes them, the header first; headings are left out.
  QList<QStringList> cells(const std::vector<int>& rows) const;
  QList<QStringList> allCells() const;

  /// Draws from session and results again; rows keep their places while nothing else is to stand there.
  void refresh();
  /// While a cell is edited rows keep their places; what came meanwhile is shown when it is let go.
  void hold(bool held);

 signals:
  /// Rows are in other places now; who chose some has to find them again.
  void rearranged();
  void refused(const QString& reason);

 private:
  /// What a row was drawn of.
  struct Drawn {
    std::shared_ptr<const core::Channel> channel;
    bool current = false;
    friend bool operator==(const Drawn&, const Drawn&) = default;
  };

  const OverviewLine& lineAt(int row) const { return m_lines[static_cast<std::size_t>(row)]; }
  OverviewItem itemOf(std::size_t channel) const;
  std::vector<OverviewItem> items() const;
  void countGroups();
  std::vector<Drawn> drawnNow() const;
  void showChanges(const std::vector<Drawn>& before);
  QString headingText(int row) const;
  core::Result<core::Document> withCell(core::Document document, const CellText& cell) const;
  QVariant channelData(std::size_t channel, OverviewColumn column, int role) const;

  Session& m_session;
  OverviewLayout m_layout;
  std::vector<OverviewLine> m_lines;
  std::vector<Drawn> m_drawn;        ///< by channel
  QHash<QString, QString> m_groups;  ///< the tally of each, in words
  std::size_t m_shown = 0;
  bool m_held = false;
  bool m_late = false;  ///< something came while rows were held
};

}  // namespace ui
