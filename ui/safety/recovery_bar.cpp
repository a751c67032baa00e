// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safety/recovery_bar.h"

#include <QAccessible>
#include <QFileInfo>
#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QMessageBox>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <QtConcurrentRun>
#include <algorithm>

#include "ui/access/focus_ring.h"
#include "ui/as_typed.h"
#include "ui/parts.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int greatestRecoveryHeight = 220;  // more left-overs than that are scrolled through
constexpr std::size_t mostDifferencesTold = 3;

/// What the work is called: its file, else its title.
QString nameOfWork(const LeftOver& work) {
  if (!work.note.path.isEmpty()) return QFileInfo(work.note.path).fileName();
  return work.note.title.isEmpty() ? RecoveryBar::tr("Untitled document") : work.note.title;
}

QString differencesIn(const LeftOver& work, std::size_t most) {
  QStringList lines;
  for (std::size_t k = 0; k < std::min(most, work.differences.size()); ++k)
    lines << toQString(work.differences[k]);
  return lines.join(most == mostDifferencesTold ? "; " : "\n");
}

/// How the work stands to the document's file.
QString standingOfWork(const LeftOver& work) {
  if (work.note.path.isEmpty()) return RecoveryBar::tr("It was never saved.");
  if (work.fileIsGone) return RecoveryBar::tr("Its file %1 is no longer there.").arg(work.note.path);
  if (work.differences.empty()) return RecoveryBar::tr("It cannot be compared with its file.");
  QString text = RecoveryBar::tr("%n change(s) that the file has not: %1", nullptr,
                                 static_cast<int>(work.differences.size()))
                     .arg(differencesIn(work, mostDifferencesTold));
  if (work.differences.size() > mostDifferencesTold) text += " …";
  if (!work.fileIsNewer) return text;
  return text + "\n" + RecoveryBar::tr("The file was saved after that: look at it before you save over it.");
}

QString textOfWork(const LeftOver& work) {
  const QString when = QLocale().toString(work.note.when, QLocale::ShortFormat);
  if (!work.problem.isEmpty())
    return RecoveryBar::tr("What was kept on %1 is damaged and cannot be recovered: %2. It stays at %3.")
        .arg(when, work.problem, work.slot.file);
  const QString channels =
      RecoveryBar::tr("%n channel(s)", nullptr, static_cast<int>(work.document.channels.size()));
  return RecoveryBar::tr("%1, kept on %2, %3.").arg(nameOfWork(work), when, channels) + "\n" +
         standingOfWork(work);
}

}  // namespace

RecoveryBar::RecoveryBar(QWidget* parent) : SafetyFrame("recoveryBar", parent) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 6, 6, 6);
  m_heading = embolden(plainLabel("recoveryHeading"));
  m_heading->setText(
      tr("The program ended with unsaved work that was kept. Your files are as you saved them."));
  m_scroll = new QScrollArea;
  m_scroll->setFrameShape(QFrame::NoFrame);
  m_scroll->setWidgetResizable(true);
  m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  layout->addWidget(m_heading);
  layout->addWidget(m_scroll);
  m_thread.setMaxThreadCount(1);
  setAccessibleName(tr("Work that was left"));
  m_scroll->setAccessibleName(tr("Work that was left"));
  connect(&m_looking, &QFutureWatcherBase::finished, this, [this] {
    offer(m_looking.future().takeResult());  // no copy stays that would go on holding the locks
  });
  hide();
}

RecoveryBar::~RecoveryBar() { m_thread.waitForDone(); }

void RecoveryBar::look() {
  m_looking.setFuture(QtConcurrent::run(&m_thread, &findLeftOvers, recoveryFolder()));
}

