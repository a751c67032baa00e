// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/span_edits.h"

#include <algorithm>
#include <cassert>
#include <utility>

#include "core/document/edits.h"

namespace core {
namespace {

bool isSpan(const std::optional<Measured>& reading) { return reading && reading->begin && reading->end; }

Check& openCheck(Channel& channel, std::size_t check) {
  Check& open = channel.checks[check];
  assert(!open.closedWith);
  open.readings.resize(std::max(open.readings.size(), channel.setup.sequence.size()));
  return open;
}

void addOther(Check& check, Measured span) {
  assert(span.begin && span.end);
  const auto later = std::upper_bound(check.otherLevels.begin(), check.otherLevels.end(), span,
                                      [](const Measured& a, const Measured& b) { return a.begin < b.begin; });
  check.otherLevels.insert(later, std::move(span));
}

Measured taken(Check& check, SpanPlace place) {
  if (place.kind == SpanPlace::Kind::Step) {
    Measured span = *std::move(check.readings[place.index]);
    check.readings[place.index].reset();
    return span;
  }
  const auto at = check.otherLevels.begin() + static_cast<std::ptrdiff_t>(place.index);
  Measured span = std::move(*at);
  check.otherLevels.erase(at);
  return span;
}

void put(Check& check, SpanPlace place, Measured span) {
  if (place.kind == SpanPlace::Kind::Step)
    check.readings[place.index] = std::move(span);
  else
    addOther(check, std::move(span));
}

}  // namespace

const Measured& spanAt(const Check& check, SpanPlace place) {
  return place.kind == SpanPlace::Kind::Step ? *check.readings[place.index] : check.otherLevels[place.index];
}

std::vector<SpanPlace> spansOf(const Check& check) {
  std::vector<SpanPlace> spans;
  for (std::size_t step = 0; step < check.readings.size(); ++step)
    if (isSpan(check.readings[step])) spans.push_back({SpanPlace::Kind::Step, step});
  for (std::size_t k = 0; k < check.otherLevels.size(); ++k)
    if (isSpan(check.otherLevels[k])) spans.push_back({SpanPlace::Kind::Other, k});
  std::stable_sort(spans.begin(), spans.end(), [&](SpanPlace a, SpanPlace b) {
    return *spanAt(check, a).begin < *spanAt(check, b).begin;
  });
  return spans;
}

std::optional<SpanPlace> placeOf(const Check& check, const Measured& span) {
  for (const SpanPlace place : spansOf(check))
    if (spanAt(check, place).begin == span.begin && spanAt(check, place).end == span.end) return place;
  return std::nullopt;
}

bool isTaken(const Check& check, double begin_s, double end_s, std::span<const SpanPlace> except) {
  const std::vector<SpanPlace> spans = spansOf(check);
  return std::any_of(spans.begin(), spans.end(), [&](SpanPlace place) {
    if (std::find(except.begin(), except.end(), place) != except.end()) return false;
    const Measured& other = spanAt(check, place);
    return other.begin->base() <= end_s && other.end->base() >= begin_s;
  });
}

Channel withSpanMoved(Channel channel, std::size_t check, SpanPlace place, Measured moved) {
  Check& open = openCheck(channel, check);
  moved.note = taken(open, place).note;
  assert(!isTaken(open, moved.begin->base(), moved.end->base()));
  put(open, place, std::move(moved));
  return channel;
}

Channel withSpanSplit(Channel channel, std::size_t check, SpanPlace place, Measured first, Measured second) {
  Check& open = openCheck(channel, check);
  const std::string note = taken(open, place).note;
  const bool firstIsLonger = *first.end - *first.begin >= *second.end - *second.begin;
  (firstIsLonger ? first : second).note = note;
  put(open, place, firstIsLonger ? first : second);
  addOther(open, firstIsLonger ? std::move(second) : std::move(first));
  return channel;
}

Channel withSpansJoined(Channel channel, std::size_t check, SpanPlace first, SpanPlace second,
                        Measured joined) {
  Check& open = openCheck(channel, check);
  const bool firstIsRead = first.kind == SpanPlace::Kind::Step;
  const SpanPlace kept = firstIsRead ? first : second;
  joined.note = spanAt(open, kept).note;
  // The later place first, so that the other keeps its index.
  taken(open, std::max(first, second));
  taken(open, std::min(first, second));
  assert(!isTaken(open, joined.begin->base(), joined.end->base()));
  put(open, kept, std::move(joined));
  return channel;
}

Channel withSpanRemoved(Channel channel, std::size_t check, SpanPlace place) {
  taken(openCheck(channel, check), place);
  return channel;
}

Channel withSpanAdded(Channel channel, std::size_t check, Measured added) {
  Check& open = openCheck(channel, check);
  assert(!isTaken(open, added.begin->base(), added.end->base()));
  addOther(open, std::move(added));
  return channel;
}

Channel withSpanGivenToStep(Channel channel, std::size_t check, SpanPlace place, std::size_t step) {
  if (place == SpanPlace{SpanPlace::Kind::Step, step}) return channel;
  Check& open = openCheck(channel, check);
  Measured span = taken(open, place);
  if (isSpan(open.readings[step])) addOther(open, *std::move(open.readings[step]));
  open.readings[step] = std::move(span);
  return channel;
}

Channel withSpanTakenFromStep(Channel channel, std::size_t check, std::size_t step) {
  Check& open = openCheck(channel, check);
  addOther(open, taken(open, {SpanPlace::Kind::Step, step}));
  return channel;
}

Channel withReadingsMatched(Channel channel, std::size_t check,
                            std::span<const std::optional<std::size_t>> spanOfStep) {
  Check& open = openCheck(channel, check);
  const std::vector<SpanPlace> places = spansOf(open);
  std::vector<Measured> spans;
  for (const SpanPlace place : places) spans.push_back(spanAt(open, place));
  open.otherLevels.clear();
  for (auto& reading : open.readings)
    if (isSpan(reading)) reading.reset();
  std::vector<bool> isGiven(spans.size());
  for (std::size_t step = 0; step < spanOfStep.size(); ++step) {
    if (!spanOfStep[step]) continue;
    assert(!isGiven[*spanOfStep[step]]);
    isGiven[*spanOfStep[step]] = true;
    open.readings[step] = spans[*spanOfStep[step]];
  }
  for (std::size_t k = 0; k < spans.size(); ++k)
    if (!isGiven[k]) addOther(open, std::move(spans[k]));
  return channel;
}

Document withRecordingFoundAt(Document document, const RecordingReference& reference,
                              const std::string& path) {
  const auto isMeant = [&](const Check& check) {
    return check.recording && check.recording->path == reference.path &&
           check.recording->sha256 == reference.sha256;
  };
  for (std::size_t k = 0; k < document.channels.size(); ++k) {
    Channel channel = *document.channels[k];
    if (std::none_of(channel.checks.begin(), channel.checks.end(), isMeant)) continue;
    for (Check& check : channel.checks)
      if (isMeant(check)) check.recording->path = path;
    document = withChannel(std::move(document), k, std::move(channel));
  }
  return document;
}

}  // namespace core
