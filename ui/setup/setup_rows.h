// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <functional>
#include <unordered_map>
#include <vector>

#include "ui/quantity_edit.h"
#include "ui/session.h"
#include "ui/setup/channel_value.h"

class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QVBoxLayout;
class QWidget;

namespace ui {

class FoldedGroup;

/// The layout that all groups of the form use.
///
/// Not a QFormLayout: in Qt 6.4 that one writes out of bounds when rows are hidden beside wrapped text.
QGridLayout* formIn(QWidget* group);

/// What a field is called: its object name, its label, and what changing it is called in the undo menu.
struct FieldName {
  QString object, label, edit;
  QString spoken = {};  ///< for assistive tools, where the label alone says too little
  QString hint = {};    ///< the tool tip of the row
};

/// Builds the rows of the set-up form, fills them from the chosen channel, and turns what is typed or
/// chosen into edits, one undo step each. A field that has no meaning for the channel is hidden and keeps
/// its value.
class SetupRows : public QObject {
  Q_OBJECT

 public:
  using Channel = core::Channel;
  using Shown = std::function<bool(const Channel&)>;
  using Words = std::function<QString(const Channel&)>;
  /// Why a text is not taken; empty: it is.
  using WhyNot = std::function<QString(const QString&)>;

  /// Groups are put into `groups`, one below the other.
  SetupRows(Session& session, QVBoxLayout* groups, QObject* parent);

  Session& session() const { return m_session; }

  QGridLayout* addGroup(const QString& title, const QString& objectName);
  FoldedGroup* addFoldedGroup(const QString& title, const QString& objectName);

  QuantityEdit* addQuantity(QGridLayout* form, const FieldName& name, core::UnitFamily family,
                            ChannelValue value, Shown shown = {});
  /// The same without a row: the caller places it. `row` is what is hidden with it, itself when null.
  QuantityEdit* makeQuantity(const FieldName& name, core::UnitFamily family, ChannelValue value,
                             Shown shown = {}, QWidget* row = nullptr);
  QLineEdit* addText(QGridLayout* form, const FieldName& name,
                     const std::function<std::string(const Channel&)>& get,
                     const std::function<void(Channel&, const std::string&)>& set, const Shown& shown = {},
                     const WhyNot& whyNot = {});
  /// One of `items`; without a label it takes the whole width.
  QComboBox* addChoice(QGridLayout* form, const FieldName& name, const QStringList& items,
                       const ChannelChoice& choice, const Shown& shown = {});
  QCheckBox* addSwitch(QGridLayout* form, const FieldName& name, const ChannelChoice& onOff,
                       const Shown& shown = {});
  /// A sentence that follows the channel; hidden while it has nothing to say.
  QLabel* addNote(QGridLayout* form, const QString& objectName, Words words);

  /// Puts `widget` below the others, with a label in front of it, or over the whole width without one.
  void addRow(QGridLayout* form, const QString& label, QWidget* widget);
  void showRow(QWidget* widget, bool shown);
  /// `refresher` is called with each channel to be shown, before the fields are filled.
  void onRefresh(std::function<void(const Channel&)> refresher);

  /// What is locked shows its value, to be read and copied, and takes no edits; `why` says why. Empty: not.
  void lock(const QString& why);
  /// A field that is not of the set-up is never locked.
  void keepOpen(QLineEdit* edit);
  /// A button that edits, which is not to be had while locked.
  void addEditing(QWidget* button) { m_editing.push_back(button); }

  void change(const QString& label, const std::function<void(Channel&)>& edit);
  void refresh(const Channel& channel);

 signals:
  void refused(const QString& reason);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  struct Field {
    QuantityEdit* edit;
    QWidget* row;
    std::function<std::optional<double>(const Channel&)> get;
    Shown shown;
  };

  void addTyped(QLineEdit* edit);

  Session& m_session;
  QVBoxLayout* m_groups;
  QString m_why;  ///< not edited now
  std::vector<Field> m_fields;
  std::vector<QLineEdit*> m_typed;  ///< fields
  std::vector<QWidget*> m_editing;  ///< choices, switches and buttons
  std::unordered_map<QWidget*, QLabel*> m_labels;
  std::vector<std::function<void(const Channel&)>> m_refreshers;
};

}  // namespace ui
