// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <memory>
#include <optional>
#include <vector>

#include "core/wiring/ohm_diagnosis.h"
#include "ui/session.h"
#include "ui/sheet_view.h"
#include "ui/wiring/latest_work.h"
#include "ui/wiring/ohm_fault_model.h"
#include "ui/wiring/ohm_model.h"

class QComboBox;
class QLabel;
class QLayout;
class QListWidget;
class QStackedWidget;

namespace ui {

class QuantityEdit;

/// What an ohmmeter must read with the excitation off, what it did read, and which fault fits. Another step
/// shows the state in which the first shunt that it closes is closed. What is expected and which fault fits
/// are worked out on a worker.
class OhmmeterPage : public QWidget {
  Q_OBJECT

 public:
  explicit OhmmeterPage(Session& session, QWidget* parent = nullptr);
  SheetView& table() { return *m_table; }
  SheetView& faults() { return *m_faultTable; }
  const core::OhmmeterConditions& conditions() const { return m_conditions; }
  /// Whether a worker is at it; what is shown may be of before.
  bool isWorking() const { return m_expecting.isRunning() || m_diagnosing.isRunning(); }
  /// Writes the sheet of the chosen channel as PDF. False when not written; the reason is refused.
  bool writeSheet(const QString& path);

 signals:
  void refused(const QString& reason);
  /// Something was done that does not show by itself.
  void said(const QString& sentence);

 protected:
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  using Expectations = core::Result<std::vector<core::OhmExpectation>>;
  using Faults = core::Result<std::vector<core::OhmFault>>;
  enum class Points { OnSheet, Terminals, All };
  /// What a table of expectations depends on.
  struct Subject {
    core::Setup setup;
    core::WiringState state;
    Points points = Points::OnSheet;
    core::OhmmeterConditions conditions;

    friend bool operator==(const Subject&, const Subject&) = default;
  };

  QLayout* conditionLine();
  QLayout* meterFields();
  QWidget* statePart();
  QWidget* readingPart();
  QWidget* faultPart();
  QuantityEdit* field(const char* name, core::UnitFamily family, double value, const QString& title);

  void follow();
  void followStep();
  void fillStates();
  void changeConditions(const core::OhmmeterConditions& conditions);
  void expect();
  void takeExpectations(const Expectations& expectations);
  void diagnose();
  void takeFaults(const Faults& faults);
  void showRows(const QString& insteadOfThem);
  void clearReadings();
  void print();
  void colour();

  Session& m_session;
  OhmModel m_model;
  OhmFaultModel m_faultModel;
  core::OhmmeterConditions m_conditions;
  std::shared_ptr<const core::Channel> m_channel;  ///< what is shown
  std::vector<core::WiringState> m_states;         ///< one a row of the list
  core::WiringState m_state;
  std::optional<std::size_t> m_step;  ///< last seen chosen
  std::optional<Subject> m_subject;   ///< what is on view, or being worked out
  std::vector<core::OhmReading> m_diagnosed;
  std::size_t m_points = 0, m_shownPoints = 0;
  LatestWork<Expectations> m_expecting;
  LatestWork<Faults> m_diagnosing;

  QStackedWidget* m_stack;
  QLabel* m_message;
  QLabel* m_caution;
  QComboBox* m_instrument;
  QListWidget* m_stateList;
  QLabel* m_stateTitle;
  QComboBox* m_filter;
  QStackedWidget* m_rows;
  QLabel* m_rowMessage;
  SheetView* m_table = nullptr;
  QLabel* m_diagnosis;
  SheetView* m_faultTable = nullptr;
};

}  // namespace ui
