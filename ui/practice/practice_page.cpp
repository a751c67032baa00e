// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/practice/practice_page.h"

#include <QApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QProgressDialog>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "ui/notice/long_work.h"
#include "ui/practice/practice_pdf.h"
#include "ui/practice/practice_score.h"
#include "ui/practice/practice_start_page.h"
#include "ui/practice/practice_summary_page.h"
#include "ui/practice/question_page.h"
#include "ui/safe_file.h"
#include "ui/theme.h"

namespace ui {
namespace {

/// "NAME-answers.pdf" beside "NAME.pdf".
QString besideForAnswers(const QString& path) {
  const QFileInfo file(path);
  return file.path() + "/" + file.completeBaseName() + "-answers." + file.suffix();
}

}  // namespace

PracticePage::PracticePage(Session&, QWidget* parent) : QWidget(parent) {
  setObjectName("practicePage");
  setAccessibleName(tr("Practice"));
  m_source = [](const PracticeSet& set, std::size_t index) {
    return core::questionOf(set.seed, index, set.difficulty, set.kinds);
  };
  m_pages = new QStackedWidget;
  m_pages->addWidget(m_start = new PracticeStartPage);
  m_pages->addWidget(m_ask = new QuestionPage);
  m_pages->addWidget(m_summary = new PracticeSummaryPage);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(14, 10, 14, 10);
  column->addWidget(m_pages);
  connectPages();
}

void PracticePage::connectPages() {
  connect(m_start, &PracticeStartPage::begun, this, [this](const PracticeSet& set) { begin(runOf(set)); });
  connect(m_start, &PracticeStartPage::goOnWanted, this, &PracticePage::goOn);
  connect(m_start, &PracticeStartPage::refused, this, &PracticePage::tellRefusal);
  connect(m_start, &PracticeStartPage::sheetsWanted, this, [this](bool questions, bool answers) {
    if (const auto set = m_start->set()) askForSheets(*set, questions, answers);
  });
  connect(m_ask, &QuestionPage::answered, this, &PracticePage::take);
  connect(m_ask, &QuestionPage::nextWanted, this, &PracticePage::afterAnswer);
  connect(m_ask, &QuestionPage::startWanted, this, &PracticePage::openStart);
  connect(m_ask, &QuestionPage::refused, this, &PracticePage::tellRefusal);
  connect(m_summary, &PracticeSummaryPage::lookWanted, this, &PracticePage::look);
  connect(m_summary, &PracticeSummaryPage::repeatWanted, this, [this] {
    if (auto repeat = m_run ? repeatOfWrong(*m_run) : std::nullopt) begin(*std::move(repeat));
  });
  connect(m_summary, &PracticeSummaryPage::againWanted, this, [this] {
    if (!m_run) return;
    PracticeRun again = runOf(m_run->set);
    again.isRepeat = true;  // its answers were seen
    begin(std::move(again));
  });
  connect(m_summary, &PracticeSummaryPage::startWanted, this, [this] {
    m_start->proposeSeed();
    openStart();
  });
  // A command list reaches the entries of a page that is not on view, before anything was practised too.
  connect(m_summary, &PracticeSummaryPage::sheetsWanted, this, [this](bool questions, bool answers) {
    if (m_run) askForSheets(m_run->set, questions, answers);
  });
}

void PracticePage::begin(PracticeRun run) {
  m_run = std::move(run);
  keepPlace(*m_run);
  askNext();
}

void PracticePage::tellRefusal(const QString& reason) {
  m_toldRefusal = !reason.isEmpty();
  emit refused(reason);
}

/// An answer that is taken, or another page, puts what was told out of date.
void PracticePage::takeBackRefusal() {
  if (m_toldRefusal) tellRefusal({});
}

void PracticePage::goOn() {
  if (!m_run || m_run->isOver()) m_run = keptPlace();
  m_run ? askNext() : openStart();
}

void PracticePage::askNext() {
  m_looking = false;
  const std::size_t position = m_run->given.size();
  m_question = m_source(m_run->set, m_run->order[position]);
  m_ask->ask(m_question, *m_run, position);
  open(m_ask);
}

void PracticePage::take(const GivenAnswer& answer) {
  takeBackRefusal();
  m_run->given.push_back(answer);
  if (!m_run->isRepeat) countAnswer(m_question.kind, m_run->set.difficulty, answer.right);
  if (m_run->isOver()) countSet(*m_run);
  keepPlace(*m_run);
  m_ask->showAnswered(m_question, *m_run, m_run->given.size() - 1);
  takeKeyboard();
}

void PracticePage::look(std::size_t position) {
  m_looking = true;
  m_question = m_source(m_run->set, m_run->order[position]);
  m_ask->showAnswered(m_question, *m_run, position);
  open(m_ask);
}

void PracticePage::afterAnswer() { m_looking || m_run->isOver() ? openSummary() : askNext(); }

void PracticePage::openStart() {
  const bool underWay = m_run && !m_run->isOver();
  m_start->refresh(underWay ? m_run : keptPlace());
  open(m_start);
}

void PracticePage::openSummary() {
  m_summary->show(*m_run);
  open(m_summary);
}

void PracticePage::open(QWidget* page) {
  const bool keyboard = hasFocus() || isAncestorOf(QApplication::focusWidget());
  takeBackRefusal();
  m_pages->setCurrentWidget(page);
  if (keyboard) takeKeyboard();
}

void PracticePage::takeKeyboard() {
  QWidget* page = m_pages->currentWidget();
  if (page == m_start) return m_start->takeKeyboard();
  page == m_ask ? m_ask->takeKeyboard() : m_summary->takeKeyboard();
}

void PracticePage::focusInEvent(QFocusEvent*) { takeKeyboard(); }

void PracticePage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (m_pages->currentWidget() == m_start) openStart();
}

