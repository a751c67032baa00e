// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/recording_store.h"

namespace ui {

RecordingStore::RecordingStore(QObject* parent) : QObject(parent) {}
RecordingStore::~RecordingStore() = default;

void RecordingStore::setFolder(const QString&) {}
QString RecordingStore::pathOf(const core::RecordingReference&) const { return {}; }
RecordingStore::State RecordingStore::state(const core::RecordingReference&) const { return State::Absent; }
std::shared_ptr<const OpenRecording> RecordingStore::recording(const core::RecordingReference&) const {
  return nullptr;
}
std::optional<core::Error> RecordingStore::error(const core::RecordingReference&) const { return {}; }
double RecordingStore::progress(const core::RecordingReference&) const { return 0; }
void RecordingStore::want(const core::RecordingReference&, bool) {}
void RecordingStore::put(std::shared_ptr<const OpenRecording>) {}
void RecordingStore::forget(const core::RecordingReference&) {}

}  // namespace ui
