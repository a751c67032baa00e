// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

#include "core/uncertainty/propagation.h"
#include "core/uncertainty/random.h"
#include "core/uncertainty/student_deviates.h"
#include "core/uncertainty/uncertainty.h"
#include "core/units/result.h"

namespace core {

/// One input as it is drawn.
struct TrialInput {
  double value = 0;
  Uncertainty uncertainty;
};

struct CorrelationMatrix;

/// Random values of inputs for any trial (JCGM 101:2008, 6.4). A trial's values depend on its number, the
/// seed and the inputs alone; those of an independent input depend on its own distribution and place alone,
/// so that changing one input leaves the draws of all others as they were.
class Draws {
 public:
  /// Normal inputs with finite degrees of freedom are drawn from Student's t scaled by their standard
  /// uncertainty (6.4.9), so that their scatter is larger than it, infinite up to two degrees of freedom;
  /// degrees of freedom of the other distributions are not looked at. Inputs in `pairs` are correlated by a
  /// normal copula: exact for normal inputs; for coefficients of 1 and -1 their standard normal deviates are
  /// the same or mirrored; close to the coefficient otherwise (0.5 between rectangular ones comes to 0.483).
  ///
  /// Fails when a value or uncertainty is refused, or when the correlation cannot exist.
  static Result<Draws> of(std::span<const TrialInput> inputs, std::span<const CorrelatedPair> pairs,
                          std::uint64_t seed);

  std::size_t inputs() const { return m_inputs.size(); }

  /// Values for the trials from `firstTrial`, a multiple of `trialLanes`, on: values[input * trialLanes +
  /// lane]. Does not allocate; any thread may call it.
  void draw(std::uint64_t firstTrial, std::span<double> values) const;

 private:
  enum class Kind : std::uint8_t { Exact, Normal, Student, Rectangular, Triangular, Arcsine };
  struct Input {
    double value, standardUncertainty;
    Kind kind;
    bool correlated;
    bool copied;          ///< a twin is copied from it
    std::size_t student;  ///< which of `m_students`
  };
  /// A standard normal deviate as a sum of independent ones.
  struct Mix {
    std::size_t input;
    std::size_t firstTerm, endTerm;
  };
  struct Term {
    std::size_t input;
    double coefficient;
  };

  /// An input with the standard deviate of another, or its mirror.
  struct Twin {
    std::size_t input, of;
    double sign;
  };

  void addInput(const TrialInput& input);
  std::vector<std::size_t> takeTwins(CorrelationMatrix& correlation);
  Result<void> correlate(std::span<const CorrelatedPair> pairs);
  void correlateLanes(double* values) const;
  void finish(const Input& input, Lanes lanes) const;

  std::uint64_t m_seed = 0;
  std::vector<Input> m_inputs;
  std::vector<StudentDeviates> m_students;
  std::vector<Mix> m_mixes;  ///< by descending input, and made of none above it, so that they work in place
  std::vector<Term> m_terms;
  std::vector<Twin> m_twins;
};

}  // namespace core
