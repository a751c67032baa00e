// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/budget/inputs.h"
#include "ui/sheet_model.h"

namespace ui {

/// The inputs of the chosen channel's prediction and how well each is known. A row says either what is
/// stated or the usual value of its class, an assumption; typing in an assumed row states it, starting from
/// the assumption, and emptying the uncertainty assumes again. While a closed check is chosen the table
/// shows the set-up it was judged by and takes no edits.
class UncertaintyModel : public SheetModel {
  Q_OBJECT

 public:
  enum Column {
    InputColumn,
    Value,
    Amount,
    StatedAs,
    Distribution,
    CoverageFactor,
    DegreesOfFreedom,
    Group,
    Correlation,
    Source,
    ColumnCount
  };

  explicit UncertaintyModel(Session& session, QObject* parent = nullptr);

  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  QString whyFixed(int column) const override;
  /// Rows whose uncertainty is among the cells are assumed again, whatever else of them is.
  core::Result<void> clearCells(const QModelIndexList& cells) override;

  /// The row of `input`; none when the channel shown has no such input.
  std::optional<int> rowOf(core::Input input) const;
  /// Whether something is stated about the input of `row`.
  bool isStated(int row) const { return !m_inputs[static_cast<std::size_t>(row)].assumed; }
  /// `channel` with nothing stated about the inputs of `rows`.
  core::Channel withAssumed(core::Channel channel, const std::vector<int>& rows) const;

 protected:
  core::Result<core::Channel> withCell(core::Channel channel, int row, int column,
                                       const QString& text) const override;
  QString editLabel(int column) const override;
  QString emptyText(int column) const override;

 private:
  void refresh();
  const core::Setup& shownSetup() const;
  QString text(int row, int column, bool full) const;
  QVariant numberIn(int row, int column) const;
  QString hint(int row) const;

  std::shared_ptr<const core::Channel> m_channel;     ///< the rows are those of this channel,
  std::shared_ptr<const core::Setup> m_closedWith;    ///< or of the set-up that the chosen check keeps
  std::vector<core::BudgetInput> m_inputs;            ///< one a row
  std::vector<std::optional<core::Error>> m_refused;  ///< why a row cannot be reckoned with
};

/// The words of the columns "Stated as" and "Distribution".
QStringList statementWords();
QStringList distributionWords();

}  // namespace ui
