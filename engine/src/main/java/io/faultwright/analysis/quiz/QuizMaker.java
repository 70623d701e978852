package io.faultwright.analysis.quiz;

import io.faultwright.analysis.quiz.DraftQueue.Drawn;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.QuizPlan;
import io.faultwright.model.QuizPlan.Line;
import io.faultwright.model.Session;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.Quiz;
import io.faultwright.quiz.Quiz.Variant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Makes the quiz of a session: the same items for every participant, with figures of their own
 * where the cells of the proof allow it. The same seed gives the same quiz.
 */
public final class QuizMaker {
  private static final int TRIES = 3;

  /** Beyond the number of any participant. */
  private static final int FURTHER = 1_000_000;

  private final Session session;
  private final QuizPlan plan;
  private final SortedMap<String, List<Draft>> drafts;

  /**
   * @param session with a quiz
   */
  public QuizMaker(KnowledgeBase kb, Session session) {
    this.session = session;
    this.plan = session.quiz().orElseThrow();
    this.drafts = new ItemPool(kb).of(session.symptoms(), session::teaches);
  }

  /**
   * A quiz, or what is missing for it.
   *
   * @param quiz absent where something is missing
   * @param missing what is
   */
  public record Made(Optional<Quiz> quiz, List<Shortage> missing) {
    public Made {
      missing = List.copyOf(missing);
    }
  }

  /**
   * The quiz.
   *
   * @param seed from which all choices and figures follow
   * @param items how many, spread evenly over the symptoms; absent: as the session plans
   * @param participants how many variants
   */
  public Made make(long seed, OptionalInt items, int participants) {
    Selection selection = new Selection(seed);
    plan.own().values().forEach(own -> selection.take(new OwnDraft(session.id(), own)));
    if (items.isPresent() || plan.blueprint().isEmpty()) {
      selection.spread(items.orElse(plan.items()) - selection.drawn.size());
    } else {
      plan.blueprint().forEach(selection::take);
    }
    return selection.missing.isEmpty()
        ? new Made(Optional.of(quiz(seed, selection.drawn, participants)), List.of())
        : new Made(Optional.empty(), selection.missing);
  }

  /** Every item that can be made, with the figures of the first participant; own items apart. */
  public List<Item> all(long seed) {
    Taken taken = new Taken();
    List<Item> items = new ArrayList<>();
    for (String symptom : session.symptoms()) {
      DraftQueue queue = new DraftQueue(drafts.get(symptom), seed);
      Optional<Drawn> next = queue.next(Optional.empty(), taken);
      while (next.isPresent()) {
        items.add(next.get().item());
        next = queue.next(Optional.empty(), taken);
      }
    }
    return items;
  }

  /** The items of a quiz, one after the other. */
  private final class Selection {
    private final Taken taken = new Taken();
    private final Map<String, DraftQueue> queues = new TreeMap<>();
    private final List<Drawn> drawn = new ArrayList<>();
    private final List<Shortage> missing = new ArrayList<>();
    private final long seed;

    Selection(long seed) {
      this.seed = seed;
      drafts.forEach((symptom, all) -> queues.put(symptom, new DraftQueue(all, seed)));
    }

    void take(Draft own) {
      own.item(seed, 1).filter(taken::add).ifPresent(item -> drawn.add(new Drawn(own, item)));
    }

    void take(Line line) {
      for (int count = 0; count < line.items(); count++) {
        Optional<Drawn> next = queues.get(line.symptom()).next(line.difficulty(), taken);
        if (next.isEmpty()) {
          missing.add(
              new Shortage(line.place(), line.symptom(), line.difficulty(), line.items(), count));
          return;
        }
        drawn.add(next.get());
      }
    }

    /** One from each symptom in turn. */
    void spread(int wanted) {
      int count = 0;
      boolean more = true;
      while (more && count < wanted) {
        more = false;
        for (String symptom : session.symptoms()) {
          Optional<Drawn> next =
              count < wanted ? queues.get(symptom).next(Optional.empty(), taken) : Optional.empty();
          next.ifPresent(drawn::add);
          more |= next.isPresent();
          count += next.isPresent() ? 1 : 0;
        }
      }
      if (count < wanted) {
        missing.add(new Shortage(plan.place(), "", Optional.empty(), wanted, count));
      }
    }
  }

  private Quiz quiz(long seed, List<Drawn> drawn, int participants) {
    List<Drawn> order = Dice.of("order", seed, session.id()).shuffled(drawn);
    List<Variant> variants = new ArrayList<>();
    List<Item> before = List.of();
    for (int participant = 1; participant <= participants; participant++) {
      before = participant == 1 ? first(order) : items(seed, order, participant, before);
      variants.add(new Variant(participant, before));
    }
    return new Quiz(session.id(), seed, variants);
  }

  private static List<Item> first(List<Drawn> drawn) {
    return drawn.stream().map(Drawn::item).toList();
  }

  private static List<Item> items(
      long seed, List<Drawn> drawn, int participant, List<Item> before) {
    Taken taken = new Taken();
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < drawn.size(); i++) {
      Draft draft = drawn.get(i).draft();
      items.add(
          other(draft, seed, participant, before.get(i))
              .filter(taken::add)
              .orElse(drawn.get(i).item()));
    }
    return items;
  }

  /** With other figures than a neighbour's, if some are found. */
  private static Optional<Item> other(Draft draft, long seed, int participant, Item neighbour) {
    Optional<Item> item = Optional.empty();
    for (int tries = 0; tries < TRIES; tries++) {
      item = draft.item(seed, participant + tries * FURTHER);
      if (item.filter(one -> !one.stem().equals(neighbour.stem())).isPresent()) {
        return item;
      }
    }
    return item;
  }
}
