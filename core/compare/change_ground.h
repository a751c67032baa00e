// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/compare/comparison.h"
#include "core/compare/lasting_errors.h"
#include "core/diagnose/refit.h"

namespace core {

/// The difference of two checks as something to be diagnosed: the readings of the `faulty` check, held
/// against the set-up and the readings of the `sound` one.
///
/// A step that the sound check reads off its expectation by d_s and the faulty one by d_f counts as read off
/// by d_f - d_s, with the covariance of that difference, in which the errors of lasting parts cancel as far
/// as both checks feel them alike. Objects inside refer to each other and to what it was made of, so that it
/// stays where it is made and lives no longer than channel and evaluation.
class ChangeGround {
 public:
  /// `comparison` is that of the sound check (earlier in it, whichever came first) with the faulty one. Fails
  /// as diagnosisGround does.
  static Result<std::unique_ptr<ChangeGround>> make(const Channel& channel,
                                                    const ChannelEvaluation& evaluation, std::size_t sound,
                                                    std::size_t faulty, const Comparison& comparison);
  ChangeGround(const ChangeGround&) = delete;
  ChangeGround& operator=(const ChangeGround&) = delete;

  const DiagnosisGround& ground() const { return *m_ground; }
  const Budget& budget() const { return m_sound.budget; }
  /// That of the sound check without what both checks share: what the size of a change is known by.
  const Budget& ownBudget() const { return m_ownBudget; }
  /// Standard uncertainty that readings were given, from their scatter about a line, when none is stated.
  std::optional<double> takenScatter() const { return m_takenScatter; }

  /// By how much the zero as shown moved, when that says something about causes: an instrument that shows
  /// next to nothing may have been zeroed anew.
  std::optional<double> tellingZero() const { return m_zero; }
  /// Standard deviation of a zero that nothing has happened to.
  double ordinaryZero() const { return m_ordinaryZero; }

 private:
  ChangeGround(const Channel& channel, const ChannelEvaluation& evaluation, std::size_t sound,
               std::size_t faulty);
  void takeOwnErrors();
  double ownVariance(const CheckEvaluation& evaluation, const Check& check, std::size_t step) const;
  CheckPoints pointsOf(const Comparison& comparison);
  void takeZero(const Comparison& comparison);
  std::vector<double> covarianceWith(const Budget& later) const;
  std::optional<std::vector<double>> covarianceUnder(const Fault& fault,
                                                     const std::vector<double>& changes) const;
  void splitCovariance(const std::vector<double>& whole);
  std::vector<double> covarianceOf(const std::vector<double>& share,
                                   const std::vector<std::size_t>& taken) const;
  std::optional<std::vector<double>> covarianceOfOtherParts(const Fault& fault) const;
  double evidenceOf(const Refit& refit) const;

  const Setup& m_setup;       ///< of the sound check
  const Setup& m_otherSetup;  ///< of the faulty check
  const Check& m_soundCheck;
  const Check& m_faultyCheck;
  const CheckEvaluation& m_sound;
  const CheckEvaluation& m_faulty;
  Budget m_ownBudget;
  double m_worstStated = 0;
  std::optional<double> m_takenScatter;
  std::vector<StepPair> m_pairs;  ///< one a point
  std::vector<double> m_expected, m_own;
  /// Covariances of the chain, row after row: of each check, and between both (taken as symmetric, as it is
  /// where the set-ups are alike).
  std::vector<double> m_ofSound, m_ofFaulty, m_ofBoth;
  Check m_check;  ///< the faulty check as it would read on the set-up of the sound one
  std::optional<double> m_zero;
  double m_ordinaryZero = 0, m_span = 0;
  BetweenChecks m_between;
  std::optional<DiagnosisGround> m_plan, m_ground;
};

}  // namespace core
