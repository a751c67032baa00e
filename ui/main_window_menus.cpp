// SPDX-License-Identifier: GPL-3.0-or-later
// The menus of the window: what can be done, under which key. What each does is in main_window_files.cpp,
// main_window.cpp and the views.
#include <QActionGroup>
#include <QApplication>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>

#include "core/campaign/numbering.h"
#include "core/document/edits.h"
#include "ui/about/about_dialog.h"
#include "ui/access/twin_dialog.h"
#include "ui/apply_dialog.h"
#include "ui/bridge_pane.h"
#include "ui/bridge_view.h"
#include "ui/campaign/overview_page.h"
#include "ui/check_bar.h"
#include "ui/commands/command_book.h"
#include "ui/commands/command_list.h"
#include "ui/document_file.h"
#include "ui/help/help_desk.h"
#include "ui/help/help_places.h"
#include "ui/locale.h"
#include "ui/main_window.h"
#include "ui/outcome_view.h"
#include "ui/pattern/pattern_dialog.h"
#include "ui/practice/practice_page.h"
#include "ui/preferences/appearance.h"
#include "ui/preferences/colour_menu.h"
#include "ui/preferences/preferences_page.h"
#include "ui/record/record_page.h"
#include "ui/recording/watch_page.h"
#include "ui/run/guided_run.h"
#include "ui/search/search_dialog.h"
#include "ui/sequence_pane.h"
#include "ui/setup_form.h"
#include "ui/shown_channel.h"
#include "ui/stock/stock_page.h"
#include "ui/strip/strip_view.h"
#include "ui/text_form_dialog.h"
#include "ui/theme.h"
#include "ui/wiring/ohmmeter_page.h"
#include "ui/wiring/wiring_page.h"

