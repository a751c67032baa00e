// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <memory>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/document/document.h"

namespace ui {

/// Which shunts of which channels are made of a part of the stock.
class PartUses {
 public:
  /// Looks through the channels unless they are the same as before; returns whether it did.
  bool update(const core::Document& document);
  /// "TP-01: R1, R2; TP-02: R1"; empty when it is used nowhere.
  QString of(const std::string& part) const;

 private:
  std::vector<std::shared_ptr<const core::Channel>> m_channels;  ///< that the texts below belong to
  std::unordered_map<std::string, QString> m_texts;
};

}  // namespace ui
