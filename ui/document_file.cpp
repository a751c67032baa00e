// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document_file.h"

#include <QFileInfo>

#include "core/document/json_reader.h"
#include "core/document/json_writer.h"
#include "ui/safe_file.h"
#include "ui/state_file.h"

namespace ui {
namespace {

constexpr qint64 greatestDocument_bytes = 64 << 20;
constexpr int recentCount = 10;

}  // namespace

core::Result<core::Document> openDocument(const QString& path, QString* sha256) {
  const auto bytes = loadBytes(path, greatestDocument_bytes);
  if (!bytes) return bytes.error();
  if (sha256) *sha256 = sha256Of(*bytes);
  auto document =
      core::readDocument(std::string_view(bytes->constData(), static_cast<std::size_t>(bytes->size())));
  if (document) return document;
  core::Error error = document.error();
  const std::string file = QFileInfo(path).fileName().toStdString();
  error.where = error.where.empty() ? file : file + ", " + error.where;
  return error;
}

core::Result<void> saveDocument(const core::Document& document, const QString& path, QString* sha256) {
  const auto text = core::writeDocument(document);
  if (!text) return text.error();
  const QByteArray bytes = QByteArray::fromStdString(*text);
  if (sha256) *sha256 = sha256Of(bytes);
  return saveBytes(path, bytes);
}

QStringList recentDocuments() { return stateFile().value("recent").toStringList(); }

void rememberDocument(const QString& path) {
  QStringList recent = recentDocuments();
  const QString full = QFileInfo(path).absoluteFilePath();
  // Saving again and again is no news, and the window waits for the disk.
  if (!recent.isEmpty() && recent.front() == full) return;
  recent.removeAll(full);
  recent.prepend(full);
  stateFile().setValue("recent", QStringList(recent.mid(0, recentCount)));
}

}  // namespace ui
