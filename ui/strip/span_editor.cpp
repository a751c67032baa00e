// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/span_editor.h"

#include <QtConcurrentRun>
#include <algorithm>
#include <cmath>

#include "core/assess/level_match.h"
#include "core/document/edits.h"
#include "core/levels/describe.h"
#include "ui/notice/long_work.h"
#include "ui/theme.h"

namespace ui {
namespace {

/// Work on no more samples than this is done at once: it takes less than a frame.
constexpr std::size_t samplesOfAFrame = 100'000;
/// As much of a recording is looked at for a level at the cursor; its times are copied for that.
constexpr std::size_t mostFilled = 10'000'000;

core::SampleSpan samplesAbout(std::size_t sample, core::SampleSpan within) {
  const std::size_t half = mostFilled / 2;
  return {std::max(within.begin, sample > half ? sample - half : 0), std::min(within.end, sample + half)};
}

/// The found levels of a part of a recording; the spans count from the beginning of the whole.
std::vector<core::Level> levelsWithin(const core::TimeAxis& time, std::span<const double> values,
                                      core::SampleSpan part, const std::stop_token& stop) {
  std::vector<double> times(part.size());
  for (std::size_t k = 0; k < times.size(); ++k) times[k] = time[part.begin + k];
  auto found = core::findLevels(core::TimeAxis(times), values.subspan(part.begin, part.size()), {}, stop);
  if (!found) return {};
  for (core::Level& level : *found) level.span.begin += part.begin, level.span.end += part.begin;
  return *std::move(found);
}

const core::Level* levelOf(const std::vector<core::Level>& levels, core::SampleSpan samples) {
  const auto found = std::find_if(levels.begin(), levels.end(),
                                  [&](const core::Level& level) { return level.span == samples; });
  return found == levels.end() || !std::isfinite(found->mean) ? nullptr : &*found;
}

/// In order, and without those that share samples with one before: files written by hand may hold some.
void tidy(std::vector<core::SampleSpan>& spans) {
  std::sort(spans.begin(), spans.end(), [](auto a, auto b) { return a.begin < b.begin; });
  std::size_t end = 0;
  std::erase_if(spans, [&](core::SampleSpan span) {
    if (span.begin < end) return true;
    end = span.end;
    return false;
  });
}

std::size_t samplesIn(const std::vector<core::SampleSpan>& spans) {
  std::size_t samples = 0;
  for (const core::SampleSpan span : spans) samples += span.size();
  return samples;
}

}  // namespace

core::Measured measuredOf(const core::Level& level) {
  return {core::Reading(level.mean), core::Reading(level.stdUncertainty), core::Duration(level.begin_s),
          core::Duration(level.end_s)};
}

SpanEditor::SpanEditor(Session& session, QObject* parent) : QObject(parent), m_session(session) {}

SpanEditor::~SpanEditor() { m_stop.request_stop(); }

void SpanEditor::setSubject(std::shared_ptr<const OpenRecording> open, std::optional<StripLane> lane) {
  m_open = std::move(open);
  m_lane = std::move(lane);
}

const core::Check& SpanEditor::check() const {
  return m_session.document().channels[m_lane->channel]->checks[m_lane->check];
}

std::span<const double> SpanEditor::values() const {
  return m_open->recording.columns[*m_lane->column].values;
}

void SpanEditor::refuse(const QString& reason) {
  emit refused(reason);
  emit finished(std::nullopt);
}

bool SpanEditor::mayEdit() {
  if (m_isBusy) return false;
  if (!m_open || !m_lane || !m_lane->column) {
    refuse(tr("The recording of the check is not on show, so its spans cannot be changed."));
    return false;
  }
  if (!m_lane->isClosed) return true;
  refuse(
      tr("The check %1 is closed and keeps its spans. Reopen it first (menu Check, Close or reopen check).")
          .arg(toQString(check().name)));
  return false;
}

core::SampleSpan SpanEditor::roomAround(core::SampleSpan samples,
                                        std::optional<core::SpanPlace> except) const {
  core::SampleSpan room{0, m_open ? m_open->recording.time.size() : 0};
  if (!m_lane) return room;
  for (const StripSpan& span : m_lane->spans) {
    if (span.place == except) continue;
    if (span.samples.begin < samples.begin)
      room.begin = std::max(room.begin, span.samples.end);
    else
      room.end = std::min(room.end, span.samples.begin);
  }
  // Samples at one time are one place: an end may not lie at the time of a neighbour's.
  const core::TimeAxis& time = m_open->recording.time;
  while (room.begin > 0 && room.begin < room.end && time[room.begin] <= time[room.begin - 1]) ++room.begin;
  while (room.end > room.begin && room.end < time.size() && time[room.end - 1] >= time[room.end]) --room.end;
  // Of a file, spans may lie over each other: one of them can shrink, and no more.
  if (except) return {std::min(room.begin, samples.begin), std::max(room.end, samples.end)};
  return room.end < room.begin ? core::SampleSpan{room.begin, room.begin} : room;
}

bool SpanEditor::isFree(core::SampleSpan samples, std::span<const core::SpanPlace> except) {
  const core::TimeAxis& time = m_open->recording.time;
  if (!core::isTaken(check(), time[samples.begin], time[samples.end - 1], except)) return true;
  refuse(tr("The span would lie over another one. Make one of the two shorter, or delete it."));
  return false;
}

std::vector<core::SampleSpan> SpanEditor::spansWithout(std::span<const core::SpanPlace> gone) const {
  std::vector<core::SampleSpan> spans;
  for (const StripSpan& span : m_lane->spans)
    if (std::find(gone.begin(), gone.end(), span.place) == gone.end()) spans.push_back(span.samples);
  return spans;
}

void SpanEditor::work(std::size_t samples, std::function<Described()> work, Then then) {
  if (samples <= samplesOfAFrame) return then(work());
  m_isBusy = true;
  m_worker = std::make_unique<QFutureWatcher<Described>>();
  connect(m_worker.get(), &QFutureWatcher<Described>::finished, this,
          [this, then = std::move(then), before = m_session.document(), time = LongWork()] {
            m_isBusy = false;
            time.done(tr("The levels of the recording are worked out."));
            // An edit from elsewhere came in between: what was worked out may belong to nothing now.
            if (!(before == m_session.document())) return refuse(tr("The check was changed meanwhile."));
            then(m_worker->result());
          });
  m_worker->setFuture(QtConcurrent::run(std::move(work)));
}

/// All spans together, since the noise is judged from all of them.
void SpanEditor::describe(std::vector<core::SampleSpan> spans, Then then) {
  tidy(spans);
  const std::size_t samples = samplesIn(spans);
  work(
      samples,
      [open = m_open, values = values(), spans = std::move(spans)] {
        return Described{spans, core::describeLevels(open->recording.time, values, spans)};
      },
      std::move(then));
}

void SpanEditor::edit(const QString& label, core::Channel next, std::optional<core::Measured> about) {
  const std::size_t check = m_lane->check;
  m_session.editChannel(label, std::move(next));
  emit finished(about ? core::placeOf(m_session.channel()->checks[check], *about) : std::nullopt);
}

void SpanEditor::move(core::SpanPlace place, core::SampleSpan samples) {
  if (!mayEdit() || !isFree(samples, std::array{place})) return;
  auto spans = spansWithout(std::array{place});
  spans.push_back(samples);
  describe(std::move(spans), [this, place, samples](const Described& described) {
    const core::Level* level = levelOf(described.levels, samples);
    if (!level) return refuse(tr("There is no number in the span."));
    const core::Measured moved = measuredOf(*level);
    edit(tr("Move span"), core::withSpanMoved(*m_session.channel(), m_lane->check, place, moved), moved);
  });
}

void SpanEditor::split(core::SpanPlace place, std::size_t sample) {
  if (!mayEdit()) return;
  const StripSpan* span = m_lane->at(place);
  const core::TimeAxis& time = m_open->recording.time;
  if (!span || sample <= span->samples.begin || sample >= span->samples.end ||
      time[sample] <= time[sample - 1])
    return refuse(tr("The cursor is not within the chosen span."));
  if (!isFree(span->samples, std::array{place})) return;
  const core::SampleSpan first{span->samples.begin, sample}, second{sample, span->samples.end};
  auto spans = spansWithout(std::array{place});
  spans.insert(spans.end(), {first, second});
  describe(std::move(spans), [this, place, first, second](const Described& described) {
    const core::Level* a = levelOf(described.levels, first);
    const core::Level* b = levelOf(described.levels, second);
    if (!a || !b) return refuse(tr("One part of the span would have no number in it."));
    edit(tr("Split span"),
         core::withSpanSplit(*m_session.channel(), m_lane->check, place, measuredOf(*a), measuredOf(*b)),
         measuredOf(*a));
  });
}

void SpanEditor::joinWithNext(core::SpanPlace place) {
  if (!mayEdit()) return;
  const StripSpan* first = m_lane->at(place);
  if (!first) return refuse(tr("Choose the first of the two spans to join."));
  const StripSpan* last = &m_lane->spans.back();
  if (first == last) return refuse(tr("There is no span after the chosen one to join it with."));
  const StripSpan* second = first + 1;
  const core::SampleSpan joined{first->samples.begin, std::max(first->samples.end, second->samples.end)};
  if (!isFree(joined, std::array{place, second->place})) return;
  auto spans = spansWithout(std::array{place, second->place});
  spans.push_back(joined);
  describe(std::move(spans), [this, place, next = second->place, joined](const Described& described) {
    const core::Level* level = levelOf(described.levels, joined);
    if (!level) return refuse(tr("There is no number in the joined span."));
    const core::Measured measured = measuredOf(*level);
    edit(tr("Join spans"), core::withSpansJoined(*m_session.channel(), m_lane->check, place, next, measured),
         measured);
  });
}

void SpanEditor::remove(core::SpanPlace place) {
  if (!mayEdit()) return;
  edit(tr("Delete span"), core::withSpanRemoved(*m_session.channel(), m_lane->check, place), std::nullopt);
}

void SpanEditor::add(core::SampleSpan samples) {
  if (!mayEdit() || !isFree(samples, {})) return;
  auto spans = spansWithout({});
  spans.push_back(samples);
  describe(std::move(spans), [this, samples](const Described& described) {
    const core::Level* level = levelOf(described.levels, samples);
    if (!level) return refuse(tr("There is no number in the span."));
    const core::Measured added = measuredOf(*level);
    const auto step = m_session.selection().step;
    const bool isWanted = step && (*step >= check().readings.size() || !check().readings[*step]);
    core::Channel next = core::withSpanAdded(*m_session.channel(), m_lane->check, added);
    if (isWanted)
      next = core::withSpanGivenToStep(next, m_lane->check, *core::placeOf(next.checks[m_lane->check], added),
                                       *step);
    edit(isWanted ? tr("Add span for step %1").arg(*step + 1) : tr("Add span"), std::move(next), added);
  });
}

void SpanEditor::fill(std::size_t sample, core::SampleSpan visible) {
  if (!mayEdit()) return;
  const core::SampleSpan room = roomAround({sample, sample}, std::nullopt);
  if (sample < room.begin || sample >= room.end)
    return refuse(tr("The cursor is in a span. Put it where none is."));
  const core::SampleSpan part = samplesAbout(sample, visible);
  work(
      part.size(),
      [open = m_open, values = values(), part, stop = m_stop.get_token()] {
        return Described{{}, levelsWithin(open->recording.time, values, part, stop)};
      },
      [this, sample, room](const Described& found) {
        for (const core::Level& level : found.levels) {
          const core::SampleSpan samples{std::max(level.span.begin, room.begin),
                                         std::min(level.span.end, room.end)};
          if (sample >= samples.begin && sample < samples.end) return add(samples);
        }
        refuse(tr("No held level was found at the cursor. Shift and drag draws a span by hand."));
      });
}

void SpanEditor::giveToStep(core::SpanPlace place, std::size_t step) {
  if (!mayEdit()) return;
  const core::Measured about = core::spanAt(check(), place);
  edit(tr("Give span to step %1").arg(step + 1),
       core::withSpanGivenToStep(*m_session.channel(), m_lane->check, place, step), about);
}

void SpanEditor::takeFromStep(std::size_t step) {
  if (!mayEdit()) return;
  const core::Measured about = *check().readings[step];
  edit(tr("Take span from step %1").arg(step + 1),
       core::withSpanTakenFromStep(*m_session.channel(), m_lane->check, step), about);
}

/// Levels are told by what is stored of them: their means are the user's, and nothing is worked out anew.
void SpanEditor::matchAgain() {
  if (!mayEdit()) return;
  const core::Setup& setup = m_session.channel()->setup;
  const auto steps = core::expectedSteps(setup, m_session.evaluation()->checks[m_lane->check].prediction);
  if (!steps) return refuse(toText(steps.error()));
  std::vector<core::Level> levels;
  for (const core::SpanPlace place : core::spansOf(check())) {
    const core::Measured& measured = core::spanAt(check(), place);
    core::Level level;
    level.begin_s = measured.begin->base(), level.end_s = measured.end->base();
    level.span = samplesBetween(m_open->recording.time, level.begin_s, level.end_s);
    level.mean = level.robustMean = measured.mean.base();
    level.stdUncertainty = measured.uncertainty ? measured.uncertainty->base() : 0;
    level.samples = std::max<std::size_t>(1, level.span.size());
    levels.push_back(std::move(level));
  }
  const core::LevelMatch match = core::matchLevels(*steps, levels);
  if (match.runs.empty())
    return refuse(tr("The spans do not fit the steps of the plan. Nothing was changed."));
  if (match.runs.size() > 1)
    return refuse(
        tr("The spans are %n runs of the sequence. Nothing was changed: give the spans of one run to "
           "the steps by hand, or take the recording anew and choose the run.",
           nullptr, int(match.runs.size())));
  if (match.runs[0].isAmbiguous())
    return refuse(
        tr("The spans fit the steps in %n ways about as well. Nothing was changed: give them to the "
           "steps by hand.",
           nullptr, int(match.runs[0].others.size()) + 1));
  QStringList words;
  for (const std::string& sentence : core::matchText(match.runs[0], setup, levels))
    words << toQString(sentence);
  edit(tr("Match spans again"),
       core::withReadingsMatched(*m_session.channel(), m_lane->check, match.runs[0].best.levelOfStep),
       std::nullopt);
  emit said(words.isEmpty() ? tr("The spans were matched with the steps.") : words.join(" "));
}

}  // namespace ui
