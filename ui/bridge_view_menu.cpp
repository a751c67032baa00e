// SPDX-License-Identifier: GPL-3.0-or-later
// What can be done, under which key: the context menu, that of the window and the button share the actions.
#include <QAction>
#include <QActionGroup>
#include <QContextMenuEvent>
#include <QMenu>
#include <QToolButton>
#include <algorithm>

#include "ui/as_typed.h"
#include "ui/bridge/part_edits.h"
#include "ui/bridge_view.h"

namespace ui {

/// Keys count only while the drawing itself has the keyboard: fields and tables have the same ones.
QAction* BridgeView::action(const QString& name, const QString& text, const QList<QKeySequence>& keys,
                            const std::function<void()>& act) {
  auto* made = new QAction(text, this);
  made->setObjectName(name);
  made->setShortcuts(keys);
  made->setShortcutContext(Qt::WidgetShortcut);
  connect(made, &QAction::triggered, this, act);
  addAction(made);
  return made;
}

void BridgeView::buildActions() {
  m_addMenu = new QMenu(tr("&Add"), this);
  m_addMenu->setObjectName("bridgeAdd");
  m_addMenu->setToolTipsVisible(true);
  connect(m_addMenu, &QMenu::aboutToShow, this, &BridgeView::fillAddMenu);
  action("bridgeAddHere", tr("Add…"), {Qt::Key_Insert}, [this] {
    if (!m_isClosed || mayEdit(tr("Nothing was added"))) popUp(m_addMenu, std::nullopt);
  });
  m_editActions = {
      action("bridgeEdit", tr("&Edit the value"), {Qt::Key_F2, Qt::Key_Return, Qt::Key_Enter},
             [this] { editSelected(); }),
      action("bridgeShowField", tr("&Show the field in the set-up"),
             {Qt::CTRL | Qt::Key_Return, Qt::CTRL | Qt::Key_Enter}, [this] { showInSetup(); }),
      action("bridgeRemove", tr("&Remove"), {Qt::Key_Delete}, [this] { removeSelected(); }),
      action("bridgeDuplicate", tr("Duplicate s&hunt"), {Qt::CTRL | Qt::SHIFT | Qt::Key_D},
             [this] { duplicateSelected(); }),
      action("bridgeAlign", tr("A&lign to template"), {Qt::CTRL | Qt::SHIFT | Qt::Key_L},
             [this] { alignSelected(); }),
      action("bridgeSelectAll", tr("Selec&t all"), {QKeySequence::SelectAll}, [this] { selectAll(); })};
  m_viewActions = {action("bridgeZoomIn", tr("Zoom &in"), {Qt::Key_Plus}, [this] { zoomIn(); }),
                   action("bridgeZoomOut", tr("Zoom &out"), {Qt::Key_Minus}, [this] { zoomOut(); }),
                   action("bridgeFit", tr("&Fit"), {Qt::Key_0}, [this] { fit(); })};
  m_shareActions = {
      action("bridgeCopyPicture", tr("&Copy as picture"), {QKeySequence::Copy}, [this] { copyPicture(); }),
      action("bridgeExport", tr("E&xport picture…"), {Qt::CTRL | Qt::Key_E}, [this] { exportPicture(); }),
      action("bridgePrint", tr("Pri&nt…"), {Qt::CTRL | Qt::ALT | Qt::Key_P}, [this] { print(); })};
  buildLookMenus();
  m_menu = new QMenu(this);
  m_menu->setObjectName("bridgeMenu");
  fillMenu(m_menu);
  m_more->setMenu(m_menu);
}

void BridgeView::buildLookMenus() {
  const auto choice = [this](QMenu* menu, QActionGroup* group, const char* name, const QString& text,
                             const std::function<void(BridgeLook&)>& set) {
    QAction* made = menu->addAction(text);
    made->setObjectName(name);
    made->setCheckable(true);
    group->addAction(made);
    connect(made, &QAction::triggered, this, [this, set] {
      BridgeLook look = m_look;
      set(look);
      setLook(look);
      rememberBridgeLook(look);
    });
  };
  m_symbolMenu = new QMenu(tr("S&ymbols"), this);
  auto* symbols = new QActionGroup(this);
  choice(m_symbolMenu, symbols, "symbolsIec", tr("&IEC 60617: rectangles"),
         [](BridgeLook& look) { look.symbols = Symbols::Iec60617; });
  choice(m_symbolMenu, symbols, "symbolsIeee", tr("I&EEE 315: zigzags"),
         [](BridgeLook& look) { look.symbols = Symbols::Ieee315; });
  m_currentMenu = new QMenu(tr("C&urrents"), this);
  auto* currents = new QActionGroup(this);
  choice(m_currentMenu, currents, "currentsOff", tr("&Not shown"),
         [](BridgeLook& look) { look.currents = FlowStyle::Off; });
  choice(m_currentMenu, currents, "currentsWidth", tr("By &width"),
         [](BridgeLook& look) { look.currents = FlowStyle::Width; });
  choice(m_currentMenu, currents, "currentsDots", tr("By moving &dots"),
         [](BridgeLook& look) { look.currents = FlowStyle::Dots; });
}

void BridgeView::fillMenu(QMenu* menu) {
  menu->addActions(m_editActions);
  menu->insertMenu(m_editActions[2], m_addMenu);
  menu->addSeparator();
  menu->addMenu(m_symbolMenu);
  menu->addMenu(m_currentMenu);
  menu->addActions(m_viewActions);
  menu->addSeparator();
  menu->addActions(m_shareActions);
  connect(menu, &QMenu::aboutToShow, this, &BridgeView::allowWhatActs);
  // Their keys still say why nothing was done.
  connect(menu, &QMenu::aboutToHide, this, [this] {
    for (QAction* each : m_editActions) each->setEnabled(true);
  });
}

/// In a menu that is open.
void BridgeView::allowWhatActs() {
  const std::vector<BridgePart> parts = selected();
  const bool isShunted = std::any_of(parts.begin(), parts.end(), [](const BridgePart& part) {
    return part.kind == BridgePart::Kind::Shunt;
  });
  m_addMenu->menuAction()->setEnabled(!m_isClosed);
  for (QAction* each : m_editActions) {
    const bool edits = each->objectName() != "bridgeShowField" && each->objectName() != "bridgeSelectAll";
    if (m_isClosed && edits) {
      each->setEnabled(false);
      continue;
    }
    if (each->objectName() == "bridgeRemove")
      each->setEnabled(picture() && !removalOf(*m_channel, parts).undo.isEmpty());
    if (each->objectName() == "bridgeDuplicate") each->setEnabled(picture() && isShunted);
  }
}

void BridgeView::fillAddMenu() {
  m_addMenu->clear();
  if (!picture()) return;
  for (const PartAddition& addition : additionsAt(*m_channel, *picture(), selected())) {
    QAction* made = m_addMenu->addAction(addition.text);
    made->setObjectName(addition.name);
    made->setEnabled(addition.refusal.isEmpty());
    made->setToolTip(asTyped(addition.refusal));
    connect(made, &QAction::triggered, this, [this, name = addition.name] { add(name); });
  }
}

void BridgeView::setLook(const BridgeLook& look) {
  m_look = look;
  setSymbols(look.symbols);
  setFlowStyle(look.currents);
  m_symbolMenu->actions()[look.symbols == Symbols::Ieee315 ? 1 : 0]->setChecked(true);
  m_currentMenu->actions()[static_cast<int>(look.currents)]->setChecked(true);
  if (picture()) showTexts();
}

void BridgeView::contextMenuEvent(QContextMenuEvent* event) {
  std::optional<QPoint> at;
  if (event->reason() == QContextMenuEvent::Mouse) {
    at = event->globalPos();
    const auto spot = picture() ? spotAt(*picture(), toDrawing(event->pos())) : std::nullopt;
    if (spot) select(*spot, {});
  }
  popUp(m_menu, at);
}

/// At the pointer, else beside what has the keyboard.
void BridgeView::popUp(QMenu* menu, std::optional<QPoint> at) {
  if (m_move) endMove(false);
  if (menu->isVisible()) return;
  QPointF beside = room().center();
  if (picture() && m_focus) beside = toWidget(ringOf(*picture(), *m_focus).boundingRect().bottomRight());
  menu->popup(at.value_or(mapToGlobal(beside.toPoint())));
  if (menu != m_addMenu) return;
  // So that Enter takes it.
  const QList<QAction*> actions = menu->actions();
  const auto first =
      std::find_if(actions.begin(), actions.end(), [](const QAction* each) { return each->isEnabled(); });
  if (first != actions.end()) menu->setActiveAction(*first);
}

}  // namespace ui
