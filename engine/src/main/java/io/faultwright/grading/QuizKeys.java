package io.faultwright.grading;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What tells a quiz from others, and the keys of its participants.
 *
 * @param quiz fingerprint of the quiz: 16 hexadecimal digits that tell nothing of the answers
 * @param register key of the check values of certificates; no participant gets it
 * @param keys one for each participant, by number
 */
public record QuizKeys(String quiz, String register, List<String> keys) {
  private static final int FINGERPRINT = 16;

  public QuizKeys {
    keys = List.copyOf(keys);
  }

  /**
   * The keys of a quiz.
   *
   * @param answers the quiz with all its answers, as text
   * @param participants how many there are
   */
  public static QuizKeys of(String answers, int participants) {
    return new QuizKeys(
        CheckValue.key(answers, 0).substring(0, FINGERPRINT),
        CheckValue.registerKey(answers),
        IntStream.rangeClosed(1, participants).mapToObj(n -> CheckValue.key(answers, n)).toList());
  }

  /** The key of a participant. */
  public String of(int participant) {
    return keys.get(participant - 1);
  }
}
