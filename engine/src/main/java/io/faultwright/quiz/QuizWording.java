package io.faultwright.quiz;

import io.faultwright.model.Answer;
import io.faultwright.model.Band;
import io.faultwright.model.Build;
import io.faultwright.model.Caution;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Limits;
import io.faultwright.model.Rule;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import io.faultwright.quantity.Rounding;
import io.faultwright.quiz.Stem.AgainstLimits;
import io.faultwright.quiz.Stem.FirstFails;
import io.faultwright.quiz.Stem.NextCheck;
import io.faultwright.quiz.Stem.Own;
import io.faultwright.quiz.Stem.SafeOrder;
import io.faultwright.quiz.Stem.WhatFirst;
import io.faultwright.quiz.Stem.WhatSeparates;
import io.faultwright.quiz.Stem.WhichFault;
import io.faultwright.quiz.StepList.Entry;
import io.faultwright.wording.Wording;
import io.faultwright.words.SignalWords;
import io.faultwright.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Items in words, in the language and the units of a handbook. */
public final class QuizWording {
  private final KnowledgeBase kb;
  private final Wording wording;
  private final Words say;
  private final ChoiceWords choices = new ChoiceWords();

  /**
   * @param kb in the language in which the items are printed
   */
  public QuizWording(KnowledgeBase kb) {
    this.kb = kb;
    this.wording = Wording.published(kb);
    this.say = wording.say();
  }

  /** A label with what stands beside it. */
  public record Line(String label, String text) {}

  /** The question, one or two sentences. */
  public String question(Item item) {
    Stem stem = item.stem();
    if (stem instanceof WhichFault) {
      return say.say("What do these readings point to?");
    }
    if (stem instanceof WhatSeparates apart) {
      return say.say(
              "The cause is one of two: {0}, or {1}.",
              quoted(wording.fault(apart.faults().one())),
              quoted(wording.fault(apart.faults().other())))
          + " "
          + say.say("Which of these readings tells for sure which one it is?");
    }
    if (stem instanceof AgainstLimits against) {
      return say.say("{0}: below, within or above its limits?", wording.subject(against.reading()));
    }
    if (stem instanceof WhatFirst) {
      return say.say("What must be right before you work this chart?");
    }
    if (stem instanceof FirstFails) {
      return say.say("You begin with the chart of this complaint. What do you do now?");
    }
    if (stem instanceof NextCheck) {
      return say.say("Which reading does the chart ask for next?");
    }
    return stem instanceof Own own
        ? own.item().question()
        : say.say("In which order does the handbook put these steps?");
  }

  private String quoted(String title) {
    return say.say("“{0}”", title);
  }

  /** What is known: the complaint, the machine, and the readings in their order. */
  public List<Line> known(Item item) {
    List<Line> lines = new ArrayList<>();
    complaint(item.stem())
        .ifPresent(id -> lines.add(new Line(say.say("Complaint"), wording.symptom(id))));
    item.stem().shown().ifPresent(shown -> machine(shown, lines));
    if (item.stem() instanceof AgainstLimits against) {
      lines.add(line(against.reading(), against.value()));
    }
    if (item.stem() instanceof SafeOrder order) {
      boolean remedy = order.list().part() == StepList.Part.REMEDY;
      String label = remedy ? say.say("Remedy") : say.say("Page");
      lines.add(new Line(label, title(order.list().page())));
      entries(order).forEach(lines::add);
    }
    if (item.stem() instanceof Own own) {
      own.item().given().ifPresent(given -> situation(given, lines));
    }
    return lines;
  }

  private static Optional<String> complaint(Stem stem) {
    if (stem instanceof WhichFault one) {
      return Optional.of(one.symptom());
    }
    if (stem instanceof WhatSeparates one) {
      return Optional.of(one.symptom());
    }
    if (stem instanceof WhatFirst one) {
      return Optional.of(one.symptom());
    }
    if (stem instanceof FirstFails one) {
      return Optional.of(one.symptom());
    }
    return stem instanceof NextCheck one ? Optional.of(one.symptom()) : Optional.empty();
  }

  private void machine(Shown shown, List<Line> lines) {
    equipment(shown.situation(), lines);
    shown.order().forEach(id -> lines.add(line(id, shown.situation().readings().get(id))));
  }

