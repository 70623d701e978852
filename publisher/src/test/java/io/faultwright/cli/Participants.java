package io.faultwright.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.faultwright.grading.CheckValue;
import io.faultwright.grading.HandIn;
import io.faultwright.grading.HandIn.Answer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;

/** Participants of a quiz who know most of it, and hand in as their pages would. */
final class Participants {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final JsonNode quiz;

  Participants(Path quizFile) throws IOException {
    this.quiz = JSON.readTree(quizFile.toFile());
  }

  int count() {
    return quiz.get("participants").size();
  }

  JsonNode quiz() {
    return quiz;
  }

  /** Who hands in: how likely each answer is right, always the same for the same number. */
  void handIn(Path folder, int number, String name, String at, double known) throws IOException {
    Files.createDirectories(folder);
    String file = "%s-%03d.json".formatted(quiz.get("session").asText(), number);
    Files.writeString(folder.resolve(file), result(number, name, at, known));
  }

  String result(int number, String name, String at, double known) throws IOException {
    List<Answer> answers = answers(number, known);
    HandIn handIn =
        new HandIn(
            quiz.get("session").asText(), quiz.get("quiz").asText(), number, name, at, answers);
    ObjectNode file = JSON.createObjectNode();
    file.put("what", "quiz answers");
    file.put("session", handIn.session());
    file.put("quiz", handIn.quiz());
    file.put("participant", number);
    file.put("name", name);
    file.put("handedIn", at);
    ArrayNode list = file.putArray("answers");
    for (Answer answer : answers) {
      ObjectNode one = list.addObject().put("item", answer.item());
      if (answer.choice().isPresent()) {
        one.put("choice", answer.choice().getAsInt());
      } else {
        one.putNull("choice");
      }
    }
    file.put("check", CheckValue.of(handIn, quiz.get("keys").get(number - 1).asText()));
    return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(file);
  }

  private List<Answer> answers(int number, double known) {
    Random dice = new Random(number);
    List<Answer> answers = new ArrayList<>();
    for (JsonNode item : quiz.get("participants").get(number - 1).get("items")) {
      int right = item.get("right").asInt();
      int other =
          1 + (right + dice.nextInt(item.get("choices").size() - 1)) % item.get("choices").size();
      boolean knows = dice.nextDouble() < known;
      OptionalInt chosen =
          knows
              ? OptionalInt.of(right)
              : dice.nextInt(9) == 0 ? OptionalInt.empty() : OptionalInt.of(other);
      answers.add(new Answer(item.get("id").asText(), chosen));
    }
    return answers;
  }
}
