// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/command_list.h"

#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QTableView>
#include <QTextDocument>
#include <QTimer>
#include <QVBoxLayout>

#include "ui/commands/command_book.h"
#include "ui/commands/command_model.h"
#include "ui/commands/key_field.h"
#include "ui/parts.h"
#include "ui/preferences/appearance.h"
#include "ui/printed_file.h"

namespace ui {
namespace {

constexpr QSize listSize(920, 620);

QPushButton* listButton(const QString& name, const QString& text) {
  auto* button = new QPushButton(text);
  button->setObjectName(name);
  button->setAutoDefault(false);  // Return is for the chosen command
  return button;
}

}  // namespace

CommandList::CommandList(CommandBook& book, QWidget* parent)
    : QDialog(parent), m_book(book), m_model(new CommandModel(this)) {
  setObjectName("commandList");
  setWindowTitle(tr("Commands and keys"));
  m_model->setCommands(book.commands());
  auto* column = new QVBoxLayout(this);
  column->addWidget(searchRow());
  buildTable();
  column->addWidget(m_table, 1);
  column->addWidget(keyRow());
  column->addWidget(footRow());
  const QSize room = parent ? parent->window()->size() - QSize(40, 40) : listSize;
  resize((listSize * textScale()).boundedTo(room));
  connect(&book, &CommandBook::keysChanged, this, [this] {
    m_model->updateKeys(m_book.commands());
    showChosen();
  });
  chooseFirst();
  m_search->setFocus();
}

QWidget* CommandList::searchRow() {
  auto* row = new QWidget;
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  m_search = new QLineEdit;
  m_search->setObjectName("commandSearch");
  m_search->setClearButtonEnabled(true);
  m_search->setPlaceholderText(tr("Words of the command, its menu or its keys"));
  auto* label = new QLabel(tr("&Find"));
  label->setBuddy(m_search);
  m_search->setAccessibleName(tr("Find a command"));
  line->addWidget(label);
  line->addWidget(m_search, 1);
  m_search->installEventFilter(this);
  connect(m_search, &QLineEdit::textChanged, this, [this](const QString& text) {
    m_model->setFilter(text);
    chooseFirst();
  });
  return row;
}

void CommandList::buildTable() {
  m_table = new QTableView;
  m_table->setObjectName("commandTable");
  m_table->setAccessibleName(tr("Commands"));
  m_table->setModel(m_model);
  m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
  m_table->setSelectionMode(QAbstractItemView::SingleSelection);
  m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  m_table->setShowGrid(false);
  m_table->setTabKeyNavigation(false);
  m_table->setWordWrap(false);
  m_table->verticalHeader()->hide();
  m_table->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 8);
  QHeaderView* head = m_table->horizontalHeader();
  head->setHighlightSections(false);
  head->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  m_table->resizeColumnsToContents();
  const int most = 34 * fontMetrics().averageCharWidth();
  for (const int column : {CommandModel::Text, CommandModel::Place, CommandModel::Keys})
    m_table->setColumnWidth(column, std::min(m_table->columnWidth(column) + 8, most));
  head->setSectionResizeMode(CommandModel::State, QHeaderView::Stretch);
  m_table->installEventFilter(this);
  connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &CommandList::showChosen);
  connect(m_table, &QTableView::doubleClicked, this, &CommandList::runChosen);
}