  private void situation(Situation given, List<Line> lines) {
    equipment(given, lines);
    given.readings().forEach((id, value) -> lines.add(line(id, value)));
  }

  private void equipment(Situation situation, List<Line> lines) {
    situation
        .equipment()
        .forEach(
            (fact, value) -> {
              if (!value.equals(Equipment.IMPLICIT)) {
                lines.add(new Line(wording.subject(fact), named(fact, value)));
              }
            });
  }

  /** A model by the number on its nameplate, with its title. */
  private String named(String fact, String value) {
    String title = wording.value(fact, value);
    return fact.equals(Equipment.MODEL) && !title.equals(value) ? value + ", " + title : title;
  }

  private Line line(String reading, Value value) {
    return new Line(wording.subject(reading), value(reading, value));
  }

  private String value(String reading, Value value) {
    return wording.value(reading, value);
  }

  /** The title of a page of the handbook. */
  public String title(Link page) {
    return switch (page.kind()) {
      case SYMPTOM -> wording.symptom(page.id());
      case FAULT -> wording.fault(page.id());
      case READING -> wording.subject(page.id());
      case GUIDE ->
          Optional.ofNullable(kb.guides().get(page.id()))
              .map(guide -> guide.title())
              .orElse(page.id());
    };
  }

  private List<Line> entries(SafeOrder order) {
    List<String> texts = order.list().texts(kb);
    List<Line> lines = new ArrayList<>();
    for (Entry entry : order.steps()) {
      String text =
          entry
              .caution()
              .map(this::caution)
              .orElseGet(() -> texts.get(Math.min(entry.step(), texts.size() - 1)));
      lines.add(new Line(letter(lines.size()), text));
    }
    return lines;
  }

  private String caution(String id) {
    Caution caution = kb.cautions().get(id);
    String signal = SignalWords.of(caution.signal().name(), say);
    return say.say("Read the caution: {0}", signal + ". " + caution.text());
  }

  private static String letter(int position) {
    return String.valueOf((char) ('A' + position));
  }

  /** What a choice says. */
  public String choice(Choice choice) {
    return choice.content().read(choices);
  }

  /** Every kind of content in words. */
  private final class ChoiceWords implements Choice.Reader<String> {
    @Override
    public String outcome(Choice.Outcome outcome) {
      return answer(outcome.answer());
    }

    @Override
    public String goOn(Choice.GoOn goOn) {
      return say.say("Go on with this chart");
    }

    @Override
    public String take(Choice.Take take) {
      return wording.subject(take.reading());
    }

    @Override
    public String onSide(Choice.OnSide onSide) {
      return side(onSide.side());
    }

    @Override
    public String holds(Choice.Holds holds) {
      return wording.condition(holds.condition());
    }

    @Override
    public String inOrder(Choice.InOrder inOrder) {
      return letters(inOrder);
    }

    @Override
    public String said(Choice.Said said) {
      return said.text();
    }
  }

  private String answer(Answer answer) {
    if (answer instanceof Answer.OfReferral) {
      return say.say("Another chart: {0}", wording.symptom(answer.name()));
    }
    return answer instanceof Answer.OfEscalation
        ? say.say("The chart ends here. Ask: {0}", wording.escalation(answer.name()))
        : wording.answer(answer);
  }

  private String side(Side side) {
    return Words.upperFirst(
        switch (side) {
          case BELOW -> say.say("below limits");
          case WITHIN -> say.say("within limits");
          case ABOVE -> say.say("above limits");
        });
  }

  private String letters(Choice.InOrder order) {
    return String.join(" – ", order.steps().stream().map(QuizWording::letter).toList());
  }

