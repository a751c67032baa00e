// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include "ui/sheet_model.h"

namespace ui {

/// The steps of the chosen channel, what each should read, and what the chosen check read.
/// While a closed check is chosen the table shows the set-up it was judged by and takes no edits.
class SequenceModel : public SheetModel {
  Q_OBJECT

 public:
  enum Column {
    Number,
    Label,
    Closed,
    PolarityColumn,
    Settle,
    Hold,
    Simulated,
    Output,
    Expected,
    Expanded,  ///< uncertainty in the chosen scope
    Measured,
    Change,
    Deviation,
    Limit,
    VerdictColumn,
    ColumnCount
  };

  explicit SequenceModel(Session& session, QObject* parent = nullptr);

  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

  QString whyFixed(int column) const override;

 protected:
  core::Result<core::Channel> withCell(core::Channel channel, int row, int column,
                                       const QString& text) const override;
  QString editLabel(int column) const override;
  QString emptyText(int column) const override;

 private:
  /// How many decimals the columns show, alike in each of them.
  struct Decimals {
    int simulated = 3, output = 6, reading = 3;
  };

  void refresh();
  Decimals columnDecimals() const;
  const core::Setup& shownSetup() const { return session().shownSetup(); }
  const core::SetupPrediction& shownPrediction() const { return session().shownPrediction(); }
  const core::Result<core::StepUncertainty>& shownUncertainty(int row) const;
  const core::CheckAssessment* shownAssessment() const;
  QString text(int row, int column, bool full) const;
  QVariant numberIn(int column) const;
  using NumberText = std::function<QString(double value, int decimals)>;
  QString predictedText(int row, int column, const NumberText& number) const;
  QString assessedText(int row, int column, const NumberText& number) const;
  std::optional<core::Date> dayOfUse() const;
  std::vector<std::size_t> overdueShunts(int row) const;  ///< of the step's, those past their due date
  QString overdueHint(int row) const;
  QVariant foreground(const QModelIndex& index) const;
  QString hint(const QModelIndex& index) const;

  Decimals m_decimals;
};

/// Decimals that show about six digits of the greatest number of a column, so that its points align.
int decimalsFor(double greatest);
/// The names of the shunts that a step closes, "none" for a zero step.
QString closedShuntsText(const core::Setup& setup, const core::Step& step);
/// The shunts named in `text`, separated by commas; empty, "none" and "zero" close nothing.
core::Result<std::vector<std::size_t>> closedShuntsFromText(const core::Setup& setup, const QString& text);

}  // namespace ui
