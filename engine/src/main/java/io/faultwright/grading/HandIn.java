package io.faultwright.grading;

import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * What a participant handed in.
 *
 * @param session id of the session
 * @param quiz fingerprint of the quiz, as in {@code quiz.json}
 * @param participant number, counted from 1
 * @param name as the participant wrote it, on one line
 * @param handedIn date and time of the participant's own clock, as in {@code 2026-04-14T10:32}
 * @param answers in the order of the quiz, one for each item
 */
public record HandIn(
    String session,
    String quiz,
    int participant,
    String name,
    String handedIn,
    List<Answer> answers) {
  private static final Pattern BREAK = Pattern.compile("[\\r\\n]");

  public HandIn {
    answers = List.copyOf(answers);
  }

  /**
   * What was chosen.
   *
   * @param item id
   * @param choice its number as shown to this participant, counted from 1; absent where left out
   */
  public record Answer(String item, OptionalInt choice) {}

  /**
   * The text that a check value stands for: a line for each field, then one for each answer. Line
   * breaks inside a field are spaces.
   */
  String canonical() {
    StringBuilder text = new StringBuilder("faultwright hand-in 1\n");
    line(text, "session", session);
    line(text, "quiz", quiz);
    line(text, "participant", Integer.toString(participant));
    line(text, "name", name);
    line(text, "handed-in", handedIn);
    answers.forEach(
        answer ->
            line(
                text,
                answer.item(),
                answer.choice().isPresent() ? "" + answer.choice().getAsInt() : "-"));
    return text.toString();
  }

  private static void line(StringBuilder text, String field, String value) {
    text.append(field).append('=').append(BREAK.matcher(value).replaceAll(" ")).append('\n');
  }
}
