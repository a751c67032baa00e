// SPDX-License-Identifier: GPL-3.0-or-later
// Walks the whole window with a document whose texts a careless program would read as markup, and looks
// whether any place does. Whoever calls it watches its system calls: no text may make it look for a file.
//
//   hostile_ui_driver DOCUMENT OUT      all pages, dialogs, tips, pictures and exports (into OUT)
//   hostile_ui_driver --careless        shows such a text in a label that reads markup: what the check must
//   notice
//
// Tells what it walked through as one JSON object; what is wrong is a line of standard error.
#include <QAbstractItemView>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QGraphicsScene>
#include <QGraphicsTextItem>
#include <QGraphicsView>
#include <QHeaderView>
#include <QHelpEvent>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QMimeData>
#include <QPixmap>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTabBar>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QTextBlock>
#include <QTextDocument>
#include <QTextEdit>
#include <QToolTip>
#include <QWhatsThis>
#include <clocale>
#include <cstdio>

#include "core/document/json_reader.h"
#include "tests/support/window_walk.h"
#include "ui/campaign/import_dialog.h"
#include "ui/campaign/overview_page.h"
#include "ui/main_window.h"
#include "ui/present/presentation.h"
#include "ui/recording/recording_dialog.h"
#include "ui/report/report_files.h"
#include "ui/safety/differences_dialog.h"
#include "ui/safety/recovery_file.h"
#include "ui/session.h"
#include "ui/stock/stock_page.h"
#include "ui/tables/table_tools.h"

/// Pictures lie in a static library, from where nothing else pulls them in. Qt's rule: within no namespace.
static void openResources() { Q_INIT_RESOURCE(resources); }

