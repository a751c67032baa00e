// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/document/document.h"
#include "core/evaluate/evaluation.h"
#include "ui/page_pictures.h"

namespace ui {

/// The pictures of a report: bridge, wiring and outcome of a document, which must outlive this. The rest as
/// for PagePictures.
class ReportPictures {
 public:
  ReportPictures(const core::Document& document, QTextDocument& text);

  /// Makes room for `picture`; the address is to stand in the document's text.
  core::PictureSource add(const core::Picture& picture);

 private:
  const core::ChannelEvaluation& evaluationOf(std::size_t channel);
  core::PictureSource addBridge(std::size_t channel);

  const core::Document& m_document;
  std::shared_ptr<const core::Language> m_language;  ///< of this thread when it was made: that of the report
  PagePictures m_pictures;
  std::optional<std::size_t> m_evaluated;
  core::ChannelEvaluation m_evaluation;  ///< of channel m_evaluated
};

}  // namespace ui
