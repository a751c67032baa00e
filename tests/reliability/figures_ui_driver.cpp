// SPDX-License-Identifier: GPL-3.0-or-later
// Types numbers into every field for quantities of the window, under the locale of the environment, and
// saves:
//
//   figures_ui_driver DOCUMENT SAVED EVERY   in every EVERYth field
//
// Prints a line of JSON: which locale the C library and Qt took, how many texts were taken with the value
// that they have anywhere, how many refused, and the ones that became something else.
#include <QApplication>
#include <QDir>
#include <QFile>
#include <QInputMethodEvent>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLocale>
#include <QPointer>
#include <QTemporaryDir>
#include <algorithm>
#include <clocale>
#include <cstdio>
#include <cstdlib>

#include "core/document/json_reader.h"
#include "core/document/json_writer.h"
#include "ui/frame_style.h"
#include "ui/locale.h"
#include "ui/main_window.h"
#include "ui/quantity_edit.h"
#include "ui/safe_file.h"
#include "ui/session.h"

namespace {

/// A number with a point alone, and ways in which people write it.
struct Spelling {
  QString plain;
  QStringList others;
};

QList<Spelling> spellings() {
  return {{"350.25", {"350,25", "350.25", "350,250"}},
          {"1234.5",
           {"1 234,5", "1 234.5", "1'234.5", "1\u2019234.5", "1.234,5", "1,234.5", "1\u00a0234,5",
            "1\u202f234,5", "1234,5", "12345e-1", "\u0661\u0662\u0663\u0664\u066b\u0665",
            "\u06f1\u06f2\u06f3\u06f4\u066b\u06f5"}},
          {"-350.25", {"\u2212350.25", "\u2212350,25", "-350,25", "\u2013350,25"}}};
}

/// As fingers, or the clipboard, put it there.
void type(ui::QuantityEdit& field, const QString& text) {
  field.setFocus();
  field.selectAll();
  QInputMethodEvent event;
  event.setCommitString(text);
  QCoreApplication::sendEvent(&field, &event);
  field.commit();
}

class Typist {
 public:
  explicit Typist(ui::MainWindow& window) : m_window(window) {}

  void typeEverywhere(int every) {
    QList<QPointer<ui::QuantityEdit>> fields;
    for (auto* field : m_window.findChildren<ui::QuantityEdit*>()) fields << field;
    for (int at = 0; at < fields.size(); at += every) {
      const auto field = fields[at];
      for (const Spelling& number : spellings())
        for (const QString& text : number.others)
          if (field && field->isEnabled() && !field->isReadOnly()) tryText(*field, number.plain, text);
    }
  }

  QJsonObject told() const {
    return {{"fields", m_fields.size()}, {"taken", m_taken}, {"refused", m_refused}, {"wrong", m_wrong}};
  }

 private:
  /// A field that refuses the number itself has nothing to say about how it is written.
  void tryText(ui::QuantityEdit& field, const QString& plain, const QString& text) {
    const QPointer<ui::QuantityEdit> kept = &field;
    type(field, plain);
    if (!kept || field.isRefused()) return;
    const auto meant = field.value();
    type(field, "0.125");
    if (!kept) return;
    type(field, text);
    if (!kept) return;
    m_fields.insert(field.objectName());
    const auto value = field.value();
    if (field.isRefused()) {
      ++m_refused;
    } else if (value && meant && std::abs(*value - *meant) <= 1e-12 * std::abs(*meant)) {
      ++m_taken;
    } else {
      m_wrong.append(field.objectName() + ": " + text + " became " +
                     QString::number(value.value_or(0), 'g', 17) + " for " +
                     QString::number(meant.value_or(0), 'g', 17));
    }
  }

  ui::MainWindow& m_window;
  QSet<QString> m_fields;
  int m_taken = 0;
  int m_refused = 0;
  QJsonArray m_wrong;
};

core::Document documentOf(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) qFatal("no document");
  auto document = core::readDocument(file.readAll().toStdString());
  if (!document) qFatal("%s", document.error().text().c_str());
  return *std::move(document);
}

}  // namespace

int main(int count, char** words) {
  Q_INIT_RESOURCE(resources);  // lies in a static library, from where nothing else pulls it in
  if (count != 4) return 2;
  const QTemporaryDir state;
  qputenv("XDG_STATE_HOME", state.path().toUtf8());
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(count, words);  // takes the C locale of the environment
  QJsonObject told{{"c_locale", std::setlocale(LC_NUMERIC, nullptr)},
                   {"c_point", std::localeconv()->decimal_point}};
  std::setlocale(LC_NUMERIC, "C");  // as the program does
  QApplication::setStyle(new ui::FrameStyle);
  ui::useLanguage("");
  told["qt_locale"] = QLocale::system().name();
  told["qt_point"] = QLocale::system().decimalPoint();

  ui::Session session(documentOf(words[1]));
  ui::MainWindow window(session);
  window.show();
  session.selectCheck({});  // a closed check shows fields that nothing is typed into
  const core::Document before = session.document();
  Typist typist(window);
  typist.typeEverywhere(std::max(1, std::atoi(words[3])));
  const QJsonObject typed = typist.told();
  for (auto entry = typed.begin(); entry != typed.end(); ++entry) told[entry.key()] = entry.value();
  // Saved: what was typed, in its last state, from fields of this locale.
  const auto text = core::writeDocument(session.document());
  told["changed"] = session.document() != before;
  told["saved"] = text && ui::saveBytes(words[2], QByteArray::fromStdString(*text));
  std::printf("%s\n", QJsonDocument(told).toJson(QJsonDocument::Compact).constData());
  return 0;
}
