// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/binary/binary_table.h"
#include "core/recording/file_bytes.h"

namespace core {

/// A RIFF or RF64 WAVE file: PCM of 8, 16, 24 and 32 bits, float of 32 and 64 bits, any number of channels.
/// Integer samples are given in parts of full scale (unit FS), -1 to 1; floats as they stand, without a unit.
/// A data chunk that ends early, or whose length was never filled in, is read as far as the file goes.
/// Source: Multimedia Programming Interface and Data Specifications 1.0, 1991, "Waveform Audio File Format";
/// EBU Tech 3306 (RF64); from memory.
Result<BinaryTable> openWav(const SharedFile& file);

}  // namespace core
