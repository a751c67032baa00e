// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QTimer>
#include <memory>
#include <optional>
#include <unordered_map>

#include "core/campaign/overview.h"

namespace ui {

class Session;

/// What an overview says of each channel, worked out aside and kept as long as the document holds that value
/// of the channel. Nothing is worked out unless somebody wants it. The evaluations that it takes are not
/// kept: those of a thousand channels would fill the memory.
class ChannelRows : public QObject {
  Q_OBJECT

 public:
  explicit ChannelRows(Session& session);
  ~ChannelRows() override;

  /// Of channel `index`: as it is now, or as it was before the latest edit of it while that is being worked
  /// out; none until it is known for the first time. Valid until the next signal of session or rows.
  const core::OverviewRow* row(std::size_t index) const;
  /// Whether `row` is of the channel as it is now.
  bool isCurrent(std::size_t index) const;
  /// Works this one out next, as it is on view.
  void want(std::size_t index);
  /// Works all out, after those on view.
  void wantAll();
  /// How many channels are waited for.
  std::size_t waiting() const { return m_waiting; }
  /// Whether somebody has waited for so long that he should be told.
  bool takesLong() const { return m_takesLong; }

  /// Another document takes the place of this one: nothing of it is shown any more.
  void forget();
  /// Works on until nothing is waited for, for tests and for what cannot go on without.
  void waitForAll();

 signals:
  /// Some rows are known now, a slice of them at a time.
  void arrived();

 private:
  struct Work;
  struct Entry {
    std::shared_ptr<const core::Channel> channel;
    core::OverviewRow row;
    bool known = false;   ///< `row` is of this channel, or of what it was before
    bool wanted = false;  ///< is worked out, or waits for it
    bool current = false;
  };

  using Entries = std::unordered_map<const core::Channel*, Entry>;

  void follow();
  void dropIdleTasks();
  void ask(std::size_t index, bool first);
  void take();
  Entry& entryOf(std::size_t index);

  Session& m_session;
  std::shared_ptr<const core::Document> m_document;  ///< that the entries belong to
  core::Date m_today{};
  Entries m_entries;
  unsigned m_generation = 0;  ///< of what all rows depend on; what was worked out for another is dropped
  std::shared_ptr<Work> m_work;
  std::size_t m_waiting = 0;
  bool m_takesLong = false;
  QTimer m_slice, m_patience;
};

}  // namespace ui
