// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>
#include <vector>

#include "core/recording/layout.h"

class QComboBox;
class QGridLayout;
class QLabel;
class QToolButton;

namespace ui {

class CountEdit;
class QuantityEdit;

/// Every part of the guess of how a file is read, as a field that shows it. A field that was changed is
/// marked and can be set back to the guess.
class LayoutForm : public QWidget {
  Q_OBJECT

 public:
  explicit LayoutForm(QWidget* parent = nullptr);

  /// Shows `layout`, in which `choices` are held already.
  void show(const core::Layout& layout, const core::LayoutChoices& choices);
  const core::LayoutChoices& choices() const { return m_choices; }
  void setUnit(std::size_t column, const std::string& unit);

 signals:
  /// The user decided something, or took it back.
  void chosen(const core::LayoutChoices& choices);

 private:
  using IsChosen = std::function<bool(const core::LayoutChoices&)>;
  using TakeBack = std::function<void(core::LayoutChoices&)>;
  struct Row {
    QLabel* label;
    QWidget* field;
    QToolButton* asGuessed;
    IsChosen isChosen;
    bool isOfText;  ///< only text has it
  };

  template <class T>
  void addRow(const QString& label, QWidget* field, std::optional<T> core::LayoutChoices::*part,
              bool isOfText = true);
  void addRow(const QString& label, QWidget* field, IsChosen isChosen, const TakeBack& takeBack,
              bool isOfText);
  QComboBox* combo(const char* name, const QString& label, const QStringList& words,
                   const std::function<void(int)>& take);
  CountEdit* lineBox(const char* name, const QString& label, int least, const QString& none,
                     std::optional<std::size_t> core::LayoutChoices::*part);
  void addTextRows();
  void addTimeRows();
  void takeTimeSource(int row);
  void takeRate(double rate_Hz);
  void showValues();
  void showRows();
  void tell();

  core::Layout m_layout;
  core::LayoutChoices m_choices;
  bool m_wantsRate = false;  ///< the sample rate is to be typed
  std::vector<Row> m_rows;
  QGridLayout* m_grid;
  QComboBox* m_encoding;
  QComboBox* m_separator;
  QComboBox* m_decimal;
  CountEdit* m_names;
  CountEdit* m_units;
  CountEdit* m_firstRow;
  QComboBox* m_timeFrom;
  QComboBox* m_form;
  QComboBox* m_order;
  QuantityEdit* m_rate;
  QLabel* m_unitsChanged;
};

}  // namespace ui
