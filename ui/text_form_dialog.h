// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <functional>
#include <optional>
#include <vector>

#include "ui/fields/cell_number.h"

class QLabel;
class QLineEdit;

namespace ui {

/// A few labelled lines of text to fill in, such as the details of a document or of a check.
class TextFormDialog : public QDialog {
  Q_OBJECT

 public:
  struct Line {
    QString label;
    QString text;
    QString example;                        ///< shown while the line is empty
    std::optional<CellNumber> number = {};  ///< the line holds such a number, or nothing
  };

  TextFormDialog(const QString& title, const std::vector<Line>& lines, QWidget* parent = nullptr);

  /// What is wrong with what the lines hold, asked when they are to be taken: the dialog then says so and
  /// stays open. Empty: nothing.
  void setObjection(std::function<QString()> objection) { m_objection = std::move(objection); }

  /// What line `index` holds, without spaces at the ends.
  std::string text(std::size_t index) const;

  void accept() override;

 private:
  std::vector<QLineEdit*> m_edits;
  std::function<QString()> m_objection;
  QLabel* m_objected;
};

}  // namespace ui
