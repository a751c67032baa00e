// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>

#include "core/units/result.h"

namespace ui {

/// Puts `bytes` under the name `path`, whole or not at all: document, recovery copy, report.
///
/// The bytes go to a new file beside the old one, are forced to the disk, counted there, renamed over
/// the old name, and the folder is forced to the disk too. So after success they survive a power cut,
/// and after a failure the old file is as it was. One failure comes later than the renaming: when
/// the disk does not confirm the folder, the new bytes are in place and the error says so.
/// Kept: the file's mode, and a symlink, whose target is replaced. Not kept: hard links, owner and
/// access lists. Only a regular file is replaced.
/// The program must ignore SIGXFSZ, or a limit on file sizes ends it instead of failing the save.
/// `OwnerOnly`: readable and writable by the user alone (mode 0600), from before the first byte is in it.
enum class Readers { AsUsual, OwnerOnly };
core::Result<void> saveBytes(const QString& path, const QByteArray& bytes,
                             Readers readers = Readers::AsUsual);

/// The bytes of a regular file of at most `cap` bytes. Anything else (folder, pipe, device) is refused
/// without waiting for it.
core::Result<QByteArray> loadBytes(const QString& path, qint64 cap);

/// SHA-256 (FIPS 180-4) of a regular file in 64 lower-case hexadecimal digits. Reads the whole file,
/// so large ones belong on a worker.
core::Result<QString> sha256OfFile(const QString& path);
/// The same of bytes in memory.
QString sha256Of(const QByteArray& bytes);

}  // namespace ui
