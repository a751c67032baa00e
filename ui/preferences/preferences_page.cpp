// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/preferences/preferences_page.h"

#include <QButtonGroup>
#include <QCheckBox>
#include <QComboBox>
#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "ui/bridge/bridge_look.h"
#include "ui/fields/count_edit.h"
#include "ui/locale.h"
#include "ui/parts.h"
#include "ui/preferences/preferences.h"
#include "ui/record/saving.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int mostWidth_letters = 130;  // a sentence of more is hard to read
constexpr int mostName_letters = 40;
constexpr int textSizeStep_percent = 10;

QScrollArea* scrolled(QWidget* body) {
  auto* scroll = new QScrollArea;
  scroll->setObjectName("preferencesScroll");
  scroll->setAccessibleName(PreferencesPage::tr("Preferences"));
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setWidget(body);
  return scroll;
}

}  // namespace

PreferencesPage::PreferencesPage(QWidget* parent) : QWidget(parent) {
  setObjectName("preferences");
  auto* body = new QWidget;
  m_rows = new QGridLayout(body);
  m_rows->setContentsMargins(12, 4, 12, 12);
  m_rows->setHorizontalSpacing(20);
  m_rows->setVerticalSpacing(2);
  m_rows->setColumnStretch(1, 1);
  addLook();
  addWork();
  addPerson();
  addFoot();
  m_rows->setRowStretch(m_rows->rowCount(), 1);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(scrolled(body));
  setFocusProxy(m_language);
  styleSentences();
  connect(&PreferencesSignal::instance(), &PreferencesSignal::preferencesChanged, this, [this] {
    if (isVisible()) refresh();
  });
  refresh();
}

void PreferencesPage::heading(const QString& text) {
  auto* label = new QLabel(text);
  QFont font = label->font();
  font.setBold(true);
  label->setFont(font);
  label->setContentsMargins(0, m_rows->rowCount() > 1 ? 14 : 4, 0, 2);
  m_rows->addWidget(label, m_rows->rowCount(), 0, 1, 2);
}

void PreferencesPage::row(const QString& name, QWidget* control, const QString& sentence) {
  const int at = m_rows->rowCount();
  auto* label = new QLabel(name);
  label->setTextFormat(Qt::PlainText);
  label->setBuddy(control);
  m_rows->addWidget(label, at, 0, Qt::AlignVCenter);
  m_rows->addWidget(control, at, 1);
  auto* said = plainLabel("");
  said->setText(sentence);
  said->setContentsMargins(0, 0, 0, 8);
  m_sentences.append(said);
  m_rows->addWidget(said, at + 1, 1);
  control->setAccessibleName(name);
  control->setAccessibleDescription(sentence);
  // The wheel scrolls the page and changes nothing that lies under it by chance.
  control->installEventFilter(this);
}

QWidget* PreferencesPage::choices(QButtonGroup*& group, const QString& name, const QStringList& names,
                                  const QStringList& texts) {
  auto* box = new QWidget;
  box->setObjectName(name);
  auto* line = new QHBoxLayout(box);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(18);
  group = new QButtonGroup(box);
  for (int i = 0; i < texts.size(); ++i) {
    auto* button = new QRadioButton(texts[i]);
    button->setObjectName(names[i]);
    group->addButton(button, i);
    line->addWidget(button);
  }
  line->addStretch(1);
  return box;
}

QCheckBox* PreferencesPage::tick(const QString& name, const QString& title, const QString& text,
                                 const QString& sentence, bool Preferences::*field) {
  auto* box = new QCheckBox(text);
  box->setObjectName(name);
  row(title, box, sentence);
  box->setAccessibleName(text);
  m_ticks.append({box, field});
  connect(box, &QCheckBox::toggled, this,
          [this, field](bool on) { change([&](Preferences& wanted) { wanted.*field = on; }); });
  return box;
}

