// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <memory>
#include <optional>

#include "core/compare/change_cause.h"
#include "ui/change/shown_change.h"
#include "ui/kept_work.h"
#include "ui/notice/long_work.h"

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

  /// What is on view now; none when there is nothing to compare. Work for another subject is stopped.
  void show(std::optional<Subject> subject);
  /// Whether anybody is looking; nothing is worked out until somebody does.
  void setWatched(bool watched) { m_work.setWatched(watched); }

  bool isRunning() const { return m_work.isRunning(); }
  /// Of what is on view; none until it is worked out.
  const Outcome& outcome() const { return m_work.result(); }

 signals:
  void changed();

 private:
  KeptWork<Subject, core::ChangeCause> m_work;
  LongWork m_time;
};

}  // namespace ui
