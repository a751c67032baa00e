// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <string>
#include <string_view>

#include "core/report/report.h"

namespace core {

/// `text` with the five characters that mean something in HTML replaced, line ends kept as breaks.
std::string htmlText(std::string_view text);

/// The name of a verdict in style sheets: "pass", "fail", "untold", "open".
std::string_view classOf(Verdict verdict);

/// Where a picture is to be found: an address for `src`, and its width in CSS pixels. An empty address
/// leaves the picture out.
struct PictureSource {
  std::string address;
  int width_px = 0;
};

/// `report` as one HTML document that browsers and QTextDocument lay out alike: no scripts, nothing from
/// elsewhere, table heads repeated on each page.
std::string reportHtml(const Report& report,
                       const std::function<PictureSource(const Picture&)>& pictures = {});

}  // namespace core
