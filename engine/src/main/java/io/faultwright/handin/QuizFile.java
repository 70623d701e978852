package io.faultwright.handin;

import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.handin.IssuedQuiz.Item;
import io.faultwright.handin.IssuedQuiz.Option;
import io.faultwright.handin.IssuedQuiz.Variant;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.JsonReader;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads {@code quiz.json}. */
public final class QuizFile {
  private static final String HELP = "take the `quiz.json` that `faultwright quiz` wrote";

  private final Problems problems = new Problems();

  private QuizFile() {}

  /**
   * The quiz in a file.
   *
   * @throws Unreadable with everything that keeps it from being one
   */
  public static IssuedQuiz read(SourceFile file) {
    return new QuizFile().quiz(file);
  }

  private IssuedQuiz quiz(SourceFile file) {
    IssuedQuiz quiz =
        JsonReader.read(file, problems).root().map(this::quiz).orElseThrow(this::unreadable);
    if (!problems.isEmpty()) {
      throw unreadable();
    }
    return quiz;
  }

  private Unreadable unreadable() {
    return new Unreadable(problems.sorted());
  }

  private IssuedQuiz quiz(Node root) {
    Members file = new Members(root, "the file of a quiz", problems);
    SortedMap<String, String> symptoms = new TreeMap<>();
    file.map("symptoms").forEach(entry -> symptoms.put(entry.name(), title(entry)));
    return new IssuedQuiz(
        file.text("quiz").orElse(""),
        file.text("registerKey").orElse(""),
        Course.read(file),
        file.number("passMark").orElse(0),
        file.day("handInBy"),
        symptoms,
        variants(file, symptoms));
  }

  private static String title(Entry symptom) {
    return symptom.value() instanceof Scalar scalar ? scalar.text() : symptom.name();
  }

  private List<Variant> variants(Members file, SortedMap<String, String> symptoms) {
    List<Node> nodes = file.list("participants");
    List<Node> keys = file.list("keys");
    if (nodes.size() != keys.size() || nodes.isEmpty()) {
      String found = nodes.size() + " participants and " + keys.size() + " keys";
      problems.add(file.place("keys"), "expected a key for each participant, found " + found, HELP);
      return List.of();
    }
    List<Variant> variants = new ArrayList<>();
    for (int i = 0; i < nodes.size(); i++) {
      Members one = new Members(nodes.get(i), "a participant", problems);
      List<Item> items = items(one, symptoms);
      variants.add(new Variant(one.number("number").orElse(0), text(keys.get(i)), items));
      requireSameItems(one.owner(), variants.get(0), variants.get(i));
    }
    return variants;
  }

  private String text(Node key) {
    if (key instanceof Scalar scalar && scalar.quoted()) {
      return scalar.text();
    }
    problems.add(key.place(), "a key is a text, found " + Members.kind(key), HELP);
    return "";
  }

  private void requireSameItems(Place place, Variant first, Variant other) {
    if (!ids(first).equals(ids(other)) || ids(first).isEmpty()) {
      problems.add(place, "participants have different items, or none", HELP);
    }
  }

  private static List<String> ids(Variant variant) {
    return variant.items().stream().map(Item::id).toList();
  }

  private List<Item> items(Members participant, SortedMap<String, String> symptoms) {
    return participant.list("items").stream().map(node -> item(node, symptoms)).toList();
  }

  private Item item(Node node, SortedMap<String, String> symptoms) {
    Members item = new Members(node, "an item", problems);
    List<Option> options = item.list("choices").stream().map(this::option).toList();
    OptionalInt right = item.number("right");
    if (right.isPresent() && (right.getAsInt() < 1 || right.getAsInt() > options.size())) {
      problems.add(
          item.place("right"),
          "`right` is " + right.getAsInt() + ", and there are " + options.size() + " choices",
          HELP);
    }
    String symptom = item.text("symptom").orElse("");
    if (!symptoms.containsKey(symptom)) {
      problems.add(item.place("symptom"), "symptom `" + symptom + "` has no title", HELP);
    }
    return new Item(
        item.text("id").orElse(""),
        symptom,
        item.text("question").orElse(""),
        options,
        right.orElse(1) - 1,
        item.text("page").orElse(""));
  }

  private Option option(Node node) {
    Members option = new Members(node, "a choice", problems);
    return new Option(option.text("text").orElse(""), option.optional("near").orElse(""));
  }
}
