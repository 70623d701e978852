package io.faultwright.release;

import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Caution;
import io.faultwright.model.Chart;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Condition;
import io.faultwright.model.Equipment;
import io.faultwright.model.Fault;
import io.faultwright.model.Guide;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Model;
import io.faultwright.model.Never;
import io.faultwright.model.Reading;
import io.faultwright.model.Rule;
import io.faultwright.model.Sequence;
import io.faultwright.model.Signed;
import io.faultwright.model.Symptom;
import io.faultwright.translation.GuidePassages;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Collects a thing and what it depends on, part by part. */
final class Parts {
  private final KnowledgeBase kb;
  private final Canon canon;
  private final Map<String, String> known;
  private final SortedMap<String, String> texts = new TreeMap<>();

  /**
   * No parts yet.
   *
   * @param known texts of parts that were collected for others
   */
  Parts(KnowledgeBase kb, Canon canon, Map<String, String> known) {
    this.kb = kb;
    this.canon = canon;
    this.known = known;
  }

  SortedMap<String, String> texts() {
    return texts;
  }

  /** A symptom with all its rules, and the machines it is offered for. */
  void symptom(String id) {
    Symptom symptom = kb.symptoms().get(id);
    add("symptom " + id, symptom);
    List.of(symptom.applies(), symptom.recognise()).forEach(this::condition);
    symptom.first().forEach(first -> condition(first.when()));
    symptom.rules().keySet().forEach(rule -> rule(Signed.rule(id, rule)));
    symptom.nevers().values().forEach(never -> never(id + "/" + never.id(), never));
    kb.nevers().values().stream().filter(this::restricts).forEach(one -> never(one.id(), one));
    models(build -> build.satisfies(symptom.applies()));
    caution(Caution.FLAMMABLE_REFRIGERANT);
  }

  /** Whether a statement for every symptom speaks of something that is in here already. */
  private boolean restricts(Never never) {
    return never.when().tests().anyMatch(test -> texts.containsKey("reading " + test.subject()));
  }

  private void never(String id, Never never) {
    add("never " + id, never);
    condition(never.when());
  }

  /** A rule with what it asks and what follows. */
  void rule(Signed signed) {
    Rule rule = signed.rule(kb).orElseThrow();
    add(signed.toString(), rule);
    condition(rule.when());
    if (rule.conclusion() instanceof Conclusion.Exclude exclude) {
      exclude.faults().forEach(this::fault);
    }
    answers(rule.conclusion().answers());
    Symptom symptom = kb.symptoms().get(signed.symptom(kb).orElseThrow());
    refrigerants(build -> build.satisfies(symptom.applies()));
  }

  private void answers(Collection<Answer> answers) {
    answers.stream()
        .filter(Answer.OfFault.class::isInstance)
        .map(Answer::name)
        .forEach(this::fault);
  }

  /** A table with the machines it holds for. */
  void limitsTable(String id) {
    limits(id);
    reading(id);
    models(
        build ->
            kb.limits().get(id).rows().stream().anyMatch(row -> build.satisfies(row.builds())));
  }

  private void limits(String id) {
    LimitsTable table = kb.limits().get(id);
    if (add("limits " + id, table)) {
      table.drivers().forEach(this::reading);
      table.rows().forEach(row -> condition(row.builds()));
    }
  }

  void chart(String id) {
    Chart chart = kb.charts().get(id);
    add("chart " + id, chart);
    condition(chart.applies());
    for (Chart.Step step : chart.steps().values()) {
      subject(step.check());
      for (Chart.Branch branch : step.branches()) {
        condition(branch.when());
        if (branch.target() instanceof Chart.End end) {
          answers(end.answers());
        }
      }
    }
  }

  /** A sequence of operation, and the readings that tell how it is set and what came of it. */
  void sequence(String id) {
    Sequence sequence = kb.sequences().get(id);
    add("sequence " + id, sequence);
    sequence.conditions().forEach(this::condition);
    sequence.times().forEach(time -> time.reading().ifPresent(this::reading));
    sequence.outcomes().forEach(outcome -> reading(outcome.reading()));
  }

