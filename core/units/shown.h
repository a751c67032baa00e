// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// How many digits of a number are worth showing: as many as what it is held against warrants.

namespace core {

/// Places after the point that show `yardstick` (a limit, an uncertainty) with two significant digits, and no
/// more than it needs: 1 of 1.7, 5 of 0.00041, 2 of 0.0996 (which is 0.10), none of 123. 0 of what is no
/// finite number, and of 0.
int placesOf(double yardstick);

/// Places for `value` beside its limit: those of the limit, and as many more as it takes to see on which side
/// of the limit |value| lies, up to 9: none of 2.04 beside 15, two of 15.02 beside 15.
int placesBeside(double value, double limit);

/// `places`, or as many more, up to 9, as it takes for `value` to be shown with one significant digit at
/// least: 4 of 0.0002 beside 2. Of 0, of what is smaller still and of no finite number `places` itself.
int placesShowing(double value, int places);

}  // namespace core