QWidget* CommandList::keyRow() {
  auto* row = new QWidget;
  auto* column = new QVBoxLayout(row);
  column->setContentsMargins(0, 0, 0, 0);
  m_chosen = plainLabel("chosenCommand");
  embolden(m_chosen);
  column->addWidget(m_chosen);
  auto* line = new QHBoxLayout;
  m_keys = new KeyField;
  m_keys->setObjectName("commandKeys");
  m_keys->setAccessibleName(tr("Keys of the command: press the new ones"));
  m_keys->setPlaceholderText(tr("none; press the keys here"));
  m_clear = listButton("clearKeys", tr("&No keys"));
  m_usual = listButton("usualKeys", tr("&Usual keys"));
  m_take = listButton("takeKeys", tr("&Take them over"));
  m_take->setAutoDefault(true);
  auto* label = new QLabel(tr("&Keys"));
  label->setBuddy(m_keys);
  line->addWidget(label);
  line->addWidget(m_keys, 1);
  line->addWidget(m_clear);
  line->addWidget(m_usual);
  column->addLayout(line);
  auto* told = new QHBoxLayout;
  m_told = plainLabel("keysTold");
  told->addWidget(m_told, 1);
  told->addWidget(m_take);
  column->addLayout(told);
  connect(m_keys, &KeyField::pressed, this, &CommandList::record);
  connect(m_take, &QPushButton::clicked, this, &CommandList::takeOver);
  const auto chosenName = [this] {
    const QModelIndex at = m_table->currentIndex();
    return at.isValid() ? m_model->at(at.row()).name : QString();
  };
  connect(m_clear, &QPushButton::clicked, this, [this, chosenName] { m_book.setKeys(chosenName(), {}); });
  connect(m_usual, &QPushButton::clicked, this, [this, chosenName] { m_book.setUsual(chosenName()); });
  return row;
}

QWidget* CommandList::footRow() {
  auto* row = new QWidget;
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 6, 0, 0);
  auto* all = listButton("allUsualKeys", tr("All keys as &usual"));
  auto* copy = listButton("copyKeys", tr("&Copy the list"));
  auto* print = listButton("printKeys", tr("&Print the list…"));
  m_run = listButton("runCommand", tr("&Do it"));
  auto* close = listButton("closeCommands", tr("Close"));
  for (QPushButton* button : {all, copy, print}) line->addWidget(button);
  line->addStretch(1);
  line->addWidget(m_run);
  line->addWidget(close);
  connect(all, &QPushButton::clicked, this, [this] {
    m_book.setAllUsual();
    tell(tr("All commands have their usual keys again."));
  });
  connect(copy, &QPushButton::clicked, this, &CommandList::copyAll);
  connect(print, &QPushButton::clicked, this, &CommandList::askAndPrint);
  connect(m_run, &QPushButton::clicked, this, &CommandList::runChosen);
  connect(close, &QPushButton::clicked, this, &CommandList::reject);
  return row;
}

void CommandList::chooseFirst() {
  if (m_model->rowCount() > 0) m_table->setCurrentIndex(m_model->index(0, 0));
  showChosen();
}

void CommandList::showChosen() {
  m_wanted = {};
  m_take->hide();
  const QModelIndex at = m_table->currentIndex();
  const bool any = at.isValid() && at.row() < m_model->rowCount();
  const Command command = any ? m_model->at(at.row()) : Command{};
  m_chosen->setText(any ? tr("%1 (%2)").arg(command.text, command.place)
                        : tr("No command has all these words."));
  m_keys->setText(command.keyText());
  const bool own = command.hasOwnKeys();
  m_keys->setEnabled(own);
  m_clear->setEnabled(own && !command.keys.isEmpty());
  m_usual->setEnabled(own && command.keys != m_book.usualKeys(command.name));
  m_run->setEnabled(command.action && command.whyNot.isEmpty());
  if (!command.whyNot.isEmpty())
    m_told->setText(command.whyNot);
  else if (!any || own)
    m_told->clear();
  else
    m_told->setText(command.keys.isEmpty() ? tr("This entry changes with what is open, and can have no keys.")
                                           : tr("These keys belong to their place and stay as they are."));
}

