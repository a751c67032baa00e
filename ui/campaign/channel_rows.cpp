// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/campaign/channel_rows.h"

#include <QThread>
#include <QThreadPool>
#include <algorithm>
#include <deque>
#include <mutex>

#include "core/units/language.h"
#include "ui/session.h"

namespace ui {
namespace {

constexpr int slice_ms = 40;      ///< between two deliveries: seldom enough that views keep up with them
constexpr int patience_ms = 300;  ///< before somebody is told that it takes time

struct Task {
  std::shared_ptr<const core::Document> document;
  std::size_t index = 0;
  core::Date today{};
  unsigned generation = 0;

  const core::Channel* channel() const { return document->channels[index].get(); }
};

struct Done {
  std::shared_ptr<const core::Channel> channel;
  core::OverviewRow row;
  unsigned generation = 0;
};

}  // namespace

/// What the threads share with the rows. Those that outlive the rows find nothing left to do.
struct ChannelRows::Work {
  std::mutex mutex;
  std::deque<Task> tasks;
  std::vector<Done> done;
  int running = 0;
  QThreadPool pool;  ///< ended by the rows

  Work() {
    pool.setMaxThreadCount(std::clamp(QThread::idealThreadCount(), 1, 4));
    pool.setThreadPriority(QThread::LowPriority);
  }

  std::optional<Task> next() {
    const std::scoped_lock lock(mutex);
    if (tasks.empty()) {
      --running;
      return {};
    }
    Task task = std::move(tasks.front());
    tasks.pop_front();
    return task;
  }

  void run() {
    while (const std::optional<Task> task = next()) {
      const auto& channel = task->document->channels[task->index];
      Done one{channel,
               core::overviewRow(*task->document, task->index, core::evaluate(*channel), task->today),
               task->generation};
      const std::scoped_lock lock(mutex);
      done.push_back(std::move(one));
    }
  }

  void add(Task task, bool first) {
    bool start = false;
    {
      const std::scoped_lock lock(mutex);
      first ? tasks.push_front(std::move(task)) : tasks.push_back(std::move(task));
      start = running < pool.maxThreadCount();
      running += start;
    }
    if (!start) return;
    pool.start([this, language = core::currentLanguage()] {
      const core::LanguageScope scope(language);
      run();
    });
  }
};

ChannelRows::ChannelRows(Session& session) : m_session(session), m_work(std::make_shared<Work>()) {
  m_slice.setInterval(slice_ms);
  m_patience.setSingleShot(true);
  m_patience.setInterval(patience_ms);
  connect(&m_slice, &QTimer::timeout, this, &ChannelRows::take);
  connect(&m_patience, &QTimer::timeout, this, [this] {
    m_takesLong = m_waiting > 0;
    if (m_takesLong) emit arrived();
  });
  connect(&session, &Session::changed, this, &ChannelRows::follow);
  follow();
}

ChannelRows::~ChannelRows() {
  {
    const std::scoped_lock lock(m_work->mutex);
    m_work->tasks.clear();
  }
  m_work->pool.waitForDone();
}

const core::OverviewRow* ChannelRows::row(std::size_t index) const {
  const auto found = m_entries.find(m_session.document().channels[index].get());
  return found != m_entries.end() && found->second.known ? &found->second.row : nullptr;
}

bool ChannelRows::isCurrent(std::size_t index) const {
  const auto found = m_entries.find(m_session.document().channels[index].get());
  return found != m_entries.end() && found->second.current;
}

/// Entries of values that are gone are dropped; a value that took the place of another shows what that was
/// until its own is known. Places whose channel is the same are not touched.
void ChannelRows::follow() {
  const core::Document& now = m_session.document();
  const core::Date today = m_session.today();
  const bool allAnew =
      !m_document || m_document->stock != now.stock || m_today != today || m_document->signOff != now.signOff;
  if (!allAnew && m_document->channels == now.channels) return;
  m_generation += allAnew;
  const bool samePlaces = m_document && m_document->channels.size() == now.channels.size();
  const auto stays = [&](std::size_t k) {
    return samePlaces && !allAnew && m_document->channels[k] == now.channels[k];
  };
  Entries moved;
  if (samePlaces && !allAnew) {
    for (std::size_t k = 0; k < now.channels.size(); ++k)
      if (!stays(k)) moved.insert(m_entries.extract(m_document->channels[k].get()));
  } else {
    moved.swap(m_entries);
  }
  for (std::size_t k = 0; k < now.channels.size(); ++k) {
    if (stays(k)) continue;
    const core::Channel* channel = now.channels[k].get();
    auto found = moved.find(channel);
    if (found == moved.end() && samePlaces) found = moved.find(m_document->channels[k].get());
    if (found == moved.end()) continue;
    const bool same = found->first == channel && !allAnew;
    Entry entry = found->second;
    entry.channel = now.channels[k];
    entry.row.channel = k;
    entry.current = same && entry.current;
    entry.wanted = same && entry.wanted;
    m_entries[channel] = std::move(entry);
  }
  m_document = std::make_shared<const core::Document>(now);
  m_today = today;
  dropIdleTasks();
}

/// What no entry waits for is not worked out.
void ChannelRows::dropIdleTasks() {
  m_waiting = static_cast<std::size_t>(std::count_if(m_entries.begin(), m_entries.end(),
                                                     [](const auto& entry) { return entry.second.wanted; }));
  const std::scoped_lock lock(m_work->mutex);
  std::erase_if(m_work->tasks, [this](const Task& task) {
    const auto found = m_entries.find(task.channel());
    return task.generation != m_generation || found == m_entries.end() || !found->second.wanted;
  });
}

void ChannelRows::forget() {
  m_entries.clear();
  m_document.reset();
  ++m_generation;
  dropIdleTasks();
}

ChannelRows::Entry& ChannelRows::entryOf(std::size_t index) {
  const auto& channel = m_session.document().channels[index];
  Entry& entry = m_entries[channel.get()];
  entry.channel = channel;
  entry.row.channel = index;
  return entry;
}

void ChannelRows::ask(std::size_t index, bool first) {
  Entry& entry = entryOf(index);
  if (entry.current || entry.wanted) return;
  entry.wanted = true;
  if (m_waiting++ == 0) m_patience.start();
  m_work->add({m_document, index, m_today, m_generation}, first);
  if (!m_slice.isActive()) m_slice.start();
}

void ChannelRows::want(std::size_t index) {
  follow();
  ask(index, true);
}

void ChannelRows::wantAll() {
  follow();
  for (std::size_t k = 0; k < m_session.document().channels.size(); ++k) ask(k, false);
}

void ChannelRows::take() {
  std::vector<Done> done;
  {
    const std::scoped_lock lock(m_work->mutex);
    done.swap(m_work->done);
  }
  bool any = false;
  for (Done& one : done) {
    const auto found = m_entries.find(one.channel.get());
    if (one.generation != m_generation || found == m_entries.end() || !found->second.wanted)
      continue;  // the document holds another by now
    Entry& entry = found->second;
    one.row.channel = entry.row.channel;
    entry.row = std::move(one.row);
    entry.known = entry.current = any = true;
    entry.wanted = false;
    --m_waiting;
  }
  if (m_waiting == 0) {
    m_takesLong = false;
    m_patience.stop();
    m_slice.stop();
  }
  if (any) emit arrived();
}

void ChannelRows::waitForAll() {
  while (m_waiting > 0) {
    m_work->pool.waitForDone();
    take();
  }
}

}  // namespace ui
