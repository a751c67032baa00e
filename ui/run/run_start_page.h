// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/run/run_page.h"
#include "ui/session.h"

class QLineEdit;
class QVBoxLayout;

namespace ui {

/// The first step without a reading of an open check; none when all steps have one.
std::optional<std::size_t> firstUnread(const core::Channel& channel, const core::Check& check);

/// Chooses what is run: an open check that is to be gone on with, or a new one.
class RunStartPage : public RunPage {
  Q_OBJECT

 public:
  explicit RunStartPage(Session& session, QWidget* parent = nullptr);

  void refresh() override;
  void takeKeyboard() override;

 signals:
  /// An open check is chosen now.
  void chosen();
  void refused(const QString& reason);

 private:
  QWidget* newCheck();
  QString whatIsWrong() const;
  void offerOpenChecks();
  void startCheck();

  Session& m_session;
  QLabel* m_sentence;
  QVBoxLayout* m_open;  ///< a button an open check
  QWidget* m_form;
  QLineEdit* m_name;
  QLineEdit* m_person;
  QLineEdit* m_date;
  QPushButton* m_start;
};

}  // namespace ui
