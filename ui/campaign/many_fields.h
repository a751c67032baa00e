// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>

#include "core/campaign/batch_edits.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QStackedWidget;

namespace ui {

class CountEdit;

/// What can be edited in many channels at once, with the field for its new value.
class ManyFields : public QWidget {
  Q_OBJECT

 public:
  using Act =
      std::function<core::Result<core::BatchEdit>(const core::Document&, std::span<const std::size_t>)>;

  /// Checks that can be closed are those of the channels `to`.
  ManyFields(const core::Document& document, const std::vector<std::size_t>& to, QWidget* parent = nullptr);

  /// The edit that is asked for; an error while the field holds nothing that could be done.
  core::Result<Act> act() const;
  /// "Change gauge factor", of the undo step.
  QString label() const;

 signals:
  void changed();

 private:
  struct Row;
  static const std::vector<Row>& rows();
  const Row& row() const;
  void show();
  void fillChoices(const Row& row);

  QStringList m_checks;
  QComboBox* m_what;
  QStackedWidget* m_stack;
  QLineEdit* m_text;
  QComboBox* m_choice;
  CountEdit* m_first;
  QLabel* m_firstLabel;
  QLabel* m_about;
};

}  // namespace ui
