// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shown_channel.h"

#include "ui/sheet_model.h"

namespace ui {

std::shared_ptr<const core::Channel> shownChannel(const Session& session) {
  const auto chosen = session.selection().channel;
  if (!chosen) return nullptr;
  const auto& channel = session.document().channels[*chosen];
  if (session.shownSetup() == channel->setup) return channel;
  auto judged = std::make_shared<core::Channel>(*channel);
  judged->setup = session.shownSetup();
  return judged;
}

std::optional<std::size_t> shownStep(const Session& session) {
  const auto step = session.selection().step;
  return step && *step < session.shownSetup().sequence.size() ? step : std::nullopt;
}

QString whyNotEdited(const Session& session) {
  if (!session.checkIsClosed()) return {};
  return SheetModel::tr(
      "This check is closed and shows the set-up it was judged by: reopen it, or choose \"plan only\" or an "
      "open check.");
}

}  // namespace ui