void CommandList::tell(const QString& sentence) {
  m_told->setText(sentence);
  QAccessibleEvent alert(m_told, QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
}

void CommandList::runChosen() {
  const QModelIndex at = m_table->currentIndex();
  if (!at.isValid()) return;
  const Command command = m_model->at(at.row());
  if (!command.action) return tell(tr("Only its place can do this: go there and press the keys."));
  if (!command.whyNot.isEmpty()) return tell(tr("This cannot be done now. %1").arg(command.whyNot));
  accept();
  // After the list is gone, so that the command finds the window as it was.
  QTimer::singleShot(0, command.action, [action = command.action] {
    if (action) action->trigger();
  });
}

// ---- keys ------------------------------------------------------------------------------------

/// While keys wait to be taken over, Return says yes; it cannot be the key of a command.
void CommandList::record(const QKeySequence& key) {
  const bool isReturn = key == QKeySequence(Qt::Key_Return) || key == QKeySequence(Qt::Key_Enter);
  if (isReturn && !m_wanted.isEmpty()) return takeOver();
  const Command command = m_model->at(m_table->currentIndex().row());
  m_take->hide();
  m_wanted = {};
  const QString pressed = key.toString(QKeySequence::NativeText);
  if (const QString refusal = CommandBook::refusalOf(key); !refusal.isEmpty()) return tell(refusal);
  const auto holder = m_book.holderOf(key, command.name);
  if (!holder) {
    m_book.setKeys(command.name, {key});
    return tell(tr("%1 now has the keys %2.").arg(command.text, pressed));
  }
  const QString whose = tr("%1 (%2)").arg(holder->text, holder->place);
  if (!holder->hasOwnKeys()) return tell(tr("%1 is fixed for: %2. Press other keys.").arg(pressed, whose));
  m_wanted = key;
  m_holder = holder->name;
  m_take->show();
  tell(tr("%1 is already for: %2. Taken over, that command has them no more.").arg(pressed, whose));
}

void CommandList::takeOver() {
  if (m_wanted.isEmpty()) return;
  const Command command = m_model->at(m_table->currentIndex().row());
  const QKeySequence wanted = m_wanted;  // which is forgotten as soon as keys change
  const QString pressed = wanted.toString(QKeySequence::NativeText), holder = m_holder;
  m_keys->setFocus();  // before the button goes
  m_book.takeOver(command.name, wanted, holder);
  tell(tr("%1 now has the keys %2.").arg(command.text, pressed));
}

/// The list is walked while one types above it.
bool CommandList::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress) return QDialog::eventFilter(watched, event);
  const int key = static_cast<QKeyEvent*>(event)->key();
  if (key == Qt::Key_Return || key == Qt::Key_Enter) return runChosen(), true;
  const bool walks =
      key == Qt::Key_Up || key == Qt::Key_Down || key == Qt::Key_PageUp || key == Qt::Key_PageDown;
  if (watched != m_search || !walks) return QDialog::eventFilter(watched, event);
  QApplication::sendEvent(m_table, event);
  return true;
}

// ---- on paper --------------------------------------------------------------------------------

QString CommandList::asText() const {
  QString text = tr("Command") + '\t' + tr("Where") + '\t' + tr("Keys") + '\n';
  for (const Command& command : m_model->all())
    text += command.text + '\t' + command.place + '\t' + command.keyText() + '\n';
  return text;
}

void CommandList::copyAll() {
  QApplication::clipboard()->setText(asText());
  tell(tr("The list is on the clipboard, to be pasted into a text or a spreadsheet."));
}

void CommandList::printTo(QPrinter& printer) const {
  QString rows;
  for (const Command& command : m_model->all())
    rows += QStringLiteral("<tr><td>%1</td><td>%2</td><td>%3</td></tr>")
                .arg(command.text.toHtmlEscaped(), command.place.toHtmlEscaped(),
                     command.keyText().toHtmlEscaped());
  QTextDocument document;
  document.setDefaultFont(QFont("DejaVu Sans", 8));
  document.setHtml(QStringLiteral("<h3>%1</h3><table cellpadding='2'><thead><tr><th align='left'>%2</th>"
                                  "<th align='left'>%3</th><th align='left'>%4</th></tr></thead>%5</table>")
                       .arg(windowTitle().toHtmlEscaped(), tr("Command"), tr("Where"), tr("Keys"), rows));
  document.print(&printer);
}

void CommandList::askAndPrint() {
  QPrinter printer;
  QPrintDialog dialog(&printer, this);
  if (dialog.exec() != QDialog::Accepted) return;
  PrintedFile file(printer);
  printTo(printer);
  file.finishOrSay(this);
}

}  // namespace ui
