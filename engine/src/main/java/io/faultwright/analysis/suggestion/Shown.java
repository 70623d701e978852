package io.faultwright.analysis.suggestion;

import io.faultwright.analysis.coverage.Effect;
import io.faultwright.analysis.coverage.Sighting;
import io.faultwright.analysis.coverage.SituationAim;
import io.faultwright.analysis.coverage.SymptomAims;
import io.faultwright.analysis.coverage.SymptomAims.RuleAims;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;

/**
 * What single cases show of a symptom's goals: a number for each, two for each test that decides.
 */
final class Shown {
  private final List<SituationAim> situations;
  private final List<Effect> effects = new ArrayList<>();

  Shown(SymptomAims aims) {
    this.situations = aims.situations();
    aims.rules().stream().map(RuleAims::effects).forEach(effects::addAll);
  }

  /** What a case shows. */
  BitSet by(Sighting one) {
    BitSet shown = new BitSet();
    for (int number = 0; number < situations.size() + 2 * effects.size(); number++) {
      shown.set(number, isShown(number, one));
    }
    return shown;
  }

  /** Whether a case shows all of some goals. */
  boolean all(BitSet goals, Sighting one) {
    return goals.stream().allMatch(number -> isShown(number, one));
  }

  private boolean isShown(int number, Sighting one) {
    int half = number - situations.size();
    return half < 0
        ? situations.get(number).shows().test(one)
        : effects.get(half / 2).isShownBy(one, half % 2 == 0);
  }

  /** What some cases show. */
  BitSet by(Collection<Sighting> cases) {
    BitSet shown = new BitSet();
    cases.forEach(one -> shown.or(by(one)));
    return shown;
  }

  /** Whether every effect that a case has a part in is shown by the others without it. */
  boolean stillTogether(Sighting one, Collection<Sighting> others) {
    return effects.stream()
        .filter(effect -> effect.isShownBy(one, true) || effect.isShownBy(one, false))
        .allMatch(effect -> effect.isShownBy(others));
  }

  /** A goal, or half of one, in words. */
  String words(int number) {
    if (number < situations.size()) {
      return situations.get(number).goal().words();
    }
    int half = number - situations.size();
    Effect effect = effects.get(half / 2);
    return effect.goal().words()
        + " rule `"
        + effect.goal().rule().orElseThrow()
        + "`, "
        + (half % 2 == 0 ? "met" : "not met");
  }

  /** Effects that some cases do not show together. */
  static List<Effect> open(List<Effect> effects, Collection<Sighting> cases) {
    return effects.stream().filter(effect -> !effect.isShownBy(cases)).toList();
  }
}
