package io.faultwright.translation;

import io.faultwright.model.Domain;
import io.faultwright.model.Reading;

/** A reading in other words. */
record ReadingTexts(Reword reword) {
  Reading of(Reading old) {
    return new Reading(
        old.id(),
        old.place(),
        reword.text(old.title(), old.place()),
        reword.text(old.ask(), old.place()),
        domain(old),
        old.access(),
        old.minutes(),
        reword.texts(old.how(), old.place()),
        reword.text(old.where(), old.place()),
        reword.text(old.phase(), old.place()),
        reword.text(old.instrument(), old.place()),
        old.accuracy(),
        old.cautions(),
        old.guide(),
        old.applies(),
        old.normal(),
        old.derived(),
        old.assumed(),
        old.setUp(),
        old.after());
  }

  /** Yes and no are words of the tool. */
  private Domain domain(Reading reading) {
    return reading
        .domain()
        .match(
            measured -> measured,
            choice ->
                choice.yesNo()
                    ? choice
                    : new Domain.Choice(reword.values(choice.values(), reading.place()), false));
  }
}
