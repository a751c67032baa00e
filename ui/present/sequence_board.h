// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableView>

#include "ui/sequence_model.h"

namespace ui {

/// The sequence to be looked at from afar: few columns, the chosen step in larger letters than the others.
class SequenceBoard : public QTableView {
  Q_OBJECT

 public:
  explicit SequenceBoard(Session& session, QWidget* parent = nullptr);

 protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void refresh();
  void spreadRows();
  int roomForLabels() const;

  Session& m_session;
  SequenceModel m_model;
};

}  // namespace ui
