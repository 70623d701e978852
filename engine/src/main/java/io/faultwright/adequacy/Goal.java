package io.faultwright.adequacy;

import io.faultwright.source.Place;
import java.util.Optional;

/**
 * Something that a symptom's cases should show.
 *
 * @param criterion what it belongs to
 * @param symptom id of the symptom
 * @param rule id of the rule it is about; absent where it is about none in particular
 * @param words what has to be shown, in a few words
 * @param place where what it is about stands
 */
public record Goal(
    Criterion criterion, String symptom, Optional<String> rule, String words, Place place) {
  /** The words, with the rule where they do not name it. */
  public String wordsInRule() {
    return rule.filter(id -> !words.contains("`" + id + "`"))
        .map(id -> words + " in `" + id + "`")
        .orElse(words);
  }
}
