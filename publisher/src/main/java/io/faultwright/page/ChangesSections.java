package io.faultwright.page;

import io.faultwright.change.ChangedRegion;
import io.faultwright.change.Comparison;
import io.faultwright.change.Edit;
import io.faultwright.change.Edit.Concern;
import io.faultwright.change.Outcome;
import io.faultwright.change.SymptomChange;
import io.faultwright.finding.RegionTest;
import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.page.ChangesSection.Change;
import io.faultwright.page.ChangesSection.ChangedComplaint;
import io.faultwright.page.ChangesSection.WorkItem;
import io.faultwright.page.Target.Kind;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What changed since an earlier revision, for technicians. */
final class ChangesSections {
  private final Desk desk;
  private final Since since;
  private final Comparison comparison;
  private final Wording before;
  private final RegionFacts facts;

  ChangesSections(Desk desk, Since since) {
    this.desk = desk;
    this.since = since;
    this.comparison = since.comparison();
    this.before = Wording.published(since.before());
    this.facts = new RegionFacts(since.shared());
  }

  ChangesSection section() {
    return new ChangesSection(
        since(),
        changed(),
        desk.links()
            .symptoms(
                comparison.symptoms().stream()
                    .filter(SymptomChange::unchanged)
                    .map(SymptomChange::id)
                    .toList()),
        comparison.symptomsOfOneSide().stream()
            .filter(edit -> edit.before().isEmpty())
            .map(edit -> desk.links().symptom(edit.id()))
            .toList(),
        comparison.symptomsOfOneSide().stream()
            .filter(edit -> edit.after().isEmpty())
            .map(edit -> before.symptom(edit.id()))
            .toList(),
        equipment(),
        new ChangedSequences(desk, since).all(),
        work());
  }

  /** The earlier revision in words. */
  String since() {
    return desk.say("revision {0}, {1}", comparison.before().number(), comparison.before().date());
  }

  private List<ChangedComplaint> changed() {
    return Alphabet.sorted(
            comparison.symptoms().stream().filter(symptom -> !symptom.unchanged()).toList(),
            symptom -> desk.words().symptom(symptom.id()))
        .stream()
        .map(this::complaint)
        .toList();
  }

  private ChangedComplaint complaint(SymptomChange symptom) {
    List<RegionTest> always = symptom.shared();
    return new ChangedComplaint(
        desk.links().symptom(symptom.id()),
        facts.of(always),
        symptom.alike().stream().map(regions -> change(regions, always)).toList(),
        symptom.more());
  }

  private Change change(List<ChangedRegion> regions, List<RegionTest> always) {
    return new Change(
        words(regions.get(0).before(), before),
        words(regions.get(0).after(), desk.words()),
        regions.stream().map(region -> where(region, always)).toList());
  }

  private List<Fact> where(ChangedRegion region, List<RegionTest> always) {
    return facts.of(
        Stream.concat(region.equipment().stream(), region.readings().stream())
            .filter(test -> !always.contains(test))
            .toList());
  }

  private static String words(Outcome outcome, Wording words) {
    return switch (outcome.kind()) {
      case ANSWERED -> answers(outcome, words);
      case SENT_ELSEWHERE -> words.say().say("First: {0}", answers(outcome, words));
      case CONTRADICTION -> words.say().say("Contradiction: {0}", answers(outcome, words));
      case UNANSWERED -> words.say().say("No answer");
      case NO_FIGURE -> words.say().say("No figure in the limits");
      case CANNOT_HAPPEN -> words.say().say("Cannot happen: take the readings again");
      case NOT_RECOGNISED -> words.say().say("Not this complaint");
      case NOT_OFFERED -> words.say().say("Not for this equipment");
    };
  }

  private static String answers(Outcome outcome, Wording words) {
    return words
        .say()
        .andEach(outcome.answers().stream().map(answer -> answer(answer, words)).toList());
  }

  private static String answer(Answer answer, Wording words) {
    if (answer instanceof Answer.OfFault fault) {
      return words.fault(fault.fault());
    }
    return answer instanceof Answer.OfReferral referral
        ? words.say().say("Work “{0}”", words.symptom(referral.symptom()))
        : words.say().say("Ask: {0}", words.escalation(answer.name()));
  }

  private List<Fact> equipment() {
    List<Fact> facts = new ArrayList<>();
    facts.addAll(equipment(desk.say("New"), comparison.added()));
    facts.addAll(equipment(desk.say("Gone"), comparison.removed()));
    return facts;
  }

  private static List<Fact> equipment(String label, List<Build> builds) {
    return builds.stream().map(build -> new Fact(label, build.toString())).toList();
  }

  private List<WorkItem> work() {
    Map<String, List<Edit>> things = new LinkedHashMap<>();
    comparison.edits(Concern.WORK).stream()
        .filter(edit -> !edit.kind().equals("sequence"))
        .forEach(
            edit ->
                things
                    .computeIfAbsent(edit.kind() + " " + edit.id(), key -> new ArrayList<>())
                    .add(edit));
    return things.values().stream().map(this::work).toList();
  }

  private WorkItem work(List<Edit> edits) {
    Edit first = edits.get(0);
    String what =
        first.whole()
            ? first.manner()
            : edits.stream().map(Edit::field).collect(Collectors.joining(", "));
    return new WorkItem(name(first), href(first).orElse(""), what);
  }

  private String name(Edit edit) {
    boolean gone = edit.after().isEmpty();
    KnowledgeBase own = gone ? since.before() : desk.kb();
    return switch (edit.kind()) {
      case "fault" -> gone ? before.fault(edit.id()) : desk.words().fault(edit.id());
      case "reading" -> gone ? before.subject(edit.id()) : desk.words().subject(edit.id());
      case "part" -> desk.say("Part: {0}", own.parts().get(edit.id()).title());
      case "symptom" -> gone ? before.symptom(edit.id()) : desk.words().symptom(edit.id());
      case "set-up" -> own.setUps().get(edit.id()).title();
      case "chart" -> own.charts().get(edit.id()).title();
      default -> desk.say("Caution: {0}", edit.id());
    };
  }

  private Optional<String> href(Edit edit) {
    Optional<Kind> kind =
        switch (edit.kind()) {
          case "fault" -> Optional.of(Kind.FAULT);
          case "reading" -> Optional.of(Kind.READING);
          case "symptom" -> Optional.of(Kind.SYMPTOM);
          case "caution" -> Optional.of(Kind.CAUTION);
          default -> Optional.empty();
        };
    return kind.filter(found -> edit.after().isPresent())
        .map(found -> desk.links().href(found, edit.id()));
  }
}
