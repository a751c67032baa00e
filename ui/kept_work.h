// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFutureWatcher>
#include <QTimer>
#include <QtConcurrentRun>
#include <algorithm>
#include <deque>
#include <functional>
#include <memory>
#include <optional>
#include <stop_token>

namespace ui {

/// Works out on a worker what belongs to the subject on view, and keeps what it came to: going back to a
/// subject brings its result back at once. Nothing is worked out while nobody is looking; work for another
/// subject is stopped. The worker owns all it uses, so it may end after us.
template <class Subject, class Outcome>
class KeptWork {
 public:
  using Result = std::shared_ptr<const Outcome>;
  using Work = std::function<Result(const Subject&, const std::stop_token&)>;

  /// `changed` is called when what is known, or whether something is being worked out, is another.
  KeptWork(Work work, std::size_t mostKept, std::function<void()> changed)
      : m_work(std::move(work)), m_mostKept(mostKept), m_changed(std::move(changed)) {
    m_later.setSingleShot(true);
    QObject::connect(&m_later, &QTimer::timeout, &m_later, [this] { run(); });
    QObject::connect(&m_watcher, &QFutureWatcher<Result>::finished, &m_watcher, [this] { finish(); });
  }
  ~KeptWork() { m_stop.request_stop(); }
  KeptWork(const KeptWork&) = delete;
  KeptWork& operator=(const KeptWork&) = delete;

  const std::optional<Subject>& subject() const { return m_subject; }
  bool isRunning() const { return m_running; }
  /// Of the subject; none until it is worked out.
  const Result& result() const { return m_result; }

  /// Another subject, or none. Its work begins `wait_ms` later, so that what is passed over costs nothing.
  /// The caller tells of the change.
  void show(std::optional<Subject> subject, int wait_ms) {
    stop();
    m_subject = std::move(subject);
    m_result = m_subject ? kept() : nullptr;
    m_later.setInterval(wait_ms);
    runLater();
  }

  void setWatched(bool watched) {
    m_watched = watched;
    runLater();
  }

  /// Without waiting, whoever is looking.
  void run() {
    if (!m_subject || m_result) return;
    stop();
    m_stop = std::stop_source();
    m_running = true;
    m_watcher.setFuture(QtConcurrent::run(
        [work = m_work, subject = *m_subject, stop = m_stop.get_token()] { return work(subject, stop); }));
    m_changed();
  }

 private:
  void runLater() {
    const bool wanted = m_watched && m_subject && !m_result && !m_running;
    wanted ? m_later.start() : m_later.stop();
  }

  void stop() {
    m_later.stop();
    m_stop.request_stop();
    m_running = false;
  }

  void finish() {
    // One that was told to stop ends later; what it came to is of no use to anybody.
    if (!m_running) return;
    m_running = false;
    m_result = m_watcher.result();
    m_kept.push_back({*m_subject, m_result});
    if (m_kept.size() > m_mostKept) m_kept.pop_front();
    m_changed();
  }

  Result kept() const {
    const auto found = std::find_if(m_kept.begin(), m_kept.end(),
                                    [&](const Kept& one) { return one.subject == *m_subject; });
    return found == m_kept.end() ? nullptr : found->result;
  }

  struct Kept {
    Subject subject;
    Result result;
  };

  Work m_work;
  std::size_t m_mostKept;
  std::function<void()> m_changed;
  std::optional<Subject> m_subject;
  Result m_result;
  std::deque<Kept> m_kept;  ///< latest last
  std::stop_source m_stop;
  QFutureWatcher<Result> m_watcher;
  QTimer m_later;
  bool m_running = false, m_watched = false;
};

}  // namespace ui
