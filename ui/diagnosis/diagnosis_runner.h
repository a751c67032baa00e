// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <memory>
#include <optional>

#include "core/assess/check.h"
#include "ui/kept_work.h"
#include "ui/notice/long_work.h"

namespace ui {

struct DiagnosisOutcome;

/// Diagnoses the check on view on a worker, and keeps what it came to. Results belong to values: undoing an
/// edit, or going back to another check, brings its result back at once.
class DiagnosisRunner : public QObject {
  Q_OBJECT

 public:
  /// What a diagnosis depends on; equal subjects give the same one.
  struct Subject {
    core::Setup setup;
    core::Check check;

    friend bool operator==(const Subject&, const Subject&) = default;
  };
  using Outcome = std::shared_ptr<const DiagnosisOutcome>;

  explicit DiagnosisRunner(QObject* parent = nullptr);

  /// What is on view now; none when there is nothing to diagnose. Work for another subject is stopped.
  /// `edited`: the subject before was the same check before an edit, whose outcome stays as `outdated`.
  void show(std::optional<Subject> subject, bool edited);
  /// Whether anybody is looking; nothing is worked out until somebody does, or `run` is called.
  void setWatched(bool watched) { m_work.setWatched(watched); }
  void run() { m_work.run(); }

  bool isRunning() const { return m_work.isRunning(); }
  /// Of what is on view; none until it is worked out.
  const Outcome& outcome() const { return m_work.result(); }
  /// Of the same check before the last edits, while there is none of what is on view.
  Outcome outdated() const { return m_work.result() ? nullptr : m_before; }

 signals:
  void changed();

 private:
  KeptWork<Subject, DiagnosisOutcome> m_work;
  LongWork m_time;
  Outcome m_before;
};

}  // namespace ui
