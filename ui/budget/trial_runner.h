// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFutureWatcher>
#include <QObject>
#include <QTimer>
#include <deque>
#include <memory>
#include <optional>
#include <stop_token>

#include "core/budget/trials.h"
#include "ui/notice/long_work.h"

namespace ui {

/// Makes the trials of the set-up on view on a worker, and keeps what they came to. One run serves all steps
/// of a set-up in one scope. Results belong to values: undoing an edit brings the result of before back.
class TrialRunner : public QObject {
  Q_OBJECT

 public:
  /// What trials depend on; equal subjects give the same result bit for bit.
  struct Subject {
    core::Setup setup;
    core::Scope scope = core::Scope::Chain;
    std::uint64_t seed = 1;

    friend bool operator==(const Subject&, const Subject&) = default;
  };
  using Outcome = core::Result<core::ChannelTrials>;

  explicit TrialRunner(QObject* parent = nullptr);
  ~TrialRunner() override;

  /// What is on view now, none when trials cannot be made. A run for another subject is cancelled. `edited`:
  /// the subject before was the same channel and check before an edit, so that its result is out of date.
  void show(std::optional<Subject> subject, bool edited);
  /// Whether anybody is looking; a live result waits until somebody does.
  void setWatched(bool watched);
  /// Runs by itself shortly after each change of what is on view.
  void setLive(bool live);
  void run();
  void cancel();

  bool canRun() const { return m_subject.has_value(); }
  bool isRunning() const { return m_running; }
  bool isLive() const { return m_live; }
  /// Of what is on view; none before a run, after an edit and after cancelling.
  const Outcome* outcome() const { return m_shown.get(); }
  /// Whether there is none because an edit made it out of date.
  bool isOutdated() const { return m_outdated; }
  /// Whether the last run was cancelled by the user.
  bool wasCancelled() const { return m_cancelled; }

 signals:
  void changed();
  void progressed(int perMille);

 private:
  struct Kept {
    Subject subject;
    std::shared_ptr<const Outcome> outcome;
  };

  void stop();
  void runLater();
  void finish();
  std::shared_ptr<const Outcome> keptOf(const Subject& subject) const;

  std::optional<Subject> m_subject;
  std::shared_ptr<const Outcome> m_shown;
  std::deque<Kept> m_kept;  ///< latest last
  std::stop_source m_stop;
  LongWork m_time;
  QFutureWatcher<Outcome> m_watcher;
  QTimer m_later;
  bool m_running = false, m_live = false, m_watched = false, m_outdated = false, m_cancelled = false;
};

}  // namespace ui
