package io.faultwright.delivery;

import io.faultwright.page.Frame;
import java.util.List;
import java.util.Optional;

/**
 * What one participant gets.
 *
 * @param frame head and foot of the handbook
 * @param session id
 * @param title of the session
 * @param quiz fingerprint of the quiz
 * @param participant number, counted from 1
 * @param key for the check value of what this participant hands in
 * @param handInBy last day on which answers are taken, as in {@code 2026-04-21}
 * @param questions in the order of the quiz
 */
public record HandOut(
    Frame frame,
    String session,
    String title,
    String quiz,
    int participant,
    String key,
    Optional<String> handInBy,
    List<Question> questions) {
  public HandOut {
    questions = List.copyOf(questions);
  }

  /** The file that the participant is given, without its ending. */
  public String name() {
    return "%s-%03d".formatted(session, participant);
  }
}