void RecoveryBar::offer(std::vector<LeftOver> found) {
  m_found = std::move(found);
  rebuild();
  if (isHidden()) return;
  QAccessibleEvent alert(m_heading, QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
}

void RecoveryBar::rebuild() {
  auto* page = new QWidget;
  page->setObjectName("recoveryRows");
  page->setAutoFillBackground(false);
  auto* rows = new QGridLayout(page);
  constexpr int edge = FocusRing::thickness_px;  // a ring at the edge covers no word
  rows->setContentsMargins(edge, edge, edge, edge);
  rows->setColumnStretch(0, 1);
  int row = 0;
  for (const LeftOver& work : m_found) addRow(rows, row++, work);
  m_scroll->setWidget(page);
  m_scroll->viewport()->setAutoFillBackground(false);
  page->setAutoFillBackground(false);
  setVisible(!m_found.empty());
  if (m_found.empty()) return emit settled();
  fitHeight();
}

/// As high as the rows need at this width, so that the views keep all the room there is. The keyboard comes
/// to the rows as a whole only where there is something to scroll.
void RecoveryBar::fitHeight() {
  const QWidget* page = m_scroll->widget();
  if (!page || m_found.empty()) return;
  const int width = std::max(contentsRect().width() - 20, 400);
  const int needed = page->layout()->totalHeightForWidth(width);
  m_scroll->setFixedHeight(std::min(needed, greatestRecoveryHeight));
  m_scroll->setFocusPolicy(needed > greatestRecoveryHeight ? Qt::StrongFocus : Qt::NoFocus);
}

void RecoveryBar::resizeEvent(QResizeEvent* event) {
  SafetyFrame::resizeEvent(event);
  fitHeight();
}

void RecoveryBar::addRow(QGridLayout* rows, int row, const LeftOver& work) {
  const QString file = work.slot.file, number = QString::number(row);
  auto* text = plainLabel(qPrintable("recoveryText" + number));
  text->setText(textOfWork(work));
  text->setToolTip(asTyped(differencesIn(work, 40)));
  rows->addWidget(text, row, 0);
  const auto add = [&](int column, const QString& name, const QString& words, const QString& tip, auto act) {
    QPushButton* button = safetyButton(name + number, words, tip);
    button->setAccessibleName(tr("%1: %2").arg(words, nameOfWork(work)));
    // Later: the row with its button goes away by it.
    connect(button, &QPushButton::clicked, this, act, Qt::QueuedConnection);
    rows->addWidget(button, row, column, Qt::AlignTop);
    return button;
  };
  QPushButton* recover =
      add(1, "recoverWork", tr("Recover"),
          tr("Opens the work as unsaved changes; Undo goes back to the file"), [this, file] {
            if (const LeftOver* chosen = workIn(file)) emit recoverWanted(LeftOver(*chosen));
          });
  recover->setEnabled(work.problem.isEmpty());
  add(2, "keepWork", tr("Keep for later"), tr("Offers it again when the program starts the next time"),
      [this, file] { takeOut(file); });
  add(3, "discardWork", tr("Discard…"), tr("Removes the kept work for good, after asking"),
      [this, file] { discard(file); });
}

const LeftOver* RecoveryBar::workIn(const QString& file) const {
  const auto found = std::find_if(m_found.begin(), m_found.end(),
                                  [&](const LeftOver& work) { return work.slot.file == file; });
  return found == m_found.end() ? nullptr : &*found;
}

void RecoveryBar::takeOut(const QString& file) {
  std::erase_if(m_found, [&](const LeftOver& work) { return work.slot.file == file; });
  rebuild();
}

void RecoveryBar::discard(const QString& file) {
  const LeftOver* work = workIn(file);
  if (!work) return;
  const bool hasFile = !work->note.path.isEmpty();
  QMessageBox box(QMessageBox::Question, tr("Discard kept work"),
                  (hasFile ? tr("The kept work on %1 is removed for good. Your own file stays as it is.")
                           : tr("The kept work on %1 is removed for good. It was never saved as a file."))
                      .arg(nameOfWork(*work)),
                  QMessageBox::Discard | QMessageBox::Cancel, this);
  box.setObjectName("discardWorkBox");
  box.setTextFormat(Qt::PlainText);
  box.setDefaultButton(QMessageBox::Cancel);
  if (box.exec() != QMessageBox::Discard) return;
  if (const LeftOver* still = workIn(file)) removeRecovery(still->slot);
  takeOut(file);
}

}  // namespace ui
