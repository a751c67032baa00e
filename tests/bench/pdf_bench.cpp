// SPDX-License-Identifier: GPL-3.0-or-later
// The record of 10, 30 and 100 channels of nine steps and two checks as a PDF (target for 100: under 10 s on
// two cores), what a person at the preview waits for, and practice sheets of 10 and 100 questions. A ratio
// near 1 says that time grows with the channels only; pages of questions are broken after measuring once, and
// a layout for each break would make ten times the questions a hundred times the time.
#include <QApplication>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QTimer>
#include <algorithm>
#include <cstdio>
#include <ctime>

#include "tests/support/practice_questions.h"
#include "tests/support/sample_channel.h"
#include "ui/practice/practice_pdf.h"
#include "ui/report/book_maker.h"
#include "ui/report_pdf.h"

namespace {

core::Document documentOf(int channels) {
  core::Document document;
  document.title = "Sandpiper tailplane";
  for (int k = 0; k < channels; ++k) {
    core::Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0002);
    // One in ten fails its second check and is diagnosed.
    channel = sample::withCheckReading(std::move(channel), k % 10 == 3 ? 1.03 : 1.0004);
    channel.name = "TP-" + std::to_string(k + 1);
    document = core::withChannelInserted(document, document.channels.size(), std::move(channel));
  }
  return document;
}

double processorSeconds() { return double(std::clock()) / CLOCKS_PER_SEC; }

/// Milliseconds a channel of the processor.
double measurePdf(int channels) {
  const core::Document document = documentOf(channels);
  QElapsedTimer timer;
  timer.start();
  qint64 last = 0, longest = 0;
  QTimer beat;
  QObject::connect(&beat, &QTimer::timeout, [&] {
    longest = std::max(longest, timer.elapsed() - last);
    last = timer.elapsed();
  });
  beat.start(1);
  const double before = processorSeconds();
  const auto pdf = ui::reportPdf(document);
  const double spent = processorSeconds() - before;
  std::printf(
      "PDF of %3d channels: %6.2f s, processor %6.2f s, %5.1f ms a channel, %5.1f MB, window busy at most "
      "%lld ms\n",
      channels, double(timer.elapsed()) / 1e3, spent, 1e3 * spent / channels,
      pdf ? double(pdf->size()) / 1e6 : 0.0, static_cast<long long>(longest));
  return 1e3 * spent / channels;
}

void measurePreview(int channels) {
  QElapsedTimer timer;
  timer.start();
  ui::BookMaker maker(documentOf(channels), {});
  QEventLoop loop;
  qint64 first = -1;
  QObject::connect(&maker, &ui::BookMaker::grown, [&] {
    if (first < 0) first = timer.elapsed();
  });
  QObject::connect(&maker, &ui::BookMaker::finished, &loop, &QEventLoop::quit);
  loop.exec();
  std::printf("preview of %3d channels: first pages after %lld ms, all %zu after %lld ms\n", channels,
              static_cast<long long>(first), maker.book()->pageCount(),
              static_cast<long long>(timer.elapsed()));
}

/// Milliseconds a question of the processor.
double measureQuestions(std::size_t count) {
  const auto questions = test::handMadeSet(count, core::allQuestionKinds());
  const double before = processorSeconds();
  const auto pdf = ui::questionPages("Practice, questions", questions, false);
  const double each_ms = 1e3 * (processorSeconds() - before) / double(count);
  std::printf("PDF of %3zu questions: %5.1f ms a question, %5.1f MB\n", count, each_ms,
              pdf ? double(pdf->size()) / 1e6 : 0.0);
  return each_ms;
}

}  // namespace

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  const QApplication app(argc, argv);
  measurePdf(1);  // fonts are loaded
  const double few = measurePdf(10), some = measurePdf(30), many = measurePdf(100);
  std::printf("a channel of 100 costs %.2f times one of 10, %.2f times one of 30\n", many / few, many / some);
  measurePreview(100);
  const double ten = measureQuestions(10), hundred = measureQuestions(100);
  std::printf("a question of 100 costs %.2f times one of 10\n", hundred / ten);
  return 0;
}