void PracticePage::askForSheets(const PracticeSet& set, bool questions, bool answers) {
  const QString proposed = QString("practice-%1%2.pdf").arg(set.seed).arg(questions ? "" : "-answers");
  QString path =
      QFileDialog::getSaveFileName(this, tr("Print sheets"), proposed, tr("Sheets to be printed (*.pdf)"));
  if (path.isEmpty()) return;
  if (QFileInfo(path).suffix().isEmpty()) path += ".pdf";
  if (!(questions && answers)) {
    writeSheets(set, path, answers);
    return;
  }
  const QString second = besideForAnswers(path);
  if (QFileInfo::exists(second)) {
    QMessageBox box(QMessageBox::Question, tr("Print sheets"),
                    tr("%1 is there already. Write the answers over it?").arg(QFileInfo(second).fileName()),
                    QMessageBox::Yes | QMessageBox::Cancel, this);
    box.setTextFormat(Qt::PlainText);
    if (box.exec() != QMessageBox::Yes) return;
  }
  if (writeSheets(set, path, false)) writeSheets(set, second, true);
}

/// The pages are drawn on this thread, since text is laid out on it; a modal dialog lives between them.
bool PracticePage::writeSheets(const PracticeSet& set, const QString& path, bool answers) {
  const LongWork time;
  QProgressDialog dialog(tr("Writing the sheets"), tr("Cancel"), 0, 100, this);
  dialog.setWindowModality(Qt::WindowModal);
  dialog.setMinimumDuration(300);
  std::stop_source stop;
  connect(&dialog, &QProgressDialog::canceled, &dialog, [&stop] { stop.request_stop(); });
  const auto bytes = practicePdf(
      set.seed, set.count, set.difficulty, set.kinds, answers,
      [&dialog](double share) { dialog.setValue(static_cast<int>(100 * share)); }, stop.get_token());
  const core::Result<void> written = bytes ? saveBytes(path, *bytes) : core::Result<void>(bytes.error());
  if (!written) {
    emit refused(toText(written.error()));
    return false;
  }
  emit said(tr("Sheets written to %1.").arg(path));
  time.done(tr("The practice sheets %1 are written.").arg(QFileInfo(path).fileName()));
  return true;
}

}  // namespace ui
