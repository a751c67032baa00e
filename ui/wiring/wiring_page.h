// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <memory>
#include <optional>
#include <vector>

#include "core/wiring/wiring_rules.h"
#include "ui/session.h"
#include "ui/sheet_view.h"
#include "ui/wiring/jumper_model.h"
#include "ui/wiring/pin_model.h"

class QComboBox;
class QLabel;
class QLayout;
class QListWidget;
class QScrollArea;
class QStackedWidget;
class QToolButton;

namespace ui {

class WiringDrawing;

/// Pins and jumpers of the chosen channel, their drawing and what is wrong with them. Shows the jumpers of
/// one shunt at a time: the first that the chosen step closes, or another that the user chooses.
class WiringPage : public QWidget {
  Q_OBJECT

 public:
  explicit WiringPage(Session& session, QWidget* parent = nullptr);
  SheetView& table() { return *m_table; }
  SheetView& jumpers() { return *m_jumperTable; }
  WiringDrawing& drawing() { return *m_drawing; }
  std::optional<std::size_t> shunt() const { return m_shunt; }
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
  QToolButton* tool(const char* name, const QString& text, const QString& tip, void (WiringPage::*act)());
  QWidget* pinPart();
  QWidget* jumperPart();
  QWidget* drawingPart();
  QWidget* faultPart();
  SheetView* sheet(const char* name, const QString& title, SheetModel& model);

  void follow();
  void followStep();
  void takeChannel(std::shared_ptr<const core::Channel> channel);
  void showShunt(std::optional<std::size_t> shunt);
  void showFaults();
  void showDrawing();
  void showMessages();
  QString jumperMessage() const;
  void chooseShunt(int row);
  void choosePin(std::size_t pin);
  void chooseFault(int row);

  bool hasChannel();
  bool hasShunt();
  int pinRow() const;
  void addPin();
  void removePin();
  void pinUp();
  void pinDown();
  void movePin(int by);
  void usualPins();
  void addJumper();
  void removeJumper();
  void workOut();
  void workOutAll();
  void print();

  Session& m_session;
  PinModel m_pinModel;
  JumperModel m_jumperModel;
  std::shared_ptr<const core::Channel> m_channel;  ///< what is shown
  std::vector<core::WiringFault> m_faults;
  std::optional<std::size_t> m_shunt;
  std::optional<std::size_t> m_step;   ///< last seen chosen
  std::optional<std::size_t> m_fault;  ///< chosen

  QStackedWidget* m_stack;
  QLabel* m_message;
  SheetView* m_table = nullptr;
  SheetView* m_jumperTable = nullptr;
  QComboBox* m_shunts;
  QLabel* m_jumperMessage;
  QStackedWidget* m_picture;
  QScrollArea* m_scroll;
  WiringDrawing* m_drawing;
  QLabel* m_drawingMessage;
  QLabel* m_drawingTitle;
  QLabel* m_faultTitle;
  QStackedWidget* m_faultStack;
  QLabel* m_faultMessage;
  QListWidget* m_faultList;
};

}  // namespace ui
