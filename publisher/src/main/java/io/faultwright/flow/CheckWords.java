package io.faultwright.flow;

import io.faultwright.analysis.order.Question;
import io.faultwright.model.Build;
import io.faultwright.model.Caution;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Nameplate;
import io.faultwright.model.Reading;
import io.faultwright.model.Sorted;
import io.faultwright.wording.Wording;
import io.faultwright.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;

/** Says what is asked at a check, how it is done and what to beware of. */
final class CheckWords {
  /** More steps, or longer ones, are left to the handbook. */
  private static final int MOST_STEPS = 4;

  private static final int MOST_CHARACTERS = 240;

  private final KnowledgeBase knowledge;
  private final Wording wording;
  private final Words say;
  private final List<Build> builds;
  private final LimitsWords limits;

  /**
   * @param builds the equipment the chart is for
   */
  CheckWords(KnowledgeBase knowledge, Wording wording, List<Build> builds) {
    this.knowledge = knowledge;
    this.wording = wording;
    this.say = wording.say();
    this.builds = List.copyOf(builds);
    this.limits = new LimitsWords(wording, builds);
  }

  Node.Check check(String id, Question question) {
    return check(id, question, Sorted.set(Set.of()));
  }

  /**
   * A check.
   *
   * @param known what was read on every way to it, and is not read again
   */
  Node.Check check(String id, Question question, SortedSet<String> known) {
    return Optional.ofNullable(knowledge.readings().get(question.subject()))
        .map(reading -> onReading(id, question, reading, known))
        .orElseGet(() -> onEquipment(id, question.subject()));
  }

  private Node.Check onEquipment(String id, String attribute) {
    String question =
        switch (attribute) {
          case Equipment.SOFTWARE -> say.say("Which software version?");
          default -> say.say("Which {0}?", say.inLine(wording.subject(attribute)));
        };
    List<String> steps =
        attribute.equals(Equipment.SOFTWARE)
            ? List.of()
            : knowledge.equipment().nameplate().map(Nameplate::where).stream()
                .map(where -> say.say("Nameplate: {0}", say.inLine(where)))
                .toList();
    return new Node.Check(id, List.of(), steps, question);
  }

  private Node.Check onReading(
      String id, Question question, Reading reading, SortedSet<String> known) {
    if (question.takingOnly()) {
      String asked = say.say("Can this be taken: {0}?", say.inLine(reading.title()));
      return new Node.Check(id, warnings(reading), List.of(), asked);
    }
    List<Reading> toTake = new ArrayList<>(toTake(reading, known));
    List<Reading> besides = question.limits() ? drivers(reading, known) : List.of();
    List<String> steps = new ArrayList<>();
    Optional<String> computation = wording.computation(reading.id());
    computation.ifPresent(words -> steps.add(say.say("Work out: {0}.", words)));
    toTake.forEach(one -> steps.addAll(steps(one)));
    besides.forEach(one -> steps.add(say.say("Read too: {0}.", say.inLine(one.title()))));
    if (question.limits()) {
      steps.add(limits(knowledge.limits().get(reading.id())));
    }
    String asked =
        computation.isPresent()
            ? say.say("How much is this: {0}?", say.inLine(reading.title()))
            : reading.ask();
    toTake.addAll(besides);
    return new Node.Check(id, warnings(toTake), steps, asked);
  }

  /** The reading itself, unless it or all that it is computed from is known. */
  private List<Reading> toTake(Reading reading, SortedSet<String> known) {
    boolean computable =
        reading.derived().isPresent()
            && reading.operands().stream().allMatch(id -> known.contains(id) || isAssumed(id));
    return known.contains(reading.id()) || computable ? List.of() : List.of(reading);
  }

  private boolean isAssumed(String reading) {
    return knowledge.readings().get(reading).assumed().isPresent();
  }

  /** What the limits of a reading follow and has to be read for them. */
  private List<Reading> drivers(Reading reading, SortedSet<String> known) {
    return knowledge.limits().get(reading.id()).drivers().stream()
        .filter(id -> !known.contains(id) && !isAssumed(id))
        .map(knowledge.readings()::get)
        .toList();
  }

  List<Warning> warnings(Reading reading) {
    return warnings(List.of(reading));
  }

  private List<Warning> warnings(List<Reading> readings) {
    return readings.stream()
        .flatMap(reading -> reading.cautions().stream())
        .distinct()
        .map(knowledge.cautions()::get)
        .filter(this::concerns)
        .sorted(Comparator.comparing(Caution::signal).thenComparing(Caution::id))
        .map(CheckWords::warning)
        .toList();
  }

  /** That a refrigerant can burn is not said where no machine has such a one. */
  private boolean concerns(Caution caution) {
    return !caution.id().equals(Caution.FLAMMABLE_REFRIGERANT)
        || builds.stream().anyMatch(knowledge.equipment()::mayBurn);
  }

  private static Warning warning(Caution caution) {
    boolean alert = caution.signal() != Caution.Signal.NOTICE;
    return new Warning(caution.signal().name(), alert, caution.text());
  }

  private List<String> steps(Reading reading) {
    int characters = reading.how().stream().mapToInt(String::length).sum();
    if (reading.how().size() > MOST_STEPS || characters > MOST_CHARACTERS) {
      return List.of(say.say("Steps: see ‘{0}’ in the handbook.", reading.title()));
    }
    return reading.how().isEmpty() ? reading.where().stream().toList() : reading.how();
  }

  private String limits(LimitsTable table) {
    return limits
        .figures(table)
        .map(figures -> say.say("Compare with the limits: {0}.", figures))
        .orElseGet(
            () ->
                say.say(
                    "Compare with the table ‘{0}’ in the handbook.",
                    wording.subject(table.reading())));
  }
}
