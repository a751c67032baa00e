// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report/report_dialog.h"

#include <QCloseEvent>
#include <QComboBox>
#include <QCoreApplication>
#include <QEventLoop>
#include <QFileDialog>
#include <QFileInfo>
#include <QGroupBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QSettings>
#include <QSplitter>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/fields/count_edit.h"
#include "ui/locale.h"
#include "ui/notice/long_work.h"
#include "ui/preferences/appearance.h"
#include "ui/printed_file.h"
#include "ui/report/book_maker.h"
#include "ui/report/page_preview.h"
#include "ui/report/report_choices.h"
#include "ui/report/template_list.h"
#include "ui/report_pdf.h"
#include "ui/safe_file.h"
#include "ui/state_file.h"
#include "ui/theme.h"

#include "core/units/language.h"

namespace ui {
namespace {

constexpr int soon_ms = 150;  ///< a series of clicks is one change
constexpr const char *templateKey = "report/template", *formatKey = "report/format";

QToolButton* toolButton(const char* name, const QString& text, const QString& tip) {
  auto* button = new QToolButton;
  button->setObjectName(name);
  button->setText(text);
  button->setToolTip(tip);
  button->setAccessibleName(tip);
  return button;
}

}  // namespace

ReportDialog::ReportDialog(Session& session, const QString& suggested, QWidget* parent)
    : QDialog(parent), m_session(session), m_document(session.document()), m_suggested(suggested) {
  setObjectName("reportDialog");
  setWindowTitle(tr("Report"));
  auto* splitter = new QSplitter;
  splitter->addWidget(m_left = makeLeft());
  splitter->addWidget(m_right = makeRight());
  splitter->setStretchFactor(1, 1);
  splitter->setChildrenCollapsible(false);
  auto* column = new QVBoxLayout(this);
  column->addWidget(splitter, 1);
  column->addLayout(makeButtons());
  resize(1120, 780);

  m_soon.setSingleShot(true);
  m_soon.setInterval(soon_ms);
  connect(&m_soon, &QTimer::timeout, this, &ReportDialog::makeBook);
  connect(m_templates, &TemplateList::chosenChanged, this,
          [this] { m_choices->show(m_templates->chosen()); });
  connect(m_templates, &TemplateList::refused, this, &ReportDialog::refused);
  connect(m_choices, &ReportChoices::changed, this, &ReportDialog::changeOrder);
  const QSettings state = stateFile();
  m_format->setCurrentIndex(std::max(0, m_format->findData(state.value(formatKey).toString())));
  m_templates->choose(state.value(templateKey).toString());
  makeBook();
  m_preview->setFocus();
}

ReportDialog::~ReportDialog() {
  m_preview->setMaker(nullptr);
  QSettings state = stateFile();
  state.setValue(templateKey, toQString(m_templates->chosen().name));
  state.setValue(formatKey, m_format->currentData());
}

QWidget* ReportDialog::makeLeft() {
  auto* inside = new QWidget;
  auto* column = new QVBoxLayout(inside);
  auto* templates = new QGroupBox(tr("Template"));
  (new QVBoxLayout(templates))->addWidget(m_templates = new TemplateList);
  const std::size_t channel = m_session.selection().channel.value_or(0);
  m_choices = new ReportChoices(m_document, channel);
  column->addWidget(templates);
  column->addWidget(m_choices);
  column->addStretch();
  auto* scroll = new QScrollArea;
  scroll->setWidget(inside);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setMinimumWidth(inside->minimumSizeHint().width() + 24);
  return scroll;
}

QWidget* ReportDialog::makeRight() {
  auto* right = new QWidget;
  auto* column = new QVBoxLayout(right);
  m_preview = new PagePreview;
  column->addLayout(makeTurning());
  column->addWidget(m_preview, 1);
  connect(m_preview, &PagePreview::pageChanged, this, &ReportDialog::showPageNumber);
  return right;
}

QLayout* ReportDialog::makeTurning() {
  auto* back = toolButton("previousPage", "‹", tr("Previous page"));
  auto* on = toolButton("nextPage", "›", tr("Next page"));
  auto* out = toolButton("zoomOut", "−", tr("Smaller"));
  auto* fit = toolButton("zoomFit", tr("Fit"), tr("The whole page"));
  auto* in = toolButton("zoomIn", "+", tr("Larger"));
  m_page = new CountEdit;
  m_page->setObjectName("previewPage");
  m_page->setAccessibleName(tr("Page shown"));
  m_page->setWaitsForEnter(true);
  m_pages = new QLabel;
  m_pages->setObjectName("previewPages");
  auto* row = new QHBoxLayout;
  for (QWidget* widget : std::initializer_list<QWidget*>{back, m_page, m_pages, on}) row->addWidget(widget);
  row->addStretch();
  for (QWidget* widget : {out, fit, in}) row->addWidget(widget);
  connect(back, &QToolButton::clicked, m_preview, [this] { m_preview->setPage(m_preview->page() - 1); });
  connect(on, &QToolButton::clicked, m_preview, [this] { m_preview->setPage(m_preview->page() + 1); });
  connect(m_page, &CountEdit::valueChanged, m_preview, [this](int page) { m_preview->setPage(page - 1); });
  connect(out, &QToolButton::clicked, m_preview, &PagePreview::zoomOut);
  connect(in, &QToolButton::clicked, m_preview, &PagePreview::zoomIn);
  connect(fit, &QToolButton::clicked, m_preview, [this] { m_preview->setZoom(0); });
  return row;
}

QLayout* ReportDialog::makeButtons() {
  m_state = new QLabel;
  m_state->setObjectName("reportState");
  m_state->setTextFormat(Qt::PlainText);
  m_progress = new QProgressBar;
  m_progress->setObjectName("reportProgress");
  m_progress->setRange(0, 1000);
  m_progress->setTextVisible(false);
  m_progress->setMaximumWidth(atTextSize(220));
  const auto button = [](const char* name, const QString& text) {
    auto* made = new QPushButton(text);
    made->setObjectName(name);
    made->setAutoDefault(false);
    return made;
  };
  m_format = new QComboBox;
  m_format->setObjectName("reportFormat");
  m_format->setAccessibleName(tr("Format of the file"));
  for (const ReportFormat each : reportFormats) m_format->addItem(nameOf(each), suffixOf(each));
  m_cancel = button("cancelReport", tr("Ca&ncel"));
  m_save = button("saveReport", tr("&Save as…"));
  m_print = button("printReport", tr("&Print…"));
  m_close = button("closeReport", tr("&Close"));
  m_save->setDefault(true);
  m_cancel->hide();
  auto* row = new QHBoxLayout;
  row->addWidget(m_state);
  row->addWidget(m_progress);
  row->addStretch();
  for (QWidget* each : std::initializer_list<QWidget*>{m_cancel, m_print, m_format, m_save, m_close})
    row->addWidget(each);
  connect(m_cancel, &QPushButton::clicked, this, &ReportDialog::cancelWriting);
  connect(m_save, &QPushButton::clicked, this, &ReportDialog::askForFile);
  connect(m_print, &QPushButton::clicked, this, &ReportDialog::askForPrinter);
  connect(m_close, &QPushButton::clicked, this, &ReportDialog::reject);
  return row;
}

core::ReportOrder ReportDialog::order() const {
  core::ReportOrder order;
  order.content = m_choices->content();
  order.channels = m_choices->channels();
  order.printed = toDate(QDate::currentDate());
  order.program = ("Shuntwright " + QCoreApplication::applicationVersion()).trimmed().toStdString();
  order.language = languageFor(order.content.language, order.content.localNumbers);
  return order;
}

ReportFormat ReportDialog::format() const { return reportFormats[std::size_t(m_format->currentIndex())]; }

void ReportDialog::changeOrder() {
  m_templates->setWanted(m_choices->content());
  m_soon.start();
}

/// The pages as they are wanted now; those before are forgotten.
void ReportDialog::makeBook() {
  m_soon.stop();
  m_preview->setMaker(nullptr);
  m_maker = std::make_unique<BookMaker>(m_document, order());
  m_preview->setMaker(m_maker.get());
  m_state->setText(tr("Laying out the pages"));
  m_progress->show();
  connect(m_maker.get(), &BookMaker::progressed, this, [this](double share) {
    if (!m_isWriting) showProgress(share);
  });
  connect(m_maker.get(), &BookMaker::finished, this, [this] {
    showPageNumber();
    if (!m_isWriting) end();
    emit previewReady();
  });
  showPageNumber();
}

void ReportDialog::showPageNumber() {
  const int count = m_preview->pageCount();
  const QSignalBlocker quiet(m_page);
  m_page->setRange(std::min(1, count), std::max(1, count));
  m_page->setValue(m_preview->page() + 1);
  const bool all = m_maker && m_maker->isFinished();
  m_pages->setText(all ? tr("of %1").arg(count) : tr("of %1 so far").arg(count));
}

void ReportDialog::showProgress(double share) { m_progress->setValue(int(1000 * share)); }

void ReportDialog::begin(const QString& what) {
  m_isWriting = true;
  m_stop = std::stop_source();
  m_state->setText(what);
  showProgress(0);
  for (QWidget* each : std::initializer_list<QWidget*>{m_left, m_right, m_format, m_save, m_print})
    each->setEnabled(false);
  m_progress->show();
  m_cancel->show();
  m_cancel->setFocus();
}

void ReportDialog::end() {
  m_isWriting = false;
  for (QWidget* each : std::initializer_list<QWidget*>{m_left, m_right, m_format, m_save, m_print})
    each->setEnabled(true);
  m_cancel->hide();
  m_progress->hide();
  m_state->clear();
}

bool ReportDialog::tell(const QString& path, const core::Result<void>& written) {
  const bool wasStopped = m_stop.stop_requested();
  end();
  if (written) {
    m_state->setText(tr("Wrote %1.").arg(QFileInfo(path).fileName()));
    emit said(tr("Wrote %1.").arg(path));
  } else if (wasStopped) {
    m_state->setText(tr("Cancelled: nothing was written."));
  } else {
    m_state->setText(tr("No report: %1").arg(toText(written.error())));
    emit refused(m_state->text());
  }
  return bool(written);
}

/// Waits for the pages of the preview while events go on; false when it was cancelled.
bool ReportDialog::finishBook() {
  if (m_soon.isActive()) makeBook();
  QEventLoop loop;
  connect(m_maker.get(), &BookMaker::finished, &loop, &QEventLoop::quit);
  connect(this, &ReportDialog::writingCancelled, &loop, &QEventLoop::quit);
  if (!m_maker->isFinished() && !m_stop.stop_requested()) loop.exec();
  return m_maker->isFinished() && !m_stop.stop_requested();
}

bool ReportDialog::writeTo(const QString& typed) {
  if (m_isWriting) return false;
  const QString path = QFileInfo(typed).suffix().isEmpty() ? typed + "." + suffixOf(format()) : typed;
  const auto kind = reportFormatOf(path);
  if (!kind) {
    emit refused(tr("A report is not written as “%1”. Let the name end in .pdf, .xlsx, .html, .csv or .json.")
                     .arg(QFileInfo(path).fileName()));
    return false;
  }
  const LongWork time;
  begin(tr("Writing %1").arg(QFileInfo(path).fileName()));
  const auto progress = [this](double share) { showProgress(share); };
  const core::Error stopped{"report", core::say("was stopped before it was finished"), ""};
  core::Result<QByteArray> bytes = stopped;
  if (*kind != ReportFormat::Pdf)
    bytes = reportBytes(m_document, order(), *kind, progress, m_stop.get_token());
  else if (finishBook())
    bytes = reportPdf(*m_maker, progress, m_stop.get_token());
  const bool written = tell(path, bytes ? saveBytes(path, *bytes) : core::Result<void>(bytes.error()));
  if (!m_stop.stop_requested())
    time.done(written ? tr("The report %1 is written.").arg(QFileInfo(path).fileName())
                      : tr("The report %1 could not be written.").arg(QFileInfo(path).fileName()));
  return written;
}

bool ReportDialog::printOn(QPrinter& printer) {
  if (m_isWriting) return false;
  begin(tr("Printing"));
  if (!finishBook()) {
    tell({}, core::Error{"report", core::say("was stopped before it was finished"), ""});
    return false;
  }
  PrintedFile file(printer);
  printer.setFullPage(true);
  printer.setDocName(toQString(m_maker->book()->report().title));
  const int pages = int(m_maker->book()->pageCount());
  const int from = printer.fromPage() > 0 ? printer.fromPage() : 1;
  const int to = printer.toPage() > 0 ? std::min(pages, printer.toPage()) : pages;
  QPainter painter;
  bool fine = painter.begin(&printer);
  for (int page = from; fine && page <= to && !m_stop.stop_requested(); ++page) {
    if (page > from) fine = printer.newPage();
    m_maker->drawPictures(std::size_t(page - 1));
    const QSizeF room = printer.paperRect(QPrinter::DevicePixel).size();
    // On another paper the page is made smaller, and never cut.
    const double scale =
        std::min(room.width() / ReportBook::paper().width(), room.height() / ReportBook::paper().height());
    painter.save();
    painter.scale(scale, scale);
    m_maker->book()->paint(painter, std::size_t(page - 1));
    painter.restore();
    showProgress(double(page - from + 1) / double(to - from + 1));
    QCoreApplication::processEvents();
  }
  if (m_stop.stop_requested()) printer.abort();
  if (painter.isActive()) painter.end();
  const bool wasStopped = m_stop.stop_requested();
  end();
  const auto written = fine && !wasStopped ? file.finish() : core::Result<void>();
  m_state->setText(wasStopped ? tr("Cancelled.") : fine && written ? tr("Sent to the printer.") : QString());
  if (!written) {
    emit refused(tr("Not printed: %1").arg(toText(written.error())));
    return false;
  }
  if (!fine) emit refused(tr("Not printed: the printer takes no pages. Look whether it is there and ready."));
  return fine && !wasStopped;
}

void ReportDialog::cancelWriting() {
  m_stop.request_stop();
  emit writingCancelled();
}

/// While something is written, closing ends that first.
void ReportDialog::reject() {
  if (m_isWriting) return cancelWriting();
  QDialog::reject();
}

void ReportDialog::askForFile() {
  QStringList filters;
  for (const ReportFormat each : reportFormats) filters << nameOf(each) + " (*." + suffixOf(each) + ")";
  QString filter = filters[m_format->currentIndex()];
  QString path = QFileDialog::getSaveFileName(this, tr("Save report"), m_suggested + "." + suffixOf(format()),
                                              filters.join(";;"), &filter);
  if (path.isEmpty()) return;
  if (QFileInfo(path).suffix().isEmpty())
    path += "." + suffixOf(reportFormats[std::size_t(filters.indexOf(filter))]);
  m_suggested = QFileInfo(path).path() + "/" + QFileInfo(path).completeBaseName();
  writeTo(path);
}

void ReportDialog::askForPrinter() {
  QPrinter printer(QPrinter::HighResolution);
  printer.setPageSize(QPageSize(QPageSize::A4));
  QPrintDialog dialog(&printer, this);
  dialog.setOption(QAbstractPrintDialog::PrintPageRange);
  if (dialog.exec() == QDialog::Accepted) printOn(printer);
}

}  // namespace ui
