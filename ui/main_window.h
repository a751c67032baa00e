// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QMainWindow>
#include <functional>

#include "ui/session.h"
#include "ui/tables/document_search.h"

class QSplitter;
class QStackedWidget;
class QTableView;

namespace ui {

class BridgePane;
struct BridgePart;
class ChannelList;
class CommandBook;
class GuidedRun;
class HelpDesk;
class NoticeBar;
class OhmmeterPage;
class OutcomeView;
class OverviewPage;
class PracticePage;
class PreferencesPage;
class RecordPage;
class RecordingStore;
class SequencePane;
class SetupForm;
class StockPage;
class StripView;
class TableTools;
class WatchPage;
class WiringPage;
class WorkSafety;
struct LeftOver;
struct Place;

/// The one window: channels and set-up at the left, the views Bridge, Outcome and Sequence in
/// splitters, the recording strip under the Sequence (Alt+R). Each view fills the whole area at Alt+1, Alt+2,
/// Alt+3, the sequence's budget and review at Alt+4 and Alt+5. Stock, wiring, ohmmeter and guided run are
/// pages in place of the three views (Alt+6 to Alt+9). Alt+0 shows the views again.
class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  explicit MainWindow(Session& session, QWidget* parent = nullptr);

  /// Opens a document; on failure shows why and keeps what is open.
  bool openFile(const QString& path);
  /// Saves under the document's name, or asks for one. False when not saved.
  bool save();
  bool saveAs(const QString& path);
  /// Writes the report as PDF, or as CSV when the path says so. False when not written.
  bool writeReport(const QString& path);
  const QString& path() const { return m_path; }
  /// The document has no file of its own, as for the built-in demo.
  void showAsUnsaved(const QString& title);

  /// Size, place and splitters as the user left them; before the window is shown.
  void restoreLayout();
  /// Opens the document that was open last, where it was left, if the user wants that and nothing speaks
  /// against it.
  void openLast();
  /// Looks aside whether an earlier run left unsaved work, and offers it.
  void offerRecovery();

  /// What File, Open the demo opens; without it there is no such command.
  void setDemo(std::function<core::Document()> demo);
  /// Points at the parts of the window one after the other.
  void showTour();
  /// The same a moment after the start, for whoever has not seen it; never without a real screen.
  void offerTour();

  /// Tells that something was done: in the status bar, and to screen readers.
  void say(const QString& sentence);
  /// Tells that something was refused or went wrong: in the status bar, until the next change, until
  /// something was done or until it is closed, and to screen readers. An empty sentence takes it away.
  void warn(const QString& sentence);

  /// Everything back to the proportions of the present window size.
  void resetLayout();

 protected:
  void closeEvent(QCloseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QWidget* leftColumn();
  void buildViews();
  void showField(const BridgePart& part);
  void buildPages();
  void buildFileMenu();
  void buildEditMenu();
  void buildChannelMenu();
  void buildBridgeMenu();
  void buildRecordMenu();
  void buildTeachMenu();
  void present();
  void buildSequenceMenu();
  void buildPrepareMenu();
  void buildCheckMenu();
  void buildViewMenu();
  void buildHelpMenu();
  QAction* addAction(QMenu* menu, const QString& name, const QString& text, const QKeySequence& keys,
                     const std::function<void()>& act);
  void fillRecentMenu(QMenu* menu);
  void fillLanguageMenu(QMenu* menu);

  void newDocument();
  void openDialog();
  QString proposedPath() const;
  bool saveAsDialog();
  core::Result<QByteArray> reportWithProgress(bool csv);
  void showReportDialog();
  void exportNetlist();
  void tellWritten(const QString& path, const core::Result<void>& written, const QString& otherwise);
  bool mayDiscard();
  void buildSafety();
  void recover(const LeftOver& work);
  void loadFromDisk();
  /// What is on view, and back there.
  Place place() const;
  void goTo(const Place& place);
  void rememberWhereWeAre();
  void editDetails();
  void takeRecording(const QString& path = {});
  void setPath(const QString& path);
  void followStrip();
  void addChannel();
  void duplicateChannel();
  void removeChannel();
  void enlarge(QWidget* view);
  QWidget* pageFrame(const QString& name, QWidget* page);
  /// Shows `page` in place of the three views, beside the channels.
  void showPage(QWidget* page);
  void leavePage();
  void attachTables();
  void buildTableMenu(QMenu* menu);
  /// The table that copying and pasting go to; none, and said so, where there is none on view.
  QTableView* currentTable();
  void withTable(const std::function<void(TableTools&)>& act);
  QList<DocumentMatch> placesBeyond(const QString& words) const;
  void showPlace(const DocumentPlace& place);
  void chooseResistors();
  void layOutSequence();
  void applyToChannels();
  void showPreferences();
  void showCommands();
  void showCautions();
  void openDemo();
  void showAbout();
  void refresh();

  Session& m_session;
  WorkSafety* m_safety = nullptr;
  QString m_path;
  QString m_unsavedTitle;
  ChannelList* m_channels = nullptr;
  SetupForm* m_setup = nullptr;
  BridgePane* m_bridge = nullptr;
  OutcomeView* m_outcome = nullptr;
  SequencePane* m_sequence = nullptr;
  WiringPage* m_wiring = nullptr;
  OhmmeterPage* m_ohmmeter = nullptr;
  StockPage* m_stock = nullptr;
  GuidedRun* m_run = nullptr;
  PracticePage* m_practice = nullptr;
  OverviewPage* m_overview = nullptr;
  RecordPage* m_record = nullptr;
  RecordingStore* m_recordings = nullptr;
  StripView* m_strip = nullptr;
  QWidget* m_stripFrame = nullptr;
  WatchPage* m_watch = nullptr;
  QAction* m_showStrip = nullptr;
  QWidget* m_enlarged = nullptr;  ///< the view that fills the area; none: all
  QStackedWidget* m_area = nullptr;
  QSplitter* m_columns = nullptr;
  QSplitter* m_left = nullptr;
  QSplitter* m_rows = nullptr;
  QSplitter* m_top = nullptr;
  NoticeBar* m_notice = nullptr;
  PreferencesPage* m_preferences = nullptr;  ///< none until it is asked for
  CommandBook* m_commands = nullptr;
  HelpDesk* m_help = nullptr;
  std::function<core::Document()> m_demo;
  QAction* m_undo = nullptr;
  QAction* m_redo = nullptr;
};

}  // namespace ui