namespace {

constexpr int rowsAsked = 6;  ///< of each table: rows are alike

int places = 0, tips = 0, labels = 0, documents = 0, tables = 0, copies = 0, wrong = 0;
QSet<QString> told;

void complain(const QString& what, const QString& where, const QString& text) {
  if (told.contains(what + where)) return;
  told.insert(what + where);
  ++wrong;
  std::fprintf(stderr, "%s: %s: %s\n", qPrintable(where), qPrintable(what), qPrintable(text.left(160)));
}

/// Markers are in every hostile text and in no text of ours.
bool isForeign(const QString& text) {
  static const QRegularExpression marker("mark\\d{3}");
  return text.contains("mark") && marker.match(text).hasMatch();
}

bool hasPictureOrLink(const QTextDocument& document) {
  for (QTextBlock block = document.begin(); block.isValid(); block = block.next())
    for (auto it = block.begin(); !it.atEnd(); ++it) {
      const QTextCharFormat format = it.fragment().charFormat();
      if ((format.isImageFormat() && isForeign(format.toImageFormat().name())) ||
          isForeign(format.anchorHref()))
        return true;
    }
  return false;
}

/// A text that Qt decides about by itself, as it does with tips: it must come out as it was typed.
void checkGuessed(const QString& text, const QString& where) {
  if (!isForeign(text)) return;
  if (!Qt::mightBeRichText(text)) {
    if (text.contains("&lt;") && !text.contains("&lt;b&gt;")) complain("its escapes show", where, text);
    if (text.contains("&amp;Co") || text.contains("R&amp;D") || text.contains("&quot;"))
      complain("its escapes show", where, text);
    return;
  }
  QTextDocument shown;
  shown.setHtml(text);
  if (hasPictureOrLink(shown)) complain("is read as markup", where, text);
  if (!isForeign(shown.toPlainText())) complain("lost its text", where, text);
}

void checkLabel(const QLabel& label, const QString& where) {
  ++labels;
  if (!isForeign(label.text())) return;
  if (label.textFormat() == Qt::RichText || label.textFormat() == Qt::MarkdownText ||
      (label.textFormat() == Qt::AutoText && Qt::mightBeRichText(label.text())))
    checkGuessed(label.text(), where);
}

void askTip(QWidget& widget, const QPoint& at, const QString& where) {
  QHelpEvent help(QEvent::ToolTip, at, widget.mapToGlobal(at));
  QApplication::sendEvent(&widget, &help);
  if (!QToolTip::isVisible() || QToolTip::text().isEmpty()) return;
  ++tips;
  checkGuessed(QToolTip::text(), where + ", tip");
  // Painted, so that whatever it refers to would be looked for.
  for (QWidget* top : QApplication::topLevelWidgets())
    if (top->inherits("QTipLabel") && top->isVisible()) top->grab(QRect(0, 0, 400, 200));
  QToolTip::hideText();
}

void askHeadings(QAbstractItemView& view, const QString& where) {
  for (auto* header : view.findChildren<QHeaderView*>())
    for (int k = 0; k < header->count(); ++k) {
      const int along = header->sectionViewportPosition(k) + 3;
      askTip(*header->viewport(),
             header->orientation() == Qt::Horizontal ? QPoint(along, 3) : QPoint(3, along),
             where + " heading");
    }
}

void askItems(QAbstractItemView& view, const QString& where) {
  if (!view.model()) return;
  ++tables;
  for (int row = 0; row < std::min(rowsAsked, view.model()->rowCount(view.rootIndex())); ++row)
    for (int column = 0; column < view.model()->columnCount(view.rootIndex()); ++column) {
      const QModelIndex index = view.model()->index(row, column, view.rootIndex());
      checkGuessed(index.data(Qt::ToolTipRole).toString(), where + " item");
      checkGuessed(index.data(Qt::WhatsThisRole).toString(), where + " item");
      if (const QRect at = view.visualRect(index); view.viewport()->rect().contains(at.center()))
        askTip(*view.viewport(), at.center(), where + " item");
    }
  askHeadings(view, where);
}

void checkScene(const QGraphicsView& view, const QString& where) {
  if (!view.scene()) return;
  for (const QGraphicsItem* item : view.scene()->items()) {
    checkGuessed(item->toolTip(), where + " drawn");
    if (const auto* text = qgraphicsitem_cast<const QGraphicsTextItem*>(item)) {
      ++documents;
      if (hasPictureOrLink(*text->document()))
        complain("a drawn text is read as markup", where, text->toPlainText());
    }
  }
}

void checkWidget(QWidget& widget, const QString& place) {
  const QString where = place + ": " + test::nameForPeople(&widget);
  checkGuessed(widget.toolTip(), where + ", tip");
  checkGuessed(widget.whatsThis(), where + ", what is this");
  if (const auto* label = qobject_cast<const QLabel*>(&widget)) checkLabel(*label, where);
  if (const auto* edit = qobject_cast<const QTextEdit*>(&widget)) {
    ++documents;
    if (hasPictureOrLink(*edit->document()))
      complain("its document has a picture or link", where, edit->toPlainText());
  }
  if (auto* box = qobject_cast<QComboBox*>(&widget))
    for (int k = 0; k < box->count(); ++k)
      checkGuessed(box->itemData(k, Qt::ToolTipRole).toString(), where + " choice");
  if (const auto* tabs = qobject_cast<const QTabBar*>(&widget))
    for (int k = 0; k < tabs->count(); ++k) checkGuessed(tabs->tabToolTip(k), where + " tab");
  if (const auto* menu = qobject_cast<const QMenu*>(&widget); !menu || menu->toolTipsVisible())
    for (const QAction* action : widget.actions()) checkGuessed(action->toolTip(), where + " action");
  if (!widget.isVisible()) return;
  askTip(widget, widget.rect().center(), where);
  if (auto* view = qobject_cast<QAbstractItemView*>(&widget)) askItems(*view, where);
  if (const auto* view = qobject_cast<const QGraphicsView*>(&widget)) {
    checkScene(*view, where);
    for (int x = 10; x < widget.width(); x += 60)
      for (int y = 10; y < widget.height(); y += 60) askTip(*view->viewport(), {x, y}, where);
  }
}

/// A foreign text that a spreadsheet would run. Numbers begin with signs too, and prose of ours may.
bool isFormula(const QString& cell) {
  static const QRegularExpression run("^\"?\\s*[-+=@]");
  return run.match(cell).hasMatch() && isForeign(cell);
}

/// What was given to other programs.
void checkClipboard(const QString& where) {
  const QMimeData* data = QApplication::clipboard()->mimeData();
  if (!data) return;
  static const QRegularExpression between("[\t\n]"), cells("<t[dh][^>]*>(.*?)</t[dh]>");
  for (const QString& cell : data->text().split(between))
    if (isFormula(cell)) complain("the clipboard holds a formula", where, cell);
  if (!data->hasHtml()) return;
  QTextDocument read;
  read.setHtml(data->html());
  if (hasPictureOrLink(read)) complain("the clipboard is markup", where, data->html());
  for (auto cell = cells.globalMatch(data->html()); cell.hasNext();)
    if (const QString text = cell.next().captured(1); isFormula(text))
      complain("the clipboard's HTML holds a formula", where, text);
}

void copyTables(const QWidget& place, const QString& where) {
  for (const char* name : {"copyWorking", "copyWhatIf", "copyDiagnosis", "twinCopy"}) {
    auto* button = place.findChild<QAbstractButton*>(name);
    if (!button || !button->isVisible() || !button->isEnabled()) continue;
    button->click();
    checkClipboard(where + ": " + name);
    ++copies;
  }
  for (auto* view : place.findChildren<QTableView*>()) {
    if (!view->isVisible() || !view->model() || view->model()->rowCount() == 0) continue;
    ui::TableTools::of(*view).copy(ui::CopyPart::All, ui::CopyHeadings::With);
    checkClipboard(where + ": " + view->objectName());
    ++copies;
  }
}

void visit(QWidget& place, const QString& how) {
  ++places;
  QApplication::processEvents();
  const QString where = how + "/" + place.objectName();
  const QList<QPointer<QWidget>> all = [&] {
    QList<QPointer<QWidget>> list{&place};
    for (QWidget* child : place.findChildren<QWidget*>()) list << child;
    return list;
  }();
  for (const QPointer<QWidget>& widget : all)
    if (widget) checkWidget(*widget, where);
  checkClipboard(where + " by the menu");
  copyTables(place, where);
  place.grab();
  QApplication::processEvents();
}

void visitPresentations(ui::Session& session) {
  using View = ui::Presentation::View;
  for (const View view : {View::Bridge, View::Sequence, View::Outcome}) {
    ui::Presentation show(session, view);
    show.resize(1280, 800);
    show.show();
    visit(show, "presentation");
  }
}

void writeReports(const core::Document& document, const QString& folder) {
  using Format = ui::ReportFormat;
  const std::pair<const char*, Format> forms[] = {{"pdf", Format::Pdf},
                                                  {"html", Format::Html},
                                                  {"csv", Format::Csv},
                                                  {"json", Format::Json},
                                                  {"xlsx", Format::Workbook}};
  for (const auto& [ending, format] : forms) {
    const auto bytes = ui::reportBytes(document, core::ReportOrder{}, format);
    if (!bytes) {
      complain("no report", ending, QString::fromStdString(bytes.error().text()));
      continue;
    }
    QFile file(folder + "/report." + ending);
    if (!file.open(QIODevice::WriteOnly) || file.write(*bytes) != bytes->size())
      complain("not written", ending, {});
  }
}

void write(const QString& path, const QString& text) {
  QFile file(path);
  if (!file.open(QIODevice::WriteOnly) || file.write(text.toUtf8()) < 0) complain("not written", path, {});
}

/// A recording and a list of channels whose names are the document's, and more of the kind.
void visitImports(ui::Session& session, const QString& folder) {
  const auto quoted = [](const std::string& text) {
    return '"' + QString::fromStdString(text).replace('"', "\"\"") + '"';
  };
  QString heading = "time [s]", row = "%1", list = "Name,Note,Template\n";
  for (const auto& channel : session.document().channels) {
    heading += ',' + quoted(channel->name), row += ",%1";
    list += quoted("new " + channel->name) + ",<img src=mark990.png>,\"<img src=mark991.png>\"\n";
  }
  QString samples;
  for (int k = 0; k < 400; ++k) samples += row.arg(0.1 * k) + '\n';
  const QString recording = folder + "/<img src='mark997.png'> R&D.csv", channels = folder + "/list.txt";
  write(recording, "# <img src=mark992.png> & more\n" + heading + ",<img src=mark993.png> [<b>]\n" + samples);
  write(channels, list);
  ui::RecordingDialog reading(session, folder + "/a.bridgecal");
  QSignalSpy done(&reading, &ui::RecordingDialog::readingDone);
  reading.show();
  reading.readFile(recording);
  if (done.isEmpty() && !done.wait(60'000)) complain("is not read", recording, {});
  visit(reading, "a recording");
  ui::ImportDialog import(session);
  import.show();
  import.openFile(channels);
  visit(import, "a list of channels");
  ui::RecordingDialog refused(session, folder + "/a.bridgecal");
  QSignalSpy ended(&refused, &ui::RecordingDialog::readingDone);
  refused.show();
  refused.readFile(folder + "/<img src=mark996.png> is not there.csv");
  if (ended.isEmpty()) ended.wait(60'000);
  visit(refused, "no recording");
}

/// Unsaved work of another window, offered in a bar with what differs from the file; the file changed
/// meanwhile.
void visitSafety(ui::MainWindow& window, ui::Session& session, const QString& path) {
  core::Document other = session.document();
  other.title += " & more <img src=\"mark994.png\">";
  {
    const ui::RecoverySlot slot = ui::newRecoverySlot();
    const ui::RecoveryNote note{path, QString::fromStdString(other.title), QDateTime::currentDateTime()};
    if (!ui::writeRecovery(slot, note, other)) complain("no recovery copy", path, {});
  }
  window.offerRecovery();
  const bool isOffered = QTest::qWaitFor([&] { return window.findChild<QLabel*>("recoveryText0"); }, 20'000);
  if (!isOffered) complain("is not offered", path, {});
  visit(window, "left over work");
  ui::DifferencesDialog differences(other, path);
  differences.show();
  QTest::qWait(500);
  visit(differences, "differences");
}

int careless() {
  QLabel label("<img src=\"mark000.png\">TP-01");
  label.show();
  visit(label, "careless");
  return wrong;
}

int walk(const QString& path, const QString& out) {
  ui::Session session;
  ui::MainWindow window(session);
  window.resize(1280, 800);
  window.show();
  if (!window.openFile(path)) return complain("does not open", path, {}), 1;
  if (session.channel() && !session.channel()->checks.empty()) session.selectCheck(0);
  for (std::size_t channel = 0; channel < std::min<std::size_t>(2, session.document().channels.size());
       ++channel) {
    session.selectChannel(channel);
    session.selectStep(1);
    visit(window, QString("channel %1").arg(channel + 1));
  }
  session.selectChannel(0);
  session.selectStep(1);
  window.warn(QString::fromStdString(session.channel()->name));
  window.say(QString::fromStdString(session.channel()->name));
  visit(window, "told");
  test::visitEveryPlace(window, visit);
  visitPresentations(session);
  visitImports(session, out);
  visitSafety(window, session, path);
  writeReports(session.document(), out);
  window.findChild<ui::StockPage*>()->exportTo(out + "/stock.csv");
  if (!window.findChild<ui::OverviewPage*>()->exportTo(out + "/overview.csv"))
    complain("not exported", out, {});
  session.history().setClean();
  return wrong;
}

}  // namespace

int main(int argc, char** argv) {
  openResources();
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  const QTemporaryDir state;
  for (const char* variable : {"XDG_STATE_HOME", "XDG_DATA_HOME", "XDG_CONFIG_HOME"})
    qputenv(variable, state.path().toUtf8());
  QCoreApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
  QApplication application(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  QApplication::setStyle("Fusion");
  const QStringList words = QApplication::arguments();
  if (words.value(1) == "--careless") return careless() > 0 ? 0 : 1;
  if (words.size() != 3) return 2;
  walk(words[1], words[2]);
  std::puts(QJsonDocument(QJsonObject{{"places", places},
                                      {"tips", tips},
                                      {"labels", labels},
                                      {"tables", tables},
                                      {"copies", copies},
                                      {"documents", documents},
                                      {"wrong", wrong}})
                .toJson(QJsonDocument::Compact)
                .constData());
  return wrong > 0;
}
