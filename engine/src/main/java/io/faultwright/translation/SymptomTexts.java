package io.faultwright.translation;

import static io.faultwright.translation.Reworded.each;

import io.faultwright.model.Conclusion;
import io.faultwright.model.Never;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.source.Place;

/** A symptom in other words. */
record SymptomTexts(Reword reword) {
  Symptom of(Symptom old) {
    return new Symptom(
        old.id(),
        old.place(),
        reword.text(old.title(), old.place()),
        reword.text(old.about(), old.place()),
        old.applies(),
        old.recognise(),
        old.first(),
        each(old.rules(), this::rule),
        each(old.nevers(), this::never),
        old.together(),
        old.guide(),
        old.hazards());
  }

  /** The target of an escalation is a name by which others know it; it stays. */
  private Rule rule(Rule old) {
    if (old.conclusion() instanceof Conclusion.Escalate escalate) {
      target(escalate.to(), old.place());
    }
    return new Rule(
        old.id(),
        old.place(),
        old.when(),
        old.conclusion(),
        reword.text(old.because(), old.place()),
        old.insteadOf());
  }

  /** The hotline is a word of the tool. */
  private void target(String to, Place place) {
    reword.rewording().reword(ShownText.name(to, place, !to.equals("hotline")));
  }

  private Never never(Never old) {
    return new Never(old.id(), old.place(), old.when(), reword.text(old.because(), old.place()));
  }
}
