// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QFile>
#include <QGraphicsScene>
#include <QGraphicsSimpleTextItem>
#include <QGraphicsTextItem>
#include <QGraphicsView>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QRegularExpression>
#include <QTabBar>
#include <QTest>
#include <QTextDocument>
#include <QTimer>
#include <QTranslator>
#include <set>

#include "core/document/json_reader.h"
#include "ui/locale.h"
#include "ui/main_window.h"
#include "ui/session.h"
#include "ui/theme.h"

// The whole window in a language whose every text stands in brackets: what shows without them has not been
// translated, whoever wrote it. A text gets its brackets when the German file has it, so that what German
// readers would find in English is found too.

/// Pictures lie in a static library, from where nothing else pulls them in. Qt's rule: within no namespace.
static void openResources() { Q_INIT_RESOURCE(resources); }

namespace ui {
namespace {

constexpr char16_t opening = u'⟦', closing = u'⟧';

QString bracketed(const QString& text) {
  static const QRegularExpression keys("^(Ctrl|Alt|Shift|Home|Del|F\\d)");
  return keys.match(text).hasMatch() ? text : QChar(opening) + text + QChar(closing);
}

/// Looks texts up as the program does: under their class, else among all of the window.
class German : public QTranslator {
 public:
  QString translate(const char* context, const char* text, const char* comment, int n) const override {
    const QString own = QTranslator::translate(context, text, comment, n);
    return own.isNull() ? QTranslator::translate("ui", text, comment, n) : own;
  }
};

class Pseudo : public QTranslator {
 public:
  explicit Pseudo(const QTranslator& german) : m_german(german) {}
  bool isEmpty() const override { return false; }
  QString translate(const char* context, const char* text, const char* comment, int n) const override {
    return m_german.translate(context, text, comment, n).isNull() ? QString() : bracketed(text);
  }

 private:
  const QTranslator& m_german;
};

std::shared_ptr<core::Language> pseudoCore(const QTranslator& german) {
  auto words = std::make_shared<core::Language>();
  words->translate = [&german](std::string_view english) {
    const std::string text(english);
    const bool isKnown = !german.translate("core", text.c_str()).isEmpty();
    return isKnown ? bracketed(QString::fromStdString(text)).toStdString() : text;
  };
  words->translateCount = [&german](std::string_view english, std::size_t) {
    const std::string text(english);
    const bool isKnown = !german.translate("core", text.c_str(), nullptr, 2).isEmpty();
    return isKnown ? bracketed(QString::fromStdString(text)).toStdString() : std::string();
  };
  return words;
}

/// What stands outside of all brackets.
QString outside(const QString& text) {
  QString left;
  int depth = 0;
  for (const QChar c : text)
    if (c == opening)
      ++depth;
    else if (c == closing)
      --depth;
    else if (depth == 0)
      left += c;
  return left;
}

/// Words of the document's own texts, and what is the same in every language.
std::set<QString> wordsOfNobody(const QString& document) {
  std::set<QString> words;
  static const QRegularExpression values("\"((?:[^\"\\\\]|\\\\.)*)\"(\\s*:)?"), word("\\p{L}{3,}");
  for (auto value = values.globalMatch(document); value.hasNext();) {
    const auto entry = value.next();
    for (auto found = word.globalMatch(entry.captured(1)); found.hasNext();)
      if (const QString one = found.next().captured(); entry.captured(2).isEmpty()) words.insert(one);
  }
  for (int month = 1; month <= 12; ++month)
    words.insert(QLocale().standaloneMonthName(month, QLocale::ShortFormat));
  // Names of nodes and distributions are typed as files have them; what stays so is told in the README beside
  // the translations.
  for (const char* typed :
       {"arm", "begin", "end", "return", "zero", "rectangular", "normal", "triangular", "arcsine"})
    words.insert(typed);
  for (const char* same :
       {"Shuntwright", "bridgecal", "ppm",  "kHz",   "PDF",  "SVG", "PNG",   "CSV",  "XLSX",   "HTML",
        "JSON",        "sense",     "IEC",  "IEEE",  "AWG",  "BIC", "AIC",   "JCGM", "ISO",    "TSV",
        "English",     "Deutsch",   "SHA",  "SPICE", "Ctrl", "Alt", "Shift", "Del",  "Delete", "Home",
        "CH",          "max",       "demo", "SPDX",  "Qt",   "GPL", "home",  "tmp"})
    words.insert(same);
  return words;
}

class Walk {
 public:
  explicit Walk(std::set<QString> known) : m_known(std::move(known)) {}

  void look(QWidget& root) {
    for (QWidget* widget : root.findChildren<QWidget*>())
      if (widget->isVisibleTo(&root)) lookAt(*widget);
    lookAt(root);
  }
  void lookAtMenu(QMenu& menu) {
    take(menu.title(), menu);
    for (QAction* action : menu.actions()) {
      if (action->menu()) lookAtMenu(*action->menu());
      take(action->text(), menu);
    }
  }
  const std::map<QString, QString>& bare() const { return m_bare; }
  std::size_t texts() const { return m_seen.size(); }

 private:
  void take(const QString& rich, const QWidget& where) {
    if (where.objectName().startsWith("recordFingerprint")) return;  // digits, some of which are letters
    if (rich.isEmpty() || !m_seen.insert(rich).second) return;
    QString text = rich;
    if (Qt::mightBeRichText(text)) {
      QTextDocument plain;
      plain.setHtml(text);
      text = plain.toPlainText();
    }
    static const QRegularExpression word("\\p{L}{3,}");
    for (auto found = word.globalMatch(outside(text)); found.hasNext();)
      if (const QString one = found.next().captured(); !m_known.count(one)) {
        m_bare[rich.left(160)] = QString(where.metaObject()->className()) + " " + where.objectName();
        return;
      }
  }

