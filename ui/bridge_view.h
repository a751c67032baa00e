// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointer>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "ui/bridge/bridge_canvas.h"
#include "ui/bridge/bridge_look.h"
#include "ui/bridge/bridge_move.h"
#include "ui/bridge/bridge_parts.h"
#include "ui/session.h"

class QAction;
class QLabel;
class QMenu;
class QToolButton;

namespace ui {

class PartEditor;
struct PartField;

/// The chosen channel's bridge at the chosen step, and the place where it is edited: parts are selected,
/// their values typed in place, added, removed, and moved to other places by mouse or keyboard. While
/// something is moved, output, voltages, currents and the sentence follow; the document changes on release,
/// as one undo step. A closed check shows the set-up it was judged by, which is not edited; where that is not
/// the plan, the drawing says so.
///
/// Mouse: click selects, with Ctrl or Shift more than one; a drag moves what is movable, else it selects what
/// it surrounds (Shift: also in an enlarged drawing, which it moves otherwise). Double click edits.
/// Keys: Tab walks the parts. Arrows move the part that has the keyboard, Enter keeps it there, Escape takes
/// it back. With Ctrl they move the drawing. Enter or F2 edits, Ctrl+Enter shows the field in the set-up,
/// Insert offers what can be added, Delete removes, Ctrl+Space selects one part more, Space chooses the first
/// step that closes the shunt. + - 0 zoom, as the wheel with Ctrl does. Menu key or Shift+F10: all of it.
class BridgeView : public BridgeCanvas {
  Q_OBJECT

 public:
  explicit BridgeView(Session& session, QWidget* parent = nullptr);

  /// The circuit and its state in sentences; also the accessible description.
  QString description() const final;
  /// What is shown now: while something is moved, what would come of it. None in a document without channels.
  const BridgeState* stateNow() const;
  /// What is being moved.
  const std::optional<BridgeMove>& move() const { return m_move; }
  /// What is painted: while something is at a place where it may be dropped, the bridge as it would be then.
  const BridgePicture& shownPicture() const override;
  /// What has the keyboard.
  const std::optional<BridgeSpot>& focus() const { return m_focus; }
  /// What an edit is for: what was selected, else what has the keyboard.
  std::vector<BridgePart> selected() const;

  /// Everything that can be done here, with its keys, for the context menu and that of the window.
  void fillMenu(QMenu* menu);
  /// What can be added at the selected parts; filled whenever it is opened.
  QMenu* addMenu() const { return m_addMenu; }

  void setLook(const BridgeLook& look);
  const BridgeLook& look() const { return m_look; }

  /// As SVG, PNG or PDF by the ending of `path`. False when not written.
  bool exportTo(const QString& path);

  QSize sizeHint() const override { return {640, 470}; }
  QSize minimumSizeHint() const override { return {300, 220}; }

 public slots:
  void editSelected();
  void showInSetup();
  void removeSelected();
  void duplicateSelected();
  /// The selected parts, or everything, as the template has it.
  void alignSelected();
  void selectAll();
  void copyPicture();
  /// Asks for a name first.
  void exportPicture();
  /// Asks for a printer first.
  void print();

 signals:
  /// `stateNow` is another.
  void stateShown();
  /// The user wants to see this part's field in the set-up.
  void partActivated(const ui::BridgePart& part);
  void refused(const QString& reason);
  void said(const QString& sentence);

 protected:
  QRectF room() const override;
  void paintUnder(QPainter& painter) override;
  void paintOver(QPainter& painter) override;

  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  bool focusNextPrevChild(bool next) override;

 private:
  // The setup comes from the session alone.
  using BridgeCanvas::setFlowStyle;
  using BridgeCanvas::setSymbols;
  using BridgeCanvas::showNothing;
  using BridgeCanvas::showSetup;

  const core::Setup& setup() const { return m_channel->setup; }

  // bridge_view.cpp: what is shown
  void buildTexts();
  bool isLow() const;
  void sizeWords();
  void keepRoomForWords();
  void follow();
  void forgetWhatIsGone();
  QString noticeNow() const;
  void showTexts();
  void showTexts(const QString& title, const QString& outcome, const QColor& colour, bool known = false);
  QString structureWords() const;
  void showSentence();
  BridgeSpot asShown(BridgeSpot spot) const;
  /// Says on the spot and to whoever listens why nothing was done.
  void refuse(const QString& what, const QString& reason);

  // bridge_view_mouse.cpp
  void hover(QPointF at);
  void select(const BridgeSpot& spot, Qt::KeyboardModifiers modifiers);
  void dragTo(QPointF at, bool extend);
  void takeBand();

  // bridge_view_keys.cpp
  bool isOurs(const QKeyEvent& event) const;
  bool panByKey(int key);
  bool walk(int direction, bool round);
  void setFocusSpot(std::optional<BridgeSpot> spot);
  void toggle(const BridgePart& part);
  void stepMove(int direction);
  void selectStepOf(std::size_t shunt);

  // bridge_view_edits.cpp
  void moveTo(const BridgeSpot& grip, std::optional<MoveTarget> target);
  void endMove(bool keep);
  void openEditor(const std::vector<BridgePart>& parts);
  void keepValues(const std::vector<PartField>& fields,
                  const std::map<std::size_t, std::optional<double>>& values);
  int editedSize() const;
  void closeEditor();
  void editWire(const std::vector<BridgePart>& leads);
  void add(const QString& name);
  /// Tells where the shunts from `first` on were put.
  void sayWhere(std::size_t first);
  /// Says why where there is no channel.
  bool hasChannel();
  /// Says why where what is shown is not edited; `what` was not done then.
  bool mayEdit(const QString& what);

  // bridge_view_menu.cpp
  void buildActions();
  void buildLookMenus();
  QAction* action(const QString& name, const QString& text, const QList<QKeySequence>& keys,
                  const std::function<void()>& act);
  void fillAddMenu();
  void allowWhatActs();
  void popUp(QMenu* menu, std::optional<QPoint> at);

  Session& m_session;
  QLabel* m_title;
  QToolButton* m_more;  ///< the menu, for those who look for a button
  QLabel* m_leaks;      ///< that a floating structure leads nowhere; hidden without
  QLabel* m_notice;     ///< hidden while there is nothing to notice
  QLabel* m_outcome;
  QLabel* m_sentence;          ///< why the output goes where it goes
  QWidget* m_words = nullptr;  ///< holds both, and their room
  QMenu* m_menu;
  QMenu* m_addMenu;
  QMenu* m_symbolMenu;
  QMenu* m_currentMenu;
  QList<QAction*> m_editActions, m_viewActions, m_shareActions;
  BridgeLook m_look;
  std::shared_ptr<const core::Channel> m_channel;
  std::optional<std::size_t> m_step;
  bool m_isClosed = false;  ///< shown as a closed check was judged
  std::optional<BridgeSpot> m_focus;
  std::vector<BridgePart> m_selected;  ///< of several; one alone is what has the keyboard
  std::optional<BridgeMove> m_move;
  std::unique_ptr<BridgePicture> m_movePicture;  ///< of a legal move
  QPointer<PartEditor> m_editor;
  QPointF m_pointer;  ///< while the mouse moves a part, in the drawing
  bool m_byMouse = false;
  std::optional<BridgeSpot> m_pressed;
  std::optional<QPointF> m_pressedAt;  ///< while the left button is down
  std::optional<QRectF> m_band;        ///< what is surrounded, in the drawing
};

}  // namespace ui
