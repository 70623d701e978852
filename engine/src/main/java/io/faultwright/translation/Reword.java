package io.faultwright.translation;

import io.faultwright.model.NamedValue;
import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;

/** Puts texts of several shapes into other words; what is empty stays so. */
record Reword(Rewording rewording) {
  String text(String text, Place place) {
    return text.isBlank() ? text : rewording.reword(ShownText.of(text, place));
  }

  /** A text that may be a mere figure or code. */
  String figure(String text, Place place) {
    return text.isBlank() ? text : rewording.reword(ShownText.figure(text, place));
  }

  Optional<String> text(Optional<String> text, Place place) {
    return text.map(one -> text(one, place));
  }

  List<String> texts(List<String> texts, Place place) {
    return texts.stream().map(one -> text(one, place)).toList();
  }

  List<NamedValue> values(List<NamedValue> values, Place place) {
    return values.stream()
        .map(value -> new NamedValue(value.id(), text(value.title(), place)))
        .toList();
  }
}
