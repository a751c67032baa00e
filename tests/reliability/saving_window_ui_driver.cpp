// SPDX-License-Identifier: GPL-3.0-or-later
// The program's window without a screen, worked by lines on standard input; each is answered by a line of
// JSON:
//   open PATH, save, saveas PATH     "done" tells whether it was
//   edit NAME                        renames the chosen channel and chooses its first step: unsaved work
//   act NAME                         presses the action or button of that objectName or text, in the front
//   dialog
//                                    or else in the window; answered before what it opens is closed
//   answer NAME                      presses that button of the next message box
//   sheets PATH                      writes practice sheets of a thousand questions
//   choose PATH                      gives that name to the file dialog in front
//   export KIND PATH                 see `exported`; "done", else "refused" says why
//   offer, recover                   looks for what a crash left; takes the first of it
//   state                            nothing else
// Every answer tells "front" (class and objectName of the dialog in front), "path", "unsaved", "channel",
// "notice", "offered", and "still_ms": how long at most the window has not come to its events since the last
// line.
#include <unistd.h>

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QElapsedTimer>
#include <QFileDialog>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QSocketNotifier>
#include <QTest>
#include <QTimer>
#include <clocale>
#include <csignal>
#include <cstdio>

#include "ui/bridge_view.h"
#include "ui/campaign/overview_page.h"
#include "ui/document_file.h"
#include "ui/frame_style.h"
#include "ui/locale.h"
#include "ui/main_window.h"
#include "ui/outcome_view.h"
#include "ui/practice/practice_page.h"
#include "ui/report/report_dialog.h"
#include "ui/report/template_list.h"
#include "ui/session.h"
#include "ui/stock/stock_page.h"
#include "ui/wiring/wiring_page.h"

namespace {

/// How long the window has not come to its events.
class Heartbeat : public QObject {
 public:
  Heartbeat() {
    m_timer.setTimerType(Qt::PreciseTimer);
    connect(&m_timer, &QTimer::timeout, this, &Heartbeat::beat);
    m_timer.start(2);
    m_since.start();
  }
  /// The longest since the last call.
  double longest_ms() {
    beat();
    return std::exchange(m_longest_ms, 0.0);
  }

 private:
  void beat() {
    m_longest_ms = std::max(m_longest_ms, double(m_since.nsecsElapsed()) / 1e6), m_since.start();
  }

  QTimer m_timer;
  QElapsedTimer m_since;
  double m_longest_ms = 0;
};

class Worker : public QObject {
 public:
  explicit Worker(ui::Session& session, ui::MainWindow& window)
      : m_session(session), m_window(window), m_input(STDIN_FILENO, QSocketNotifier::Read) {
    connect(&m_input, &QSocketNotifier::activated, this, &Worker::read);
    connect(&m_answering, &QTimer::timeout, this, &Worker::answerBox);
    tell({});
  }

 private:
  void read() {
    char piece[4096];
    const ssize_t count = ::read(STDIN_FILENO, piece, sizeof piece);
    if (count <= 0) std::_Exit(0);
    m_waiting += QByteArray(piece, int(count));
    for (qsizetype end = m_waiting.indexOf('\n'); end >= 0; end = m_waiting.indexOf('\n')) {
      const QString line = QString::fromUtf8(m_waiting.left(end));
      m_waiting.remove(0, end + 1);
      work(line.section(' ', 0, 0), line.section(' ', 1));
    }
  }

  void work(const QString& word, const QString& rest) {
    m_refused.clear();
    if (word == "open") return tell({{"done", m_window.openFile(rest)}});
    if (word == "save" || word == "saveas")
      static_cast<void>(::access("/saving-begins", F_OK));  // for a trace
    if (word == "save") return tell({{"done", m_window.save()}});
    if (word == "saveas") return tell({{"done", m_window.saveAs(rest)}});
    if (word == "export") return tell({{"done", exported(rest.section(' ', 0, 0), rest.section(' ', 1))}});
    if (word == "edit") return tell({{"done", rename(rest)}});
    if (word == "act") return tell({{"done", press(rest)}});
    if (word == "sheets") return tell({{"done", writeManySheets(rest)}});
    if (word == "choose") return tell({{"done", choose(rest)}});
    if (word == "offer") m_window.offerRecovery();
    if (word == "recover") return tell({{"done", press("recoverWork0")}});
    if (word == "answer") m_answers << rest, m_answering.start(5);
    tell({});
  }

  bool rename(const QString& name) {
    if (!m_session.channel()) return false;
    m_session.selectStep(0);
    core::Channel next = *m_session.channel();
    next.name = name.toStdString();
    m_session.editChannel("Rename", std::move(next));
    return true;
  }

  /// Later, since a dialog that is opened does not come back.
  bool press(const QString& name) {
    QWidget* front = QApplication::activeModalWidget();
    for (QWidget* place : {front, static_cast<QWidget*>(&m_window)}) {
      if (!place) continue;
      for (auto* action : place->findChildren<QAction*>())
        if (named(*action, action->text(), name))
          return QTimer::singleShot(0, action, &QAction::trigger), action->isEnabled();
      for (auto* button : place->findChildren<QAbstractButton*>())
        if (named(*button, button->text(), name))
          return QTimer::singleShot(0, button, &QAbstractButton::click), button->isEnabled();
    }
    return false;
  }