template <typename Set>
void PreferencesPage::change(const Set& set) {
  Preferences wanted = preferences();
  set(wanted);
  setPreferences(wanted);
}

void PreferencesPage::addLook() {
  heading(tr("How it looks"));
  m_language = new QComboBox;
  m_language->setObjectName("preferredLanguage");
  m_language->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
  m_language->addItem(tr("Language of the system"), QString());
  for (const QString& code : interfaceLanguages()) m_language->addItem(languageName(code), code);
  row(tr("Language"), m_language,
      tr("The words of the window and how it writes numbers. They change when the program is started the "
         "next time; files are the same in every language."));
  connect(m_language, &QComboBox::currentIndexChanged, this, [this] {
    change([&](Preferences& wanted) { wanted.language = m_language->currentData().toString(); });
    emit said(tr("The language changes when the program is started the next time."));
  });

  row(tr("Colours"),
      choices(m_colours, "preferredColours", {"coloursSystem", "coloursLight", "coloursDark"},
              {tr("As the desktop"), tr("Light"), tr("Dark")}),
      tr("Dark letters on a light ground, or light ones on a dark ground. The desktop's choice is followed "
         "when it changes."));
  connect(m_colours, &QButtonGroup::idClicked, this, [this](int id) {
    change([&](Preferences& wanted) { wanted.colours = static_cast<Preferences::Colours>(id); });
  });

  m_textPercent = new CountEdit;
  m_textPercent->setObjectName("preferredTextPercent");
  m_textPercent->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
  m_textPercent->setRange(Preferences::leastTextPercent, Preferences::greatestTextPercent);
  m_textPercent->setMouseStep(textSizeStep_percent);
  m_textPercent->setUnit("%");
  m_textPercent->setWaitsForEnter(true);  // 150 is no wish for 15 first
  row(tr("Size of text"), m_textPercent,
      tr("All text of the window, against the size that the desktop has chosen. Drawings fill their room and "
         "have a zoom of their own."));
  connect(m_textPercent, &CountEdit::valueChanged, this,
          [this](int percent) { change([&](Preferences& wanted) { wanted.textPercent = percent; }); });

  tick("preferLessMotion", tr("Motion"), tr("As little as can be"),
       tr("Nothing moves or fades by itself: currents shown as dots stand still, hints go at once."),
       &Preferences::lessMotion);

  row(tr("Resistor symbols"),
      choices(m_symbols, "preferredSymbols", {"preferIec", "preferIeee"},
              {tr("Rectangles (IEC 60617)"), tr("Zigzags (IEEE 315)")}),
      tr("How arms, leads and shunts are drawn in the bridge, on the screen and in reports."));
  connect(m_symbols, &QButtonGroup::idClicked, this, [](int id) {
    BridgeLook look = rememberedBridgeLook();
    look.symbols = id == 1 ? Symbols::Ieee315 : Symbols::Iec60617;
    rememberBridgeLook(look);
    emit PreferencesSignal::instance().preferencesChanged();
  });
}

void PreferencesPage::addWork() {
  heading(tr("How one works"));
  tick("preferOpenLast", tr("At the start"), tr("Open the document that was open last"),
       tr("Else the program starts with an empty document, unless it is started with one."),
       &Preferences::openLast);
  tick("preferAutosave", tr("Unsaved work"), tr("Keep it safe while it is done"),
       tr("A copy of unsaved changes is kept beside, and offered after a crash. The document itself changes "
          "only when it is saved."),
       &Preferences::autosave);
  tick("preferNotify", tr("Long work"), tr("Tell through the desktop when it is done"),
       tr("A notice when a report, a search, an import or trials have taken more than some seconds and "
          "another window is in front."),
       &Preferences::notify);
  tick("preferHints", tr("Empty places"), tr("Say what could be done there"),
       tr("A sentence and the first step, where there is nothing to show yet."), &Preferences::hints);
  auto* keys = new QPushButton(tr("Commands and their keys…"));
  keys->setObjectName("preferredKeys");
  keys->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
  row(tr("Keys"), keys, tr("Every command with its keys, to be searched, changed and printed."));
  keys->setAccessibleName(tr("Commands and their keys"));
  connect(keys, &QPushButton::clicked, this, &PreferencesPage::keysWanted);
}

