package io.faultwright.flow;

import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.wording.Wording;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Writes the pocket card of a symptom: every rule that fires in some possible situation of its
 * equipment, in the words of its conditions.
 */
public final class CardBuilder {
  private final KnowledgeBase knowledge;
  private final SymptomSpace space;
  private final Symptom symptom;
  private final Wording wording;
  private final OutcomeWords outcomes;
  private final List<Build> builds;

  private CardBuilder(SymptomSpace space, KnowledgeBase shown) {
    this.knowledge = shown;
    this.space = space;
    this.symptom = shown.symptoms().get(space.symptom().id());
    this.wording = Wording.published(knowledge);
    this.outcomes = new OutcomeWords(knowledge, symptom, wording);
    this.builds =
        space.space().axes().get(0).cells().stream()
            .flatMap(cell -> ((Cell.Builds) cell).builds().stream())
            .toList();
  }

  /** The card of a symptom for the equipment of its space. */
  public static Card build(SymptomSpace space, String scope) {
    return build(space, space.space().knowledge(), scope);
  }

  /** As above, in the words of the same knowledge base in another language. */
  public static Card build(SymptomSpace space, KnowledgeBase shown, String scope) {
    return new CardBuilder(space, shown).card(scope);
  }

  private Card card(String scope) {
    List<Rule> rules =
        symptom.rules().values().stream()
            .filter(rule -> !rule.conclusion().answers().isEmpty())
            .filter(rule -> space.firing(rule.id()) != Diagrams.NONE)
            .toList();
    List<Reading> readings = readings(rules);
    CheckWords checks = new CheckWords(knowledge, wording, builds);
    return new Card(
        symptom.title(),
        scope,
        readings.stream().flatMap(reading -> checks.warnings(reading).stream()).distinct().toList(),
        limits(rules),
        first(),
        CardOutline.of(rules.stream().map(this::way).toList()));
  }

  private Stream<Condition> conditions(List<Rule> rules) {
    return Stream.concat(
        symptom.first().stream().map(Symptom.First::when), rules.stream().map(Rule::when));
  }

  private List<Reading> readings(List<Rule> rules) {
    return conditions(rules)
        .flatMap(Condition::tests)
        .map(Condition.Test::subject)
        .distinct()
        .flatMap(id -> Optional.ofNullable(knowledge.readings().get(id)).stream())
        .sorted(Comparator.comparing(Reading::access).thenComparing(Reading::id))
        .toList();
  }

  private List<String> limits(List<Rule> rules) {
    LimitsWords words = new LimitsWords(wording, builds);
    return conditions(rules)
        .flatMap(Condition::tests)
        .filter(test -> test.pattern() instanceof Condition.AgainstLimits)
        .map(Condition.Test::subject)
        .distinct()
        .sorted()
        .map(id -> wording.subject(id) + ": " + figures(words, id))
        .toList();
  }

  private String figures(LimitsWords words, String reading) {
    return words
        .figures(knowledge.limits().get(reading))
        .orElseGet(() -> wording.say().say("table in the handbook"));
  }

  private List<String> first() {
    return symptom.first().stream()
        .map(
            first ->
                wording
                    .say()
                    .say(
                        "{0}; otherwise go to: {1}",
                        String.join("; ", wording.lines(first.when())),
                        wording.symptom(first.otherwise())))
        .toList();
  }

  private CardOutline.Way way(Rule rule) {
    return new CardOutline.Way(
        pattern(rule.when()),
        outcomes.outcome(new Result(rule.conclusion().answers(), Diagrams.NONE, 0)).title(),
        frequency(rule));
  }

  private BigFraction frequency(Rule rule) {
    return rule.conclusion().answers().stream()
        .flatMap(answer -> Optional.ofNullable(knowledge.faults().get(answer.name())).stream())
        .map(Fault::frequency)
        .max(Comparator.naturalOrder())
        .orElse(BigFraction.ZERO);
  }

  /** The conditions without those that all the equipment meets. */
  private List<String> pattern(Condition when) {
    List<Condition> parts = when instanceof Condition.All all ? all.parts() : List.of(when);
    return parts.stream()
        .filter(part -> !isMet(part))
        .flatMap(part -> wording.lines(part).stream())
        .toList();
  }

  private boolean isMet(Condition part) {
    return part instanceof Condition.Test test
        && knowledge.equipment().attributes().contains(test.subject())
        && builds.stream().allMatch(build -> build.satisfies(test));
  }
}
