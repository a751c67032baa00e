// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/end_signals.h"

#include <fcntl.h>
#include <unistd.h>

#include <QCoreApplication>
#include <QThread>
#include <csignal>

namespace app {
namespace {

constexpr int endingSignals[] = {SIGTERM, SIGINT, SIGHUP};

int endPipe[2] = {-1, -1};  // read, write; whatever a signal interrupts, writing to it is safe

void tellOfEnd(int signal) {
  const auto number = static_cast<unsigned char>(signal);
  if (::write(endPipe[1], &number, 1) != 1) std::raise(signal);  // its own effect by now
}

void endTheLoop() {
  if (QThread::currentThread()->loopLevel() == 0) return;  // none runs yet; the notifier tells again
  unsigned char number = 0;
  if (::read(endPipe[0], &number, 1) == 1) QCoreApplication::exit(128 + number);
}

/// A signal that whoever started us has ignored (nohup) stays so.
void listenTo(int signal) {
  struct sigaction now {};
  ::sigaction(signal, nullptr, &now);
  if (now.sa_handler == SIG_IGN) return;
  struct sigaction wanted {};
  wanted.sa_handler = tellOfEnd;
  wanted.sa_flags = static_cast<int>(SA_RESTART | SA_RESETHAND);
  ::sigaction(signal, &wanted, nullptr);
}

}  // namespace

EndSignals::EndSignals() {
  if (::pipe2(endPipe, O_CLOEXEC | O_NONBLOCK) != 0) return;
  m_notifier = std::make_unique<QSocketNotifier>(endPipe[0], QSocketNotifier::Read);
  QObject::connect(m_notifier.get(), &QSocketNotifier::activated, endTheLoop);
  for (const int signal : endingSignals) listenTo(signal);
}

EndSignals::~EndSignals() {
  if (!m_notifier) return;
  for (const int signal : endingSignals) {
    struct sigaction now {};
    ::sigaction(signal, nullptr, &now);
    if (now.sa_handler == tellOfEnd) std::signal(signal, SIG_DFL);
  }
  m_notifier.reset();
  for (int& end : endPipe) {
    ::close(end);
    end = -1;
  }
}

}  // namespace app