  static bool named(const QObject& object, QString text, const QString& name) {
    return object.objectName() == name || text.remove('&') == name;
  }

  void answerBox() {
    auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
    if (!box || m_answers.isEmpty()) return;
    for (QAbstractButton* button : box->buttons())
      if (named(*button, button->text(), m_answers.front())) {
        m_answers.removeFirst();
        return button->click();
      }
  }

  /// Takes some time, under a dialog that shows how far it is.
  bool writeManySheets(const QString& path) {
    auto* page = m_window.findChild<ui::PracticePage*>();
    QTimer::singleShot(0, page, [page, path] {
      page->writeSheets({.seed = 7, .count = 1000, .kinds = {core::QuestionKind::PlantedFault}}, path, false);
    });
    return true;
  }

  static bool choose(const QString& path) {
    auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
    auto* name = dialog ? dialog->findChild<QLineEdit*>("fileNameEdit") : nullptr;
    if (!name) return false;
    name->setText(path);
    QTimer::singleShot(0, dialog, [dialog] { QMetaObject::invokeMethod(dialog, "accept"); });
    return true;
  }

  /// One of the ways in which something leaves the window as a file; false when it did not.
  bool exported(const QString& kind, const QString& path) {
    const auto refuse = [this](const QString& why) { m_refused = why; };
    if (kind == "document") return m_window.saveAs(path);
    if (kind == "bridge") return m_window.findChild<ui::BridgeView*>()->exportTo(path);
    if (kind == "outcome") return m_window.findChild<ui::OutcomeView*>()->exportTo(path);
    if (kind == "rows") return m_window.findChild<ui::OverviewPage*>()->exportTo(path);
    if (kind == "channels") return m_window.findChild<ui::OverviewPage*>()->exportChannelsTo(path);
    if (kind == "wiring") return m_window.findChild<ui::WiringPage*>()->writeSheet(path);
    if (kind == "window-report") return m_window.writeReport(path);
    if (kind == "practice")
      return m_window.findChild<ui::PracticePage*>()->writeSheets(
          {.seed = 7, .count = 2, .kinds = {core::QuestionKind::Reading}}, path, false);
    if (kind == "stock") {
      auto* page = m_window.findChild<ui::StockPage*>();
      const auto heard = connect(page, &ui::StockPage::refused, this, refuse);
      page->exportTo(path);
      disconnect(heard);
      return m_refused.isEmpty();
    }
    if (kind == "template") {
      ui::TemplateList list;
      connect(&list, &ui::TemplateList::refused, this, refuse);
      list.exportTo(path);
      return m_refused.isEmpty();
    }
    if (kind == "own-template") {
      ui::TemplateList list;
      connect(&list, &ui::TemplateList::refused, this, refuse);
      list.duplicate();
      return m_refused.isEmpty();
    }
    if (kind != "report") return refuse("no such kind"), false;
    ui::ReportDialog dialog(m_session, path, &m_window);
    connect(&dialog, &ui::ReportDialog::refused, this, refuse);
    return dialog.writeTo(path);
  }

  QString shownText(const QString& label) const {
    const auto* found = m_window.findChild<QLabel*>(label);
    return found && found->isVisible() ? found->text() : QString();
  }

  void tell(QJsonObject answer) {
    const QWidget* front = QApplication::activeModalWidget();
    answer["front"] =
        front ? QString("%1 %2").arg(front->metaObject()->className(), front->objectName()) : QString();
    answer["path"] = m_window.path();
    answer["unsaved"] = m_window.isWindowModified();
    answer["channel"] = m_session.channel() ? QString::fromStdString(m_session.channel()->name) : QString();
    answer["notice"] = m_refused.isEmpty() ? shownText("noticeText") : m_refused;
    answer["offered"] = shownText("recoveryText0");
    answer["readonly"] = shownText("readOnlyMark");
    answer["still_ms"] = m_heart.longest_ms();
    const QByteArray line = QJsonDocument(answer).toJson(QJsonDocument::Compact) + '\n';
    if (::write(STDOUT_FILENO, line.data(), std::size_t(line.size())) < 0) std::_Exit(3);
  }

  ui::Session& m_session;
  ui::MainWindow& m_window;
  QSocketNotifier m_input;
  QTimer m_answering;
  QStringList m_answers;
  QByteArray m_waiting;
  QString m_refused;
  Heartbeat m_heart;
};

}  // namespace

int main(int argc, char** argv) {
  Q_INIT_RESOURCE(resources);  // lies in a static library, from where nothing else pulls it in
  std::signal(SIGXFSZ, SIG_IGN);
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QCoreApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
  QApplication application(argc, argv);
  QApplication::setStyle(new ui::FrameStyle);
  std::setlocale(LC_NUMERIC, "C");
  ui::useLanguage("en");
  ui::Session session;
  ui::MainWindow window(session);
  window.restoreLayout();
  window.show();
  Worker worker(session, window);
  return QApplication::exec();
}
