// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/choice_delegates.h"

namespace ui {

/// Offers the parts of the stock with their values; the id goes to the model. Another id may be typed.
class PartDelegate : public ChoiceDelegate {
  Q_OBJECT

 public:
  explicit PartDelegate(Session& session, QObject* parent = nullptr)
      : ChoiceDelegate(session, parent), m_session(session) {}

  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const override;
  void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;

 protected:
  QStringList choices(const core::Setup&) const override { return {}; }

 private:
  Session& m_session;
};

/// "AF-0104: 59.906 kΩ ±0.001 %, 2026-10-01 overdue".
QString partWords(const core::Resistor& resistor, core::Date today);
QString partWords(const core::DecadeBox& box, core::Date today);

}  // namespace ui
