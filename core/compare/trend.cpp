// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/trend.h"

namespace core {

Trend trendOf(const Channel&, const ChannelEvaluation&) { return {}; }

}  // namespace core
