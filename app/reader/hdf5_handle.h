// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <hdf5.h>

#include <utility>

namespace reader {

/// An open thing of the HDF5 library; closes itself.
class Hdf5Handle {
 public:
  using Close = herr_t (*)(hid_t);

  Hdf5Handle() = default;
  Hdf5Handle(hid_t number, Close close) : m_number(number), m_close(close) {}
  ~Hdf5Handle() {
    if (m_number >= 0) m_close(m_number);
  }
  Hdf5Handle(Hdf5Handle&& other) noexcept { swap(other); }
  Hdf5Handle& operator=(Hdf5Handle&& other) noexcept {
    swap(other);
    return *this;
  }

  explicit operator bool() const { return m_number >= 0; }
  hid_t operator*() const { return m_number; }

 private:
  void swap(Hdf5Handle& other) {
    std::swap(m_number, other.m_number);
    std::swap(m_close, other.m_close);
  }

  hid_t m_number = -1;
  Close m_close = nullptr;
};

}  // namespace reader
