package io.faultwright.delivery;

import java.util.List;
import java.util.Optional;

/**
 * A question with its answer: for the trainer, and for a learning system that grades.
 *
 * @param question as a participant sees it
 * @param right number of the right choice, counted from 1
 * @param because why it is right, in sentences; may be empty
 * @param page title of the page of the handbook that says more
 * @param address of that page; absent where the handbook does not say where its site stands
 */
public record Solved(
    Question question, int right, List<String> because, String page, Optional<String> address) {
  public Solved {
    because = List.copyOf(because);
  }
}
