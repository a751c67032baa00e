// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stock/part_uses.h"

#include <map>

#include "ui/theme.h"

namespace ui {

bool PartUses::update(const core::Document& document) {
  if (document.channels == m_channels) return false;  // by identity
  m_channels = document.channels;
  m_texts.clear();
  for (const auto& channel : m_channels) {
    std::map<std::string, QString> shunts;  // of this channel, by part
    for (const core::Shunt& shunt : channel->setup.shunts)
      if (QString& names = shunts[shunt.part.id]; !shunt.part.id.empty())
        names += (names.isEmpty() ? "" : ", ") + toQString(shunt.name);
    for (const auto& [part, names] : shunts)
      if (QString& text = m_texts[part]; !part.empty())
        text += (text.isEmpty() ? "" : "; ") + toQString(channel->name) + ": " + names;
  }
  return true;
}

QString PartUses::of(const std::string& part) const {
  const auto found = m_texts.find(part);
  return found == m_texts.end() ? QString() : found->second;
}

}  // namespace ui
