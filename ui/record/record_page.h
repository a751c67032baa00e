// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFutureWatcher>
#include <QWidget>
#include <functional>
#include <vector>

#include "core/document/sign_off.h"
#include "core/record/review_state.h"
#include "ui/session.h"

class QLabel;
class QPlainTextEdit;
class QPushButton;
class QTableWidget;

namespace ui {

/// A page in place of the views: where the record stands (draft, submitted, accepted, returned), its
/// fingerprint, the remarks of reviewers pinned to checks and steps, and the history of who changed what
/// when. The fingerprint is worked out aside, while the page is shown.
class RecordPage : public QWidget {
  Q_OBJECT

 public:
  explicit RecordPage(Session& session, QWidget* parent = nullptr);
  ~RecordPage() override;

  // What the Record menu asks for; each asks for what it needs and is one undo step.
  void submit();
  void accept();
  void giveBack();
  void withdraw();
  /// A remark pinned to the chosen step, or to the chosen check when no step is chosen.
  void addRemark();

  /// Chooses a remark of a check, if it is there.
  void showRemark(std::size_t channel, std::size_t check, std::size_t remark);

 signals:
  void refused(const QString& reason);
  void said(const QString& sentence);
  /// The user wants to see the check and step of a remark in the views.
  void viewsWanted();

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  /// Where a remark is kept.
  struct RemarkPlace {
    std::size_t channel, check, remark;
  };
  /// What a worker finds out about the document.
  struct Prints {
    QString fingerprint;
    bool isAltered = false;  ///< what was opened is not what its last saving left
  };

  QWidget* makeStanding();
  QWidget* makeRemarks();
  QWidget* makeHistory();
  QString failures() const;
  void act(core::Stage stage, const QString& title, const QString& caution, const QString& action);
  void refresh();
  void askFingerprint();
  void takeFingerprint();
  void showStanding();
  void showWarnings(bool hasChanged);
  void showRemarks();
  void showHistory();
  void showRevision();
  const RemarkPlace* chosenRemark() const;
  const core::Remark& remarkAt(const RemarkPlace& place) const;
  void changeRemark(const QString& label, const RemarkPlace& place,
                    const std::function<void(std::vector<core::Remark>&, std::size_t)>& change);
  void settleRemark();
  void editRemark();
  void deleteRemark();
  void goToRemark();

  Session& m_session;
  QFutureWatcher<Prints> m_worker;
  core::Document m_asked;    ///< whose fingerprint is being worked out
  QString m_fingerprint;     ///< empty while it is not known
  bool m_isAltered = false;  ///< the file, outside of the program since its last saving
  core::Document m_known;    ///< whose it is
  std::vector<RemarkPlace> m_places;
  QLabel *m_state = nullptr, *m_warning = nullptr, *m_short = nullptr, *m_full = nullptr;
  QLabel *m_noRemarks = nullptr, *m_noHistory = nullptr;
  QPushButton *m_submit = nullptr, *m_accept = nullptr, *m_return = nullptr, *m_withdraw = nullptr;
  QPushButton *m_copy = nullptr, *m_settle = nullptr, *m_edit = nullptr, *m_delete = nullptr, *m_go = nullptr;
  QTableWidget *m_remarks = nullptr, *m_history = nullptr;
  QPlainTextEdit* m_details = nullptr;
};

}  // namespace ui
