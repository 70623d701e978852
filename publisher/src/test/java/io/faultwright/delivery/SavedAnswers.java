package io.faultwright.delivery;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.faultwright.grading.CheckValue;
import io.faultwright.grading.HandIn;
import io.faultwright.grading.HandIn.Answer;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** What a participant's page saved, as the engine reads it. */
record SavedAnswers(HandIn handIn) {
  /** Holds the check value in the file to that of the engine. */
  static SavedAnswers checked(String text, HandOut handOut) throws IOException {
    JsonNode saved = new ObjectMapper().readTree(text);
    HandIn handIn =
        new HandIn(
            saved.get("session").textValue(),
            saved.get("quiz").textValue(),
            saved.get("participant").intValue(),
            saved.get("name").textValue(),
            saved.get("handedIn").textValue(),
            answers(saved));
    assertEquals(CheckValue.of(handIn, handOut.key()), saved.get("check").textValue());
    assertEquals("quiz answers", saved.get("what").textValue());
    assertEquals(handOut.quiz(), handIn.quiz());
    assertEquals(
        handOut.questions().stream().map(Question::id).toList(),
        handIn.answers().stream().map(Answer::item).toList());
    return new SavedAnswers(handIn);
  }

  private static List<Answer> answers(JsonNode saved) {
    List<Answer> answers = new ArrayList<>();
    for (JsonNode answer : saved.get("answers")) {
      JsonNode choice = answer.get("choice");
      answers.add(
          new Answer(
              answer.get("item").textValue(),
              choice.isNull() ? OptionalInt.empty() : OptionalInt.of(choice.intValue())));
    }
    return answers;
  }

  String name() {
    return handIn.name();
  }

  String handedIn() {
    return handIn.handedIn();
  }

  /** The number that was chosen in each item; 0 where it was left out. */
  List<Integer> choices() {
    return handIn.answers().stream().map(answer -> answer.choice().orElse(0)).toList();
  }
}
