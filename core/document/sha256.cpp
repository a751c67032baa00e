// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/sha256.h"

#include <array>
#include <bit>
#include <cstdint>

// FIPS 180-4, Secure Hash Standard, section 6.2; the letters are those of the standard.

namespace core {
namespace {

constexpr std::size_t blockSize = 64, lengthSize = 8;

/// The first 32 bits of the fractions of the cube roots of the first 64 primes (section 4.2.2).
constexpr std::array<std::uint32_t, 64> constants = {
    0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5,
    0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174,
    0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da,
    0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967,
    0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85,
    0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070,
    0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3,
    0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2};

using State = std::array<std::uint32_t, 8>;

/// Those of the square roots of the first eight primes (section 5.3.3).
constexpr State initial = {0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a,
                           0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19};

std::uint32_t wordAt(const char* bytes) {
  std::uint32_t word = 0;
  for (int k = 0; k < 4; ++k) word = word << 8 | static_cast<unsigned char>(bytes[k]);
  return word;
}

void take(State& state, const char* block) {
  using std::rotr;
  std::array<std::uint32_t, 64> w;
  for (std::size_t t = 0; t < 16; ++t) w[t] = wordAt(block + 4 * t);
  for (std::size_t t = 16; t < 64; ++t) {
    const std::uint32_t s0 = rotr(w[t - 15], 7) ^ rotr(w[t - 15], 18) ^ w[t - 15] >> 3;
    const std::uint32_t s1 = rotr(w[t - 2], 17) ^ rotr(w[t - 2], 19) ^ w[t - 2] >> 10;
    w[t] = s1 + w[t - 7] + s0 + w[t - 16];
  }
  auto [a, b, c, d, e, f, g, h] = state;
  for (std::size_t t = 0; t < 64; ++t) {
    const std::uint32_t t1 =
        h + (rotr(e, 6) ^ rotr(e, 11) ^ rotr(e, 25)) + ((e & f) ^ (~e & g)) + constants[t] + w[t];
    const std::uint32_t t2 = (rotr(a, 2) ^ rotr(a, 13) ^ rotr(a, 22)) + ((a & b) ^ (a & c) ^ (b & c));
    h = g, g = f, f = e, e = d + t1;
    d = c, c = b, b = a, a = t1 + t2;
  }
  const State worked = {a, b, c, d, e, f, g, h};
  for (std::size_t k = 0; k < state.size(); ++k) state[k] += worked[k];
}

/// What is left after whole blocks, with its padding: a one, zeros, and the length in bits (section 5.1.1).
std::string padded(std::string_view rest, std::uint64_t length) {
  std::string text(rest);
  text += '\x80';
  while (text.size() % blockSize != blockSize - lengthSize) text += '\0';
  for (int shift = 56; shift >= 0; shift -= 8) text += static_cast<char>(8 * length >> shift & 0xff);
  return text;
}

}  // namespace

std::string sha256Hex(std::string_view bytes) {
  State state = initial;
  const std::size_t whole = bytes.size() / blockSize * blockSize;
  for (std::size_t at = 0; at < whole; at += blockSize) take(state, bytes.data() + at);
  const std::string last = padded(bytes.substr(whole), bytes.size());
  for (std::size_t at = 0; at < last.size(); at += blockSize) take(state, last.data() + at);
  std::string text;
  for (const std::uint32_t word : state)
    for (int shift = 28; shift >= 0; shift -= 4) text += "0123456789abcdef"[word >> shift & 0xf];
  return text;
}

bool isSha256Hex(std::string_view text) {
  return text.size() == 64 && text.find_first_not_of("0123456789abcdef") == text.npos;
}

}  // namespace core
