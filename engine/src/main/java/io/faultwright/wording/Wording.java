package io.faultwright.wording;

import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Condition.Pattern;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Derived;
import io.faultwright.model.Effort;
import io.faultwright.model.Equipment;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Model;
import io.faultwright.model.Reading;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Units;
import io.faultwright.words.Words;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Conditions, values, builds and answers in words for people, with titles instead of ids. */
public final class Wording {
  /** The escalation target that every handbook has. */
  private static final String HOTLINE = "hotline";

  private final KnowledgeBase kb;
  private final Words say;
  private final Amounts amounts;
  private final Subjects subjects;
  private final Versions versions;
  private final BuildSets buildSets;
  private final Computation computation;

  /** In the units in which things are written. */
  public Wording(KnowledgeBase kb) {
    this(kb, Display.AS_WRITTEN);
  }

  private Wording(KnowledgeBase kb, Display display) {
    this.kb = kb;
    this.say = display.say();
    this.amounts = new Amounts(display);
    this.subjects = new Subjects(kb, say);
    this.versions = new Versions(kb.equipment().versions(), say);
    this.buildSets = new BuildSets(kb.equipment());
    this.computation = new Computation(subjects, say);
  }

  /** In the units and the language in which the handbook is published. */
  public static Wording published(KnowledgeBase kb) {
    return new Wording(kb, new Display(kb.handbook().units(), Words.of(kb.handbook().language())));
  }

  /** Title of a reading or an equipment fact. */
  public String subject(String id) {
    return subjects.title(id);
  }

  /** What was observed, for instance {@code 12.5 bar(g)} or {@code Untouched}. */
  public String value(String reading, Value value) {
    return value.match(
        word -> subjects.valueTitle(reading, word.id()),
        number -> amounts.amount(subjects.shown(reading, number.amount()), subjects.scale(reading)),
        () -> say.say("cannot be taken"));
  }

  /** The words of the tool in its language. */
  public Words say() {
    return say;
  }

  /** How a derived reading is computed, for instance {@code Room − Coil}; empty for others. */
  public Optional<String> computation(String reading) {
    return derived(reading)
        .map(form -> computation.words(form, subjects.unit(reading), this::subject));
  }

  /** As above with values, for instance {@code Room 5 °C − Coil -3 °C}, as far as known. */
  public String computation(String reading, Map<String, Value> operands) {
    return computation.words(
        derived(reading).orElseThrow(),
        subjects.unit(reading),
        id -> subject(id) + (operands.containsKey(id) ? " " + value(id, operands.get(id)) : ""));
  }

  private Optional<Derived> derived(String reading) {
    return Optional.ofNullable(kb.readings().get(reading)).flatMap(Reading::derived);
  }

  /** Title of a value of a choice or an equipment fact. */
  public String value(String subject, String id) {
    return subjects.valueTitle(subject, id);
  }

  /** A stretch of a quantity, for instance {@code 4 to 8 K} or {@code at least 65 °C}. */
  public String interval(String reading, Interval interval) {
    return amounts.interval(interval, subjects.scale(reading));
  }

  /** The unit of a quantity, for the heading of a column of {@link #number numbers}. */
  public String unit(String reading) {
    return amounts.unit(subjects.scale(reading));
  }

  /** An amount without its unit. */
  public String number(String reading, BigFraction amount) {
    return amounts.number(amount, subjects.scale(reading));
  }

  /**
   * Two ends without their unit: {@code 8 – 10}, or {@code up to 10} where one of them is absent.
   */
  public String numbers(String reading, Optional<BigFraction> low, Optional<BigFraction> high) {
    return amounts.numbers(low, high, subjects.scale(reading));
  }

  /**
   * A figure of the equipment's data, such as a charge of {@code 1.1 kg}; other texts as they are.
   */
  public String figure(String text) {
    return amounts.text(text);
  }

  /** The smallest step that is read, where that is said. */
  public Optional<String> resolution(String reading) {
    return amounts.resolution(subjects.scale(reading));
  }

  /**
   * An amount that was worked out and need not be exact, such as a limit between two rows: {@code
   * 9.37 bar(g)}, or {@code about 9.373 bar(g)} where it was rounded.
   */
  public String about(String reading, BigFraction amount) {
    return Amounts.about(amount, subjects.unit(reading));
  }

  /** What it takes to take some readings, for instance {@code 5 min, panel}. */
  public static String effort(Effort effort) {
    return Decimals.show(effort.minutes()) + " min, " + effort.access().word();
  }

  /** How far two values of a reading are apart, for instance {@code 0.35 bar} for pressures. */
  public String difference(String reading, BigFraction amount) {
    return Amounts.about(amount, Units.ofDifferences(subjects.unit(reading)));
  }

  /** How accurate its instrument is, for instance {@code 0.5 % of reading plus 0.1 K}. */
  public Optional<String> accuracy(Reading reading) {
    return reading
        .accuracy()
        .map(known -> new Accuracies(amounts, say).words(known, subjects.unit(reading.id())));
  }

  /** What a subject must be, for instance {@code above limits} or {@code 2.9 or 2.10}. */
  public String pattern(String subject, Pattern pattern) {
    return pattern.match(
        oneOf -> oneOf(subject, oneOf.values()),
        within -> interval(subject, within.interval()),
        limits -> RuleText.sides(limits.sides(), say),
        notTaken -> say.say("cannot be taken"));
  }

