package io.faultwright.flow;

import io.faultwright.model.Handbook;
import io.faultwright.words.Words;

/**
 * What stands on every page of a chart besides the chart.
 *
 * @param handbook title of the handbook
 * @param maker name of the equipment maker
 * @param revision of the handbook
 * @param date of the revision
 * @param disclaimer printed at the foot
 * @param draft whether the rules still have errors, which is stamped on the page
 * @param language BCP 47 tag of the texts
 */
public record Imprint(
    String handbook,
    String maker,
    String revision,
    String date,
    String disclaimer,
    boolean draft,
    String language) {
  /** The words of the tool in that language. */
  public Words say() {
    return Words.of(language);
  }

  public static Imprint of(Handbook handbook, boolean draft) {
    return new Imprint(
        handbook.title(),
        handbook.maker(),
        handbook.revision(),
        handbook.date(),
        handbook.disclaimer(),
        draft,
        handbook.language());
  }
}
