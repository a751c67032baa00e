// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <functional>

#include "core/circuit/lead.h"
#include "core/units/notation.h"

class QCheckBox;
class QFormLayout;
class QLabel;

namespace ui {

class QuantityEdit;

/// A lead from length, size and temperature of a solid copper wire; shows the resistance at once.
class WireDialog : public QDialog {
  Q_OBJECT

 public:
  explicit WireDialog(const core::Lead& lead, QWidget* parent = nullptr);

  const core::CopperWire& wire() const { return m_wire; }
  bool forAllLeads() const;

  /// Stays open while a field holds text that is no quantity.
  void accept() override;

 private:
  QuantityEdit* addField(const QString& name, const QString& label, core::UnitFamily family, double value,
                         const std::function<void(double)>& set);
  void showResult(const QString& problem = {});

  core::CopperWire m_wire{core::Length(5), core::awgSection(26), core::Temperature(20)};
  QFormLayout* m_form;
  QLabel* m_result;
  QCheckBox* m_all;
};

}  // namespace ui
