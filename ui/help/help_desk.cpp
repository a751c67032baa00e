// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/help/help_desk.h"

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QKeyEvent>
#include <QPushButton>
#include <QWidget>

#include "ui/help/help_places.h"
#include "ui/help/manual_window.h"

namespace ui {

HelpDesk::HelpDesk(QWidget& window, QAction& here) : QObject(&window), m_window(window), m_here(here) {
  qApp->installEventFilter(this);
}

ManualWindow* HelpDesk::manual() const { return m_overDialog ? m_overDialog : m_manual; }

/// A modal dialog keeps the input from every window but its own: it gets a manual of its own, which goes
/// with it.
ManualWindow& HelpDesk::open() {
  QPointer<ManualWindow>* which = &m_manual;
  QWidget* owner = &m_window;
  if (QWidget* dialog = QApplication::activeModalWidget(); dialog && dialog != &m_window) {
    which = &m_overDialog;
    owner = dialog;
    if (m_overDialog && m_overDialog->parentWidget() != dialog) delete m_overDialog;
  }
  if (!*which) *which = new ManualWindow(owner);
  (*which)->show();
  (*which)->raise();
  (*which)->activateWindow();
  return **which;
}

void HelpDesk::showManual() { open(); }

void HelpDesk::showAddress(const QString& address) {
  ManualWindow& shown = open();
  shown.open(address);
}

void HelpDesk::showHere() { showAddress(helpPlaceOf(QApplication::focusWidget())); }

/// A button to the page of one of our dialogs, among its others. Before the dialog takes its size.
void HelpDesk::giveButton(QDialog& dialog) {
  auto* box = dialog.findChild<QDialogButtonBox*>();
  if (!box || box->button(QDialogButtonBox::Help) || helpPlaceOf(&dialog) == helpPlaceOf(nullptr)) return;
  QPushButton* help = box->addButton(QDialogButtonBox::Help);
  help->setText(tr("Help"));
  help->setObjectName("dialogHelp");
  help->setAutoDefault(false);
  connect(help, &QPushButton::clicked, this, [this, &dialog] { showAddress(helpPlaceOf(&dialog)); });
}

/// The command itself works in the window; a dialog does not know it.
bool HelpDesk::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Polish && QByteArray(watched->metaObject()->className()).startsWith("ui::"))
    if (auto* dialog = qobject_cast<QDialog*>(watched)) giveButton(*dialog);
  if (event->type() != QEvent::KeyPress || !watched->isWidgetType()) return false;
  const auto* widget = static_cast<const QWidget*>(watched);
  const auto* key = static_cast<const QKeyEvent*>(event);
  const QWidget* window = widget->window();
  if (window == &m_window || qobject_cast<const ManualWindow*>(window)) return false;
  const QKeySequence pressed(key->keyCombination());
  if (!m_here.shortcuts().contains(pressed)) return false;
  showAddress(helpPlaceOf(widget));
  return true;
}

}  // namespace ui