  /** Why the right choice is right, in sentences. */
  public List<String> explanation(Item item) {
    List<String> sentences = new ArrayList<>();
    sentences.addAll(reasons(item));
    if (item.stem() instanceof AgainstLimits against) {
      limits(against).ifPresent(words -> sentences.add(say.say("The limits here: {0}.", words)));
    }
    if (item.stem() instanceof NextCheck) {
      sentences.add(say.say("The chart asks for it next, after these answers."));
    }
    if (item.stem() instanceof SafeOrder) {
      sentences.add(say.say("This is the order on the page."));
    }
    if (item.stem() instanceof FirstFails || item.stem() instanceof WhatFirst) {
      first(item).ifPresent(sentences::add);
    }
    if (item.stem() instanceof WhichFault && !item.explanation().deciding().isEmpty()) {
      sentences.add(
          say.say(
              "Decided by: {0}.",
              say.and(item.explanation().deciding().stream().map(wording::subject).toList())));
    }
    return sentences;
  }

  private List<String> reasons(Item item) {
    if (item.stem() instanceof Own own) {
      return own.item().because().isEmpty() ? List.of() : List.of(own.item().because());
    }
    List<Rule> rules = item.origin().rules().stream().map(id -> rule(item, id)).toList();
    if (item.stem() instanceof WhatSeparates) {
      return rules.stream()
          .map(this::ofConclusion)
          .filter(text -> !text.isEmpty())
          .distinct()
          .toList();
    }
    return item.stem() instanceof WhichFault
        ? rules.stream().map(Rule::because).distinct().toList()
        : List.of();
  }

  /** Why a rule concludes what it does, and what that is: the reasons of two faults stand here. */
  private String ofConclusion(Rule rule) {
    return rule.because().isEmpty()
        ? ""
        : Words.upperFirst(wording.conclusion(rule.conclusion())) + ": " + rule.because();
  }

  private Rule rule(Item item, String id) {
    return kb.symptoms().get(item.origin().symptom()).rules().get(id);
  }

  private Optional<String> first(Item item) {
    Symptom symptom = kb.symptoms().get(item.origin().symptom());
    return symptom.first().stream()
        .filter(
            first ->
                first
                    .when()
                    .tests()
                    .anyMatch(t -> item.explanation().deciding().contains(t.subject())))
        .findFirst()
        .map(
            first ->
                say.say(
                    "This must be right first: {0}. If not, work this chart: {1}.",
                    wording.condition(first.when()), wording.symptom(first.otherwise())));
  }

  /** The limits of the machine at what they follow, to the steps of the display. */
  private Optional<String> limits(AgainstLimits against) {
    Situation situation = against.machine().situation();
    List<BigFraction> drivers =
        against.machine().order().stream()
            .map(id -> ((Value.Number) situation.readings().get(id)).amount())
            .toList();
    return kb.equipment().builds().stream()
        .filter(build -> build.facts().equals(situation.equipment()))
        .findFirst()
        .flatMap(build -> at(against.reading(), build, drivers))
        .map(band -> words(against.reading(), band));
  }

  private Optional<Band> at(String reading, Build build, List<BigFraction> drivers) {
    return Limits.of(kb.limits().get(reading), build).at(drivers);
  }

  private String words(String reading, Band band) {
    return wording.numbers(reading, rounded(reading, band.low()), rounded(reading, band.high()))
        + " "
        + wording.unit(reading);
  }

  private Optional<BigFraction> rounded(String reading, Optional<BigFraction> end) {
    Domain.Measured domain = (Domain.Measured) kb.readings().get(reading).domain();
    return end.map(
        value -> domain.resolution().map(step -> Rounding.to(step).shown(value)).orElse(value));
  }

  /** Why a wrong choice is nearly right; empty where it is not. */
  public Optional<String> nearMiss(Choice choice) {
    return choice.near().map(this::words);
  }

  private String words(NearMiss near) {
    String detail = near.detail();
    return switch (near.why()) {
      case ONE_READING ->
          say.say("Right only if this reading were another: {0}", wording.subject(detail));
      case OTHER_MODEL -> say.say("Right on {0}", detail);
      case OTHER_SOFTWARE -> say.say("Right with software {0}", detail);
      case OTHER_DRIVER -> say.say("Right at another value: {0}", wording.subject(detail));
      case NOT_ALWAYS -> say.say("Tells it sometimes, not always");
      case LATER -> say.say("Comes later");
      case OTHER_VALUE -> say.say("The same reading, and the wrong value");
      case SWAPPED -> say.say("Two steps have changed places");
      case CAUTION_TOO_LATE -> say.say("The caution comes after its step");
    };
  }
}
