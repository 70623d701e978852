package io.faultwright.translation;

import io.faultwright.model.Catalogue;
import io.faultwright.source.Place;
import java.util.List;

/**
 * A text that the handbook shows.
 *
 * @param text as it is written
 * @param place where what it belongs to stands
 * @param keys what a catalogue may have it under, first the best
 * @param words whether there are words in it that need a translation; a figure has none
 * @param name whether it is a name by which others know it, translated only where it is shown
 */
public record ShownText(String text, Place place, List<String> keys, boolean words, boolean name) {
  public ShownText {
    keys = List.copyOf(keys);
  }

  /** A text in words. */
  static ShownText of(String text, Place place) {
    return new ShownText(
        text, place, List.of(Catalogue.key(text)), Figures.hasLetters(text), false);
  }

  /** A name that stays as it is and is translated where it is shown. */
  static ShownText name(String text, Place place, boolean words) {
    return new ShownText(text, place, List.of(Catalogue.key(text)), words, true);
  }

  /** A text that may be a mere figure, such as {@code 1.1 kg}, or a mere code. */
  static ShownText figure(String text, Place place) {
    return new ShownText(text, place, List.of(Catalogue.key(text)), !Figures.isFigure(text), false);
  }
}
