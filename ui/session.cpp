// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session.h"

#include <QDate>
#include <QUndoCommand>
#include <algorithm>
#include <cassert>
#include <unordered_set>

#include "core/document/edits.h"
#include "ui/campaign/channel_rows.h"
#include "ui/theme.h"

namespace ui {
namespace {

std::unordered_set<const core::Channel*> valuesIn(const core::Document& document) {
  std::unordered_set<const core::Channel*> values;
  for (const auto& channel : document.channels) values.insert(channel.get());
  return values;
}

}  // namespace

/// The one undo command of the program: the document before and after.
class DocumentEdit : public QUndoCommand {
 public:
  DocumentEdit(Session& session, const QString& label, core::Document next)
      : QUndoCommand(label), m_session(session), m_before(session.document()), m_after(std::move(next)) {}

  void undo() override { show(m_before); }
  void redo() override { show(m_after); }

 private:
  /// Undoing an edit does not undo that it was saved.
  void show(core::Document document) {
    document.history = m_session.document().history;
    m_session.setDocument(std::move(document));
  }

  Session& m_session;
  core::Document m_before;
  core::Document m_after;
};

Session::Session(core::Document document, QObject* parent)
    : QObject(parent), m_document(std::move(document)), m_saved(m_document) {
  keepSelectionValid();
  chooseLatestCheck();
  // The stack counts a step as done only after its command has run, so what can be undone is told again.
  connect(&m_history, &QUndoStack::indexChanged, this, &Session::historyChanged);
  connect(&m_history, &QUndoStack::cleanChanged, this, &Session::historyChanged);
  m_rows = std::make_unique<ChannelRows>(*this);  // hears of changes before any view does
}

Session::~Session() = default;

const core::Channel* Session::channel() const {
  return m_selection.channel ? m_document.channels[*m_selection.channel].get() : nullptr;
}

const core::Check* Session::check() const {
  return m_selection.check ? &channel()->checks[*m_selection.check] : nullptr;
}

const core::ChannelEvaluation& Session::evaluation(std::size_t index) const {
  const auto& channel = m_document.channels[index];
  auto& entry = m_evaluations[channel.get()];
  if (!entry.second) {
    entry.first = channel;
    entry.second = std::make_unique<core::ChannelEvaluation>(core::evaluate(*channel));
  }
  return *entry.second;
}

const core::ChannelEvaluation* Session::evaluation() const {
  return m_selection.channel ? &evaluation(*m_selection.channel) : nullptr;
}

bool Session::checkIsClosed() const { return check() && check()->closedWith; }

core::Date Session::today() const {
  if (m_today) return *m_today;
  return toDate(QDate::currentDate());
}

void Session::setToday(core::Date day) {
  m_today = day;
  emit changed();
}

const core::Setup& Session::shownSetup() const {
  assert(channel());
  return check() ? core::setupOf(*channel(), *check()) : channel()->setup;
}

const core::SetupPrediction& Session::shownPrediction() const {
  const core::ChannelEvaluation* shown = evaluation();
  assert(shown);
  return check() ? shown->checks[*m_selection.check].prediction : shown->prediction;
}

const core::Budget& Session::shownBudget() const {
  const core::ChannelEvaluation* shown = evaluation();
  assert(shown);
  return check() ? shown->checks[*m_selection.check].budget : shown->budget;
}

void Session::edit(const QString& label, core::Document next) {
  if (next == m_document) return;
  m_history.push(new DocumentEdit(*this, label, std::move(next)));
}

void Session::editChannel(const QString& label, core::Channel next) {
  if (m_selection.channel) edit(label, core::withChannel(m_document, *m_selection.channel, std::move(next)));
}

void Session::selectChannel(std::optional<std::size_t> channel) {
  if (m_selection.channel == channel) return;
  m_selection =
      Selection{.channel = channel, .step = {}, .check = {}, .compared = {}, .scope = m_selection.scope};
  keepSelectionValid();
  chooseLatestCheck();
  emit changed();
}

void Session::selectStep(std::optional<std::size_t> step) {
  if (m_selection.step == step) return;
  m_selection.step = step;
  keepSelectionValid();
  emit changed();
}

void Session::selectCheck(std::optional<std::size_t> check) {
  if (m_selection.check == check) return;
  m_selection.check = check;
  if (m_selection.compared == check) m_selection.compared.reset();
  keepSelectionValid();
  emit changed();
}

void Session::compareWith(std::optional<std::size_t> check) {
  if (m_selection.compared == check) return;
  m_selection.compared = check;
  keepSelectionValid();
  emit changed();
}

void Session::selectScope(core::Scope scope) {
  if (m_selection.scope == scope) return;
  m_selection.scope = scope;
  emit changed();
}

void Session::reset(core::Document document) {
  m_selection = {};
  m_rows->forget();
  m_evaluations.clear();
  m_document = std::move(document);
  m_saved = m_document;
  keepSelectionValid();
  chooseLatestCheck();
  m_history.clear();
  emit changed();
}

void Session::setSaved(std::vector<core::Revision> history) {
  m_document.history = std::move(history);
  m_saved = m_document;
  m_history.setClean();
  emit changed();
}

void Session::setDocument(core::Document document) {
  const std::size_t checksBefore = channel() ? channel()->checks.size() : 0;
  const bool followed = followChannel(document);
  m_document = std::move(document);
  // Results of values that only the history holds would pile up with every edit.
  std::erase_if(m_evaluations,
                [held = valuesIn(m_document)](const auto& entry) { return !held.contains(entry.first); });
  keepSelectionValid();
  // Checks that come where none is shown, as those of an edit done again, are meant to be seen.
  const bool checksCame = channel() && channel()->checks.size() > checksBefore && !m_selection.check;
  if (!followed || checksCame) chooseLatestCheck();
  emit changed();
}

/// Keeps the chosen channel chosen when others come or go: the same value, else the same name. False
/// when it is gone and its neighbour is chosen instead.
bool Session::followChannel(const core::Document& next) {
  if (!m_selection.channel) return true;
  const auto chosen = m_document.channels[*m_selection.channel];
  const auto follow = [&](const auto& isChosen) {
    const auto found = std::find_if(next.channels.begin(), next.channels.end(), isChosen);
    if (found == next.channels.end()) return false;
    m_selection.channel = static_cast<std::size_t>(found - next.channels.begin());
    return true;
  };
  if (follow([&](const auto& channel) { return channel == chosen; })) return true;
  if (follow([&](const auto& channel) { return channel->name == chosen->name; })) return true;
  if (next.channels.size() == m_document.channels.size()) return true;  // renamed
  m_selection = Selection{
      .channel = m_selection.channel, .step = {}, .check = {}, .compared = {}, .scope = m_selection.scope};
  return false;
}

void Session::chooseLatestCheck() {
  if (channel() && !channel()->checks.empty()) m_selection.check = channel()->checks.size() - 1;
}

void Session::keepSelectionValid() {
  const std::size_t channels = m_document.channels.size();
  if (channels == 0) {
    m_selection =
        Selection{.channel = {}, .step = {}, .check = {}, .compared = {}, .scope = m_selection.scope};
    return;
  }
  m_selection.channel = std::min(m_selection.channel.value_or(0), channels - 1);
  const core::Channel& chosen = *m_document.channels[*m_selection.channel];
  if (m_selection.step >= chosen.setup.sequence.size()) m_selection.step.reset();
  if (m_selection.check >= chosen.checks.size()) m_selection.check.reset();
  if (m_selection.compared >= chosen.checks.size() || m_selection.compared == m_selection.check)
    m_selection.compared.reset();
}

}  // namespace ui
