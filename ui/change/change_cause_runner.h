// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFutureWatcher>
#include <QObject>
#include <QTimer>
#include <deque>
#include <memory>
#include <optional>
#include <stop_token>

#include "core/compare/change_cause.h"
#include "ui/change/shown_change.h"

namespace ui {

/// Finds on a worker what changed between two checks, and keeps what it came to by the identity of the
/// channel: undoing an edit, or going back to another pair, brings its result back at once.
class ChangeCauseRunner : public QObject {
  Q_OBJECT

 public:
  struct Subject {
    std::shared_ptr<const core::Channel> channel;
    ChangePair pair;

    friend bool operator==(const Subject&, const Subject&) = default;
  };
  using Outcome = std::shared_ptr<const core::ChangeCause>;

  explicit ChangeCauseRunner(QObject* parent = nullptr);
  ~ChangeCauseRunner() override;

  /// What is on view now; none when there is nothing to compare. Work for another subject is stopped.
  void show(std::optional<Subject> subject);
  /// Whether anybody is looking; nothing is worked out until somebody does.
  void setWatched(bool watched);

  bool isRunning() const { return m_running; }
  /// Of what is on view; none until it is worked out.
  const Outcome& outcome() const { return m_shown; }

 signals:
  void changed();

 private:
  struct Kept {
    Subject subject;
    Outcome outcome;
  };

  void run();
  void stop();
  void runLater();
  void finish();
  Outcome keptOf(const Subject& subject) const;

  std::optional<Subject> m_subject;
  Outcome m_shown;
  std::deque<Kept> m_kept;  ///< latest last
  std::stop_source m_stop;
  QFutureWatcher<Outcome> m_watcher;
  QTimer m_later;
  bool m_running = false, m_watched = false;
};

}  // namespace ui
