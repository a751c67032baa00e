// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/demo.h"

#include <QFile>
#include <cassert>

#include "core/document/json_reader.h"

namespace app {

core::Document demoDocument() {
  QFile file(":/demo/demo.bridgecal");
  [[maybe_unused]] const bool open = file.open(QIODevice::ReadOnly);
  assert(open);
  const QByteArray text = file.readAll();
  auto document = core::readDocument({text.constData(), static_cast<std::size_t>(text.size())});
  assert(document);  // tests read the very file
  return *std::move(document);
}

QStringList demoFiles() { return {":/demo/demo.bridgecal", ":/demo/pre_test.csv", ":/demo/post_test.csv"}; }

}  // namespace app
