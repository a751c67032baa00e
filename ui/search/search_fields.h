// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QGroupBox>
#include <array>
#include <vector>

#include "core/search/resistor_search.h"
#include "core/search/targets.h"
#include "core/units/notation.h"

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLineEdit;
class QListWidget;

namespace ui {

class CountEdit;
class QuantityEdit;

// What is asked of a search, group by group. Each group holds what was typed and says it as a value, or why
// it cannot.

/// A part of the form of fields, each with its label, object name and accessible name.
class SearchGroup : public QGroupBox {
  Q_OBJECT

 public:
  SearchGroup(const QString& title, QWidget* parent = nullptr);
  /// Takes what stands in the fields; fails with the first field that holds no quantity.
  core::Result<void> commit();

 protected:
  template <class W>
  W* add(const QString& label, const char* name, W* widget) {
    addRow(label, name, widget);
    return widget;
  }
  QuantityEdit* quantity(const char* name, const QString& label, core::UnitFamily family, double& target);
  void addRow(const QString& label, const char* name, QWidget* widget);
  void showRow(QWidget* field, bool shown);
  QFormLayout* form() { return m_form; }

 private:
  QFormLayout* m_form;
};

/// The levels wanted: equally spaced, as a list, or as shares of a range.
class LevelsGroup : public SearchGroup {
  Q_OBJECT

 public:
  explicit LevelsGroup(const core::Bridge& bridge, QWidget* parent = nullptr);
  core::Result<std::vector<double>> levels() const;

 private:
  enum Kind { Equal, List, Shares };
  void showKind();
  core::Result<std::vector<double>> shares() const;

  core::Bridge m_bridge;
  double m_greatest = 0;
  double m_range = 0;
  QComboBox* m_kind;
  QuantityEdit* m_greatestField;
  CountEdit* m_count;
  QLineEdit* m_list;
  QuantityEdit* m_rangeField;
  QLineEdit* m_shares;
  QComboBox* m_sides;
};

/// Where the resistors are switched to for levels of either side.
class PlacesGroup : public SearchGroup {
  Q_OBJECT

 public:
  explicit PlacesGroup(const core::Bridge& bridge, QWidget* parent = nullptr);
  core::ShuntPlace place(bool positive) const;

 private:
  struct Row {
    QComboBox* from = nullptr;
    QComboBox* to = nullptr;
    double wires_ohm = 0;
    double contact_ohm = 0;
  };
  void addPlace(bool positive, const core::Bridge& bridge);

  std::array<Row, 2> m_rows;  ///< negative, positive
};

/// Positions, what is fitted in them, and what the others are chosen from.
class ResistorsGroup : public SearchGroup {
  Q_OBJECT

 public:
  ResistorsGroup(const core::Setup& setup, const core::Stock& stock, QWidget* parent = nullptr);

  std::size_t positions() const;
  bool together() const;
  core::Result<std::vector<core::Candidate>> fitted() const;
  /// The stock with the preferred values that are asked for; fails when nothing is.
  core::Result<core::Stock> from() const;
  bool withOverdue() const;

 private:
  void addFitted();
  void addSources();

  core::Setup m_setup;
  core::Stock m_stock;
  core::SeriesRange m_series;
  double m_from_ohm, m_to_ohm, m_tolerance;
  CountEdit* m_positions;
  QCheckBox* m_together;
  QListWidget* m_present;
  QLineEdit* m_typed;
  QCheckBox* m_useStock;
  QCheckBox* m_overdue;
  QComboBox* m_seriesBox;
};

}  // namespace ui
