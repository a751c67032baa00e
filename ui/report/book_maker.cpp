// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report/book_maker.h"

#include <QPromise>
#include <QtConcurrentRun>
#include <algorithm>

namespace ui {
namespace {

constexpr qint64 slice_ms = 8;    ///< of this thread at a time: half a frame
constexpr int whole = 1000;       ///< of the progress of the words
constexpr double worded = 0.7;    ///< share of the work until it is known what the report says
constexpr std::size_t first = 4;  ///< chapters that are shown before the others are there

}  // namespace

BookMaker::BookMaker(core::Document document, core::ReportOrder order, ReportStamp stamp, QObject* parent)
    : QObject(parent), m_document(std::move(document)), m_order(std::move(order)), m_stamp(std::move(stamp)) {
  connect(&m_timer, &QTimer::timeout, this, &BookMaker::layOutSome);
  connect(&m_words, &QFutureWatcher<core::Report>::finished, this, &BookMaker::takeWords);
  connect(&m_words, &QFutureWatcher<core::Report>::progressValueChanged, this,
          [this](int value) { emit progressed(worded * value / whole); });
  m_words.setFuture(QtConcurrent::run([this, stop = m_stop.get_token()](QPromise<core::Report>& promise) {
    promise.setProgressRange(0, whole);
    promise.addResult(core::reportOf(
        m_document, m_order, [&promise](double share) { promise.setProgressValue(int(whole * share)); },
        stop));
  }));
}

BookMaker::~BookMaker() {
  m_stop.request_stop();
  m_words.waitForFinished();  // it reads the document
}

void BookMaker::takeWords() {
  if (m_stop.stop_requested()) return;
  m_book = std::make_unique<ReportBook>(m_words.result(), m_stamp);
  m_sketches = std::make_unique<ReportSketches>(m_document, m_book->report().words);
  m_dealAt = std::min(first, m_book->chapterCount());
  m_timer.start(0);
}

void BookMaker::layOutSome() {
  QElapsedTimer spent;
  spent.start();
  const std::size_t all = m_book->chapterCount();
  for (; m_laidOut < all && spent.elapsed() < slice_ms; ++m_laidOut) {
    for (const auto& slot : m_book->picturesOf(m_laidOut)) slot->size_pt = m_sketches->sizeOf(slot->picture);
    m_book->layOut(m_laidOut);
  }
  if (m_laidOut >= m_dealAt && (m_laidOut == all || m_book->pageCount() == 0)) deal();
  emit progressed(worded + (1 - worded) * double(m_laidOut) / double(std::max<std::size_t>(1, all)));
  if (m_laidOut < all) return;
  m_timer.stop();
  m_isFinished = true;
  emit finished();
}

void BookMaker::deal() {
  emit aboutToDeal();
  m_book->deal(m_laidOut);
  emit grown();
}

bool BookMaker::drawPictures(std::size_t page) {
  bool some = false;
  for (const auto& slot : m_book->picturesOn(page)) {
    if (slot->sketch) continue;
    slot->sketch = m_sketches->draw(slot->picture);
    some = true;
  }
  return some;
}

}  // namespace ui
