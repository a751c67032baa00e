// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/strip_lanes.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/document/edits.h"
#include "ui/quantity_edit.h"
#include "ui/run/step_words.h"
#include "ui/theme.h"

namespace ui {
namespace {

/// How far a time may be off the sample that it means, in spacings: files keep all digits of a time, other
/// programs may have rounded it.
constexpr double slackOfTimes = 0.01;

QString signedText(double value, int decimals) {
  const QString text = fixedNumberText(value, decimals);
  return value > 0 ? "+" + text : text;
}

QString nameOf(const core::Setup& setup, core::SpanPlace place) {
  if (place.kind == core::SpanPlace::Kind::Other)
    return QCoreApplication::translate("ui::StripView", "no step");
  const QString number = QString::number(place.index + 1);
  if (place.index >= setup.sequence.size()) return number;
  const QString label = toQString(setup.sequence[place.index].label);
  return label.isEmpty() ? number : number + " " + label;
}

std::optional<std::size_t> columnNamed(const core::Recording& recording, const std::string& name) {
  for (std::size_t k = 0; k < recording.columns.size(); ++k)
    if (recording.columns[k].name == name) return k;
  return std::nullopt;
}

StripLane laneOf(const Session& session, std::size_t channelIndex, std::size_t checkIndex,
                 const OpenRecording& open) {
  const core::Channel& channel = *session.document().channels[channelIndex];
  const core::Check& check = channel.checks[checkIndex];
  const core::Setup& setup = core::setupOf(channel, check);
  const auto& prediction = session.evaluation(channelIndex).checks[checkIndex].prediction;
  StripLane lane;
  lane.channel = channelIndex;
  lane.check = checkIndex;
  lane.column = columnNamed(open.recording, check.recording->column);
  lane.name = toQString(channel.name);
  lane.unit = toQString(core::readingUnitText(setup.instrument));
  lane.decimals = readingDecimals(prediction);
  lane.isClosed = check.closedWith != nullptr;
  for (const core::SpanPlace place : core::spansOf(check)) {
    const core::Measured& measured = core::spanAt(check, place);
    StripSpan span{place, samplesBetween(open.recording.time, measured.begin->base(), measured.end->base()),
                   nameOf(setup, place), signedText(measured.mean.base(), lane.decimals),
                   measured.mean.base()};
    if (span.samples.size() == 0 || span.samples.end <= span.samples.begin) continue;
    const bool predicted =
        !span.isOther() && place.index < prediction.steps.size() && prediction.steps[place.index];
    if (predicted) span.polarity = prediction.steps[place.index]->polarity;
    lane.spans.push_back(std::move(span));
  }
  return lane;
}

}  // namespace

const StripSpan* StripLane::at(core::SpanPlace place) const {
  const auto found =
      std::find_if(spans.begin(), spans.end(), [&](const StripSpan& span) { return span.place == place; });
  return found == spans.end() ? nullptr : &*found;
}

std::vector<StripLane> stripLanes(const Session& session, const OpenRecording& open, bool all) {
  std::vector<StripLane> lanes;
  const core::Check* chosen = session.check();
  if (!chosen || !chosen->recording) return lanes;
  const std::size_t own = *session.selection().channel;
  const auto& channels = session.document().channels;
  for (std::size_t k = 0; k < channels.size(); ++k) {
    if (k == own) {
      lanes.push_back(laneOf(session, own, *session.selection().check, open));
      lanes.back().isChosen = true;
      continue;
    }
    if (!all) continue;
    for (std::size_t c = 0; c < channels[k]->checks.size(); ++c) {
      const core::Check& check = channels[k]->checks[c];
      if (check.name == chosen->name && check.recording && check.recording->path == chosen->recording->path &&
          check.recording->readAs == chosen->recording->readAs)
        lanes.push_back(laneOf(session, k, c, open));
    }
  }
  return lanes;
}

std::optional<ComparedCurve> comparedCurve(const Session& session, const RecordingStore& store,
                                           const OpenRecording& open) {
  const core::Check* chosen = session.check();
  if (!chosen || !session.selection().compared) return std::nullopt;
  const core::Check& compared = session.channel()->checks[*session.selection().compared];
  if (!compared.recording) return std::nullopt;
  ComparedCurve curve{store.recording(*compared.recording), 0, toQString(compared.name)};
  if (!curve.open || curve.open->recording.time.empty() || open.recording.time.empty()) return std::nullopt;
  const auto column = columnNamed(curve.open->recording, compared.recording->column);
  if (!column) return std::nullopt;
  curve.column = *column;
  curve.later_s = curve.open->recording.time.front() - open.recording.time.front();
  for (std::size_t step = 0; step < std::min(chosen->readings.size(), compared.readings.size()); ++step) {
    const auto &own = chosen->readings[step], &other = compared.readings[step];
    if (!own || !other || !own->begin || !other->begin) continue;
    curve.later_s = other->begin->base() - own->begin->base();
    break;
  }
  return curve;
}

core::SampleSpan samplesBetween(const core::TimeAxis& time, double begin_s, double end_s) {
  if (time.empty()) return {};
  const double spacing =
      time.size() > 1 ? (time.back() - time.front()) / static_cast<double>(time.size() - 1) : 0;
  const std::size_t begin = time.indexAt(begin_s - slackOfTimes * spacing);
  const std::size_t end = time.indexAt(end_s + slackOfTimes * spacing);
  // indexAt finds the first sample not before; one right at the end still belongs to the span.
  const bool atEnd = end < time.size() && time[end] <= end_s + slackOfTimes * spacing;
  const core::SampleSpan found{begin, atEnd ? end + 1 : end};
  return found.end > found.begin ? found : core::SampleSpan{begin, begin};
}

}  // namespace ui
