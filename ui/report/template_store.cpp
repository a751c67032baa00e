// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report/template_store.h"

#include <QDir>
#include <QFileInfo>
#include <algorithm>

#include "ui/picture_file.h"
#include "ui/safe_file.h"
#include "ui/state_file.h"
#include "ui/theme.h"

#include "core/units/language.h"

namespace ui {
namespace {

constexpr qint64 largest = qint64{64} * 1024;  ///< bytes; a template has less than one kilobyte

core::Error named(core::Error error, const QString& path) {
  error.where = QFileInfo(path).fileName().toStdString() + (error.where.empty() ? "" : ", " + error.where);
  return error;
}

}  // namespace

core::Result<core::ReportTemplate> openTemplate(const QString& path) {
  const auto bytes = loadBytes(path, largest);
  if (!bytes) return bytes.error();
  auto read = core::readTemplate(bytes->toStdString());
  if (!read) return named(read.error(), path);
  return read;
}

TemplateStore::TemplateStore() : m_folder(QFileInfo(stateFile().fileName()).path() + "/report-templates") {
  read();
}

void TemplateStore::read() {
  m_own.clear(), m_files.clear(), m_troubles.clear();
  const QDir folder(m_folder);
  for (const QString& file : folder.entryList({QString("*.") + templateSuffix}, QDir::Files, QDir::Name)) {
    const QString path = folder.filePath(file);
    auto made = openTemplate(path);
    if (!made) {
      m_troubles << toText(made.error());
      continue;
    }
    made->name = freeName(toQString(made->name)).toStdString();  // of a file that was copied by hand
    m_own.push_back(*std::move(made));
    m_files.push_back(path);
  }
}

bool TemplateStore::isTaken(const QString& name) const {
  const auto same = [&](const core::ReportTemplate& each) {
    return toQString(each.name).compare(name, Qt::CaseInsensitive) == 0;
  };
  const auto& ready = core::readyTemplates();
  return std::any_of(ready.begin(), ready.end(), same) || std::any_of(m_own.begin(), m_own.end(), same);
}

QString TemplateStore::freeName(const QString& name) const {
  QString free = name;
  for (int number = 2; isTaken(free); ++number) free = QString("%1 (%2)").arg(name).arg(number);
  return free;
}

QString TemplateStore::fileOf(const QString& name) const {
  const QString base = m_folder + "/" + asFileName(name).left(60);
  QString path = base + "." + templateSuffix;
  for (int number = 2; QFileInfo::exists(path); ++number)
    path = QString("%1-%2.%3").arg(base).arg(number).arg(templateSuffix);
  return path;
}

core::Result<void> TemplateStore::add(const core::ReportTemplate& made) {
  if (!QDir().mkpath(m_folder))
    return core::Error{m_folder.toStdString(), core::say("the folder cannot be made"),
                       core::say("Look whether it may be written to")};
  const QString path = fileOf(toQString(made.name));
  const auto saved = saveBytes(path, QByteArray::fromStdString(core::writeTemplate(made)));
  if (!saved) return saved;
  m_own.push_back(made);
  m_files.push_back(path);
  return saved;
}

core::Result<void> TemplateStore::replace(const QString& name, const core::ReportTemplate& made) {
  for (std::size_t k = 0; k < m_own.size(); ++k) {
    if (toQString(m_own[k].name) != name) continue;
    const auto saved = saveBytes(m_files[k], QByteArray::fromStdString(core::writeTemplate(made)));
    if (saved) m_own[k] = made;
    return saved;
  }
  return add(made);
}

core::Result<void> TemplateStore::remove(const QString& name) {
  for (std::size_t k = 0; k < m_own.size(); ++k) {
    if (toQString(m_own[k].name) != name) continue;
    if (QFileInfo::exists(m_files[k]) && !QFile::remove(m_files[k]))
      return core::Error{m_files[k].toStdString(), core::say("the file cannot be removed"),
                         core::say("Look whether its folder may be written to")};
    m_own.erase(m_own.begin() + std::ptrdiff_t(k));
    m_files.erase(m_files.begin() + std::ptrdiff_t(k));
    break;
  }
  return {};
}

}  // namespace ui
