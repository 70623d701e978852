package io.faultwright.handin;

import io.faultwright.grading.HandIn;
import io.faultwright.source.Place;
import java.util.List;
import java.util.OptionalInt;

/**
 * Answers of one participant that fit the quiz.
 *
 * @param place where they stand
 * @param handIn what was handed in; its answers in the order of the quiz
 * @param paper whether it stands in a table, without a check value
 */
record Submission(Place place, HandIn handIn, boolean paper) {
  int participant() {
    return handIn.participant();
  }

  List<OptionalInt> choices() {
    return handIn.answers().stream().map(HandIn.Answer::choice).toList();
  }
}
