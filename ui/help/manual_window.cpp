// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/help/manual_window.h"

#include <QAction>
#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPrintDialog>
#include <QPrinter>
#include <QScreen>
#include <QSplitter>
#include <QStackedWidget>
#include <QTextDocument>
#include <QToolButton>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <functional>

#include "ui/help/manual.h"
#include "ui/help/manual_browser.h"
#include "ui/parts.h"
#include "ui/printed_file.h"

namespace ui {
namespace {

constexpr int addressRole = Qt::UserRole;
constexpr int zoomByKey = 10;
constexpr auto firstPage = "start.md";

}  // namespace

ManualWindow::ManualWindow(QWidget* parent) : QWidget(parent, Qt::Window), m_language(manualLanguage()) {
  setObjectName("manualWindow");
  setWindowTitle(tr("Manual"));
  const QSize room = screen()->availableGeometry().size() - QSize(40, 80);
  resize(QSize(980, 720).boundedTo(room.isEmpty() ? QSize(980, 720) : room));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(6, 6, 6, 6);
  m_page = new ManualBrowser;
  column->addWidget(buildTools());
  auto* parts = new QSplitter;
  parts->addWidget(buildLeft());
  parts->addWidget(m_page);
  parts->setChildrenCollapsible(false);
  parts->setStretchFactor(1, 1);
  parts->setSizes({250, width() - 250});
  column->addWidget(parts, 1);
  connect(m_page, &ManualBrowser::addressWanted, this, &ManualWindow::follow);
  connect(m_page, &ManualBrowser::zoomed, this,
          [this] { m_zoomed->setText(tr("%1 %").arg(m_page->zoom())); });
  fillContents();
  go(firstPage);
}

QString ManualWindow::address() const { return m_at < 0 ? QString() : m_visited[m_at]; }

QAction* ManualWindow::addKey(const QString& name, const QString& text, const QList<QKeySequence>& keys,
                              const std::function<void()>& act) {
  auto* action = new QAction(text, this);
  action->setObjectName(name);
  action->setShortcuts(keys);
  connect(action, &QAction::triggered, this, act);
  addAction(action);
  return action;
}

QToolButton* ManualWindow::button(QAction* action, const QString& tip) {
  auto* made = toolButton(action->objectName() + "Button", action->text(), {});
  made->setDefaultAction(action);
  action->setToolTip(tr("%1 (%2)").arg(tip, action->shortcut().toString(QKeySequence::NativeText)));
  made->setToolButtonStyle(Qt::ToolButtonTextOnly);
  return made;
}

QWidget* ManualWindow::buildTools() {
  auto* tools = new QWidget;
  auto* line = new QHBoxLayout(tools);
  line->setContentsMargins(0, 0, 0, 0);
  m_back = addKey("manualBack", tr("Back"), {QKeySequence(Qt::ALT | Qt::Key_Left)}, [this] { back(); });
  m_forward =
      addKey("manualForward", tr("Forward"), {QKeySequence(Qt::ALT | Qt::Key_Right)}, [this] { forward(); });
  auto* home =
      addKey("manualHome", tr("Start"), {QKeySequence(Qt::ALT | Qt::Key_Home)}, [this] { go(firstPage); });
  auto* smaller = addKey("manualSmaller", "−", {QKeySequence(Qt::CTRL | Qt::Key_Minus)},
                         [this] { m_page->setZoom(m_page->zoom() - zoomByKey); });
  auto* usual = addKey("manualUsual", tr("%1 %").arg(100), {QKeySequence(Qt::CTRL | Qt::Key_0)},
                       [this] { m_page->setZoom(100); });
  auto* larger = addKey("manualLarger", "+",
                        {QKeySequence(Qt::CTRL | Qt::Key_Plus), QKeySequence(Qt::CTRL | Qt::Key_Equal)},
                        [this] { m_page->setZoom(m_page->zoom() + zoomByKey); });
  auto* copyIt = addKey("manualCopy", tr("Copy"), {QKeySequence::Copy}, [this] { copy(); });
  auto* printIt = addKey("manualPrint", tr("Print…"), {QKeySequence::Print}, [this] { print(); });
  addKey("manualFind", tr("Search"), {QKeySequence::Find}, [this] {
    m_search->setFocus();
    m_search->selectAll();
  });
  addKey("manualNext", tr("Next mark"), {QKeySequence(Qt::Key_F3)}, [this] { m_page->goToMark(1); });
  addKey("manualPrevious", tr("Mark before"), {QKeySequence(Qt::SHIFT | Qt::Key_F3)},
         [this] { m_page->goToMark(-1); });
  addKey("manualOtherPart", tr("Contents and page"), {QKeySequence(Qt::Key_F6)},
         [this] { m_page->hasFocus() ? m_left->currentWidget()->setFocus() : m_page->setFocus(); });
  line->addWidget(button(m_back, tr("The page before")));
  line->addWidget(button(m_forward, tr("The page after")));
  line->addWidget(button(home, tr("The first page")));
  line->addStretch();
  line->addWidget(button(smaller, tr("Smaller letters")));
  m_zoomed = button(usual, tr("Letters of the usual size"));
  m_zoomed->setAccessibleName(tr("Usual size of letters"));
  line->addWidget(m_zoomed);
  line->addWidget(button(larger, tr("Larger letters")));
  line->addWidget(button(copyIt, tr("What is selected, else the whole page")));
  line->addWidget(button(printIt, tr("This page")));
  return tools;
}

QWidget* ManualWindow::buildLeft() {
  auto* left = new QWidget;
  auto* column = new QVBoxLayout(left);
  column->setContentsMargins(0, 0, 0, 0);
  m_search = new QLineEdit;
  m_search->setObjectName("manualSearch");
  m_search->setAccessibleName(tr("Search the manual"));
  m_search->setPlaceholderText(tr("Search the manual"));
  m_search->setClearButtonEnabled(true);
  connect(m_search, &QLineEdit::textChanged, this, &ManualWindow::showHits);
  connect(m_search, &QLineEdit::returnPressed, this, [this] {
    if (m_hits->count() == 0) return;
    m_hits->setCurrentRow(std::max(0, m_hits->currentRow()));
    m_page->setFocus();
  });
  column->addWidget(m_search);
  m_found = plainLabel("manualFound");
  m_found->hide();
  column->addWidget(m_found);
  m_contents = new QTreeWidget;
  m_contents->setObjectName("manualContents");
  m_contents->setAccessibleName(tr("Contents of the manual"));
  m_contents->setHeaderHidden(true);
  connect(m_contents, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* item) {
    if (!item) return;
    if (const QString page = item->data(0, addressRole).toString(); !page.isEmpty()) go(page);
  });
  m_hits = new QListWidget;
  m_hits->setObjectName("manualHits");
  m_hits->setAccessibleName(tr("Places found in the manual"));
  m_hits->setWordWrap(true);
  m_hits->setAlternatingRowColors(true);
  connect(m_hits, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* item) {
    if (!item) return;
    go(item->data(addressRole).toString());
    m_page->markWords(manualSearchWords(m_search->text()));
    m_page->goToMark(1);
  });
  m_left = new QStackedWidget;
  m_left->addWidget(m_contents);
  m_left->addWidget(m_hits);
  column->addWidget(m_left, 1);
  return left;
}

