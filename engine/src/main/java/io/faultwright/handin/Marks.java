package io.faultwright.handin;

import java.util.List;

/**
 * Who passed a quiz and who did not, as {@code grades.json} says.
 *
 * @param fingerprint of the quiz
 * @param registerKey of the check values of certificates
 * @param about what was taught
 * @param passMark hundredths of the items that must be right
 * @param items how many each got
 * @param people by number
 */
public record Marks(
    String fingerprint,
    String registerKey,
    Course about,
    int passMark,
    int items,
    List<Person> people) {
  public Marks {
    people = List.copyOf(people);
  }

  /**
   * One participant.
   *
   * @param number of the participant
   * @param name as it is to be printed
   * @param passed whether the pass mark was reached in time
   * @param right how many items are right
   */
  public record Person(int number, String name, boolean passed, int right) {}
}
