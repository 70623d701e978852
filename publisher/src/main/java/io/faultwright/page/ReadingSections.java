package io.faultwright.page;

import io.faultwright.model.Access;
import io.faultwright.model.Domain.Choice;
import io.faultwright.model.Domain.Measured;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Reading;
import io.faultwright.model.SetUp;
import io.faultwright.page.Target.Kind;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Refrigerant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** How each reading is taken. */
final class ReadingSections {
  private final Desk desk;

  ReadingSections(Desk desk) {
    this.desk = desk;
  }

  /** By what they take; where that is the same, by title. */
  static List<Reading> easiestFirst(Collection<Reading> readings) {
    return Alphabet.sorted(readings, Reading::title).stream()
        .sorted(Comparator.comparing(Reading::access).thenComparing(Reading::minutes))
        .toList();
  }

  ReadingSection of(Reading reading) {
    return new ReadingSection(
        new Target(Kind.READING, reading.id()).anchor(),
        reading.title(),
        desk.links().own(Kind.READING, reading.id(), reading.title()),
        desk.words()
            .computation(reading.id())
            .map(words -> desk.say("Worked out as {0}.", words))
            .orElse(reading.ask()),
        facts(reading),
        reading.domain().match(measured -> List.of(), ReadingSections::titles),
        new Clauses(desk).of(reading.applies()),
        new Cautions(desk).of(reading.cautions()),
        reading.how(),
        Optional.ofNullable(desk.kb().limits().get(reading.id())).map(new LimitsSections(desk)::of),
        desk.links().refrigerants(refrigerants(reading)),
        desk.links().guide(reading.guide()),
        desk.links().symptoms(desk.uses().symptomsWithReading(reading.id())),
        SequenceSections.timedBy(desk, reading));
  }

  /** Those of the models on which it can be taken. */
  private List<Refrigerant> refrigerants(Reading reading) {
    return desk.uses().needsRefrigerant(reading)
        ? desk.uses().refrigerants().stream().filter(one -> isOn(reading, one)).toList()
        : List.of();
  }

  private boolean isOn(Reading reading, Refrigerant refrigerant) {
    return desk.kb().equipment().builds().stream()
        .filter(build -> build.satisfies(reading.applies()))
        .anyMatch(b -> b.model().refrigerant().equals(Optional.of(refrigerant.id())));
  }

  private List<Fact> facts(Reading reading) {
    List<Fact> facts =
        new ArrayList<>(reading.domain().match(m -> measured(reading, m), this::choice));
    reading.where().ifPresent(text -> facts.add(new Fact(desk.say("Where"), text)));
    reading.phase().ifPresent(text -> facts.add(new Fact(desk.say("When"), text)));
    reading.instrument().ifPresent(text -> facts.add(new Fact(desk.say("With"), text)));
    desk.words()
        .accuracy(reading)
        .ifPresent(text -> facts.add(new Fact(desk.say("Accuracy"), text)));
    facts.add(new Fact(desk.say("Access"), access(reading.access())));
    reading.setUp().map(desk.kb().setUps()::get).map(this::setUp).ifPresent(facts::add);
    facts.add(new Fact(desk.say("Takes"), minutes(reading.minutes())));
    if (!reading.after().isEmpty()) {
      facts.add(new Fact(desk.say("After"), titles(reading.after())));
    }
    return facts;
  }

  private Fact setUp(SetUp setUp) {
    return new Fact(desk.say("Set up once"), setUp.title() + ", " + minutes(setUp.minutes()));
  }

  private String minutes(BigFraction minutes) {
    return desk.say("{0} min", desk.words().say().figure(Decimals.show(minutes)));
  }

  private String titles(Set<String> readings) {
    return readings.stream()
        .map(id -> desk.kb().readings().get(id).title())
        .collect(Collectors.joining(", "));
  }

  private List<Fact> measured(Reading reading, Measured measured) {
    List<Fact> facts = new ArrayList<>();
    facts.add(
        desk.uses().needsRefrigerant(reading)
            ? new Fact(desk.say("Unit"), desk.words().unit(reading.id()))
            : new Fact(desk.say("Range"), desk.words().interval(reading.id(), measured.range())));
    desk.words()
        .resolution(reading.id())
        .ifPresent(step -> facts.add(new Fact(desk.say("Read to"), step)));
    return facts;
  }

  private static List<String> titles(Choice choice) {
    return choice.yesNo() ? List.of() : choice.values().stream().map(NamedValue::title).toList();
  }

  private List<Fact> choice(Choice choice) {
    return choice.yesNo()
        ? List.of(new Fact(desk.say("Answer"), desk.say("Yes or no")))
        : List.of();
  }

  /** What has to be opened or touched, as printed. */
  String access(Access access) {
    return switch (access) {
      case OUTSIDE -> desk.say("From outside");
      case PANEL -> desk.say("Panel open");
      case LIVE_VOLTAGE -> desk.say("At live voltage");
      case REFRIGERANT_CIRCUIT -> desk.say("At the refrigerant circuit");
    };
  }
}