  /** Some of the values of a choice or an equipment fact. */
  public String oneOf(String subject, Collection<String> values) {
    return subject.equals(Equipment.SOFTWARE)
        ? versions.stretch(values).orElseGet(() -> list(subject, values))
        : list(subject, values);
  }

  private String list(String subject, Collection<String> values) {
    return said(subject, Selection.of(values, subjects.values(subject)));
  }

  private String said(String subject, Selection selection) {
    List<String> titles =
        selection.values().stream().map(id -> subjects.valueTitle(subject, id)).toList();
    return switch (selection.kind()) {
      case EVERY -> say.say("any");
      case NONE -> say.say("none there is");
      case ONLY -> say.or(titles);
      case ALL_BUT -> say.say("not {0}", say.or(titles));
    };
  }

  /** One line of a {@code when}, for instance {@code Discharge pressure: above limits}. */
  public String test(Test test) {
    return subject(test.subject()) + ": " + pattern(test.subject(), test.pattern());
  }

  /** A whole condition on one line. */
  public String condition(Condition condition) {
    return condition.match(
        all -> all.parts().isEmpty() ? say.say("always") : join(all.parts(), "; "),
        any -> any.parts().isEmpty() ? say.say("never") : oneOf(any.parts()),
        this::negated,
        this::test);
  }

  /** The parts that must all hold, a line each; none for a condition that always holds. */
  public List<String> lines(Condition condition) {
    return condition instanceof Condition.All all
        ? all.parts().stream().flatMap(part -> lines(part).stream()).toList()
        : List.of(condition(condition));
  }

  private String oneOf(List<Condition> parts) {
    return parts.size() == 1
        ? condition(parts.get(0))
        : say.say("one of: {0}", join(parts, say.say("{0}, or {1}", "", "")));
  }

  private String join(List<Condition> parts, String between) {
    return parts.size() == 1
        ? condition(parts.get(0))
        : parts.stream().map(this::bracketed).collect(Collectors.joining(between));
  }

  private String bracketed(Condition part) {
    String words = condition(part);
    return isSimple(part) ? words : "(" + words + ")";
  }

  private static boolean isSimple(Condition part) {
    return part.match(
        all -> all.parts().size() < 2,
        any -> any.parts().size() < 2,
        not -> isSimple(not.part()),
        test -> true);
  }

  private String negated(Condition.Not not) {
    return not.part() instanceof Test test
        ? subject(test.subject()) + ": " + opposite(test)
        : say.say("not ({0})", condition(not.part()));
  }

  /** The one value left, or what it must not be. */
  private String opposite(Test test) {
    return theOneLeft(test)
        .map(value -> value(test.subject(), value))
        .orElseGet(() -> say.say("not {0}", pattern(test.subject(), test.pattern())));
  }

  private Optional<String> theOneLeft(Test test) {
    List<String> left =
        test.pattern() instanceof OneOf oneOf
            ? subjects.values(test.subject()).stream()
                .filter(value -> !oneOf.values().contains(value))
                .toList()
            : List.of();
    return left.size() == 1 ? Optional.of(left.get(0)) : Optional.empty();
  }

  /** A published model with its software, by its title. */
  public String build(Build build) {
    String model = build.model().title();
    return build
        .software()
        .map(version -> say.say("{0} with software {1}", model, version.text()))
        .orElse(model);
  }

  /** The fewest words that single these builds out of all published ones. */
  public String builds(Collection<Build> builds) {
    Condition condition = buildSets.condition(builds);
    return condition.equals(Condition.ALWAYS) ? say.say("all equipment") : condition(condition);
  }

  /** What a technician is told. */
  public String answer(Answer answer) {
    if (answer instanceof Answer.OfFault fault) {
      return fault(fault.fault());
    }
    if (answer instanceof Answer.OfReferral referral) {
      return say.say("work {0} instead", symptom(referral.symptom()));
    }
    return say.say("ask {0}", escalation(answer.name()));
  }

  /** A label of the nameplate; that of the refrigerant is a word of the tool. */
  public String label(String label) {
    String said = label.equals(Model.REFRIGERANT) ? kb.said(label) : label;
    return said.equals(Model.REFRIGERANT) ? say.say("refrigerant") : said;
  }

  /** Whom to ask. */
  public String escalation(String to) {
    String said = kb.said(to);
    return said.equals(HOTLINE) ? say.say("hotline") : said;
  }

  /** What follows from a rule. */
  public String conclusion(Conclusion conclusion) {
    if (conclusion instanceof Conclusion.Exclude exclude) {
      return say.say("not {0}", say.or(exclude.faults().stream().map(this::fault).toList()));
    }
    return say.andEach(conclusion.answers().stream().map(this::answer).toList());
  }

  /** Title of a fault, or its id where there is no such fault. */
  public String fault(String id) {
    return Optional.ofNullable(kb.faults().get(id)).map(Fault::title).orElse(id);
  }

  /** Title of a symptom, or its id where there is no such symptom. */
  public String symptom(String id) {
    return Optional.ofNullable(kb.symptoms().get(id)).map(Symptom::title).orElse(id);
  }
}
