// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/saving.h"

#include <QFileInfo>

#include "app/files.h"
#include "core/document/json_writer.h"
#include "core/record/revisions.h"
#include "ui/record/saving.h"
#include "ui/safe_file.h"

namespace app {

core::Result<void> saveRevised(const std::string& path, core::Document document, const core::Document& before,
                               const std::string& person) {
  const std::string by = person.empty() ? ui::loginName().toStdString() : person;
  const auto revised =
      core::withRevision(std::move(document), &before, {by, core::timeText(now()), SHUNTWRIGHT_VERSION});
  if (!revised) return inFile(path, revised.error());
  const auto text = core::writeDocument(*revised);
  if (!text) return inFile(path, text.error());
  const auto done = ui::saveBytes(QString::fromStdString(path), QByteArray::fromStdString(*text));
  if (!done) return done.error();
  return {};
}

core::Result<void> requireOther(const std::string& out, const std::string& source, const std::string& what) {
  const QFileInfo to(QString::fromStdString(out)), from(QString::fromStdString(source));
  if (!out.empty() && to.exists() && to.canonicalFilePath() == from.canonicalFilePath())
    return core::Error{out, "it would replace the " + what, "Save under another name"};
  return {};
}

}  // namespace app
