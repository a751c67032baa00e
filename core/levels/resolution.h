// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

#include "core/levels/sample_span.h"

namespace core {

/// The step between neighbouring codes of digitised `values`, found from the differences between samples of
/// the same span: most of them are whole multiples of it (within the rounding of decimal text), and few
/// different values occur often. Where no span varies, the step that the differences between spans have in
/// common, if it is far smaller than they are. Never less than the last decimal place in use. 0 when there is
/// no such step.
double resolutionOf(std::span<const double> values, std::span<const SampleSpan> spans);

/// What moves a signal across the steps of its resolution while a level is held.
struct Dither {
  double noise = 0;         ///< standard deviation
  double drift = 0;         ///< way of a steady drift within the level
  std::vector<double> hum;  ///< amplitudes of sinusoids
};

/// Standard deviation of what rounding to `resolution` leaves in the mean of many samples, over all places
/// the level may have between two codes: resolution/sqrt(12) for a signal at rest, next to nothing for noise
/// above half the resolution.
/// Source: Fourier series of the rounding error, each term damped by the characteristic function of the
/// dither at its multiple of 1/resolution; Widrow and Kollar, Quantization Noise (2008), from memory.
double deviationOfRounding(double resolution, const Dither& dither);

/// Standard deviation of the noise before rounding, from that of the rounded samples about the mean of each
/// level (root mean square over levels anywhere between the codes): the inverse of
/// noise^2 + resolution^2/12 - deviationOfRounding^2.
double noiseBeforeRounding(double rounded, double resolution);

}  // namespace core