void ManualWindow::fillContents() {
  for (const ManualGroup& group : manualContents(m_language)) {
    auto* heading = new QTreeWidgetItem(m_contents, {group.title});
    for (const ManualGroup::Entry& entry : group.pages)
      (new QTreeWidgetItem(heading, {entry.title}))->setData(0, addressRole, entry.id + ".md");
    QFont bold = heading->font(0);
    bold.setBold(true);
    heading->setFont(0, bold);
    heading->setExpanded(true);
  }
}

/// Looks while one types: the whole manual is some hundred sections.
void ManualWindow::showHits(const QString& words) {
  const bool searching = !manualSearchWords(words).empty();
  const QSignalBlocker quiet(m_hits);
  m_hits->clear();
  for (const ManualHit& hit : searchManual(words, m_language)) {
    const QString place = hit.heading == hit.title ? hit.title : tr("%1: %2").arg(hit.title, hit.heading);
    auto* item = new QListWidgetItem(place + "\n" + hit.excerpt, m_hits);
    item->setData(addressRole, hit.address);
  }
  m_found->setVisible(searching);
  m_found->setText(m_hits->count() == 0 ? tr("Nothing found. Try fewer or other words.")
                                        : tr("%n place(s) found", nullptr, m_hits->count()));
  m_left->setCurrentWidget(searching ? static_cast<QWidget*>(m_hits) : m_contents);
  if (!searching) m_page->markWords({});
}

void ManualWindow::search(const QString& words) {
  m_search->setText(words);
  m_search->setFocus();
}

bool ManualWindow::open(const QString& address) {
  if (!isInManual(address)) return false;
  m_search->clear();
  go(address);
  return true;
}

/// A link that leads nowhere in the manual does nothing.
void ManualWindow::follow(const QString& address) {
  if (address.startsWith('#'))
    go(manualAddress(this->address()).page + ".md" + address);
  else
    go(address);
}

void ManualWindow::go(const QString& address) {
  if (!isInManual(address)) return;
  if (address != this->address()) {
    m_visited = m_visited.mid(0, m_at + 1);
    m_visited << address;
    m_at = m_visited.size() - 1;
  }
  showHere();
}

void ManualWindow::back() {
  if (m_at <= 0) return;
  --m_at;
  showHere();
}

void ManualWindow::forward() {
  if (m_at + 1 >= m_visited.size()) return;
  ++m_at;
  showHere();
}

void ManualWindow::showHere() {
  m_page->showAddress(address(), m_language);
  m_page->setAccessibleDescription(m_page->title());
  setWindowTitle(tr("%1 – manual").arg(m_page->title()));
  m_back->setEnabled(m_at > 0);
  m_forward->setEnabled(m_at + 1 < m_visited.size());
  const QSignalBlocker quiet(m_contents);
  const QString page = manualAddress(address()).page + ".md";
  for (int group = 0; group < m_contents->topLevelItemCount(); ++group)
    for (int row = 0; row < m_contents->topLevelItem(group)->childCount(); ++row)
      if (QTreeWidgetItem* item = m_contents->topLevelItem(group)->child(row);
          item->data(0, addressRole).toString() == page)
        m_contents->setCurrentItem(item);
}

void ManualWindow::copy() {
  const QTextCursor selected = m_page->textCursor();
  if (m_search->hasFocus() && m_search->hasSelectedText()) return m_search->copy();
  if (selected.hasSelection()) return m_page->copy();
  QGuiApplication::clipboard()->setText(m_page->toPlainText());
}

void ManualWindow::print() {
  QPrinter printer(QPrinter::HighResolution);
  QPrintDialog dialog(&printer, this);
  if (dialog.exec() != QDialog::Accepted) return;
  PrintedFile file(printer);
  m_page->print(&printer);
  file.finishOrSay(this);
}

void ManualWindow::keyPressEvent(QKeyEvent* event) {
  if (event->key() != Qt::Key_Escape) return QWidget::keyPressEvent(event);
  m_search->text().isEmpty() ? void(close()) : m_search->clear();
}

}  // namespace ui
