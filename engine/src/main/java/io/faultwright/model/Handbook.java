package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;

/**
 * The title page.
 *
 * @param place where {@code handbook:} stands
 * @param title as printed
 * @param maker name of the equipment maker
 * @param revision as the trainer counts
 * @param date of the revision, ISO 8601, given by the trainer and never taken from a clock
 * @param language BCP 47 tag of the texts
 * @param disclaimer printed on every page's foot and in full on the start page
 * @param hotline whom to call
 * @param base address under which the site will stand
 * @param start guide shown on the start page
 * @param notes further printed lines
 * @param units in which quantities are shown; absent for those in which they are written
 * @param weights what a minute of each kind of access counts for
 * @param translatedTo tags of the languages in which it is published too, in the written order
 * @param signOffs who has to sign what before a release
 */
public record Handbook(
    Place place,
    String title,
    String maker,
    String revision,
    String date,
    String language,
    String disclaimer,
    Optional<String> hotline,
    Optional<String> base,
    Optional<String> start,
    List<String> notes,
    Optional<ShownUnits> units,
    AccessWeights weights,
    List<String> translatedTo,
    SignOffRules signOffs) {
  public Handbook {
    notes = List.copyOf(notes);
    translatedTo = List.copyOf(translatedTo);
  }

  /** The same title page in another language, which stands in a folder of its own. */
  Handbook in(String other) {
    return new Handbook(
        place,
        title,
        maker,
        revision,
        date,
        other,
        disclaimer,
        hotline,
        base.map(root -> root.replaceFirst("/+$", "") + "/" + other),
        start,
        notes,
        units,
        weights,
        translatedTo,
        signOffs);
  }

  /** The same as a release: its number and date stand in place of the trainer's. */
  public Handbook released(int number, String on) {
    return dated(Integer.toString(number), on);
  }

  /** The same, of no revision. */
  Handbook undated() {
    return dated("", "");
  }

  /** The same, of another revision. */
  Handbook dated(String other, String on) {
    return new Handbook(
        place,
        title,
        maker,
        other,
        on,
        language,
        disclaimer,
        hotline,
        base,
        start,
        notes,
        units,
        weights,
        translatedTo,
        signOffs);
  }
}
