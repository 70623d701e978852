package io.faultwright.plain;

import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Looks at the steps of remedies, verifications and readings of a handbook in English.
 *
 * <p>Only the length of a sentence is counted. Which word is a verb is guessed: one of a short
 * list, or a word with which some step of the handbook begins. So all but the length is a hint.
 */
public final class PlainCheck {
  /** Words of a procedural sentence, ASD-STE100. */
  public static final int MOST_WORDS = 20;

  private static final int BEGINNING = 4;

  private static final Set<String> NO_COMMAND =
      Set.of(
          "the", "a", "an", "it", "its", "this", "that", "these", "those", "there", "you", "your",
          "we", "they", "all", "some", "every", "each", "no", "any", "he", "she", "one", "both");

  private static final Pattern CONDITION =
      Pattern.compile(
          "(?i)^(if|when|where|until|before|after|while|with|without|on|in|at|for|to|once|as|from"
              + "|unless|only)\\b.*");

  private static final Pattern WARNING =
      Pattern.compile(
          "(?i)^(danger|warning|caution|notice|beware|take care|be careful|careful|never)\\b.*");

  /** A duty told in the passive, where a command would do. */
  private static final Pattern DUTY =
      Pattern.compile("(?i)\\b(must|should|shall|has to|have to) be \\p{L}+(ed|en)\\b");

  private static final Pattern JOINT =
      Pattern.compile("(?i)(?:,|;)?\\s(?:and then|and|then)\\s+|;\\s+");

  private static final Set<String> VERBS =
      Set.of(
          "check",
          "close",
          "open",
          "clean",
          "remove",
          "replace",
          "fit",
          "switch",
          "turn",
          "wait",
          "measure",
          "read",
          "let",
          "set",
          "put",
          "take",
          "tighten",
          "run",
          "start",
          "stop",
          "connect",
          "disconnect",
          "pull",
          "push",
          "press",
          "hold",
          "look",
          "make",
          "isolate",
          "drain",
          "fill",
          "wipe",
          "install",
          "adjust",
          "test",
          "listen",
          "note",
          "compare");

  private final KnowledgeBase kb;
  private final Set<String> verbs = new TreeSet<>(VERBS);

  private record Step(String of, Place place, String text) {}

  public PlainCheck(KnowledgeBase kb) {
    this.kb = kb;
    steps().stream()
        .flatMap(step -> Sentences.of(step.text()).stream())
        .map(PlainCheck::first)
        .filter(
            word ->
                !word.isEmpty() && !NO_COMMAND.contains(word) && !CONDITION.matcher(word).matches())
        .forEach(verbs::add);
  }

  /** Whether the texts are in the language that the rules are made for. */
  public boolean applies() {
    return kb.handbook().language().toLowerCase(Locale.ROOT).split("-")[0].equals("en");
  }

  /** How many steps are looked at. */
  public int count() {
    return steps().size();
  }

  /** What speaks against steps, by rule and place; nothing where the rules do not apply. */
  public List<Hint> hints() {
    List<Hint> hints = new ArrayList<>();
    if (applies()) {
      steps().forEach(step -> look(step, hints));
    }
    return hints.stream()
        .sorted(
            Comparator.comparing(Hint::rule).thenComparing(Hint::place).thenComparing(Hint::text))
        .toList();
  }

  private List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    for (Fault fault : kb.faults().values()) {
      fault.remedy().forEach(one -> steps.add(step(fault, one)));
      fault.verify().forEach(one -> steps.add(step(fault, one)));
    }
    for (Reading reading : kb.readings().values()) {
      reading
          .how()
          .forEach(one -> steps.add(new Step("reading " + reading.id(), reading.place(), one)));
    }
    return steps;
  }

  private static Step step(Fault fault, Fault.Step one) {
    return new Step("fault " + fault.id(), one.place(), one.text());
  }

  private void look(Step step, List<Hint> hints) {
    List<String> sentences = Sentences.of(step.text());
    for (String sentence : sentences) {
      String where = sentences.size() > 1 ? " in `" + beginning(sentence) + "`" : "";
      tooLong(sentence).ifPresent(why -> hints.add(hint(PlainRule.LENGTH, step, why + where)));
      several(sentence)
          .ifPresent(why -> hints.add(hint(PlainRule.ONE_INSTRUCTION, step, why + where)));
      noCommand(sentence)
          .ifPresent(why -> hints.add(hint(PlainRule.IMPERATIVE, step, why + where)));
    }
    sentences.stream()
        .skip(1)
        .filter(sentence -> WARNING.matcher(sentence).matches())
        .findFirst()
        .ifPresent(
            late ->
                hints.add(
                    hint(
                        PlainRule.CAUTION_FIRST,
                        step,
                        "`" + beginning(late) + "` stands behind what it warns of")));
  }

  private static Hint hint(PlainRule rule, Step step, String reason) {
    return new Hint(rule, step.of(), step.place(), step.text(), reason);
  }

  /** So much of a sentence that it is found in its step. */
  private static String beginning(String sentence) {
    List<String> words = Sentences.words(sentence);
    return words.size() <= BEGINNING
        ? sentence
        : String.join(" ", words.subList(0, BEGINNING)) + " …";
  }

  private static Optional<String> tooLong(String sentence) {
    int words = Sentences.words(sentence).size();
    return words > MOST_WORDS ? Optional.of(words + " words") : Optional.empty();
  }

  /** A second verb behind {@code and}, {@code then} or a semicolon. */
  private Optional<String> several(String sentence) {
    String[] parts = JOINT.split(command(sentence));
    for (int part = 1; part < parts.length; part++) {
      String word = first(parts[part]);
      if (verbs.contains(word) && isCommand(parts[part])) {
        return Optional.of("`" + word + "` begins a second one");
      }
    }
    return Optional.empty();
  }

  /** A verb is followed by what it is done to; {@code clean and dry} is not a second command. */
  private static boolean isCommand(String part) {
    return Sentences.words(part).size() > 1;
  }

  private static Optional<String> noCommand(String sentence) {
    String word = first(command(sentence));
    Matcher duty = DUTY.matcher(command(sentence));
    if (duty.find()) {
      return Optional.of("it says `" + duty.group().toLowerCase(Locale.ROOT) + "`");
    }
    return NO_COMMAND.contains(word)
        ? Optional.of("it begins with `" + word + "`")
        : Optional.empty();
  }

  /** A sentence without the condition that it begins with, up to its first comma. */
  private static String command(String sentence) {
    int comma = sentence.indexOf(',');
    return CONDITION.matcher(sentence).matches() && comma > 0
        ? sentence.substring(comma + 1).strip()
        : sentence;
  }

  private static String first(String text) {
    return Sentences.words(text).stream()
        .findFirst()
        .map(word -> word.replaceAll("[^\\p{L}-]", "").toLowerCase(Locale.ROOT))
        .orElse("");
  }
}
