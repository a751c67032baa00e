// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/working/working.h"

namespace core {

Result<std::vector<WorkingPart>> workingOf(const Channel&, const ChannelEvaluation&,
                                           std::optional<std::size_t>, std::size_t) {
  return std::vector<WorkingPart>{};
}

}  // namespace core
