// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "core/practice/question.h"
#include "ui/report_pages.h"

namespace ui {

/// A set of questions on A4 pages, with the seed on each: drawing, text, choices and room to write of the
/// first `count` questions of the set; or, with `answers`, the sheet of the trainer: what is right, with the
/// drawing, the sentences and the formula that explain it. The same arguments give the same questions.
///
/// Needs a QApplication (without a screen will do) and must run on its thread; the questions are drawn up on
/// another one, while the events of this one go on. `kinds` is not empty. `progress` is told the share done,
/// 0 to 1. Fails when `stop` is requested meanwhile. The caller puts the bytes into a file.
core::Result<QByteArray> practicePdf(std::uint64_t seed, std::size_t count, core::Difficulty difficulty,
                                     const std::vector<core::QuestionKind>& kinds, bool answers,
                                     const std::function<void(double)>& progress = {},
                                     std::stop_token stop = {}, const ReportStamp& stamp = {});

/// The same of questions at hand, in this order; `title` stands at the head of each page.
core::Result<QByteArray> questionPages(const QString& title, const std::vector<core::Question>& questions,
                                       bool answers, const std::function<void(double)>& progress = {},
                                       std::stop_token stop = {}, const ReportStamp& stamp = {});

}  // namespace ui
