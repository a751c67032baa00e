// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/html.h"

namespace core {

/// `report` as one HTML file for browsers, on the screen and on paper: no scripts, nothing from elsewhere,
/// links in its contents, light or dark as the reader's system is, tables with captions and heads for
/// assistive tools, the fingerprint as <meta name="shuntwright-fingerprint">. Pictures should be data:
/// addresses; they stand on white, for they are drawn in light colours.
std::string reportWebPage(const Report& report,
                          const std::function<PictureSource(const Picture&)>& pictures = {});

}  // namespace core
