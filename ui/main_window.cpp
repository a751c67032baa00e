// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/main_window.h"

#include <QAccessible>
#include <QApplication>
#include <QCloseEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QMenuBar>
#include <QMessageBox>
#include <QScreen>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QStatusBar>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/document/edits.h"
#include "ui/bridge_pane.h"
#include "ui/bridge_view.h"
#include "ui/campaign/overview_page.h"
#include "ui/channel_list.h"
#include "ui/check_bar.h"
#include "ui/commands/command_book.h"
#include "ui/document_file.h"
#include "ui/notice_bar.h"
#include "ui/outcome_view.h"
#include "ui/parts.h"
#include "ui/practice/practice_page.h"
#include "ui/preferences/appearance.h"
#include "ui/present/presentation.h"
#include "ui/record/record_page.h"
#include "ui/recording/recording_store.h"
#include "ui/recording/watch_page.h"
#include "ui/run/guided_run.h"
#include "ui/safety/work_safety.h"
#include "ui/sequence_pane.h"
#include "ui/setup_form.h"
#include "ui/stock/stock_page.h"
#include "ui/strip/strip_view.h"
#include "ui/theme.h"
#include "ui/wiring/ohmmeter_page.h"
#include "ui/wiring/wiring_page.h"

namespace ui {
namespace {

constexpr int leastHeightWithStrip = 640;
constexpr qsizetype longestTitle = 120;  ///< letters of a document's name; window managers draw them all

/// The end stays: names of one folder differ there.
QString shortened(const QString& name) {
  if (name.size() <= longestTitle) return name;
  return name.left(longestTitle / 2) + "…" + name.right(longestTitle / 2 - 1);
}

/// A view with its name above; the name is also what the view menu calls it.
QWidget* named(const QString& name, QWidget* view, QWidget* tool = nullptr) {
  auto* frame = new QWidget;
  auto* layout = new QVBoxLayout(frame);
  layout->setContentsMargins(4, 2, 4, 2);
  layout->setSpacing(2);
  auto* label = new QLabel(name);
  QFont font = label->font();
  font.setBold(true);
  label->setFont(font);
  auto* line = new QHBoxLayout;
  line->addWidget(label, 1);
  if (tool) line->addWidget(tool);
  layout->addLayout(line);
  layout->addWidget(view, 1);
  return frame;
}

}  // namespace

MainWindow::MainWindow(Session& session, QWidget* parent) : QMainWindow(parent), m_session(session) {
  setObjectName("mainWindow");
  new Appearance(this);  // before the first widget has its size
  // Never larger than the screen has room for, with its title bar.
  const QRect room = screen()->availableGeometry().adjusted(0, 0, 0, -40);
  resize(QSize(1280, 800).boundedTo(room.size().isEmpty() ? QSize(1280, 800) : room.size()));
  buildViews();
  buildFileMenu();
  buildEditMenu();
  buildChannelMenu();
  buildBridgeMenu();
  buildSequenceMenu();
  buildPrepareMenu();
  buildCheckMenu();
  buildRecordMenu();
  buildTeachMenu();
  buildViewMenu();
  buildHelpMenu();
  m_commands = new CommandBook(*this);
  statusBar()->setSizeGripEnabled(false);
  statusBar()->addPermanentWidget(m_safety->mark());
  m_notice = new NoticeBar(statusBar());
  attachTables();
  connect(&session, &Session::changed, this, &MainWindow::refresh);
  connect(&session, &Session::historyChanged, this, &MainWindow::refresh);
  // A sentence about what was refused or done is out of date once something else was done.
  connect(&session.history(), &QUndoStack::indexChanged, this, [this] {
    warn({});
    statusBar()->clearMessage();
  });
  refresh();
}

QWidget* MainWindow::leftColumn() {
  auto* channels = new QWidget;
  auto* layout = new QVBoxLayout(channels);
  layout->setContentsMargins(4, 2, 4, 2);
  layout->setSpacing(4);
  m_channels = new ChannelList(m_session);
  layout->addWidget(m_channels, 1);
  auto* tools = new QHBoxLayout;
  const auto tool = [&](const QString& name, const QString& text, const std::function<void()>& act) {
    auto* button = new QToolButton;
    button->setObjectName(name);
    button->setText(text);
    connect(button, &QToolButton::clicked, this, act);
    tools->addWidget(button);
  };
  tool("addChannel", tr("Add"), [this] { addChannel(); });
  tool("duplicateChannel", tr("Duplicate"), [this] { duplicateChannel(); });
  tool("removeChannel", tr("Remove"), [this] { removeChannel(); });
  tools->addStretch();
  layout->addLayout(tools);

  m_setup = new SetupForm(m_session);
  m_left = new QSplitter(Qt::Vertical);
  m_left->addWidget(named(tr("Channels"), channels));
  m_left->addWidget(named(tr("Channel set-up"), m_setup));
  m_left->setChildrenCollapsible(false);
  return m_left;
}

void MainWindow::buildViews() {
  m_bridge = new BridgePane(m_session);
  m_outcome = new OutcomeView(m_session);
  m_sequence = new SequencePane(m_session);
  m_top = new QSplitter(Qt::Horizontal);
  m_top->addWidget(named(tr("Bridge"), m_bridge));
  m_top->addWidget(named(tr("Outcome"), m_outcome));
  m_rows = new QSplitter(Qt::Vertical);
  m_rows->addWidget(m_top);
  m_rows->addWidget(m_sequence);
  m_recordings = new RecordingStore(this);
  m_strip = new StripView(m_session, *m_recordings);
  m_stripFrame = named(tr("Recording"), m_strip);
  m_rows->addWidget(m_stripFrame);
  m_columns = new QSplitter(Qt::Horizontal);
  m_columns->addWidget(leftColumn());
  buildPages();
  m_columns->addWidget(m_area);
  for (auto* splitter : {m_top, m_rows, m_columns}) splitter->setChildrenCollapsible(false);
  // By these names their proportions are remembered.
  m_top->setObjectName("topSplitter");
  m_rows->setObjectName("rowsSplitter");
  m_columns->setObjectName("columnsSplitter");
  m_left->setObjectName("leftSplitter");
  // At a large size of text, or with a bar above, the views need more than a small screen has: then they
  // scroll, and the window stays. The bars do not scroll: their words wrap, and what scrolls with a text that
  // wraps is given the height that everything in it would like.
  auto* room = new QScrollArea;
  room->setObjectName("viewsScroll");
  room->setFrameShape(QFrame::NoFrame);
  room->setFocusPolicy(Qt::NoFocus);
  room->setWidgetResizable(true);
  room->setWidget(m_columns);
  auto* centre = new QWidget;
  auto* layout = new QVBoxLayout(centre);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  buildSafety();
  layout->addWidget(m_safety->bars());
  layout->addWidget(room, 1);
  setCentralWidget(centre);
  resetLayout();
  connect(m_setup, &SetupForm::refused, this, &MainWindow::warn);
  connect(m_sequence, &SequencePane::refused, this, &MainWindow::warn);
  connect(m_strip, &StripView::refused, this, &MainWindow::warn);
  connect(m_sequence, &SequencePane::patternWanted, this, &MainWindow::layOutSequence);
  connect(m_sequence, &SequencePane::resistorsWanted, this, &MainWindow::chooseResistors);
  connect(m_sequence, &SequencePane::runWanted, this, [this] { showPage(m_run); });
  connect(&m_sequence->checks(), &CheckBar::recordingWanted, this, [this] { takeRecording(); });
  connect(m_bridge, &BridgePane::refused, this, &MainWindow::warn);
  connect(m_bridge, &BridgePane::said, this, &MainWindow::say);
  connect(&m_bridge->view(), &BridgeView::partActivated, this, &MainWindow::showField);
}

/// The field or row where the part's numbers stand.
void MainWindow::showField(const BridgePart& part) {
  using Kind = BridgePart::Kind;
  const QString number = QString::number(part.index + 1);
  switch (part.kind) {
    case Kind::Arm:
      return m_setup->focusField("arm" + number);
    case Kind::Lead:
      return m_setup->focusField(QString("lead%1").arg(part.index));
    case Kind::Shunt:
      return m_sequence->showShunt(part.index);
    case Kind::Instrument:
      return m_setup->focusField(m_session.shownSetup().instrument.current ? "excitationCurrent"
                                                                           : "excitation");
    case Kind::Input:
      return m_setup->focusField("inputResistance");
    case Kind::Balance:
      return m_setup->focusField("balancePotentiometer");
    case Kind::Leak:
      return m_setup->focusField("leakAcross" + number);
    case Kind::StructureLeak:
      return m_setup->focusField("leakStructure" + number);
  }
}

void MainWindow::buildPages() {
  m_wiring = new WiringPage(m_session);
  m_ohmmeter = new OhmmeterPage(m_session);
  m_stock = new StockPage(m_session);
  m_run = new GuidedRun(m_session);
  m_watch = new WatchPage(m_session, *m_recordings);
  m_practice = new PracticePage(m_session);
  m_overview = new OverviewPage(m_session);
  m_record = new RecordPage(m_session);
  m_area = new QStackedWidget;
  m_area->addWidget(m_rows);
  m_area->addWidget(pageFrame(tr("Wiring"), m_wiring));
  m_area->addWidget(pageFrame(tr("Ohmmeter"), m_ohmmeter));
  m_area->addWidget(pageFrame(tr("Resistor stock"), m_stock));
  m_area->addWidget(pageFrame(tr("Guided run"), m_run));
  m_area->addWidget(pageFrame(tr("Watched recordings"), m_watch));
  m_area->addWidget(pageFrame(tr("Practice"), m_practice));
  m_area->addWidget(pageFrame(tr("Overview of the channels"), m_overview));
  m_area->addWidget(pageFrame(tr("Record"), m_record));
  connect(m_wiring, &WiringPage::refused, this, &MainWindow::warn);
  connect(m_ohmmeter, &OhmmeterPage::refused, this, &MainWindow::warn);
  connect(m_stock, &StockPage::refused, this, &MainWindow::warn);
  connect(m_wiring, &WiringPage::said, this, &MainWindow::say);
  connect(m_ohmmeter, &OhmmeterPage::said, this, &MainWindow::say);
  connect(m_run, &GuidedRun::refused, this, &MainWindow::warn);
  connect(m_practice, &PracticePage::refused, this, &MainWindow::warn);
  connect(m_practice, &PracticePage::said, this, &MainWindow::say);
  connect(m_overview, &OverviewPage::refused, this, &MainWindow::warn);
  connect(m_overview, &OverviewPage::said, this, &MainWindow::say);
  connect(m_overview, &OverviewPage::viewsWanted, this, [this] { enlarge(nullptr); });
  connect(m_record, &RecordPage::refused, this, &MainWindow::warn);
  connect(m_record, &RecordPage::said, this, &MainWindow::say);
  connect(m_record, &RecordPage::viewsWanted, this, [this] { enlarge(nullptr); });
  connect(m_watch, &WatchPage::refused, this, &MainWindow::warn);
  connect(m_watch, &WatchPage::said, this, &MainWindow::say);
  connect(m_watch, &WatchPage::importWanted, this, [this](const QString& path) { takeRecording(path); });
  connect(m_run, &GuidedRun::finished, this, [this] { enlarge(nullptr); });
}

/// A page with its name and the way back above it.
QWidget* MainWindow::pageFrame(const QString& name, QWidget* page) {
  auto* back = toolButton(page->objectName() + "Back", tr("Back to the views"),
                          tr("Bridge, Outcome and Sequence again (Alt+0)"));
  connect(back, &QToolButton::clicked, this, [this] { enlarge(nullptr); });
  QWidget* frame = named(name, page, back);
  frame->setObjectName(page->objectName() + "Frame");
  return frame;
}

void MainWindow::resetLayout() {
  const int column = std::max(m_left->minimumSizeHint().width(), width() > 1600 ? 340 : 280);
  const int right = width() - column;
  m_columns->setSizes({column, right});
  m_left->setSizes({height() * 36 / 100, height() * 64 / 100});
  // A low window keeps the bridge legible: the strip then shows one channel.
  const int strip = height() < 900 ? 130 : height() * 24 / 100;
  const int sequence = height() * 28 / 100;
  m_rows->setSizes({height() - sequence - strip, sequence, strip});
  m_top->setSizes({right / 2, right / 2});
}

void MainWindow::enlarge(QWidget* view) {
  const auto show = [&](QWidget* part, bool shown) { part->setVisible(shown); };
  const bool all = view == nullptr;
  warn({});
  leavePage();
  m_area->setCurrentWidget(m_rows);
  show(m_left, all);
  show(m_top->widget(0), all || view == m_bridge);
  show(m_top->widget(1), all || view == m_outcome);
  show(m_top, all || view == m_bridge || view == m_outcome);
  show(m_sequence, all || view == m_sequence);
  m_enlarged = view;
  followStrip();
  if (view) view->setFocus();
}

/// The strip shows where there is a recording to show, the user has not put it away, and the screen is high
/// enough for it beside the views; alone it always shows.
void MainWindow::followStrip() {
  if (!m_showStrip) return;  // the menus are not built yet
  const bool hasRecording = m_session.check() && m_session.check()->recording;
  const bool fits = screen()->availableGeometry().height() >= leastHeightWithStrip;
  const bool beside = !m_enlarged && m_showStrip->isChecked() && hasRecording && fits;
  m_stripFrame->setVisible(beside || m_enlarged == m_strip);
}

void MainWindow::showPage(QWidget* page) {
  warn({});  // what was said elsewhere; of a run that is left, leavePage says it anew
  if (page != m_run) leavePage();
  m_left->show();
  m_area->setCurrentWidget(page->parentWidget());
  page->setFocus();
}

/// A run that is left under way is not forgotten: shunts may be closed.
void MainWindow::leavePage() {
  if (m_area->currentWidget() != m_run->parentWidget() || !m_run->isUnderWay()) return;
  warn(
      tr("The guided run waits where it was left: shunts may still be closed. Alt+9 goes back to it; "
         "Stop safely there tells what to open."));
}

/// What has the whole area, or else the page of the bridge that is on view.
void MainWindow::present() {
  using View = Presentation::View;
  View view = m_bridge->page() == BridgePane::Page::Polarity ? View::Polarity : View::Bridge;
  if (m_enlarged == m_sequence) view = View::Sequence;
  if (m_enlarged == m_outcome) view = View::Outcome;
  auto* presentation = new Presentation(m_session, view, this);
  presentation->setAttribute(Qt::WA_DeleteOnClose);
  presentation->showFullScreen();
}

void MainWindow::say(const QString& sentence) {
  m_notice->tell({});  // out of date once something was done, and there is room for one of the two
  statusBar()->showMessage(sentence);
  QAccessibleEvent alert(statusBar(), QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
}

void MainWindow::warn(const QString& sentence) {
  m_notice->tell(sentence);
  if (!sentence.isEmpty()) statusBar()->clearMessage();
}

void MainWindow::refresh() {
  followStrip();
  QString file = m_path.isEmpty() ? (m_unsavedTitle.isEmpty() ? tr("untitled") : m_unsavedTitle)
                                  : QFileInfo(m_path).fileName();
  file = shortened(file);
  if (!m_safety->readOnlyReason().isEmpty()) file = tr("%1 (read-only)").arg(file);
  // "[*]" in a file's name would be taken for the mark itself.
  setWindowTitle(QString(file).replace("[*]", "[ *]") + "[*] – Shuntwright");
  setWindowModified(!m_session.history().isClean());
  const QUndoStack& history = m_session.history();
  m_undo->setEnabled(history.canUndo());
  m_redo->setEnabled(history.canRedo());
  m_undo->setText(history.canUndo() ? tr("&Undo: %1").arg(history.undoText()) : tr("&Undo"));
  m_redo->setText(history.canRedo() ? tr("&Redo: %1").arg(history.redoText()) : tr("&Redo"));
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (!mayDiscard()) return event->ignore();
  rememberWhereWeAre();
  m_safety->finish();
  event->accept();
}

/// Escape closes the notice, then the page in place of the views; a run is not left by the way.
void MainWindow::keyPressEvent(QKeyEvent* event) {
  if (event->key() != Qt::Key_Escape) return QMainWindow::keyPressEvent(event);
  if (!m_notice->isHidden()) return warn({});
  const QWidget* shown = m_area->currentWidget();
  if (shown != m_rows && shown != m_run->parentWidget()) return enlarge(nullptr);
  QMainWindow::keyPressEvent(event);
}

}  // namespace ui