namespace ui {

QAction* MainWindow::addAction(QMenu* menu, const QString& name, const QString& text,
                               const QKeySequence& keys, const std::function<void()>& act) {
  auto* action = menu->addAction(text);
  action->setObjectName(name);
  if (!keys.isEmpty()) action->setShortcut(keys);
  connect(action, &QAction::triggered, this, act);
  return action;
}

void MainWindow::buildFileMenu() {
  auto* menu = menuBar()->addMenu(tr("&File"));
  addAction(menu, "new", tr("&New"), QKeySequence::New, [this] { newDocument(); });
  addAction(menu, "open", tr("&Open…"), QKeySequence::Open, [this] { openDialog(); });
  addAction(menu, "openDemo", tr("Open the de&mo"), {}, [this] { openDemo(); })->setVisible(false);
  auto* recent = menu->addMenu(tr("Open &recent"));
  connect(recent, &QMenu::aboutToShow, this, [this, recent] { fillRecentMenu(recent); });
  menu->addSeparator();
  addAction(menu, "save", tr("&Save"), QKeySequence::Save, [this] { save(); });
  addAction(menu, "saveAs", tr("Save &as…"), tr("Ctrl+Shift+S"), [this] { saveAsDialog(); });
  menu->addSeparator();
  addAction(menu, "details", tr("&Details of the document…"), {}, [this] { editDetails(); });
  addAction(menu, "report", tr("Re&port…"), QKeySequence::Print, [this] { showReportDialog(); });
  addAction(menu, "netlist", tr("SPICE net&list of the step…"), {}, [this] { exportNetlist(); });
  menu->addSeparator();
  addAction(menu, "quit", tr("&Quit"), QKeySequence::Quit, [this] { close(); });
}

void MainWindow::fillRecentMenu(QMenu* menu) {
  menu->clear();
  for (const QString& path : recentDocuments()) {
    // An ampersand in a path is a letter, not a mnemonic.
    auto* action = menu->addAction(QString(path).replace('&', "&&"));
    connect(action, &QAction::triggered, this, [this, path] {
      if (mayDiscard()) openFile(path);
    });
  }
  if (menu->isEmpty()) menu->addAction(tr("no document yet"))->setEnabled(false);
}

void MainWindow::buildEditMenu() {
  auto* menu = menuBar()->addMenu(tr("&Edit"));
  m_undo = addAction(menu, "undo", tr("&Undo"), QKeySequence::Undo, [this] { m_session.history().undo(); });
  m_redo = addAction(menu, "redo", tr("&Redo"), {}, [this] { m_session.history().redo(); });
  m_redo->setShortcuts({tr("Ctrl+Shift+Z"), tr("Ctrl+Y")});  // whichever one's hands know
  menu->addSeparator();
  buildTableMenu(menu);
  addAction(menu, "preferences", tr("Preferenc&es"), tr("Ctrl+,"), [this] { showPreferences(); });
  addAction(menu, "commands", tr("Commands and keys…"), tr("Ctrl+Shift+K"), [this] { showCommands(); });
}

void MainWindow::buildChannelMenu() {
  auto* menu = menuBar()->addMenu(tr("&Channel"));
  addAction(menu, "channelAdd", tr("&Add channel"), tr("Ctrl+Shift+N"), [this] { addChannel(); });
  addAction(menu, "channelDuplicate", tr("&Duplicate channel"), tr("Ctrl+D"), [this] { duplicateChannel(); });
  addAction(menu, "channelRemove", tr("&Remove channel"), {}, [this] { removeChannel(); });
  menu->addSeparator();
  addAction(menu, "channelOverview", tr("&Overview of all channels"), tr("Ctrl+Shift+O"),
            [this] { showPage(m_overview); });
  addAction(menu, "channelCopies", tr("Several &copies…"), tr("Ctrl+Shift+D"),
            [this] { m_overview->copyChannel(); });
  addAction(menu, "channelImport", tr("&Import a channel list…"), {},
            [this] { m_overview->importChannels(); });
  addAction(menu, "channelEditMany", tr("Edit &many channels…"), {}, [this] { m_overview->editChosen(); });
}

/// For whoever signs.
void MainWindow::buildRecordMenu() {
  auto* menu = menuBar()->addMenu(tr("Recor&d"));
  addAction(menu, "recordPage", tr("&State, remarks and history"), tr("Ctrl+Shift+V"),
            [this] { showPage(m_record); });
  addAction(menu, "recordRemark", tr("Add &remark to the step…"), tr("Ctrl+Shift+M"),
            [this] { m_record->addRemark(); });
  menu->addSeparator();
  addAction(menu, "recordSubmit", tr("Su&bmit for review…"), {}, [this] { m_record->submit(); });
  addAction(menu, "recordAccept", tr("&Accept…"), {}, [this] { m_record->accept(); });
  addAction(menu, "recordReturn", tr("Re&turn with a remark…"), {}, [this] { m_record->giveBack(); });
  menu->addSeparator();
  addAction(menu, "recordReport", tr("R&eport…"), {}, [this] { showReportDialog(); });
}

void MainWindow::buildBridgeMenu() {
  auto* menu = menuBar()->addMenu(tr("&Bridge"));
  const auto page = [&](const QString& name, const QString& text, const QKeySequence& keys,
                        BridgePane::Page which) {
    addAction(menu, name, text, keys, [this, which] {
      m_bridge->showPage(which);
      if (!m_bridge->isVisible()) enlarge(m_bridge);
      m_bridge->setFocus();
    });
  };
  using Page = BridgePane::Page;
  page("bridgeDrawing", tr("&Drawing"), tr("Ctrl+6"), Page::Drawing);
  page("bridgePolarity", tr("&Polarity map"), tr("Ctrl+7"), Page::Polarity);
  page("bridgeWhatIf", tr("&What if"), tr("Ctrl+8"), Page::WhatIf);
  menu->addSeparator();
  m_bridge->view().fillMenu(menu);
}

/// For the trainer.
void MainWindow::buildTeachMenu() {
  auto* menu = menuBar()->addMenu(tr("&Teach"));
  addAction(menu, "teachPractice", tr("&Practice"), tr("Ctrl+Shift+P"), [this] { showPage(m_practice); });
  addAction(menu, "teachPresent", tr("P&resent the view"), tr("F5"), [this] { present(); });
}

void MainWindow::buildSequenceMenu() {
  auto* menu = menuBar()->addMenu(tr("&Sequence"));
  addAction(menu, "sequenceAddShunt", tr("Add s&hunt"), tr("Ctrl+Shift+H"), [this] {
    m_sequence->setCurrentIndex(1);
    m_sequence->addShunt();
  });
  addAction(menu, "sequenceRemoveShunt", tr("Remove shunt"), {}, [this] { m_sequence->removeShunt(); });
  menu->addSeparator();
  addAction(menu, "sequenceAddStep", tr("Add &step"), tr("Ctrl+Shift+I"), [this] { m_sequence->addStep(); });
  addAction(menu, "sequenceRemoveStep", tr("&Remove step"), {}, [this] { m_sequence->removeStep(); });
  addAction(menu, "sequenceUp", tr("Move step &up"), tr("Ctrl+Up"), [this] { m_sequence->moveStep(-1); });
  addAction(menu, "sequenceDown", tr("Move step &down"), tr("Ctrl+Down"),
            [this] { m_sequence->moveStep(1); });
  menu->addSeparator();
  addAction(menu, "sequenceTwoSided", tr("Lay out &two-sided sequence"), tr("Ctrl+T"),
            [this] { m_sequence->layOutTwoSided(); });
  addAction(menu, "sequenceLayOut", tr("Lay out from a &pattern…"), tr("Ctrl+Shift+T"),
            [this] { layOutSequence(); });
}

/// In the order of the work before power is on.
void MainWindow::buildPrepareMenu() {
  auto* menu = menuBar()->addMenu(tr("&Prepare"));
  addAction(menu, "prepareStock", tr("Resistor s&tock"), tr("Alt+8"), [this] { showPage(m_stock); });
  addAction(menu, "prepareResistors", tr("Choose &resistors…"), tr("Ctrl+Shift+R"),
            [this] { chooseResistors(); });
  addAction(menu, "prepareReview", tr("Re&view of the plan"), tr("Alt+5"), [this] {
    m_sequence->showReview();
    enlarge(m_sequence);
  });
  addAction(menu, "prepareApply", tr("&Apply to channels…"), tr("Ctrl+Shift+A"),
            [this] { applyToChannels(); });
  menu->addSeparator();
  addAction(menu, "prepareWiring", tr("&Wiring"), tr("Alt+6"), [this] { showPage(m_wiring); });
  addAction(menu, "prepareOhmmeter", tr("&Ohmmeter"), tr("Alt+7"), [this] { showPage(m_ohmmeter); });
  menu->addSeparator();
  addAction(menu, "prepareRun", tr("&Guided run"), tr("Alt+9"), [this] { showPage(m_run); });
}

void MainWindow::buildCheckMenu() {
  auto* menu = menuBar()->addMenu(tr("Chec&k"));
  CheckBar& checks = m_sequence->checks();
  addAction(menu, "checkAdd", tr("&New check"), tr("Ctrl+K"), [&checks] { checks.addCheck(); });
  addAction(menu, "checkRecording", tr("From &recording…"), tr("Ctrl+R"), [this] { takeRecording(); });
  addAction(menu, "checkWatch", tr("&Watch for recordings"), tr("Ctrl+Shift+W"),
            [this] { showPage(m_watch); });
  addAction(menu, "checkDetails", tr("&Details of the check…"), {}, [&checks] { checks.editDetails(); });
  addAction(menu, "checkClose", tr("&Close or reopen check"), {}, [&checks] { checks.closeOrReopen(); });
  addAction(menu, "checkRemove", tr("Re&move check"), {}, [&checks] { checks.removeCheck(); });
  menu->addSeparator();
  addAction(menu, "checkCompare", tr("Compare with the &other check"), tr("Ctrl+M"), [this] {
    const Selection& chosen = m_session.selection();
    if (!chosen.check || m_session.channel()->checks.size() < 2)
      return warn(tr("There is no second check of this channel to compare with."));
    const std::size_t other = *chosen.check > 0 ? *chosen.check - 1 : 1;
    m_session.compareWith(chosen.compared ? std::nullopt : std::optional(other));
  });
  menu->addSeparator();
  addAction(menu, "checkCopyPicture", tr("Copy outcome as &picture"), {},
            [this] { m_outcome->copyPicture(); });
  addAction(menu, "checkCopyData", tr("Copy outcome as da&ta"), tr("Ctrl+Shift+C"),
            [this] { m_outcome->copyData(); });
  addAction(menu, "checkExport", tr("&Export picture of the outcome…"), tr("Ctrl+Shift+E"),
            [this] { m_outcome->exportPicture(); });
  connect(m_outcome, &OutcomeView::refused, this, &MainWindow::warn);
  connect(m_outcome, &OutcomeView::said, this, &MainWindow::say);
  connect(&checks, &CheckBar::refused, this, &MainWindow::warn);
}

void MainWindow::buildViewMenu() {
  auto* menu = menuBar()->addMenu(tr("&View"));
  addAction(menu, "viewAll", tr("&All views"), tr("Alt+0"), [this] { enlarge(nullptr); });
  addAction(menu, "viewBridge", tr("Only &Bridge"), tr("Alt+1"), [this] { enlarge(m_bridge); });
  addAction(menu, "viewSequence", tr("Only &Sequence"), tr("Alt+2"), [this] {
    m_sequence->showSteps();
    enlarge(m_sequence);
  });
  addAction(menu, "viewOutcome", tr("Only &Outcome"), tr("Alt+3"), [this] { enlarge(m_outcome); });
  addAction(menu, "viewRecording", tr("Only &Recording"), tr("Alt+R"), [this] { enlarge(m_strip); });
  addAction(menu, "viewBudget", tr("Only B&udget"), tr("Alt+4"), [this] {
    m_sequence->showBudget();
    enlarge(m_sequence);
  });
  m_showStrip = addAction(menu, "viewStrip", tr("Recordin&g strip under the Sequence"), tr("Ctrl+L"),
                          [this] { followStrip(); });
  m_showStrip->setCheckable(true);
  m_showStrip->setChecked(true);
  menu->addSeparator();
  const auto page = [&](const QString& name, const QString& text, const QKeySequence& keys,
                        OutcomeView::Page which) {
    addAction(menu, name, text, keys, [this, which] {
      m_outcome->showPage(which);
      // Where another view or a page has the whole area, the outcome would not be seen.
      if (!m_outcome->isVisible()) enlarge(m_outcome);
      m_outcome->setFocus();
    });
  };
  using Page = OutcomeView::Page;
  page("outcomeCharts", tr("Outcome: &charts"), tr("Ctrl+1"), Page::Charts);
  page("outcomeTablePage", tr("Outcome: &table"), tr("Ctrl+2"), Page::Table);
  page("outcomeFiguresAll", tr("Outcome: all &figures"), tr("Ctrl+3"), Page::Figures);
  page("outcomeDiagnosis", tr("Outcome: d&iagnosis"), tr("Ctrl+4"), Page::Diagnosis);
  page("outcomeWorking", tr("Outcome: &working"), tr("Ctrl+5"), Page::Working);
  page("outcomeChange", tr("Outcome: c&hange between checks"), tr("Ctrl+9"), Page::Change);
  menu->addSeparator();
  addAction(menu, "viewTwins", tr("&Pictures as tables…"), tr("Ctrl+Shift+G"), [this] {
    if (twinsIn(*this).isEmpty()) return warn(tr("There is no picture on view."));
    TwinDialog(*this, this).exec();
  });
  menu->addSeparator();
  addAction(menu, "textLarger", tr("Text &larger"), {}, [] {
    stepTextSize(1);
  })->setShortcuts({tr("Ctrl++"), tr("Ctrl+=")});  // with and without Shift, by the keyboard
  addAction(menu, "textSmaller", tr("Text s&maller"), tr("Ctrl+-"), [] { stepTextSize(-1); });
  addAction(menu, "textUsual", tr("T&ext as usual"), tr("Ctrl+0"), [] { stepTextSize(0); });
  new ColourMenu(*menu->addMenu(tr("Colours")));
  fillLanguageMenu(menu->addMenu(tr("La&nguage")));
}

void MainWindow::fillLanguageMenu(QMenu* menu) {
  auto* group = new QActionGroup(menu);
  const auto add = [&](const QString& name, const QString& text, const QString& language) {
    auto* action = addAction(menu, name, text, {}, [this, language] {
      rememberLanguage(language);
      say(tr("The language changes when the program is started the next time."));
    });
    action->setCheckable(true);
    action->setChecked(chosenLanguage() == language);
    group->addAction(action);
  };
  add("languageSystem", tr("Language of the &system"), {});
  for (const QString& code : interfaceLanguages()) add("language_" + code, "&" + languageName(code), code);
}

void MainWindow::buildHelpMenu() {
  auto* menu = menuBar()->addMenu(tr("&Help"));
  auto* here =
      addAction(menu, "helpHere", tr("&Help on this place"), tr("F1"), [this] { m_help->showHere(); });
  m_help = new HelpDesk(*this, *here);
  addAction(menu, "manual", tr("&Manual"), tr("Ctrl+F1"), [this] { m_help->showManual(); });
  addAction(menu, "tour", tr("&Tour"), {}, [this] { showTour(); });
  menu->addSeparator();
  if (auto* commands = findChild<QAction*>("commands")) menu->addAction(commands);
  addAction(menu, "cautions", tr("&Cautions"), {}, [this] { showCautions(); });
  addAction(menu, "stripKeys", tr("&Keys of the recording strip"), {}, [this] { m_strip->showKeys(); });
  addAction(menu, "about", tr("&About Shuntwright"), {}, [this] { showAbout(); });
}

void MainWindow::addChannel() {
  core::Channel channel;
  const core::Document& document = m_session.document();
  channel.name = core::uniqueChannelName(document, "CH-01") == "CH-01"
                     ? "CH-01"
                     : core::namesAfter(document, "CH-01", 1).front();
  const std::size_t at = document.channels.size();
  m_session.edit(tr("Add channel"), core::withChannelInserted(m_session.document(), at, std::move(channel)));
  m_session.selectChannel(at);
  m_setup->ensureVisible(0, 0);
}

void MainWindow::duplicateChannel() {
  if (!m_session.channel()) return warn(tr("There is no channel to duplicate."));
  const std::size_t at = *m_session.selection().channel;
  m_session.edit(tr("Duplicate channel"), core::withChannelCopies(m_session.document(), at, 1));
  m_session.selectChannel(at + 1);
  m_setup->ensureVisible(0, 0);
}

void MainWindow::removeChannel() {
  if (!m_session.channel()) return warn(tr("There is no channel to remove."));
  m_session.edit(tr("Remove channel"),
                 core::withChannelRemoved(m_session.document(), *m_session.selection().channel));
}

void MainWindow::chooseResistors() {
  if (!m_session.channel()) return warn(tr("There is no channel to choose resistors for."));
  SearchDialog dialog(m_session, this);
  connect(&dialog, &SearchDialog::refused, this, &MainWindow::warn);
  dialog.exec();
}

void MainWindow::layOutSequence() {
  if (!m_session.channel()) return warn(tr("There is no channel to lay a sequence out for."));
  if (const QString reason = whyNotEdited(m_session); !reason.isEmpty()) return warn(reason);
  PatternDialog dialog(m_session, this);
  connect(&dialog, &PatternDialog::refused, this, &MainWindow::warn);
  dialog.exec();
}

void MainWindow::applyToChannels() {
  if (!m_session.channel()) return warn(tr("There is no channel to apply to others."));
  ApplyDialog dialog(m_session, this);
  connect(&dialog, &ApplyDialog::refused, this, &MainWindow::warn);
  dialog.exec();
}

void MainWindow::editDetails() {
  const core::Document& document = m_session.document();
  TextFormDialog dialog(tr("Details of the document"),
                        {{tr("Title"), toQString(document.title), tr("Shunt check of the tailplane")},
                         {tr("Site"), toQString(document.site), {}},
                         {tr("Article under test"), toQString(document.article), {}},
                         {tr("Prepared by"), toQString(document.person), {}},
                         {tr("Note"), toQString(document.note), {}}},
                        this);
  dialog.setProperty(helpPageProperty, "files.md#details");
  if (dialog.exec() != QDialog::Accepted) return;
  core::Document next = document;
  next.title = dialog.text(0);
  next.site = dialog.text(1);
  next.article = dialog.text(2);
  next.person = dialog.text(3);
  next.note = dialog.text(4);
  m_session.edit(tr("Change document details"), std::move(next));
}

void MainWindow::showPreferences() {
  if (!m_preferences) {
    m_preferences = new PreferencesPage;
    m_area->addWidget(pageFrame(tr("Preferences"), m_preferences));
    connect(m_preferences, &PreferencesPage::keysWanted, this, &MainWindow::showCommands);
    connect(m_preferences, &PreferencesPage::resetAll, m_commands, &CommandBook::setAllUsual);
    connect(m_preferences, &PreferencesPage::said, this, &MainWindow::say);
  }
  showPage(m_preferences);
}

void MainWindow::showCommands() { CommandList(*m_commands, this).exec(); }

void MainWindow::showCautions() {
  QMessageBox box(
      QMessageBox::Warning, tr("Cautions"),
      tr("Switch the excitation off before wiring or ohmmeter work.\n\n"
         "A switched shunt moves the reading of a live control or safety channel: take such channels out "
         "of service first.\n\n"
         "A passed shunt check says nothing about gauge bond, gauge factor, alignment or the strength of "
         "the article. Where a standard, a contract or the local code asks for a calibrated load or a "
         "traceable calibration, this check does not replace it.\n\n"
         "Decisions stay with the responsible licensed or authorised person."),
      QMessageBox::Ok, this);
  box.setObjectName("cautionsBox");
  box.setTextFormat(Qt::PlainText);
  box.exec();
}

void MainWindow::showAbout() {
  AboutDialog dialog(this);
  connect(&dialog, &AboutDialog::cautionsWanted, this, &MainWindow::showCautions);
  connect(&dialog, &AboutDialog::said, this, &MainWindow::say);
  dialog.exec();
}

}  // namespace ui