  /** A page with the pictures whose names stand in it. */
  void guide(String id, SortedMap<String, byte[]> pictures) {
    Guide guide = kb.guides().get(id);
    text("guide " + id, () -> passages(guide));
    pictures.forEach(
        (path, content) -> {
          if (guide.markdown().contains(path.substring(path.lastIndexOf('/') + 1))) {
            text("picture " + path, () -> Hash.of(content));
          }
        });
  }

  private String passages(Guide guide) {
    return GuidePassages.of(guide).stream()
        .map(
            passage ->
                passage.code()
                    ? canon.verbatim(passage.text())
                    : canon.text(passage.text(), passage.keys()))
        .collect(Collectors.joining(", ", "[", "]"));
  }

  private void condition(Condition condition) {
    condition.tests().forEach(this::test);
  }

  private void test(Condition.Test test) {
    subject(test.subject());
    if (test.pattern() instanceof Condition.AgainstLimits
        && kb.limits().containsKey(test.subject())) {
      limits(test.subject());
    }
    if (test.pattern() instanceof Condition.OneOf oneOf) {
      oneOf.values().forEach(value -> named(test.subject(), value));
    }
  }

  /** The titles of families and models. */
  private void named(String subject, String value) {
    if (subject.equals(Equipment.FAMILY)) {
      find("family " + value, kb.equipment().families(), value);
    } else if (subject.equals(Equipment.MODEL)) {
      find("model " + value, kb.equipment().models(), value);
    }
  }

  private void subject(String id) {
    if (kb.readings().containsKey(id)) {
      reading(id);
    } else {
      find("option " + id, kb.equipment().options(), id);
    }
  }

  private void reading(String id) {
    Reading reading = kb.readings().get(id);
    if (add("reading " + id, reading)) {
      reading.cautions().forEach(this::caution);
      reading.setUp().ifPresent(setUp -> find("set-up " + setUp, kb.setUps(), setUp));
      reading.operands().forEach(this::reading);
      condition(reading.applies());
    }
  }

  private void fault(String id) {
    Fault fault = kb.faults().get(id);
    if (add("fault " + id, fault)) {
      fault.cautions().forEach(this::caution);
      fault.remedy().forEach(step -> step.cautions().forEach(this::caution));
      fault.verify().forEach(step -> step.cautions().forEach(this::caution));
      fault.parts().forEach(part -> find("part " + part, kb.parts(), part));
      fault.nameplate().forEach(this::nameplate);
      condition(fault.applies());
    }
  }

  private void caution(String id) {
    find("caution " + id, kb.cautions(), id);
  }

  /** What the nameplates say under a label. */
  private void nameplate(String label) {
    SortedMap<String, String> figures = new TreeMap<>();
    kb.equipment()
        .models()
        .forEach((id, model) -> model.nameplate(label).ifPresent(data -> figures.put(id, data)));
    add("nameplate " + label, figures);
  }

  private void models(Predicate<Build> wanted) {
    builds(wanted).forEach(model -> add("model " + model.id(), model));
    refrigerants(wanted);
  }

  private List<Model> builds(Predicate<Build> wanted) {
    return kb.equipment().builds().stream().filter(wanted).map(Build::model).distinct().toList();
  }

  /** The saturation lines of those machines, where a reading in here is read off them. */
  private void refrigerants(Predicate<Build> wanted) {
    if (texts.keySet().stream().anyMatch(this::needsRefrigerant)) {
      builds(wanted).stream()
          .flatMap(model -> model.refrigerant().stream())
          .forEach(id -> find("refrigerant " + id, kb.equipment().refrigerants(), id));
    }
  }

  private boolean needsRefrigerant(String part) {
    return part.startsWith("reading ")
        && Optional.ofNullable(kb.readings().get(part.substring("reading ".length())))
            .flatMap(Reading::derived)
            .filter(derived -> derived.needsRefrigerant())
            .isPresent();
  }

  private void find(String name, SortedMap<String, ?> things, String id) {
    if (things.containsKey(id)) {
      add(name, things.get(id));
    }
  }

  /** Adds a part; whether it was not there yet. */
  private boolean add(String name, Object thing) {
    return text(name, () -> canon.of(thing));
  }

  private boolean text(String name, Supplier<String> text) {
    boolean fresh = !texts.containsKey(name);
    if (fresh) {
      texts.put(name, known.computeIfAbsent(name, one -> text.get()));
    }
    return fresh;
  }
}
