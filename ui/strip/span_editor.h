// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFutureWatcher>
#include <QObject>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "core/document/span_edits.h"
#include "core/levels/levels.h"
#include "ui/recording/recording_store.h"
#include "ui/session.h"
#include "ui/strip/strip_lanes.h"

namespace ui {

/// Makes edits of the spans of the chosen check: mean and uncertainty are worked out from the recording, on a
/// worker where that takes longer than a frame, and come as one undoable step. A closed check is not edited.
class SpanEditor : public QObject {
  Q_OBJECT

 public:
  explicit SpanEditor(Session& session, QObject* parent = nullptr);
  ~SpanEditor() override;

  /// What is edited from now on; nothing when there is no lane with a column.
  void setSubject(std::shared_ptr<const OpenRecording> open, std::optional<StripLane> lane);
  /// Whether the worker is at an edit; another one waits for it.
  bool isBusy() const { return m_isBusy; }

  /// Whether spans can be edited now; if not, `refused` has said why.
  bool mayEdit();
  /// Where the ends of a span may lie: the samples about `samples` that no other span has, but for the span
  /// at `except`, which is always within its room.
  core::SampleSpan roomAround(core::SampleSpan samples, std::optional<core::SpanPlace> except) const;

  void move(core::SpanPlace place, core::SampleSpan samples);
  /// `sample` becomes the first of the second span.
  void split(core::SpanPlace place, std::size_t sample);
  void joinWithNext(core::SpanPlace place);
  void remove(core::SpanPlace place);
  /// A span of these samples. The chosen step takes it when it has no reading.
  void add(core::SampleSpan samples);
  /// A span where a level is held about `sample`, as found within `visible`.
  void fill(std::size_t sample, core::SampleSpan visible);
  void giveToStep(core::SpanPlace place, std::size_t step);
  void takeFromStep(std::size_t step);
  void matchAgain();
  /// Says why nothing is done.
  void refuse(const QString& reason);

 signals:
  void refused(const QString& reason);
  /// What was done, for the line about the spans.
  void said(const QString& sentence);
  /// An edit ended, whether it changed anything or not; `place` is the span it was about, if it is there.
  void finished(std::optional<core::SpanPlace> place);

 private:
  using Levels = std::vector<core::Level>;
  struct Described {
    std::vector<core::SampleSpan> spans;  ///< all of the check after the edit, in order
    Levels levels;
  };
  using Then = std::function<void(const Described&)>;

  const core::Check& check() const;
  std::span<const double> values() const;
  /// Whether a span may be there; if not, `refused` has said why.
  bool isFree(core::SampleSpan samples, std::span<const core::SpanPlace> except);
  std::vector<core::SampleSpan> spansWithout(std::span<const core::SpanPlace> gone) const;
  void describe(std::vector<core::SampleSpan> spans, Then then);
  void work(std::size_t samples, std::function<Described()> work, Then then);
  void edit(const QString& label, core::Channel next, std::optional<core::Measured> about);

  Session& m_session;
  std::shared_ptr<const OpenRecording> m_open;
  std::optional<StripLane> m_lane;
  std::unique_ptr<QFutureWatcher<Described>> m_worker;
  std::stop_source m_stop;
  bool m_isBusy = false;
};

/// The level that describes exactly these samples, as a reading.
core::Measured measuredOf(const core::Level& level);

}  // namespace ui
