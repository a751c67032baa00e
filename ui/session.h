// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <QUndoStack>
#include <memory>
#include <optional>
#include <unordered_map>

#include "core/document/document.h"
#include "core/evaluate/evaluation.h"

namespace ui {

class ChannelRows;

/// What the user has chosen; all views show the same. Indices count from 0 and always exist.
struct Selection {
  std::optional<std::size_t> channel;      ///< none only in a document without channels
  std::optional<std::size_t> step;         ///< of the chosen channel's sequence
  std::optional<std::size_t> check;        ///< of the chosen channel; none shows the plan alone
  std::optional<std::size_t> compared;     ///< an earlier check shown beside `check`
  core::Scope scope = core::Scope::Chain;  ///< what shown uncertainties are of; stays with other channels
};

/// The open document, what is computed from it, what is chosen, and the history of edits.
///
/// Every change of the document is one call of `edit`; every view draws from here on `changed()`.
class Session : public QObject {
  Q_OBJECT

 public:
  explicit Session(core::Document document = {}, QObject* parent = nullptr);
  ~Session() override;

  const core::Document& document() const { return m_document; }
  const Selection& selection() const { return m_selection; }
  QUndoStack& history() { return m_history; }

  /// The chosen channel, none in a document without channels.
  const core::Channel* channel() const;
  /// The chosen check of the chosen channel.
  const core::Check* check() const;
  /// Computed once for each channel value and kept while the document holds that value.
  const core::ChannelEvaluation& evaluation(std::size_t channel) const;
  /// Of the chosen channel, none in a document without channels.
  const core::ChannelEvaluation* evaluation() const;
  /// What an overview says of each channel, worked out aside.
  ChannelRows& rows() const { return *m_rows; }
  /// Whether the chosen check is closed and so judged by the set-up it keeps.
  bool checkIsClosed() const;
  /// The day that due dates are compared with: the computer's, unless set.
  core::Date today() const;
  void setToday(core::Date day);

  // What the views show: of the chosen check, or of the channel as it is now when none is chosen. There
  // must be a channel.
  const core::Setup& shownSetup() const;
  const core::SetupPrediction& shownPrediction() const;
  const core::Budget& shownBudget() const;

  /// One undoable step. An edit that changes nothing leaves no step.
  void edit(const QString& label, core::Document next);
  /// The same, for another value of the chosen channel.
  void editChannel(const QString& label, core::Channel next);

  void selectChannel(std::optional<std::size_t> channel);
  void selectStep(std::optional<std::size_t> step);
  void selectCheck(std::optional<std::size_t> check);
  /// Shows another check beside the chosen one; none ends the comparison.
  void compareWith(std::optional<std::size_t> check);
  void selectScope(core::Scope scope);

  /// The document as it was opened or saved last.
  const core::Document& saved() const { return m_saved; }
  /// The document has been saved, and has this history now; no step to be undone.
  void setSaved(std::vector<core::Revision> history);
  /// Replaces everything, as opening a file does: history emptied, first channel chosen.
  void reset(core::Document document);

 signals:
  /// Document or selection changed.
  void changed();
  /// What can be undone or redone changed, or whether the document is as saved. Comes after `changed`,
  /// since a step counts as done only when its command has run.
  void historyChanged();

 private:
  friend class DocumentEdit;
  void setDocument(core::Document document);
  bool followChannel(const core::Document& next);
  void keepSelectionValid();
  void chooseLatestCheck();

  core::Document m_document;
  core::Document m_saved;
  Selection m_selection;
  std::optional<core::Date> m_today;
  QUndoStack m_history;
  mutable std::unordered_map<const core::Channel*, std::pair<std::shared_ptr<const core::Channel>,
                                                             std::unique_ptr<core::ChannelEvaluation>>>
      m_evaluations;
  std::unique_ptr<ChannelRows> m_rows;
};

}  // namespace ui
