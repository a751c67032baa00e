// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>
#include <functional>
#include <unordered_map>
#include <vector>

#include "ui/quantity_edit.h"
#include "ui/session.h"

class QCheckBox;
class QComboBox;
class QGridLayout;
class QGroupBox;
class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace ui {

/// Every field of the chosen channel's bridge, leads, instrument and limits. Fields that the
/// template does not use are hidden. Each accepted change is one undo step.
class SetupForm : public QScrollArea {
  Q_OBJECT

 public:
  explicit SetupForm(Session& session, QWidget* parent = nullptr);

  /// Brings the field with this object name into view and gives it the keyboard.
  void focusField(const QString& objectName);

 signals:
  void refused(const QString& reason);

 private:
  using Channel = core::Channel;
  using Getter = std::function<std::optional<double>(const Channel&)>;
  using Setter = std::function<void(Channel&, double)>;
  using Shown = std::function<bool(const Channel&)>;

  /// A quantity of the channel: where it is read from, where it goes, when it has a meaning.
  struct Field {
    QuantityEdit* edit;
    QWidget* row;
    Getter get;
    Shown shown;
  };
  struct FieldText {
    QString name, label, editLabel;
  };

  QGridLayout* addGroup(const QString& title, const QString& objectName);
  QuantityEdit* addField(QGridLayout* form, const FieldText& text, core::UnitFamily family, Getter get,
                         Setter set, Shown shown = {});
  void addText(QGridLayout* form, const QString& name, const QString& label, std::string Channel::*member);
  void addChannelGroup();
  void addBridgeGroup();
  void addGaugeFields(QGridLayout* form);
  void addRatingFields(QGridLayout* form);
  void addArmsGroup();
  void addLeadsGroup();
  void addInstrumentGroup();
  void addUnitFields(QGridLayout* form);
  void addLimitsGroup();
  void editWire(core::LeadRole role);
  /// Puts `widget` below the others, with a label in front of it, or over the whole width without one.
  void addRow(QGridLayout* form, const QString& label, QWidget* widget);
  void showRow(QWidget* widget, bool shown);
  void refresh();
  void refreshChoices(const Channel& channel);
  void change(const QString& label, const std::function<void(Channel&)>& edit);

  Session& m_session;
  QWidget* m_body;
  QVBoxLayout* m_layout;
  std::vector<Field> m_fields;
  std::unordered_map<QWidget*, QLabel*> m_labels;
  std::vector<std::function<void(const Channel&)>> m_refreshers;
  QComboBox* m_template = nullptr;
  QCheckBox* m_sixWire = nullptr;
  QComboBox* m_unit = nullptr;
  QLabel* m_about = nullptr;
  std::shared_ptr<const Channel> m_shown;
};

}  // namespace ui
