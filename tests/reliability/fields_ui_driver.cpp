// SPDX-License-Identifier: GPL-3.0-or-later
// Types awkward numbers into every field for numbers of the window, one after the other, each undone again.
//
//   fields_ui_driver DOCUMENT few|all     of the numbers
//
// Each is refused, or what comes of it can be saved, and nothing on view says what is no number. Tells what
// it did as one JSON object; what is wrong is a line of standard error.
#include <QApplication>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QPointer>
#include <QRegularExpression>
#include <QTableView>
#include <QTemporaryDir>
#include <clocale>
#include <cstdio>

#include "core/document/json_writer.h"
#include "tests/support/window_walk.h"
#include "ui/fields/number_edit.h"
#include "ui/main_window.h"
#include "ui/session.h"

/// Pictures lie in a static library, from where nothing else pulls them in. Qt's rule: within no namespace.
static void openResources() { Q_INIT_RESOURCE(resources); }

namespace {

int typed = 0, refused = 0, taken = 0, wrong = 0;

void complain(const QString& field, const QString& text, const QString& what) {
  ++wrong;
  std::fprintf(stderr, "%s = %s: %s\n", qPrintable(field), qPrintable(text), qPrintable(what.left(200)));
}

/// What was typed is told in quotation marks.
bool saysNoNumber(QString text) {
  static const QRegularExpression typedWords("“[^”]*”");
  text.remove(typedWords);
  static const QRegularExpression words("(?<![\\p{L}\\d])[-+−]?(nan|inf|infinity)(?![\\p{L}\\d])",
                                        QRegularExpression::CaseInsensitiveOption);
  return words.match(text).hasMatch();
}

/// What stands on view and says nan or inf; empty when nothing does.
QString noNumberOnView(const QWidget& window, const QWidget* typedInto) {
  for (const auto* label : window.findChildren<QLabel*>())
    if (label->isVisible() && saysNoNumber(label->text())) return label->text();
  for (const auto* edit : window.findChildren<QLineEdit*>())
    if (edit != typedInto && edit->isVisible() && saysNoNumber(edit->text())) return edit->text();
  for (const auto* view : window.findChildren<QTableView*>()) {
    if (!view->isVisible() || !view->model()) continue;
    for (int row = 0; row < std::min(20, view->model()->rowCount()); ++row)
      for (int column = 0; column < view->model()->columnCount(); ++column)
        if (const QString cell = view->model()->index(row, column).data().toString(); saysNoNumber(cell))
          return cell;
  }
  return {};
}

void typeInto(ui::NumberEdit& field, const QString& text, const QString& name, ui::Session& session,
              const QWidget& window) {
  ++typed;
  const int before = session.history().index();
  field.selectAll();
  field.insert(text);
  field.commit();
  field.isRefused() ? ++refused : ++taken;
  QApplication::processEvents();
  if (const auto written = core::writeDocument(session.document()); !written)
    complain(name, text, QString::fromStdString(written.error().text()));
  if (const QString said = noNumberOnView(window, &field); !said.isEmpty()) complain(name, text, said);
  QKeyEvent escape(QEvent::KeyPress, Qt::Key_Escape, Qt::NoModifier);
  QApplication::sendEvent(&field, &escape);
  while (session.history().index() > before) session.history().undo();
}

void typeEverywhere(ui::Session& session, const QWidget& window, bool all) {
  std::vector<const char*> texts = {"nan",    "inf", "-inf",   "1e308", "-1e308", "1e999",
                                    "5e-324", "-0",  "1e308k", "∞",     "1e308 %"};
  if (!all) texts = {"nan", "1e308", "5e-324"};
  QList<QPointer<ui::NumberEdit>> fields;
  for (auto* field : window.findChildren<ui::NumberEdit*>()) fields << field;
  for (const QPointer<ui::NumberEdit>& field : fields)
    for (const char* text : texts)
      if (field && field->isEnabled() && !field->isReadOnly())
        typeInto(*field, QString::fromUtf8(text), test::nameForPeople(field), session, window);
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
  QLocale::setDefault(QLocale::c());
  const QStringList words = QApplication::arguments();
  if (words.size() != 3) return 2;
  ui::Session session;
  ui::MainWindow window(session);
  window.resize(1280, 800);
  window.show();
  if (!window.openFile(words[1])) return 2;
  session.selectCheck({});  // a closed check shows fields that nothing is typed into
  session.selectStep(1);
  typeEverywhere(session, window, words[2] == "all");
  std::puts(
      QJsonDocument(QJsonObject{{"typed", typed}, {"refused", refused}, {"taken", taken}, {"wrong", wrong}})
          .toJson(QJsonDocument::Compact)
          .constData());
  session.history().setClean();
  return wrong > 0;
}
