// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "ui/report/page_slices.h"

namespace ui {

/// Sections `first` to `end` (the last excluded) of `report` laid out `width` dots wide, on any thread.
/// `pictures` are those of these sections in their order, with their sizes.
Chapter chapterOf(const core::Report& report, std::size_t first, std::size_t end, double width,
                  double pageHeight, std::span<const std::shared_ptr<PictureSlot>> pictures);

/// The title of `report`, above its first chapter.
std::vector<Slice> titleSlices(const core::Report& report, double width);

}  // namespace ui