  void lookAt(const QWidget& widget) {
    for (const QString& text :
         {widget.toolTip(), widget.whatsThis(), widget.accessibleName(), widget.accessibleDescription(),
          widget.isWindow() ? widget.windowTitle() : QString()})
      take(text, widget);
    if (const auto* label = qobject_cast<const QLabel*>(&widget)) take(label->text(), widget);
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) take(button->text(), widget);
    if (const auto* box = qobject_cast<const QGroupBox*>(&widget)) take(box->title(), widget);
    if (const auto* edit = qobject_cast<const QLineEdit*>(&widget)) take(edit->placeholderText(), widget);
    if (const auto* combo = qobject_cast<const QComboBox*>(&widget))
      for (int k = 0; k < combo->count(); ++k) take(combo->itemText(k), widget);
    if (const auto* tabs = qobject_cast<const QTabBar*>(&widget))
      for (int k = 0; k < tabs->count(); ++k)
        take(tabs->tabText(k), widget), take(tabs->tabToolTip(k), widget);
    if (const auto* view = qobject_cast<const QAbstractItemView*>(&widget)) lookAtItems(*view);
    if (const auto* view = qobject_cast<const QGraphicsView*>(&widget); view && view->scene())
      for (const QGraphicsItem* item : view->scene()->items()) {
        if (const auto* simple = qgraphicsitem_cast<const QGraphicsSimpleTextItem*>(item))
          take(simple->text(), widget);
        if (const auto* rich = qgraphicsitem_cast<const QGraphicsTextItem*>(item))
          take(rich->toPlainText(), widget);
      }
  }

  void lookAtItems(const QAbstractItemView& view) {
    if (view.objectName() == "recordHistory") return;  // as it stands in the file
    const QAbstractItemModel* model = view.model();
    if (!model || qobject_cast<const QHeaderView*>(&view)) return;
    const int columns = model->columnCount(), rows = std::min(model->rowCount(), 40);
    for (int column = 0; column < columns; ++column) {
      take(model->headerData(column, Qt::Horizontal).toString(), view);
      take(model->headerData(column, Qt::Horizontal, Qt::ToolTipRole).toString(), view);
      for (int row = 0; row < rows; ++row) {
        take(model->index(row, column).data().toString(), view);
        take(model->index(row, column).data(Qt::ToolTipRole).toString(), view);
      }
    }
  }

  std::set<QString> m_known, m_seen;
  std::map<QString, QString> m_bare;  ///< text, and which widget has it
};

/// Actions that leave the window, open a dialog of the system, write, or take things away.
bool isLeftAlone(const QString& name) {
  static const QRegularExpression some(
      "^$|quit|^open|save|print|export|remove|netlist|copy|undo|redo|^new$|paste|cut|clear|recent|"
      "teachPresent|language|"
      "view(Light|Dark|System)|checkRecording|channelImport|manual|help|tour|text(Larger|Smaller|Usual)",
      QRegularExpression::CaseInsensitiveOption);
  return some.match(name).hasMatch();
}

/// Triggers each command, looks at what is there then, and closes what opened.
void walkAll(MainWindow& window, Walk& walk) {
  QTimer closer;
  closer.setInterval(30);
  QObject::connect(&closer, &QTimer::timeout, [&walk] {
    if (QWidget* dialog = QApplication::activeModalWidget()) {
      if (!dialog->inherits("QFileDialog")) walk.look(*dialog);  // the library's own
      dialog->close();
    } else if (QWidget* menu = QApplication::activePopupWidget()) {
      menu->close();
    }
  });
  closer.start();
  walk.look(window);
  for (QAction* menu : window.menuBar()->actions())
    if (menu->menu()) walk.lookAtMenu(*menu->menu());
  for (QAction* action : window.findChildren<QAction*>()) {
    if (!action->isEnabled() || isLeftAlone(action->objectName())) continue;
    action->trigger();
    QTest::qWait(60);
    walk.look(window);
  }
  closer.stop();
}

QByteArray demoText() {
  QFile file(SHUNTWRIGHT_SOURCE_DIR "/examples/demo.bridgecal");
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

TEST(PseudoLanguage, EveryTextOfTheWindowIsTranslated) {
  openResources();
  interfaceLanguages();  // opens the compiled translations
  German german;
  ASSERT_TRUE(german.load(":/translations/shuntwright_de.qm"));
  Pseudo pseudo(german);
  ASSERT_TRUE(QCoreApplication::installTranslator(&pseudo));
  const auto before = core::currentLanguage();
  core::setLanguage(pseudoCore(german));
  const QByteArray text = demoText();
  auto document = core::readDocument({text.constData(), std::size_t(text.size())});
  ASSERT_TRUE(document);
  Walk walk(wordsOfNobody(QString::fromUtf8(text)));
  {
    Session session(*std::move(document));
    MainWindow window(session);
    window.resize(1280, 800);
    window.show();
    session.selectChannel(1);
    session.selectStep(1);
    walkAll(window, walk);
  }
  core::setLanguage(before);
  QCoreApplication::removeTranslator(&pseudo);
  EXPECT_GT(walk.texts(), 500u) << "little was looked at";
  for (const auto& [bare, where] : walk.bare())
    ADD_FAILURE() << bare.toStdString() << "\n    in " << where.toStdString();
}

}  // namespace
}  // namespace ui
