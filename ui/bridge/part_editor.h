// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <map>
#include <optional>
#include <vector>

#include "ui/bridge/part_fields.h"

class QGridLayout;

namespace ui {

class QuantityEdit;

/// The numbers of a part, edited beside it in the drawing. Enter keeps them, Escape drops them, leaving
/// the fields keeps them too. Text that says no quantity stays for mending, with the reason beside its field.
class PartEditor : public QFrame {
  Q_OBJECT

 public:
  /// `heading` says whose numbers they are. There must be a field.
  PartEditor(const core::Channel& channel, std::vector<PartField> fields, const QString& heading,
             QWidget* parent);

  /// Beside the numbers; for leads: from length and size.
  void offerWire();
  /// Beside `part`, in the parent's coordinates, so that all of it is inside the parent and covers as little
  /// of the part as can be.
  void showBeside(const QRect& part);

  /// Tells `kept` unless a text is refused.
  void keep();
  void drop();

 signals:
  /// Of the fields that were changed, by their index; none: the number was taken away.
  void kept(const std::map<std::size_t, std::optional<double>>& values);
  void dropped();
  void wireWanted();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void addField(const core::Channel& channel, const PartField& field, std::size_t index);
  void placeItself();
  void leaveIfOutside(QWidget* now);

  std::vector<QuantityEdit*> m_edits;
  std::map<std::size_t, std::optional<double>> m_values;
  QGridLayout* m_grid;
  QRect m_place;
  bool m_done = false;
};

}  // namespace ui
