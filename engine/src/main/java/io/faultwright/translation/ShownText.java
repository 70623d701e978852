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
 */
public record ShownText(String text, Place place, List<String> keys, boolean words) {
  public ShownText {
    keys = List.copyOf(keys);
  }

  /** A text in words. */
  static ShownText of(String text, Place place) {
    return new ShownText(text, place, List.of(Catalogue.key(text)), Figures.hasLetters(text));
  }

  /** A text that may be a mere figure, such as {@code 1.1 kg}, or a mere code. */
  static ShownText figure(String text, Place place) {
    return new ShownText(text, place, List.of(Catalogue.key(text)), !Figures.isFigure(text));
  }
}
