package io.faultwright.analysis.quiz;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.QuizPlan.Footing;
import io.faultwright.model.Signed;
import io.faultwright.quiz.Choice;
import io.faultwright.quiz.Choice.Content;
import io.faultwright.quiz.NearMiss;
import io.faultwright.release.Hash;
import io.faultwright.release.Meanings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** What items of all kinds are put together from. */
final class Assembly {
  private static final int ID_DIGITS = 10;
  private static final int WRONG = 3;

  private final Meanings meanings;
  private final Map<Signed, String> known = new ConcurrentHashMap<>();

  Assembly(KnowledgeBase kb) {
    this.meanings = new Meanings(kb, new TreeMap<>());
  }

  static String digits(String key) {
    return Hash.of(key).substring(0, ID_DIGITS);
  }

  /** The first digits of what something means. */
  String meaning(Signed signed) {
    return known.computeIfAbsent(
        signed, one -> meanings.of(one).hash().substring(0, Footing.DIGITS));
  }

  /**
   * The wrong contents that are shown: what would be right on another machine first, then other
   * near misses, then the rest.
   */
  static List<Content> wrong(Map<Content, NearMiss> near, List<Content> others, Dice dice) {
    List<Content> wrong = new ArrayList<>();
    dice.shuffled(List.copyOf(near.keySet())).stream()
        .sorted(Comparator.comparing(content -> !isOfMachine(near.get(content))))
        .forEach(wrong::add);
    dice.shuffled(others).stream().filter(one -> !wrong.contains(one)).forEach(wrong::add);
    return List.copyOf(wrong.subList(0, Math.min(WRONG, wrong.size())));
  }

  private static boolean isOfMachine(NearMiss near) {
    return near.why() == NearMiss.Why.OTHER_SOFTWARE || near.why() == NearMiss.Why.OTHER_MODEL;
  }

  /** The right choice among the wrong ones, in an order that follows from the dice. */
  static List<Choice> choices(
      Content right, List<Content> wrong, Map<Content, NearMiss> near, Dice dice) {
    List<Choice> choices = new ArrayList<>();
    choices.add(Choice.right(right));
    for (Content one : wrong) {
      choices.add(new Choice(one, false, Optional.ofNullable(near.get(one))));
    }
    return dice.shuffled(choices);
  }
}
