// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/record/saving.h"

#include <pwd.h>
#include <unistd.h>

#include <QCoreApplication>
#include <QDateTime>
#include <array>

#include "core/record/file_standing.h"
#include "core/units/date.h"
#include "ui/safe_file.h"
#include "ui/state_file.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr const char* personKey = "person";
constexpr qint64 greatestDocument_bytes = 64 << 20;

}  // namespace

QString loginName() {
  passwd entry{}, *found = nullptr;
  std::array<char, 4096> texts{};
  ::getpwuid_r(::geteuid(), &entry, texts.data(), texts.size(), &found);
  return found ? QString::fromLocal8Bit(found->pw_name) : qEnvironmentVariable("USER");
}

QString personName() { return stateFile().value(personKey, loginName()).toString(); }

void rememberPerson(const QString& name) { stateFile().setValue(personKey, name.trimmed()); }

std::string timeNow() {
  return core::timeText(core::Time(std::chrono::seconds(QDateTime::currentSecsSinceEpoch())));
}

core::Saving savingNow() {
  return {personName().toStdString(), timeNow(), QCoreApplication::applicationVersion().toStdString()};
}

QString alteredOutside(const QString& path) {
  const auto bytes = loadBytes(path, greatestDocument_bytes);
  if (!bytes) return {};
  const auto standing =
      core::fileStanding(std::string_view(bytes->constData(), static_cast<std::size_t>(bytes->size())));
  if (!standing || standing->kind != core::FileStanding::Kind::Altered) return {};
  return toQString(core::sentenceOf(*standing));
}

}  // namespace ui
