package io.faultwright.page;

import io.faultwright.change.ChangedRegion;
import io.faultwright.change.Comparison;
import io.faultwright.change.Edit;
import io.faultwright.change.SymptomChange;
import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Caution;
import io.faultwright.model.Condition;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which equipment and which cautions a change is about. */
final class Concerned {
  private final Desk desk;
  private final KnowledgeBase kb;
  private final KnowledgeBase before;
  private final Comparison comparison;

  Concerned(Desk desk, Since since) {
    this.desk = desk;
    this.kb = desk.kb();
    this.before = since.before();
    this.comparison = since.comparison();
  }

  /**
   * Where an outcome changed, a complaint came or went or a sequence of operation does otherwise;
   * else where the work changed.
   */
  SortedSet<Build> builds() {
    SortedSet<Build> builds = new TreeSet<>();
    comparison.symptoms().forEach(change -> builds.addAll(change.builds()));
    for (Edit edit : comparison.symptomsOfOneSide()) {
      KnowledgeBase having = edit.after().isPresent() ? kb : before;
      builds.addAll(satisfying(having.symptoms().get(edit.id()).applies()));
    }
    SortedSet<Build> published = new TreeSet<>(kb.equipment().builds());
    comparison.sequences().stream()
        .flatMap(change -> change.builds().stream())
        .filter(published::contains)
        .forEach(builds::add);
    if (builds.isEmpty()) {
      worked().forEach(applies -> builds.addAll(satisfying(applies)));
    }
    return builds;
  }

  private List<Build> satisfying(Condition applies) {
    return kb.equipment().builds().stream().filter(build -> build.satisfies(applies)).toList();
  }

  /** What the faults and readings apply to in which the work changed. */
  private Stream<Condition> worked() {
    Set<Fault> faults = edited("fault").map(kb.faults()::get).collect(Collectors.toSet());
    Set<Reading> readings = edited("reading").map(kb.readings()::get).collect(Collectors.toSet());
    edited("caution").forEach(id -> desk.uses().faultsWithCaution(id).forEach(faults::add));
    edited("caution").forEach(id -> desk.uses().readingsWithCaution(id).forEach(readings::add));
    edited("part")
        .forEach(
            id ->
                kb.faults().values().stream()
                    .filter(fault -> fault.parts().contains(id))
                    .forEach(faults::add));
    return Stream.concat(
        faults.stream().map(Fault::applies), readings.stream().map(Reading::applies));
  }

  /** Ids of the things of a kind that are still there and in which the work changed. */
  private Stream<String> edited(String kind) {
    return comparison.edits(Edit.Concern.WORK).stream()
        .filter(edit -> edit.kind().equals(kind) && has(kind, edit.id()))
        .map(Edit::id)
        .distinct();
  }

  private boolean has(String kind, String id) {
    return switch (kind) {
      case "fault" -> kb.faults().containsKey(id);
      case "reading" -> kb.readings().containsKey(id);
      case "caution" -> kb.cautions().containsKey(id);
      default -> kb.parts().containsKey(id);
    };
  }

  /**
   * The cautions of every reading that a change names, and of every repair it now leads to. That a
   * refrigerant can burn is not said where none of the equipment has such a one.
   */
  SortedSet<String> cautions() {
    SortedSet<String> cautions = new TreeSet<>();
    for (SymptomChange change : comparison.symptoms()) {
      change.regions().forEach(region -> add(region, cautions));
    }
    edited("caution").forEach(cautions::add);
    edited("fault").forEach(id -> cautions.addAll(Uses.cautionsOf(kb.faults().get(id))));
    edited("reading").forEach(id -> add(id, cautions));
    if (builds().stream().noneMatch(kb.equipment()::mayBurn)) {
      cautions.remove(Caution.FLAMMABLE_REFRIGERANT);
    }
    return cautions;
  }

  private void add(ChangedRegion region, SortedSet<String> cautions) {
    region.readings().forEach(test -> add(test.reading(), cautions));
    for (Answer answer : region.after().answers()) {
      if (answer instanceof Answer.OfFault fault && kb.faults().containsKey(fault.fault())) {
        cautions.addAll(Uses.cautionsOf(kb.faults().get(fault.fault())));
      }
    }
  }

  /** What is computed is read where its operands are. */
  private void add(String reading, SortedSet<String> cautions) {
    if (kb.readings().containsKey(reading)) {
      cautions.addAll(kb.readings().get(reading).cautions());
      kb.readings().get(reading).operands().forEach(operand -> add(operand, cautions));
    }
  }
}
