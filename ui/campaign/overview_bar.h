// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/campaign/overview_lines.h"

class QComboBox;
class QLineEdit;
class QToolButton;

namespace ui {

/// What of the channels is shown, and how it is grouped: a text to filter by and quick choices.
class OverviewBar : public QWidget {
  Q_OBJECT

 public:
  explicit OverviewBar(QWidget* parent = nullptr);

  /// Offers the groups that there are; one chosen that is gone is chosen no longer.
  void offerGroups(const QStringList& groups);
  core::OverviewFilter filter() const;
  Grouping grouping() const;
  void clear();
  QLineEdit* text() const { return m_text; }

 signals:
  void changed();

 private:
  QComboBox* choice(const char* name, const QString& accessibleName);
  QToolButton* toggle(const char* name, const QString& text, const QString& tip);

  QLineEdit* m_text;
  QComboBox* m_state;
  QComboBox* m_change;
  QComboBox* m_group;
  QComboBox* m_grouping;
  QToolButton* m_overdue;
  QToolButton* m_remarks;
  QToolButton* m_open;
  QToolButton* m_clear;
  QStringList m_groups;
};

}  // namespace ui