void PreferencesPage::addPerson() {
  heading(tr("Who works here"));
  m_person = new QLineEdit;
  m_person->setObjectName("preferredPerson");
  row(tr("Name"), m_person,
      tr("Stands in the history of a record, with remarks and with acts of review. Left empty, it is the "
         "name that one logs in with."));
  connect(m_person, &QLineEdit::editingFinished, this,
          [this] { change([&](Preferences& wanted) { wanted.person = m_person->text(); }); });
}

void PreferencesPage::addFoot() {
  auto* reset = new QPushButton(tr("Reset everything to usual…"));
  reset->setObjectName("resetPreferences");
  reset->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
  connect(reset, &QPushButton::clicked, this, &PreferencesPage::askBeforeReset);
  m_rows->setRowMinimumHeight(m_rows->rowCount(), 12);
  m_rows->addWidget(reset, m_rows->rowCount(), 0, 1, 2);
}

void PreferencesPage::askBeforeReset() {
  QMessageBox box(QMessageBox::Question, tr("Reset everything"),
                  tr("Everything on this page and the keys of all commands become as they usually are. "
                     "Documents, stock and templates stay as they are."),
                  QMessageBox::Reset | QMessageBox::Cancel, this);
  box.setObjectName("resetBox");
  box.setTextFormat(Qt::PlainText);
  box.setDefaultButton(QMessageBox::Cancel);
  if (box.exec() != QMessageBox::Reset) return;
  BridgeLook look = rememberedBridgeLook();
  look.symbols = BridgeLook{}.symbols;
  rememberBridgeLook(look);
  setPreferences(usualPreferences());
  emit PreferencesSignal::instance().preferencesChanged();  // of the symbols, where nothing else was changed
  emit resetAll();
  emit said(tr("Everything is as usual again."));
}

void PreferencesPage::refresh() {
  const Preferences now = preferences();
  const QSignalBlocker language(m_language), size(m_textPercent), person(m_person);
  m_language->setCurrentIndex(std::max(0, m_language->findData(now.language)));
  m_colours->button(static_cast<int>(now.colours))->setChecked(true);
  m_textPercent->setValue(now.textPercent);
  m_symbols->button(rememberedBridgeLook().symbols == Symbols::Ieee315 ? 1 : 0)->setChecked(true);
  m_person->setText(now.person);
  m_person->setPlaceholderText(now.person.isEmpty() ? personName() : QString());
  for (const Tick& tick : m_ticks) {
    const QSignalBlocker quiet(tick.box);
    tick.box->setChecked(now.*tick.field);
  }
}

bool PreferencesPage::eventFilter(QObject* watched, QEvent* event) {
  auto* control = qobject_cast<QWidget*>(watched);
  if (event->type() == QEvent::Wheel && control && !control->hasFocus()) {
    event->ignore();
    return true;
  }
  return QWidget::eventFilter(watched, event);
}

/// Sentences are secondary, and no line of them is too long to read.
void PreferencesPage::styleSentences() {
  const int letter = fontMetrics().averageCharWidth();
  // Not that of the sentences: their layout would ask for their height at the width of the page.
  m_rows->parentWidget()->setMaximumWidth(mostWidth_letters * letter);
  for (QLabel* sentence : m_sentences) setTextColour(sentence, coloursFor(palette()).quiet);
  m_person->setMaximumWidth(mostName_letters * letter);
}

void PreferencesPage::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) styleSentences();
  QWidget::changeEvent(event);
}

/// What was changed elsewhere meanwhile.
void PreferencesPage::showEvent(QShowEvent* event) {
  refresh();
  QWidget::showEvent(event);
}

}  // namespace ui
